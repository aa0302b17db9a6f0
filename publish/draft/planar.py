"""The map of a block as points, edges and faces, in whole numbers.

In: what is to be sewn, each with its outline in inches. Out: a `Planar`, its faces the
things to be sewn, every edge cut at the corners that lie on it.
Invariant: coordinates are exact whole multiples of one fraction of an inch, centres of
arcs included; an edge between two faces is the same edge for both, run the other way.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Hashable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import pairwise
from math import lcm

from publish.arcs import Ring, circle_through, clockwise, edges_of
from publish.model.draft import Arcs

Spot = tuple[int, int]
Bend = tuple[int, int, bool] | None
"""Centre of an arc, and whether it runs clockwise on the page; None for a straight edge."""


@dataclass(frozen=True)
class Way:
    """An edge run in one direction."""

    start: Spot
    end: Spot
    bend: Bend = None

    @cached_property
    def back(self) -> Way:
        bend = None if self.bend is None else (*self.bend[:2], not self.bend[2])
        return Way(self.end, self.start, bend)

    @cached_property
    def leaves(self) -> Spot:
        """Return the direction at the start, of any length."""
        return self._heading(self.start)

    @cached_property
    def arrives(self) -> Spot:
        """Return the direction at the end, of any length."""
        return self._heading(self.end)

    def _heading(self, at: Spot) -> Spot:
        if self.bend is None:
            return self.end[0] - self.start[0], self.end[1] - self.start[1]
        x, y = at[0] - self.bend[0], at[1] - self.bend[1]
        return (-y, x) if self.bend[2] else (y, -x)

    def goes_on(self, after: Way) -> bool:
        """Return whether another edge carries this one on without a corner."""
        (x, y), (u, v) = self.arrives, after.leaves
        return x * v == y * u and x * u + y * v > 0


Figure = tuple[Hashable, tuple[Way, ...]]
"""A label, such as a fabric, and an outline as drawn."""


@dataclass(frozen=True)
class Sewable:
    """What is sewn as one: its outline in inches, and how it looks, labelled outlines."""

    ring: Ring
    arcs: Arcs
    looks: tuple[tuple[Hashable, Ring, Arcs], ...]


class Planar:
    """Faces, each a thing to be sewn, and the edges between them."""

    def __init__(self, things: Sequence[Sewable]) -> None:
        self.scale = _scale(things)
        outlines = [self._ways(t.ring, t.arcs) for t in things]
        corners = sorted({w.start for ways in outlines for w in ways})
        self.faces: list[tuple[Way, ...]] = [
            tuple(c for way in ways for c in _cut(way, corners)) for ways in outlines
        ]
        self.figures: list[list[Figure]] = [
            [(label, self._ways(ring, arcs)) for label, ring, arcs in t.looks] for t in things
        ]
        self.owner: dict[Way, int] = {w: n for n, ways in enumerate(self.faces) for w in ways}

    def coarser(self, groups: Sequence[frozenset[int]]) -> Planar:
        """Return the map whose faces are groups of the faces of this one."""
        found = Planar.__new__(Planar)
        found.scale = self.scale
        found.faces = [tuple(self.rim(group)) for group in groups]
        found.figures = [[f for n in sorted(group) for f in self.figures[n]] for group in groups]
        found.owner = {w: n for n, ways in enumerate(found.faces) for w in ways}
        return found

    def _ways(self, ring: Ring, arcs: Arcs) -> tuple[Way, ...]:
        found = []
        for one, two, through in edges_of(ring, arcs):
            bend: Bend = None
            if through is not None:
                x, y, _ = circle_through(one, through, two)
                bend = (*self._spot((x, y)), clockwise(one, through, two))
            found.append(Way(self._spot(one), self._spot(two), bend))
        return tuple(found)

    def _spot(self, point: tuple[Fraction, Fraction]) -> Spot:
        return int(point[0] * self.scale), int(point[1] * self.scale)

    def outline(self, faces: Iterable[int]) -> tuple[Way, ...]:
        """Return the outline of faces that make one piece of cloth, clockwise on the page,
        without corners along a straight edge or an arc."""
        rim = self.rim(frozenset(faces))
        after: dict[Spot, list[Way]] = defaultdict(list)
        for way in rim:
            after[way.start].append(way)
        way = min(rim, key=lambda w: (w.start, w.end))
        walked: list[Way] = []
        for _ in rim:
            walked.append(way)
            choices = after[way.end]
            way = choices[0] if len(choices) == 1 else _sharpest(way, choices, walked)
        return _merged(walked)

    def rim(self, faces: frozenset[int]) -> list[Way]:
        """Return the edges of faces that no other of them has."""
        owner = self.owner
        return [w for n in sorted(faces) for w in self.faces[n] if owner.get(w.back) not in faces]


def _sharpest(way: Way, choices: list[Way], walked: list[Way]) -> Way:
    """Return where an outline that touches itself at a point goes on: hard to the right."""
    left = [c for c in choices if c not in walked]
    (x, y) = way.arrives

    def turn(choice: Way) -> float:
        u, v = choice.leaves
        cross, dot = x * v - y * u, x * u + y * v
        size = (abs(cross) + abs(dot)) or 1
        return (1 - dot / size) * (1 if cross >= 0 else -1)

    return max(left or choices, key=turn)


def _merged(walked: list[Way]) -> tuple[Way, ...]:
    """Return an outline whose edges are as long as they can be."""
    first = next((i for i, w in enumerate(walked) if not _one_line(walked[i - 1], w)), 0)
    found: list[Way] = []
    for way in (*walked[first:], *walked[:first]):
        if found and _one_line(found[-1], way):
            found[-1] = Way(found[-1].start, way.end, way.bend)
        else:
            found.append(way)
    return tuple(found) if len(found) > 1 else tuple(walked)  # a whole circle keeps corners


def _one_line(one: Way, two: Way) -> bool:
    """Return whether two edges lie on one straight line or on one circle."""
    return one.bend == two.bend and one.goes_on(two)


def _scale(things: Sequence[Sewable]) -> int:
    """Return the fineness at which every corner and every centre is a whole number."""
    found = 1
    for thing in things:
        for ring, arcs in ((thing.ring, thing.arcs), *((r, a) for _, r, a in thing.looks)):
            values = [v for point in ring for v in point]
            for one, two, through in edges_of(ring, arcs):
                if through is not None:
                    values += circle_through(one, through, two)[:2]
            found = lcm(found, *(v.denominator for v in values))
    return found


def _cut(way: Way, corners: list[Spot]) -> list[Way]:
    """Return an edge in pieces, from corner to corner."""
    inside = _on_line(way, corners) if way.bend is None else _on_arc(way, corners)
    return [Way(a, b, way.bend) for a, b in pairwise([way.start, *inside, way.end])]


def _on_line(way: Way, corners: list[Spot]) -> list[Spot]:
    (a, b), (c, d) = way.start, way.end
    x, y = c - a, d - b
    low, high, left, right = min(a, c), max(a, c), min(b, d), max(b, d)
    found = [
        (u, v)
        for u, v in corners
        if low <= u <= high
        and left <= v <= right
        and x * (v - b) == y * (u - a)
        and (u, v) not in (way.start, way.end)
    ]
    return sorted(found, key=lambda p: (p[0] - a) * x + (p[1] - b) * y)


def _on_arc(way: Way, corners: list[Spot]) -> list[Spot]:
    """Return the corners on an arc, in order: each leaves the later ones beyond it."""
    assert way.bend is not None
    x, y, right = way.bend
    (a, b) = way.start
    square = (a - x) ** 2 + (b - y) ** 2

    def before(one: Spot, two: Spot, three: Spot) -> bool:
        """Return whether three points of the circle follow each other along the arc."""
        (p, q), (r, s), (t, u) = one, two, three
        return ((r - p) * (u - q) - (t - p) * (s - q) > 0) == right

    found = [
        p
        for p in corners
        if p not in (way.start, way.end)
        and (p[0] - x) ** 2 + (p[1] - y) ** 2 == square
        and before(way.start, p, way.end)
    ]
    ordered: list[Spot] = []
    while found:
        start = ordered[-1] if ordered else way.start
        ahead = next(p for p in found if all(q == p or before(start, p, q) for q in found))
        found.remove(ahead)
        ordered.append(ahead)
    return ordered
