"""The wedge that most of a motif's copies agree on.

In: how much of each pixel is paper, a pose. Out: `Wedge`, one wedge as a field of cover,
and how far each copy strays from it.
Invariant: half of the copies may be cut amiss anywhere, on either side, and the wedge is
the one of the others; the field runs on across both folds as their mirror images do.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import cv2
import numpy as np

from publish.trace.aligned import Move
from publish.trace.image import Floats, Points
from publish.trace.plane import copies, local, project, sampled
from publish.trace.straighten import Pose

MARGIN = 14
"""Pixels beyond the folds that are worked out too."""

REACH = 1.06
"""How far from the centre, where the motif reaches about 1."""

OVER = 0.5
"""Pixels beyond a fold at which a moved copy is another copy's paper."""

INSET = 6
"""Pixels inside the edge of a folded wedge at which its paper is whole."""

BAND = 1 << 18
"""Pixels worked out at once, so that memory stays bounded."""

FAR = 0.04
"""How far from the outline a copy's edge is looked for."""

FINEST = 1400
"""Pixels from the centre to the motif's end, at most."""


@dataclass(frozen=True)
class Wedge:
    """A field of cover in the plane: its pixels, pixels to a unit, the place of its first
    pixel's middle, and the angle between its folds."""

    field: Floats
    unit: float
    origin: Points
    angle: float

    def plane(self, pixels: Points) -> Points:
        """Return the place in the plane of points given as column and row."""
        found: Points = pixels / self.unit + self.origin
        return found


@dataclass(frozen=True)
class Strayed:
    """How one copy differs: the share of the outline's points at each distance is kept as
    the middle and the greatest distance, in the plane, and where that is (in the plane)."""

    usual: float
    greatest: float
    where: tuple[float, float]


def agreed(share: Floats, pose: Pose, folds: int, moves: Sequence[Move] = ()) -> Wedge:
    """Return the wedge from the x axis to 360 / folds degrees towards y, each copy moved.

    A pose of no turns is of a folded wedge: there is one copy, and its paper ends at the
    folds, so that what is near them is taken from a little further in.
    """
    angle = 2 * math.pi / folds
    ways = copies(pose.turns, 0.0) if pose.turns else [np.eye(2)]
    scales = np.sqrt(np.abs(np.linalg.det(local(pose.matrix, _ring()))))
    unit = min(float(np.median(scales)), FINEST)
    high = REACH * (math.sin(angle) if angle < math.pi / 2 else 1.0)
    columns, rows = (int(v * unit) + 2 * MARGIN for v in (REACH, high))
    origin = np.array([-MARGIN, -MARGIN]) / unit
    y, x = np.divmod(np.arange(rows * columns), columns)
    field = np.zeros(rows * columns, np.float32)
    plane = np.column_stack([x, y]) / unit + origin
    near = (_beyond(plane, angle) <= MARGIN / unit) & (np.hypot(*plane.T) <= REACH)
    index = np.flatnonzero(near)
    for first in range(0, len(index), BAND // len(ways)):
        part = index[first : first + BAND // len(ways)]
        points = _within(plane[part], angle)
        if not pose.turns:
            points = _inwards(points, angle, INSET / unit)
        placed = [move(points) for move in moves] or [points] * len(ways)
        values = np.stack(
            [
                sampled(share, project(pose.matrix, at @ way.T))
                for at, way in zip(placed, ways, strict=True)
            ]
        )
        if moves:
            values[np.stack([_beyond(at, angle) for at in placed]) > OVER / unit] = np.nan
        field[part] = _middle(values)
    return Wedge(field.reshape(rows, columns), unit, origin, angle)


def _ring() -> Points:
    angle = np.linspace(0, 2 * math.pi, 12, endpoint=False)
    return 0.7 * np.column_stack([np.cos(angle), np.sin(angle)])


def _beyond(plane: Points, angle: float) -> Points:
    """Return how far each point lies outside the folds; less than 0 inside."""
    found: Points = np.maximum(
        -plane[:, 1], plane[:, 1] * math.cos(angle) - plane[:, 0] * math.sin(angle)
    )
    return found


def _within(plane: Points, angle: float) -> Points:
    """Return points with those beyond a fold mirrored in it."""
    inside = plane * [1.0, 0.0] + np.abs(plane) * [0.0, 1.0]
    across = np.array([-math.sin(angle), math.cos(angle)])
    found: Points = inside - 2 * np.maximum(inside @ across, 0.0)[:, None] * across
    return found


def _inwards(plane: Points, angle: float, near: float) -> Points:
    """Return points moved to a distance inside both folds."""
    moved = plane.copy()
    moved[:, 1] = np.maximum(moved[:, 1], near)
    square = np.array([math.sin(angle), -math.cos(angle)])
    short = np.maximum(0.0, near - moved @ square)
    found: Points = moved + short[:, None] * square
    return found


def _middle(values: Floats) -> Floats:
    """Return the mean of the middle half of the copies' values, of those there are."""
    order = np.clip(np.sort(values, axis=0), 0, 1)
    few = np.isnan(order[-1])
    cut = len(values) // 4
    middle = np.asarray(order[cut : len(values) - cut].mean(axis=0), np.float32)
    if few.any():
        some = order[:, few]
        count = np.maximum(np.isfinite(some).sum(axis=0), 1)
        place = np.arange(len(some))[:, None]
        kept = (place >= count // 4) & (place < count - count // 4)
        middle[few] = np.where(kept, np.nan_to_num(some), 0).sum(axis=0) / kept.sum(axis=0)
    return middle


def gaps(share: Floats, pose: Pose, folds: int, edge: Points, inward: Points) -> Points:
    """Return how far inwards each copy's edge lies from points of the agreed outline, shape
    (copies, n), whose ground lies the way of `inward` reversed; infinite where there is none.

    Along the line square to the outline each copy's half level is looked for.
    """
    steps = np.linspace(-FAR, FAR, 81)
    found = []
    for way in copies(folds // 2, 0.0):
        along = edge[:, None] + steps[None, :, None] * inward[:, None]
        at = project(pose.matrix, along.reshape(-1, 2) @ way.T)
        values = sampled(share, at).reshape(len(edge), len(steps))
        smooth = cv2.GaussianBlur(values, (0, 0), 1.0, sigmaY=1e-3)
        found.append(_crossing(np.asarray(smooth, np.float32), steps))
    return np.stack(found)


def strayed(found: Points, folds: int, edge: Points) -> list[Strayed]:
    """Return how far each copy strays, from its gaps."""
    result = []
    for way, row in zip(copies(folds // 2, 0.0), found, strict=True):
        away = np.abs(_evened(np.where(np.isfinite(row), row, FAR)))
        worst = int(away.argmax())
        x, y = edge[worst] @ way.T
        result.append(Strayed(float(away.mean()), float(away[worst]), (float(x), float(y))))
    return result


def _evened(gaps: Points) -> Points:
    """Return for each point the middle of its neighbours' gaps: no slip of the scissors is
    as short as one point, but at a corner a single line may miss its edge."""
    around = np.stack([np.roll(gaps, k) for k in range(-3, 4)])
    found: Points = np.median(around, axis=0)
    return found


def _crossing(values: Floats, steps: Points) -> Points:
    """Return where each row comes to a half nearest to its middle, from ground to paper;
    infinite where it never does."""
    low, high = values[:, :-1], values[:, 1:]
    rises = (low < 0.5) & (high >= 0.5)
    part = (0.5 - low) / np.where(rises, high - low, 1)
    place = steps[:-1] + part * (steps[1] - steps[0])
    away = np.where(rises, np.abs(place), np.inf)
    best = away.argmin(axis=1)
    rows = np.arange(len(values))
    lost = ~np.isfinite(away[rows, best])
    found: Points = np.where(lost, np.inf, place[rows, best])
    return found


def edge_spread(wedge: Wedge) -> float:
    """Return the spread of the blur at the wedge's edges, in its pixels.

    A step blurred by a Gaussian rises by 1 / (spread * sqrt(2 pi)) at its middle.
    """
    field = wedge.field
    rise = np.hypot(cv2.Sobel(field, cv2.CV_32F, 1, 0), cv2.Sobel(field, cv2.CV_32F, 0, 1)) / 8
    near = (np.abs(field - 0.5) < 0.15) & (rise > 1e-3)
    if near.sum() < 20:
        return 1.0
    steep = float(np.percentile(rise[near], 60))
    return 1 / (steep * math.sqrt(2 * math.pi))
