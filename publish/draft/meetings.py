"""How an outline meets the folds that it was cut on.

In: the wedge of a mirrored motif, finely flattened. Out: `Meeting`s.
Invariant: an angle is the curve's own at the fold, not that of the straight piece it is
flattened to: the first pieces beside a fold are thought on to it as a parabola.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
from shapely.geometry import MultiPolygon

from publish.draft.curves import Points
from publish.draft.limits import SNAP
from publish.draft.unfold import ray, wedge_angle
from publish.model.draft import Meeting

CORNER = 15.0
"""Degrees between two pieces from which there is a corner between them, no curve."""

LEAST = 1e-6
"""Inches: a piece shorter than this came off when the drawing was cut at the fold."""


def meetings(wedge: MultiPolygon, folds: int) -> tuple[Meeting, ...]:
    """Return where the outline leaves each fold, from the centre outwards.

    `wedge` is in inches. What touches a fold at a point alone is not cut on it.
    """
    found: list[Meeting] = []
    for kind, angle in (("multiple", 0.0), ("single", wedge_angle(folds))):
        along, across = ray(angle), ray(angle + 90)
        here: list[tuple[float, float]] = []
        for part in wedge.geoms:
            for ring in (part.exterior, *part.interiors):
                points = np.asarray(ring.coords)[:-1]
                for way in (points, points[::-1]):
                    here += _leaving(way, along, across)
        found += [Meeting(kind, reach, turn) for reach, turn in sorted(here)]
    return tuple(found)


def _leaving(points: Points, along: Points, across: Points) -> Iterator[tuple[float, float]]:
    """Yield how far from the centre a ring leaves a fold, and the angle of the cloth there,
    going round the ring one way."""
    reach = points @ along
    on = (np.abs(points @ across) <= SNAP) & (reach >= -SNAP)
    for i in np.flatnonzero(on & ~np.roll(on, -1)):
        ring = np.roll(points, -int(i), axis=0)
        back = np.roll(on, -int(i))[::-1]
        contact = int(back.argmin()) if not back.all() else len(back) - 1
        if not contact:
            continue
        first = ring[-contact] @ along
        if abs(first - reach[i]) <= SNAP or reach[i] <= SNAP:
            continue
        way = _begun(ring) @ np.stack([along, across], axis=1)
        cloth = 1.0 if first > reach[i] else -1.0
        yield float(reach[i]), math.degrees(math.atan2(abs(way[1]), cloth * way[0]))


def _begun(ring: Points) -> Points:
    """Return the direction in which a ring leaves its first point."""
    sides = np.diff(ring, axis=0)
    long = np.hypot(*sides.T)
    sides, long = sides[long > LEAST], long[long > LEAST]
    one, two = (sides[k] / long[k] for k in (0, 1))
    turn = math.degrees(math.acos(float(np.clip(one @ two, -1, 1))))
    if turn > CORNER:
        found: Points = one
        return found
    share = long[0] / (long[0] + long[1])
    bent: Points = (1 + share) * one - share * two
    return bent
