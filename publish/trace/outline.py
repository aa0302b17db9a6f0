"""The outline of the agreed wedge, to a fraction of a pixel, in runs between folds.

In: a `Wedge`. Out: `Ring`s: runs of points that were cut, and the straight sides between
them that lie on the folds.
Invariant: what lies on a fold lies on it exactly; what is smaller than a speck is left out
and counted.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

import contourpy
import cv2
import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon

from publish.trace.consensus import Wedge
from publish.trace.image import Floats, Points

SPECK = 2.5e-5
"""Of a unit square (half the motif's width a side): parts and holes below it are dust, or
a shine on the paper. A dot of 1 mm in a motif of 360 mm."""

SMOOTH = 0.7
"""Pixels of the blur that evens out the noise that is left."""


@dataclass(frozen=True)
class Run:
    """Points of a cut edge, cloth on one side all along; `closed` when it is a loop.

    `ends` tells for each end the fold it lies on, 0 or 1, or None.
    """

    points: Points
    closed: bool
    ends: tuple[int | None, int | None]


@dataclass(frozen=True)
class Ring:
    """Runs in their order round one part or hole; between them the folds are followed:
    the corners there, such as the centre, stand in `between` after each run."""

    runs: tuple[Run, ...]
    between: tuple[Points, ...]
    hole: bool


@dataclass(frozen=True)
class Outline:
    """The parts of one wedge in the plane, what was dropped, and its rings."""

    area: MultiPolygon
    rings: tuple[tuple[Ring, ...], ...]
    """By part: its outside, then its holes."""
    specks: int


def outlined(wedge: Wedge) -> Outline:
    """Return the outline at the half level."""
    field, dust = _unpicked(wedge)
    field = np.asarray(cv2.GaussianBlur(field, (0, 0), SMOOTH), np.float32)
    made = contourpy.contour_generator(
        z=np.pad(field, 1),
        fill_type=contourpy.FillType.OuterOffset,
        line_type=contourpy.LineType.Separate,
        name="serial",
    ).filled(0.5, 9.0)
    parts = []
    for points, offsets in zip(made[0], made[1], strict=True):
        assert points is not None and offsets is not None
        rings = [wedge.plane(points[a:b] - 1) for a, b in pairwise(offsets)]
        if all(len(r) >= 4 for r in rings[:1]):
            parts.append(Polygon(rings[0], [r for r in rings[1:] if len(r) >= 4]))
    far = 4.0
    sector = Polygon([(0, 0), (far, 0), (far * math.cos(wedge.angle), far * math.sin(wedge.angle))])
    whole = shapely.make_valid(MultiPolygon(parts)).intersection(sector)
    kept, specks = _swept(whole)
    return Outline(kept, tuple(_rings(p, wedge.angle) for p in kept.geoms), specks + dust)


def _unpicked(wedge: Wedge) -> tuple[Floats, int]:
    """Return the field with specks of ground on a fold or at the centre filled, which are no
    holes of one wedge but of the opened motif; and their number."""
    field = wedge.field
    most = SPECK * wedge.unit**2
    count, labels, stats, _ = cv2.connectedComponentsWithStats((field < 0.5).astype(np.uint8))
    dust = []
    for label in range(1, count):
        if stats[label, cv2.CC_STAT_AREA] < 2 * most:
            rows, columns = np.nonzero(labels == label)
            x, y = wedge.plane(np.column_stack([columns, rows])).T
            if (np.minimum(y, x * math.sin(wedge.angle) - y * math.cos(wedge.angle)) < 0).any():
                dust.append(label)
    if not dust:
        return field, 0
    spot = cv2.dilate(np.isin(labels, dust).astype(np.uint8), np.ones((3, 3), np.uint8)) > 0
    return np.where(spot, np.maximum(field, 0.9), field).astype(np.float32), len(dust)


def _swept(whole: shapely.Geometry) -> tuple[MultiPolygon, int]:
    """Return the parts without specks, and the number of those."""
    parts, specks = [], 0
    for part in shapely.get_parts(whole):
        if part.geom_type != "Polygon":
            continue
        if part.area < SPECK:
            specks += part.area > SPECK / 25
            continue
        holes = [h for h in part.interiors if Polygon(h).area >= SPECK]
        specks += sum(SPECK / 25 < Polygon(h).area < SPECK for h in part.interiors)
        parts.append(Polygon(part.exterior, holes))
    return MultiPolygon(parts), specks


def _rings(part: Polygon, angle: float) -> tuple[Ring, ...]:
    part = shapely.orient_polygons(part)
    return tuple(
        _ring(np.asarray(ring.coords)[:-1], angle, i > 0)
        for i, ring in enumerate((part.exterior, *part.interiors))
    )


def _fold_of(points: Points, angle: float) -> Points:
    """Return for each point 0 or 1 for the fold it lies on, 2 for both, -1 for none."""
    near = 1e-9
    one = np.abs(points[:, 1]) < near
    two = np.abs(points[:, 1] * math.cos(angle) - points[:, 0] * math.sin(angle)) < near
    found: Points = np.select([one & two, one, two], [2, 0, 1], -1)
    return found


def _ring(points: Points, angle: float, hole: bool) -> Ring:
    """Part a ring into its runs."""
    fold = _fold_of(points, angle)
    after = np.roll(fold, -1)
    same = (fold >= 0) & (after >= 0) & ((fold == after) | (fold == 2) | (after == 2))
    if not same.any():
        closed = np.concatenate([points, points[:1]])
        return Ring((Run(closed, True, (None, None)),), (np.zeros((0, 2)),), hole)
    # Begin behind a side that lies on a fold, so that no run is parted by the beginning.
    first = int(np.flatnonzero(same)[-1]) + 1
    points, fold, same = (np.roll(v, -first, axis=0) for v in (points, fold, same))
    runs, between = [], []
    count, i = len(points), 0
    while i < count:
        j = i
        while j < count - 1 and not same[j]:
            j += 1
        run = points[i : j + 1]
        k = j
        corners = []
        while k < count and same[k]:
            k += 1
            if k < count and same[k]:
                corners.append(points[k])
        if len(run) >= 2:
            ends = tuple(int(f) if f in (0, 1) else None for f in (fold[i], fold[j]))
            runs.append(Run(run, False, (ends[0], ends[1])))
            between.append(_turning(corners))
        elif corners and between:
            between[-1] = np.concatenate([between[-1], run, _turning(corners)])
        i = max(k, j + 1)
    return Ring(tuple(runs), tuple(between), hole)


def _turning(corners: list[Points]) -> Points:
    """Return the corners that matter between two runs along the folds: the centre."""
    kept = [c for c in corners if np.hypot(*c) < 1e-9]
    return np.array(kept).reshape(-1, 2)
