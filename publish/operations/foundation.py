"""Sewing on printed foundations: paper, stitch, patches in the order of their numbers.

In: what is printed on each foundation, heaps of cloth. Out: operations.
Invariant: a section takes its size from its paper and its cover from the cloth: each patch is
added along a whole side of what is sewn before it, from cloth that reaches past its area.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import ClassVar, TypedDict

from publish.operations.operation import Moment, Operation, Shown
from publish.operations.outline import (
    Line,
    Ring,
    box_of,
    glued,
    plain,
    reach,
    root_up,
    square_of,
)
from publish.operations.parts import Part, measured, sheet
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Length, Stitch, Values, Word

PAPER = "foundations"
"""Paper on which a part is sewn."""
SHORT = "the machine set to a short stitch"
EIGHTHS = 8
SEAM_STEP = 64
"""Seams that slant are taken down to the next 1/64 in."""


@dataclass(frozen=True)
class Area:
    """A numbered patch as it is printed, and the cloth for it."""

    number: int
    ring: Ring
    bulges: Ring
    """Points that its edges run through where they are arcs."""
    line: Line
    """Along which its cloth lies: the line that it is sewn on; of the first, the second's."""
    piece: str
    may_turn: bool
    """Whether the cloth may lie with its length either way."""


@dataclass(frozen=True)
class Foundation:
    """A printed section: its heap of papers, and how many there are."""

    key: str
    section: str
    """Key of the drawing."""
    count: int
    ring: Ring
    last: int
    """Number of its last patch."""

    @property
    def heap(self) -> str:
        return f"foundation {self.key}"


@dataclass(frozen=True, kw_only=True)
class PrintFoundations(Operation):
    """Print a foundation for each section, check their size, cut them apart."""

    papers: tuple[Foundation, ...]
    spare: Exact
    """Paper that is left outside the cut line."""
    seam: Exact

    message: ClassVar[str] = "print-foundations"
    tools: ClassVar[tuple[str, ...]] = ("printer", "ruler", "scissors")

    def carry_out(self, table: Table) -> None:
        more = 2 * (self.seam + self.spare)
        for one in self.papers:
            wide, high = (measured(side + more) for side in box_of(one.ring))
            blank = sheet(one.heap, wide, high)
            table.put(replace(blank, paper=frozenset({PAPER})), one.count)

    def values(self, moment: Moment) -> Values:
        return {"spare": Length(self.spare)}


@dataclass(frozen=True, kw_only=True)
class ShortenStitch(Operation):
    """Set a short stitch, which perforates the paper."""

    stitch: Fraction

    message: ClassVar[str] = "shorten-stitch"
    tools: ClassVar[tuple[str, ...]] = ("needle",)

    def carry_out(self, table: Table) -> None:
        table.put(Part(SHORT))

    def values(self, moment: Moment) -> Values:
        return {"stitch": Stitch(self.stitch)}


@dataclass(frozen=True, kw_only=True)
class LengthenStitch(Operation):
    """Set the stitch back for seams that are sewn from cloth to cloth."""

    stitch: Fraction
    sections: bool
    """Whether sections are joined next."""

    message: ClassVar[str] = "lengthen-stitch"

    def carry_out(self, table: Table) -> None:
        table.take(SHORT, by=ShortenStitch)

    def values(self, moment: Moment) -> Values:
        then = Word("sections" if self.sections else "blocks")
        return {"stitch": Stitch(self.stitch), "next": then}


def sewn(number: int) -> str:
    return f"patch {number} sewn"


def trimmed(number: int) -> str:
    return f"the seam of patch {number} trimmed"


def opened(number: int) -> str:
    return f"patch {number} flat on its area"


class OfPatch(TypedDict):
    """Which patch an operation is on, for a planner to hand on."""

    tag: str
    paper: Foundation
    area: Area
    seam: Exact
    further: bool


@dataclass(frozen=True, kw_only=True)
class PatchWork(Operation):
    """What operations on one patch of a section share."""

    paper: Foundation
    area: Area
    seam: Exact
    further: bool = False
    """Whether it is done as for the patches before, and told with all of these."""
    shown: bool = False

    stage: ClassVar[str] = ""

    def _again(self, message: str) -> str:
        return "sew-further-patches" if self.further else message

    def figure(self, moment: Moment) -> Shown | None:
        if not self.shown or not self.stage:
            return None
        return Shown("foundation", (("section", self.paper.section), ("stage", self.stage)))

    def _covered(self, table: Table, cloth: Part, around: Exact) -> None:
        """Ask that cloth, laid along the patch's line, reaches so far past all of its area."""
        if not cloth.known:
            return
        along, across = reach((*self.area.ring, *self.area.bulges), self.area.line)
        sides = [side.told - 2 * around for side in (cloth.width, cloth.height)]
        ways = (sides, sides[::-1]) if self.area.may_turn else (sides,)
        fits = any(
            long >= 0 and deep >= 0 and long * long >= along and deep * deep >= across
            for long, deep in ways
        )
        least = [root_up(square, EIGHTHS) + 2 * around for square in (along, across)]
        table.need(
            fits,
            f"cloth that covers area {self.area.number} of {self.paper.heap} with its allowance",
            part=cloth,
            expected=" × ".join(map(table.text, least)),
            received=" × ".join(table.text(side.told) for side in (cloth.width, cloth.height)),
        )


@dataclass(frozen=True, kw_only=True)
class LayFirstPatch(PatchWork):
    """Lay the first cloth on the blank side of the paper and pin it."""

    around: Exact
    """How far the cloth must reach past the area on every side."""

    message: ClassVar[str] = "lay-first-patch"
    tools: ClassVar[tuple[str, ...]] = ("pins",)
    stage: ClassVar[str] = "place"

    def carry_out(self, table: Table) -> None:
        paper = table.take(self.paper.heap, self.paper.count, by=PrintFoundations)
        cloth = table.take(self.area.piece, self.paper.count)
        self._covered(table, cloth, self.around)
        known = paper.known and cloth.known
        laid = replace(paper, outline=plain(self.area.ring), known=known)
        table.put(laid.having(opened(1)), self.paper.count)

    def values(self, moment: Moment) -> Values:
        return {"spare": Length(self.around)}


@dataclass(frozen=True, kw_only=True)
class SewPatch(PatchWork):
    """Lay the next cloth right sides together on what is sewn, and sew on the printed line."""

    around: Exact

    stage: ClassVar[str] = "sew"

    @property
    def says(self) -> str:
        return self._again("sew-patch")

    def carry_out(self, table: Table) -> None:
        area, many = self.area, self.paper.count
        before = opened(area.number - 1)
        maker = LayFirstPatch if area.number == 2 else OpenPatch
        paper = table.take(self.paper.heap, many, by=PrintFoundations)
        table.need(paper.is_(before), before, by=maker, part=paper)
        table.need(table.count(SHORT) > 0, SHORT, by=ShortenStitch)
        cloth = table.take(area.piece, many)
        self._covered(table, cloth, self.around)
        whole = glued(paper.outline, area.ring) if paper.known else None
        table.need(
            whole is not None and whole.line is not None,
            f"a whole side for patch {area.number} along what is sewn before it",
            part=paper,
        )
        table.sew("piecing", root_up(square_of(area.line), SEAM_STEP) * many)
        known = paper.known and cloth.known and whole is not None
        ring = whole.ring if whole is not None else paper.outline
        done = replace(paper.without(before), outline=ring, known=known)
        table.put(done.having(sewn(area.number)), many)

    def values(self, moment: Moment) -> Values:
        return {} if self.further else {"seam": Length(self.seam)}


@dataclass(frozen=True, kw_only=True)
class TrimPatch(PatchWork):
    """Crease the paper back on the line and trim the allowances beyond it."""

    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")
    trims: ClassVar[bool] = True
    stage: ClassVar[str] = "trim"

    @property
    def says(self) -> str:
        return self._again("trim-patch")

    def carry_out(self, table: Table) -> None:
        number = self.area.number
        _turn(table, self.paper, sewn(number), trimmed(number), SewPatch)

    def values(self, moment: Moment) -> Values:
        return {} if self.further else {"seam": Length(self.seam)}


@dataclass(frozen=True, kw_only=True)
class OpenPatch(PatchWork):
    """Open a patch over its area and press it from the cloth side."""

    tools: ClassVar[tuple[str, ...]] = ("iron",)

    @property
    def says(self) -> str:
        return self._again("open-patch")

    def carry_out(self, table: Table) -> None:
        number = self.area.number
        _turn(table, self.paper, trimmed(number), opened(number), TrimPatch)


def _turn(table: Table, paper: Foundation, before: str, after: str, by: type[Operation]) -> None:
    """Take papers from one state of a patch to the next."""
    part = table.take(paper.heap, paper.count, by=PrintFoundations)
    table.need(part.is_(before), before, by=by, part=part)
    table.put(part.without(before).having(after), paper.count)
