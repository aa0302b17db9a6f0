"""Cutting cloth that is sold ready cut: fat quarters, squares, strips.

In: keys of sheets and pieces, counts, exact lengths. Out: operations.
Invariant: what is cut from a sheet fits it, and is as large as the piece that it is put down as.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from publish.operations.cutting import CUTTER, SET_OUT, CutOff, SetOutCutting
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.table import Table
from publish.words.values import Count, Length, Named, Said, Several, Value, Values, Word, said


@dataclass(frozen=True)
class SheetStrips:
    """Strips alike that a square, a fat quarter or a strip as sold is cut into."""

    count: int
    depth: Fraction
    pieces: tuple[CutOff, ...]


@dataclass(frozen=True, kw_only=True)
class CutReadyCut(Operation):
    """Cut sheets of cloth that are sold ready cut, all in one way."""

    cloth: str
    fabric: str
    name: str
    number: int
    of: int
    kind: str
    """As in `SoldAs`: `fat quarter`, `square` ..."""
    count: int
    strips: tuple[SheetStrips, ...]
    lengthwise: bool = False
    whole: bool = False
    """Whether each is used as it is, as one piece."""
    tools: ClassVar[tuple[str, ...]] = (CUTTER, "ruler")
    trims: ClassVar[bool] = True

    @property
    def says(self) -> str:
        if self.whole:
            return "use-ready-cut"
        return "cut-ready-strip" if self.kind == "strip" else "cut-ready-cut"

    def carry_out(self, table: Table) -> None:
        cloth = table.take(self.cloth, self.count)
        table.need(cloth.is_(SET_OUT), "its layout", by=SetOutCutting, part=cloth)
        sides = cloth.width.told, cloth.height.told
        wide, long = reversed(sides) if self.lengthwise else sides
        deep = sum((s.depth * s.count for s in self.strips), Fraction(0))
        table.need(deep <= long, f"room for its strips in each {self.kind}", part=cloth)
        for strip in self.strips:
            across = sum((c.lies[0] * c.count for c in strip.pieces), Fraction(0))
            table.need(across <= wide, f"room for its pieces in each {self.kind}", part=cloth)
            for cut in strip.pieces:
                cut.need(table)
                table.put(cut.part, cut.count * strip.count * self.count)

    def values(self, moment: Moment) -> Values:
        noun = self.kind.replace(" ", "-")
        pieces = [cut.told for strip in self.strips for cut in strip.pieces]
        return {
            "fabric": Named(self.name),
            "opens": Word("fabric" if self.number == 1 else "strip"),
            "marked": Word("yes" if self.of > 1 else "no"),
            "number": Count(self.number),
            "count": Count(self.count),
            "sheets": Count(self.count, noun),
            "strips": Several(tuple(_strips(strip) for strip in self.strips)),
            "way": Word("length" if self.lengthwise else "width"),
            "pieces": Several(tuple(pieces)),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("cutting-layout", (("fabric", self.fabric),))


def _strips(strip: SheetStrips) -> Said:
    pieces: tuple[Value, ...] = tuple(cut.told for cut in strip.pieces)
    return said(
        "cut-ready-strips",
        strips=Count(strip.count, "strip"),
        count=Count(strip.count),
        depth=Length(strip.depth),
        pieces=Several(pieces),
    )
