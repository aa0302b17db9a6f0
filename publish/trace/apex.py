"""Where the two sides of a corner meet, beyond what a lens has rounded.

In: points of both sides, about a pixel apart, from the corner outwards. Out: the place and
the angle between the sides there.
Invariant: a side that is straight goes on straight, one that bends goes on along its circle.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from publish.trace.image import Points

BENT = 0.25
"""Pixels off a straight line from which a side is taken for a curve, not for noise."""

TRUE = 0.4
"""Pixels off a line or a circle up to which a side is one, noise and all."""

LEAST = 6
"""Points of a side that tell where it goes, at least; fewer than this many more are a line."""

ROUND = math.radians(75)
"""Angle between two sides from which they may be one round line."""

STEP = 0.25
"""Pixels of a step along a side that is thought on."""


@dataclass(frozen=True)
class Apex:
    """A place, the angle in radians between the sides there, the points of both sides on
    the way there, and the angle where they begin."""

    place: Points
    angle: float
    one: Points
    two: Points
    begun: float


def apex(one: Points, two: Points, reach: float) -> Apex | None:
    """Return where two sides meet within `reach` pixels of their first points, or None.

    Where they bend away from each other before, it is where straight lines would meet;
    where they run into each other without meeting there is no corner.
    """
    first, second = _onwards(one, reach), _onwards(two, reach)
    ways = [(side[1] - side[0]) / STEP for side in (first, second)]
    begun = math.acos(float(np.clip(ways[0] @ ways[1], -1, 1)))
    found = _crossed(first, second)
    if found is None:
        near = np.hypot(*(first[:, None] - second[None]).T).min() < TRUE
        if near and begun > ROUND:
            return None
        straight = [
            side[0] + np.outer([0.0, reach], way)
            for side, way in zip((first, second), ways, strict=True)
        ]
        found = _crossed(straight[0], straight[1])
    return None if found is None else Apex(*found, begun)


def _crossed(first: Points, second: Points) -> tuple[Points, float, Points, Points] | None:
    """Return where two lines of many points cross, nearest to their beginnings, the angle
    between them there, and both up to there."""
    a, b = first[:-1, None], second[None, :-1]
    u, v = np.diff(first, axis=0)[:, None], np.diff(second, axis=0)[None]
    turn = u[..., 0] * v[..., 1] - u[..., 1] * v[..., 0]
    turn = np.where(np.abs(turn) < 1e-12, np.inf, turn)
    off = b - a
    along = (off[..., 0] * v[..., 1] - off[..., 1] * v[..., 0]) / turn
    other = (off[..., 0] * u[..., 1] - off[..., 1] * u[..., 0]) / turn
    hits = np.argwhere((along >= 0) & (along <= 1) & (other >= 0) & (other <= 1))
    if not len(hits):
        return None
    i, j = hits[hits.sum(axis=1).argmin()]
    way, back = first[i + 1] - first[i], second[j + 1] - second[j]
    straight = float(way @ back) / float(np.hypot(*way) * np.hypot(*back))
    angle = math.acos(float(np.clip(straight, -1, 1)))
    return first[i] + float(along[i, j]) * way, angle, first[: i + 1], second[: j + 1]


def _onwards(side: Points, reach: float) -> Points:
    """Return points that go on from the first point of a side, away from the others.

    Of the side counts what is one line or one circle, from its first point on.
    """
    steps = np.arange(0.0, reach + STEP, STEP)
    count = len(side)
    while True:
        off, onwards = _line(side[:count], steps)
        if off > BENT and count >= LEAST:
            off, onwards = _circle(side[:count], steps)
        if off <= TRUE or count <= LEAST:
            return onwards
        count = max(LEAST, count * 3 // 4)


def _frame(side: Points) -> tuple[Points, Points, Points]:
    """Return the middle of points, the direction that they lie in, towards the first, and
    the one across."""
    middle = side.mean(axis=0)
    _, _, axes = np.linalg.svd(side - middle, full_matrices=False)
    way = axes[0] if (side[0] - side[-1]) @ axes[0] > 0 else -axes[0]
    return middle, way, np.array([-way[1], way[0]])


def _line(side: Points, steps: Points) -> tuple[float, Points]:
    """Return how far points are off their line, and the line from the first of them on."""
    middle, way, across = _frame(side)
    begin = middle + float((side[0] - middle) @ way) * way
    return float(np.abs((side - middle) @ across).max()), begin + steps[:, None] * way


def _circle(side: Points, steps: Points) -> tuple[float, Points]:
    """Return how far points are off their circle, and the circle from the first of them on."""
    middle, way, across = _frame(side)
    x, y = (side - middle) @ way, (side - middle) @ across
    terms = np.column_stack([x, y, np.ones_like(x)])
    p, q, r = np.linalg.lstsq(terms, x * x + y * y, rcond=None)[0]
    centre = np.array([p, q]) / 2
    radius = math.sqrt(max(r + centre @ centre, 1.0))
    away = np.column_stack([x, y]) - centre
    (a, b), (c, d) = away[0], away[3]
    turn = -1.0 if a * d > b * c else 1.0
    angle = (
        math.atan2(away[0, 1], away[0, 0]) + turn * steps[steps <= radius * math.pi / 2] / radius
    )
    circle = centre + radius * np.column_stack([np.cos(angle), np.sin(angle)])
    off = float(np.abs(np.hypot(*away.T) - radius).max())
    return off, middle + circle @ np.stack([way, across])
