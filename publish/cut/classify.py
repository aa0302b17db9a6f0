"""What a patch is cut as: a rectangle, a triangle from a square, a shape from a strip.

In: a `Form`. Out: `Cutting`: the exact rectangle that is cut, and what it becomes.
Invariant: every size is the finished one and its allowances, exact; nothing is rounded
here but what no number a + b√2 is, and that by a billionth of an inch upwards. A form
that no ruler's line cuts is a `template`.

A square that is cut once on the diagonal is larger than the finished leg by a seam for
each leg and √2 seams for the long side: (2 + √2) seams, 0.8536 in at 1/4 in, rounded up
to 7/8 in. Cut twice, it is larger than the finished long side by √2 as much: (2 + 2√2)
seams, 1.2071 in, rounded up to 1 1/4 in.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import cos, dist, hypot, pi, sin

from publish.cut.forms import FINE, Form, cross, dot, length_of
from publish.surd import ROOT_2, Exact, Length, Surd, parts

NEAR = 0.005
"""Inches by which corners may lie off those of a regular shape that is cut as one."""
OVER_ROOT_3 = Fraction(577350270, FINE)
"""1/√3, a billionth above."""
ONCE, TWICE = "once-cut triangle", "twice-cut triangle"
FROM_STRIPS = ("parallelogram", "diamond", "equilateral triangle")
HANDBOOK = Fraction(1414, 1000)
"""What handbooks multiply by in place of √2."""
HANDBOOK_SEAM = Fraction(1, 4)
HANDBOOK_EXTRA = {ONCE: Fraction(7, 8), TWICE: Fraction(5, 4)}


@dataclass(frozen=True)
class Cutting:
    """The rectangle that patches of one form are cut from, exact, allowances included.

    Of shapes from strips, `width` is how far the strip is used up by one more patch,
    `length` the width of the strip, and `spare` what the strip's slanting end takes;
    `apart` is the distance between two cuts, measured square to them. `hand` is 1 or -1
    for a parallelogram that leans one way or the other. `handbook` is the square by the
    handbooks' rule where √2 comes in.
    """

    shape: str
    width: Length
    length: Length
    finished: tuple[Length | None, Length | None]
    yields: int = 1
    angle: int = 0
    apart: Length = Fraction(0)
    spare: Length = Fraction(0)
    hand: int = 0
    near: bool = False
    handbook: Fraction | None = None


def classify(form: Form, straight_long_side: bool = False) -> Cutting | None:
    """Return what a form is cut as, or None for a template.

    `straight_long_side` says where the straight grain of a right triangle lies: along its
    long side, so that it is cut from a square cut twice, or else along its legs.
    """
    if form.arcs:
        return None
    for look in (rectangle, parallelogram, equilateral, hexagon):
        found = look(form)
        if found is not None:
            return found
    return triangle(form, straight_long_side)


def rectangle(form: Form) -> Cutting | None:
    """Return a rectangle, however it lies; its width is the side that lies more level."""
    edges = form.edges
    if len(edges) != 4 or any(dot(edges[i - 1], edges[i]) for i in range(4)):
        return None
    first = 0 if abs(edges[0][0]) >= abs(edges[0][1]) else 1
    wide, high = (length_of(dot(e, e)) for e in (edges[first], edges[1 - first]))
    a, b, c, d = (form.allow[(first + i) % 4] for i in range(4))
    return Cutting("rectangle", wide + b + d, high + a + c, (wide, high))


def right_corner(form: Form) -> int | None:
    """Return the corner of a triangle with a right angle and two equal legs, if it is one."""
    edges = form.edges
    if len(edges) != 3 or form.arcs:
        return None
    for i in range(3):
        leg, other = edges[i - 1], edges[i]
        if not dot(leg, other) and dot(leg, leg) == dot(other, other):
            return i
    return None


def leg_of(form: Form) -> Length | None:
    """Return the finished leg of a right triangle with equal legs, or None."""
    corner = right_corner(form)
    return None if corner is None else length_of(dot(form.edges[corner], form.edges[corner]))


def triangle(form: Form, straight_long_side: bool) -> Cutting | None:
    """Return a right triangle with equal legs: from a square cut once, or cut twice."""
    corner, leg = right_corner(form), leg_of(form)
    if corner is None or leg is None:
        return None
    allow = form.allow[corner - 1] + form.allow[corner] + form.allow[corner - 2] * ROOT_2
    if straight_long_side:
        long = leg * ROOT_2
        side = (leg + allow) * ROOT_2
        book = _handbook(TWICE, long) if form.allow == (HANDBOOK_SEAM,) * 3 else None
        return Cutting(TWICE, side, side, (long, long / 2), 4, handbook=book)
    book = _handbook(ONCE, leg) if form.allow == (HANDBOOK_SEAM,) * 3 else None
    return Cutting(ONCE, leg + allow, leg + allow, (leg, leg), 2, handbook=book)


def _handbook(shape: str, finished: Exact) -> Fraction | None:
    """Return the square by the rule with 1.414 for √2, where there is a root."""
    if not isinstance(finished, Surd):
        return None
    a, b = parts(finished)
    return a + b * HANDBOOK + HANDBOOK_EXTRA[shape]


def once_cut(leg: Length, seam: Fraction) -> Length:
    """Return the exact side of a square cut once into two triangles of a finished leg."""
    return leg + seam * (2 + ROOT_2)


def twice_cut(long: Length, seam: Fraction) -> Length:
    """Return the exact side of a square cut twice into four of a finished long side."""
    return long + seam * (2 + 2 * ROOT_2)


def parallelogram(form: Form) -> Cutting | None:
    """Return a parallelogram or a diamond with angles of 45 or 60 degrees."""
    edges = form.edges
    if len(edges) != 4 or not form.even:
        return None
    if any(a + c for a, c in zip(edges[0], edges[2], strict=True)):
        return None
    base = 0 if _levelness(edges[0]) >= _levelness(edges[1]) else 1
    along, up = edges[base], edges[1 - base]
    lean, area = dot(along, edges[base + 1]), abs(cross(along, up))
    angle = 45 if abs(lean) == area else 60 if _near_60(form) else 0
    if not angle:
        return None
    equal = dot(along, along) == dot(up, up)
    rhombus = equal or (angle == 60 and abs(_size(along) - _size(up)) < NEAR)
    high, wide = (length_of(area * area / dot(e, e)) for e in (along, up))
    strip, apart = high + 2 * form.allow[0], wide + 2 * form.allow[0]
    advance, spare = apart * ROOT_2, strip
    if angle == 60:
        advance, spare = apart * 2 * OVER_ROOT_3, strip * OVER_ROOT_3
    hand = 0 if rhombus else 1 if lean > 0 else -1
    return Cutting(
        "diamond" if rhombus else "parallelogram",
        advance,
        strip,
        form.box,
        1,
        angle,
        apart,
        spare,
        hand,
        angle == 60,
    )


def _levelness(edge: tuple[Length, Length]) -> tuple[bool, float]:
    """Rank an edge as the base: one along the block's side, then the longer one."""
    return not (edge[0] and edge[1]), _size(edge)


def _near_60(form: Form) -> bool:
    """Return whether a parallelogram's corners lie near those of one with 60 degrees."""
    along, up = form.edges[0], form.edges[1]
    lean = abs(float(dot(along, up))) / _size(along) / _size(up)
    return abs(lean - 0.5) * _size(up) < NEAR * sin(pi / 3)


def equilateral(form: Form) -> Cutting | None:
    """Return a triangle with equal sides: its strip is the height and three seams wide."""
    if len(form.ring) != 3 or not form.even or not near_regular(form):
        return None
    area, base = form.doubled_area, max(form.edges, key=_levelness)
    strip = length_of(area * area / dot(base, base)) + 3 * form.allow[0]
    half = strip * OVER_ROOT_3
    return Cutting("equilateral triangle", half, strip, form.box, 1, 60, strip, half, near=True)


def hexagon(form: Form) -> Cutting | None:
    """Return a hexagon with equal sides and angles, in the box round it."""
    if len(form.ring) != 6 or not form.even or not near_regular(form):
        return None
    base = max(range(6), key=lambda i: _levelness(form.edges[i]))
    edge, (x, y), (u, v) = form.edges[base], form.ring[base], form.ring[base - 3]
    flat = cross(edge, (u - x, v - y))
    across = length_of(flat * flat / dot(edge, edge)) + 2 * form.allow[0]
    return Cutting("hexagon", across * 2 * OVER_ROOT_3, across, form.box, 1, 60, across, near=True)


def near_regular(form: Form) -> bool:
    """Return whether every corner lies within `NEAR` of a regular polygon's."""
    points = [(float(x), float(y)) for x, y in form.ring]
    size = len(points)
    middle = sum(x for x, _ in points) / size, sum(y for _, y in points) / size
    arms = [(x - middle[0], y - middle[1]) for x, y in points]
    # Turned back by its place, every arm of a regular polygon is the same.
    back = [_turned(arm, -2 * pi * i / size) for i, arm in enumerate(arms)]
    mean = sum(x for x, _ in back) / size, sum(y for _, y in back) / size
    return all(dist(arm, mean) < NEAR for arm in back)


def _turned(point: tuple[float, float], angle: float) -> tuple[float, float]:
    x, y = point
    return x * cos(angle) - y * sin(angle), x * sin(angle) + y * cos(angle)


def _size(edge: tuple[Length, Length]) -> float:
    return hypot(float(edge[0]), float(edge[1]))
