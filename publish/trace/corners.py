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

from publish.trace.apex import Apex, apex
from publish.trace.consensus import MARGIN
from publish.trace.image import Floats, Points
from publish.trace.outline import SMOOTH
from publish.trace.tips import Tip, reach

SHARP = math.radians(32)
"""An outline that turns less than this at once has no corner there."""

ANGLES = np.radians([15, 20, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 180])
RETREATS = np.array(
    [5.167, 3.884, 2.604, 1.740, 1.285, 0.988, 0.771, 0.598, 0.454, 0.328, 0.213, 0.105, 0.0]
)
"""How far the half level of a corner of each angle draws back when it is blurred, in
spreads of the blur: worked out by blurring such corners."""

SPAN = 14
"""Pixels of outline on each side of a corner that tell where it points, at least."""

CLEAR = 2.2
"""Spreads of the blur from one side at which the lens draws the other hardly at all (0.03
of a spread, by the normal integral)."""


STEADY = 1.6
"""How many times as far out the sides may meet when they are taken from farther away."""


@dataclass(frozen=True)
class Blur:
    """The field that a run was traced in, and the spread of its blur, in pixels."""

    field: Floats
    spread: float

    @property
    def seen(self) -> float:
        """Return the spread at the outline, which is traced in the field evened out."""
        return math.hypot(self.spread, SMOOTH)


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


@dataclass(frozen=True)
class Corner:
    """The index of the point nearest to a corner, its sharp place, and how many points on
    each side of it are rounded."""

    index: int
    place: Points
    gap: int


def stretches(
    points: Points, closed: bool, blur: Blur, mirrors: tuple[Points | None, Points | None]
) -> list[Stretch]:
    """Return a run in pixels parted at its corners.

    `mirrors` hold for each end the direction of the fold that it lies on: there the run is
    thought on as its mirror image.
    """
    points = spaced(points, 1.0)
    if len(points) < 8:
        return [Stretch(points, (True, True))]
    gap = max(2, math.ceil(1.6 * blur.seen))
    line, first = _lengthened(points, closed, mirrors, 6 * gap + 2 * SPAN)
    count = len(points) - 1 if closed else len(points)
    found = _found(line, first, count, gap, blur, closed)
    if not closed:
        return _between_folds(points, found, gap, mirrors)
    if not found:
        return [Stretch(points, (False, False))]
    begin = found[0].index
    turned = np.roll(points[:-1], -begin, axis=0)
    marks = [Corner(c.index - begin, c.place, c.gap) for c in found]
    marks.append(Corner(count, found[0].place, found[0].gap))
    return _parted(np.concatenate([turned, turned[:1]]), marks, (True, True))


def _between_folds(
    points: Points, found: list[Corner], gap: int, mirrors: tuple[Points | None, Points | None]
) -> list[Stretch]:
    """Return the stretches of a run that ends on folds: a corner on a fold lies on it."""
    marks: list[Corner] = []
    sharp = []
    last = len(points) - 1
    for i, way in zip((0, last), mirrors, strict=True):
        tip = next((c for c in found if abs(c.index - i) <= gap), None)
        end = points[i]
        if tip is not None and way is not None:
            end = end + (tip.place - end) @ way * way
        marks.append(Corner(i, end, 1 if tip is None else tip.gap))
        sharp.append(tip is not None)
    inner = [c for c in found if gap < c.index < last - gap]
    return _parted(points, [marks[0], *inner, marks[1]], (sharp[0], sharp[1]))


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
    line: Points, first: int, count: int, gap: int, blur: Blur, closed: bool
) -> list[Corner]:
    """Return the corners among the `count` points of a line from the `first` on."""
    near = gap + 6
    index = np.arange(first, first + count)
    index = index[(index >= near) & (index + near < len(line))]
    before = line[index - gap] - line[index - near]
    after = line[index + near] - line[index + gap]
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turn = np.abs(np.arctan2(cross, (before * after).sum(axis=1)))
    wide = min(gap + 3, len(turn) // 2 - 1)
    around = np.pad(turn, wide, mode="wrap" if closed else "edge")
    highest = np.lib.stride_tricks.sliding_window_view(around, 2 * wide + 1).max(axis=1)
    places = index[(turn >= highest) & (turn >= SHARP)] - first
    room = (count - 1) // 2 if closed else count
    sure = [int(k) for k in places if _sharpened(line, int(k) + first, (room, room), blur)]
    # A side ends where the next sure corner is: before the first and after the last one the run
    # goes on, by itself or by its image.
    at = np.array(sure, int)
    others = (at - count, at + count) if closed else (-at, 2 * count - 2 - at)
    every = np.concatenate([at, *others])
    found = []
    for k in map(int, places):
        sides = [
            int(np.abs(every[side] - k).min(initial=room))
            for side in (every < k - gap, every > k + gap)
        ]
        met = _sharpened(line, k + first, (sides[0], sides[1]), blur)
        if met is not None:
            found.append(Corner(k, *met))
    return found


def _sharpened(
    line: Points, i: int, room: tuple[int, int], blur: Blur
) -> tuple[Points, int] | None:
    """Return where the sides of a corner would meet, and how many points on each side of it
    are rounded; None for a curve. `room` is how many points away the next corners are.

    The sharper the corner, the farther along its sides the lens reaches: how sharp it is
    and where its sides are themselves is found in turns.
    """
    gap = max(2, math.ceil(CLEAR * blur.seen))
    found, most = None, math.inf
    for _ in range(3):
        met = _met(line, i, gap, room)
        if met is None or met.angle > math.pi - SHARP:
            break
        retreat = blur.seen * float(np.interp(met.begun, ANGLES, RETREATS))
        rounded = line[i - gap : i + gap + 1]
        top = rounded[int(np.hypot(*(met.place - rounded).T).argmin())]
        near = float(np.hypot(*(met.place - top)))
        if near > min(2 * retreat + 1.2, most):
            break
        most = STEADY * near + 1
        found = (met, top, retreat, gap)
        wider = math.ceil(CLEAR * blur.seen / math.sin(min(met.begun, math.pi / 2)))
        wider = max(2, min(wider, min(room) // 2))
        if wider <= gap:
            break
        gap = wider
    return None if found is None else _placed(line, i, blur, *found)


def _placed(
    line: Points, i: int, blur: Blur, met: Apex, top: Points, retreat: float, gap: int
) -> tuple[Points, int] | None:
    """Return the place of a corner whose sides meet, as the field has it; None for a curve."""
    place = met.place
    near = float(np.hypot(*(place - top)))
    more = 4 * gap + SPAN
    one = np.concatenate([line[max(0, i - more) : i - gap], met.one])
    two = np.concatenate([line[i + gap + 1 : i + more][::-1], met.two])
    tip = Tip(one + MARGIN, two + MARGIN, top + MARGIN, place + MARGIN)
    far = reach(blur.field, tip, blur.spread, retreat)
    if far is None:
        far = min(near, 1.2 * retreat + 0.3)
    if far < 0.35 * retreat and near > 0.35 * retreat:
        return None
    return top + (place - top) * (far / max(near, 1e-9)), gap


def _met(line: Points, i: int, gap: int, room: tuple[int, int]) -> Apex | None:
    """Return where the sides that begin `gap` points beside a corner meet, if they do.

    A short side is what lies between, where neither its corner nor the next one rounds it.
    """
    before, after = (min(gap, r // 3) for r in room)
    back = min(room[0] - before, 2 * gap + SPAN, i)
    on = min(room[1] - after, 2 * gap + SPAN, len(line) - 1 - i)
    if back < before + 3 or on < after + 3:
        return None
    one, two = line[i - back : i - before + 1][::-1], line[i + after : i + on + 1]
    return apex(one, two, 4 * gap + 4)


def _parted(points: Points, marks: list[Corner], sharp_ends: tuple[bool, bool]) -> list[Stretch]:
    """Return the stretches between marks, the rounded points next to corners left out."""
    found = []
    last = len(marks) - 2
    for n, (one, two) in enumerate(pairwise(marks)):
        sharp = (n > 0 or sharp_ends[0], n < last or sharp_ends[1])
        low, high = one.index + one.gap, two.index - two.gap
        middle = points[low : high + 1] if high >= low else np.zeros((0, 2))
        found.append(Stretch(np.concatenate([[one.place], middle, [two.place]]), sharp))
    return found
