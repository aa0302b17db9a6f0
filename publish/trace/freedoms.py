"""The ways in which the points and handles of a drawing may move.

In: curves in pixels, the angle between the folds. Out: `Way`s.
Invariant: points on a fold stay on it, joints that run on smoothly still do, what runs square
to a fold still does, and a point takes its handles with it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy import sparse

from publish.trace.cubics import Curve
from publish.trace.image import Points

LOOSE = 1.5
"""Pixels by which a point or a handle is likely to be off."""

TURNED = 0.1
"""The same for a direction, in radians."""

SMOOTH = 0.35
"""A joint that turns by less than this, in radians, is meant to run on."""


@dataclass(frozen=True)
class Way:
    """One freedom of the drawing: how it moves control points, by (curve, point) pairs."""

    moved: tuple[tuple[int, int], ...]
    by: Points
    """Shape (points, 2): pixels for each unit."""
    spread: float


def ways(path: list[Curve], start: int, angle: float) -> list[Way]:
    """Return the freedoms of one closed path, whose first curve has the number `start`."""
    found: list[Way] = []
    count = len(path)
    folds = (np.array([1.0, 0.0]), np.array([math.cos(angle), math.sin(angle)]))
    for k, after in enumerate(path):
        j = (k - 1) % count
        before = path[j]
        node = after[0]
        along = [w for w in folds if abs(w[0] * node[1] - w[1] * node[0]) < 1e-6]
        ends = [(start + j, len(before) - 1), (start + k, 0)]
        handles = [
            (c, p, path[c - start][p] - node)
            for c, p, curve in ((start + j, 2, before), (start + k, 1, after))
            if len(curve) == 4
        ]
        whole = tuple(ends + [(c, p) for c, p, _ in handles])
        free = [] if len(along) > 1 else along or list(np.eye(2))
        found += [Way(whole, np.tile(way, (len(whole), 1)), LOOSE) for way in free]
        found += _turning(handles, before, after, along)
    return found


def _turning(
    handles: list[tuple[int, int, Points]], before: Curve, after: Curve, along: list[Points]
) -> list[Way]:
    """Return the freedoms of the handles of one point."""
    found = []
    one, two = before[-1] - before[-2], after[1] - after[0]
    turn = abs(math.atan2(float(one[0] * two[1] - one[1] * two[0]), float(one @ two)))
    joined = not along and turn < SMOOTH
    for c, p, h in handles:
        long = max(float(np.hypot(*h)), 1e-9)
        square = len(along) == 1 and abs(float(h @ along[0])) < 1e-4 * long
        if joined or square:
            found.append(Way(((c, p),), (h / long)[None], LOOSE))
        else:
            found += [Way(((c, p),), axis[None], LOOSE) for axis in np.eye(2)]
    if joined and handles:
        across = np.stack([[-h[1], h[0]] for _, _, h in handles])
        found.append(Way(tuple((c, p) for c, p, _ in handles), across, TURNED))
    return found


def gone(way: Way, now: list[Curve], then: list[Curve]) -> float:
    """Return how far a way has been gone from the curves that there were then."""
    curve, point = way.moved[0]
    by = way.by[0]
    return float((now[curve][point] - then[curve][point]) @ by) / float(by @ by)


def slope(shares: list[tuple[int, Points]], normal: Points, ways: list[Way]) -> sparse.csr_matrix:
    """Return how far outwards each piece of the outline goes by each way, times its length,
    shape (pieces, ways). `shares` are by curve: its number, and how much each of its control
    points counts at each piece; `normal` points outwards, as long as a piece.
    """
    first, at = {}, 0
    for number, b in shares:
        first[number] = (at, b)
        at += len(b)
    rows, columns, values = [], [], []
    for n, way in enumerate(ways):
        for (curve, point), by in zip(way.moved, way.by, strict=True):
            if curve not in first:
                continue
            begin, b = first[curve]
            index = np.arange(begin, begin + len(b))
            rows.append(index)
            columns.append(np.full(len(b), n))
            values.append(b[:, point] * (normal[index] @ by))
    return sparse.csr_matrix(
        (np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))),
        shape=(len(normal), len(ways)),
    )
