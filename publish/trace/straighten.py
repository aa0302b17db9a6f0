"""Straightening a photo by the motif's own symmetry.

In: how much of each pixel is paper, the number of turns, a start. Out: `Pose`: the
homography from the plane of the paper to the picture, and how well its copies agree.
Invariant: in that plane the centre is the origin, the fold lies along x, and the motif
reaches about 1 from the centre.

Seven numbers are sought: the centre, the perspective, the stretch, the direction of one
fold; scale, turn and side are free. What is made small is how far the copies of the motif
(its turns, and their mirror images across the fold) differ from their mean, as soft masks
on the straightened plane, from coarse to fine. At each step the picture is straightened by
what is known so far, so that the next step starts near nothing and a blur is round.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import cv2
import numpy as np

from publish.trace.image import Floats, Points
from publish.trace.plane import copies, project, sampled, straightened, turned

REACH = 1.15
"""How far the straightened square reaches, where the motif reaches 1."""

COARSE = ((48, 2.4), (48, 1.2), (96, 1.2))
FINE = ((192, 1.2), (384, 1.2), (768, 1.2))
"""Pixels of the straightened square, and the spread of its blur."""

MOST = 2500
"""Points that are compared."""

STEPS = 8


@dataclass(frozen=True)
class Pose:
    """Where the plane is, and `unlike`: the spread of the copies about their mean, 0 for a
    motif that repeats, 1 for one that does not at all."""

    matrix: Points
    turns: int
    unlike: float


def rounded(share: Floats) -> Points | None:
    """Return the start: the matrix that makes the paper's second moments round, with its
    reach made 1; None where there is no paper.

    Any shape with three or more equal turns is round in that sense, but for perspective.
    """
    grain = max(1, max(share.shape) // 600)
    few = cv2.resize(share, None, fx=1 / grain, fy=1 / grain, interpolation=cv2.INTER_AREA)
    mask = (few > 0.5).astype(np.float32)
    m = cv2.moments(mask)
    if m["m00"] < 25:
        return None
    middle = np.array([m["m10"], m["m01"]]) / m["m00"]
    spread = np.array([[m["mu20"], m["mu11"]], [m["mu11"], m["mu02"]]]) / m["m00"]
    value, way = np.linalg.eigh(spread)
    if value[0] < 1:
        return None
    root = way @ np.diag(np.sqrt(value)) @ way.T
    y, x = np.nonzero(mask)
    away = (np.column_stack([x, y]) - middle) @ np.linalg.inv(root).T
    reach = float(np.percentile(np.hypot(*away.T), 99.8))
    size = np.array(share.shape[::-1]) / np.array(few.shape[::-1])
    matrix = np.eye(3)
    matrix[:2, :2] = root * reach * size[:, None]
    matrix[:2, 2] = (middle + 0.5) * size - 0.5
    return matrix


def fold_starts(share: Floats, matrix: Points, turns: int, most: int = 3) -> list[float]:
    """Return the likeliest directions of a fold, best first, in radians.

    A circle round the centre that is mirrored in a fold reads the same both ways round from
    it; how well it does for each direction is one product of Fourier series.
    """
    count = 360
    square = straightened(share, matrix, 128, REACH, 1.5)
    angle = 2 * math.pi * np.arange(count) / count
    scores = np.zeros(count)
    for radius in np.linspace(0.15, 1.05, 19):
        ring = np.column_stack([np.cos(angle), np.sin(angle)]) * radius
        values = sampled(square, (ring / REACH + 1) * 64 - 0.5)
        series = np.fft.fft(values)
        series[0] = 0
        order = np.arange(count)
        series[(order % turns) != 0] *= 0.3
        scores += radius * np.fft.ifft(series * series).real
    # A fold at angle a pairs a + t with a - t: the product peaks at twice the angle.
    period = count // turns if count % turns == 0 else count
    total = scores[: turns * period].reshape(turns, period).sum(axis=0)
    peaks = [
        i for i in range(period) if total[i] >= total[i - 1] and total[i] > total[(i + 1) % period]
    ]
    peaks.sort(key=lambda i: -total[i])
    return [math.pi * i / count for i in peaks[:most]]


def settle(
    share: Floats, matrix: Points, turns: int, fold: float, levels: tuple[tuple[int, float], ...]
) -> Pose:
    """Return the pose after going through levels of ever finer squares."""
    start = matrix.copy()
    start[:, :2] = start[:, :2] @ turned(fold)
    pose = Pose(start, turns, 1.0)
    for side, level in levels:
        pose = _refined(share, pose, side, level)
    return pose


def _refined(share: Floats, pose: Pose, side: int, level: float) -> Pose:
    """Return the pose after one level."""
    square = straightened(share, pose.matrix, side, REACH, level)
    down = cv2.Sobel(square, cv2.CV_32F, 0, 1, ksize=3) / 8
    along = cv2.Sobel(square, cv2.CV_32F, 1, 0, ksize=3) / 8
    field = np.dstack([square, along, down])
    points = _worth(square, pose.turns, side)
    half = side / 2
    ways = copies(pose.turns, 0.0)
    change, damping = np.zeros(7), 1e-3
    rest, slope = _differences(field, points, ways, change, half)
    best = _cost(rest)
    for _ in range(STEPS):
        weight = 1 / (1 + (rest / max(2 * float(np.median(np.abs(rest))), 0.05)) ** 2)
        pull = np.einsum("kni,kn,kn->i", slope, weight, rest)
        stiff = np.einsum("kni,kn,knj->ij", slope, weight, slope)
        stiff += np.diag(damping * np.diag(stiff) + 1e-9 * np.trace(stiff))
        tried = change - np.linalg.solve(stiff, pull)
        if np.abs(tried).max() > 0.5:
            damping *= 10
            continue
        new, new_slope = _differences(field, points, ways, tried, half)
        if _cost(new) < best:
            moved = float(np.abs(tried - change).max())
            change, rest, slope = tried, new, new_slope
            best, damping = _cost(rest), damping / 4
            if moved < 0.02 / side:
                break
        else:
            damping *= 8
    matrix = pose.matrix @ _step(change)
    spread = float(square.std())
    unlike = math.sqrt(float((rest**2).mean())) / max(spread, 1e-6)
    return Pose(matrix / matrix[2, 2], pose.turns, unlike)


def _cost(rest: Points) -> float:
    """Return how far the copies differ, outliers counting for less."""
    return float(np.log1p((rest / 0.25) ** 2).sum())


def _worth(square: Floats, turns: int, side: int) -> Points:
    """Return the points to be compared, in the plane: those that are near an edge in some
    copy, a wedge's worth more than once doing no harm."""
    edge = np.hypot(cv2.Sobel(square, cv2.CV_32F, 0, 1), cv2.Sobel(square, cv2.CV_32F, 1, 0))
    near = cv2.dilate(edge, np.ones((3, 3), np.uint8))
    y, x = np.nonzero(near > 0.15 * float(near.max()))
    plane = (np.column_stack([x, y]) + 0.5) / side * 2 * REACH - REACH
    plane = plane[np.hypot(*plane.T) < REACH]
    if len(plane) > MOST:
        plane = plane[np.random.default_rng(7).permutation(len(plane))[:MOST]]
    found: Points = plane
    return found


def _step(change: Points) -> Points:
    """Return the small homography of seven numbers: centre, stretch, perspective, fold."""
    a, b, e, f, p, q, fold = change
    stretch = np.array([[1 + e, f, a], [f, 1 - e, b], [p, q, 1.0]])
    turn = np.eye(3)
    turn[:2, :2] = turned(fold)
    found: Points = stretch @ turn
    return found


def _differences(
    field: Floats, points: Points, ways: list[Points], change: Points, half: float
) -> tuple[Points, Points]:
    """Return how far each copy is from the mean of all, shape (copies, n), and the
    derivative of that, shape (copies, n, 7)."""
    every = np.concatenate([points @ way.T for way in ways])
    at = project(_step(change), every)
    got = sampled(field, (at / REACH + 1) * half - 0.5).astype(np.float64)
    slope = _slope(every @ turned(change[6]).T, at, got[:, 1:] * (half / REACH), change)
    values, slopes = got[:, 0].reshape(len(ways), -1), slope.reshape(len(ways), -1, 7)
    return values - values.mean(axis=0), slopes - slopes.mean(axis=0)


def _slope(z: Points, at: Points, rise: Points, change: Points) -> Points:
    """Return the derivative by the seven numbers, shape (n, 7), of a field whose rise is
    known at points; `z` are the points before the stretch, `at` after it."""
    e, f, p, q = change[2:6]
    x, y = z.T
    gx, gy = (rise / (z @ change[4:6] + 1)[:, None]).T
    inward = gx * at[:, 0] + gy * at[:, 1]
    along_x, along_y = gx * (1 + e) + gy * f - inward * p, gx * f + gy * (1 - e) - inward * q
    spun = along_y * x - along_x * y
    stretched = (gx * x - gy * y, gx * y + gy * x)
    found: Points = np.stack([gx, gy, *stretched, -inward * x, -inward * y, spun], axis=1)
    return found
