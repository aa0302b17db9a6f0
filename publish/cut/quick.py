"""Units that are made several at once: from squares cut oversize, or from strip sets.

In: the seam tree. Out: the pieces of each method, and `Batch`es.
Invariant: all units of a kind that `Unit.made` names are made in batches, or, where one of
them is not what the method makes, their patches are left to be cut one by one; so are those
of units on the outside of a pillow or of a ground, whose edges get more than the seam. A
batch makes whole units, so there may be some more than are needed.

Two squares give two units, sewn on both sides of a diagonal and cut apart: with triangles
they are a finished side and (2 + √2) seams, as to be cut once; for hourglasses (2 + 2√2),
as to be cut twice. Four geese come from one square of their finished width and (2 + 2√2)
seams and four of their finished height and (2 + √2). A corner is flipped from a square of
its finished leg and two seams, sewn across the corner of a patch that is cut whole.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from publish.cut.classify import Cutting, leg_of, once_cut, twice_cut
from publish.cut.edges import Edges
from publish.cut.forms import Form, Vector, dot
from publish.cut.kinds import OVERSIZE, PLAIN, Kind, Kinds
from publish.cut.needs import cloth_of
from publish.model.draft import Patch, Unit
from publish.model.pattern import Pattern
from publish.surd import ROOT_2, Length

SQUARING = Fraction(1, 2)
"""Of a strip set: lost to squaring its end before the first cut: common practice, no
source."""


@dataclass(frozen=True)
class Part:
    """A piece of one batch: `each` are cut for it, which `patches` of one unit come from."""

    fabric: str
    cutting: Cutting
    each: int
    patches: tuple[Patch, ...]
    name: str = ""


@dataclass(frozen=True)
class Recipe:
    """What a batch of one kind of unit is made from."""

    method: str
    parts: tuple[Part, ...]
    makes: int
    trim: tuple[Length, Length]


@dataclass(frozen=True)
class Batch:
    """As `Making`, with the kinds of its pieces in place of their letters."""

    method: str
    kind: str
    pieces: tuple[tuple[Kind, int], ...]
    batches: int
    makes: int
    count: int
    trim: tuple[Fraction, Fraction]
    segment: Fraction | None = None


class Quick:
    """Collects the quicker methods of one size."""

    def __init__(self, pattern: Pattern, edges: Edges, kinds: Kinds) -> None:
        self._pattern, self._edges, self._kinds = pattern, edges, kinds
        self._seam, self._up = pattern.sewing.seam, pattern.measures.up
        self._squaring = pattern.measures.usual(SQUARING)

    def batches(self, top: Unit) -> tuple[list[Batch], set[str]]:
        """Return the batches of a top, and the keys of all patches that come from them."""
        by_kind: dict[str, list[Unit]] = {}
        uneven = set()
        for unit in made_units(top):
            if self._even(unit):
                by_kind.setdefault(unit.kind, []).append(unit)
            else:
                uneven.add(unit.kind)
        found: list[Batch] = []
        taken: set[str] = set()
        for kind, units in by_kind.items():
            batch = self._of_kind(kind, units, kind in uneven)
            if batch is not None:
                found.append(batch)
                taken.update(p.key for unit in units for p in unit.patches)
        return found, taken

    def _of_kind(self, kind: str, units: Sequence[Unit], others: bool) -> Batch | None:
        """Return the batches of all units of one kind with the plain seam all round; None
        where one of them is not what its method makes, so that all are sewn alike, or where
        `others` are sewn singly anyway and these are fewer than one batch makes."""
        if units[0].made == "strips":
            return self._strip_set(kind, units) if all(map(self._is_run, units)) else None
        recipes = [r for unit in units if (r := self._recipe(unit)) is not None]
        few = others and recipes and len(recipes) < recipes[0].makes
        return self._batch(kind, recipes) if len(recipes) == len(units) and not few else None

    def _recipe(self, unit: Unit) -> Recipe | None:
        """Return how a unit is made, or None where its method does not make it."""
        look = {
            "triangles": self._triangles,
            "hourglasses": self._hourglasses,
            "geese": self._geese,
            "corners": self._corners,
        }.get(unit.made)
        return None if look is None else look(unit)

    def _even(self, unit: Unit) -> bool:
        """Return whether every edge in a unit gets the plain seam."""
        return all(set(self._edges.allowances(p)) == {self._seam} for p in unit.patches)

    def _form(self, patch: Patch) -> Form:
        return self._edges.form(patch)

    def _legs(self, patches: Sequence[Patch]) -> list[Length]:
        """Return each right triangle's leg; nothing where one patch is none."""
        legs = [leg for p in patches if (leg := leg_of(self._form(p))) is not None]
        return legs if len(legs) == len(patches) else []

    def _raw(self, *sides: Length) -> tuple[Length, Length]:
        wide, high = (side + 2 * self._seam for side in sides)
        return wide, high

    def _directional(self, fabric: str) -> bool:
        return self._pattern.fabrics[fabric].directional

    def _order(self, fabric: str) -> int:
        return list(self._pattern.fabrics).index(fabric)

    def _triangles(self, unit: Unit) -> Recipe | None:
        legs = self._legs(unit.patches)
        fabrics = {p.fabric for p in unit.patches}
        if len(legs) != 2 or len(set(legs)) > 1 or len(fabrics) != 2:
            return None
        leg = legs[0]
        side = once_cut(leg, self._seam)
        parts = self._squares(unit, side, (leg, leg), "square for triangles")
        return Recipe(unit.made, parts, 2, self._raw(leg, leg))

    def _hourglasses(self, unit: Unit) -> Recipe | None:
        """Return two squares for two hourglasses; like triangles lie opposite each other."""
        patches = unit.patches
        legs = self._legs(patches)
        fabrics = Counter(p.fabric for p in patches)
        if len(legs) != 4 or len(set(legs)) > 1 or sorted(fabrics.values()) != [2, 2]:
            return None
        for fabric in fabrics:
            one, two = (_long_edge(self._form(p)) for p in patches if p.fabric == fabric)
            if one[0] + two[0] or one[1] + two[1]:
                return None
        long = legs[0] * ROOT_2
        side = twice_cut(long, self._seam)
        parts = self._squares(unit, side, (long, long / 2), "square for hourglasses")
        return Recipe(unit.made, parts, 2, self._raw(long, long))

    def _squares(
        self, unit: Unit, side: Length, finished: tuple[Length, Length], name: str
    ) -> tuple[Part, ...]:
        """Return a square of each fabric in a unit."""
        by: dict[str, list[Patch]] = {}
        for patch in sorted(unit.patches, key=lambda p: self._order(p.fabric)):
            by.setdefault(patch.fabric, []).append(patch)
        cutting = Cutting(OVERSIZE, side, side, finished)
        return tuple(Part(f, cutting, 1, tuple(patches), name) for f, patches in by.items())

    def _geese(self, unit: Unit) -> Recipe | None:
        patches = sorted(unit.patches, key=lambda p: -float(abs(self._form(p).doubled_area)))
        legs = self._legs(patches)
        if len(legs) != 3 or patches[1].fabric != patches[2].fabric:
            return None
        width, high = legs[0] * ROOT_2, legs[1]
        if legs[2] != high or width != 2 * high:
            return None
        large, small = twice_cut(width, self._seam), once_cut(high, self._seam)
        parts = (
            Part(
                patches[0].fabric,
                Cutting(OVERSIZE, large, large, (width, high)),
                1,
                (patches[0],),
                "large square for geese",
            ),
            Part(
                patches[1].fabric,
                Cutting(OVERSIZE, small, small, (high, high)),
                4,
                (patches[1], patches[2]),
                "small square for geese",
            ),
        )
        return Recipe(unit.made, parts, 4, self._raw(width, high))

    def _corners(self, unit: Unit) -> Recipe | None:
        """Return a whole patch and a square for each corner that is flipped onto it."""
        patches = unit.patches
        base = max(patches, key=lambda p: float(abs(self._form(p).doubled_area)))
        small = [p for p in patches if p is not base]
        legs = self._legs(small)
        covered = sum((abs(self._form(p).doubled_area) for p in patches), Fraction(0))
        if not legs or covered != 2 * unit.width * unit.height:
            return None
        sides = self._raw(unit.width, unit.height)
        parts = [Part(base.fabric, Cutting(PLAIN, *sides, (unit.width, unit.height)), 1, (base,))]
        squares: dict[tuple[str, Length], list[Patch]] = {}
        for patch, leg in zip(small, legs, strict=True):
            squares.setdefault((patch.fabric, leg), []).append(patch)
        for (fabric, leg), own in sorted(squares.items(), key=lambda s: (-s[0][1], s[0][0])):
            side = leg + 2 * self._seam
            parts.append(
                Part(
                    fabric,
                    Cutting(OVERSIZE, side, side, (leg, leg)),
                    len(own),
                    tuple(own),
                    "square for flipped corners",
                )
            )
        return Recipe(unit.made, tuple(parts), 1, sides)

    def _batch(self, kind: str, recipes: Sequence[Recipe]) -> Batch:
        """Count the pieces of all units of one kind."""
        first = recipes[0]
        batches = -(-len(recipes) // first.makes)
        pieces = []
        for i, part in enumerate(first.parts):
            patches = [p for r in recipes for p in r.parts[i].patches]
            found = self._kinds.add_pieces(
                "ground",
                part.fabric,
                part.cutting,
                part.each * batches,
                patches,
                part.name,
                self._directional(part.fabric),
            )
            pieces.append((found, part.each))
        trim = self._up(first.trim[0]), self._up(first.trim[1])
        return Batch(first.method, kind, tuple(pieces), batches, first.makes, len(recipes), trim)

    def _is_run(self, unit: Unit) -> bool:
        """Return whether a unit is a run of rectangles that a strip set can be cut into."""
        return (
            unit.join in ("across", "down")
            and all(part.patch is not None for part in unit.parts)
            and all(_is_box(self._form(p)) for p in unit.patches)
        )

    def _strip_set(self, kind: str, segments: Sequence[Unit]) -> Batch:
        """Return the strip sets that give as many segments as are needed."""
        unit = segments[0]
        across = unit.join == "across"
        segment = self._up((unit.height if across else unit.width) + 2 * self._seam)
        reach = min(cloth_of(self._pattern.fabrics[p.fabric]).reach for p in unit.patches)
        most = max(1, int((reach - self._squaring) // segment))
        sets = -(-len(segments) // most)
        each = -(-len(segments) // sets)
        length = each * segment + self._squaring
        counts: dict[int, int] = Counter()
        found: dict[int, Kind] = {}
        for (fabric, wide), number in _strips(unit, across).items():
            cutting = Cutting(PLAIN, length, wide + 2 * self._seam, (None, wide))
            own = [p for s in segments for p, w in _widths(s) if (p.fabric, w) == (fabric, wide)]
            made = self._kinds.add_pieces(
                "ground", fabric, cutting, number * sets, own, "strip for strip sets"
            )
            found[id(made)] = made
            counts[id(made)] += number
        pieces = tuple((found[i], n) for i, n in counts.items())
        total = self._up(sum((w for _, w in _widths(unit)), Fraction(0)) + 2 * self._seam)
        trim = (total, segment) if across else (segment, total)
        return Batch("strips", kind, pieces, sets, each, len(segments), trim, segment)


def made_units(unit: Unit) -> Iterator[Unit]:
    """Yield the outermost units that are made a quicker way."""
    if unit.made:
        yield unit
        return
    for part in unit.parts:
        yield from made_units(part)


def _long_edge(form: Form) -> Vector:
    """Return the long side of a right triangle as a vector."""
    return max(form.edges, key=lambda e: float(dot(e, e)))


def _is_box(form: Form) -> bool:
    """Return whether a patch is a rectangle with sides along its block's."""
    return len(form.ring) == 4 and abs(form.doubled_area) == 2 * form.box[0] * form.box[1]


def _widths(unit: Unit) -> list[tuple[Patch, Length]]:
    """Return the patches of a run with their sizes along it."""
    across = unit.join == "across"
    return [
        (part.patch, part.width if across else part.height)
        for part in unit.parts
        if part.patch is not None
    ]


def _strips(unit: Unit, across: bool) -> Counter[tuple[str, Length]]:
    """Return the strips of a set by fabric and finished width, and how many of each."""
    return Counter((patch.fabric, wide) for patch, wide in _widths(unit))
