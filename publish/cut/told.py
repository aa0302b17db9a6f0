"""How large every part comes out: exactly, and as a ruler shows it.

In: the seam tree with places, the plan. Out: the tree with `Sewn` sizes.
Invariant: an exact size is the finished one with what lies beyond the edges; a told one is the
sum of pieces as they are cut less the seams between them. Parts of one unit that are sewn
together differ by no more than `TOLERANCE` in the edge that they share, and the blocks of a row
together by no more from their exact size: what would, is trimmed, the fewest parts that have
to be.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from fractions import Fraction

from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Unit
from publish.model.homes import BlockHome
from publish.model.pattern import Pattern
from publish.model.recipe import TOLERANCE, Pair, Recipe, Sewn
from publish.model.size import Size
from publish.surd import Length, Surd
from publish.units import round_near

STRAIGHT = ("across", "down")


def with_sizes(pattern: Pattern, size: Size, plan: CutPlan, root: Unit) -> Unit:
    """Return a tree with the sizes of everything in it."""
    first: dict[str, Unit] = {}
    for unit in root.innermost_first():
        first.setdefault(unit.kind, unit)
    blocks = Counter(patch.place for patch in root.patches)
    blocks.pop(None, 0)
    across = max(size.columns, size.rows, 1)
    sizes = _Sizes(pattern, {p.letter: p for p in plan.pieces}, first, blocks, across)
    sizes.settle()
    return _sized(root, sizes)


def exact_size(recipe: Recipe, seam: Length) -> Pair:
    """Return a part's finished size with what lies beyond its edges, as its recipe lies."""
    xs, ys = zip(*recipe.ring, strict=True)
    sides = []
    for axis, ends in ((0, (min(xs), max(xs))), (1, (min(ys), max(ys)))):
        sides.append(ends[1] - ends[0] + sum(_beyond(recipe, axis, end, seam) for end in ends))
    return sides[0], sides[1]


def _beyond(recipe: Recipe, axis: int, end: Length, seam: Length) -> Length:
    """Return what lies beyond one side of the box; a seam where only a corner touches it."""
    after = (*recipe.ring[1:], recipe.ring[0])
    found = [
        beyond
        for one, two, beyond in zip(recipe.ring, after, recipe.allow, strict=True)
        if one[axis] == two[axis] == end
    ]
    return max(found, default=seam)


def _sized(unit: Unit, sizes: _Sizes) -> Unit:
    parts = tuple(_sized(part, sizes) for part in unit.parts)
    assert unit.place is not None
    sewn = sizes.sewn(unit.kind)
    if (unit.place.turn - unit.turn) // 90 % 2:
        joined = sewn.joined[::-1] if sewn.joined is not None else None
        sewn = replace(sewn, exact=sewn.exact[::-1], told=sewn.told[::-1], joined=joined)
    return replace(unit, parts=parts, sewn=sewn)


@dataclass
class _Sizes:
    """The sizes of one top's kinds of part, as the first of each lies on the table."""

    pattern: Pattern
    pieces: dict[str, Piece]
    first: dict[str, Unit]
    blocks: Counter[BlockHome | None]
    """How many patches each block has."""
    across: int
    """How many blocks the longest row has: what each is over its size by adds up in it."""
    trimmed: set[str] = field(default_factory=set)
    """The kinds that are trimmed because they would be too large for what they are sewn to."""
    found: dict[str, Sewn] = field(default_factory=dict)

    def _up(self, exact: Pair) -> Pair:
        """Return a size rounded up as pieces are; one along a diagonal stays as it is."""
        up = self.pattern.measures.up
        wide, high = (side if isinstance(side, Surd) else up(side) for side in exact)
        return wide, high

    def settle(self) -> None:
        """Find what has to be trimmed; that may leave what it is sewn to too large."""
        while True:
            self.found = {}
            more = {kind for unit in self.first.values() for kind in self._too_large(unit)}
            if more <= self.trimmed:
                return
            self.trimmed |= more

    def sewn(self, kind: str) -> Sewn:
        """Return the size of a kind, as the first of it lies."""
        if kind not in self.found:
            self.found[kind] = self._of(self.first[kind])
        return self.found[kind]

    def _of(self, unit: Unit) -> Sewn:
        exact = self._exact(unit)
        if unit.patch is not None:
            return Sewn(exact, self._cut(unit, exact))
        if _straight(unit):
            told = self._joined(unit)
            if unit.kind in self.trimmed:
                return Sewn(exact, self._goal(unit, exact), True, told)
            return Sewn(exact, told)
        if unit.made:
            return Sewn(exact, self._up(exact), True)
        if unit.section or not unit.is_box or not self._rounded(unit):
            return Sewn(exact, exact)
        return Sewn(exact, self._up(exact), True)

    def _exact(self, unit: Unit) -> Pair:
        assert unit.place is not None
        return exact_size(unit.place.recipe, self.pattern.sewing.seam)

    def _cut(self, unit: Unit, exact: Pair) -> Pair:
        """Return a patch's size as it is cut, the way it lies; of a strip set, as its strips
        and segments are."""
        piece = self._piece(unit)
        if piece is None or piece.shape != "rectangle" or not unit.is_box:
            return exact
        step = self.pattern.measures.grid
        for way in ((piece.width, piece.length), (piece.length, piece.width)):
            if all(0 <= cut - side < step for cut, side in zip(way, exact, strict=True)):
                return way
        return self._up(exact)

    def _piece(self, unit: Unit) -> Piece | None:
        assert unit.place is not None
        piece = self.pieces.get(unit.place.recipe.letter)
        return None if piece is None or piece.purpose.startswith("border") else piece

    def _joined(self, unit: Unit) -> Pair:
        """Return a unit's size when its parts have been sewn in a row."""
        parts = [self._before(part, unit) for part in unit.parts]
        lost = 2 * self.pattern.sewing.seam * (len(parts) - 1)
        widths, heights = zip(*parts, strict=True)
        if unit.join == "across":
            return sum(widths, Fraction(0)) - lost, max(heights)
        return max(widths), sum(heights, Fraction(0)) - lost

    def _before(self, part: Unit, unit: Unit) -> Pair:
        """Return a part's size when it is sewn into a unit; a ground is trimmed by then."""
        assert part.place is not None and unit.place is not None
        told = self.sewn(part.kind).told
        if unit.place.home is None and part.place.home is not None and self._carries(part):
            margin = self.pattern.sewing.ground_margin
            wide, high = self.sewn(part.kind).exact
            told = self._up((wide - margin, high - margin))
        return told[::-1] if (part.place.turn - part.turn) // 90 % 2 else told

    def _carries(self, unit: Unit) -> bool:
        """Return whether a unit is of a block that carries a motif."""
        block = unit.patches[0].block
        return block is not None and self.pattern.blocks[block].motif is not None

    def _rounded(self, unit: Unit) -> bool:
        """Return whether some piece of a unit is cut larger than it need be, by rounding."""
        letters = {p.place.recipe.letter for p in _leaves(unit) if p.place is not None}
        return any(
            (piece.exact_width or piece.width, piece.exact_length or piece.length)
            != (piece.width, piece.length)
            for piece in map(self.pieces.get, letters)
            if piece is not None
        )

    def _goal(self, unit: Unit, exact: Pair) -> Pair:
        """Return what a unit is trimmed to: to what its neighbours are cut to, a block to
        its own size."""
        if not self._is_block(unit):
            return self._up(exact)
        finest = self.pattern.measures.finest
        wide, high = (side if side % finest == 0 else round_near(side, finest) for side in exact)
        return wide, high

    def _is_block(self, unit: Unit) -> bool:
        assert unit.place is not None
        return bool(unit.patches) and len(unit.patches) == self.blocks[unit.place.home]

    def _too_large(self, unit: Unit) -> Iterator[str]:
        """Yield the kinds, of a unit and its parts, that are too large to be sewn on."""
        assert unit.place is not None
        if unit.place.home is None:
            return
        if self._is_block(unit) and _straight(unit) and not self._carries(unit):
            sewn = self.sewn(unit.kind)
            if _over(sewn.told, sewn.exact, TOLERANCE / self.across):
                yield unit.kind
        sizes = [self._before(part, unit) for part in unit.parts]
        for part, told in zip(unit.parts, sizes, strict=True):
            if not _straight(part):
                continue
            if unit.join in STRAIGHT:
                axis = 1 if unit.join == "across" else 0
                beside = [s[axis] for p, s in zip(unit.parts, sizes, strict=True) if p.is_box]
                wrong = told[axis] - min(beside) > TOLERANCE
            else:
                wrong = _over(told, self._up(self._exact(part)))
            if wrong:
                yield part.kind


def _leaves(unit: Unit) -> Iterator[Unit]:
    if not unit.parts:
        yield unit
    for part in unit.parts:
        yield from _leaves(part)


def _straight(unit: Unit) -> bool:
    """Return whether a unit is a rectangle joined from rectangles by seams straight across."""
    joined = unit.join in STRAIGHT and unit.made in ("", "strips")
    return joined and unit.is_box and all(part.is_box for part in unit.parts)


def _over(told: Pair, other: Pair, by: Fraction = TOLERANCE) -> bool:
    return any(a - b > by for a, b in zip(told, other, strict=True))
