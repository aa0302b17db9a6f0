"""Rings and runs of points on the page: corners, turned, rounded, taken from geometry.

In: points in points of the page, and geometry. Out: lists of points.
Invariant: each corner is rounded by itself, so that rounding never adds up.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import cos, radians, sin

from shapely.geometry.base import BaseGeometry

from publish.model.drawing import HUNDREDTHS, Ring

Spot = tuple[float, float]
"""A point on the page in points."""


def corners(box: tuple[float, float, float, float]) -> list[Spot]:
    left, top, right, bottom = box
    return [(left, top), (right, top), (right, bottom), (left, bottom)]


def turned(point: Spot, about: Spot, angle: float) -> Spot:
    if not angle:
        return point
    c, s = cos(radians(angle)), sin(radians(angle))
    x, y = point[0] - about[0], point[1] - about[1]
    return about[0] + c * x - s * y, about[1] + s * x + c * y


def hundredths(ring: Iterable[Spot], close: bool) -> Ring:
    """Return a ring in hundredths of a point, no corner twice in a row.

    Each corner is rounded by itself, so that rounding never adds up.
    """
    points = [(round(x * HUNDREDTHS), round(y * HUNDREDTHS)) for x, y in ring]
    kept = [p for i, p in enumerate(points) if i == 0 or p != points[i - 1]]
    if close and len(kept) > 1 and kept[0] == kept[-1]:
        kept.pop()
    return tuple(kept)


def rings_of(geometry: BaseGeometry, smooth: float) -> list[list[Spot]]:
    """Return every ring of the polygons in a geometry."""
    if smooth:
        geometry = geometry.simplify(smooth)
    found = []
    for part in getattr(geometry, "geoms", [geometry]):
        if part.geom_type == "Polygon" and not part.is_empty:
            found += [list(ring.coords) for ring in (part.exterior, *part.interiors)]
        elif hasattr(part, "geoms"):
            found += rings_of(part, 0)
    return found


def runs_of(geometry: BaseGeometry, smooth: float) -> list[list[Spot]]:
    """Return every run of points of the lines in a geometry."""
    if smooth:
        geometry = geometry.simplify(smooth)
    found = []
    for part in getattr(geometry, "geoms", [geometry]):
        if part.geom_type in ("LineString", "LinearRing") and not part.is_empty:
            found.append(list(part.coords))
        elif hasattr(part, "geoms"):
            found += runs_of(part, 0)
    return found
