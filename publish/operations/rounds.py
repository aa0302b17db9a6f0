"""Rounds of blocks: in which order they go on, strips of blocks, the strips sewn to the top.

In: keys of the top and of blocks, seams. Out: operations.
Invariant: left and right go on before top and bottom, which hold the corner blocks.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.borders import PINNED, PRESSED, PressBorder
from publish.operations.joining import (
    START,
    STOP,
    PressSeams,
    SewParts,
    clashes,
    joined,
    pressed,
    turned,
)
from publish.operations.layout import LayOut
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Rectangle, Several, Value, Values, Word, said

ORDER = "rounds in order"
PAIRS = {"sides": ("left", "right"), "ends": ("top", "bottom")}


@dataclass(frozen=True, kw_only=True)
class OrderRounds(Operation):
    """Set the rounds in order, from the centre outwards."""

    rounds: tuple[Value, ...]

    message: ClassVar[str] = "order-rounds"

    def carry_out(self, table: Table) -> None:
        table.put(Part(ORDER))

    def values(self, moment: Moment) -> Values:
        told = (
            said("nth-round", number=Count(n), what=what) for n, what in enumerate(self.rounds, 1)
        )
        return {"rounds": Several(tuple(told))}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("rounds")


@dataclass(frozen=True, kw_only=True)
class LayRound(Operation):
    """Lay the blocks of a round around the top."""

    number: int
    heaps: tuple[tuple[str, int], ...]
    alternate: bool
    """Whether blocks of one kind are pressed two ways and are laid by turns."""
    last: bool
    """Whether no round of blocks comes after it."""

    message: ClassVar[str] = "lay-round"

    def carry_out(self, table: Table) -> None:
        order = table.take(ORDER, by=OrderRounds)
        if not self.last:
            table.put(order)
        LayOut.carry_out(self, table)  # type: ignore[arg-type]

    def values(self, moment: Moment) -> Values:
        return {
            "round": Count(self.number),
            "alternate": Word("yes" if self.alternate else "no"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("rounds", (("round", str(self.number)),))


@dataclass(frozen=True, kw_only=True)
class SewRoundStrip(SewParts):
    """Sew the blocks of one side of a round, or of two alike, into strips."""

    which: str
    """`left`, `right`, `sides` for both, `top`, `bottom` or `ends`."""
    press: Value
    corners: bool
    """Whether its outer seams lie beside corner blocks, and go toward the middle."""

    message: ClassVar[str] = "sew-round-strip"

    def values(self, moment: Moment) -> Values:
        strip = moment.after(self.results[0].key)
        return {
            "which": Word(self.which),
            "parts": self.those,
            "seams": Count(len(self.parts) - 1),
            "press": self.press,
            "corners": Word("yes" if self.corners else "no"),
            "strip": Rectangle(strip.width.told, strip.height.told),
        }


@dataclass(frozen=True, kw_only=True)
class PressRoundStrip(PressSeams):
    """Press the seams of a strip of blocks; told with its sewing."""

    message: ClassVar[str] = ""


@dataclass(frozen=True, kw_only=True)
class PinRound(Operation):
    """Pin two strips of blocks to opposite sides of the top."""

    top: str
    strips: tuple[str, str]
    sides: str
    """`sides` or `ends`."""

    message: ClassVar[str] = "pin-round"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        top = table.look(self.top)
        table.need(top.is_(PRESSED), "the top pressed", by=PressBorder, part=top)
        for key in self.strips:
            strip = table.take(key)
            table.need(strip.is_(PRESSED), "strips pressed", by=PressRoundStrip, part=strip)
            table.put(strip.having(PINNED))

    def values(self, moment: Moment) -> Values:
        return {"sides": Word(self.sides)}


@dataclass(frozen=True, kw_only=True)
class SewRound(Operation):
    """Sew two strips of blocks to opposite sides of the top."""

    top: str
    strips: tuple[str, str]
    sides: str
    seam: Exact
    drafted: tuple[Exact, Exact]
    eased: int
    nests: bool

    message: ClassVar[str] = "sew-round"

    def carry_out(self, table: Table) -> None:
        first, last = (table.take(key) for key in self.strips)
        top, down = table.take(self.top), self.sides == "ends"
        parts = [turned(p, 3) if down else p for p in (first, top, last)]
        for strip in (first, last):
            table.need(strip.is_(PINNED), "strips pinned to the top", by=PinRound, part=strip)
        for one, two in ((parts[0], parts[1]), (parts[1], parts[2])):
            table.meet("the strip and the side of the top", one.height, two.height, one, two)
            clash = clashes(one, two) if self.nests and one.known and two.known else 0
            table.need(not clash, "allowances that lie opposite ways", by=PressSeams, part=two)
        table.sew("piecing", parts[1].height * 2)
        whole = joined(self.top, parts, self.seam)
        whole = turned(whole, 1) if down else whole
        larger = table.drafted(whole, *self.drafted, eased=self.eased)
        grown = replace(top, edges=larger.edges, known=larger.known, paper=larger.paper)
        table.put(grown.without(PRESSED))

    def values(self, moment: Moment) -> Values:
        return {"sides": Word(self.sides)}


@dataclass(frozen=True, kw_only=True)
class PressRound(Operation):
    """Press the seams of a round outward."""

    top: str
    sides: str

    message: ClassVar[str] = "press-round"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(not top.is_(PRESSED) or not top.known, "seams to press", by=SewRound, part=top)
        if self.sides == "ends":
            top = turned(pressed(turned(top, 3), (START, STOP)), 1)
        else:
            top = pressed(top, (START, STOP))
        table.put(top.having(PRESSED))

    def values(self, moment: Moment) -> Values:
        top = moment.after(self.top)
        return {"sides": Word(self.sides), "top": Rectangle(top.width.told, top.height.told)}
