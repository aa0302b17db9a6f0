"""Trimming a block once its motif is sewn on: about its centre, at the edge of a pillow too.

In: keys of blocks whose motif is sewn. Out: operations.
Invariant: a block is trimmed once, when nothing on it can shrink any more; what is left large
is trimmed with the quilted front.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.applique import PRESSED, PressBlock, TearStabiliser
from publish.operations.handwork import Handwork, laid_heap
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part, measured
from publish.operations.table import Table
from publish.surd import Length as Exact
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


@dataclass(frozen=True)
class Done:
    """Blocks that end alike: what they are called then, how many, and what they measure."""

    block: str
    key: str
    count: int
    width: Exact | None = None
    height: Exact | None = None
    """Both None for what is left large."""


@dataclass(frozen=True, kw_only=True)
class _Finish(Operation):
    """The end of the work on blocks that carry a motif."""

    done: tuple[Done, ...]
    away: bool
    """Whether the ground had to be looked to."""

    trims: ClassVar[bool] = True

    def carry_out(self, table: Table) -> None:
        for one in self.done:
            part = table.take(laid_heap(one.block), one.count)
            self._ready(table, part)
            part = replace(part, key=one.key, state=frozenset({"pressed"}), basting=frozenset())
            if one.width is not None and one.height is not None:
                _large_enough(table, part, one.width, one.height)
                part = part.sized(measured(one.width), measured(one.height))
            table.put(part, one.count)

    def _ready(self, table: Table, part: Part) -> None:
        """Ask that the motif is sewn on, pressed, and without stabilizer."""
        table.need(part.is_(PRESSED), PRESSED, by=PressBlock, part=part)
        table.need(not part.paper, "its stabilizer torn away", by=TearStabiliser, part=part)
        away = part.is_(AWAY) or not self.away
        table.need(away, AWAY, by=CutGroundAway, part=part)


def _large_enough(table: Table, part: Part, width: Exact, height: Exact) -> None:
    for side, asked in ((part.width, width), (part.height, height)):
        table.need(
            side.told >= asked,
            "a ground that is large enough to trim",
            part=part,
            expected=table.text(asked),
            received=table.text(side.told),
        )


@dataclass(frozen=True, kw_only=True)
class TrimBlocks(_Finish):
    """Trim blocks about their centre."""

    side: Exact
    shown: str

    message: ClassVar[str] = "trim-blocks"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")

    def values(self, moment: Moment) -> Values:
        return {"size": Rectangle(self.side, self.side)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("trim", (("block", self.shown),))


@dataclass(frozen=True, kw_only=True)
class TrimAtEdge(_Finish):
    """Trim the blocks of a pillow, whose outer edges end in the closing seam."""

    side: Exact
    """Finished."""
    seam: Exact
    closing: Exact
    shown: str

    message: ClassVar[str] = "trim-at-edge"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler", "marker")

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
