"""Patches and units as shapes: arcs made of short lines, and edges grown by allowances.

In: rings with arcs, patches, units. Out: shapely polygons in inches.
Invariant: a curve is nowhere further than `arcs.CHORD` from its circle, and both patches at a
curve are given the same points of it; only edges on a unit's own outline are grown.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence

from shapely import affinity
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient
from shapely.ops import linemerge, unary_union

from publish.arcs import outline
from publish.model.draft import Patch, Unit
from publish.surd import Length

XY = tuple[float, float]
Corner = tuple[Length, Length]
NEAR = 0.005
"""Inches: an edge this near to an outline lies on it."""
TOUCH = 0.04
"""Inches: shapes that share less than this meet at a corner only."""
SHARPEST = 3.0
"""Times the allowance: how far a grown corner may stand out before it is blunted."""


def polygon_of(patch: Patch) -> Polygon:
    """Return a patch as a shapely polygon."""
    return outline(patch.ring, patch.arcs)


def outline_of(unit: Unit) -> Polygon:
    """Return a unit's finished outline in the top."""
    if unit.ring:
        return outline(unit.ring, unit.arcs)
    if unit.patch is not None:
        return polygon_of(unit.patch)
    whole = unary_union([polygon_of(p).buffer(1e-6, join_style="mitre") for p in unit.patches])
    return whole.buffer(-1e-6, join_style="mitre")


def laid(geometry: BaseGeometry, turn: int) -> BaseGeometry:
    """Return a shape of the top in the frame of a unit that lies turned by `turn`."""
    return affinity.rotate(geometry, -turn, origin=(0, 0)) if turn else geometry


def grown(polygon: Polygon, outline: BaseGeometry, by: Callable[[XY, XY], float]) -> Polygon:
    """Return a patch with its edges on `outline` moved outward by what `by` says.

    `by` is given the ends of an edge. Edges inside the outline stay where the seam is.
    """
    points = _counted(polygon)
    edge = outline.boundary
    offsets = []
    for a, b in zip(points, [*points[1:], points[0]], strict=True):
        middle = Point((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
        outside = max(edge.distance(p) for p in (Point(a), middle, Point(b))) < NEAR
        offsets.append(by(a, b) if outside else 0.0)
    return moved_edges(points, offsets)


def moved_edges(points: Sequence[XY], offsets: Sequence[float]) -> Polygon:
    """Return a polygon whose edge i, from point i, is moved outward by its offset.

    Points go clockwise on the page. A corner that would stand out further than `SHARPEST`
    offsets is blunted; where a moved edge meets one that is not on the same line, there
    is a step.
    """
    count = len(points)
    found: list[XY] = []
    for i in range(count):
        before, here, after = points[i - 1], points[i], points[(i + 1) % count]
        found += _corner(before, here, after, offsets[i - 1], offsets[i])
    whole = Polygon(found)
    return whole if whole.is_valid else _largest(whole.buffer(0))


def _corner(before: XY, here: XY, after: XY, first: float, last: float) -> list[XY]:
    """Return the corner between two moved edges, or the two ends of a step or a blunt."""
    u, v = _unit(before, here), _unit(here, after)
    p = (here[0] + u[1] * first, here[1] - u[0] * first)
    q = (here[0] + v[1] * last, here[1] - v[0] * last)
    cross = u[0] * v[1] - u[1] * v[0]
    if abs(cross) < 1e-6:
        return [p] if first == last else [p, q]
    along = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / cross
    meet = (p[0] + u[0] * along, p[1] + u[1] * along)
    limit = SHARPEST * max(first, last)
    far = math.hypot(meet[0] - here[0], meet[1] - here[1])
    if far > limit > 0:
        share = min(limit, 4 * max(first, last))
        return [
            (p[0] + u[0] * share, p[1] + u[1] * share),
            (q[0] - v[0] * share, q[1] - v[1] * share),
        ]
    return [meet]


def shared(one: BaseGeometry, other: BaseGeometry) -> LineString:
    """Return the longest stretch of boundary that two shapes share; empty where none."""
    along = one.boundary.intersection(other.buffer(NEAR, join_style="mitre"))
    parts = getattr(along, "geoms", [along])
    lines = [g for g in parts if g.geom_type == "LineString" and not g.is_empty]
    joined = _joined(lines)
    return max(joined, key=lambda line: float(line.length), default=LineString())


def _joined(lines: Iterable[LineString]) -> list[LineString]:
    merged = linemerge(list(lines)) if lines else LineString()
    return [g for g in getattr(merged, "geoms", [merged]) if g.length > TOUCH]


def bounds_of(shapes: Iterable[BaseGeometry]) -> tuple[float, float, float, float]:
    """Return left, top, right, bottom of several shapes."""
    lefts, tops, rights, bottoms = zip(*(s.bounds for s in shapes), strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)


def _floats(corner: Corner) -> XY:
    return float(corner[0]), float(corner[1])


def _counted(polygon: Polygon) -> list[XY]:
    """Return a polygon's corners clockwise on the page, each once."""
    return [(x, y) for x, y in orient(polygon, 1.0).exterior.coords[:-1]]


def _unit(start: XY, end: XY) -> XY:
    run = math.hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    return (end[0] - start[0]) / run, (end[1] - start[1]) / run


def _largest(geometry: BaseGeometry) -> Polygon:
    return max(getattr(geometry, "geoms", [geometry]), key=lambda g: float(g.area))
