"""Whether the patches cover the top: all of it, once.

In: a case. Out: notes.
Invariant: patch areas add up to the top's area exactly, in fractions, and no two patches
lie on each other. The two together leave no gap.

The area of a polygon is half the sum of its corners' cross products (the surveyor's
formula), exact for exact corners.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from shapely.geometry import Polygon
from shapely.strtree import STRtree

from publish.model.draft import Patch, Point
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.surd import Length
from publish.units import decimal_text

CODES = {
    "P821": Code(
        "The patches do not add up to the top", "the rows will not fit when they are sewn"
    ),
    "P822": Code("Two patches lie on each other, or one beyond the edge", "cloth is cut twice"),
}
_NEGLIGIBLE = 1e-6
"""Square inches: patches whose common edge is oblique may seem to share as much."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each size whose patches leave a gap or overlap."""
    for size in case.keys:
        draft = case.drafts[size]
        covered = sum((area(p.ring) for p in draft.patches), Fraction(0))
        if covered != draft.width * draft.height:
            yield error(
                "P821", case.size_place(size), "the patches do not add up to the top",
                expected=f"{decimal_text(draft.width * draft.height, 3)} square inches",
                received=decimal_text(covered, 3),
            )  # fmt: skip
        for first, second in _clashes(draft.patches):
            yield error(
                "P822", case.size_place(size),
                f"the patches {first.key} and {second.key} lie on each other",
            )  # fmt: skip
        for patch in draft.patches:
            left, top, right, bottom = patch.box
            if left < 0 or top < 0 or right > draft.width or bottom > draft.height:
                yield error(
                    "P822", case.size_place(size), f"the patch {patch.key} lies beyond the edge"
                )  # fmt: skip


def area(ring: tuple[Point, ...]) -> Length:
    """Return a polygon's area in square inches, exactly."""
    turns = zip(ring, ring[1:] + ring[:1], strict=True)
    return abs(sum((x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in turns), Fraction(0))) / 2


def _clashes(patches: tuple[Patch, ...]) -> Iterator[tuple[Patch, Patch]]:
    if len(patches) < 2:
        return
    shapes = [Polygon([(float(x), float(y)) for x, y in p.ring]) for p in patches]
    for one, other in STRtree(shapes).query(shapes, predicate="intersects").T:
        if one < other and shapes[one].intersection(shapes[other]).area > _NEGLIGIBLE:
            yield patches[one], patches[other]
