"""Growing and shrinking areas by a distance, edges true offsets.

In: areas in inches, a distance (negative to shrink). Out: areas.
Invariant: growing by a and then by b is growing by a + b, and shrinking likewise; so a
large step over a jagged outline is taken in small ones that double, each from an outline
that the one before has smoothed. In one step every point would meet all its neighbours.
"""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from publish.draft.curves import quadrants
from publish.draft.limits import CHORD

DENSE = 4_000
"""Points of an outline from which steps are taken."""

FIRST = 0.02
"""Inches of the first step."""


def offset(shape: BaseGeometry, distance: float, tolerance: float = CHORD) -> BaseGeometry:
    """Return everything within a distance of a shape, or what is left of it that far in.

    Round corners are within `tolerance` of round.
    """
    way, left, step = (1 if distance > 0 else -1), abs(distance), FIRST
    while left > 0 and not shape.is_empty:
        small = step < left and shapely.count_coordinates(shape) > DENSE
        now = step if small else left
        shape = shape.buffer(way * now, quad_segs=quadrants(now, tolerance))
        left, step = left - now, 2 * step
    return shape
