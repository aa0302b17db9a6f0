"""What a unit measures on the table: its finished size and what lies beyond its edges.

In: pattern, size, draft. Out: widths and heights as text.
Invariant: a side has the pattern's seam; at the edge of a pillow its closing seam; and at
the edge of a ground that waits for its motif half the margin that is trimmed off besides.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from publish.deliver.cloth import exact
from publish.model.draft import Draft, Patch, Unit
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.surd import Length, turned

Home = tuple[object, ...]
Box = tuple[Length, Length, Length, Length]


class Beyond:
    """What lies beyond the edges of one size's units."""

    def __init__(self, pattern: Pattern, size: Size, draft: Draft) -> None:
        self._pattern, self._size = pattern, size
        self._homes: dict[Home, list[Patch]] = {}
        for patch in draft.patches:
            self._homes.setdefault(_home(patch), []).append(patch)

    def before(self, unit: Unit) -> dict[str, Any]:
        """Return a unit's width and height before it is sewn to anything else."""
        size, sewing = self._size, self._pattern.sewing
        rim = (Fraction(0), Fraction(0), size.width, size.height)
        ground = self._ground(unit)
        sides = [unit.width, unit.height]
        for at, edge in enumerate(unit.box):
            # A box that lies askew is no box of the top's: none of its sides is the edge.
            closed = size.pillow is not None and not unit.turn and edge == rim[at]
            sides[at % 2] += size.pillow.seam if closed and size.pillow else sewing.seam
            if ground is not None and edge == ground[at]:
                sides[at % 2] += sewing.ground_margin / 2
        return {"width": exact(sides[0]), "height": exact(sides[1])}

    def _ground(self, unit: Unit) -> Box | None:
        """Return the box, in a unit's own frame, of the one block whose motif it waits for."""
        homes = {_home(p) for p in unit.patches}
        block = unit.patches[0].block
        if len(homes) != 1 or block is None or self._pattern.blocks[block].motif is None:
            return None
        mates = self._homes[homes.pop()]
        xs, ys = zip(*(turned(p, -unit.turn) for q in mates for p in q.ring), strict=True)
        return min(xs), min(ys), max(xs), max(ys)


def _home(patch: Patch) -> Home:
    return patch.block, patch.home, patch.row, patch.column
