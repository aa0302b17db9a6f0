"""What the parts of a top are made like: the content of their recipes, however they lie.

In: units of a seam tree, each patch with its letter and allowances. Out: `Lie`s.
Invariant: two contents are equal exactly when one part can be turned and shifted to lie on
the other with cloth, letters, allowances and seams alike; a mirror image has another content
unless the part is its own.

What lies in one block is described as seen along each of its longest edges in turn, with
lengths as multiples of that edge: the least of these descriptions is the content, and the
edges that it is seen from tell how the part is turned. Rows and what is sewn from them are
described by the recipes of their parts and where these lie, turned by quarters.
"""

from __future__ import annotations

from collections.abc import Collection, Hashable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import atan2, degrees
from typing import Any

from publish.arcs import Arcs, circle_through, clockwise
from publish.cut.edges import lies_along, sides
from publish.model.draft import Patch, Point, Unit
from publish.model.recipe import Place
from publish.surd import Length, turned

Seen = tuple[Any, ...]
"""A description, ordered by how it is written, which is the same for equal ones."""


@dataclass(frozen=True)
class Cloth:
    """What patches are cut as, by their keys: the letter, and what lies beyond each edge."""

    letters: Mapping[str, str]
    allow: Mapping[str, tuple[Length, ...]]
    directional: Collection[str] = ()
    """The fabrics whose print hangs one way, however the block lies that it is in."""


@dataclass(frozen=True)
class Lie:
    """The content of a part, and its turns in degrees: all that come to the same."""

    content: Seen
    turns: tuple[int, ...]


@dataclass(frozen=True)
class _Shape:
    """A patch, or a section on its paper, as part of a content."""

    mark: Hashable
    ring: tuple[Point, ...]
    arcs: Arcs
    allow: tuple[Length, ...] = ()
    hangs: int | None = None
    """Which way a print with a direction hangs, in degrees clockwise from upright."""


def in_block(unit: Unit, cloth: Cloth, whole: str) -> Lie:
    """Return how a part of one block is made; `whole` is the block's key if it is all of it."""
    shapes = list(_shapes(unit, cloth))
    edges = list(_longest(unit))
    seen = [_seen(unit, shapes, start, end) for start, end in edges]
    least = min(seen, key=repr)
    turns = [_angle(*edge) for edge, one in zip(edges, seen, strict=True) if one == least]
    return Lie((whole, unit.made, _square(*edges[0]), least), tuple(dict.fromkeys(turns)))


def of_places(unit: Unit, places: tuple[Place, ...]) -> Lie:
    """Return how a part is made that is sewn from blocks, strips and rows."""
    left, top, right, bottom = unit.box
    middles = [_middle(part, unit.turn) for part in unit.parts]
    about = [(x - left - right, y - top - bottom) for x, y in middles]
    found = []
    for quarter in (0, 90, 180, 270):
        items = sorted(
            (
                (*turned(point, quarter), _least_turn(place, quarter - unit.turn), place.recipe.key)
                for point, place in zip(about, places, strict=True)
            ),
            key=repr,
        )
        found.append((items, (unit.turn - quarter) % 360))
    least = min((items for items, _ in found), key=repr)
    join = "line" if unit.join in ("across", "down") else unit.join
    return Lie((join, *least), tuple(turn for items, turn in found if items == least))


def _least_turn(place: Place, more: int) -> int:
    return min((place.turn + more + turn) % 360 for turn in place.recipe.symmetry)


def _middle(part: Unit, turn: int) -> Point:
    """Return twice the middle of a part's box in the frame of what it is sewn into."""
    left, top, right, bottom = part.box
    if part.turn != turn:
        ring = part.patch.ring if part.patch is not None else part.ring
        xs, ys = zip(*(turned(p, -turn) for p in ring), strict=True)
        left, top, right, bottom = min(xs), min(ys), max(xs), max(ys)
    return left + right, top + bottom


def _shapes(unit: Unit, cloth: Cloth) -> Iterator[_Shape]:
    """Yield the patches and sections of a part in sewing order."""
    patch = unit.patch
    if patch is not None:
        mark = patch.role, patch.fabric, cloth.letters.get(patch.key, "")
        hangs = patch.turn % 90 if patch.fabric in cloth.directional else None
        yield _Shape(mark, patch.ring, patch.arcs, cloth.allow.get(patch.key, ()), hangs)
    elif unit.section:
        allow = tuple(along(unit.ring, unit.patches, cloth))
        yield _Shape(unit.section, unit.ring, unit.arcs, allow)
    for part in unit.parts:
        yield from _shapes(part, cloth)


def along(ring: tuple[Point, ...], patches: tuple[Patch, ...], cloth: Cloth) -> Iterator[Length]:
    """Yield what lies beyond each edge of an outline: that of the patch that lies along it."""
    known = [
        pair
        for p in patches
        if p.key in cloth.allow
        for pair in zip(sides(p.ring), cloth.allow[p.key], strict=True)
    ]
    for edge in sides(ring):
        yield max(
            (beyond for other, beyond in known if lies_along(other, edge)), default=Fraction(0)
        )


def _longest(unit: Unit) -> Iterator[tuple[Point, Point]]:
    """Yield the longest edges of a part's outline."""
    ring = unit.patch.ring if unit.patch is not None else unit.ring
    edges = list(zip(ring, (*ring[1:], ring[0]), strict=True))
    longest = max(_square(*edge) for edge in edges)
    return (edge for edge in edges if _square(*edge) == longest)


def _square(start: Point, end: Point) -> Length:
    x, y = end[0] - start[0], end[1] - start[1]
    return x * x + y * y


def _angle(start: Point, end: Point) -> int:
    x, y = float(end[0] - start[0]), float(end[1] - start[1])
    return round(degrees(atan2(y, x))) % 360


def _seen(unit: Unit, shapes: list[_Shape], start: Point, end: Point) -> Seen:
    """Return a part as seen from an edge: its shapes, and which of them its seams join."""
    x, y = end[0] - start[0], end[1] - start[1]
    square = _square(start, end)

    def see(point: Point) -> Point:
        u, v = point[0] - start[0], point[1] - start[1]
        return (x * u + y * v) / square, (x * v - y * u) / square

    angle = _angle(start, end)
    found = [
        (s.mark, None if s.hangs is None else (s.hangs - angle) % 360, _outline(s, see))
        for s in shapes
    ]
    order = sorted(range(len(found)), key=lambda i: repr(found[i]))
    ranks = iter([order.index(i) for i in range(len(found))])
    return tuple(found[i] for i in order), _seams(unit, ranks)


def _outline(shape: _Shape, see: Any) -> Seen:
    """Return each corner with the edge that leaves it: its arc and its allowance."""
    ring, arcs = shape.ring, dict(shape.arcs)
    corners = []
    for i, corner in enumerate(ring):
        bend: Seen = ()
        if i in arcs:
            after = ring[(i + 1) % len(ring)]
            a, b, _ = circle_through(corner, arcs[i], after)
            bend = (*see((a, b)), clockwise(corner, arcs[i], after))
        corners.append((see(corner), bend, shape.allow[i] if shape.allow else None))
    first = min(range(len(ring)), key=lambda i: repr(corners[i]))
    return (*corners[first:], *corners[:first])


def _seams(unit: Unit, ranks: Iterator[int]) -> Any:
    """Return which shapes, by their places in a description, are joined together."""
    if not unit.parts:
        return next(ranks)
    return tuple(sorted((_seams(part, ranks) for part in unit.parts), key=repr))
