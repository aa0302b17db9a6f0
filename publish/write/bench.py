"""What is sewn at one size: the groups of its seam tree, and what the text calls them.

In: a book, a size. Out: `Bench`: groups by level, blocks, names of units.
Invariant: a name stands for one kind of unit in its size. Units inside blocks keep the
draft's own names where these are few and differ, and are numbered otherwise.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from functools import cached_property

from publish.model.cutplan import Piece
from publish.model.draft import Patch, Unit
from publish.model.homes import BlockHome
from publish.model.nouns import noun
from publish.model.tree import BLOCK, Group, groups, level, only_sections, sections
from publish.words.en.phrase import article, listed
from publish.write.context import Book
from publish.write.sewn import piece_of

_JOINED = "joined sections"
_FEW = 3
"""So many units that have names of their own are called by them."""


@dataclass
class Bench:
    """One size on the table."""

    book: Book
    key: str

    @cached_property
    def groups(self) -> tuple[Group, ...]:
        return groups(self.book.drafts[self.key].assembly)

    @cached_property
    def _levels(self) -> dict[str, tuple[Group, ...]]:
        found: dict[str, list[Group]] = {}
        for group in self.groups:
            found.setdefault(level(group.unit), []).append(group)
        return {where: tuple(groups_) for where, groups_ in found.items()}

    def at(self, where: str) -> tuple[Group, ...]:
        """Return the groups that are made at one level."""
        return self._levels.get(where, ())

    @cached_property
    def homes(self) -> Counter[BlockHome]:
        """Return how many patches each block of the top has."""
        found = (patch.place for patch in self.book.drafts[self.key].patches)
        return Counter(home for home in found if home is not None)

    def is_block(self, unit: Unit) -> bool:
        """Return whether a unit is a whole block of the top."""
        found = unit.patches
        home = found[0].place
        return home is not None and len(found) == self.homes[home] and level(unit) == BLOCK

    @cached_property
    def inner(self) -> tuple[Group, ...]:
        """Return the groups made inside blocks that are no whole block, block by block."""
        found = [g for g in self.at(BLOCK) if not self.is_block(g.unit)]
        return tuple(sorted(found, key=self.place))

    def place(self, group: Group) -> int:
        """Return the place, among the size's blocks, of the first that needs a group."""
        order = list(self.book.blocks(self.key))
        return min((order.index(b) for b in group.blocks if b in order), default=len(order))

    @cached_property
    def _called(self) -> dict[str, str]:
        """Return what each kind of inner unit is called."""
        joined = [g for g in self.inner if not only_sections(g.unit)]
        own = {g.unit.kind: g.unit.name for g in joined}
        plain = len(set(own.values())) == len(own) <= _FEW and not any(
            "column" in name or name == "unit" for name in own.values()
        )
        names = own if plain else {kind: f"unit {at}" for at, kind in enumerate(own, 1)}
        sections = {
            g.unit.kind: listed(self.letters(g.unit)) for g in self.inner if only_sections(g.unit)
        }
        return {**names, **{kind: f"{_JOINED} {letters}" for kind, letters in sections.items()}}

    def called(self, unit: Unit) -> str:
        """Return what the text calls a unit: `unit 3`, `half ground`, `lock block`, `row 2`."""
        if self.is_block(unit):
            return self.block_name(unit)
        if unit.section:
            return f"section {self.section_letter(unit)}"
        return self._called.get(unit.kind, unit.name)

    def the(self, unit: Unit) -> str:
        """Return a unit's name with its article: `unit 3`, `the half ground`."""
        name = self.called(unit)
        return name if _ends_in_mark(name) and not name.startswith(_JOINED) else f"the {name}"

    def block_name(self, unit: Unit) -> str:
        """Return `block` or `lock block`; a ground that waits for its motif is a ground."""
        return self._variants.get(unit.kind) or self._whole_name(unit)

    def _whole_name(self, unit: Unit) -> str:
        block = unit.patches[0].block
        if block is None or (unit.name == "ground" and len(self.book.blocks(self.key)) == 1):
            return unit.name
        return self.book.sized_name(self.key, block, unit.width)

    @cached_property
    def _variants(self) -> dict[str, str]:
        """Return `block 2` for each kind of a pieced block that is made in several ways, by
        what lies beyond its edges where they are the outside of the top."""
        found: dict[str, list[str]] = {}
        for group in self.at(BLOCK):
            if self.is_block(group.unit):
                found.setdefault(self._whole_name(group.unit), []).append(group.unit.kind)
        return {
            kind: f"{name} {number_}"
            for name, kinds in found.items()
            if len(kinds) > 1
            for number_, kind in enumerate(kinds, 1)
        }

    def trade(self, unit: Unit) -> str:
        """Return the trade's noun for a unit inside a block, where it has one."""
        return "" if self.is_block(unit) else noun(unit)

    def section_letter(self, unit: Unit) -> str:
        found = self.book.drafts[self.key].foundations
        return next((f.letter for f in found if f.key == unit.section), unit.section)

    def letters(self, unit: Unit) -> list[str]:
        """Return the letters of the foundation sections in a unit, in sewing order."""
        return [self.section_letter(section) for section in sections(unit)]

    def piece(self, unit: Unit) -> Piece | None:
        """Return the piece that a unit of one patch is cut as."""
        return piece_of(self.book, self.key, unit.patch) if unit.patch is not None else None

    def part_name(self, part: Unit) -> str:
        """Return one part of a unit with its article: `a Salt linen piece **A**`, `unit 3`."""
        if part.patch is not None:
            return self._leaf(part, part.patch)
        name = self.called(part)
        if name.startswith(_JOINED):
            return f"the {name}"
        return name if _ends_in_mark(name) else article(name)

    def _leaf(self, part: Unit, patch: Patch) -> str:
        piece = self.piece(part)
        mark = f" **{piece.letter}**" if piece is not None else ""
        return article(f"{self.book.fabric(patch.fabric)} {word_for(piece, part)}{mark}")


_ROLES = {"sashing": "sashing strip", "cornerstone": "cornerstone"}


def word_for(piece: Piece | None, part: Unit) -> str:
    """Return what a cut patch is called: `triangle`, `diamond`, `piece`."""
    assert part.patch is not None
    if part.patch.role in _ROLES:
        return _ROLES[part.patch.role]
    if part.patch.role == "setting":
        return part.patch.key.rstrip("0123456789 ") or "setting triangle"
    shape = piece.shape if piece is not None else ""
    if "triangle" in shape:
        return "triangle"
    if shape in ("diamond", "hexagon", "parallelogram"):
        return shape
    corners = len(part.patch.ring)
    return "triangle" if corners == 3 and not part.patch.arcs and shape != "rectangle" else "piece"


def _ends_in_mark(name: str) -> bool:
    """Return whether a name ends in a number or a letter, as `unit 3` and `section A` do."""
    last = name.split(" ")[-1]
    return last.isdigit() or (len(last) <= 2 and last.isupper())
