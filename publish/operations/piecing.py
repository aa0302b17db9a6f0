"""Piecing a unit: laying its parts out, pinning, sewing, pressing, trimming.

In: keys of heaps, how their parts lie, seams. Out: operations.
Invariant: what is joined by straight seams is as large as its parts less the seams; what is
joined at an angle or along a curve is as large as its pieces were cut for.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import ClassVar, TypedDict

from publish.operations.borders import PINNED, PRESSED
from publish.operations.joining import Taken, joined, turned
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Measure, Part, sheet
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Said, Value, Values, Word

SEWN, CLIPPED = "sewn", "clipped and pinned along its curve"


class Of(TypedDict):
    """Which unit an operation is on, for a planner to hand on."""

    block: str
    unit: str
    count: int
    the: Value


@dataclass(frozen=True, kw_only=True)
class UnitWork(Operation):
    """What operations on a kind of unit share."""

    block: str
    """The block whose section tells it."""
    unit: str
    """The heap."""
    count: int
    the: Value
    """What it is called, with its article."""

    @property
    def laid(self) -> str:
        """Return the heap of units whose parts lie side by side and are not sewn yet."""
        return f"{self.unit} laid out"


@dataclass(frozen=True, kw_only=True)
class LayOutUnit(UnitWork):
    """Lay the parts of a unit out as they are sewn."""

    parts: tuple[Taken, ...]
    join: str
    """`across` or `down` for seams straight across, else as the draft has it."""
    seam: Exact
    drafted: tuple[Exact, Exact]
    told: tuple[Exact, Exact]
    """What an angled or curved unit measures, before it is trimmed."""
    quarters: int
    """How the unit lies turned against its heap."""
    opener: Said
    those: Value
    turned: bool
    choose: bool
    """Whether its parts are pressed two ways, of which neighbours take one each."""
    shown: tuple[str, str]
    """Kind of figure, and its stage; both empty where another operation shows it."""
    name: Value
    figured: str
    """The kind of unit that the figure shows."""

    message: ClassVar[str] = "lay-out-unit"

    def carry_out(self, table: Table) -> None:
        found = {}
        for key in dict.fromkeys(p.key for p in self.parts):
            many = self.count * sum(p.key == key for p in self.parts)
            part = table.take(key, many)
            ready = key.startswith("piece ") or part.is_(PRESSED)
            table.need(ready, "its seams pressed", by="press-unit", part=part)
            found[key] = part
        parts = [turned(found[p.key], p.quarters) for p in self.parts]
        whole = self._whole(table, parts)
        table.put(replace(whole, key=self.laid), self.count)

    def _whole(self, table: Table, parts: Sequence[Part]) -> Part:
        if self.join not in ("across", "down"):
            wide, high = (Measure(e, t) for e, t in zip(self.drafted, self.told, strict=True))
            whole = sheet(self.unit, wide, high)
            whole = replace(whole, known=all(p.known for p in parts))
            return turned(whole, -self.quarters)
        lying = [turned(p, 3) for p in parts] if self.join == "down" else parts
        for one, two in pairwise(lying):
            table.meet("the edges", one.height, two.height, one, two)
        whole = joined(self.unit, [_plain(p) for p in lying], self.seam)
        return turned(whole, (1 if self.join == "down" else 0) - self.quarters)

    def values(self, moment: Moment) -> Values:
        known = ("across", "down", "slant", "curve")
        return {
            "opener": self.opener,
            "parts": self.those,
            "how": Word(self.join if self.join in known else "picture"),
            "turned": Word("yes" if self.turned else "no"),
            "choose": Word("yes" if self.choose else "no"),
            "name": self.name,
            "stage": Word(self.shown[1] or "joined"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        kind, stage = self.shown
        if not kind:
            return None
        staged = (("stage", stage),) if stage else ()
        return Shown(kind, (("unit", self.figured), *staged))


def _plain(part: Part) -> Part:
    """Return a part without where its seams end: units may be turned to lie the other way."""
    return replace(part, edges=tuple(replace(edge, seams=()) for edge in part.edges))


@dataclass(frozen=True, kw_only=True)
class PinUnit(UnitWork):
    """Pin the parts of a unit where seams meet."""

    first: bool
    """Whether it is told how parts are put together."""
    several: bool
    nests: bool

    tools: ClassVar[tuple[str, ...]] = ("pins",)

    @property
    def says(self) -> str:
        return "pin-unit" if self.nests else "pin-unit-both-sides"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.laid, self.count, by=LayOutUnit)
        table.put(part.having(PINNED), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "first": Word("yes" if self.first else "no"),
            "several": Word("yes" if self.several else "no"),
        }


@dataclass(frozen=True, kw_only=True)
class PinCurve(UnitWork):
    """Clip the edge that curves in and pin it to the other."""

    over: Value
    under: Value
    interval: Exact
    depth: Exact

    message: ClassVar[str] = "pin-curve"
    tools: ClassVar[tuple[str, ...]] = ("pins", "scissors")

    def carry_out(self, table: Table) -> None:
        part = table.take(self.laid, self.count, by=LayOutUnit)
        table.put(part.having(CLIPPED), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "over": self.over,
            "under": self.under,
            "interval": Length(self.interval),
            "depth": Length(self.depth),
        }


@dataclass(frozen=True, kw_only=True)
class SewUnit(UnitWork):
    """Sew the parts of a unit together."""

    how: str
    """`straight`, `half`, `slant`, `curve` or `set-in`."""
    before: Value | None
    """The unit for which this kind of seam was told in full."""
    pinned: bool
    clipped: bool
    several: bool
    seam: Exact
    length: Exact
    """Of the seams of one unit, as it is drafted."""
    pivots: int
    over: Value
    name: Value
    figured: str
    shown: bool
    """Whether this step shows the curve sewn."""

    @property
    def says(self) -> str:
        return f"sew-unit-{self.how}" if self.before is None else f"sew-unit-{self.how}-again"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.laid, self.count, by=LayOutUnit)
        table.need(not self.pinned or part.is_(PINNED), "its seams pinned", by=PinUnit, part=part)
        ready = not self.clipped or part.is_(CLIPPED)
        table.need(ready, "its curve pinned", by=PinCurve, part=part)
        table.sew("piecing", self.length * self.count)
        table.put(replace(part.without(PINNED, CLIPPED), key=self.unit).having(SEWN), self.count)

    def values(self, moment: Moment) -> Values:
        told: dict[str, Value] = {
            "seam": Length(self.seam),
            "several": Word("yes" if self.several else "no"),
            "pinned": Word("yes" if self.pinned else "no"),
            "pivots": Count(self.pivots),
            "over": self.over,
            "name": self.name,
        }
        return told if self.before is None else {**told, "before": self.before}

    def figure(self, moment: Moment) -> Shown | None:
        if not self.shown:
            return None
        return Shown("curve", (("unit", self.figured), ("stage", "press")))
