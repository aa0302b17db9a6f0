"""Turning an edge over paper before it is sewn.

In: motifs that are cut out, their template. Out: operations.
Invariant: the paper is the finished shape, and is out again before anything is sewn.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.flat import WHOLE, JoinTemplate
from publish.operations.handwork import Handwork, motif_heap
from publish.operations.marking import (
    CREASED,
    CUT,
    LINES,
    CutTemplates,
    CutWedge,
    OpenMotif,
    template,
)
from publish.operations.operation import Moment, Operation
from publish.operations.parts import Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Rectangle, Value, Values, Word

PAPER = "freezer paper"
CLIPPED, TURNED = "its edge clipped", "its edge pressed over"


def paper_shape(motif: str) -> str:
    """Return what the paper shape of a motif is called."""
    return f"paper shape {motif}"


@dataclass(frozen=True, kw_only=True)
class CutPaperShape(Operation):
    """Cut the finished shape from freezer paper, folded or traced."""

    motif: str
    name: Value
    folds: int
    """0 for what is traced."""
    side: tuple[Exact, Exact]
    """Of the paper: as large as the square of cloth."""

    message: ClassVar[str] = "cut-paper-shape"

    @property
    def says(self) -> str:
        return "cut-paper-shape-folded" if self.folds else "cut-paper-shape-traced"

    @property
    def uses(self) -> tuple[str, ...]:
        return ("freezer paper", "scissors", *(() if self.folds else ("light box",)))

    def carry_out(self, table: Table) -> None:
        line = LINES[1] if self.folds else WHOLE
        by = CutTemplates if self.folds else JoinTemplate
        table.put(table.take(template(self.motif, line), by=by))
        table.put(Part(paper_shape(self.motif)))
        table.spare.add(paper_shape(self.motif))

    def values(self, moment: Moment) -> Values:
        return {
            "motif": self.name,
            "folds": Count(self.folds),
            "paper": Rectangle(*self.side),
        }


@dataclass(frozen=True, kw_only=True)
class IronPaper(Handwork):
    """Iron the paper shape onto the wrong side of the motif."""

    under: Value
    holes: bool

    message: ClassVar[str] = "iron-paper"
    tools: ClassVar[tuple[str, ...]] = ("iron", "freezer paper")
    needs = ((CUT, CutWedge), (CREASED, OpenMotif))

    def worked(self, table: Table, part: Part) -> Part:
        key = paper_shape(part.key.removeprefix(motif_heap("")))
        table.put(table.take(key, by=CutPaperShape))
        return replace(part, paper=part.paper | {PAPER})

    def values(self, moment: Moment) -> Values:
        return {"under": self.under, "holes": Word("yes" if self.holes else "no")}


@dataclass(frozen=True, kw_only=True)
class ClipEdge(Handwork):
    """Clip inside corners and inward curves."""

    message: ClassVar[str] = "clip-edge"
    tools: ClassVar[tuple[str, ...]] = ("small scissors",)
    leaves = CLIPPED

    def worked(self, table: Table, part: Part) -> Part:
        table.need(PAPER in part.paper, "the paper in it", by=IronPaper, part=part)
        return super().worked(table, part)


@dataclass(frozen=True, kw_only=True)
class PressEdge(Handwork):
    """Press the turn-under over the edge of the paper."""

    under: tuple[Exact, ...]
    """Of each motif."""

    message: ClassVar[str] = "press-edge"
    tools: ClassVar[tuple[str, ...]] = ("iron", "starch")
    needs = ((CLIPPED, ClipEdge),)

    def worked(self, table: Table, part: Part) -> Part:
        table.need(PAPER in part.paper, "the paper in it", by=IronPaper, part=part)
        under = self.under[[key for key, _ in self.on].index(part.key)]
        smaller = part.sized(part.width - 2 * under, part.height - 2 * under)
        return smaller.having(TURNED)


@dataclass(frozen=True, kw_only=True)
class PeelPaper(Handwork):
    """Take the paper out again."""

    message: ClassVar[str] = "peel-paper"
    tools: ClassVar[tuple[str, ...]] = ("iron",)
    needs = ((TURNED, PressEdge),)

    def worked(self, table: Table, part: Part) -> Part:
        table.need(PAPER in part.paper, "paper to take out", by=IronPaper, part=part)
        return replace(part, paper=part.paper - {PAPER})
