"""Pressing the seams of a unit, and trimming it to what it is sewn to.

In: keys of heaps, the size to trim to. Out: operations, `Made`.
Invariant: a unit is ready to be sewn on when it is pressed and, where it is trimmed, trimmed.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from publish.operations.borders import PRESSED
from publish.operations.operation import Moment
from publish.operations.parts import Measure, Part
from publish.operations.piecing import SEWN, SewUnit, UnitWork
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Letter, Rectangle, Value, Values, Word

OPENED = "pressed, and not trimmed yet"


@dataclass(frozen=True, kw_only=True)
class Made:
    """What is told last of a unit: how many, how large, and what comes of it later."""

    count: int = 0
    shared: Value
    later: bool = False
    """Whether it is trimmed after the appliqué."""
    box: bool = True
    """Whether it is a rectangle, which can be measured."""

    def values(self, part: Part, the: Value) -> Values:
        return {
            "count": Count(self.count),
            "shared": self.shared,
            "later": Word("yes" if self.later else "no"),
            "box": Word("yes" if self.box else "no"),
            "the": the,
            "size": Rectangle(part.width.told, part.height.told),
        }


@dataclass(frozen=True, kw_only=True)
class PressUnit(UnitWork):
    """Press the seams of a kind of unit."""

    seams: int
    way: Value
    made: Made | None
    """None where it is trimmed yet."""
    drafted: tuple[Exact, Exact] | None = None
    """What it measures, as its heap lies; None for what is trimmed."""
    eased: int = 1

    message: ClassVar[str] = "press-unit"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    @property
    def says(self) -> str:
        return "press-unit" if self.made is None else "press-unit-made"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.unit, self.count)
        sewn = part.is_(SEWN) and (not part.is_(PRESSED) or not part.known)
        done = PRESSED if self.made is not None else OPENED
        table.need(sewn, "seams to press", by=SewUnit, part=part)
        if self.drafted is not None:
            part = table.drafted(part, *self.drafted, eased=self.eased)
        table.put(part.having(done), self.count)

    def values(self, moment: Moment) -> Values:
        part = moment.after(self.unit)
        told: dict[str, Value] = {"seams": Count(self.seams), "way": self.way}
        return told if self.made is None else {**told, **self.made.values(part, self.the)}


@dataclass(frozen=True, kw_only=True)
class TrimUnit(UnitWork):
    """Trim a unit that came out larger than what it is sewn to."""

    how: str
    """`added` where rounding adds up, `half` for two triangles whose seam ends in two corners,
    `leg` where it ends in one or none because an outer edge is wider, `offset` where it does so
    by as much at both ends, `points` for others."""
    before: Value | None
    to: tuple[Exact, Exact]
    """As its heap lies."""
    drafted: tuple[Exact, Exact]
    rounding: Exact
    """To the next of which pieces are cut."""
    seam: Exact
    made: Made
    by: Exact | None = None
    """Of `leg`, how long the short sides of `letter` are then; of `offset`, how far from the
    corners the seam ends."""
    letter: str = ""

    tools: ClassVar[tuple[str, ...]] = ("ruler", "rotary cutter")

    @property
    def says(self) -> str:
        return f"trim-unit-{self.how}" if self.before is None else "trim-unit-again"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.unit, self.count)
        table.need(part.is_(OPENED), "its seams pressed", by=PressUnit, part=part)
        sides = tuple(
            Measure(side.exact, to)
            for side, to in zip((part.width, part.height), self.to, strict=True)
        )
        trimmed = table.drafted(part.sized(*sides), *self.drafted)
        table.put(trimmed.having(PRESSED), self.count)

    def values(self, moment: Moment) -> Values:
        part = moment.after(self.unit)
        told: dict[str, Value] = {
            "rounding": Length(self.rounding),
            "seam": Length(self.seam),
            **self.made.values(part, self.the),
        }
        if self.by is not None:
            told |= {"by": Length(self.by), "letter": Letter(self.letter)}
        return told if self.before is None else {**told, "before": self.before}
