"""Binding an edge: trimming it, sewing the binding on, turning corners, closing, finishing.

In: keys of the quilt and of the binding, where to begin, how long the gap is. Out: operations.
Invariant: an edge is bound stretch by stretch, clockwise from where the binding begins; the
length of binding that is left follows from what was joined and what was sewn.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import ClassVar

from publish.operations.binding_strips import FOLDED, JoinOnDiagonal, PressInHalf
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.units import EIGHTH, inches_text, maker_inches
from publish.words.values import Length, Rectangle, Values, Word

TRIMMED = "layers level"
BOUND = "bound in front"
STARTED = "binding begun"
CLOSED = "binding closed"
NOTHING = Fraction(0)


@dataclass(frozen=True, kw_only=True)
class TrimLevel(Operation):
    """Trim batting and backing level with the top, and square the corners."""

    quilt: str

    message: ClassVar[str] = "trim-level"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        table.need(bool(quilt.layers), "layers under the top", part=quilt)
        table.need(not quilt.basting, "the basting out", part=quilt)
        for layer in quilt.layers:
            reaches = layer.width.told >= quilt.width.told
            table.need(
                reaches and layer.height.told >= quilt.height.told,
                f"{layer.name} that reaches the edge",
                part=quilt,
            )
        level = tuple(replace(n, width=quilt.width, height=quilt.height) for n in quilt.layers)
        table.put(replace(quilt, layers=level).having(TRIMMED))

    def values(self, moment: Moment) -> Values:
        quilt = moment.after(self.quilt)
        return {"quilt": Rectangle(quilt.width.told, quilt.height.told)}


@dataclass(frozen=True, kw_only=True)
class StartBinding(Operation):
    """Lay the binding on and sew from `at` on `side` to the corner, a tail left loose."""

    quilt: str
    binding: str
    side: int
    at: Exact
    """From the side's first corner, clockwise."""
    tail: Exact
    seam: Exact

    message: ClassVar[str] = "start-binding"
    tools: ClassVar[tuple[str, ...]] = ("walking foot", "clips")

    def carry_out(self, table: Table) -> None:
        quilt, strip = table.take(self.quilt), table.take(self.binding, by=JoinOnDiagonal)
        table.need(quilt.is_(TRIMMED), "the layers trimmed level", by=TrimLevel, part=quilt)
        table.need(strip.is_(FOLDED), "the binding pressed in half", by=PressInHalf, part=strip)
        edge = quilt.edges[self.side]
        inside = 0 < self.at < edge.length.exact - self.seam
        table.need(inside, "a start within one side", part=quilt)
        bare = not any(e.stretches for e in quilt.edges)
        table.need(bare, "an edge that is not bound yet", part=quilt)
        sewn = edge.with_stretch(self.at, edge.length.exact - self.seam, BOUND)
        edges = tuple(sewn if n == self.side else e for n, e in enumerate(quilt.edges))
        table.put(replace(quilt, edges=edges).having(STARTED))
        table.put(replace(strip, key=_attached(self.binding)))

    def values(self, moment: Moment) -> Values:
        edge = moment.after(self.quilt).edges[self.side].length
        return {
            "tail": Length(self.tail),
            "seam": Length(self.seam),
            "from": Length(maker_inches(edge.told - self.at)),
            "place": Word("middle" if abs(edge.exact - 2 * self.at) <= EIGHTH * 2 else "corner"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "start"),))


@dataclass(frozen=True, kw_only=True)
class TurnCorner(Operation):
    """Fold the binding at a corner and sew the next side, to its corner or to `until`."""

    quilt: str
    side: int
    """The side that is sewn next, clockwise."""
    until: Exact | None = None
    seam: Exact

    message: ClassVar[str] = "turn-corner"

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        before, edge = quilt.edges[(self.side - 1) % 4], quilt.edges[self.side]
        table.need(quilt.is_(STARTED), "the binding begun", by=StartBinding, part=quilt)
        reached = before.length.exact - self.seam
        table.need(
            any(s.done == BOUND and s.stop >= reached for s in before.stretches),
            "the side before sewn to its corner",
            by=TurnCorner,
            part=quilt,
        )
        stop = edge.length.exact - self.seam if self.until is None else self.until
        free = not any(s.start < stop for s in edge.stretches)
        table.need(free, "a side that is not bound yet", part=quilt)
        edges = list(quilt.edges)
        edges[(self.side - 1) % 4] = before.with_stretch(reached, before.length.exact, BOUND)
        edges[self.side] = edge.with_stretch(NOTHING, stop, BOUND)
        table.put(replace(quilt, edges=tuple(edges)))

    def values(self, moment: Moment) -> Values:
        return {"seam": Length(self.seam)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "corner"),))


@dataclass(frozen=True, kw_only=True)
class CloseBinding(Operation):
    """Join the two tails over the gap, on the diagonal or one tucked into the other."""

    quilt: str
    binding: str
    side: int
    gap: tuple[Exact, Exact]
    seam: Exact
    way: str
    """`diagonal` or `tucked`."""
    least: Exact
    """Of a gap in which two hands and a machine can join tails so."""

    message: ClassVar[str] = "close-binding"

    @property
    def says(self) -> str:
        return f"close-binding-{self.way}"

    def carry_out(self, table: Table) -> None:
        quilt, strip = table.take(self.quilt), table.take(_attached(self.binding), by=StartBinding)
        start, stop = self.gap
        self._turned(table, quilt)
        room = stop - start >= self.least
        table.need(
            room,
            "a gap long enough to join the tails",
            by=StartBinding,
            part=quilt,
            expected=inches_text(self.least),
            received=inches_text(stop - start),
        )
        around = quilt.width.exact * 2 + quilt.height.exact * 2
        asked = around + strip.width.told
        table.need(
            not quilt.known or strip.height.exact >= asked,
            "binding enough to go round and overlap",
            by=JoinOnDiagonal,
            part=strip,
            expected=inches_text(asked),
            received=inches_text(strip.height.exact),
        )
        table.sew("binding", around)
        edges = list(quilt.edges)
        edges[self.side] = edges[self.side].with_stretch(start, stop, BOUND)
        table.put(replace(quilt, edges=tuple(edges)).having(CLOSED))

    def _turned(self, table: Table, quilt: Part) -> None:
        """Note a side that is not bound from corner to corner, but for the gap."""
        start, stop = self.gap
        for n, edge in enumerate(quilt.edges):
            far = edge.length.exact
            ends = edge.covers(NOTHING, start, BOUND) and edge.covers(stop, far, BOUND)
            ready = edge.covers(NOTHING, far, BOUND) or (n == self.side and ends)
            table.need(ready, "every corner turned", by=TurnCorner, part=quilt)

    def values(self, moment: Moment) -> Values:
        strip = moment.before(_attached(self.binding))
        return {
            "gap": Length(self.gap[1] - self.gap[0]),
            "overlap": Length(strip.width.told),
            "seam": Length(self.seam),
        }


@dataclass(frozen=True, kw_only=True)
class SewDownBinding(Operation):
    """Turn the fold to the back and sew it down by hand, with a mitre at each corner."""

    quilt: str
    width: Exact
    seam: Exact

    message: ClassVar[str] = "sew-down-binding"
    tools: ClassVar[tuple[str, ...]] = ("hand needle",)

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        table.need(quilt.is_(CLOSED), "the binding closed", by=CloseBinding, part=quilt)
        # Folded, the strip lies a seam wide in front, as wide behind, and one of its own
        # allowances under the stitching: less does not reach the stitching at the back.
        table.need(
            self.width >= 6 * self.seam,
            "binding wide enough to cover its stitching",
            part=quilt,
            expected=inches_text(6 * self.seam),
            received=inches_text(self.width),
        )
        edges = tuple(replace(edge, state="bound", stretches=()) for edge in quilt.edges)
        sides = quilt.width.exact - 2 * self.seam, quilt.height.exact - 2 * self.seam
        table.sew("binding by hand", quilt.width.exact * 2 + quilt.height.exact * 2)
        table.put(replace(quilt, edges=edges, finished=sides))

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "finish"),))


def _attached(binding: str) -> str:
    """Return what a binding is called while it hangs at the quilt."""
    return f"{binding}, sewn on"
