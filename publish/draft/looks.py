"""What a unit looks like, however it is turned, and whether it is another's mirror image.

In: labelled outlines of a map, and the outline of them together. Out: `Look`s.
Invariant: two looks are equal exactly when one unit can be turned and shifted to lie on
the other, fabrics and all. A mirror image has the same `either` but another `own`, unless
the unit is its own mirror image.

A unit is described as seen along each of its longest edges in turn, with lengths as
multiples of that edge, and the least of these descriptions is its look: turning the unit
changes none of them, and multiples of an edge are exact where lengths themselves are not.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from math import gcd

from publish.draft.planar import Figure, Spot, Way

Seen = tuple[str, tuple[tuple[int, ...], ...]]
"""A label, and a figure's corners along and across the edge that it is seen from."""


@dataclass(frozen=True)
class Look:
    """A unit's own look, that of its mirror image, the one of them that stands for either,
    and its faces in the order of that one."""

    own: Hashable
    mirror: Hashable
    """That of its mirror image."""
    either: Hashable
    faces: tuple[int, ...]


def look(outline: tuple[Way, ...], figures: Iterable[tuple[int, Figure]], scale: int) -> Look:
    """Return the look of figures, each with the number of the face that it belongs to."""
    figures = list(figures)
    lengths = [_square(w) for w in outline]
    longest = max(lengths)
    ways = [w for w, square in zip(outline, lengths, strict=True) if square == longest]
    size = Fraction(longest, scale * scale)
    own, faces = min(_seen(figures, w.start, w.end, longest, False) for w in ways)
    other, mirrored = min(_seen(figures, w.end, w.start, longest, True) for w in ways)
    if own <= other:
        return Look((size, own), (size, other), (size, own), faces)
    return Look((size, own), (size, other), (size, other), mirrored)


def _square(way: Way) -> int:
    return (way.end[0] - way.start[0]) ** 2 + (way.end[1] - way.start[1]) ** 2


def _seen(
    figures: list[tuple[int, Figure]], start: Spot, end: Spot, square: int, mirror: bool
) -> tuple[tuple[int, tuple[Seen, ...]], tuple[int, ...]]:
    """Return figures as seen from an edge, divided by what all their numbers share."""
    x, y = end[0] - start[0], end[1] - start[1]

    def see(spot: Spot) -> tuple[int, int]:
        u, v = spot[0] - start[0], spot[1] - start[1]
        across = x * v - y * u
        return x * u + y * v, -across if mirror else across

    found = []
    for face, (label, ways) in figures:
        corners = [_corner(w, mirror, see) for w in (ways[::-1] if mirror else ways)]
        first = corners.index(min(corners))
        found.append((str(label), (*corners[first:], *corners[:first]), face))
    found.sort()
    common = gcd(square, *(v for _, ring, _ in found for corner in ring for v in corner[:5]))
    rings = tuple(
        (label, tuple((*(v // common for v in c[:5]), c[5]) for c in ring))
        for label, ring, _ in found
    )
    return (square // common, rings), tuple(dict.fromkeys(face for *_, face in found))


def _corner(way: Way, mirror: bool, see: Callable[[Spot], Spot]) -> tuple[int, ...]:
    """Return a corner with the edge that leaves it: straight, or an arc about a centre."""
    spot = see(way.end if mirror else way.start)
    if way.bend is None:
        return (*spot, 0, 0, 0, 0)
    centre = see(way.bend[:2])
    turn = way.bend[2]
    # A mirrored edge is run backwards and reflected: its sense of turning stays.
    return (*spot, 1, *centre, 1 if turn else 2)
