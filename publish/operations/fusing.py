"""Fusing a motif: web, cutting out, fusing to the ground, stitching the raw edge.

In: squares of web and cloth. Out: operations.
Invariant: web is traced before it is fused, cut out after, and its paper is off before the
motif lies on its ground; a raw edge is stitched once it is fused.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.applique import PRESSED, SEWN, STABILISED, PinStabiliser
from publish.operations.handwork import Handwork, motif_heap
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part, measured, sheet
from publish.operations.placing import ALIGNED, FUSED, AlignMotif
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Stitch, Value, Values, Word, said

WEB, JOINED, ROUGH, CUT_OUT = "web", "its lengths taped together", "cut around", "cut out of web"
BACKING = "web paper"


def traced(motif: str) -> str:
    """Return what the web is called that a motif is traced on."""
    return f"web {motif}"


@dataclass(frozen=True, kw_only=True)
class CutWeb(Operation):
    """Cut the web: squares, or one length that holds every motif."""

    count: int
    """How many motifs it is for."""
    side: Exact
    length: Exact | None
    """Of one length that they are nested on; None for squares."""
    apart: Exact

    message: ClassVar[str] = "cut-web"
    tools: ClassVar[tuple[str, ...]] = ("fusible web", "scissors")

    @property
    def says(self) -> str:
        return "cut-web" if self.length is None else "cut-web-length"

    def carry_out(self, table: Table) -> None:
        table.put(sheet(WEB, measured(self.side), measured(self.side)), self.count)

    def values(self, moment: Moment) -> Values:
        if self.length is not None:
            return {
                "length": Length(self.length),
                "motifs": Count(self.count),
                "apart": Length(self.apart),
            }
        return {"squares": said_squares(self.count, self.side)}

    def figure(self, moment: Moment) -> Shown | None:
        return None if self.length is None else Shown("cutting-layout", (("material", "web"),))


def said_squares(count: int, side: Exact) -> Value:
    """Return so many squares in words: `two squares of 16 in`."""
    return said("squares-of-web", count=Count(count), side=Length(side))


@dataclass(frozen=True, kw_only=True)
class JoinWeb(Handwork):
    """Tape lengths of web together where a square is wider than the roll."""

    message: ClassVar[str] = "join-web"
    tools: ClassVar[tuple[str, ...]] = ("tape",)
    leaves = JOINED


@dataclass(frozen=True, kw_only=True)
class TraceWeb(Operation):
    """Draw a motif on the paper side of its web."""

    motif: str
    name: Value
    count: int
    folds: int
    mirrored: bool
    """Whether it is its own mirror image, and drawn wedge by wedge."""
    open: bool
    joined: bool
    """Whether its web must have been joined."""

    message: ClassVar[str] = "trace-web"
    tools: ClassVar[tuple[str, ...]] = ("printer", "scissors")

    @property
    def says(self) -> str:
        return "trace-web-wedges" if self.mirrored else "trace-web-whole"

    @property
    def uses(self) -> tuple[str, ...]:
        return self.tools if self.mirrored else (*self.tools, "light box")

    def carry_out(self, table: Table) -> None:
        web = table.take(WEB, self.count, by=CutWeb)
        whole = web.is_(JOINED) or not self.joined
        table.need(whole, JOINED, by=JoinWeb, part=web)
        table.put(replace(web, key=traced(self.motif)), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "motif": self.name,
            "wedges": Count(self.folds),
            "open": Word("yes" if self.open else "no"),
        }


@dataclass(frozen=True, kw_only=True)
class RoughCut(Handwork):
    """Cut the web out outside its line."""

    spare: Exact

    message: ClassVar[str] = "rough-cut"
    tools: ClassVar[tuple[str, ...]] = ("scissors",)
    leaves = ROUGH

    def values(self, moment: Moment) -> Values:
        return {"spare": Length(self.spare)}


@dataclass(frozen=True)
class Fused:
    """A motif and the cloth that its web is fused to."""

    motif: str
    piece: str
    count: int


@dataclass(frozen=True, kw_only=True)
class FuseCloth(Operation):
    """Fuse the web to the wrong side of the cloth."""

    pairs: tuple[Fused, ...]
    squares: Value
    """Which cloth, in words: letters with their fabrics."""
    stretch: bool
    """Whether every motif lies on one stretch of cloth."""

    message: ClassVar[str] = "fuse-fabric"
    tools: ClassVar[tuple[str, ...]] = ("iron", "fusible web")

    @property
    def says(self) -> str:
        return "fuse-stretch" if self.stretch else "fuse-fabric"

    def carry_out(self, table: Table) -> None:
        for pair in self.pairs:
            web = table.take(traced(pair.motif), pair.count, by=TraceWeb)
            table.need(web.is_(ROUGH), ROUGH, by=RoughCut, part=web)
            cloth = table.take(pair.piece, pair.count)
            part = replace(cloth, key=motif_heap(pair.motif), paper=frozenset({BACKING}))
            table.put(replace(part, known=cloth.known and web.known), pair.count)

    def values(self, moment: Moment) -> Values:
        return {"squares": self.squares}


@dataclass(frozen=True, kw_only=True)
class CutOut(Handwork):
    """Cut paper and cloth on the line and peel the paper away."""

    span: Exact
    holes: bool

    message: ClassVar[str] = "cut-out"
    tools: ClassVar[tuple[str, ...]] = ("scissors",)

    def worked(self, table: Table, part: Part) -> Part:
        table.need(BACKING in part.paper, "web on its back", by=FuseCloth, part=part)
        span = measured(self.span)
        done = replace(part.sized(span, span), paper=part.paper - {BACKING})
        return done.having(CUT_OUT)

    def values(self, moment: Moment) -> Values:
        return {"holes": Word("yes" if self.holes else "no")}


@dataclass(frozen=True, kw_only=True)
class FuseGround(Handwork):
    """Fuse the motif to its ground."""

    message: ClassVar[str] = "fuse-ground"
    tools: ClassVar[tuple[str, ...]] = ("iron",)
    needs = ((ALIGNED, AlignMotif),)
    leaves = FUSED


@dataclass(frozen=True, kw_only=True)
class StitchRawEdge(Handwork):
    """Stitch along every raw edge."""

    long: Exact
    wide: Exact
    length: Exact
    """Of every edge together."""
    stabilised: bool

    message: ClassVar[str] = "stitch-raw-edge"
    needs = ((FUSED, FuseGround),)

    def carry_out(self, table: Table) -> None:
        super().carry_out(table)
        table.sew("applique", self.length)

    def worked(self, table: Table, part: Part) -> Part:
        there = STABILISED in part.paper or not self.stabilised
        table.need(there, "stabilizer behind it", by=PinStabiliser, part=part)
        return part.having(SEWN, PRESSED)

    def values(self, moment: Moment) -> Values:
        return {
            "long": Stitch(self.long),
            "wide": Stitch(self.wide),
            "stabilised": Word("yes" if self.stabilised else "no"),
        }
