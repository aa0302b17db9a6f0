"""Foundation sections: which patches are sewn onto one printed foundation, in what order.

In: the blocks of a size and what of them is to be foundation pieced. Out: the leaves that
blocks are sewn from, `FoundationSection`s, and notes.
Invariant: every patch after the first is added along one straight line, a full side of the
patch and a full side of what is sewn already: so it can be sewn on that line, flipped over
it, and trimmed.

Where no order is written, a section is taken apart from the end, as long as some patch
could have been the last; of several, the one that is written last. A map that is no such
section is cut in two along a straight seam, where that leaves the fewest sections. A section
of these that is larger than a sheet leaves rectangles off its paper (`on_sheets.py`).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from fractions import Fraction

from publish.arcs import Ring
from publish.draft.blocktree import Leaf, Sections, patch_map
from publish.draft.homes import Home, block_shapes, moved
from publish.draft.on_sheets import within_a_sheet
from publish.draft.order import Seam, seam_path
from publish.draft.paths import Faces, parted, paths
from publish.draft.planar import Planar, Spot, Way
from publish.model.block import Block
from publish.model.draft import FoundationSection, Patch, Point
from publish.model.pattern import Pattern
from publish.notes import Note, error, warning
from publish.units import fraction_text


def sections_of(
    pattern: Pattern, places: Iterable[Home]
) -> tuple[Sections, tuple[FoundationSection, ...], tuple[Note, ...]]:
    """Return the sections of every block that has a foundation."""
    leaves: Sections = {}
    drawn: list[FoundationSection] = []
    notes: list[Note] = []
    sides: dict[str, list[Fraction]] = {}
    for (key, side), count in Counter((h.block, h.side) for h in places).items():
        block = pattern.blocks[key]
        if not block.foundations:
            continue
        planar = patch_map(block, side)
        orders, found = _orders(pattern, block, planar)
        notes += found
        sizes = sides.setdefault(key, [])
        sizes.append(side)
        start = key if len(sizes) == 1 else f"{key}, {fraction_text(side)} in,"
        letters = [_letter(n) for n in range(len(orders))]
        leaves[key, side] = tuple(
            Leaf(order, f"{start} {letter}") for order, letter in zip(orders, letters, strict=True)
        )
        drawn += [
            _drawn(block, side, planar, leaf, letter, count)
            for leaf, letter in zip(leaves[key, side], letters, strict=True)
        ]
    return leaves, tuple(drawn), tuple(dict.fromkeys(notes))


def _letter(number: int) -> str:
    """Return A, B ... Z, AA, AB ..."""
    before, last = divmod(number, 26)
    return (_letter(before - 1) if before else "") + chr(ord("A") + last)


def _orders(
    pattern: Pattern, block: Block, planar: Planar
) -> tuple[list[tuple[int, ...]], list[Note]]:
    """Return the patches of each section in order of sewing."""
    orders: list[tuple[int, ...]] = []
    notes: list[Note] = []
    for number, foundation in enumerate(block.foundations):
        if foundation.in_order:
            wrong = _wrong(pattern, block, planar, number, foundation.patches)
            if wrong is None:
                orders.append(foundation.patches)
            else:
                notes.append(wrong)
            continue
        found = [
            part
            for order in _Derived(planar).orders(frozenset(foundation.patches))
            for part in _parts(planar, order, pattern.sewing.seam)
        ]
        orders += [order for order in found if len(order) > 1]
        if all(len(order) == 1 for order in found):
            notes.append(
                warning(
                    "D343",
                    pattern.place("blocks", block.key, "foundation"),
                    "no two patches of the block can be sewn on one foundation",
                    expected="patches that join along full straight lines",
                    help="leave out `foundation`: the block is pieced as usual",
                )
            )
    return orders, notes


def _parts(planar: Planar, order: tuple[int, ...], seam: Fraction) -> list[tuple[int, ...]]:
    """Return a section as it goes on one sheet, and each patch that stays off the paper."""
    left = within_a_sheet(planar, order, seam, _line)
    return [left, *((n,) for n in order if n not in left)]


def _wrong(
    pattern: Pattern, block: Block, planar: Planar, number: int, order: tuple[int, ...]
) -> Note | None:
    """Return what keeps a section from being sewn in the order that is written."""
    for place in range(1, len(order)):
        before, patch = frozenset(order[:place]), order[place]
        if _line(planar, before, patch) is not None:
            continue
        name = block.patches[patch].name or f"patch {patch + 1}"
        return error(
            "D342",
            pattern.place("blocks", block.key, "foundation", number, place),
            f"`{name}` cannot be added along one straight line",
            expected="a full side of the patch on a full side of what is sewn before it",
            received=_met(planar, before, patch),
            help="change the order, or put it into another section",
        )
    return None


def _met(planar: Planar, before: Faces, patch: int) -> str:
    """Say how a patch meets what is sewn before it."""
    path = seam_path(planar, before, frozenset({patch}))
    if not path:
        return "a patch that meets none of them"
    seam = Seam(path)
    if seam.corners:
        return f"a seam with {seam.corners} corner{'s' if seam.corners > 1 else ''}"
    return "a curved seam" if seam.heading is None else "a side that is longer than its seam"


def _line(planar: Planar, before: Faces, patch: int) -> tuple[Spot, Spot] | None:
    """Return the line along which a patch can be added, None where there is none."""
    alone = frozenset({patch})
    shared = [w for w in planar.faces[patch] if planar.owner.get(w.back) in before]
    path = seam_path(planar, before, alone)
    if not path or len(path) < len(shared) or Seam(path).heading is None:
        return None
    side = Way(path[0].start, path[-1].end)
    full = side in planar.outline(alone) and side.back in planar.outline(before)
    return (side.start, side.end) if full else None


class _Derived:
    """Finds sections in a map."""

    def __init__(self, planar: Planar) -> None:
        self.planar = planar
        self.known: dict[Faces, list[tuple[int, ...]]] = {}

    def orders(self, faces: Faces) -> list[tuple[int, ...]]:
        """Return the fewest sections that faces can be sewn in, each in order."""
        if faces not in self.known:
            single = self._order(faces)
            self.known[faces] = [single] if single else self._cut(faces)
        return self.known[faces]

    def _cut(self, faces: Faces) -> list[tuple[int, ...]]:
        best: list[tuple[int, ...]] = [(n,) for n in sorted(faces)]
        for path in paths(self.planar, faces, 0):
            if any(w.bend for w in path):
                continue
            one, two = parted(self.planar, faces, path)
            found = self.orders(one) + self.orders(two)
            if len(found) < len(best):
                best = sorted(found)
        return best

    def _order(self, faces: Faces) -> tuple[int, ...]:
        """Return the order of sewing of faces that make one section; empty if they do not."""
        left, last = faces, []
        while len(left) > 1:
            patch = next((n for n in sorted(left, reverse=True) if self._ends(left, n)), None)
            if patch is None:
                return ()
            last.append(patch)
            left -= {patch}
        return (*left, *last[::-1])

    def _ends(self, faces: Faces, patch: int) -> bool:
        """Return whether a patch can be the last of a section."""
        rest = faces - {patch}
        if len(parted(self.planar, rest)) > 1:
            return False
        return _line(self.planar, rest, patch) is not None


def _drawn(
    block: Block, side: Fraction, planar: Planar, leaf: Leaf, letter: str, count: int
) -> FoundationSection:
    """Return a section as it lies in its block, which lies unturned."""
    shapes = block_shapes(block, side, 0)
    half = side / 2

    def place(spot: Spot) -> Point:
        return Fraction(spot[0], planar.scale) + half, Fraction(spot[1], planar.scale) + half

    patches = []
    for number, spec in enumerate(leaf.specs, start=1):
        ring, arcs = shapes[spec]
        patches.append(
            Patch(
                f"{leaf.section}{number}",
                moved(ring, half, half),
                block.patches[spec].fabric,
                "ground",
                block.key,
                arcs=tuple((i, (x + half, y + half)) for i, (x, y) in arcs),
                spec=spec,
            )
        )
    lines = [
        _line(planar, frozenset(leaf.specs[:n]), leaf.specs[n]) for n in range(1, len(leaf.specs))
    ]
    rim: Ring = tuple(place(w.start) for w in planar.outline(leaf.specs))
    seams = tuple((place(line[0]), place(line[1])) for line in lines if line is not None)
    return FoundationSection(leaf.section, letter, block.key, tuple(patches), rim, seams, count)
