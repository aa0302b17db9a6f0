"""Sewing borders on: joining lengths, measuring, cutting to the measure, pinning, sewing.

In: keys of the top and of the strips, seams. Out: operations.
Invariant: a strip is as wide as it is deep and as high as it is long, whichever side of the
top it goes to; a border strip is never sewn on before it is cut to the top's own measure.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import ClassVar

from publish.operations.lengths import JoinLengths
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import LEFT, TOLERANCE, TOP, Measure, Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.units import maker_inches
from publish.words.values import (
    Count,
    Length,
    Letter,
    Rectangle,
    Said,
    Several,
    Value,
    Values,
    Word,
    said,
)

PRESSED = "pressed"
CUT = "cut to the measure"
PINNED = "pinned to the top"
MEASURED = {"down": "measured down", "across": "measured across"}
SIDES = {"sides": "down", "ends": "across"}
"""Which way the top is measured for the strips of two sides."""


QUARTERS = Fraction(24)
"""Inches from which on a side is pinned at its quarters too: common practice, no source."""


def border_called(index: int, count: int) -> Said:
    """Return what the words call the border at `index`, from 0, of so many."""
    place = "only" if count == 1 else "inner" if index == 0 else "other"
    if count > 1 and index == count - 1:
        place = "outer"
    elif count == 3 and index == 1:
        place = "middle"
    return said("border-name", place=Word(place), number=Count(index + 1))


@dataclass(frozen=True, kw_only=True)
class MeasureTop(Operation):
    """Measure the top through its middle: `down`, `across`, or both ways."""

    top: str
    ways: tuple[str, ...]
    opening: Value | None = None
    """What begins the first of a border's steps: which border it is, of which fabric."""
    border: Value
    index: int

    message: ClassVar[str] = "measure-top"
    tools: ClassVar[tuple[str, ...]] = ("tape measure",)

    @property
    def says(self) -> str:
        return "-".join(("measure-top", *self.ways))

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(top.is_(PRESSED), "the top is pressed", by=PressBorder, part=top)
        table.put(top.having(*(MEASURED[way] for way in self.ways)))

    def values(self, moment: Moment) -> Values:
        top = moment.after(self.top)
        found: dict[str, Value] = {
            "height": Length(top.height.told),
            "width": Length(top.width.told),
            "top": Rectangle(top.width.told, top.height.told),
            "border": self.border,
        }
        return found if self.opening is None else {**found, "opening": self.opening}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("borders", (("border", str(self.index)),)) if self.opening else None


@dataclass(frozen=True, kw_only=True)
class CutBorder(Operation):
    """Cut the strips of two sides to the measure of the top."""

    top: str
    strip: str
    letters: tuple[str, ...]
    sides: str
    """`sides` or `ends`."""
    exact: tuple[str, ...] = ()
    """Letters of the border's strips that are cut to length, with nothing to spare."""
    near: Exact
    """A measure that is further off than this is looked into."""
    count: int = 2

    message: ClassVar[str] = "cut-border"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter",)

    def carry_out(self, table: Table) -> None:
        top = table.look(self.top)
        state = MEASURED[SIDES[self.sides]]
        table.need(top.is_(state), f"the top is {state}", by=MeasureTop, part=top)
        side = top.height if self.sides == "sides" else top.width
        strip = table.take(self.strip, self.count)
        table.need(
            not top.known or strip.height.told + self.near >= side.told,
            "strips as long as the top",
            by=JoinLengths,
            part=strip,
            expected=table.text(side.told),
            received=table.text(strip.height.told),
        )
        told = min(side.told, strip.height.told, key=maker_inches)
        table.put(strip.sized(strip.width, Measure(side.exact, told)).having(CUT), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "letters": Several(tuple(map(Letter, self.letters))),
            "sides": Word(self.sides),
            "count": Count(self.count),
            "spare": Word("none" if self.exact and self.sides == "sides" else "some"),
            "exact": Several(tuple(map(Letter, self.exact))),
            "near": Length(self.near),
        }


@dataclass(frozen=True, kw_only=True)
class PinBorder(Operation):
    """Pin a strip to each of two sides, at the quarters too where a side is long."""

    strip: str
    sides: str
    quarters: bool
    count: int = 2

    message: ClassVar[str] = "pin-border"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        strip = table.take(self.strip, self.count)
        table.need(strip.is_(CUT), "strips cut to the measure", by=CutBorder, part=strip)
        table.put(strip.having(PINNED), self.count)

    def values(self, moment: Moment) -> Values:
        return {"sides": Word(self.sides), "where": Word("quarters" if self.quarters else "ends")}


@dataclass(frozen=True, kw_only=True)
class SewBorder(Operation):
    """Sew the strips to two opposite sides of the top."""

    top: str
    strip: str
    sides: str
    seam: Exact
    drafted: tuple[Exact, Exact]
    """What the top then measures by its draft, from raw edge to raw edge."""

    message: ClassVar[str] = "sew-border"

    def carry_out(self, table: Table) -> None:
        top, strip = table.take(self.top), table.take(self.strip, 2)
        table.need(strip.is_(PINNED), "strips pinned to the top", by=PinBorder, part=strip)
        side = top.edges[LEFT if self.sides == "sides" else TOP].length
        table.meet("the strips and the side of the top", side, strip.height, top, strip)
        table.sew("piecing", side * 2)
        deep = (strip.width - 2 * self.seam) * 2
        wide, high = (deep, None) if self.sides == "sides" else (None, deep)
        larger = grown(top, wide, high).without(*MEASURED.values(), PRESSED)
        larger = replace(larger, known=top.known and strip.known)
        # Each strip may come out a little deep, and what the top had over before stays.
        over = max(top.width.drift, top.height.drift, key=maker_inches) / TOLERANCE
        table.put(table.drafted(larger, *self.drafted, eased=2 + int(maker_inches(over) + 1)))

    def values(self, moment: Moment) -> Values:
        return {"sides": Word(self.sides), "seam": Length(self.seam)}


def grown(top: Part, wide: Measure | None, high: Measure | None) -> Part:
    """Return the top with strips on; no seam of what is inside them ends on its edges."""
    larger = top.sized(
        top.width + wide if wide else top.width, top.height + high if high else top.height
    )
    return replace(larger, edges=tuple(replace(edge, seams=()) for edge in larger.edges))


@dataclass(frozen=True, kw_only=True)
class PressBorder(Operation):
    """Press the seams of a border towards it."""

    top: str
    sides: str = "sides"

    message: ClassVar[str] = "press-border"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(not top.is_(PRESSED) or not top.known, "a seam to press", by=SewBorder, part=top)
        table.put(top.having(PRESSED))

    def values(self, moment: Moment) -> Values:
        top = moment.after(self.top)
        return {"sides": Word(self.sides), "top": Rectangle(top.width.told, top.height.told)}
