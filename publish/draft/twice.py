"""Outlines that are drawn twice, one over the other, as copying by mistake leaves them.

In: closed rings and where each was drawn. Out: warnings.
Invariant: two rings are the same outline where what they enclose differs by less than
`APART` of it; a narrow ring of cloth that anyone could sew is wider.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from shapely import STRtree
from shapely.geometry import Polygon, box

from publish.draft.curves import Points
from publish.notes import Note, Place, warning

APART = 0.04
"""Share of the area. A 6 in disc drawn twice, 1/32 in apart, differs by 0.013."""


def drawn_twice(rings: Sequence[tuple[Points, Place]]) -> Iterator[Note]:
    """Yield a warning for each ring that lies on one before it."""
    areas = [Polygon(points) for points, _ in rings]
    boxes = [box(*area.bounds) for area in areas]
    tree = STRtree(boxes)
    for at, (area, around) in enumerate(zip(areas, boxes, strict=True)):
        near = [i for i in tree.query(around) if i < at and _alike(boxes[i].bounds, around.bounds)]
        if any(_same(areas[i], area) for i in near):
            yield warning(
                "D315",
                rings[at][1],
                "an outline is drawn twice, one over the other",
                help="delete one of the two; between them lie slits that nobody can sew",
            )


def _alike(one: tuple[float, ...], other: tuple[float, ...]) -> bool:
    sides = np.subtract(one[2:], one[:2])
    return bool((np.abs(np.subtract(one, other)) <= APART * np.tile(sides, 2)).all())


def _same(one: Polygon, other: Polygon) -> bool:
    if not (one.is_valid and other.is_valid):
        return False
    apart = one.symmetric_difference(other).area
    return bool(apart < APART * min(one.area, other.area))
