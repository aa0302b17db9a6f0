"""Curves as straight pieces, never farther from the curve than a tolerance.

In: control points, arcs. Out: arrays of points, the first one left out.
Invariant: the number of pieces depends on the shape and the tolerance alone, so that a
turned or mirrored curve gives the same points turned or mirrored.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

Points = NDArray[np.float64]

MOST = 20_000
"""Pieces of one curve; the drawing's own limit on points is met long before."""


def bezier(control: Points, tolerance: float) -> Points:
    """Flatten a Bezier curve of any degree from its control points, shape (degree + 1, 2).

    A curve of degree d cut at n equal steps of its parameter is nowhere farther from its
    chords than d (d - 1) / 8 * M / n^2, M being the longest second difference of the
    control points (Wang's bound for Bezier curves; from memory).
    """
    degree = len(control) - 1
    if degree < 2:
        return control[1:]
    bend = np.hypot(*np.diff(control, 2, axis=0).T).max()
    pieces = steps(math.sqrt(degree * (degree - 1) / 8 * bend / tolerance))
    t = np.linspace(0, 1, pieces + 1)[1:, None]
    found = np.zeros((pieces, 2))
    for i, point in enumerate(control):
        found += math.comb(degree, i) * t**i * (1 - t) ** (degree - i) * point
    found[-1] = control[-1]
    return found


def arc(
    centre: Points, a: Points, b: Points, start: float, sweep: float, tolerance: float
) -> Points:
    """Flatten centre + a cos t + b sin t for t from `start` to `start + sweep` (radians).

    A chord over an angle u lies within r (1 - cos(u / 2)) of a circle of radius r, and an
    ellipse is a circle of its longer half axis squeezed.
    """
    longest = float(np.linalg.svd(np.stack([a, b], axis=1), compute_uv=False)[0])
    if longest <= tolerance:
        pieces = 2
    else:
        pieces = steps(abs(sweep) / (2 * math.acos(1 - tolerance / longest)))
    t = start + sweep * np.linspace(0, 1, pieces + 1)[1:, None]
    return centre + np.cos(t) * a + np.sin(t) * b


def steps(pieces: float) -> int:
    """Return a whole number of pieces, at least one; hair's breadths above one do not count."""
    return max(1, min(MOST, math.ceil(pieces - 1e-9)))


def quadrants(radius: float, tolerance: float) -> int:
    """Return the pieces of a quarter circle that stay within a tolerance of it."""
    if radius <= tolerance:
        return 1
    return steps(math.pi / 4 / math.acos(1 - tolerance / radius))
