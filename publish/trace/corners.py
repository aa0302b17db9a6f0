"""Corners of a traced run, told from curves and made sharp again.

In: the points of a run, about a pixel apart, and the spread of the picture's blur. Out:
stretches between corners, each from one sharp corner to the next.
Invariant: a lens rounds every corner; one that is rounded by more than the lens does is a
curve and stays one.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from publish.trace.image import Points

SHARP = math.radians(32)
"""An outline that turns less than this at once has no corner there."""

ANGLES = np.radians([15, 20, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 180])
RETREATS = np.array(
    [5.167, 3.884, 2.604, 1.740, 1.285, 0.988, 0.771, 0.598, 0.454, 0.328, 0.213, 0.105, 0.0]
)
"""How far the half level of a corner of each angle draws back when it is blurred, in
spreads of the blur: worked out by blurring such corners."""

SPAN = 14
"""Pixels of outline on each side of a corner that tell where it points, at most."""


@dataclass(frozen=True)
class Stretch:
    """Points from corner to corner; `sharp` says which ends are corners."""

    points: Points
    sharp: tuple[bool, bool]


def spaced(points: Points, step: float) -> Points:
    """Return points along a line, evenly about `step` apart, its ends kept."""
    sides = np.hypot(*np.diff(points, axis=0).T)
    arc = np.concatenate([[0.0], np.cumsum(sides)])
    keep = np.concatenate([[True], np.diff(arc) > 0])
    arc, points = arc[keep], points[keep]
    count = max(2, round(float(arc[-1]) / step) + 1)
    way = np.linspace(0, arc[-1], count)
    return np.column_stack([np.interp(way, arc, points[:, k]) for k in (0, 1)])


def stretches(
    points: Points, closed: bool, spread: float, mirrors: tuple[Points | None, Points | None]
) -> list[Stretch]:
    """Return a run in pixels parted at its corners.

    `mirrors` hold for each end the direction of the fold that it lies on: there the run is
    thought on as its mirror image.
    """
    points = spaced(points, 1.0)
    if len(points) < 8:
        return [Stretch(points, (True, True))]
    gap = max(2, math.ceil(1.6 * spread))
    line, first = _lengthened(points, closed, mirrors, gap + SPAN)
    count = len(points) - 1 if closed else len(points)
    found = _found(line, first, count, gap, spread)
    if not closed:
        ends = [(0, points[0]), (count - 1, points[-1])]
        tips = [next((c for c in found if abs(c[0] - e[0]) <= gap), None) for e in ends]
        marks = [
            e if tip is None or way is None else (e[0], e[1] + (tip[1] - e[1]) @ way * way)
            for e, tip, way in zip(ends, tips, mirrors, strict=True)
        ]
        inner = [c for c in found if gap < c[0] < count - 1 - gap]
        return _parted(
            points, [marks[0], *inner, marks[1]], gap, (tips[0] is not None, tips[1] is not None)
        )
    if not found:
        return [Stretch(points, (False, False))]
    begin = found[0][0]
    turned = np.roll(points[:-1], -begin, axis=0)
    marks = [(i - begin, at) for i, at in found]
    return _parted(np.concatenate([turned, turned[:1]]), [*marks, (count, found[0][1])], gap)


def _lengthened(
    points: Points, closed: bool, mirrors: tuple[Points | None, Points | None], more: int
) -> tuple[Points, int]:
    """Return the run thought on at both ends, and the index of its first point."""
    if closed:
        body = points[:-1]
        times = -(-more // len(body))
        line = np.concatenate([body] * (2 * times + 1))
        return line, times * len(body)
    head, tail = points[1 : more + 1][::-1], points[-more - 1 : -1][::-1]
    ends = []
    for part, at, way in ((head, points[0], mirrors[0]), (tail, points[-1], mirrors[1])):
        if way is None:
            ends.append(2 * at - part)
        else:
            ends.append(at + 2 * np.outer((part - at) @ way, way) - (part - at))
    return np.concatenate([ends[0], points, ends[1]]), len(head)


def _found(
    line: Points, first: int, count: int, gap: int, spread: float
) -> list[tuple[int, Points]]:
    """Return index and sharp place of each corner."""
    near = gap + 6
    index = np.arange(first, first + count)
    index = index[(index >= near) & (index + near < len(line))]
    before = line[index - gap] - line[index - near]
    after = line[index + near] - line[index + gap]
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turn = np.abs(np.arctan2(cross, (before * after).sum(axis=1)))
    tops: list[int] = []
    for k in np.argsort(-turn, kind="stable"):
        if turn[k] < SHARP:
            break
        if all(min(abs(k - t), count - abs(k - t)) > gap + 2 for t in tops):
            tops.append(int(k))
    tops.sort()
    found = []
    for n, k in enumerate(tops):
        room = [gap + SPAN]
        if len(tops) > 1:
            room += [
                abs(int(index[k] - index[tops[m]])) - gap
                for m in (n - 1, (n + 1) % len(tops))
                if m != n and m >= 0 and abs(tops[m] - k) > gap
            ]
        at = _sharpened(line, int(index[k]), gap, max(gap + 4, min(room)), spread)
        if at is not None:
            found.append((int(index[k]) - first, at))
    return found


def _sharpened(line: Points, i: int, gap: int, room: int, spread: float) -> Points | None:
    """Return where the sides of a corner would meet; None for a curve."""
    room = min(room, gap + SPAN)
    if i - room < 0 or i + room >= len(line):
        room = min(i, len(line) - 1 - i)
        if room < gap + 3:
            return None
    one, way_one = _leading(line[i - room : i - gap + 1][::-1])
    two, way_two = _leading(line[i + gap : i + room + 1])
    turn = way_one[0] * way_two[1] - way_one[1] * way_two[0]
    if abs(turn) < 0.05:
        return None
    off = two - one
    along = (off[0] * way_two[1] - off[1] * way_two[0]) / turn
    other = (off[0] * way_one[1] - off[1] * way_one[0]) / turn
    if along < 0 or other < 0:
        return None
    at = one + along * way_one
    angle = math.acos(float(np.clip(way_one @ way_two, -1, 1)))
    retreat = spread * float(np.interp(angle, ANGLES, RETREATS))
    near = float(np.hypot(*(line[i - gap : i + gap + 1] - at).T).min())
    found: Points | None = at if near <= 1.35 * retreat + 0.6 else None
    return found


def _leading(side: Points) -> tuple[Points, Points]:
    """Return where a side of a corner begins and the direction from there to the corner,
    from the parabola through its points."""
    t = np.arange(len(side), dtype=float)
    degree = 2 if len(side) >= 8 else 1
    x, y = (np.polynomial.Polynomial.fit(t, side[:, k], degree) for k in (0, 1))
    at = np.array([x(0.0), y(0.0)])
    way = -np.array([x.deriv()(0.0), y.deriv()(0.0)])
    return at, way / max(float(np.hypot(*way)), 1e-9)


def _parted(
    points: Points,
    marks: list[tuple[int, Points]],
    gap: int,
    sharp_ends: tuple[bool, bool] = (True, True),
) -> list[Stretch]:
    """Return the stretches between marks, the rounded points next to corners left out."""
    found = []
    last = len(marks) - 2
    for n, ((i, one), (j, two)) in enumerate(pairwise(marks)):
        sharp = (n > 0 or sharp_ends[0], n < last or sharp_ends[1])
        low = i + (gap if sharp[0] else 1)
        high = j - (gap if sharp[1] else 1)
        middle = points[low : high + 1] if high >= low else np.zeros((0, 2))
        found.append(Stretch(np.concatenate([[one], middle, [two]]), sharp))
    return found
