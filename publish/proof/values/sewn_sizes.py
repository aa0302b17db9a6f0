"""What units, strips of blocks and the growing top measure, with what lies beyond their edges.

In: a case, units of the draft, rounds of a size. Out: widths with heights, in inches.
Invariant: a side lies a seam beyond the finished line; at the edge of a pillow the pillow's
own seam, and round a ground that waits for its motif half the margin that is trimmed off
besides. Where plain cut pieces are sewn they count as they are cut, rounded up as they are.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import Unit
from publish.proof.case import Case
from publish.surd import Length, turned

Pair = tuple[Length, Length]
"""Width and height."""


def beyond(case: Case, size: str, unit: Unit, *, untrimmed: bool = True) -> Pair:
    """Return a unit's finished sides and what lies beyond them, as the unit lies on the table.

    `untrimmed` says that a ground still has the margin that is trimmed off after appliqué.
    """
    graded, sewing = case.sizes[size], case.pattern.sewing
    rim = (Fraction(0), Fraction(0), graded.width, graded.height)
    outer = _ground(case, size, unit) if untrimmed else None
    sides = [unit.width, unit.height]
    for at, edge in enumerate(unit.box):
        closed = graded.pillow is not None and not unit.turn and edge == rim[at]
        sides[at % 2] += graded.pillow.seam if closed and graded.pillow else sewing.seam
        if outer is not None and edge == outer[at]:
            sides[at % 2] += sewing.ground_margin / 2
    return sides[0], sides[1]


def _ground(case: Case, size: str, unit: Unit) -> tuple[Length, ...] | None:
    """Return the box, in a unit's own frame, of the one block whose motif it waits for."""
    homes = {p.place for p in unit.patches}
    if len(homes) != 1 or (block := unit.patches[0].block) is None:
        return None
    if case.pattern.blocks[block].motif is None:
        return None
    place = "ground", f"{size} {next(iter(homes))} {unit.turn}", 0
    if place not in case.memory:
        mates = [p for p in (*case.drafts[size].patches, *unit.patches) if p.place in homes]
        points = [turned(point, -unit.turn) for p in mates for point in p.ring]
        xs, ys = zip(*points, strict=True)
        case.memory[place] = min(xs), min(ys), max(xs), max(ys)
    found: tuple[Length, ...] = case.memory[place]
    return found
