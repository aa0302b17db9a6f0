"""Arcs of circles between corners of patches.

In: exact corners, and the point that an arc runs through. Out: circles, lengths, and
points along an arc.
Invariant: whether corners lie on one circle is decided exactly; only lengths and points
between corners are floats. The y axis points down.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import acos, atan2, ceil, cos, hypot, sin, tau

from shapely.geometry import Polygon

from publish.surd import Length

Point = tuple[Length, Length]
Ring = tuple[Point, ...]
Arcs = tuple[tuple[int, Point], ...]
"""`(i, through)` says that the edge from corner i of a ring to the corner after it is the
circular arc through a point."""

Edge = tuple[Point, Point, Point | None]
"""Start, end, and the point that an arc runs through; None for a straight edge."""

Circle = tuple[Length, Length, Length]
"""Centre, and the square of the radius."""

CHORD = 0.002
"""Inches: how far a straight line may stray from the arc that it stands for."""


def edges_of(ring: Ring, arcs: Arcs = ()) -> Iterator[Edge]:
    """Yield the edges of a ring in order."""
    through = dict(arcs)
    for i, (one, two) in enumerate(zip(ring, (*ring[1:], ring[0]), strict=True)):
        yield one, two, through.get(i)


def circle_through(one: Point, through: Point, two: Point) -> Circle:
    """Return the circle through three points that do not lie on one line."""
    (x, y), (a, b), (u, v) = one, through, two
    a, b, u, v = a - x, b - y, u - x, v - y
    first, second, twice = a * a + b * b, u * u + v * v, 2 * (a * v - b * u)
    across, down = (first * v - second * b) / twice, (second * a - first * u) / twice
    return x + across, y + down, across * across + down * down


def clockwise(one: Point, through: Point, two: Point) -> bool:
    """Return whether the arc through a point runs clockwise on the page."""
    (x, y), (a, b), (u, v) = one, through, two
    return bool((a - x) * (v - y) - (u - x) * (b - y) > 0)


def drawn_out(edge: Edge, chord: float = CHORD) -> list[tuple[float, float]]:
    """Return points along an edge from its start to just before its end, near enough that a
    straight line between neighbours stays within `chord` inches of an arc.

    Both patches at an arc are given the same points of it, whichever way they run it.
    """
    one, two, through = edge
    start, end = ((float(x), float(y)) for x, y in (one, two))
    if through is None:
        return [start]
    if end < start:
        return [start, *drawn_out((two, one, through), chord)[:0:-1]]
    x, y, radius, begin, sweep = swept(one, through, two)
    step = 2 * acos(max(0.0, 1 - chord / radius))
    count = max(2, ceil(abs(sweep) / step))
    turns = (begin + sweep * n / count for n in range(1, count))
    return [start, *((x + radius * cos(t), y + radius * sin(t)) for t in turns)]


def outline(ring: Ring, arcs: Arcs = (), chord: float = CHORD) -> Polygon:
    """Return the area inside a ring, its arcs drawn out."""
    return Polygon(corners(ring, arcs, chord))


def corners(ring: Ring, arcs: Arcs = (), chord: float = CHORD) -> list[tuple[float, float]]:
    """Return the corners of a ring, and between them the points of its arcs."""
    return [p for edge in edges_of(ring, arcs) for p in drawn_out(edge, chord)]


def arc_length(one: Point, through: Point, two: Point) -> float:
    """Return the length of an arc in inches."""
    _, _, radius, _, sweep = swept(one, through, two)
    return radius * abs(sweep)


def swept(one: Point, through: Point, two: Point) -> tuple[float, float, float, float, float]:
    """Return an arc's centre, radius, angle at its start, and how far it turns.

    Radians, clockwise positive; the angle 0 points to the right.
    """
    circle = circle_through(one, through, two)
    x, y = float(circle[0]), float(circle[1])
    (a, b), (c, d) = ((float(u), float(v)) for u, v in (one, two))
    begin = atan2(b - y, a - x)
    sweep = (atan2(d - y, c - x) - begin) % tau
    turn = sweep if clockwise(one, through, two) else sweep - tau
    return x, y, hypot(a - x, b - y), begin, turn
