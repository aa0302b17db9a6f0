"""Which place of the top a block lies in, and what a part of the seam tree is.

In: rows, columns, numbers. Out: `BlockHome` and `Part`, values with their text.
Invariant: nothing reads the text again; who wants to know a row asks for the row.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Where(Enum):
    """Of what a block's place is a part."""

    ARRANGED = "arranged"
    """In the rows and columns of the blocks."""
    BETWEEN = "between"
    """On point, between four of those."""
    ROUND = "round"
    """Round the centre of a medallion."""


@dataclass(frozen=True, order=True)
class BlockHome:
    """A place for a block: `r1c2`, `between r1c1`, `round 3 block 5`.

    `row` and `column` count from 0 in the arrangement; of a block between, they are those of
    the block up and left of it. `round` counts from 1 from the inside out, and `number` from 1
    clockwise in a round, both 0 elsewhere.
    """

    where: Where
    row: int = 0
    column: int = 0
    round: int = 0
    number: int = 0

    @property
    def in_round(self) -> bool:
        return self.where is Where.ROUND

    def __str__(self) -> str:
        if self.in_round:
            return f"round {self.round} block {self.number}"
        place = f"r{self.row + 1}c{self.column + 1}"
        return place if self.where is Where.ARRANGED else f"{self.where.value} {place}"
