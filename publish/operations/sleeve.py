"""A hanging sleeve and a label: hemming, the tube, sewing both to the back.

In: keys of the quilt and of the strip, seams, the depth that was asked for. Out: operations.
Invariant: a sleeve is sewn to a quilt whose edges are done, and is shorter than it is wide.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.binding import SewDownBinding
from publish.operations.lengths import end_to_end
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import sheet
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Letter, Rectangle, Values, Word

HEMMED, TUBE = "ends hemmed", "sewn to a tube"
TOP_SEWN, SLEEVE, LABEL = "sleeve sewn on above", "sleeve", "label"


@dataclass(frozen=True, kw_only=True)
class JoinSleeve(Operation):
    """Join the cut lengths of the strip end to end."""

    piece: str
    strip: str
    letter: str
    each: int
    seam: Exact

    message: ClassVar[str] = "join-sleeve"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.piece, self.each)
        long = end_to_end(part, self.each, self.seam)
        table.put(replace(sheet(self.strip, part.width, long), known=part.known))

    def values(self, moment: Moment) -> Values:
        return {
            "letter": Letter(self.letter),
            "seam": Length(self.seam),
            "lengths": Count(self.each, "length"),
        }


@dataclass(frozen=True, kw_only=True)
class HemSleeve(Operation):
    """Turn both short ends of the strip under twice."""

    strip: str
    letter: str
    seam: Exact

    message: ClassVar[str] = "hem-sleeve"

    def carry_out(self, table: Table) -> None:
        strip = table.take(self.strip, by=JoinSleeve)
        table.put(strip.sized(strip.width, strip.height - 4 * self.seam).having(HEMMED))

    def values(self, moment: Moment) -> Values:
        before, after = moment.before(self.strip), moment.after(self.strip)
        return {
            "letter": Letter(self.letter),
            "strip": Rectangle(before.width.told, before.height.told),
            "seam": Length(self.seam),
            "long": Length(after.height.told),
        }


@dataclass(frozen=True, kw_only=True)
class SewTube(Operation):
    """Fold the strip along its length and sew the long edges."""

    strip: str
    seam: Exact
    asked: Exact
    """Depth of the flat sleeve that the size asks for."""

    message: ClassVar[str] = "sew-tube"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        strip = table.take(self.strip)
        table.need(strip.is_(HEMMED), "hemmed ends", by=HemSleeve, part=strip)
        depth = strip.width.told / 2 - self.seam
        table.need(
            depth >= self.asked,
            "a strip as deep as the sleeve asks",
            part=strip,
            expected=table.text(self.asked),
            received=table.text(depth),
        )
        table.put(strip.having(TUBE))

    def values(self, moment: Moment) -> Values:
        depth = moment.after(self.strip).width.told / 2 - self.seam
        return {"seam": Length(self.seam), "depth": Length(depth)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("sleeve", (("detail", "make"),))


@dataclass(frozen=True, kw_only=True)
class SewSleeveTop(Operation):
    """Sew the upper fold of the sleeve to the back, just below the binding."""

    quilt: str
    strip: str

    message: ClassVar[str] = "sew-sleeve-top"
    tools: ClassVar[tuple[str, ...]] = ("needle",)

    def carry_out(self, table: Table) -> None:
        quilt, strip = table.take(self.quilt), table.take(self.strip)
        table.need(strip.is_(TUBE), "a tube", by=SewTube, part=strip)
        done = quilt.finished is not None
        table.need(done, "the binding sewn down", by=SewDownBinding, part=quilt)
        if quilt.finished is not None:
            short = strip.height.told <= quilt.finished[0]
            table.need(short, "a sleeve that is shorter than the quilt is wide", part=strip)
        table.put(quilt.having(TOP_SEWN))


@dataclass(frozen=True, kw_only=True)
class SewSleeveBottom(Operation):
    """Leave slack in the front layer and sew the lower fold and the ends down."""

    quilt: str
    shallow: bool
    """Whether exhibitions often ask for a deeper one."""
    exhibited: Exact

    message: ClassVar[str] = "sew-sleeve-bottom"
    tools: ClassVar[tuple[str, ...]] = ("needle",)

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        table.need(quilt.is_(TOP_SEWN), "the upper fold sewn", by=SewSleeveTop, part=quilt)
        table.put(quilt.without(TOP_SEWN).having(SLEEVE))

    def values(self, moment: Moment) -> Values:
        deep = Word("shallow" if self.shallow else "deep")
        return {"deep": deep, "exhibited": Length(self.exhibited)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("sleeve", (("detail", "attach"),))


@dataclass(frozen=True, kw_only=True)
class SewLabel(Operation):
    """Write a label and sew it to the back."""

    quilt: str

    message: ClassVar[str] = "sew-label"
    tools: ClassVar[tuple[str, ...]] = ("needle",)

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        done = quilt.finished is not None
        table.need(done, "every edge done", by=SewDownBinding, part=quilt)
        table.put(quilt.having(LABEL))
