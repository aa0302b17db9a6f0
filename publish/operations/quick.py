"""Units made several at once: triangles, hourglasses, geese, flipped corners, strip sets.

In: keys of squares or strips, how many make how many. Out: operations.
Invariant: a method gives what its squares are large enough for; units are made in whole
batches, and what is more than needed is spare.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import ClassVar, TypedDict

from publish.operations.borders import PRESSED
from publish.operations.joining import joined
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Measure, Part, sheet
from publish.operations.piecing import UnitWork
from publish.operations.table import Table
from publish.surd import ROOT_2
from publish.surd import Length as Exact
from publish.units import maker_inches
from publish.words.values import Count, Length, Rectangle, Value, Values

Pair = tuple[Exact, Exact]


@dataclass(frozen=True)
class Batch:
    """What goes into one batch: so many of each heap."""

    heaps: tuple[tuple[str, int], ...]
    count: int
    """Of batches."""
    each: int
    """Units that a batch gives."""

    @property
    def given(self) -> int:
        return self.count * self.each


class How(TypedDict):
    """What a planner hands to each operation of a method."""

    method: str
    batch: Batch
    to: Pair
    seam: Exact
    figured: str
    shown: bool
    name: Value
    told: tuple[tuple[str, Value], ...]


@dataclass(frozen=True, kw_only=True)
class QuickWork(UnitWork):
    """What operations of a quicker method share."""

    method: str
    batch: Batch
    to: Pair
    """Width and height that a unit is trimmed to, as its heap lies."""
    seam: Exact
    figured: str
    shown: bool
    """Whether it has a figure: the first time that a method is used."""
    name: Value
    told: tuple[tuple[str, Value], ...]
    """What its words name besides: squares, letters, the way that it is pressed."""

    tag_: ClassVar[str] = ""

    @property
    def says(self) -> str:
        return f"{self.method}-{self.tag_}"

    @property
    def sewn(self) -> str:
        return f"{self.unit} sewn"

    @property
    def halves(self) -> str:
        return f"{self.unit} in halves"

    def values(self, moment: Moment) -> Values:
        made, spare = self.batch.given, self.batch.given - self.count
        return {
            **dict(self.told),
            "seam": Length(self.seam),
            "often": Count(self.batch.count),
            "made": Count(made),
            "needed": Count(self.count),
            "spare": Count(spare),
            "trim": Rectangle(*self.to),
            "name": self.name,
            "the": self.the,
        }

    def figure(self, moment: Moment) -> Shown | None:
        if not self.shown:
            return None
        values = (("method", self.method), ("unit", self.figured), ("stage", self.tag_))
        return Shown("quick", values)


@dataclass(frozen=True, kw_only=True)
class SewSquares(QuickWork):
    """Mark squares on the diagonal, lay them together and sew beside the line."""

    tag_: ClassVar[str] = "sew"
    tools: ClassVar[tuple[str, ...]] = ("marker",)

    def carry_out(self, table: Table) -> None:
        squares = [table.take(key, n * self.batch.count) for key, n in self.batch.heaps]
        wide, high = self._raw(squares)
        for side, asked in ((wide, self.to[0]), (high, self.to[1])):
            known = all(square.known for square in squares)
            enough = maker_inches(side.told) >= maker_inches(asked)
            table.need(
                not known or enough,
                "squares that are large enough",
                part=squares[0],
                expected=table.text(asked),
                received=table.text(side.told),
            )
        diagonal = max((s.width for s in squares), key=lambda m: m.told).exact * ROOT_2
        table.sew("piecing", 2 * diagonal * self.batch.count)
        known = all(square.known for square in squares)
        table.put(replace(sheet(self.sewn, wide, high), known=known), self.batch.count)

    def _raw(self, squares: Sequence[Part]) -> tuple[Measure, Measure]:
        """Return what a unit measures before it is trimmed, by the squares it is made of.

        A square sewn a seam from its diagonal on both sides and cut gives units that are
        √2 seams smaller; one that is cut twice gives twice that less.
        """
        sides = sorted((s.width for s in squares), key=lambda m: m.told, reverse=True)
        large, small = sides[0], sides[-1]
        if self.method == "geese":
            return large - 2 * self.seam * ROOT_2, small - self.seam * ROOT_2
        if self.method == "corners":
            base = max(squares, key=lambda s: s.width.told * s.height.told)
            lies = base.width.told == self.to[0] or base.height.told != self.to[0]
            return (base.width, base.height) if lies else (base.height, base.width)
        lost = 2 if self.method == "hourglasses" else 1
        side = small - lost * self.seam * ROOT_2
        return side, side


@dataclass(frozen=True, kw_only=True)
class CutHalves(QuickWork):
    """Cut on the line, and sew the second time across."""

    tag_: ClassVar[str] = "cut"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "marker")

    def carry_out(self, table: Table) -> None:
        part = table.take(self.sewn, self.batch.count, by=SewSquares)
        table.put(replace(part, key=self.halves), self.batch.count)


@dataclass(frozen=True, kw_only=True)
class TrimUnits(QuickWork):
    """Cut apart, press open and trim to size."""

    tag_: ClassVar[str] = "trim"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler", "iron")
    halved: bool
    """Whether the work was cut and sewn a second time."""
    drafted: Pair

    def carry_out(self, table: Table) -> None:
        by: type[Operation] = CutHalves if self.halved else SewSquares
        part = table.take(self.halves if self.halved else self.sewn, self.batch.count, by=by)
        wide, high = (Measure(e, t) for e, t in zip(self.drafted, self.to, strict=True))
        unit = replace(sheet(self.unit, wide, high, PRESSED), known=part.known)
        if self.batch.given > self.count:
            table.spare.add(self.unit)
        table.put(unit, self.batch.given)


@dataclass(frozen=True, kw_only=True)
class SewStripSet(QuickWork):
    """Sew strips together along their long edges."""

    tag_: ClassVar[str] = "sew"
    tools: ClassVar[tuple[str, ...]] = ("iron",)
    strips: tuple[str, ...]
    """In their order."""

    def carry_out(self, table: Table) -> None:
        found = {
            key: table.take(key, self.batch.count * self.strips.count(key))
            for key in dict.fromkeys(self.strips)
        }
        parts = [_upright(found[key]) for key in self.strips]
        whole = joined(self.sewn, parts, self.seam)
        table.sew("piecing", whole.height * (self.batch.count * (len(parts) - 1)))
        table.put(whole, self.batch.count)


def _upright(strip: Part) -> Part:
    """Return a strip with its length up and down."""
    wide, high = strip.deep, strip.long
    return strip.sized(wide, high)


@dataclass(frozen=True, kw_only=True)
class CutSegments(QuickWork):
    """Cut a strip set across into units."""

    tag_: ClassVar[str] = "cut"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")
    segment: Exact
    drafted: Pair
    across: bool
    """Whether the strips of a unit lie side by side in its heap."""

    def carry_out(self, table: Table) -> None:
        strip = table.take(self.sewn, self.batch.count, by=SewStripSet)
        most = int(strip.height.told / self.segment)
        table.need(
            not strip.known or most * self.batch.count >= self.count,
            "strip sets long enough",
            part=strip,
            expected=str(self.count),
            received=str(most * self.batch.count),
        )
        wide, high = strip.width, Measure(self.drafted[1 if self.across else 0], self.segment)
        sides = (wide, high) if self.across else (high, wide)
        unit = replace(sheet(self.unit, *sides, PRESSED), known=strip.known)
        table.put(table.drafted(unit, *self.drafted, eased=8), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            **super().values(moment),
            "segment": Length(self.segment),
            "sets": Count(self.batch.count, "strip-set"),
            "each": Count(self.batch.each),
        }
