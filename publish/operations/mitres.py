"""Borders with mitred corners: pinning, sewing from corner to corner, the mitres.

In: keys of the top and of four strips, seams. Out: operations.
Invariant: a corner is open until its mitre is sewn; the strips reach past it for that.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from publish.operations.borders import (
    MEASURED,
    PINNED,
    PRESSED,
    MeasureTop,
    PressBorder,
    grown,
)
from publish.operations.lengths import JoinLengths
from publish.operations.operation import Moment, Operation
from publish.operations.table import Table
from publish.surd import ROOT_2
from publish.surd import Length as Exact
from publish.words.values import (
    Length,
    Letter,
    Rectangle,
    Several,
    Values,
    Word,
)

TO_PRESS = "a mitre to press"
OPEN = tuple(f"corner {at} open" for at in range(4))
"""Corners whose two strips are not yet sewn together."""


@dataclass(frozen=True, kw_only=True)
class PinMitred(Operation):
    """Pin four strips to the sides by their middles, their ends beyond the corners."""

    top: str
    strips: tuple[tuple[str, str], ...]
    """Of `sides` and of `ends`: the key of their two strips."""
    letters: tuple[str, ...]
    seam: Exact
    quarters: bool

    message: ClassVar[str] = "pin-mitred"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        top = table.look(self.top)
        ready = all(top.is_(state) for state in MEASURED.values())
        table.need(ready, "the top is measured both ways", by=MeasureTop, part=top)
        for sides, key in self.strips:
            strip = table.take(key, 2)
            side = top.height if sides == "sides" else top.width
            # From the corner of the seams the mitre runs out at 45 degrees, and its own
            # allowance lies beyond it along the strip.
            least = side.exact + 2 * (strip.width.exact - 2 * self.seam + self.seam * ROOT_2)
            table.need(
                not top.known or strip.height.told >= least,
                "strips that reach past both corners for the mitre",
                by=JoinLengths,
                part=strip,
                expected=f"{float(least):.2f} in",
                received=f"{float(strip.height.told):.2f} in",
            )
            table.put(strip.having(PINNED), 2)

    def values(self, moment: Moment) -> Values:
        return {
            "letters": Several(tuple(map(Letter, self.letters))),
            "where": Word("quarters" if self.quarters else "ends"),
            "width": Length(moment.after(self.strips[0][1]).width.told),
        }


@dataclass(frozen=True, kw_only=True)
class SewMitred(Operation):
    """Sew four strips on from corner to corner, and leave the allowance free there."""

    top: str
    strips: tuple[tuple[str, str], ...]
    seam: Exact

    message: ClassVar[str] = "sew-mitred"

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        wide = high = None
        for sides, key in self.strips:
            strip = table.take(key, 2)
            table.need(strip.is_(PINNED), "strips pinned to the top", by=PinMitred, part=strip)
            deep = (strip.width - 2 * self.seam) * 2
            wide, high = (deep, high) if sides == "sides" else (wide, deep)
        table.sew("piecing", (top.width + top.height) * 2 - 8 * self.seam)
        table.put(grown(top, wide, high).without(*MEASURED.values(), PRESSED).having(*OPEN))

    def values(self, moment: Moment) -> Values:
        return {"seam": Length(self.seam)}


@dataclass(frozen=True, kw_only=True)
class SewMitre(Operation):
    """Sew the mitre of one corner, from the corner of the seams outwards."""

    top: str
    corner: int
    seam: Exact
    depth: Exact
    """Of the border, finished."""

    message: ClassVar[str] = "sew-mitre"
    tools: ClassVar[tuple[str, ...]] = ("ruler",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        ready = top.is_(PRESSED) or top.is_(TO_PRESS)
        table.need(ready, "strips pressed towards the border", by=PressBorder, part=top)
        table.need(
            top.is_(OPEN[self.corner]), f"corner {self.corner + 1} open", by=SewMitred, part=top
        )
        table.sew("piecing", (self.depth + self.seam) * ROOT_2)
        table.put(top.without(OPEN[self.corner], PRESSED).having(TO_PRESS))

    def values(self, moment: Moment) -> Values:
        return {"seam": Length(self.seam)}


@dataclass(frozen=True, kw_only=True)
class PressMitres(Operation):
    """Press the mitres open, and look whether the corners lie flat."""

    top: str
    drafted: tuple[Exact, Exact]

    message: ClassVar[str] = "press-mitres"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        for corner, state in enumerate(OPEN):
            table.need(state not in top.state, f"corner {corner + 1} sewn", by=SewMitre, part=top)
        top = table.drafted(top, *self.drafted)
        table.put(top.without(*OPEN, TO_PRESS).having(PRESSED))

    def values(self, moment: Moment) -> Values:
        top = moment.after(self.top)
        return {"top": Rectangle(top.width.told, top.height.told)}
