"""What every planner works with: one size, and the table that its operations are done on.

In: pattern, size, draft, plan. Out: `Bench`: operations so far, the table after them.
Invariant: an operation that is added has been carried out.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.operations.operation import Moment, Operation
from publish.operations.parts import Part
from publish.operations.table import Table


class Bench:
    """One size on the table."""

    def __init__(self, pattern: Pattern, size: Size, draft: Draft, plan: CutPlan) -> None:
        self.pattern, self.size, self.draft, self.plan = pattern, size, draft, plan
        self.operations: list[Operation] = []
        self.moments: list[Moment] = []
        self.table = Table(self.operations)

    def add(self, *operations: Operation) -> None:
        """Carry out operations in order and keep them."""
        for operation in operations:
            self.operations.append(operation)
            self.moments.append(self.table.carry_out(operation))

    def look(self, key: str) -> Part:
        """Return a part as it lies on the table."""
        return self.table.look(key)

    @property
    def seam(self) -> Fraction:
        return self.pattern.sewing.seam

    @property
    def edge(self) -> Fraction:
        """Return the allowance outside the finished top: a pillow's own, or a seam."""
        return self.size.pillow.seam if self.size.pillow is not None else self.seam

    def pieces(self, purpose: str) -> tuple[Piece, ...]:
        """Return the pieces cut for a purpose, or for what begins with its words."""
        return tuple(
            p
            for p in self.plan.pieces
            if p.purpose == purpose or p.purpose.startswith(f"{purpose} ")
        )


def heap(piece: Piece) -> str:
    """Return what the pieces of a letter are called on the table."""
    return f"piece {piece.letter}"
