"""What the openings of a motif are like: one inward curve all round, or an edge that bends
both ways.

In: a motif's shape. Out: a truth value.
Invariant: an opening is one inward curve when next to nothing of its hull lies outside it
and its edge has no corner.
"""

from __future__ import annotations

import math

from shapely.geometry import LinearRing, MultiPolygon, Point, Polygon

SPAN = 0.06
"""Inches before and after a place on the edge between which its turn is measured."""
CORNER = 50.0
"""Degrees of turn from which on an edge has a corner there. Common practice."""
ROUND = 0.98
"""Share of its hull that an opening fills when it bends one way only. Common practice."""


def openings_bend_both_ways(whole: MultiPolygon) -> bool:
    """Return whether any opening has a corner, or an edge that bends in and out."""
    return any(_bends(LinearRing(ring.coords)) for p in whole.geoms for ring in p.interiors)


def _bends(ring: LinearRing) -> bool:
    area = Polygon(ring)
    if area.area < ROUND * area.convex_hull.area:
        return True
    return any(_turn(ring, ring.project(Point(x, y))) >= CORNER for x, y in ring.coords[:-1])


def _turn(ring: LinearRing, at: float) -> float:
    """Return by how many degrees the edge turns around a place on it."""
    before, here, after = (ring.interpolate((at + d) % ring.length) for d in (-SPAN, 0, SPAN))
    one = math.atan2(here.y - before.y, here.x - before.x)
    two = math.atan2(after.y - here.y, after.x - here.x)
    return abs(math.degrees((two - one + math.pi) % (2 * math.pi) - math.pi))
