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
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import LineString, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draft.curves import Points
from publish.draft.fill import polygons
from publish.draft.limits import CHORD
from publish.draft.offset import FIRST, smoothed

_RIPPLE = 2 * CHORD
"""Inches: how much flattened curves may wrongly narrow or widen a place."""

_PARALLEL = 0.7
"""A finger fills at least this share of the band as wide as its root and as long as it is;
a taper to a point fills half, a rounded one two thirds."""

_LONG = 1.0
"""A finger is at least this many times as long as its root is wide."""

_PIECES = 300
"""Left-over pieces looked at, the largest first: more come from a torn outline only."""

_SECOND, _STEP, _CLOSE = 0.04, 1.25, 1.02
"""Inches of the second disc (the first is `FIRST`); the ratio from one disc to the next
after it; how near to close in."""


@dataclass(frozen=True)
class Narrow:
    """A narrow place: its middle, and its width in inches."""

    x: float
    y: float
    width: float


@dataclass(frozen=True, eq=False)
class _Part:
    """One connected area, copies with fewer points to search it by, and its edge, side by
    side. The coarse copy serves for discs larger than what it may be missing."""

    true: Polygon
    fine: Polygon
    coarse: BaseGeometry
    sides: NDArray[np.object_]
    tree: shapely.STRtree

    @classmethod
    def of(cls, part: Polygon) -> _Part:
        rings = [np.asarray(r.coords) for r in (part.exterior, *part.interiors)]
        sides = shapely.linestrings(
            np.concatenate([np.stack([r[:-1], r[1:]], axis=1) for r in rings])
        )
        fine = part.simplify(CHORD / 2)
        return cls(part, fine, smoothed(fine), sides, shapely.STRtree(sides))

    @cached_property
    def roundest(self) -> Narrow:
        """The widest place of a part that is narrow everywhere."""
        line = shapely.maximum_inscribed_circle(self.fine, tolerance=_RIPPLE / 8)
        x, y = line.coords[0]
        return Narrow(x, y, 2 * line.length)

    def edge(self, at: Points, reach: float) -> BaseGeometry:
        """Return the edge near a point, at least as far as `reach` from it."""
        return shapely.multilinestrings(self.sides[self.tree.query(Point(at).buffer(reach))])


@dataclass(frozen=True, eq=False)
class Search:
    """An area to be searched, part by part.

    For an area that repeats, `region` is one repeat: what lies outside it is not looked
    at, being an image of what lies inside.
    """

    parts: tuple[_Part, ...]
    region: Polygon | None

    @classmethod
    def of(cls, area: MultiPolygon, region: Polygon | None = None) -> Search:
        return cls(tuple(_Part.of(p) for p in area.geoms), region)

    def near(self, found: NDArray[np.object_]) -> NDArray[np.object_]:
        """Return those of many geometries that lie in the region."""
        if self.region is None or not len(found):
            return found
        shapely.prepare(self.region)
        inside: NDArray[np.object_] = found[shapely.intersects(self.region, found)]
        return inside


def narrowest(search: Search, most: float) -> Narrow | None:
    """Return the narrowest place not wider than `most`; None when there is none."""
    known = _between_rings(search, most)
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
    return min([*found, *known], key=lambda n: n.width)


def narrow_places(search: Search, needed: float) -> tuple[Narrow, ...]:
    """Return every place narrower than `needed`, narrowest first."""
    found = [*_between_rings(search, needed), *_places(search, needed / 2)]
    apart: list[Narrow] = []
    for place in sorted(found, key=lambda n: n.width):
        if place.width < needed and all(
            np.hypot(place.x - p.x, place.y - p.y) > needed / 2 for p in apart
        ):
            apart.append(place)
    return tuple(apart)


def _between_rings(search: Search, most: float) -> list[Narrow]:
    """Return where two outlines of one part pass each other closer than `most`."""
    found = []
    for part in search.parts:
        rings = np.array([part.true.exterior, *part.true.interiors], dtype=object)
        if len(rings) < 2:
            continue
        ours, theirs = shapely.STRtree(rings).query(rings, predicate="dwithin", distance=most)
        for i, k in zip(ours, theirs, strict=True):
            if i < k:
                line = shapely.shortest_line(rings[i], rings[k])
                middle = line.interpolate(0.5, normalized=True)
                found.append(Narrow(middle.x, middle.y, line.length))
    return found


def _places(search: Search, radius: float) -> list[Narrow]:
    return [n for part in search.parts for n in _in_part(search, part, radius)]


def _in_part(search: Search, part: _Part, radius: float) -> list[Narrow]:
    """Return the narrow places that a disc of one radius finds in one connected area."""
    slack = max(_RIPPLE, 0.02 * radius)
    copy = part.fine if radius <= FIRST else part.coarse
    shrunk = polygons(copy.buffer(-radius, quad_segs=8))
    lobes = [p for p in shrunk.geoms if _holds_disc(p, slack)]
    if not lobes:
        return [part.roundest]
    open_area = MultiPolygon(lobes).buffer(radius + slack / 2, quad_segs=8)
    shapely.prepare(open_area)
    left = shapely.get_parts(polygons(copy.difference(open_area)))
    left = search.near(left[shapely.area(left) > slack * slack])
    left = left[np.argsort(-shapely.area(left), kind="stable")][:_PIECES]
    found = [_measured(part, _middle(p), radius) for p in left if not _is_tip(p, open_area)]
    return found + _hourglasses(search, part, copy, lobes, radius)


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
        on = shapely.dwithin(open_area, middles, 1e-9)
        first = int(np.argmin(on))  # begin on the outline, if any of the ring is
        on, ends = np.roll(on, -first), np.roll(points[:-1], -first, axis=0)
        cuts = np.flatnonzero(np.diff(on.astype(int), prepend=0) == 1)
        for cut in cuts:
            count = int(np.argmin(on[cut:])) if not on[cut:].all() else len(on) - cut
            roots.append(np.take(ends, range(cut, cut + count + 1), axis=0, mode="wrap"))
    if len(roots) != 1:
        return False
    root, points = roots[0], np.asarray(left.exterior.coords)
    far = float(_gaps(points, root).min(axis=1).max())
    wide = float(_gaps(root, root).max())
    return far < _LONG * wide or left.area < _PARALLEL * wide * far


def _gaps(one: Points, two: Points) -> Points:
    """Return the distance from each point to each other."""
    found: Points = np.hypot(*(one[:, None] - two[None]).transpose(2, 0, 1))
    return found


def _middle(left: Polygon) -> Point:
    return left.centroid if left.contains(left.centroid) else left.representative_point()


def _hourglasses(
    search: Search, part: _Part, copy: BaseGeometry, lobes: list[Polygon], radius: float
) -> list[Narrow]:
    """Return where lobes that the disc cannot pass between come together at a waist."""
    slack = max(_RIPPLE, 0.02 * radius)
    tree = shapely.STRtree(lobes)
    ours, theirs = tree.query(lobes, predicate="dwithin", distance=2 * radius + slack)
    pairs = np.array([(lobes[i], lobes[k]) for i, k in zip(ours, theirs, strict=True) if i < k])
    if not len(pairs):
        return []
    lines = search.near(shapely.shortest_line(pairs[:, 0], pairs[:, 1]))
    inside = copy.buffer(slack)
    return [
        _measured(part, line.interpolate(0.5, normalized=True), radius)
        for line in lines[:_PIECES]
        if inside.covers(line)
    ]


def _measured(part: _Part, middle: Point, radius: float) -> Narrow:
    """Return the width at a place: the distance between the edges on its two sides.

    The edges are those within reach of the middle, on either side of the strip through it
    that is half as wide as the place; the strip leaves out the end of a finger.
    """
    at = np.array([middle.x, middle.y])
    edge = part.edge(at, 7 * radius)
    for _ in range(2):  # the second time round the middle lies midway
        near = _nearest(edge, at)
        side = near - at
        half = float(np.hypot(*side))
        if half < 1e-9:
            break
        way = side / half
        across = edge.intersection(LineString([at, at - 6 * radius * way]))
        if across.is_empty:
            break
        far = _nearest(across, at)
        at, half = (near + far) / 2, float(np.hypot(*(near - far))) / 2
    else:
        close = edge.intersection(Point(at).buffer(1.1 * half, quad_segs=16))
        one, two = (close.intersection(_half_plane(at, way * sign, half)) for sign in (1.0, -1.0))
        if not one.is_empty and not two.is_empty:
            line = shapely.shortest_line(one, two)
            mid = line.interpolate(0.5, normalized=True)
            return Narrow(mid.x, mid.y, line.length)
    return Narrow(middle.x, middle.y, 2 * radius)


def _half_plane(at: Points, way: Points, half: float) -> Polygon:
    """Return what lies more than half of `half` to one side of a place."""
    aside = np.array([-way[1], way[0]])
    near, far = at + 0.5 * half * way, at + 3 * half * way
    return Polygon([near - 3 * half * aside, near + 3 * half * aside,
                    far + 3 * half * aside, far - 3 * half * aside])  # fmt: skip


def _nearest(edge: BaseGeometry, at: Points) -> Points:
    found = shapely.shortest_line(edge, Point(at))
    return np.asarray(found.coords[0])
