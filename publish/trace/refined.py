"""A drawing moved to where, blurred as the picture is, it looks most like the picture.

In: a `Drawn` and the wedge that it was drawn from. Out: a `Drawn` of as many points.
Invariant: points on a fold stay on it, joints that ran on smoothly still do, what ran square
to a fold still does; what does not look more like the picture afterwards is not kept.

Where an outline was traced at the half level of a blurred picture, tips, notches and narrow
openings are drawn short of where they are, and both sides of them are off. Here the whole
drawing is blurred by as much, and its points and handles move until nothing is left over:
least squares (Gauss and Newton), each step held to be small where the picture tells little.
An outline that moves by a little changes the blurred picture near it by that much of the
blur's own bell.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import accumulate

import numpy as np
import shapely

from publish.model.trade import SLIP, SQUARE
from publish.trace.consensus import Wedge
from publish.trace.cubics import Curve, flat
from publish.trace.drawn import Drawn, meets, met, on_fold
from publish.trace.freedoms import Way, gone, slope, ways
from publish.trace.image import Floats, Points
from publish.trace.seen import NOISE, View

TOLD = 3.0
"""By how much a drawing may look less like the picture without being told from it."""

STEPS = 4
SHARES = (1.0, 0.4, 0.15)
"""Of a step, tried in turn: least squares goes too far where an outline bends much."""

FARTHEST = 6.0
"""Pixels that a point moves at most before it is not believed."""


def refined(made: Drawn, wedge: Wedge, spread: float) -> Drawn:
    """Return the drawing refined; `spread` is the blur of its picture in pixels."""
    paths = [path for part in made.parts for path in part]
    curves = [[c * wedge.unit for c in path.curves] for path in paths]
    view = View.of(wedge, spread)
    rest, begun = view.rest(curves), curves
    best = view.unlike(rest)
    for _ in range(STEPS):
        whole = _stepped(view, curves, rest, begun, wedge.angle)
        for share in SHARES:
            tried = _between(curves, whole, share)
            left = view.rest(tried)
            cost = view.unlike(left)
            if cost < best and _sound(tried, begun):
                break
        else:
            break
        gained, curves, rest, best = best - cost, tried, left, cost
        if gained < 0.01 * best:
            break
    curves = _squared(view, curves, best, begun, wedge.angle)
    done = iter(
        replace(path, curves=tuple(c / wedge.unit for c in moved))
        for path, moved in zip(paths, curves, strict=True)
    )
    parts = tuple(tuple(next(done) for _ in part) for part in made.parts)
    return Drawn(parts, met(parts, made.meetings, wedge))


def _squared(
    view: View, curves: list[list[Curve]], best: float, begun: list[list[Curve]], angle: float
) -> list[list[Curve]]:
    """Return the curves with each end on a fold that is nearly square to it made square where
    the picture looks no less like that; `best` is how unlike it they look."""
    for n, k, end, fold in _nearly(curves, angle):
        tried = [[c.copy() for c in path] for path in curves]
        curve = tried[n][k]
        one, two = (0, 1) if end == 0 else (-1, -2)
        handle = curve[two] - curve[one]
        across = np.array([-fold[1], fold[0]])
        curve[two] = curve[one] + float(handle @ across) * across
        for _ in range(2):
            tried = _stepped(view, tried, view.rest(tried), begun, angle)
        cost = view.unlike(view.rest(tried))
        if cost < best + TOLD and _sound(tried, begun):
            curves, best = tried, min(best, cost)
    return curves


def _nearly(curves: list[list[Curve]], angle: float) -> Iterator[tuple[int, int, int, Points]]:
    """Yield the ends of curves that meet a fold nearly square: path, curve, end, the fold."""
    for n, path in enumerate(curves):
        for k, curve in enumerate(path):
            for end in (0, -1):
                met = meets(curve, end, angle)
                if met is not None and SQUARE < abs(met[1]) <= SLIP and len(curve) == 4:
                    way = angle * met[0]
                    yield n, k, end, np.array([math.cos(way), math.sin(way)])


def _sound(curves: list[list[Curve]], begun: list[list[Curve]]) -> bool:
    """Say whether no path crosses itself that did not, and none went astray."""
    for path, old in zip(curves, begun, strict=True):
        away = max(float(np.hypot(*(c[0] - o[0]).T)) for c, o in zip(path, old, strict=True))
        if away > FARTHEST:
            return False
        if shapely.Polygon(flat(old)).is_valid and not shapely.Polygon(flat(path)).is_valid:
            return False
    return True


def _between(now: list[list[Curve]], then: list[list[Curve]], share: float) -> list[list[Curve]]:
    """Return curves a share of the way from some to others."""
    return [
        [a + share * (b - a) for a, b in zip(*paths, strict=True)]
        for paths in zip(now, then, strict=True)
    ]


def _stepped(
    view: View, curves: list[list[Curve]], rest: Floats, begun: list[list[Curve]], angle: float
) -> list[list[Curve]]:
    """Return the curves after one step of least squares; `rest` is what they leave over."""
    every = [c for path in curves for c in path]
    first = [c for path in begun for c in path]
    free = [
        way
        for path, start in zip(curves, accumulate([0, *map(len, curves)]), strict=False)
        for way in ways(path, start, angle)
    ]
    pieces = _pieces(every, view.unit, angle)
    bell, near = view.bell(pieces.at, rest)
    slopes = (bell @ slope(pieces.shares, pieces.normal, free)).toarray()
    weight = 1 / (1 + (near / (4 * NOISE)) ** 2) / NOISE**2
    weighed = slopes * weight[:, None]
    hold = np.array([1 / w.spread**2 for w in free])
    # What has moved already is held to where it began.
    pull = weighed.T @ near - hold * np.array([gone(w, every, first) for w in free])
    change = np.linalg.solve(weighed.T @ slopes + np.diag(hold), pull)
    moved = iter(_moved(every, free, change))
    return [[next(moved) for _ in path] for path in curves]


def _moved(every: list[Curve], free: list[Way], change: Points) -> list[Curve]:
    moved = [c.copy() for c in every]
    for way, size in zip(free, change, strict=True):
        for (curve, point), by in zip(way.moved, way.by, strict=True):
            moved[curve][point] += size * by
    return moved


@dataclass(frozen=True)
class _Pieces:
    """An outline in pieces: their middles, the direction outwards, as long as each; and by
    curve how much each of its control points counts at each piece."""

    at: Points
    normal: Points
    shares: list[tuple[int, Points]]


def _pieces(every: list[Curve], unit: float, angle: float) -> _Pieces:
    """Return the outline in pieces of about a pixel, sides on folds left out."""
    places, outward, shares = [], [], []
    for number, curve in enumerate(every):
        if on_fold(curve / unit, angle):
            continue
        count = max(3, math.ceil(float(np.hypot(*np.diff(curve, axis=0).T).sum())))
        t = (np.arange(count) + 0.5) / count
        u = 1 - t
        if len(curve) == 2:
            b = np.stack([u, t], axis=1)
            d = np.tile(curve[1] - curve[0], (count, 1))
        else:
            b = np.stack([u**3, 3 * t * u**2, 3 * t**2 * u, t**3], axis=1)
            s = 3 * np.diff(curve, axis=0)
            d = (u**2)[:, None] * s[0] + (2 * u * t)[:, None] * s[1] + (t**2)[:, None] * s[2]
        places.append(b @ curve)
        outward.append(np.column_stack([d[:, 1], -d[:, 0]]) / count)
        shares.append((number, b))
    return _Pieces(np.concatenate(places), np.concatenate(outward), shares)
