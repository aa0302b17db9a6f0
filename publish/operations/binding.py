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
from publish.surd import Surd
from publish.units import EIGHTH, round_near
from publish.words.values import Length, Rectangle, Values, Word

TRIMMED = "layers level"
BOUND = "bound in front"
STARTED = "binding begun"
CLOSED = "binding closed"
POCKET = "its beginning folded in"
MET = "its tails trimmed to meet"
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
    """Lay the binding on and sew from `at` on `side` to the corner, a tail left loose.

    `tucked` folds the end of the tail in first, for the other to be laid inside.
    """

    quilt: str
    binding: str
    side: int
    at: Exact
    """From the side's first corner, clockwise."""
    tail: Exact
    seam: Exact
    middle: bool
    longer: bool
    """Whether only the longer sides will do."""
    tucked: bool = False
    ruler: Fraction = EIGHTH
    """What a length on the diagonal is told to."""

    message: ClassVar[str] = "start-binding"
    tools: ClassVar[tuple[str, ...]] = ("walking foot", "clips")

    @property
    def says(self) -> str:
        return "start-binding-tucked" if self.tucked else "start-binding"

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
        table.put(replace(strip, key=attached(self.binding)).having(*[POCKET] * self.tucked))

    def values(self, moment: Moment) -> Values:
        edge = moment.after(self.quilt).edges[self.side].length
        before = edge.told - self.at
        if isinstance(before, Surd):
            before = round_near(before, self.ruler)
        return {
            "tail": Length(self.tail),
            "seam": Length(self.seam),
            "from": Length(before),
            "place": Word("middle" if self.middle else "corner"),
            "side": Word("longer" if self.longer else "any"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "tuck" if self.tucked else "start"),))


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
class MeetTails(Operation):
    """Trim the two tails in the gap, so that they overlap for a diagonal join."""

    quilt: str
    binding: str
    side: int
    gap: tuple[Exact, Exact]
    least: Exact
    """Of a gap in which tails can be joined under a needle."""

    message: ClassVar[str] = "meet-tails"

    def carry_out(self, table: Table) -> None:
        quilt, strip = table.look(self.quilt), table.take(attached(self.binding), by=StartBinding)
        _all_turned(table, quilt, self.side, self.gap)
        gap = self.gap[1] - self.gap[0]
        table.need(
            gap >= self.least,
            "a gap long enough to join the tails",
            by=StartBinding,
            part=quilt,
            expected=table.text(self.least),
            received=table.text(gap),
        )
        _goes_round(table, quilt, strip, strip.width.told)
        table.put(strip.having(MET))

    def values(self, moment: Moment) -> Values:
        strip = moment.after(attached(self.binding))
        return {"gap": Length(self.gap[1] - self.gap[0]), "overlap": Length(strip.width.told)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "close"),))


@dataclass(frozen=True, kw_only=True)
class JoinTails(Operation):
    """Join the two tails on the diagonal and sew the rest of the binding down."""

    quilt: str
    binding: str
    side: int
    gap: tuple[Exact, Exact]
    seam: Exact

    message: ClassVar[str] = "join-tails"

    def carry_out(self, table: Table) -> None:
        quilt, strip = table.take(self.quilt), table.take(attached(self.binding), by=StartBinding)
        table.need(strip.is_(MET), "tails that overlap by their width", by=MeetTails, part=strip)
        table.put(_closed(table, quilt, self.side, self.gap))

    def values(self, moment: Moment) -> Values:
        return {"seam": Length(self.seam)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "tails"),))


@dataclass(frozen=True, kw_only=True)
class TuckTail(Operation):
    """Lay the end of the binding inside its folded beginning and sew over both."""

    quilt: str
    binding: str
    side: int
    gap: tuple[Exact, Exact]
    inside: Exact

    message: ClassVar[str] = "tuck-tail"

    def carry_out(self, table: Table) -> None:
        quilt, strip = table.take(self.quilt), table.take(attached(self.binding), by=StartBinding)
        pocket = strip.is_(POCKET)
        table.need(pocket, "a beginning that is folded in", by=StartBinding, part=strip)
        _all_turned(table, quilt, self.side, self.gap)
        _goes_round(table, quilt, strip, self.inside)
        table.put(_closed(table, quilt, self.side, self.gap))

    def values(self, moment: Moment) -> Values:
        return {"inside": Length(self.inside)}


def _all_turned(table: Table, quilt: Part, side: int, gap: tuple[Exact, Exact]) -> None:
    """Note a side that is not bound from corner to corner, but for the gap."""
    for n, edge in enumerate(quilt.edges):
        far = edge.length.exact
        ends = edge.covers(NOTHING, gap[0], BOUND) and edge.covers(gap[1], far, BOUND)
        ready = edge.covers(NOTHING, far, BOUND) or (n == side and ends)
        table.need(ready, "every corner turned", by=TurnCorner, part=quilt)


def _goes_round(table: Table, quilt: Part, strip: Part, overlap: Exact) -> None:
    """Note a binding that does not go round and overlap."""
    asked = 2 * (quilt.width.exact + quilt.height.exact) + overlap
    table.need(
        not quilt.known or strip.height.exact >= asked,
        "binding enough to go round and overlap",
        by=JoinOnDiagonal,
        part=strip,
        expected=table.text(asked),
        received=table.text(strip.height.exact),
    )


def _closed(table: Table, quilt: Part, side: int, gap: tuple[Exact, Exact]) -> Part:
    table.sew("binding", 2 * (quilt.width.exact + quilt.height.exact))
    edges = list(quilt.edges)
    edges[side] = edges[side].with_stretch(*gap, BOUND)
    return replace(quilt, edges=tuple(edges)).having(CLOSED)


@dataclass(frozen=True, kw_only=True)
class SewDownBinding(Operation):
    """Turn the fold to the back and sew it down by hand, with a mitre at each corner."""

    quilt: str
    width: Exact
    seam: Exact

    message: ClassVar[str] = "sew-down-binding"
    tools: ClassVar[tuple[str, ...]] = ("needle",)

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        table.need(quilt.is_(CLOSED), "the binding closed", by=JoinTails, part=quilt)
        # Folded, the strip lies a seam wide in front, as wide behind, and one of its own
        # allowances under the stitching: less does not reach the stitching at the back.
        table.need(
            self.width >= 6 * self.seam,
            "binding wide enough to cover its stitching",
            part=quilt,
            expected=table.text(6 * self.seam),
            received=table.text(self.width),
        )
        edges = tuple(replace(edge, state="bound", stretches=()) for edge in quilt.edges)
        sides = quilt.width.exact - 2 * self.seam, quilt.height.exact - 2 * self.seam
        table.sew("binding by hand", quilt.width.exact * 2 + quilt.height.exact * 2)
        table.put(replace(quilt, edges=edges, finished=sides))

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("binding", (("detail", "finish"),))


def attached(binding: str) -> str:
    """Return what a binding is called while it hangs at the quilt."""
    return f"{binding}, sewn on"
