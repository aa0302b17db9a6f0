"""The fewest cubic curves that stay within a tolerance of traced points.

In: the points of a stretch without corners. Out: control points of lines and curves.
Invariant: every point is within the tolerance of its curve; neighbouring curves run on
smoothly into each other.

Each curve is made as long as the tolerance allows before the next begins. A curve is
fitted by least squares, each point's place along it found anew in turns (Schneider, "An
algorithm for automatically fitting digitized curves", Graphics Gems, 1990, with free ends
where no direction is given).
"""

from __future__ import annotations

import numpy as np

from publish.trace.image import Points

TURNS = 5
"""How often the places along a curve are found anew."""

AROUND = 9
"""Points on each side that give the direction of a joint."""

Curve = Points
"""Control points, shape (2, 2) for a line and (4, 2) for a cubic."""


def fitted(
    points: Points,
    tolerance: float,
    start: Points | None = None,
    stop: Points | None = None,
    closed: bool = False,
) -> list[Curve]:
    """Return the curves along points; `start` and `stop` are directions that the first and
    the last curve must have there, along the way. A closed run begins where it is."""
    if closed:
        around = np.concatenate([points[-AROUND - 1 : -1], points[: AROUND + 1]])
        start = stop = _direction(around, AROUND)
    found: list[Curve] = []
    i, way = 0, start
    last = len(points) - 1
    while i < last:
        j, curve = _longest(points, i, way, stop, tolerance)
        if curve is None:
            curve = points[[i, j]]
        found.append(curve)
        way = None if j == last else _joint(points, j)
        i = j
    return found


def _longest(
    points: Points, i: int, way: Points | None, stop: Points | None, tolerance: float
) -> tuple[int, Curve | None]:
    """Return the farthest point that one curve from point i can reach, and the curve."""
    last = len(points) - 1

    def tried(j: int) -> Curve | None:
        end = stop if j == last else _joint(points, j)
        return _one(points[i : j + 1], way, end, tolerance)

    best, curve = i + 1, tried(i + 1)
    whole = tried(last)
    if whole is not None:
        return last, whole
    low, step, high = i + 1, 8, last
    while low + step < last:
        got = tried(low + step)
        if got is None:
            high = low + step
            break
        low += step
        best, curve = low, got
        step *= 2
    while high - low > 1:
        middle = (low + high) // 2
        got = tried(middle)
        if got is None:
            high = middle
        else:
            low = best = middle
            curve = got
        if high - low <= max(1, (low - i) // 24):
            break
    return best, curve


def _joint(points: Points, j: int) -> Points:
    low, high = max(0, j - AROUND), min(len(points) - 1, j + AROUND)
    return _direction(points[low : high + 1], j - low)


def _direction(around: Points, at: int) -> Points:
    """Return the direction of points at one of them, from the parabola through them."""
    t = np.arange(len(around), dtype=float) - at
    terms = np.vander(t, 3 if len(around) > 5 else 2, increasing=True)
    way = np.linalg.lstsq(terms, around, rcond=None)[0][1]
    found: Points = way / max(float(np.hypot(*way)), 1e-12)
    return found


def _one(
    points: Points, start: Points | None, stop: Points | None, tolerance: float
) -> Curve | None:
    """Return a line or a curve along points, or None when none is near enough."""
    one, two = points[0], points[-1]
    chord = two - one
    long = float(np.hypot(*chord))
    if long < 1e-9:
        return None
    across = np.array([-chord[1], chord[0]]) / long
    off = np.abs((points - one) @ across)
    smooth = all(
        w is None or abs(float(w @ across)) < max(0.02, tolerance / long) for w in (start, stop)
    )
    if off.max() <= 0.7 * tolerance and (smooth or len(points) <= 3):
        return np.stack([one, two])
    if len(points) < 4:
        return None
    arc = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))])
    t = arc / arc[-1]
    for turn in range(TURNS):
        control = _solved(points, t, start, stop, arc[-1])
        if control is None:
            return None
        t, gap = _nearest(points, control, t)
        if gap <= tolerance:
            return control
        if turn == 1 and gap > 6 * tolerance:
            return None
    return None


def _solved(
    points: Points, t: Points, start: Points | None, stop: Points | None, arc: float
) -> Curve | None:
    """Return the cubic with these ends and directions that is nearest in least squares."""
    b = np.stack([(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3], axis=1)
    one, two = points[0], points[-1]
    rest = points - np.outer(b[:, 0] + b[:, 1], one) - np.outer(b[:, 2] + b[:, 3], two)
    columns = []
    for k, way in ((1, start), (2, stop)):
        ways = np.eye(2) if way is None else (way if k == 1 else -way)[None]
        columns += [(b[:, k, None] * w).ravel() for w in ways]
    terms = np.stack(columns, axis=1)
    normal = terms.T @ terms
    try:
        found = np.linalg.solve(
            normal + 1e-9 * np.trace(normal) * np.eye(len(normal)), terms.T @ rest.ravel()
        )
    except np.linalg.LinAlgError:
        return None
    handles, k = [], 0
    for way, side in ((start, 1), (stop, -1)):
        if way is None:
            handles.append(found[k : k + 2])
            k += 2
        else:
            if not 0.02 * arc < found[k] < 1.5 * arc:
                return None
            handles.append(side * found[k] * way)
            k += 1
    return np.stack([one, one + handles[0], two + handles[1], two])


def _nearest(points: Points, control: Curve, t: Points) -> tuple[Points, float]:
    """Return better places along a curve, and the greatest distance of a point from it."""
    first, second = 3 * np.diff(control, axis=0), 6 * np.diff(control, 2, axis=0)
    u = (1 - t)[:, None]
    v = t[:, None]
    at = (
        u**3 * control[0]
        + 3 * v * u**2 * control[1]
        + 3 * v**2 * u * control[2]
        + v**3 * control[3]
    )
    d1 = u**2 * first[0] + 2 * u * v * first[1] + v**2 * first[2]
    d2 = u * second[0] + v * second[1]
    off = at - points
    top = (off * d1).sum(axis=1)
    under = (d1 * d1).sum(axis=1) + (off * d2).sum(axis=1)
    step = np.divide(top, under, out=np.zeros_like(top), where=np.abs(under) > 1e-12)
    better = np.clip(t - step, 0, 1)
    better[0], better[-1] = 0.0, 1.0
    return better, float(np.hypot(*off.T).max())


def flat(curves: list[Curve], pieces: int = 16) -> Points:
    """Return points along curves."""
    t = np.linspace(0, 1, pieces + 1)[1:, None]
    made = [curves[0][:1]]
    for c in curves:
        if len(c) == 2:
            made.append(c[1:])
        else:
            u = 1 - t
            made.append(u**3 * c[0] + 3 * t * u**2 * c[1] + 3 * t**2 * u * c[2] + t**3 * c[3])
    return np.concatenate(made)
