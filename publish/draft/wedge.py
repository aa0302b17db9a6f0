"""Where the wedge lies in a drawing: its centre and its folds.

In: the cloth as drawn, the marks of the drawing, the folds. Out: a `Frame`, which takes
the drawing to a wedge with its centre at the origin and its first fold on the x axis.
Invariant: a mark in the drawing always wins; what is inferred is said nowhere but fits the
drawing: all of it lies between the folds.

In this order:
1. A marked centre (`data-centre`, or an element with the id `centre`) and a marked first
   fold (`data-start`), see `drawing`. With one of them missing: the origin for the centre,
   the best fitting direction for the fold.
2. The drawing's own origin, when the drawing lies between two folds from there and runs
   along both, or when a motif that turns without mirror touches it.
3. The two longest straight runs of the outline whose lines cross at the wedge's angle,
   the drawing lying between them. Where they miss the angle by half a degree at most the
   drawing is straightened.
4. The drawing's own origin, when the drawing lies between two folds from there, and
   touches one or is meant to be as many pieces as there are wedges.

A wedge whose folds are drawn where they will lie on the finished motif stays there: with
eight folds, a tip drawn on a diagonal comes to lie towards a corner of the block. A wedge
drawn at any other angle is turned so that its longer fold lies away from the x axis.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from itertools import combinations

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import MultiPolygon

from publish.draft.curves import Points
from publish.draft.drawing import Drawing
from publish.draft.fill import polygons
from publish.draft.unfold import ray, wedge_angle
from publish.model.pattern import Motif

TURNED = 0.5
"""Degrees that a drawn fold may be off and still count as meant."""

OUTSIDE = 0.02
"""Share of the outline's points that may lie outside the folds of an inferred wedge."""

SLACK = 0.004
"""Share of the drawing's diagonal: how near a fold counts as on it while looking for one."""

BENDS = 15.0
"""Degrees by which an outline turns off at the end of a straight side, within half its length;
a piece of a flattened curve goes on with less."""

_RUNS = 400
_LINES = 40


@dataclass(frozen=True)
class Frame:
    """The centre, and the 2 x 2 matrix from there to the wedge."""

    centre: Points
    matrix: Points

    def place(self, cloth: MultiPolygon) -> MultiPolygon:
        return shapely.transform(cloth, lambda p: (p - self.centre) @ self.matrix.T)


@dataclass(frozen=True)
class _Seen:
    """The outline as seen from one centre: every point, and its straight runs."""

    centre: Points
    points: Points
    starts: Points
    stops: Points
    slack: float

    def outside(self, one: Points, two: Points) -> float:
        """Return the share of points that lie outside the folds `one` and `two`."""
        inside = _between(self.points - self.centre, one, two, self.slack)
        return 1.0 - float(inside.mean())

    def along(self, way: Points) -> tuple[float, float]:
        """Return the length of outline that lies along a fold, and how far it reaches."""
        a, b = self.starts - self.centre, self.stops - self.centre
        across = np.array([-way[1], way[0]])
        on = (np.abs(a @ across) <= self.slack) & (np.abs(b @ across) <= self.slack)
        on &= np.maximum(a @ way, b @ way) > 0
        if not on.any():
            return 0.0, 0.0
        lengths = np.abs((b - a) @ way)[on]
        return float(lengths.sum()), float(np.maximum(a @ way, b @ way)[on].max())


def find_frame(cloth: MultiPolygon, drawing: Drawing | None, motif: Motif) -> Frame | None:
    """Return the frame of a wedge; None when nothing fits and nothing is marked.

    `drawing` is None for an outline written in the pattern, which is in place already but
    may lie on either side of the x axis.
    """
    folds, turning = motif.folds, motif.symmetry == "turning"
    points = shapely.get_coordinates(cloth)
    diagonal = float(np.hypot(*(points.max(axis=0) - points.min(axis=0))))
    starts, stops, alone = _runs(cloth, diagonal)

    def seen(centre: Points) -> _Seen:
        return _Seen(centre, points, starts, stops, SLACK * diagonal)

    origin = np.zeros(2)
    if drawing is None:
        return _marked(seen(origin), 0.0, folds, turning)
    centre = origin if drawing.centre is None else np.array(drawing.centre)
    if drawing.start is not None:
        return _marked(seen(centre), drawing.start, folds, turning)
    if drawing.centre is not None:
        return _best_start(seen(centre), folds, turning)
    if turning and shapely.distance(cloth, shapely.Point(origin)) <= SLACK * diagonal:
        return _marked(seen(origin), 0.0, folds, turning)
    at_origin = _in_place(seen(origin), folds, touching=not turning)
    if at_origin is None:
        crossing = _crossing(seen, (starts[alone], stops[alone]), diagonal, folds)
        if crossing is not None:
            return _settled(*crossing, folds, turning)
        at_origin = _in_place(seen(origin), folds, touching=False)
        loose = not turning and motif.pieces < folds
        if at_origin is not None and loose and not any(seen(origin).along(w)[0] for w in at_origin):
            return None
    return None if at_origin is None else _settled(seen(origin), *at_origin, folds, turning)


def _marked(seen: _Seen, start: float, folds: int, turning: bool) -> Frame:
    """Return the frame of a marked first fold; the wedge lies on the side with more of it."""
    step = wedge_angle(folds)
    first = ray(start)
    sides = [ray(start + step)] if turning else [ray(start + step), ray(start - step)]
    second = min(sides, key=lambda way: seen.outside(first, way))
    return Frame(seen.centre, _matrix(first, second, folds))


def _best_start(seen: _Seen, folds: int, turning: bool) -> Frame:
    """Return the frame of a marked centre: the folds that hold most of the drawing."""
    step = wedge_angle(folds)
    spokes = [math.degrees(math.atan2(y, x)) for x, y in _spokes(seen)]
    tried = [i * step for i in range(folds)]
    tried += [s for way in spokes for s in (way, way - step)]
    best = min(
        tried,
        key=lambda s: (
            round(seen.outside(ray(s), ray(s + step)), 2),
            -round(seen.along(ray(s))[0] + seen.along(ray(s + step))[0], 6),
        ),
    )
    return _settled(seen, ray(best), ray(best + step), folds, turning)


def _spokes(seen: _Seen) -> list[Points]:
    """Return the directions of straight runs whose lines go through the centre."""
    a, b = seen.starts - seen.centre, seen.stops - seen.centre
    lengths = np.hypot(*(b - a).T)
    off = np.abs(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]) / lengths
    found = []
    for i in np.flatnonzero(off <= seen.slack)[:_LINES]:
        far = a[i] if np.hypot(*a[i]) > np.hypot(*b[i]) else b[i]
        found.append(far / np.hypot(*far))
    return found


def _in_place(seen: _Seen, folds: int, touching: bool) -> tuple[Points, Points] | None:
    """Return the folds, drawn where they will lie, that hold the whole drawing."""
    step = wedge_angle(folds)
    for i in range(folds):
        one, two = ray(i * step), ray((i + 1) * step)
        runs = min(seen.along(one)[0], seen.along(two)[0])
        if seen.outside(one, two) <= OUTSIDE and (runs > seen.slack or not touching):
            return one, two
    return None


def _settled(seen: _Seen, one: Points, two: Points, folds: int, turning: bool) -> Frame:
    """Return the frame for the folds `one` and, clockwise of it, `two`."""
    step = wedge_angle(folds)
    turns = math.degrees(math.atan2(one[1], one[0])) / step
    if turning:
        return Frame(seen.centre, _matrix(one, two, folds))
    if abs(turns - round(turns)) * step <= TURNED:
        swapped = round(turns) % 2 == 1
    else:
        swapped = seen.along(one)[1] > seen.along(two)[1]
    first, second = (two, one) if swapped else (one, two)
    return Frame(seen.centre, _matrix(first, second, folds))


def _matrix(first: Points, second: Points, folds: int) -> Points:
    """Return the matrix that takes two directions to the x axis and the second fold."""
    to = np.stack([ray(0), ray(wedge_angle(folds))], axis=1)
    return to @ np.linalg.inv(np.stack([first, second], axis=1))


def _runs(cloth: MultiPolygon, diagonal: float) -> tuple[Points, Points, NDArray[np.bool_]]:
    """Return the straight sides of the outline that are longer than a fifth of a percent of
    its diagonal, longest first, and whether each is straight by itself, not as a piece of
    a curve: at both its ends the outline turns off."""
    starts, stops, alone = [], [], []
    for part in polygons(shapely.simplify(cloth, 1e-6 * diagonal)).geoms:
        for ring in (part.exterior, *part.interiors):
            points = np.asarray(ring.coords)
            starts.append(points[:-1])
            stops.append(points[1:])
            alone.append(_turns_off(points) & _turns_off(points[::-1])[::-1])
    a, b, both = np.concatenate(starts), np.concatenate(stops), np.concatenate(alone)
    lengths = np.hypot(*(b - a).T)
    order = np.argsort(-lengths, kind="stable")
    order = order[lengths[order] > 0.002 * diagonal]
    return a[order], b[order], both[order]


def _turns_off(points: Points) -> NDArray[np.bool_]:
    """Say of each side of a closed ring whether the outline leaves its line beyond its end."""
    sides = np.diff(points, axis=0)
    long = np.maximum(np.hypot(*sides.T), 1e-300)
    arc = np.concatenate([[0.0], np.cumsum(long)])
    beyond = (arc[1:] + np.minimum(long, arc[-1] / 4) / 2) % arc[-1]
    at = np.stack([np.interp(beyond, arc, points[:, k]) for k in (0, 1)], axis=1)
    on = at - points[1:]
    cross = sides[:, 0] * on[:, 1] - sides[:, 1] * on[:, 0]
    turn = np.degrees(np.abs(np.arctan2(cross, (sides * on).sum(axis=1))))
    found: NDArray[np.bool_] = turn > BENDS
    return found


def _crossing(
    seen: Callable[[Points], _Seen], runs: tuple[Points, Points], diagonal: float, folds: int
) -> tuple[_Seen, Points, Points] | None:
    """Return the centre and folds that two straight runs of the outline point to."""
    lines = _lines(runs[0][:_RUNS], runs[1][:_RUNS], diagonal)
    step = wedge_angle(folds)
    best: tuple[float, _Seen, Points, Points] | None = None
    for (at, way, long), (to, other, also) in combinations(lines, 2):
        turn = way[0] * other[1] - way[1] * other[0]
        angle = math.degrees(math.asin(min(1.0, abs(turn))))
        if abs(angle - step) > TURNED or (best is not None and long + also <= best[0]):
            continue
        gap = to - at
        here = seen(at + way * (gap[0] * other[1] - gap[1] * other[0]) / turn)
        for one, two in _corners(way, other, step):
            if here.outside(one, two) <= OUTSIDE and here.along(one)[0] and here.along(two)[0]:
                best = (long + also, here, one, two)
    return None if best is None else best[1:]


def _corners(way: Points, other: Points, step: float) -> list[tuple[Points, Points]]:
    """Return the sectors between two lines that have the wedge's angle: first and second
    fold, the second clockwise on the page."""
    found = []
    for a in (way, -way):
        for b in (other, -other):
            angle = math.degrees(math.atan2(a[0] * b[1] - a[1] * b[0], float(a @ b)))
            if abs(abs(angle) - step) <= TURNED:
                found.append((a, b) if angle > 0 else (b, a))
    return found


def _lines(starts: Points, stops: Points, diagonal: float) -> list[tuple[Points, Points, float]]:
    """Return the lines that the straight runs lie on, longest first: a point, a direction,
    the length of the runs together."""
    found: list[tuple[Points, Points, float]] = []
    middle = (starts.mean(axis=0) + stops.mean(axis=0)) / 2 if len(starts) else np.zeros(2)
    for a, b in zip(starts - middle, stops - middle, strict=True):
        long = float(np.hypot(*(b - a)))
        way = (b - a) / long
        for i, (at, line, total) in enumerate(found):
            same = abs(line[0] * way[1] - line[1] * way[0]) < math.sin(math.radians(TURNED))
            off = max(abs(float((p - at) @ [-line[1], line[0]])) for p in (a, b))
            if same and off < SLACK * diagonal:
                found[i] = (at, line, total + long)
                break
        else:
            if len(found) < _RUNS:
                found.append((a, way, long))
    found.sort(key=lambda item: -item[2])
    return [(at + middle, way, long) for at, way, long in found[:_LINES]]


def _between(points: Points, one: Points, two: Points, slack: float) -> NDArray[np.bool_]:
    """Say which points lie between two directions less than half a turn apart."""
    side = 1.0 if one[0] * two[1] - one[1] * two[0] > 0 else -1.0
    after = side * (one[0] * points[:, 1] - one[1] * points[:, 0]) >= -slack
    before = side * (points[:, 0] * two[1] - points[:, 1] * two[0]) >= -slack
    inside: NDArray[np.bool_] = np.logical_and(after, before)
    return inside
