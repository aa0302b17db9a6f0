"""The units of one size: grouped as they are made, and the heaps that they lie on.

In: the seam tree of a size, its plan. Out: `Heaps`.
Invariant: parts that are made alike share a heap; rows have each their own, and a ground that
waits for its motif lies apart from the block that it becomes.
"""

from __future__ import annotations

from collections import Counter
from functools import cached_property

from publish.model.cutplan import Piece
from publish.model.draft import Patch, Unit
from publish.model.homes import BlockHome
from publish.model.tree import BLOCK, TOP, Group, groups, level
from publish.operations.handwork import ground_heap
from publish.sew.bench import Bench, heap


class Heaps:
    """The units of one size, grouped as they are made."""

    def __init__(self, bench: Bench) -> None:
        self.bench = bench
        self.root = bench.draft.assembly
        self.groups = groups(self.root)
        self.pieces = {p.letter: p for p in bench.plan.pieces}
        found = (patch.place for patch in bench.draft.patches)
        self.homes: Counter[BlockHome] = Counter(home for home in found if home is not None)

    # Units

    def at(self, where: str) -> tuple[Group, ...]:
        """Return the groups that are made at one level."""
        return tuple(g for g in self.groups if level(g.unit) == where)

    @cached_property
    def centre(self) -> Unit:
        """Return all that lies inside borders and rounds."""
        top = self.at(TOP)
        if top:
            return top[-1].unit
        within = (u for u in self.root.outermost_first() if self._inside(u))
        return next(within)

    def _inside(self, unit: Unit) -> bool:
        home = unit.patches[0].place
        return self.is_block(unit) and home is not None and not home.in_round

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
        order = list(self.bench.counts)
        return min((order.index(b) for b in group.blocks if b in order), default=len(order))

    def of_block(self, block: str) -> tuple[Group, ...]:
        """Return the groups that are made for a block and for none before it."""
        place = list(self.bench.counts).index(block)
        return tuple(g for g in self.at(BLOCK) if self.place(g) == place)

    # Heaps

    def key(self, unit: Unit) -> str:
        """Return the heap that a unit lies on."""
        piece = self.piece(unit)
        if unit is self.centre:
            return "top"
        whole = self.is_block(unit) and self.carries(unit)
        if piece is not None and not whole:
            return heap(piece)
        return unit.name if unit.number and unit.parts else unit.kind

    def carries(self, unit: Unit) -> bool:
        """Return whether a unit belongs to a block that carries a motif."""
        block = unit.patches[0].block
        return block is not None and self.bench.pattern.blocks[block].motif is not None

    def made(self, unit: Unit) -> str:
        """Return the heap that piecing puts a unit on: a ground waits for its motif."""
        block = unit.patches[0].block
        waits = self.is_block(unit) and self.carries(unit)
        return ground_heap(block) if waits and block is not None else self.key(unit)

    def lies(self, unit: Unit) -> int:
        """Return how many quarters clockwise a unit lies turned against its heap."""
        return (unit.place.turn - unit.turn) // 90 % 4 if unit.place is not None else 0

    def piece(self, unit: Unit) -> Piece | None:
        """Return the piece that a unit of one patch is cut as."""
        if unit.patch is None:
            return None
        letter = self.bench.plan.sources.get(unit.patch.key)
        return self.pieces[letter] if letter is not None else self._like(unit.patch)

    def _like(self, patch: Patch) -> Piece | None:
        """Return the first piece of a patch's purpose, cloth and finished size."""
        left, top, right, bottom = patch.box
        sides = right - left, bottom - top
        of = (
            (p.purpose, p.fabric, p.finished_width, p.finished_length) for p in self.pieces.values()
        )
        fits = ((patch.role, patch.fabric, *s) for s in (sides, sides[::-1]))
        found = dict(zip(of, self.pieces.values(), strict=True))
        return next((found[f] for f in fits if f in found), None)

    def quarters(self, part: Unit) -> int:
        """Return how many quarters clockwise a part lies turned against its heap."""
        if part.number and part.parts:
            return 0  # each row is a heap of its own
        piece = self.piece(part)
        whole = piece is not None and self.is_block(part) and self.carries(part)
        if piece is not None and part.sewn is not None and not whole:
            return int(part.sewn.told == (piece.length, piece.width) != part.sewn.told[::-1])
        return self.lies(part)
