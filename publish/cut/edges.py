"""What each edge of a patch gets, and where its straight grain lies.

In: pattern, size, draft. Out: `Edges`.
Invariant: an edge gets the pattern's seam; on the outside of a pillow, the pillow's own;
and on the outside of a block that carries a motif half the margin that is trimmed off
afterwards, as well.

Grain: the straight grain lies on the outside of the block. Inside it, a long side that is
sewn before the legs is cut on the bias, so that the unit's new edges are straight; any
other triangle follows the sides of its block. On the outside: quiltville, Cutting
quarter-square triangles, 2005; Pine Meadows Designs, Block on point; Krista Moser, Quilt
math made easy. Inside: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from itertools import combinations
from math import dist

from shapely.geometry import LineString, Polygon

from publish.cut.forms import Form, cross, dot, form_of
from publish.model.draft import Draft, Patch, Point, Unit
from publish.model.homes import BlockHome
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.surd import Length, turned

TOUCH = 0.001
"""Inches: edges that meet along more than ten times this are sewn to each other."""

Box = tuple[Length, Length, Length, Length]
Look = tuple[object, ...]
"""What patches share that are cut alike."""


class Edges:
    """What the edges of one size's patches get."""

    def __init__(self, pattern: Pattern, size: Size, draft: Draft) -> None:
        self._pattern, self._size = pattern, size
        self._parents = dict(_parents(draft.assembly))
        self._homes: dict[BlockHome | None, list[Patch]] = {}
        for patch in draft.patches:
            if patch.block is not None:
                self._homes.setdefault(patch.place, []).append(patch)
        self._boxes: dict[BlockHome | None, Box] = {}
        self._grain: dict[Look, bool] = {}
        self._forms: dict[Look, Form] = {}

    def allowances(self, patch: Patch, *, trimmed: bool = False) -> tuple[Fraction, ...]:
        """Return what each edge of a patch gets beyond its finished line; `trimmed` once its
        ground has lost the margin that it was cut with."""
        larger = self.trimmed(patch) and not trimmed
        if self._size.pillow is None and not larger:
            return (self._pattern.sewing.seam,) * len(patch.ring)
        margin = self._pattern.sewing.ground_margin / 2 if larger else Fraction(0)
        return tuple(
            self._seam(a, b) + (margin if margin and self._outside(patch, a, b) else 0)
            for a, b in sides(patch.ring)
        )

    def form(self, patch: Patch, upright: bool = False) -> Form:
        """Return a patch's form: as `form_of` does, but once for patches of one place in
        their block that lie alike. Where it lies is that of any of them."""
        allow = self.allowances(patch)
        if patch.spec is None:
            return form_of(patch, allow, upright)
        (a, b), (x, y) = patch.ring[:2]
        look = (patch.block, patch.spec, patch.turn, upright, allow, x - a, y - b)
        if look not in self._forms:
            self._forms[look] = form_of(patch, allow, upright)
        return self._forms[look]

    def trimmed(self, patch: Patch) -> bool:
        """Return whether a patch belongs to a ground that is trimmed after appliqué."""
        return patch.block is not None and self._pattern.blocks[patch.block].motif is not None

    def block_box(self, patch: Patch) -> Box:
        """Return the box of a patch's block, in the frame that the block is turned in."""
        home = patch.place
        if home not in self._boxes:
            self._boxes[home] = _box(self._homes.get(home, [patch]))
        return self._boxes[home]

    def _seam(self, a: Point, b: Point) -> Fraction:
        size = self._size
        ends = ((0, size.width), (0, size.height))
        outer = any(a[i] == b[i] and a[i] in ends[i] for i in (0, 1))
        return size.pillow.seam if size.pillow and outer else self._pattern.sewing.seam

    def _outside(self, patch: Patch, a: Point, b: Point) -> bool:
        """Return whether an edge lies on the outside of the patch's block."""
        box = self.block_box(patch)
        (x, y), (u, v) = turned(a, -patch.turn % 360), turned(b, -patch.turn % 360)
        return (x == u and x in (box[0], box[2])) or (y == v and y in (box[1], box[3]))

    def straight_long_side(self, patch: Patch) -> bool:
        """Return whether a right triangle's straight grain lies along its long side."""
        where: Look = (patch.key,)
        if patch.spec is not None:
            where = (patch.block, patch.spec, _long_side(patch)[2])
        if where not in self._grain:
            self._grain[where] = self._along_long_side(patch)
        return self._grain[where]

    def _along_long_side(self, patch: Patch) -> bool:
        one, two, _ = _long_side(patch)
        apex = _apex(patch)
        legs = ((one, apex), (apex, two))
        if patch.role != "ground":
            return one[0] == two[0] or one[1] == two[1]
        if self._outside(patch, one, two):
            return True
        if any(self._outside(patch, *leg) for leg in legs):
            return False
        parent = self._parents.get(patch.key)
        others = [p for p in parent.patches if p.key != patch.key] if parent else []
        if _meet((one, two), others) and not any(_meet(leg, others) for leg in legs):
            return False
        (x, y), (u, v) = (turned(p, -patch.turn % 360) for p in (one, two))
        return x == u or y == v


def sides(ring: tuple[Point, ...]) -> Iterator[tuple[Point, Point]]:
    """Yield each edge of a ring with its two corners."""
    return zip(ring, ring[1:] + ring[:1], strict=True)


def lies_along(edge: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    """Return whether an edge is part of another that runs the same way.

    Most edges lie far apart: floats tell that, and exact arithmetic decides the rest.
    """
    return _near(edge, other) and _within(edge, other)


def _near(edge: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    """Return whether an edge lies along another to within `TOUCH`."""
    (x, y), (u, v) = ((float(a), float(b)) for a, b in other)
    across, down = u - x, v - y
    ends = [(float(a) - x, float(b) - y) for a, b in edge]
    if any(abs(across * b - down * a) > TOUCH for a, b in ends):
        return False
    first, last = (across * a + down * b for a, b in ends)
    return -TOUCH <= first < last <= across * across + down * down + TOUCH


def _within(edge: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    (x, y), (u, v) = other
    along = (u - x, v - y)
    ends = [(a - x, b - y) for a, b in edge]
    first, last = (dot(along, end) for end in ends)
    return not any(cross(along, end) for end in ends) and 0 <= first < last <= dot(along, along)


def _box(patches: Iterable[Patch]) -> Box:
    """Return the box of a block's patches, in the frame that the block is turned in."""
    corners = [turned(p, -patch.turn % 360) for patch in patches for p in patch.ring]
    xs, ys = zip(*corners, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _parents(unit: Unit) -> Iterator[tuple[str, Unit]]:
    """Yield each patch's key with the first unit that it is sewn into."""
    for part in unit.parts:
        if part.patch is not None:
            yield part.patch.key, unit
        else:
            yield from _parents(part)


def _apex(patch: Patch) -> Point:
    """Return the corner of a triangle that faces its long side."""
    (x, y), (u, v), _ = _long_side(patch)
    return max(patch.ring, key=lambda p: float(abs(cross((u - x, v - y), (p[0] - x, p[1] - y)))))


def _long_side(patch: Patch) -> tuple[Point, Point, float]:
    """Return the two corners of a patch that lie furthest apart, and how far."""

    def apart(pair: tuple[Point, Point]) -> float:
        return dist(*((float(x), float(y)) for x, y in pair))

    one, two = max(combinations(patch.ring, 2), key=apart)
    return one, two, round(apart((one, two)), 6)


def _meet(edge: tuple[Point, Point], others: Iterable[Patch]) -> bool:
    """Return whether patches lie along an edge."""
    line = LineString([(float(x), float(y)) for x, y in edge])
    for other in others:
        if len(other.ring) < 3:  # two arcs: nothing straight is sewn to it
            continue
        shape = Polygon([(float(x), float(y)) for x, y in other.ring]).buffer(TOUCH)
        if line.intersection(shape).length > 10 * TOUCH:
            return True
    return False
