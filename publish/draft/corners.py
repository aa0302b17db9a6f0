"""Tips and inside corners of an outline, told from curves.

In: areas of cloth in inches. Out: `Corner`s with their angles.
Invariant: an angle is measured over a stretch of outline on either side, never at a single
point, so that the straight pieces of a flattened curve are no corners.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import MultiPolygon

from publish.draft.curves import Points

WINDOW = 0.1
"""Inches of outline on each side of a point that its angle is measured over: about what a
needle turns under at once. A curve tighter than this turns like a corner."""

SHARP = 90.0
"""A tip is an outward corner below this many degrees."""

CLIPPED = 135.0
"""An inside corner is clipped when the ground's angle in it is at most this."""

MARGIN = 0.5
"""Degrees by which a corner must pass these limits, so that an exact right angle never
depends on rounding."""


@dataclass(frozen=True)
class Corner:
    """A corner: where it is, and its angle in degrees, of cloth in a tip, of ground in an
    inside corner."""

    x: float
    y: float
    angle: float


def corners(cloth: MultiPolygon) -> tuple[tuple[Corner, ...], tuple[Corner, ...]]:
    """Return the tips and the inside corners, sharpest first."""
    tips: list[Corner] = []
    insides: list[Corner] = []
    for part in shapely.orient_polygons(cloth).geoms:
        for ring in (part.exterior, *part.interiors):
            points = np.asarray(ring.coords)[:-1]
            turn, arc, whole = _turns(points)
            tips += _picked(points, turn, arc, whole, 180 - SHARP + MARGIN)
            insides += _picked(points, -turn, arc, whole, 180 - CLIPPED + MARGIN)
    by_angle = sorted(tips, key=lambda c: c.angle), sorted(insides, key=lambda c: c.angle)
    return tuple(by_angle[0]), tuple(by_angle[1])


def _turns(points: Points) -> tuple[Points, Points, float]:
    """Return how far the outline turns at each point (degrees, outward corners positive),
    the way along the ring to each point, and the ring's length."""
    sides = np.hypot(*(np.roll(points, -1, axis=0) - points).T)
    arc = np.concatenate([[0.0], np.cumsum(sides)])
    whole = float(arc[-1])
    reach = min(WINDOW, whole / 8)
    closed = np.concatenate([points, points[:1]])

    def at(way: Points) -> Points:
        way = way % whole
        return np.stack([np.interp(way, arc, closed[:, k]) for k in (0, 1)], axis=1)

    before, after = points - at(arc[:-1] - reach), at(arc[:-1] + reach) - points
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    dot = (before * after).sum(axis=1)
    return np.degrees(np.arctan2(cross, dot)), arc[:-1], whole


def _picked(points: Points, turn: Points, arc: Points, whole: float, least: float) -> list[Corner]:
    """Return the corners that turn the most in their neighbourhood, and at least `least`."""
    found: list[int] = []
    near = 1.5 * min(WINDOW, whole / 8)
    free = np.ones(len(points), dtype=bool)
    sharp = np.flatnonzero(turn >= least)
    sharp = sharp[np.argsort(-turn[sharp], kind="stable")]
    laps = np.array([-whole, 0.0, whole])  # the way begins anew at the first point
    firsts = np.searchsorted(arc, (arc[sharp, None] + laps) - near, "left")
    stops = np.searchsorted(arc, (arc[sharp, None] + laps) + near, "right")
    for i, low, high in zip(sharp.tolist(), firsts.tolist(), stops.tolist(), strict=True):
        if free[i]:
            for first, stop in zip(low, high, strict=True):
                free[first:stop] = False
            found.append(i)
    return [Corner(float(points[i, 0]), float(points[i, 1]), 180 - float(turn[i])) for i in found]
