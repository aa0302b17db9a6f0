"""Making up a pillow: the front trimmed, a back with an overlap or a zipper, closed and turned.

In: keys of the quilted front and of the back, seams. Out: operations.
Invariant: a cover is closed inside out, and is done when it is turned and filled.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.operation import Moment, Operation, Shown, chosen
from publish.operations.parts import measured
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Letter, Rectangle, Values, Word

TRIMMED, HELD = "trimmed to the cover and its seams", "its layers sewn round"
EDGED, LAID = "its inner edge finished", "pinned to its back"
CLOSED, FINISHED = "sewn to its back", "its allowances finished"
TURNED, FILLED = "turned right side out", "filled"


@dataclass(frozen=True, kw_only=True)
class TrimFront(Operation):
    """Trim the quilted front to the cover with its seams, all layers."""

    quilt: str
    drafted: tuple[Exact, Exact]
    centred: str
    """What lies in the middle where the top was left large: the `motif`, or all of it."""
    block: str
    """Which the figure shows; empty for no figure."""

    message: ClassVar[str] = "trim-front"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        table.need(not quilt.basting, "the basting out", part=quilt)
        sides = zip((quilt.width, quilt.height), self.drafted, strict=True)
        large = quilt.known and all(side.exact >= asked for side, asked in sides)
        if large:  # a ground that was left large is cut to the cover here
            quilt = quilt.sized(*map(measured, self.drafted))
        front = table.drafted(quilt, *self.drafted)
        level = tuple(replace(n, width=front.width, height=front.height) for n in front.layers)
        table.put(replace(front, layers=level).having(TRIMMED))

    def values(self, moment: Moment) -> Values:
        front = moment.after(self.quilt)
        return {
            "front": Rectangle(front.width.told, front.height.told),
            "centred": Word(self.centred if self._large(moment) else "none"),
        }

    def _large(self, moment: Moment) -> bool:
        """Return whether the top was left larger than the front."""
        top = moment.before(self.quilt)
        return (top.width.exact, top.height.exact) != self.drafted

    def figure(self, moment: Moment) -> Shown | None:
        if not self.block or not self._large(moment):
            return None
        return Shown("trim", (("block", self.block),), name="front")


@dataclass(frozen=True, kw_only=True)
class SewRoundFront(Operation):
    """Sew round the front close to its edge, to hold the layers."""

    quilt: str

    message: ClassVar[str] = "sew-round-front"

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt)
        table.need(quilt.is_(TRIMMED), "the front trimmed", by=TrimFront, part=quilt)
        table.put(quilt.having(HELD))


@dataclass(frozen=True, kw_only=True)
class HemBacks(Operation):
    """Hem one long edge of each back piece, or finish it where there is no hem."""

    piece: str
    letter: str
    count: int
    fold: Exact
    """The hem is folded twice by so much; 0 for a selvage."""

    @property
    def says(self) -> str:
        return "hem-backs" if self.fold else "finish-backs"

    def carry_out(self, table: Table) -> None:
        back = table.take(self.piece, self.count)
        deep = back.width - 2 * self.fold
        table.put(back.sized(deep, back.height).having(EDGED), self.count)

    def values(self, moment: Moment) -> Values:
        back = moment.before(self.piece)
        return {
            "backs": Count(self.count, "back-piece"),
            "letter": Letter(self.letter),
            "back": Rectangle(back.width.told, back.height.told),
            "fold": Length(self.fold),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("pillow", (("detail", "hem"),)) if self.fold else None


@dataclass(frozen=True, kw_only=True)
class LayBacks(Operation):
    """Lay two back pieces on the front, overlapping, and pin all round."""

    quilt: str
    piece: str
    overlap: Exact
    """The least that they must overlap."""
    hemmed: bool

    message: ClassVar[str] = "lay-backs"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        back, front = table.take(self.piece, 2), table.take(self.quilt)
        table.need(back.is_(EDGED), "back pieces with one finished edge", by=HemBacks, part=back)
        table.need(front.is_(HELD), "a front that is sewn round", by=SewRoundFront, part=front)
        found = back.width.told * 2 - front.width.told
        table.need(
            not front.known or not back.known or found >= self.overlap,
            "back pieces that overlap",
            part=back,
            expected=table.text(self.overlap),
            received=table.text(found),
        )
        table.meet("the back and the front", back.height, front.height, back, front)
        table.put(front.having(LAID))

    def values(self, moment: Moment) -> Values:
        back, front = moment.before(self.piece), moment.before(self.quilt)
        return {
            "edge": Word("hem" if self.hemmed else "finished"),
            "overlap": Length(back.width.told * 2 - front.width.told),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("pillow", (("detail", "layer"),))


@dataclass(frozen=True, kw_only=True)
class SewCover(Operation):
    """Sew front and back together all round."""

    quilt: str
    seam: Exact
    zipped: bool
    hemmed: bool

    @property
    def says(self) -> str:
        return "sew-zipped-cover" if self.zipped else "sew-cover"

    def carry_out(self, table: Table) -> None:
        cover = table.take(self.quilt)
        table.need(cover.is_(LAID), "its back pinned on", by=LayBacks, part=cover)
        table.sew("piecing", (cover.width + cover.height) * 2)
        edges = tuple(replace(edge, state="closed") for edge in cover.edges)
        sides = cover.width.exact - 2 * self.seam, cover.height.exact - 2 * self.seam
        table.put(replace(cover, edges=edges, finished=sides).having(CLOSED).without(LAID))

    def values(self, moment: Moment) -> Values:
        return {
            "seam": Length(self.seam),
            "edge": Word("hem" if self.hemmed else "finished"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return None if self.zipped else Shown("pillow", (("detail", "sew"),))


@dataclass(frozen=True, kw_only=True)
class FinishAllowances(Operation):
    """Trim the corners across and finish the raw edges."""

    quilt: str
    spare: Exact

    message: ClassVar[str] = "finish-allowances"
    tools: ClassVar[tuple[str, ...]] = ("scissors",)

    def carry_out(self, table: Table) -> None:
        cover = table.take(self.quilt)
        table.need(cover.is_(CLOSED), "the cover sewn all round", by=SewCover, part=cover)
        table.need(not cover.is_(TURNED) or not cover.known, "the cover inside out", part=cover)
        table.put(cover.having(FINISHED))

    def values(self, moment: Moment) -> Values:
        return {"spare": Length(self.spare)}


@dataclass(frozen=True, kw_only=True)
class TurnCover(Operation):
    """Turn the cover right side out."""

    quilt: str
    ear_in: Exact
    ear_over: Exact
    shown: bool

    message: ClassVar[str] = "turn-cover"

    def carry_out(self, table: Table) -> None:
        cover = table.take(self.quilt)
        done = cover.is_(FINISHED)
        table.need(done, "its allowances finished", by=FinishAllowances, part=cover)
        table.put(cover.having(TURNED))

    def values(self, moment: Moment) -> Values:
        cover = moment.after(self.quilt)
        sides = cover.finished
        return chosen(
            {
                "cover": Rectangle(*sides) if sides is not None else None,
                "in": Length(self.ear_in),
                "over": Length(self.ear_over),
            }
        )

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("pillow", (("detail", "turn"),)) if self.shown else None


@dataclass(frozen=True, kw_only=True)
class FillCover(Operation):
    """Put the pillow form in."""

    quilt: str
    form: Exact

    message: ClassVar[str] = "fill-cover"

    def carry_out(self, table: Table) -> None:
        cover = table.take(self.quilt)
        table.need(cover.is_(TURNED), "the cover turned", by=TurnCover, part=cover)
        table.put(cover.having(FILLED))

    def values(self, moment: Moment) -> Values:
        return {"form": Rectangle(self.form, self.form)}
