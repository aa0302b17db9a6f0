"""Templates of patches that no ruler's line cuts: finished outline, cut outline, notches.

In: a `Form`. Out: `Outline`, in inches as floats, since arcs have no exact corners.
Invariant: beside every straight edge the cut outline runs at the edge's own allowance,
beside an arc on the true offset, flattened to less than `FLAT`; at no corner is there
less than the smaller of its two allowances.

Where the allowance would stick out beyond a corner sharper than a right angle, it is
trimmed: along the raw edge of the neighbouring patch as it lies on this one when the seam
is sewn, which is the mirror image, in the seam, of this patch's other edge. The seam is
the longer of the two edges. A corner below `SHARP` degrees is cut off square to its
middle, an allowance beyond the point.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import acos, ceil, cos, degrees, dist, hypot, sin

from shapely import affinity
from shapely.geometry import Polygon

from publish.arcs import swept
from publish.cut.forms import Form
from publish.units import EIGHTH, round_up

FLAT = 0.002
"""Inches between a flattened arc and the arc, on the cut line."""
FINER = 0.0005
SHARP = 45.0
STRAIGHT = 1e-6
NOTCHES = (0.25, 0.5, 0.75)

XY = tuple[float, float]


@dataclass(frozen=True)
class Outline:
    """The finished box's corner lies at 0, 0, and the block's side is upright."""

    finished: Polygon
    cut: Polygon
    notches: tuple[XY, ...]
    allowances: tuple[Fraction, ...]
    """Of its edges, each once, the narrowest first."""

    def box(self, step: Fraction = EIGHTH) -> tuple[Fraction, Fraction]:
        """Return the sides of the box round the cut outline, rounded up to a step."""
        left, top, right, bottom = self.cut.bounds
        return _up(right - left, step), _up(bottom - top, step)


@dataclass(frozen=True)
class _Side:
    """A short straight edge: of the patch, or of one of its arcs drawn out.

    `leaving` and `arriving` are its directions at start and end, those of an arc's
    tangents, so that the corners of the cut line lie on the true offset.
    """

    start: XY
    end: XY
    leaving: XY
    arriving: XY
    allow: float
    whole: float
    """Length of the edge or arc that it belongs to."""

    @property
    def first(self) -> XY:
        """Return where its cut line begins: to the left of a clockwise edge."""
        return _beyond(self.start, self.leaving, self.allow)

    @property
    def last(self) -> XY:
        return _beyond(self.end, self.arriving, self.allow)


def _beyond(point: XY, along: XY, allow: float) -> XY:
    return point[0] + along[1] * allow, point[1] - along[0] * allow


def outline(form: Form) -> Outline:
    """Return the outlines of a form, and the notches at the quarters of its arcs."""
    sides: list[_Side] = []
    notches: list[XY] = []
    for i in range(len(form.ring)):
        edge, marks = _edge(form, i)
        sides += edge
        notches += marks
    finished = Polygon([side.start for side in sides])
    line: list[XY] = []
    for before, after in zip([sides[-1], *sides[:-1]], sides, strict=True):
        line += _corner(before, after)
    cut = Polygon(line)
    if not cut.is_valid:  # an arc tighter than its allowance
        cut = finished.buffer(float(max(form.allow)), join_style="mitre")
    left, top, _, _ = finished.bounds
    return Outline(
        affinity.translate(finished, -left, -top),
        affinity.translate(cut, -left, -top),
        tuple((x - left, y - top) for x, y in notches),
        tuple(sorted(set(form.allow))),
    )


def _edge(form: Form, i: int) -> tuple[list[_Side], list[XY]]:
    """Return an edge from corner to corner, and where an arc is notched."""
    one, two = (form.ring[j % len(form.ring)] for j in (i, i + 1))
    start, end = _float(one), _float(two)
    through, allow = dict(form.arcs).get(i), float(form.allow[i])
    if through is None:
        size = dist(start, end)
        way = (end[0] - start[0]) / size, (end[1] - start[1]) / size
        return [_Side(start, end, way, way, allow, size)], []
    x, y, radius, first, sweep = swept(one, through, two)
    middle = x, y
    steps = max(4, ceil(abs(sweep) / (2 * acos(max(1 - FINER / radius, -1)))))
    angles = [first + sweep * k / steps for k in range(steps + 1)]
    points = [start, *(_on(middle, radius, a) for a in angles[1:-1]), end]
    round_ = 1 if sweep > 0 else -1
    ways = [(-sin(a) * round_, cos(a) * round_) for a in angles]
    sides = [
        _Side(points[k], points[k + 1], ways[k], ways[k + 1], allow, radius * abs(sweep))
        for k in range(steps)
    ]
    return sides, [_on(middle, radius, first + sweep * share) for share in NOTCHES]


def _on(middle: XY, radius: float, angle: float) -> XY:
    return middle[0] + radius * cos(angle), middle[1] + radius * sin(angle)


def _corner(before: _Side, after: _Side) -> list[XY]:
    """Return the points of the cut line round the corner between two edges."""
    (a, b), (x, y) = before.arriving, after.leaving
    bend = a * y - b * x
    if abs(bend) < STRAIGHT:
        return [after.first] if before.allow == after.allow else [before.last, after.first]
    inside = 180 - degrees(acos(max(-1.0, min(1.0, a * x + b * y))))
    if bend < 0 or inside > 90 - STRAIGHT:
        return [_meet(before.last, (a, b), after.first, (x, y))]
    trim, way = _trim(before, after, inside)
    return [_meet(before.last, (a, b), trim, way), _meet(after.first, (x, y), trim, way)]


def _trim(before: _Side, after: _Side, inside: float) -> tuple[XY, XY]:
    """Return a point and the direction of the line that trims a sharp corner."""
    corner, (a, b), (x, y) = after.start, before.arriving, after.leaving
    if inside < SHARP - STRAIGHT:
        # Out of the corner, along the middle of its angle.
        out = a - x, b - y
        size, far = hypot(*out), min(before.allow, after.allow)
        point = corner[0] + far * out[0] / size, corner[1] + far * out[1] / size
        return point, (-out[1], out[0])
    seam, other, point = (a, b), (x, y), after.first
    if before.whole < after.whole:
        seam, other, point = (x, y), (a, b), before.last
    ahead = _mirrored((corner[0] + other[0], corner[1] + other[1]), corner, seam)
    return _mirrored(point, corner, seam), (ahead[0] - corner[0], ahead[1] - corner[1])


def _mirrored(point: XY, at: XY, along: XY) -> XY:
    """Return a point mirrored in the line through `at`; `along` has length 1."""
    x, y = point[0] - at[0], point[1] - at[1]
    share = 2 * (x * along[0] + y * along[1])
    return at[0] + share * along[0] - x, at[1] + share * along[1] - y


def _meet(one: XY, way: XY, two: XY, other: XY) -> XY:
    """Return where two lines meet, each through a point, with its direction."""
    share = ((two[0] - one[0]) * other[1] - (two[1] - one[1]) * other[0]) / (
        way[0] * other[1] - way[1] * other[0]
    )
    return one[0] + share * way[0], one[1] + share * way[1]


def _float(point: tuple[object, object]) -> XY:
    return float(point[0]), float(point[1])  # type: ignore[arg-type]


def _up(length: float, step: Fraction) -> Fraction:
    """Return a length rounded up to a step, after what floats add to it."""
    return round_up(Fraction(length).limit_denominator(10**6), step)
