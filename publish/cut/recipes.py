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

from collections.abc import Hashable, Iterator, Mapping
from dataclasses import dataclass

from publish.arcs import Arcs
from publish.model.draft import Patch, Point, Unit
from publish.model.recipe import Place
from publish.surd import Length, turned

Allowances = tuple[Length, ...]


@dataclass(frozen=True)
class Cloth:
    """What a patch is cut as: by its key, the letter, and what lies beyond each edge."""

    letters: Mapping[str, str]
    allow: Mapping[str, Allowances]

    def mark(self, patch: Patch) -> tuple[str, str, Allowances]:
        """Return what tells patches of one shape apart."""
        return patch.fabric, self.letters.get(patch.key, ""), self.allow.get(patch.key, ())


@dataclass(frozen=True)
class Lie:
    """The content of a part, and its turns in degrees: all that come to the same."""

    content: Hashable
    turns: tuple[int, ...]


@dataclass(frozen=True)
class _Shape:
    """A patch or a section as part of a content; allowances stand beside the edges."""

    mark: Hashable
    ring: tuple[Point, ...]
    arcs: Arcs
    allow: Allowances


def in_block(unit: Unit, cloth: Cloth, whole: str) -> Lie:
    """Return how a part of one block is made; `whole` is the block's key if it is all of it."""
    shapes = list(_shapes(unit, cloth))
    edges = list(_longest(unit))
    seen = [(_seen(shapes, start, end), start, end) for start, end in edges]
    least = min((s for s, _, _ in seen), key=_order)
    joins = _joins(unit, {number: i for i, number in enumerate(_ranks(shapes, seen, least))})
    one, two = edges[0]
    scale = _dot((two[0] - one[0], two[1] - one[1]), (two[0] - one[0], two[1] - one[1]))
    turns = [_angle(start, end) for s, start, end in seen if s == least]
    content = (whole, unit.made, scale, least, joins)
    return Lie(content, tuple(dict.fromkeys(turns)))


def of_places(unit: Unit, places: tuple[Place, ...]) -> Lie:
    """Return how a part is made that is sewn from blocks, strips and rows."""
    left, top, right, bottom = unit.box
    found = []
    for quarter in (0, 90, 180, 270):
        items = []
        for part, place in zip(unit.parts, places, strict=True):
            x, y = _middle(part, unit.turn)
            point = turned((x - left - right, y - top - bottom), quarter)
            turn = min((place.turn + quarter - unit.turn + s) % 360
                       for s in place.recipe.symmetry)  # fmt: skip
            items.append((*point, turn, place.recipe.key))
        items.sort(key=lambda i: (float(i[0]), float(i[1])))
        found.append((tuple(items), quarter))
    least = min((items for items, _ in found), key=_order)
    turns = tuple((unit.turn - q) % 360 for items, q in found if items == least)
    across = unit.join in ("across", "down")
    return Lie(("line" if across else unit.join, least), turns)


def _middle(part: Unit, turn: int) -> Point:
    """Return twice the middle of a part's box in the frame of what it is sewn into."""
    box = part.box
    if part.turn != turn:
        points = [turned(p, -turn) for p in part.ring or (part.patch.ring if part.patch else ())]
        xs, ys = zip(*points, strict=True)
        box = min(xs), min(ys), max(xs), max(ys)
    return box[0] + box[2], box[1] + box[3]


def _shapes(unit: Unit, cloth: Cloth) -> Iterator[_Shape]:
    """Yield the patches of a part, and its sections, turned back as their block lies."""
    if unit.patch is not None:
        yield _shape(cloth.mark(unit.patch), unit.patch.ring, unit.patch.arcs, unit.patch.turn,
                     cloth.allow.get(unit.patch.key, ()))  # fmt: skip
    elif unit.section:
        yield _shape(unit.section, unit.ring, unit.arcs, unit.held[0].turn, ())
    for part in unit.parts:
        yield from _shapes(part, cloth)


def _shape(mark: Hashable, ring: tuple[Point, ...], arcs: Arcs, turn: int,
           allow: Allowances) -> _Shape:  # fmt: skip
    return _Shape(mark, tuple(turned(p, -turn) for p in ring),
                  tuple((i, turned(p, -turn)) for i, p in arcs), allow)  # fmt: skip
