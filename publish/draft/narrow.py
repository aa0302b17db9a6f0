"""The narrowest places of an area: necks of cloth, and, of the ground, slits.

In: areas in inches. Out: `Narrow` places with their widths.
Invariant: a width is the distance between the two edges that face each other there, taken
from the outline itself; a point where edges run together is a tip, not a narrow place.

How they are found. Shrink the area by r and grow what is left by r again: what the disc of
radius r cannot reach is left over. A left-over piece is a narrow place when it joins two
parts (a neck), when it is a whole part (too small everywhere), or when it sticks out with
nearly parallel edges (a finger); a piece that tapers is a tip. Two parts that come apart
without leaving anything over (an hourglass), and two outlines that pass close to each
other (the rim of a hole), are narrow places too. The narrowest is found by trying larger
and larger discs until one finds a place, then closing in.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draft.curves import Points
from publish.draft.fill import polygons
from publish.draft.limits import GRID
from publish.draft.narrowpart import RIPPLE, Narrow, Part
from publish.draft.offset import FIRST
from publish.draft.repeat import Repeat

_PARALLEL = 0.7
"""A finger fills at least this share of the band as wide as its root and as long as it is;
a taper to a point fills half, a rounded one two thirds."""

_LONG = 1.0
"""A finger is at least this many times as long as its root is wide."""

_PIECES = 300
"""Left-over pieces looked at, the largest first: more come from a torn outline only."""

_ON = 3 * GRID
"""Inches: how far a side of a left-over piece may lie from what it was cut off, both having
been laid on the grid."""

_SECOND, _STEP, _CLOSE = 0.04, 1.25, 1.02
"""Inches of the second disc (the first is `FIRST`); the ratio from one disc to the next
after it; how near to close in."""


@dataclass(frozen=True, eq=False)
class Search:
    """An area to be searched, part by part.

    Of an area that repeats only the parts that lie in one repeat are searched, in part at
    least: the others are their images.
    """

    parts: tuple[Part, ...]
    repeat: Repeat | None

    @classmethod
    def of(cls, area: MultiPolygon, repeat: Repeat | None = None) -> Search:
        parts = shapely.get_parts(area) if repeat is None else repeat.here(shapely.get_parts(area))
        return cls(tuple(Part.of(p, repeat) for p in parts), repeat)

    def near(self, found: NDArray[np.object_]) -> NDArray[np.object_]:
        """Return those of many geometries that lie in the region searched."""
        return found if self.repeat is None else self.repeat.here(found)


@dataclass(frozen=True)
class _Place:
    """A place that a disc does not pass, not measured yet; without a middle a whole part."""

    part: Part
    middle: Point | None
    radius: float

    def measured(self) -> Narrow:
        if self.middle is None:
            return self.part.roundest
        return self.part.measured(self.middle, self.radius)


def narrowest(search: Search, most: float) -> Narrow | None:
    """Return the narrowest place not wider than `most`; None when there is none."""
    known = _between_rings(search, most, nearest=True)
    best = min(known, key=lambda n: n.width, default=None)
    limit = most / 2 if best is None else min(most, best.width) / 2
    low, high = 0.0, min(FIRST, limit)
    while not (found := _places(search, high)):
        if high >= limit:
            return best
        low, high = high, min(max(high * _STEP, _SECOND), limit)
    while high > max(low, FIRST) * _CLOSE:
        middle = (max(low, FIRST) * high) ** 0.5
        nearer = _places(search, middle)
        low, high, found = (low, middle, nearer) if nearer else (middle, high, found)
    return min([*(p.measured() for p in found), *known], key=lambda n: n.width)


def narrow_places(search: Search, needed: float) -> tuple[Narrow, ...]:
    """Return every place narrower than `needed`, narrowest first."""
    found = _between_rings(search, needed, nearest=False)
    found += [place.measured() for place in _places(search, needed / 2)]
    apart: list[Narrow] = []
    taken: dict[tuple[int, int], list[Narrow]] = {}  # by squares as wide as `needed` / 2
    for place in sorted(found, key=lambda n: n.width):
        column, row = (int(v // (needed / 2)) for v in (place.x, place.y))
        near = [
            p for i in (-1, 0, 1) for k in (-1, 0, 1) for p in taken.get((column + i, row + k), ())
        ]
        if place.width < needed and all(
            np.hypot(place.x - p.x, place.y - p.y) > needed / 2 for p in near
        ):
            apart.append(place)
            taken.setdefault((column, row), []).append(place)
    return tuple(apart)


def _between_rings(search: Search, most: float, nearest: bool) -> list[Narrow]:
    """Return where two outlines of one part pass each other closer than `most`; of each
    outline the nearest other one alone if that is all that is asked."""
    found = []
    for part in search.parts:
        rings = np.array([part.true.exterior, *part.true.interiors], dtype=object)
        if len(rings) < 2:
            continue
        tree = shapely.STRtree(rings)
        if nearest:
            pairs = tree.query_nearest(rings, max_distance=most, exclusive=True)
        else:
            pairs = tree.query(rings, predicate="dwithin", distance=most)
        ours, theirs = np.unique(np.sort(pairs[:, pairs[0] != pairs[1]], axis=0), axis=1)
        lines = search.near(shapely.shortest_line(rings[ours], rings[theirs]))
        middles = shapely.line_interpolate_point(lines, 0.5, normalized=True)
        places = zip(shapely.get_coordinates(middles), shapely.length(lines), strict=True)
        found += [Narrow(float(x), float(y), float(width)) for (x, y), width in places]
    return found


def _places(search: Search, radius: float) -> list[_Place]:
    return [place for part in search.parts for place in _in_part(search, part, radius)]


def _in_part(search: Search, part: Part, radius: float) -> list[_Place]:
    """Return the narrow places that a disc of one radius finds in one connected area."""
    slack = max(RIPPLE, 0.02 * radius)
    copy = part.copy(radius)
    shrunk = polygons(part.grown(copy, -radius))
    lobes = [p for p in shrunk.geoms if _holds_disc(p, slack)]
    if not lobes:
        return [_Place(part, None, radius)]
    open_area = part.grown(MultiPolygon(lobes), radius + slack / 2)
    shapely.prepare(open_area)
    left = part.left_over(copy, open_area)
    left = search.near(left[shapely.area(left) > slack * slack])
    left = left[np.argsort(-shapely.area(left), kind="stable")][:_PIECES]
    found = [_middle(p) for p in left if not _is_tip(p, open_area)]
    found += _hourglasses(search, part, copy, lobes, radius)
    return [_Place(part, middle, radius) for middle in found]


def _holds_disc(area: Polygon, radius: float) -> bool:
    """Return whether a disc fits in an area; a point well inside settles it for most."""
    if area.boundary.distance(area.representative_point()) > 1.2 * radius:
        return True
    return not area.buffer(-radius, quad_segs=2).is_empty


def _is_tip(left: Polygon, open_area: BaseGeometry) -> bool:
    """Say whether a left-over piece comes off at one place only, and tapers from there."""
    roots: list[Points] = []
    for ring in (left.exterior, *left.interiors):
        points = np.asarray(ring.coords)
        middles = shapely.points((points[:-1] + points[1:]) / 2)
        on = shapely.dwithin(open_area, middles, _ON)
        first = int(np.argmin(on))  # begin on the outline, if any of the ring is
        on, ends = np.roll(on, -first), np.roll(points[:-1], -first, axis=0)
        cuts = np.flatnonzero(np.diff(on.astype(int), prepend=0) == 1)
        for cut in cuts:
            count = int(np.argmin(on[cut:])) if not on[cut:].all() else len(on) - cut
            roots.append(np.take(ends, range(cut, cut + count + 1), axis=0, mode="wrap"))
    if len(roots) != 1:
        return False
    root, points = roots[0], np.asarray(left.exterior.coords)
    ends = shapely.STRtree(shapely.points(root))
    _, gaps = ends.query_nearest(shapely.points(points), all_matches=False, return_distance=True)
    far = float(gaps.max())
    hull = shapely.get_coordinates(shapely.multipoints(root).convex_hull)
    wide = float(np.hypot(*(hull[:, None] - hull[None]).transpose(2, 0, 1)).max())
    return far < _LONG * wide or left.area < _PARALLEL * wide * far


def _middle(left: Polygon) -> Point:
    return left.centroid if left.contains(left.centroid) else left.representative_point()


def _hourglasses(
    search: Search, part: Part, copy: BaseGeometry, lobes: list[Polygon], radius: float
) -> list[Point]:
    """Return where lobes that the disc cannot pass between come together at a waist."""
    slack = max(RIPPLE, 0.02 * radius)
    tree = shapely.STRtree(lobes)
    ours, theirs = tree.query(lobes, predicate="dwithin", distance=2 * radius + slack)
    ours, theirs = ours[ours < theirs], theirs[ours < theirs]
    every = np.array(lobes, dtype=object)
    lines = search.near(shapely.shortest_line(every[ours], every[theirs]))[:_PIECES]
    if not len(lines):
        return []
    inside = part.grown(copy, slack)
    shapely.prepare(inside)
    return [line.interpolate(0.5, normalized=True) for line in lines if inside.covers(line)]
