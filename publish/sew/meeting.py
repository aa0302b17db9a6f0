"""Where seams meet seams: whether parts that are sewn to each other have crossings to pin.

In: a unit with parts. Out: a truth value.
Invariant: two seams meet where corners of patches on both sides of a seam lie in one
point of it, its two ends not counted.
"""

from __future__ import annotations

from itertools import pairwise

from publish.model.draft import Unit
from publish.surd import Length, turned


def meets(unit: Unit) -> bool:
    """Return whether seams of any two neighbouring parts of a unit meet in one point."""
    return any(_meet(unit, one, two) for one, two in pairwise(unit.parts))


def _meet(unit: Unit, one: Unit, two: Unit) -> bool:
    across = unit.join == "across"
    first, second = _corners(one, unit.turn, across), _corners(two, unit.turn, across)
    line = max(off for off, _ in first)
    on_first = {along for off, along in first if off == line}
    on_second = {along for off, along in second if off == line}
    shared = on_first & on_second
    ends = {
        min(on_first),
        max(on_first),
        min(on_second, default=line),
        max(on_second, default=line),
    }
    return bool(shared - ends)


def _corners(part: Unit, turn: int, across: bool) -> set[tuple[Length, Length]]:
    """Return every corner of a part's patches: how far along the join's way, and across it."""
    points = {turned(p, -turn) for patch in part.patches for p in patch.ring}
    return {(x, y) if across else (y, x) for x, y in points}
