"""Whether patches cover a block's grid exactly once.

In: the edges of patches that do not cross themselves and run clockwise, and the grid's
size. Out: points at which their edges do not cancel; none where the patches fit.
Invariant: the verdict is exact, arcs included.

Walk round every patch clockwise, and round the block anticlockwise. Where patches meet,
each stretch of edge is walked once in each direction, and on the block's outline once by a
patch and once against it; so along every line and every circle the walks cancel. And where
they cancel everywhere, every point of the block lies in as many patches as its neighbours
do, across every edge, and out to the outline: in exactly one.
"""

from __future__ import annotations

from collections import defaultdict
from fractions import Fraction

from publish.model.block import GridPoint
from publish.read.curves import Circle, Edge

Line = tuple[Fraction, Fraction, Fraction]
"""a, b and c of a·x + b·y = c, scaled so that equal lines are equal."""

Walks = dict[GridPoint, int]
"""How many walks along one line or circle begin at a point, less how many end there."""


def misfits(patches: list[list[Edge]], columns: int, rows: int) -> list[GridPoint]:
    """Return the points where the edges of patches do not cancel, sorted; none for a fit."""
    right, bottom = Fraction(columns), Fraction(rows)
    zero = Fraction(0)
    outline = [(zero, zero), (zero, bottom), (right, bottom), (right, zero)]
    around = [Edge(a, b) for a, b in zip(outline, [*outline[1:], outline[0]], strict=True)]
    every = [*(edge for patch in patches for edge in patch), *around]
    lines: dict[Line, Walks] = defaultdict(lambda: defaultdict(int))
    circles: dict[Circle, list[Edge]] = defaultdict(list)
    for edge in every:
        circle = edge.circle
        if circle is not None:
            circles[circle].append(edge)
            continue
        walks = lines[_line(edge)]
        walks[edge.start] += 1
        walks[edge.end] -= 1
    # Along a line, walks that begin and end evenly everywhere cancel everywhere.
    found = {point for walks in lines.values() for point, count in walks.items() if count}
    for arcs in circles.values():
        found |= _unbalanced(arcs)
    return sorted(found)


def _line(edge: Edge) -> Line:
    """Return the line that a straight edge lies on."""
    (x, y), (u, v) = edge.start, edge.end
    a, b = v - y, x - u
    scale = a or b
    a, b = a / scale, b / scale
    return a, b, a * x + b * y


def _unbalanced(arcs: list[Edge]) -> set[GridPoint]:
    """Return the points of one circle where its arcs do not cancel."""
    walks: Walks = defaultdict(int)
    for arc in arcs:
        walks[arc.start] += 1
        walks[arc.end] -= 1
    found = {point for point, count in walks.items() if count}
    # Walks that balance at every end may still go round and round: count them at one point.
    first = arcs[0].start
    once = sum((1 if arc.clockwise else -1) for arc in arcs if _passes(arc, first))
    return found or ({first} if once else set())


def _passes(arc: Edge, point: GridPoint) -> bool:
    """Return whether an arc runs through a point or, clockwise, begins at it."""
    begin, end = (arc.start, arc.end) if arc.clockwise else (arc.end, arc.start)
    return point == begin or (point != end and arc.holds(point))
