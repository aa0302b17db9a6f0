"""Whether the work can be done as it is told, in the order in which it is told.

In: a case with its making. Out: notes.
Invariant: the operations that the steps cover are carried out once more, for each size alone,
in reading order; work that is still trusted is done where its section stands.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.words import Section, Steps
from publish.notes import Note, warning
from publish.operations.operation import Operation
from publish.operations.rehearsal import SizeMaking, rehearse
from publish.operations.table import Failing
from publish.operations.trusted import Trusted
from publish.proof.case import Case, Code

CODES = {
    "P857": Code(
        "No step says how to do something that the work needs",
        "the maker cannot go on",
        "`steps: [{remove: binding-finish}]`, and the binding hangs loose at the back",
        "reword the step with `step:` instead of removing it",
    ),
    "P859": Code(
        "Steps stand in an order in which they cannot be done",
        "work has to be undone",
        "`{move: quilting-unpin, before: quilting-begin}`: the basting is out before quilting",
        "baste, quilt, then take the basting out",
    ),
}

MOST = 3
"""So many things that cannot be done are named for a size: the rest follow from them."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each operation that cannot be done as the steps tell it."""
    for key in case.keys:
        made = case.making.sizes.get(key)
        if made is None:
            continue
        order = told_order(case, key, made)
        if order == made.operations:
            continue
        before = {(f.kind, f.what) for f in rehearse(made.operations, made.goals).failings}
        missing = {o.key for o in made.operations} - {o.key for o in order}
        found = rehearse(order, made.goals).failings
        new = [f for f in found if (f.kind, f.what) not in before]
        for failing in new[:MOST]:
            yield _note(case, key, failing, bool(missing))


def told_order(case: Case, key: str, made: SizeMaking) -> tuple[Operation, ...]:
    """Return a size's operations in the order of the steps that cover them.

    An operation that no step covers is not among them.
    """
    by_key = {o.key: o for o in made.operations}
    sections = case.manual.sections
    places: list[tuple[int, float, Operation]] = [
        (at, number, by_key[covered])
        for at, section in enumerate(sections)
        for number, covered in enumerate(_covered(section, key))
        if covered in by_key and not isinstance(by_key[covered], Trusted)
    ]
    at = -1
    for number, operation in enumerate(made.operations):
        if isinstance(operation, Trusted):
            at = max(at, _standing(sections, operation, key))
            places.append((at, _rank(made, places, at, number), operation))
        else:
            at = max([at, *(a for a, _, o in places if o == operation)])
    return tuple(operation for _, _, operation in sorted(places, key=lambda p: p[:2]))


def _covered(section: Section, key: str) -> Iterator[str]:
    for block in section.blocks:
        for step in block.items if isinstance(block, Steps) else ():
            if key in (step.sizes or section.sizes or (key,)):
                yield from step.covers


def _standing(sections: tuple[Section, ...], operation: Operation, key: str) -> int:
    """Return which section tells a trusted operation; -1 for none."""
    chapter = operation.chapter
    found = [
        at
        for at, s in enumerate(sections)
        if (s.key == chapter or s.parent == chapter) and key in (s.sizes or (key,))
    ]
    return found[-1] if found else -1


def _rank(
    made: SizeMaking, places: list[tuple[int, float, Operation]], at: int, number: int
) -> float:
    """Return the place of a trusted operation in its section: after what it follows there."""
    before = {o.key for o in made.operations[:number]}
    ranks = [rank for where, rank, o in places if where == at and o.key in before]
    return max(ranks, default=-1.0) + 0.5 if ranks else -0.5


def told_letters(case: Case, key: str) -> set[str]:
    """Return the letters of the pieces that told operations take, and do not only join."""
    made = case.making.sizes.get(key)
    if made is None:
        return set()
    told = {o.key for o in told_order(case, key, made) if not isinstance(o, Trusted)}
    taken = {
        part.key.split()[-1]
        for moment in made.moments
        if moment.operation.key in told
        and moment.operation.verb != "join-lengths"
        and moment.operation.chapter != "cutting"
        for part, _ in moment.took
    }
    return taken & {p.letter for p in case.plans[key].pieces}


def _note(case: Case, key: str, failing: Failing, missing: bool) -> Note:
    code = "P804" if failing.kind == "left" else "P857" if missing else "P859"
    help_ = (
        "reword the step that did it instead of removing it"
        if missing
        else ("move the step to where it can be done")
    )
    return warning(
        code,
        case.pattern.place("steps"),
        failing.headline(key),
        expected=failing.expected,
        received=failing.received,
        help=help_,
    )
