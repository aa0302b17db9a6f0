"""Sections that are sewn on paper: trimmed, joined, torn out of their paper at the seams.

In: papers that are sewn, heaps, how parts lie. Out: operations.
Invariant: a section is done when its patches come to all that is printed; what is joined
shares a whole side, with the same allowance on both; paper is out of a seam before it is
pressed, and stays in everywhere else until the sides of a block are sewn.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import reduce
from itertools import pairwise
from typing import ClassVar, TypedDict

from publish.operations.borders import PINNED, PRESSED
from publish.operations.foundation import (
    PAPER,
    Foundation,
    OpenPatch,
    PrintFoundations,
    SewPatch,
    opened,
)
from publish.operations.joining import Taken, joined, paper_of, turned
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.outline import Ring, box_of, glued, is_box, plain
from publish.operations.parts import LEFT, RIGHT, Edge, Measure, Part, measured, sheet
from publish.operations.piecing import SEWN
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Rectangle, Value, Values, Word

LEFT_IN = "foundations that stay in until their sides are sewn"
TORN = "the paper of its seams torn off"
STRAIGHT = ("across", "down", "slant")


@dataclass(frozen=True)
class Trimmed:
    """What some of a section's papers become: their heap, how they lie on it, their edges."""

    key: str
    count: int
    quarters: int
    """Quarter turns clockwise from the paper to the heap."""
    allow: tuple[Exact, Exact, Exact, Exact]
    """Beyond the outer line at the top, right, bottom and left, as it lies on its heap."""
    sides: tuple[Exact, Exact]
    """What it measures by its draft: held against the paper where that is a rectangle."""


@dataclass(frozen=True, kw_only=True)
class TrimSection(Operation):
    """Trim a section through paper and cloth, on the line that its edges are cut on."""

    paper: Foundation
    results: tuple[Trimmed, ...]
    seam: Exact
    wider: Exact
    """The widest allowance of any edge of the size's sections; `seam` where all are alike."""
    shown: bool = False

    message: ClassVar[str] = "trim-section"
    tools: ClassVar[tuple[str, ...]] = ("rotary cutter", "ruler")
    trims: ClassVar[bool] = True

    def carry_out(self, table: Table) -> None:
        paper, last = self.paper, opened(self.paper.last)
        part = table.take(paper.heap, paper.count, by=PrintFoundations)
        table.need(part.is_(last), last, by=OpenPatch, part=part)
        covered = part.outline == plain(paper.ring)
        table.need(covered, "all of its areas covered", by=SewPatch, part=part)
        for one in self.results:
            done = replace(self._cut(one), known=part.known)
            done = table.drafted(done, *one.sides) if is_box(paper.ring) else done
            table.put(done, one.count)

    def _cut(self, one: Trimmed) -> Part:
        ring = self.paper.ring
        sides: tuple[Measure, ...] = tuple(measured(side) for side in one.sides)
        if is_box(ring):
            wide, high = box_of(ring)[:: -1 if one.quarters % 2 else 1]
            top, right, bottom, left = one.allow
            sides = measured(wide + left + right), measured(high + top + bottom)
        wide_, high_ = sides
        edges = tuple(
            Edge(length, allowance=allow)
            for length, allow in zip((wide_, high_, wide_, high_), one.allow, strict=True)
        )
        new = sheet(one.key, wide_, high_, PRESSED)
        return replace(new, edges=edges, paper=frozenset({PAPER}), outline=plain(ring))

    def values(self, moment: Moment) -> Values:
        return {
            "seam": Length(self.seam),
            "wider": Length(self.wider),
            "edges": Word("alike" if self.wider == self.seam else "wider"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        if not self.shown:
            return None
        return Shown("foundation", (("section", self.paper.section), ("stage", "done")))


class Of(TypedDict):
    """What is joined, for a planner to hand on."""

    block: str
    unit: str
    count: int
    several: bool


@dataclass(frozen=True, kw_only=True)
class SectionWork(Operation):
    """What operations on sections that are joined share."""

    block: str
    unit: str
    """The heap of what is joined."""
    count: int
    several: bool
    """Whether more than two parts are joined."""

    @property
    def pinned(self) -> str:
        """Return the heap of what is pinned together and not sewn yet."""
        return f"{self.unit} pinned"


@dataclass(frozen=True, kw_only=True)
class PinSections(SectionWork):
    """Lay sections right sides together and match their points with pins."""

    parts: tuple[Taken, ...]
    join: str
    seam: Exact
    drafted: tuple[Exact, Exact]
    told: tuple[Exact, Exact]
    """What is joined measures, where its parts are no rectangles."""
    quarters: int
    """How it lies turned against its heap."""
    again: bool
    opener: Value
    those: Value

    tools: ClassVar[tuple[str, ...]] = ("pins",)

    @property
    def says(self) -> str:
        return "pin-sections-again" if self.again else "pin-sections"

    def carry_out(self, table: Table) -> None:
        found: dict[str, Part] = {}
        for key in dict.fromkeys(p.key for p in self.parts):
            many = self.count * sum(p.key == key for p in self.parts)
            part = table.take(key, many)
            ready = key.startswith("piece ") or part.is_(PRESSED)
            table.need(ready, "its seams pressed", by=PressSections, part=part)
            found[key] = part
        parts = [turned(found[p.key], p.quarters) for p in self.parts]
        whole = self._whole(table, parts)
        outline = self._outline(table, parts)
        whole = replace(whole, key=self.pinned, paper=paper_of(parts), outline=outline)
        table.put(whole.having(PINNED), self.count)

    def _whole(self, table: Table, parts: Sequence[Part]) -> Part:
        """Return what is joined, as its heap lies."""
        if self.join not in ("across", "down"):
            wide, high = (Measure(e, t) for e, t in zip(self.drafted, self.told, strict=True))
            whole = replace(sheet(self.unit, wide, high), known=all(p.known for p in parts))
            return turned(whole, -self.quarters)
        lying = [turned(p, 3) for p in parts] if self.join == "down" else list(parts)
        for one, two in pairwise(lying):
            table.meet("the edges", one.height, two.height, one, two)
            allowances = {one.edges[RIGHT].allowance, two.edges[LEFT].allowance}
            table.need(
                allowances <= {self.seam, None},
                "the allowance of a seam on both sections",
                by=TrimSection,
                part=one,
                expected=table.text(self.seam),
            )
        whole = joined(self.unit, [_plain(p) for p in lying], self.seam)
        return turned(whole, (1 if self.join == "down" else 0) - self.quarters)

    def _outline(self, table: Table, parts: Sequence[Part]) -> Ring:
        """Return what the papers come to; nothing where a part is not on paper."""
        if not all(part.outline and part.known for part in parts):
            return ()

        def add(ring: Ring, part: Part) -> Ring:
            both = glued(ring, part.outline) if ring else None
            whole = both is not None and (both.line is not None or self.join not in STRAIGHT)
            table.need(whole, "sections that share a whole side", by=TrimSection, part=part)
            return both.ring if both is not None else ()

        return reduce(add, parts[1:], parts[0].outline)

    def values(self, moment: Moment) -> Values:
        return {
            "opener": self.opener,
            "parts": self.those,
            "several": Word("yes" if self.several else "no"),
        }


def _plain(part: Part) -> Part:
    """Return a part without where its seams end: its crossings are matched by their points."""
    return replace(part, edges=tuple(replace(edge, seams=()) for edge in part.edges))


@dataclass(frozen=True, kw_only=True)
class SewSections(SectionWork):
    """Sew sections together on the printed line."""

    length: Exact
    """Of the seams of one of them, as it is drafted."""
    again: bool
    whole: Value
    """What it is, where that is a block; nothing else."""
    block_done: bool

    @property
    def says(self) -> str:
        return "sew-sections-again" if self.again else "sew-sections"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.pinned, self.count, by=PinSections)
        table.need(part.is_(PINNED), "its points pinned", by=PinSections, part=part)
        table.sew("piecing", self.length * self.count)
        table.put(replace(part.without(PINNED), key=self.unit).having(SEWN), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "several": Word("yes" if self.several else "no"),
            "whole": self.whole,
            "done": Word("yes" if self.block_done else "no"),
        }


@dataclass(frozen=True, kw_only=True)
class TearAllowances(SectionWork):
    """Tear the paper off the allowances of a seam, before it is pressed."""

    message: ClassVar[str] = "tear-allowances"

    def carry_out(self, table: Table) -> None:
        part = table.take(self.unit, self.count)
        there = part.is_(SEWN) and (not part.is_(TORN) or not part.known)
        table.need(there, "a seam whose paper is there", by=SewSections, part=part)
        table.put(part.having(TORN), self.count)

    def values(self, moment: Moment) -> Values:
        return {"several": Word("yes" if self.several else "no")}


@dataclass(frozen=True, kw_only=True)
class PressSections(SectionWork):
    """Press the seams of what is joined."""

    seams: int
    way: Value
    the: Value
    drafted: tuple[Exact, Exact]
    """What it measures, as its heap lies."""
    eased: int
    box: bool

    message: ClassVar[str] = "press-sections"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        part = table.take(self.unit, self.count)
        table.need(part.is_(TORN), TORN, by=TearAllowances, part=part)
        part = table.drafted(part, *self.drafted, eased=self.eased)
        table.put(part.without(SEWN, TORN).having(PRESSED), self.count)

    def values(self, moment: Moment) -> Values:
        part = moment.after(self.unit)
        return {
            "seams": Count(self.seams),
            "way": self.way,
            "count": Count(self.count),
            "box": Word("yes" if self.box else "no"),
            "the": self.the,
            "size": Rectangle(part.width.told, part.height.told),
        }


@dataclass(frozen=True, kw_only=True)
class LeavePaper(Operation):
    """Leave the rest of the paper in blocks until their sides are sewn."""

    blocks: tuple[tuple[str, int], ...]
    papers: int

    message: ClassVar[str] = "leave-paper"

    def carry_out(self, table: Table) -> None:
        for key, count in self.blocks:
            part = table.take(key, count)
            table.need(part.is_(PRESSED), "its last seam pressed", by=PressSections, part=part)
            table.need(PAPER in part.paper, "paper in it", by=PrintFoundations, part=part)
            table.put(replace(part, paper=part.paper - {PAPER} | {LEFT_IN}), count)

    def values(self, moment: Moment) -> Values:
        return {"papers": Count(self.papers)}
