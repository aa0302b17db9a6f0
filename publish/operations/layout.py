"""Laying out the blocks of a top, or of a round, so that each is sewn where it belongs.

In: heaps of blocks and of what lies between them. Out: operations.
Invariant: nothing is sewn into a row before it lies in the layout.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Value, Values, Word

LAYOUT = "layout"
LEVEL = "turned so that its rows lie level"


@dataclass(frozen=True, kw_only=True)
class LayOut(Operation):
    """Lay out all that the middle of a top is sewn from, as in the picture."""

    heaps: tuple[tuple[str, int], ...]
    blocks: int
    rows: int
    columns: int
    between: Value
    """What lies between and round the blocks."""
    check: str
    """What is looked at: `kinds` of block, how each is `turned`, or `none`."""
    lying: Value
    """Where like blocks lie that are pressed two ways."""
    setting: bool
    """Whether the figure shows strips between the blocks."""

    message: ClassVar[str] = "lay-out"

    def carry_out(self, table: Table) -> None:
        for key, count in self.heaps:
            have = table.count(key)
            table.need(
                have >= count,
                f"{key} to lay out",
                part=table.look(key),
                expected=str(count),
                received=str(have),
            )
        table.put(Part(LAYOUT))

    def values(self, moment: Moment) -> Values:
        lines = "one" if self.blocks == 1 else "row" if self.rows == 1 else "column"
        return {
            "blocks": Count(self.blocks, "block"),
            "lines": Word(lines if 1 in (self.rows, self.columns) else "both"),
            "rows": Count(self.rows, "row"),
            "columns": Count(self.columns, "block"),
            "between": self.between,
            "check": Word(self.check),
            "lying": self.lying,
            "number": Word("yes" if self.rows > 1 else "no"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("setting" if self.setting else "rows")


@dataclass(frozen=True, kw_only=True)
class LayOutOnPoint(Operation):
    """Lay out blocks on point, with the triangles that fill the edges."""

    heaps: tuple[tuple[str, int], ...]
    blocks: int
    rows: int
    """Diagonal rows."""
    sides: int
    corners: int
    sashing: bool

    message: ClassVar[str] = "lay-out-on-point"

    def carry_out(self, table: Table) -> None:
        LayOut.carry_out(self, table)  # type: ignore[arg-type]

    def values(self, moment: Moment) -> Values:
        return {
            "blocks": Count(self.blocks, "block"),
            "rows": Count(self.rows, "diagonal-row"),
            "sides": Count(self.sides, "side-triangle"),
            "corners": Count(self.corners, "corner-triangle"),
            "between": Word("sashing" if self.sashing else "none"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("setting")


@dataclass(frozen=True, kw_only=True)
class TurnLayout(Operation):
    """Turn the layout so that diagonal rows lie level."""

    rows: int
    seam: Exact
    sides: int

    message: ClassVar[str] = "turn-layout"

    def carry_out(self, table: Table) -> None:
        table.put(table.take(LAYOUT, by=LayOutOnPoint).having(LEVEL))

    def values(self, moment: Moment) -> Values:
        return {
            "rows": Count(self.rows),
            "seam": Length(self.seam),
            "sides": Word("some" if self.sides else "none"),
        }
