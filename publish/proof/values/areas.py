"""Whether the patches cover the top: all of it, once.

In: a case. Out: notes.
Invariant: patch areas add up to the top's area, exactly where all edges are straight, and
no two patches lie on each other. The two together leave no gap.

The area of a polygon is half the sum of its corners' cross products (the surveyor's
formula), exact for exact corners. Patches with arcs are measured along short lines.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import lru_cache

from shapely.strtree import STRtree

from publish.arcs import outline
from publish.model.draft import Patch, Point
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.surd import Length
from publish.units import decimal_text

CODES = {
    "P821": Code(
        "The patches do not add up to the top",
        "the rows will not fit when they are sewn",
        "a top of 64 × 64 in whose patches cover 4064 square inches",
        "4096 square inches",
    ),
    "P822": Code(
        "Two patches lie on each other, or one beyond the edge",
        "cloth is cut twice",
        "a side border that begins under the top border",
        "patches that meet at their edges",
    ),
}
_NEGLIGIBLE = 1e-6
"""Square inches: patches whose common edge is oblique may seem to share as much."""
ROUGH = Fraction(1, 1000)
"""Share of an area by which short lines in place of arcs may miss it, where two patches
divide one arc differently."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each size whose patches leave a gap or overlap."""
    for size in case.keys:
        draft = case.drafts[size]
        whole = draft.width * draft.height
        covered = _covered(draft.patches)
        slack = ROUGH if any(p.arcs for p in draft.patches) else 0
        if abs(covered - whole) > slack * whole:
            yield error(
                "P821",
                case.size_place(size),
                "the patches do not add up to the top",
                expected=f"{decimal_text(whole, 3)} square inches",
                received=decimal_text(covered, 3),
            )
        for first, second in _clashes(draft.patches):
            yield error(
                "P822",
                case.size_place(size),
                f"the patches {first.key} and {second.key} lie on each other",
            )
        for patch in draft.patches:
            left, top, right, bottom = patch.box
            if left < 0 or top < 0 or right > draft.width or bottom > draft.height:
                yield error(
                    "P822", case.size_place(size), f"the patch {patch.key} lies beyond the edge"
                )


@lru_cache(maxsize=4096)
def area(ring: tuple[Point, ...]) -> Length:
    """Return a polygon's area in square inches, exactly.

    Kept, since each patch lies in as many units as it has seams round it.
    """
    turns = zip(ring, ring[1:] + ring[:1], strict=True)
    return abs(sum((x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in turns), Fraction(0))) / 2


def _covered(patches: tuple[Patch, ...]) -> Length:
    """Return what patches cover together; those with arcs as near as their short lines."""
    exact = sum((area(p.ring) for p in patches if not p.arcs), Fraction(0))
    return exact + Fraction(sum(outline(p.ring, p.arcs).area for p in patches if p.arcs))


def _clashes(patches: tuple[Patch, ...]) -> Iterator[tuple[Patch, Patch]]:
    if len(patches) < 2:
        return
    shapes = [outline(p.ring, p.arcs) for p in patches]
    for one, other in STRtree(shapes).query(shapes, predicate="intersects").T:
        curved = patches[one].arcs and patches[other].arcs
        least = float(ROUGH) * shapes[one].area if curved else _NEGLIGIBLE
        if one < other and shapes[one].intersection(shapes[other]).area > least:
            yield patches[one], patches[other]
