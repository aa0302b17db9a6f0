"""Where the points of a flat quilt come to lie: edges that wave a little, a pillow's plump.

In: a subject. Out: a `Bend` for its points, and the height of a stuffed pillow.
Invariant: a bend is smooth and keeps corners where they are to a tenth of an inch.

How far edges wave and how far a pillow's edges draw in: common practice, no source.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from publish.render.arrays import Grey, hashed
from publish.render.paint import Bend, Points, Window
from publish.render.subject import Subject

WAVE = 0.0014
"""Share of the shorter side by which an edge strays."""
ASTRAY = 0.0005
"""Share of the shorter side by which a seam strays: a pixel or so of a cover."""
DRAWN_IN = 0.055
"""Share of half a side by which a full pillow's edges draw in at their middle."""
RESTING = 0.75
"""Share of that which is lost where a pillow stands on an edge."""
ROUND = 0.95
"""Radians: how far a pillow's front leans back just inside the middle of an edge."""


def waves(subject: Subject, seed: int = 3) -> Bend:
    """Return the bend of a quilt whose borders wave as quilting draws them in."""
    left, top, right, bottom = subject.bound.bounds
    wide, high = right - left, bottom - top
    reach = WAVE * min(wide, high) + 0.02
    stray = ASTRAY * min(wide, high)

    def bend(points: Points) -> Points:
        u = 2 * (points[:, 0] - left) / wide - 1
        v = 2 * (points[:, 1] - top) / high - 1
        x = reach * (_ripple(v, seed) * _near(-u) - _ripple(v, seed + 1) * _near(u))
        y = reach * (_ripple(u, seed + 2) * _near(-v) - _ripple(u, seed + 3) * _near(v))
        x += stray * _askew(u, v, seed + 4)
        y += stray * _askew(v, u, seed + 6)
        bent: Points = points + np.stack([x, y], axis=1)
        return bent

    return bend


def _askew(u: Points, v: Points, seed: int) -> Points:
    """Return how far seams stray, about 1 at most: waves that cross the quilt both ways."""
    found = np.zeros_like(u)
    for part in range(2):
        for times, phase in zip((2.3, 4.1, 6.7), _phases(seed + part), strict=False):
            found += np.sin(times * np.pi * (v if part else 0.6 * u + 0.5 * v) + phase) / 6
    return found


def _near(u: Points) -> Points:
    return np.clip((u + 1) / 2, 0, 1) ** 7


def _ripple(t: Points, seed: int) -> Points:
    """Return a wave along an edge: a long one, with shorter ones over it."""
    phases = _phases(seed)
    found = np.zeros_like(t)
    for k, (times, size) in enumerate(((0.8, 0.9), (2.1, 0.5), (4.3, 0.25))):
        found += size * np.sin(times * np.pi * t + phases[k])
    return found


@lru_cache
def _phases(seed: int) -> list[float]:
    return [float(v) * float(np.pi) for v in hashed((4,), seed)]


def plump(subject: Subject) -> Bend:
    """Return the bend of a full pillow: corners stay, edges draw in, the middle comes near."""
    left, top, right, bottom = subject.bound.bounds
    wide, high = (right - left) / 2, (bottom - top) / 2

    def bend(points: Points) -> Points:
        u, v = (points[:, 0] - left) / wide - 1, (points[:, 1] - top) / high - 1
        bent: Points = np.stack(
            [
                left + wide * (1 + _drawn(u, v)),
                top + high * (1 + _drawn(v, u, RESTING)),
            ],
            axis=1,
        )
        return bent

    return bend


def _drawn(u: Points, v: Points, resting: float = 0.0) -> Points:
    """Return one coordinate, -1 to 1, as it is seen on a full pillow.

    `resting` is how much of its drawing in the edge at 1 loses by standing on it.
    """
    open_ = np.clip(1 - v * v, 0, 1)
    lean = 0.02 + ROUND * np.sqrt(open_)
    drawn: Points = DRAWN_IN * (1 - resting * np.clip(u, 0, 1)) * open_
    return (1 - drawn) * np.sin(lean * u) / np.sin(lean)


def dome(subject: Subject, window: Window) -> Grey:
    """Return the height of a pillow's front over its edge, in inches, 0 outside it."""
    left, top, right, bottom = subject.bound.bounds
    small = window.coarser(max(8.0, 220 / (right - left)))
    x, y = small.across()
    shape = small.shape
    u0 = np.broadcast_to(2 * (x - left) / (right - left) - 1, shape).astype(np.float64)
    v0 = np.broadcast_to(2 * (y - top) / (bottom - top) - 1, shape).astype(np.float64)
    u, v = u0.copy(), v0.copy()
    for _ in range(8):
        u, v = u + 0.8 * (u0 - _drawn(u, v)), v + 0.8 * (v0 - _drawn(v, u, RESTING))
        u, v = np.clip(u, -1.05, 1.05), np.clip(v, -1.05, 1.05)
    inside = np.clip(1 - u * u, 0, 1) * np.clip(1 - v * v, 0, 1)
    found = 0.24 * min(right - left, bottom - top) / 2 * inside**0.55
    height: Grey = found.astype(np.float32)
    return height
