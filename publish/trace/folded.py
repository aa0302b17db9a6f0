"""A photo of the folded wedge: two straight folds that meet in a point.

In: how much of each pixel is paper. Out: a `Pose` without turns, and the folds.
Invariant: the folds' angle is one that folding gives; nothing is said of perspective, which
a single wedge does not tell.
"""

from __future__ import annotations

import math
from itertools import combinations

import contourpy
import cv2
import numpy as np

from publish.model.trade import FOLDS
from publish.trace.counting import Counted
from publish.trace.image import Floats, Points
from publish.trace.straighten import Pose

OFF = 4.0
"""Degrees that the drawn angle may be off, for paper that sprang open or a slanting camera."""

LEAST = 0.25
"""How long each straight edge is at least, as a share of the wedge's reach."""

Line = tuple[Points, Points, float]
"""A point, a direction, a length."""


def folded(share: Floats, folds: int | None) -> Counted | None:
    """Return the pose of a folded wedge; None when no two edges are its folds.

    Four folds must be told: a square corner is on too much that was never folded.
    """
    ring = _longest_ring(share)
    if ring is None:
        return None
    lines = _lines(ring)
    best: tuple[float, Counted] | None = None
    for (at, way, long), (to, other, also) in combinations(lines, 2):
        turn = float(way[0] * other[1] - way[1] * other[0])
        if abs(turn) < 0.2:
            continue
        gap = to - at
        centre = at + way * float(gap[0] * other[1] - gap[1] * other[0]) / turn
        away = ring - centre
        reach = float(np.percentile(np.hypot(*away.T), 99.5))
        if min(long, also) < LEAST * reach:
            continue
        one, two = (w if float((p - centre) @ w) > 0 else -w for p, w in ((at, way), (to, other)))
        if one[0] * two[1] - one[1] * two[0] < 0:
            one, two = two, one
        angle = math.degrees(math.acos(float(np.clip(one @ two, -1, 1))))
        count = min(FOLDS[1:] if folds is None else (folds,), key=lambda f: abs(360 / f - angle))
        outside = _outside(away, one, two, 0.01 * reach)
        if abs(360 / count - angle) > OFF or outside > 0.01:
            continue
        if best is None or long + also > best[0]:
            best = (long + also, Counted(_pose(centre, one, two, reach, count), count))
    return None if best is None else best[1]


def _pose(centre: Points, one: Points, two: Points, reach: float, folds: int) -> Pose:
    """Return the pose that carries the wedge's folds to the edges."""
    angle = 2 * math.pi / folds
    want = np.array([[1.0, math.cos(angle)], [0.0, math.sin(angle)]])
    matrix = np.eye(3)
    matrix[:2, :2] = np.stack([one, two], axis=1) @ np.linalg.inv(want) * reach
    matrix[:2, 2] = centre
    return Pose(matrix, 0, 0.0)


def _outside(away: Points, one: Points, two: Points, near: float) -> float:
    """Return the share of points that lie outside two directions by more than `near`."""
    below = one[0] * away[:, 1] - one[1] * away[:, 0] < -near
    above = away[:, 0] * two[1] - away[:, 1] * two[0] < -near
    return float((below | above).mean())


def _longest_ring(share: Floats) -> Points | None:
    smooth = cv2.GaussianBlur(share, (0, 0), 1.0)
    made = contourpy.contour_generator(z=np.pad(smooth, 1), name="serial").lines(0.5)
    rings = [np.asarray(line) - 1 for line in made if len(line) > 100]
    if not rings:
        return None
    return max(rings, key=lambda r: float(np.prod(np.ptp(r, axis=0))))


def _lines(ring: Points) -> list[Line]:
    """Return the straight edges of a ring, longest first; edges on one line are one."""
    size = float(np.hypot(*np.ptp(ring, axis=0)))
    corners = cv2.approxPolyDP(ring.astype(np.float32), 0.004 * size, True)[:, 0].astype(float)
    sides = np.stack([corners, np.roll(corners, -1, axis=0)], axis=1)
    sides = sides[np.argsort(-np.hypot(*(sides[:, 1] - sides[:, 0]).T))][:40]
    found: list[Line] = []
    for a, b in sides:
        long = float(np.hypot(*(b - a)))
        way = (b - a) / max(long, 1e-9)
        same = next(
            (
                k
                for k, (at, line, _) in enumerate(found)
                if abs(line[0] * way[1] - line[1] * way[0]) < 0.03
                and abs((a - at) @ np.array([-line[1], line[0]])) < 0.01 * size
            ),
            None,
        )
        if same is None:
            found.append((a, way, long))
        else:
            found[same] = (*found[same][:2], found[same][2] + long)
    kept = sorted(found, key=lambda item: -item[2])[:8]
    return [_fitted(ring, line, 0.004 * size) for line in kept]


def _fitted(ring: Points, line: Line, near: float) -> Line:
    """Return a line laid through the points of the ring that are near it."""
    at, way, long = line
    for within in (2 * near, near):
        off = (ring - at) @ np.array([-way[1], way[0]])
        points = ring[np.abs(off) < within]
        at = points.mean(axis=0)
        _, _, axes = np.linalg.svd(points - at, full_matrices=False)
        way = axes[0] if axes[0] @ way > 0 else -axes[0]
    return at, way, long
