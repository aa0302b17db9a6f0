"""Where rows of basting run on a folded wedge and on a motif that lies on its ground.

In: outlines in inches. Out: lines in the same frame.
Invariant: on a wedge no row comes nearer to the finished line than its arms allow; on a
ground no row comes nearer to the raw edge than `FROM_EDGE`.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.geometry.base import BaseGeometry

from publish.model.draft import MotifShape

FROM_EDGE = 0.5
"""Inches from the raw edge to the basting (Martha Stewart, How to applique by hand)."""
IN_WEDGE = 0.25
"""Inches from the finished line to the basting of a folded wedge. Common practice."""
SHORTEST = 0.5
"""Inches: a shorter row holds nothing. Common practice."""


@dataclass(frozen=True)
class WedgeBasting:
    """Rows beside the finished line, rows along the middle of narrow arms, and one row
    through what is cut away."""

    beside: MultiLineString
    middle: MultiLineString
    waste: MultiLineString

    @property
    def rows(self) -> tuple[LineString, ...]:
        return (*self.beside.geoms, *self.middle.geoms, *self.waste.geoms)


def on_wedge(
    body: BaseGeometry, cut: BaseGeometry, cloth: BaseGeometry, angles: tuple[float, float]
) -> WedgeBasting:
    """Return the rows that hold a folded wedge while it is cut.

    `body` is the finished wedge, `cut` the wedge as it is cut and `cloth` the folded square,
    the centre at the origin; `angles` are those of its two folds, in degrees.
    """
    inner = body.buffer(-IN_WEDGE)
    beside = [LineString(p.exterior.coords) for p in _parts(inner)]
    narrow = body.difference(inner.buffer(IN_WEDGE * 1.3))
    middle = [row for p in _parts(narrow) if (row := _along(p)) is not None]
    rest = cloth.buffer(-IN_WEDGE).difference(cut.buffer(IN_WEDGE))
    return WedgeBasting(
        *map(MultiLineString, (_long(beside), _long(middle), _long([_across(rest, angles)])))
    )


def on_ground(shape: MotifShape) -> MultiLineString:
    """Return rows of basting along the middles of the arms that lie on folds.

    They stop `FROM_EDGE` before the raw edge. A motif without folds, or with no arm on a
    fold that is long enough, is basted along a line that far inside its edge, or halfway in
    where it is too slender.
    """
    if shape.edges is None:
        return _inside(shape)
    rows = []
    first = shape.edges[0].angle
    for index in range(shape.folds):
        edge = shape.edges[index % 2]
        angle = first + index * (shape.edges[1].angle - first)
        for start, end in edge.contact:
            if end - start > 2 * FROM_EDGE + 0.25:
                rows.append([_polar(start + FROM_EDGE, angle), _polar(end - FROM_EDGE, angle)])
    return MultiLineString(rows) if rows else _inside(shape)


def _inside(shape: MotifShape) -> MultiLineString:
    for inwards in (FROM_EDGE, shape.narrowest_neck / 3, shape.narrowest_neck / 20):
        inner = shape.cut_line.buffer(-inwards)
        if not inner.is_empty:
            break
    return MultiLineString([list(g.exterior.coords) for g in _parts(inner)])


def _parts(shape: BaseGeometry) -> list[Polygon]:
    return [g for g in getattr(shape, "geoms", [shape]) if g.geom_type == "Polygon" and g.area]


def _polar(radius: float, angle: float) -> tuple[float, float]:
    """Return a point at an angle in degrees, clockwise on the page."""
    return radius * math.cos(math.radians(angle)), radius * math.sin(math.radians(angle))


def _along(arm: Polygon) -> LineString | None:
    """Return a row along the middle of a narrow arm, or None where it is too short."""
    box = arm.minimum_rotated_rectangle
    if box.geom_type != "Polygon":
        return None
    (a, b, c, d, *_) = box.exterior.coords
    if math.dist(a, b) > math.dist(b, c):
        a, b, c, d = b, c, d, a
    line = LineString(
        [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), ((c[0] + d[0]) / 2, (c[1] + d[1]) / 2)]
    )
    found = line.intersection(arm)
    return max(_lines(found), key=lambda row: row.length, default=None)


def _across(rest: BaseGeometry, angles: tuple[float, float]) -> LineString:
    """Return the longest row through the waste that runs square to the wedge's middle."""
    reach = max((abs(v) for v in rest.bounds), default=0.0) if not rest.is_empty else 0.0
    steps = 40
    rows = [
        LineString([_polar(reach * k / steps * 1.5, a) for a in angles]) for k in range(1, steps)
    ]
    found = [line for row in rows for line in _lines(row.intersection(rest))]
    return max(found, key=lambda row: row.length, default=LineString())


def _lines(shape: BaseGeometry) -> list[LineString]:
    return [g for g in getattr(shape, "geoms", [shape]) if g.geom_type == "LineString"]


def _long(rows: Sequence[LineString]) -> list[LineString]:
    return [row for row in rows if row.length >= SHORTEST]
