"""What the openings of a motif are like: smooth all round, or with corners and points.

In: a motif's shape. Out: a truth value.
Invariant: a corner is told from a curve by how far the edge turns within a short way.
"""

from __future__ import annotations

import math

from shapely.geometry import LinearRing, MultiPolygon, Point

SPAN = 0.06
"""Inches before and after a place on the edge between which its turn is measured."""
CORNER = 50.0
"""Degrees of turn from which on an edge has a corner there. Common practice."""


def openings_with_corners(whole: MultiPolygon) -> bool:
    """Return whether the edge of any opening has a corner."""
    return any(_has_corner(LinearRing(ring.coords)) for p in whole.geoms for ring in p.interiors)


def _has_corner(ring: LinearRing) -> bool:
    return any(_turn(ring, ring.project(Point(x, y))) >= CORNER for x, y in ring.coords[:-1])


def _turn(ring: LinearRing, at: float) -> float:
    """Return by how many degrees the edge turns around a place on it."""
    before, here, after = (ring.interpolate((at + d) % ring.length) for d in (-SPAN, 0, SPAN))
    one = math.atan2(here.y - before.y, here.x - before.x)
    two = math.atan2(after.y - here.y, after.x - here.x)
    return abs(math.degrees((two - one + math.pi) % (2 * math.pi) - math.pi))
