"""Growing and shrinking areas by a distance, edges true offsets.

In: areas in inches, a distance (negative to shrink). Out: areas.
Invariant: growing by a and then by b is growing by a + b, and shrinking likewise; so a
large step over a jagged outline is taken in small ones that double, each from an outline
that the one before has smoothed. In one step every point would meet all its neighbours.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from publish.draft.curves import quadrants
from publish.draft.limits import CHORD

DENSE = 4_000
"""Points of an outline from which work is done in steps, in case it is a torn one."""

FIRST = 0.01
"""Inches of the smoothing."""

_STEP = FIRST / 8
"""Inches of the first step: near the distance between the teeth of a torn outline, so that
it closes the gaps between them while each still meets few others."""


SHARP = 240
"""Sharp corners of an outline from which work is done on one repeat of it, in steps, too."""

_TURN = math.radians(30)
"""An outline that turns by less at a point has no sharp corner there."""


def corners(shape: BaseGeometry) -> int:
    """Return how many sharp corners the outlines of an area have."""
    if shapely.count_coordinates(shape) <= SHARP:
        return 0
    rings = shapely.get_rings(shapely.get_parts(shape))
    points, ring = shapely.get_coordinates(rings, return_index=True)
    sides = np.diff(points, axis=0)
    ways = np.arctan2(sides[:, 1], sides[:, 0])
    turns = np.abs((np.diff(ways) + math.pi) % (2 * math.pi) - math.pi)
    inside = ring[2:] == ring[:-2]
    return int((inside & (turns > _TURN)).sum())


def stepped(shape: BaseGeometry, distance: float) -> BaseGeometry:
    """Return an area grown or shrunk by steps that double, corners about as round as a disc
    of each step's size; what a step rounds is smooth to the next."""
    way, left, step = (1 if distance > 0 else -1), abs(distance), abs(distance) / 16
    while step < left and corners(shape) > 0:
        shape = shape.buffer(way * step, quad_segs=8).simplify(CHORD / 8)
        left, step = left - step, 2 * step
    return shape.buffer(way * left, quad_segs=8)


def offset(
    shape: BaseGeometry, distance: float, tolerance: float = CHORD, dense: int = DENSE
) -> BaseGeometry:
    """Return everything within a distance of a shape, or what is left of it that far in.

    Round corners are within `tolerance` of round. `dense` is for a shape that is a share of
    a larger one.
    """
    way, left, step = (1 if distance > 0 else -1), abs(distance), _STEP
    while step < left and shapely.count_coordinates(shape) > dense:
        grown = shape.buffer(way * step, quad_segs=quadrants(step, tolerance / 2))
        shape = grown.simplify(tolerance / 8)  # seven steps at most before an inch
        left, step = left - step, 2 * step
    return shape.buffer(way * left, quad_segs=quadrants(left, tolerance))


def smoothed(shape: BaseGeometry, dense: int = DENSE) -> BaseGeometry:
    """Return a copy of an outline with very many points, without the teeth of a torn one.

    Whatever is narrower than twice `FIRST` may be missing from the copy. No point of it
    depends on anything farther away than four times `FIRST`.
    """
    if shapely.count_coordinates(shape) <= dense:
        return shape
    closed = offset(shape, FIRST, dense=dense).simplify(CHORD)
    opened = offset(closed, -2 * FIRST, dense=dense).simplify(CHORD)
    found = offset(opened, FIRST, dense=dense).simplify(CHORD)
    return shape if found.is_empty else found
