"""Trimming a block once its motif is sewn on: about its centre, at the edge of a pillow too.

In: keys of blocks whose motif is sewn. Out: operations.
Invariant: a block is trimmed once, when nothing on it can shrink any more; what is left large
is trimmed with the quilted front.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.applique import PRESSED, PressBlock, TearStabiliser
from publish.operations.handwork import Handwork, block_heap, laid_heap
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part, measured
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.units import inches_text
from publish.words.values import Length, Rectangle, Values

AWAY = "the ground behind it looked to"


@dataclass(frozen=True, kw_only=True)
class CutGroundAway(Handwork):
    """Cut the ground away behind a motif that it shows through."""

    inside: Exact

    message: ClassVar[str] = "cut-ground-away"
    tools: ClassVar[tuple[str, ...]] = ("small scissors",)
    needs = ((PRESSED, PressBlock),)
    leaves = AWAY

    def values(self, moment: Moment) -> Values:
        return {"inside": Length(self.inside)}


@dataclass(frozen=True, kw_only=True)
class _Finish(Operation):
    """The end of the work on blocks that carry a motif."""

    blocks: tuple[tuple[str, int], ...]
    """Keys of blocks and how many of each."""
    away: bool
    """Whether the ground had to be looked to."""

    def taken(self, table: Table, block: str, count: int) -> Part:
        """Take blocks whose motif is sewn on, pressed and without stabilizer."""
        part = table.take(laid_heap(block), count)
        table.need(part.is_(PRESSED), PRESSED, by=PressBlock, part=part)
        table.need(not part.paper, "its stabilizer torn away", by=TearStabiliser, part=part)
        away = part.is_(AWAY) or not self.away
        table.need(away, AWAY, by=CutGroundAway, part=part)
        return replace(part, state=frozenset({"pressed"}), basting=frozenset())

    def cut(self, table: Table, part: Part, key: str, width: Exact, height: Exact) -> Part:
        """Return a block trimmed to a width and height, which it must have had."""
        for side, asked in ((part.width, width), (part.height, height)):
            table.need(
                not part.known or side.told >= asked,
                "a ground that is large enough to trim",
                part=part,
                expected=inches_text(asked),
                received=inches_text(side.told),
            )
        return replace(part.sized(measured(width), measured(height)), key=key)


@dataclass(frozen=True, kw_only=True)
class TrimBlocks(_Finish):
    """Trim blocks about their centre."""

    side: Exact
    shown: str

    message: ClassVar[str] = "trim-blocks"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")

    def carry_out(self, table: Table) -> None:
        for block, count in self.blocks:
            part = self.taken(table, block, count)
            table.put(self.cut(table, part, block_heap(block), self.side, self.side), count)

    def values(self, moment: Moment) -> Values:
        return {"size": Rectangle(self.side, self.side)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("trim", (("block", self.shown),))


@dataclass(frozen=True)
class EdgeBlock:
    """A block of a pillow in its place, with what it is trimmed to."""

    block: str
    place: str
    width: Exact
    height: Exact


@dataclass(frozen=True, kw_only=True)
class TrimAtEdge(_Finish):
    """Trim the blocks of a pillow, whose outer edges end in the closing seam."""

    side: Exact
    """Finished."""
    seam: Exact
    closing: Exact
    each: tuple[EdgeBlock, ...]
    shown: str

    message: ClassVar[str] = "trim-at-edge"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler", "marker")

    def carry_out(self, table: Table) -> None:
        parts = {block: self.taken(table, block, count) for block, count in self.blocks}
        for one in self.each:
            key = block_heap(one.block, one.place)
            table.put(self.cut(table, parts[one.block], key, one.width, one.height))

    def values(self, moment: Moment) -> Values:
        return {
            "side": Length(self.side),
            "seam": Length(self.seam),
            "closing": Length(self.closing),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("trim", (("block", self.shown),))


@dataclass(frozen=True, kw_only=True)
class LeaveLarge(_Finish):
    """Leave the block of a pillow as large as it was cut."""

    message: ClassVar[str] = "leave-large"

    def carry_out(self, table: Table) -> None:
        for block, count in self.blocks:
            part = self.taken(table, block, count)
            table.put(replace(part, key=block_heap(block)), count)
