"""Edges of patches: straight ones, and arcs through three grid points.

In: exact grid points. Out: edges, and what is to be known of their circles and areas.
Invariant: the circle through three rational points has a rational centre and a rational
squared radius, so whether arcs share a circle, and whether one leaves the grid, is decided
exactly. Only areas and drawn-out points are floats. The y axis points down.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import atan2, ceil, cos, floor, radians, sin, sqrt, tau

from publish.model.block import GridPoint

Flat = tuple[float, float]
Circle = tuple[GridPoint, Fraction]
"""Centre, and the square of the radius."""

STEP = radians(0.5)
"""Arcs are drawn out at whole multiples of this angle: a chord then lies within 1/100,000
of the radius from its arc."""


def cross(origin: GridPoint, one: GridPoint, two: GridPoint) -> Fraction:
    """Return twice the area of a triangle: positive when it runs clockwise on the page."""
    (x, y), (a, b), (u, v) = origin, one, two
    return (a - x) * (v - y) - (u - x) * (b - y)


@dataclass(frozen=True)
class Edge:
    """An edge from corner to corner: straight, or the arc that runs through a third point."""

    start: GridPoint
    end: GridPoint
    through: GridPoint | None = None

    @property
    def circle(self) -> Circle | None:
        """Return the arc's circle; None for a straight edge.

        The three points must not lie on one line.
        """
        if self.through is None:
            return None
        (x, y), (a, b), (u, v) = self.start, self.through, self.end
        a, b, u, v = a - x, b - y, u - x, v - y
        one, two, twice = a * a + b * b, u * u + v * v, 2 * (a * v - b * u)
        across, down = (one * v - two * b) / twice, (two * a - one * u) / twice
        return (x + across, y + down), across * across + down * down

    @property
    def clockwise(self) -> bool:
        """Return whether an arc runs clockwise on the page."""
        return self.through is not None and cross(self.start, self.through, self.end) > 0

    def holds(self, point: GridPoint) -> bool:
        """Return whether a point of the arc's circle lies on the arc, ends included."""
        assert self.through is not None
        side = cross(self.start, self.end, self.through)
        return side * cross(self.start, self.end, point) >= 0

    def drawn_out(self) -> list[Flat]:
        """Return points along the edge, from its start to just before its end."""
        first = (float(self.start[0]), float(self.start[1]))
        circle = self.circle
        if circle is None:
            return [first]
        (x, y), square = circle
        begin, sweep = self.angles(circle)
        low, high = min(begin, begin + sweep), max(begin, begin + sweep)
        steps = [n * STEP for n in range(floor(low / STEP) + 1, ceil(high / STEP))]
        radius = sqrt(square)
        between = [(float(x) + radius * cos(t), float(y) + radius * sin(t)) for t in steps]
        return [first, *(between if sweep > 0 else between[::-1])]

    def angles(self, circle: Circle) -> tuple[float, float]:
        """Return the angle at which an arc starts, and how far it sweeps, clockwise."""
        (x, y), _ = circle
        begin = atan2(self.start[1] - y, self.start[0] - x)
        sweep = (atan2(self.end[1] - y, self.end[0] - x) - begin) % tau
        return begin, sweep if self.clockwise else sweep - tau


def edges(ring: tuple[GridPoint, ...], arcs: tuple[tuple[int, GridPoint], ...]) -> list[Edge]:
    """Return the edges of a patch in order."""
    through = dict(arcs)
    ends = (*ring[1:], ring[0])
    return [Edge(a, b, through.get(i)) for i, (a, b) in enumerate(zip(ring, ends, strict=True))]


def area(around: list[Edge]) -> Fraction | float:
    """Return a patch's area, negative when it runs anticlockwise: exact without arcs."""
    straight = Fraction(0)
    curved = 0.0
    for edge in around:
        (x, y), (u, v) = edge.start, edge.end
        circle = edge.circle
        if circle is None:
            straight += x * v - u * y
        else:
            (a, b), square = circle
            straight += a * (v - y) - b * (u - x)
            curved += float(square) * edge.angles(circle)[1]
    if curved:
        return (float(straight) + curved) / 2
    return straight / 2


def leaves(edge: Edge, columns: int, rows: int) -> bool:
    """Return whether any point of an edge lies outside the grid."""
    if any(not (0 <= x <= columns and 0 <= y <= rows) for x, y in (edge.start, edge.end)):
        return True
    circle = edge.circle
    if circle is None:
        return False
    (x, y), square = circle
    # The circle's outermost points, where the arc holds them, lie centre ± radius away.
    limits = ((1, 0, columns - x), (-1, 0, x), (0, 1, rows - y), (0, -1, y))
    return any(
        (room < 0 or room * room < square) and _holds_outermost(edge, circle, across, down)
        for across, down, room in limits
    )


def _holds_outermost(edge: Edge, circle: Circle, across: int, down: int) -> bool:
    """Return whether an arc holds the point of its circle that lies in a direction."""
    assert edge.through is not None
    (x, y), square = circle
    chord = (edge.end[0] - edge.start[0], edge.end[1] - edge.start[1])
    still = chord[0] * (y - edge.start[1]) - chord[1] * (x - edge.start[0])
    per_radius = chord[0] * down - chord[1] * across
    side = cross(edge.start, edge.end, edge.through)
    # The sign of still + per_radius·√square, exactly.
    rooted = per_radius * per_radius * square
    sign = still if still * still > rooted else per_radius
    return side * sign > 0
