"""How far a tip reaches beyond the rounded end that a lens has left of it.

In: the field of cover about a corner, its sides, the spread of the blur. Out: a length.
Invariant: what is found, blurred as the picture is, looks most like the picture; sides that
bend and tips that were cut blunt are told from those that come to a point.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import cv2
import numpy as np

from publish.trace.image import Floats, Points

GRAIN = 5
"""How many times finer than the field a tip is drawn."""

TRIED = np.linspace(0, 1.7, 12)
"""Lengths that are tried, as shares of the likely one."""

ALIKE = 1.25
"""How many times the least difference from the field is as good as the least."""

PIXEL = 0.29
"""Spread that a pixel's own width adds to a blur: 1 / sqrt(12)."""


@dataclass(frozen=True)
class Tip:
    """A corner in the field's pixels: its sides from far to near, its rounded top, and the
    place where its sides meet."""

    one: Points
    two: Points
    top: Points
    apex: Points


def reach(field: Floats, tip: Tip, spread: float, likely: float) -> float | None:
    """Return how far beyond its rounded top a tip reaches, in pixels; None where the field
    does not show enough of it."""
    away = tip.apex - tip.top
    near = float(np.hypot(*away))
    if near < 1e-6:
        return 0.0
    likely = max(near, likely)
    radius = math.ceil(likely + 2.5 * spread) + 1
    column, row = (int(v) - radius for v in np.round(tip.top))
    side = 2 * radius + 1
    seen = field[max(row, 0) : row + side, max(column, 0) : column + side]
    if seen.shape != (side, side):
        return None
    corner = np.array([column, row])
    y, x = np.mgrid[0:side, 0:side]
    close = np.hypot(x - radius, y - radius) <= radius
    scores = []
    for share in TRIED * likely / near:
        drawn = _drawn(tip, away, float(share), corner, side, spread)
        like, unlike = (float(((d - seen)[close] ** 2).sum()) for d in (drawn, 1 - drawn))
        scores.append(min(like, unlike))
    return _best(TRIED * likely, np.array(scores), near)


def _drawn(
    tip: Tip, away: Points, share: float, corner: Points, side: int, spread: float
) -> Floats:
    """Return a tip that reaches a share of the way to its apex, blurred: cut off square
    where that is less than the whole, drawn out where it is more."""
    end = tip.top + max(share, 1.0) * away
    ring = np.concatenate([tip.one, end[None], tip.two[::-1]])
    fine = np.zeros((side * GRAIN, side * GRAIN), np.uint8)
    place = ((ring - corner + 0.5) * GRAIN - 0.5) * 16
    cv2.fillPoly(fine, [np.round(place).astype(np.int32)], 255, shift=4)
    if share < 1:
        y, x = np.mgrid[0 : side * GRAIN, 0 : side * GRAIN]
        middle = ((tip.top + share * away - corner + 0.5) * GRAIN - 0.5)[:, None, None]
        fine[(x - middle[0]) * away[0] + (y - middle[1]) * away[1] > 0] = 0
    small = cv2.resize(fine, (side, side), interpolation=cv2.INTER_AREA).astype(np.float32) / 255
    blur = math.sqrt(max(spread**2 - PIXEL**2, 0.01))
    return np.asarray(cv2.GaussianBlur(small, (0, 0), blur), np.float32)


def _best(lengths: Points, scores: Points, near: float) -> float:
    """Return the length that scores lowest; of those that the field can hardly tell apart,
    the one nearest to where the sides meet."""
    steps = np.linspace(0, lengths[-1], 120)
    alike = steps[np.interp(steps, lengths, scores) <= ALIKE * float(scores.min())]
    return float(alike[np.abs(alike - near).argmin()])
