"""Making a binding: joining strips on the diagonal, or one bias strip from a square.

In: keys of the pieces and of the binding, its width, seams. Out: operations.
Invariant: how long a bias strip is follows from the lines that fit, each with the seams that
it loses, and not from the area of the square.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part, measured, sheet
from publish.operations.table import Table
from publish.surd import ROOT_2
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Letter, Rectangle, Values

FOLDED = "pressed in half"


@dataclass(frozen=True, kw_only=True)
class JoinOnDiagonal(Operation):
    """Join binding strips on the diagonal; a single strip is only taken up."""

    piece: str
    letter: str
    binding: str
    count: int
    seam: Exact
    least: Exact
    """How long the joined strip must be."""

    message: ClassVar[str] = "join-on-diagonal"

    def carry_out(self, table: Table) -> None:
        strip = table.take(self.piece, self.count)
        long = strip.height * self.count - strip.width * (self.count - 1)
        table.sew("binding", strip.width.exact * ROOT_2 * (self.count - 1))
        table.put(
            _enough(
                table,
                replace(sheet(self.binding, strip.width, long), known=strip.known),
                self.least,
            )
        )

    def values(self, moment: Moment) -> Values:
        strip = moment.before(self.piece)
        return {
            "letter": Letter(self.letter),
            "count": Count(self.count),
            "strips": Count(self.count, "strip"),
            "width": Length(strip.width.told),
            "seam": Length(self.seam),
            "length": Length(self.least),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "join"),)) if self.count > 1 else None


@dataclass(frozen=True, kw_only=True)
class CutBiasSquare(Operation):
    """Cut a square on one diagonal and sew the triangles together by their straight edges."""

    piece: str
    letter: str
    sheared: str
    """Key of the slanting shape that comes of it."""
    seam: Exact

    message: ClassVar[str] = "cut-bias-square"

    def carry_out(self, table: Table) -> None:
        square = table.take(self.piece)
        table.need(square.width == square.height or not square.known, "a square", part=square)
        # The bias edges stay as long as the diagonal; they come nearer to each other by what
        # the seam takes, which lies at 45 degrees to them.
        side = square.width.exact
        deep = measured((side - 2 * self.seam) / ROOT_2)
        table.sew("binding", side)
        table.put(replace(sheet(self.sheared, measured(side * ROOT_2), deep), known=square.known))

    def values(self, moment: Moment) -> Values:
        square = moment.before(self.piece)
        return {
            "letter": Letter(self.letter),
            "square": Rectangle(square.width.told, square.height.told),
            "seam": Length(self.seam),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "bias"),))


@dataclass(frozen=True, kw_only=True)
class RuleBias(Operation):
    """Rule lines as far apart as the strip is wide, parallel to the bias edges."""

    sheared: str
    width: Exact

    message: ClassVar[str] = "rule-bias"
    tools: ClassVar[tuple[str, ...]] = ("ruler", "marker")

    def carry_out(self, table: Table) -> None:
        shape = table.take(self.sheared)
        lines = int(shape.height.exact // self.width)
        table.need(lines > 0, "room for a strip", by=CutBiasSquare, part=shape)
        table.put(replace(shape, marks=shape.marks | {f"{lines} strips"}))

    def values(self, moment: Moment) -> Values:
        return {"width": Length(self.width)}


@dataclass(frozen=True, kw_only=True)
class SewBiasTube(Operation):
    """Join the slanting ends, shifted by one line, into a tube."""

    sheared: str
    tube: str
    seam: Exact

    message: ClassVar[str] = "sew-bias-tube"

    def carry_out(self, table: Table) -> None:
        shape = table.take(self.sheared)
        table.need(bool(shape.marks), "ruled lines", by=RuleBias, part=shape)
        table.sew("binding", shape.height.exact * ROOT_2)
        table.put(replace(shape, key=self.tube))

    def values(self, moment: Moment) -> Values:
        return {"seam": Length(self.seam)}


@dataclass(frozen=True, kw_only=True)
class CutBiasTube(Operation):
    """Cut along the line, round and round, into one strip."""

    tube: str
    binding: str
    width: Exact
    seam: Exact
    least: Exact

    message: ClassVar[str] = "cut-bias-tube"
    tools: ClassVar[tuple[str, ...]] = ("scissors",)

    def carry_out(self, table: Table) -> None:
        tube = table.take(self.tube)
        turns = int(tube.height.exact // self.width)
        # Each turn is as long as the bias edge; where one runs on into the next, the tube's
        # seam, at 45 degrees to it, takes its two allowances.
        long = turns * tube.width.exact - max(0, turns - 1) * 2 * self.seam * ROOT_2
        strip = sheet(self.binding, measured(self.width), measured(long))
        table.put(_enough(table, replace(strip, known=tube.known), self.least))

    def values(self, moment: Moment) -> Values:
        return {"length": Length(self.least)}


@dataclass(frozen=True, kw_only=True)
class PressInHalf(Operation):
    """Press the joined strip in half along its length."""

    binding: str

    message: ClassVar[str] = "press-in-half"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        table.put(table.take(self.binding, by=JoinOnDiagonal).having(FOLDED))

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "press"),))


def _enough(table: Table, strip: Part, least: Exact) -> Part:
    """Return a joined strip; note where it is too short."""
    table.need(
        strip.height.told >= least,
        "a binding as long as it must be",
        part=strip,
        expected=table.text(least),
        received=table.text(strip.height.told),
    )
    return strip
