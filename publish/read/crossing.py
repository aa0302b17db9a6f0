"""Whether the edges of a patch meet only where they should: at its corners.

In: a patch's edges in order. Out: the first place where it crosses or touches itself.
Invariant: between straight edges the verdict is exact. Where an arc takes part, points of
meeting are floats, and those nearer than `TOLERANCE` to a corner that both edges share
are taken for that corner.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations
from math import hypot, sqrt

from publish.model.block import GridPoint
from publish.read.curves import Circle, Edge, Flat, cross

TOLERANCE = 1e-6
"""Grid squares."""

Box = tuple[float, float, float, float]
"""Left, top, right, bottom."""


def crossing(around: list[Edge]) -> Flat | None:
    """Return where a patch crosses or touches itself, or None."""
    starts = [edge.start for edge in around]
    for number, start in enumerate(starts):
        if start in starts[:number]:
            return _flat(start)
    boxes = [_box(edge) for edge in around]
    for first, second in combinations(range(len(around)), 2):
        if _apart(boxes[first], boxes[second]):
            continue
        one, two = around[first], around[second]
        shared = {one.start, one.end} & {two.start, two.end}
        corners = [_flat(p) for p in shared]
        for x, y in _meetings(one, two):
            if all(hypot(x - u, y - v) > TOLERANCE for u, v in corners):
                return x, y
    return None


def _box(edge: Edge) -> Box:
    """Return a box that holds an edge, and a little more: of an arc, its whole circle's."""
    if edge.circle is None:
        (x, y), (u, v) = _flat(edge.start), _flat(edge.end)
    else:
        centre, square = edge.circle
        (a, b), radius = _flat(centre), sqrt(square)
        x, y, u, v = a - radius, b - radius, a + radius, b + radius
    return min(x, u) - TOLERANCE, min(y, v) - TOLERANCE, max(x, u), max(y, v)


def _apart(one: Box, two: Box) -> bool:
    return one[2] < two[0] or two[2] < one[0] or one[3] < two[1] or two[3] < one[1]


def _flat(point: GridPoint) -> Flat:
    return float(point[0]), float(point[1])


def _meetings(one: Edge, two: Edge) -> Iterator[Flat]:
    """Yield points that two edges have in common."""
    first, second = one.circle, two.circle
    if first is None and second is None:
        yield from _straight(one, two)
    elif first == second:
        yield from (_flat(p) for p in (two.start, two.end) if one.holds(p))
        yield from (_flat(p) for p in (one.start, one.end) if two.holds(p))
    else:
        if first is None or second is None:
            line, circle = (one, second) if first is None else (two, first)
            assert circle is not None
            found = _line_and_circle(line, circle)
        else:
            found = _circles(first, second)
        yield from (p for p in found if _on(one, p) and _on(two, p))


def _straight(one: Edge, two: Edge) -> Iterator[Flat]:
    """Yield where two straight edges meet: a crossing, or ends of one on the other."""
    sides = [cross(one.start, one.end, p) for p in (two.start, two.end)]
    others = [cross(two.start, two.end, p) for p in (one.start, one.end)]
    if sides[0] * sides[1] < 0 and others[0] * others[1] < 0:
        share = others[0] / (others[0] - others[1])
        yield (
            float(one.start[0] + share * (one.end[0] - one.start[0])),
            float(one.start[1] + share * (one.end[1] - one.start[1])),
        )
    for edge, points in ((one, (two.start, two.end)), (two, (one.start, one.end))):
        for point in points:
            if cross(edge.start, edge.end, point) == 0 and _between(edge, point):
                yield _flat(point)


def _between(edge: Edge, point: GridPoint) -> bool:
    """Return whether a point of an edge's line lies within its box."""
    return all(
        min(a, b) <= p <= max(a, b) for a, b, p in zip(edge.start, edge.end, point, strict=True)
    )


def _on(edge: Edge, point: Flat) -> bool:
    """Return whether a point of an edge's line or circle lies on the edge itself."""
    (x, y), (u, v) = _flat(edge.start), _flat(edge.end)
    along, aside = u - x, v - y
    length = hypot(along, aside)
    if edge.through is None:
        far = ((point[0] - x) * along + (point[1] - y) * aside) / length
        return -TOLERANCE <= far <= length + TOLERANCE
    a, b = _flat(edge.through)
    side = along * (b - y) - (a - x) * aside
    height = (along * (point[1] - y) - (point[0] - x) * aside) / length
    return (height if side > 0 else -height) >= -TOLERANCE


def _line_and_circle(line: Edge, circle: Circle) -> list[Flat]:
    (a, b), square = circle
    (x, y), (u, v) = line.start, line.end
    along, aside = u - x, v - y
    length = along * along + aside * aside
    offset = cross(line.start, line.end, (a, b))
    left = square - offset * offset / length
    if left < 0:
        return []
    foot = ((a - x) * along + (b - y) * aside) / length
    reach = sqrt(left / length)
    return [
        (float(x) + (float(foot) + t) * float(along), float(y) + (float(foot) + t) * float(aside))
        for t in (-reach, reach)
    ]


def _circles(one: Circle, two: Circle) -> list[Flat]:
    ((x, y), first), ((u, v), second) = one, two
    across, down = u - x, v - y
    square = across * across + down * down
    if square == 0:
        return []
    share = (first - second + square) / (2 * square)
    left = first / square - share * share
    if left < 0:
        return []
    reach = sqrt(left)
    return [
        (float(x + share * across) - t * float(down), float(y + share * down) + t * float(across))
        for t in (-reach, reach)
    ]
