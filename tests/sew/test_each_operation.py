"""Taking out any one operation, or swapping two of which one needs the other, is found.

Nothing here knows what an operation does: each is tried, at every size of every case.
"""

from __future__ import annotations

import pytest
from sewing_cases import CASES, failings, makings

from publish.operations.rehearsal import SizeMaking, rehearse
from publish.operations.trusted import Trusted

IN_TURN = ("turn-corner",)
"""Verbs that are repeated in one order and in no other."""

FREE = {
    ("sew-sleeve-bottom", "sew-label"),
    ("fill-cover", "sew-label"),
    ("make-motifs", "cut-paper-shape"),
    ("turn-points", "turn-corners"),
    ("turn-points", "turn-curves"),
    ("turn-corners", "turn-curves"),
    ("turn-curves", "turn-openings"),
    ("straighten-cloth", "set-out-cutting"),
    # The first are ready before the last are cut.
    ("cut-pieces", "prepare-square"),
    ("cut-pieces", "lay-out-unit"),
    ("cut-pieces", "lay-first-patch"),
    ("cut-pieces", "sew-patch"),
    # Pins go through the edges, where the paper is out.
    ("leave-paper", "pin-seams"),
    ("leave-paper", "measure-top"),
}
"""Verbs that touch the same part and may be done in either order."""

every_case = pytest.mark.parametrize("name", CASES)


@every_case
def test_everything_can_be_made_as_it_is_planned(name: str) -> None:
    found = {
        f.headline(made.size) for made in makings(name) for f in failings(made, made.operations)
    }
    assert found == set()


@every_case
def test_each_operation_is_missed(name: str) -> None:
    unmissed = [
        f"{made.size}: {operation.key}"
        for made in makings(name)
        for at, operation in enumerate(made.operations)
        if not (isinstance(operation, Trusted) and operation.step == "order")
        and not failings(made, made.operations[:at] + made.operations[at + 1 :])
    ]
    assert unmissed == []


@every_case
def test_no_operation_comes_before_what_it_needs(name: str) -> None:
    unseen = [
        f"{made.size}: {made.operations[one].key} after {made.operations[two].key}"
        for made in makings(name)
        for one, two in dependent(made)
        if not failings(made, swapped(made, one, two))
    ]
    assert unseen == []


def dependent(made: SizeMaking) -> list[tuple[int, int]]:
    """Return the places of each operation that takes a part, and of the last that left it.

    Not of one verb that is repeated in a step: corners may be sewn in any order. What is
    trusted says too little of what it needs.
    """
    last: dict[str, int] = {}
    found = []
    for at, moment in enumerate(rehearse(made.operations).moments):
        givers = {last[part.key] for part, _ in moment.took if part.key in last}
        found += [(giver, at) for giver in sorted(givers) if not alike(made, giver, at)]
        last |= {part.key: at for part, _ in moment.gave}
    return found


def alike(made: SizeMaking, *places: int) -> bool:
    one, two = (made.operations[at] for at in places)
    repeated = (one.step, one.verb) == (two.step, two.verb) and one.verb not in IN_TURN
    free = (one.verb, two.verb) in FREE
    return free or repeated or isinstance(one, Trusted) or isinstance(two, Trusted)


def swapped(made: SizeMaking, one: int, two: int):
    order = list(made.operations)
    order[one], order[two] = order[two], order[one]
    return tuple(order)


@pytest.mark.parametrize("name", CASES)
def test_keys_are_unique_in_a_size(name: str) -> None:
    for made in makings(name):
        keys = [operation.key for operation in made.operations]
        assert len(set(keys)) == len(keys)
