"""Outlines on paper, exactly: where two lie side by side, and what they come to together.

In: rings of exact corners, clockwise on the page. Out: rings, the side that they share.
Invariant: nothing is rounded; an edge that is drawn as an arc counts as its chord.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from math import ceil, isqrt

from publish.surd import Length

Point = tuple[Length, Length]
Ring = tuple[Point, ...]
Line = tuple[Point, Point]

_KEPT = 4096


@dataclass(frozen=True)
class Glued:
    """Two outlines side by side: what they come to, and what they share."""

    ring: Ring
    line: Line | None
    """The side that they share, None where it is no full straight side of both."""


@lru_cache(_KEPT)
def plain(ring: Ring) -> Ring:
    """Return a ring without corners at which it runs straight on, from its first point."""
    kept = [
        b
        for a, b, c in zip((ring[-1], *ring[:-1]), ring, (*ring[1:], ring[0]), strict=True)
        if _cross(a, b, c) != 0
    ]
    if not kept:
        return ()
    at = kept.index(min(kept))
    return (*kept[at:], *kept[:at])


@lru_cache(_KEPT)
def glued(one: Ring, two: Ring) -> Glued | None:
    """Return two outlines taken together; None where they share no side, or leave a gap."""
    if not one or not two:
        return None
    corners = {*one, *two}
    mine, other = _split(one, corners), _split(two, corners)
    back = {(b, a) for a, b in other}
    shared = [edge for edge in mine if edge in back]
    gone = {(b, a) for a, b in shared}
    rest = [e for e in mine if e not in back] + [e for e in other if e not in gone]
    after = dict(rest)
    if not shared or len(after) < len(rest):
        return None
    ring = [rest[0][0]]
    while after and ring[-1] in after:
        ring.append(after.pop(ring[-1]))
    if after:
        return None
    return Glued(plain(tuple(ring[:-1])), _full_side(one, two, shared))


def _full_side(one: Ring, two: Ring, shared: Iterable[Line]) -> Line | None:
    """Return the line of some edges, where it is one whole side of both outlines."""
    edges = dict(shared)
    (start,) = set(edges) - set(edges.values()) or (None,)
    if start is None:
        return None
    stop = start
    while stop in edges:
        stop = edges[stop]
    whole = (start, stop) in _sides(plain(one)) and (stop, start) in _sides(plain(two))
    return (start, stop) if whole else None


def _sides(ring: Ring) -> set[Line]:
    return set(pairwise((*ring, *ring[:1])))


def _split(ring: Ring, points: Iterable[Point]) -> list[Line]:
    """Return the edges of a ring, parted wherever one of the points lies on them."""
    found: list[Line] = []
    for a, b in pairwise((*ring, ring[0])):
        on = [p for p in points if p not in (a, b) and _cross(a, p, b) == 0 and _within(a, p, b)]
        on.sort(key=lambda p: abs(p[0] - a[0]) + abs(p[1] - a[1]))
        found += pairwise((a, *on, b))
    return found


def _cross(a: Point, b: Point, c: Point) -> Length:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _within(a: Point, p: Point, b: Point) -> bool:
    return all(min(u, v) <= w <= max(u, v) for u, w, v in zip(a, p, b, strict=True))


def square_of(line: Line) -> Length:
    """Return the square of a line's length, which is exact where the length is not."""
    (x, y), (u, v) = line
    return (u - x) ** 2 + (v - y) ** 2


@lru_cache(_KEPT)
def reach(points: Ring, line: Line) -> tuple[Length, Length]:
    """Return the squares of how far points reach along a line, and across it."""
    (x, y), (u, v) = line
    dx, dy = u - x, v - y
    along = [dx * a + dy * b for a, b in points]
    over = [dx * b - dy * a for a, b in points]
    square = dx * dx + dy * dy
    return (max(along) - min(along)) ** 2 / square, (max(over) - min(over)) ** 2 / square


def is_box(ring: Ring) -> bool:
    """Return whether an outline is a rectangle whose sides lie along the page's."""
    found = plain(ring)
    edges = pairwise((*found, *found[:1]))
    return len(found) == 4 and all(a[0] == b[0] or a[1] == b[1] for a, b in edges)


def box_of(ring: Ring) -> tuple[Length, Length]:
    """Return the width and height of what an outline lies in."""
    xs, ys = zip(*ring, strict=True)
    return max(xs) - min(xs), max(ys) - min(ys)


def root_up(square: Length, parts: int) -> Length:
    """Return the least number of `parts` of an inch, in inches, whose square is no less.

    `square` is a fraction.
    """
    scaled = ceil(square * parts * parts)
    many = isqrt(scaled - 1) + 1 if scaled > 0 else 0
    return type(square)(many) / parts
