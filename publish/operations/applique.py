"""Sewing a motif down by hand: needle-turn, or a blind stitch along a prepared edge.

In: keys of blocks whose motif is basted. Out: operations.
Invariant: nothing is sewn that is not basted, every kind of place that an edge has is turned,
and the basting is out before the block is pressed.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.handwork import Handwork
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part
from publish.operations.placing import FUSED, LONG, ROWS, BasteArms, BasteMotif
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Length, Value, Values, Word

THREADED, BEGUN, SWEPT = "thread chosen", "sewing begun", "its edge swept under"
SEWN, FASTENED, PRESSED = "its edge sewn", "threads fastened off", "pressed from the back"
STABILISED = "stabilizer"


@dataclass(frozen=True, kw_only=True)
class ThreadNeedle(Handwork):
    """Thread a needle to match the motif."""

    fabric: Value
    long: Exact
    prepared: bool

    message: ClassVar[str] = "thread-needle"
    tools: ClassVar[tuple[str, ...]] = ("needle",)
    leaves = THREADED

    @property
    def says(self) -> str:
        return "thread-needle-prepared" if self.prepared else "thread-needle"

    def worked(self, table: Table, part: Part) -> Part:
        arms = BasteArms if part.is_(ROWS) else BasteMotif
        table.need(LONG in part.basting, "the motif basted", by=arms, part=part)
        return super().worked(table, part)

    def values(self, moment: Moment) -> Values:
        return {"fabric": self.fabric, "long": Length(self.long)}


@dataclass(frozen=True, kw_only=True)
class BeginAtCentre(Handwork):
    """Begin near the centre, with the knot hidden under the motif."""

    first: str
    """`centre` for an opening there, `openings` for others, `edge` without any."""

    message: ClassVar[str] = "begin-at-centre"
    needs = ((THREADED, ThreadNeedle),)
    leaves = BEGUN

    def values(self, moment: Moment) -> Values:
        return {"first": Word(self.first)}


@dataclass(frozen=True, kw_only=True)
class SweepEdge(Handwork):
    """Sweep the turn-under beneath the motif, a little ahead of the stitches."""

    under: Value
    ahead: Exact

    message: ClassVar[str] = "sweep-edge"
    tools: ClassVar[tuple[str, ...]] = ("needle",)
    needs = ((BEGUN, BeginAtCentre),)
    leaves = SWEPT

    def values(self, moment: Moment) -> Values:
        return {"under": self.under, "ahead": Length(self.ahead)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("stitch", (("detail", "edge"),))


@dataclass(frozen=True, kw_only=True)
class StitchEdge(Handwork):
    """Sew the edge down with small stitches that hardly show."""

    apart: Exact
    most: Exact
    length: Exact
    """Of every edge together."""
    prepared: bool = False

    message: ClassVar[str] = "stitch-edge"
    leaves = SEWN

    @property
    def says(self) -> str:
        return "stitch-prepared-edge" if self.prepared else "stitch-edge"

    def carry_out(self, table: Table) -> None:
        super().carry_out(table)
        table.sew("applique", self.length)

    def worked(self, table: Table, part: Part) -> Part:
        state, by = (THREADED, ThreadNeedle) if self.prepared else (SWEPT, SweepEdge)
        table.need(part.is_(state), state, by=by, part=part)
        table.need(LONG in part.basting, "the motif basted", by=BasteMotif, part=part)
        return super().worked(table, part)

    def values(self, moment: Moment) -> Values:
        return {"apart": Length(self.apart), "most": Length(self.most)}


def turned(place: str) -> str:
    """Return the state of a motif at whose places of a kind the edge is turned."""
    return f"{place} turned"


@dataclass(frozen=True, kw_only=True)
class _TurnPlaces(Handwork):
    """Turn the edge at one kind of place."""

    needs = ((SEWN, StitchEdge),)
    detail: ClassVar[str] = ""

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("stitch", (("detail", self.detail),)) if self.detail else None


@dataclass(frozen=True, kw_only=True)
class TurnPoints(_TurnPlaces):
    """Turn the edge at points."""

    message: ClassVar[str] = "turn-points"
    tools: ClassVar[tuple[str, ...]] = ("small scissors",)
    leaves, detail = turned("points"), "tip"


@dataclass(frozen=True, kw_only=True)
class TurnCorners(_TurnPlaces):
    """Clip and turn inside corners."""

    message: ClassVar[str] = "turn-corners"
    tools: ClassVar[tuple[str, ...]] = ("small scissors",)
    leaves, detail = turned("corners"), "corner"


@dataclass(frozen=True, kw_only=True)
class TurnCurves(_TurnPlaces):
    """Ease outward curves, clip inward ones."""

    message: ClassVar[str] = "turn-curves"
    leaves = turned("curves")


@dataclass(frozen=True, kw_only=True)
class TurnOpenings(_TurnPlaces):
    """Turn the edges of openings."""

    bent: bool
    """Whether some edge of an opening bends both ways."""

    message: ClassVar[str] = "turn-openings"
    leaves, detail = turned("openings"), "hole"

    def values(self, moment: Moment) -> Values:
        return {"bent": Word("yes" if self.bent else "no")}


PLACES: dict[str, type[Operation]] = {
    "points": TurnPoints,
    "corners": TurnCorners,
    "curves": TurnCurves,
    "openings": TurnOpenings,
}
"""Kinds of places along an edge, in the order in which they are told."""


@dataclass(frozen=True, kw_only=True)
class FastenOff(Handwork):
    """End a thread between ground and motif."""

    places: tuple[str, ...] = ()
    """Kinds of places that must be turned by now."""

    message: ClassVar[str] = "fasten-off"
    needs = ((SEWN, StitchEdge),)
    leaves = FASTENED

    def worked(self, table: Table, part: Part) -> Part:
        for place in self.places:
            table.need(part.is_(turned(place)), turned(place), by=PLACES[place], part=part)
        return super().worked(table, part)


@dataclass(frozen=True, kw_only=True)
class PinStabiliser(Handwork):
    """Pin stabilizer behind each ground."""

    squares: Value
    wide: bool
    """Whether a square is wider than the roll."""

    message: ClassVar[str] = "pin-stabiliser"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def worked(self, table: Table, part: Part) -> Part:
        held = LONG in part.basting or part.is_(FUSED)
        table.need(held, "the motif held on its ground", by=BasteMotif, part=part)
        return replace(part, paper=part.paper | {STABILISED})

    def values(self, moment: Moment) -> Values:
        return {"squares": self.squares, "wide": Word("yes" if self.wide else "no")}


@dataclass(frozen=True, kw_only=True)
class TearStabiliser(Handwork):
    """Tear the stabilizer away from the stitches."""

    message: ClassVar[str] = "tear-stabiliser"
    needs = ((SEWN, StitchEdge),)

    def worked(self, table: Table, part: Part) -> Part:
        there = STABILISED in part.paper
        table.need(there, "stabilizer behind it", by=PinStabiliser, part=part)
        return replace(part, paper=part.paper - {STABILISED})


@dataclass(frozen=True, kw_only=True)
class PressBlock(Handwork):
    """Take out basting and marks, and press the block from the back."""

    message: ClassVar[str] = "press-block"
    tools: ClassVar[tuple[str, ...]] = ("iron",)
    needs = ((FASTENED, FastenOff),)

    def worked(self, table: Table, part: Part) -> Part:
        without = not part.paper
        table.need(without, "its stabilizer torn away", by=TearStabiliser, part=part)
        return replace(part, basting=frozenset()).having(PRESSED)
