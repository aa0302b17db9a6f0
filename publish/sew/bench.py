"""What every planner works with: one size, and the table that its operations are done on.

In: pattern, size, draft, plan. Out: `Bench`: operations so far, the table after them.
Invariant: an operation that is added has been carried out.
"""

from __future__ import annotations

from collections import Counter
from fractions import Fraction

from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.operations.operation import Moment, Operation
from publish.operations.parts import Measure, Part, measured
from publish.operations.table import Table
from publish.surd import Length


class Bench:
    """One size on the table."""

    def __init__(
        self,
        pattern: Pattern,
        size: Size,
        draft: Draft,
        plan: CutPlan,
        blocks: tuple[str, ...] = (),
    ) -> None:
        self.pattern, self.size, self.draft, self.plan = pattern, size, draft, plan
        self.blocks = blocks or tuple(counted(size))
        """The blocks that some size of the pattern shows."""
        self.operations: list[Operation] = []
        self.moments: list[Moment] = []
        self.table = Table(self.operations, pattern.measures)

    def add(self, *operations: Operation) -> None:
        """Carry out operations in order and keep them."""
        for operation in operations:
            self.operations.append(operation)
            self.moments.append(self.table.carry_out(operation))

    def look(self, key: str) -> Part:
        """Return a part as it lies on the table."""
        return self.table.look(key)

    def usual(self, inches: Fraction) -> Fraction:
        """Return a figure of the trade as the pattern's makers have it."""
        return self.pattern.measures.usual(inches)

    @property
    def seam(self) -> Fraction:
        return self.pattern.sewing.seam

    @property
    def edge(self) -> Fraction:
        """Return the allowance outside the finished top: a pillow's own, or a seam."""
        return self.size.pillow.seam if self.size.pillow is not None else self.seam

    @property
    def counts(self) -> Counter[str]:
        """Return the blocks of the size and how many of each, in order of appearance."""
        return counted(self.size)

    def sides(self, block: str) -> dict[Fraction, int]:
        """Return the finished sides that a block has in the size, and how many of each."""
        size = self.size
        middle = sum(row.count(block) for row in (*size.arrangement, *size.alternates))
        found: Counter[Fraction] = Counter({size.block_side: middle} if middle else {})
        for layer in size.rounds:
            if layer.block_side is not None:
                found[layer.block_side] += sum(b.block == block for b in layer.blocks)
        return {side: count for side, count in found.items() if count}

    def pieces(self, purpose: str) -> tuple[Piece, ...]:
        """Return the pieces cut for a purpose, or for what begins with its words."""
        return tuple(
            p
            for p in self.plan.pieces
            if p.purpose == purpose or p.purpose.startswith(f"{purpose} ")
        )


def counted(size: Size) -> Counter[str]:
    """Return the blocks of a size, those on point between the rows and those of rounds too."""
    found = [b for row in (*size.arrangement, *size.alternates) for b in row]
    found += [b.block for r in size.rounds for b in r.blocks]
    return Counter(found)


def heap(piece: Piece) -> str:
    """Return what the pieces of a letter are called on the table."""
    return f"piece {piece.letter}"


def side(told: Length, exact: Length | None) -> Measure:
    """Return a side of a piece as it is told, and exactly where its plan has it so."""
    return measured(told if exact is None else exact, told)
