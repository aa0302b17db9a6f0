"""Marking a motif on its wedge, and cutting it.

In: the motif's cloth, its template. Out: operations.
Invariant: cut line and finished line come from two papers, and both papers stay whole.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.folding import CENTRED, FLAT, FoldSquare, MarkCentre, layers_of, unfolded
from publish.operations.handwork import Handwork, motif_heap
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part, measured
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Said, Several, Value, Values, Word, said

PINNED, DASHED, SOLID = "its template pinned", "its cut line drawn", "its finished line drawn"
CUT, CREASED = "cut out", "its folds creased"
ALL_MARKED = "every wedge marked"
LINES = ("cut line", "finished line")
HELD = "stitches through every layer"


def template(motif: str, line: str) -> str:
    """Return what the paper of a motif is called that is cut on one of its lines."""
    return f"{line} template {motif}"


@dataclass(frozen=True, kw_only=True)
class PrintTemplates(Operation):
    """Print each wedge template twice, and cut the papers along their fold edges."""

    motifs: tuple[str, ...]
    name: Value
    """Of the one motif that there is, or of any of several."""

    message: ClassVar[str] = "print-templates"
    tools: ClassVar[tuple[str, ...]] = ("printer", "scissors")

    def carry_out(self, table: Table) -> None:
        for motif in self.motifs:
            table.put(Part(template(motif, "printed")), len(LINES))

    def values(self, moment: Moment) -> Values:
        return {"motif": self.name, "kinds": Count(len(self.motifs))}


@dataclass(frozen=True, kw_only=True)
class CutTemplates(Operation):
    """Cut one paper of each motif on either line."""

    motifs: tuple[str, ...]
    name: Value
    start: bool
    """Whether the papers were printed in an earlier step."""

    message: ClassVar[str] = "cut-templates"
    tools: ClassVar[tuple[str, ...]] = ("scissors",)

    def carry_out(self, table: Table) -> None:
        for motif in self.motifs:
            table.take(template(motif, "printed"), len(LINES), by=PrintTemplates)
            for line in LINES:
                table.put(Part(template(motif, line)))
                table.spare.add(template(motif, line))

    def values(self, moment: Moment) -> Values:
        return {"motif": self.name, "start": Word("before" if self.start else "here")}


@dataclass(frozen=True, kw_only=True)
class _FromTemplate(Handwork):
    """Work that a paper template is needed for; the paper is put back whole."""

    shown: str
    """Key of the motif that is pictured."""

    line: ClassVar[str] = "cut line"

    def worked(self, table: Table, part: Part) -> Part:
        key = template(part.key.removeprefix(motif_heap("")), self.line)
        table.put(table.take(key, by=CutTemplates))
        return super().worked(table, part)


@dataclass(frozen=True, kw_only=True)
class AlignTemplate(_FromTemplate):
    """Lay the larger paper on the wedge, fold edge to fold, and pin it."""

    open: bool
    """Whether the motif is open at its centre, so that the wedge has no point."""
    turns: bool
    """Whether the wedge may lie the other way round than the template."""

    message: ClassVar[str] = "align-template"
    tools: ClassVar[tuple[str, ...]] = ("pins",)
    needs = ((CENTRED, MarkCentre),)
    leaves = PINNED

    def values(self, moment: Moment) -> Values:
        return {
            "end": Word("open" if self.open else "point"),
            "turns": Word("yes" if self.turns else "no"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("wedge-align", (("motif", self.shown),))


@dataclass(frozen=True, kw_only=True)
class MarkCutLine(Handwork):
    """Draw around the larger paper."""

    message: ClassVar[str] = "mark-cut-line"
    tools: ClassVar[tuple[str, ...]] = ("marker",)
    needs = ((PINNED, AlignTemplate),)
    leaves = DASHED

    def worked(self, table: Table, part: Part) -> Part:
        return part.without(PINNED).having(DASHED)


@dataclass(frozen=True, kw_only=True)
class MarkFinishedLine(_FromTemplate):
    """Draw around the smaller paper: the edge is folded there."""

    under: Exact

    message: ClassVar[str] = "mark-finished-line"
    tools: ClassVar[tuple[str, ...]] = ("marker",)
    needs = ((DASHED, MarkCutLine),)
    leaves = SOLID
    line = "finished line"

    def values(self, moment: Moment) -> Values:
        return {"under": Length(self.under)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("wedge-mark", (("motif", self.shown),))


@dataclass(frozen=True, kw_only=True)
class BasteWedge(Handwork):
    """Sew through every layer, so that none slides under the scissors."""

    inside: Exact
    folds: int
    shown: str

    message: ClassVar[str] = "baste-wedge"
    tools: ClassVar[tuple[str, ...]] = ("needle",)
    needs = ((SOLID, MarkFinishedLine),)

    def worked(self, table: Table, part: Part) -> Part:
        return replace(part, basting=part.basting | {HELD})

    def values(self, moment: Moment) -> Values:
        return {"inside": Length(self.inside), "layers": Count(self.folds, "layer")}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("wedge-baste", (("motif", self.shown),))


@dataclass(frozen=True, kw_only=True)
class CutWedge(Handwork):
    """Cut through every layer on the cut line."""

    folds: int
    holes: bool
    """Whether there are openings, so that small scissors reach more than corners."""
    first: bool
    """Whether there are openings away from the centre, which are cut first."""
    open: bool
    """Whether there is one at the centre, which is cut last."""
    whole: bool
    """Whether the motif holds together, in one piece."""
    across: tuple[Exact, ...]
    """Of each motif with its turn-under."""
    shown: str

    message: ClassVar[str] = "cut-wedge"
    tools: ClassVar[tuple[str, ...]] = ("scissors", "small scissors")
    needs = ((DASHED, MarkCutLine),)

    def worked(self, table: Table, part: Part) -> Part:
        held = HELD in part.basting
        table.need(held, "every layer basted", by=BasteWedge, part=part)
        have = layers_of(part)
        table.need(
            have == self.folds,
            f"{self.folds} layers",
            by=FoldSquare,
            part=part,
            expected=str(self.folds),
            received=str(have),
        )
        keys = [key for key, _ in self.on]
        across = measured(self.across[keys.index(part.key)])
        return part.sized(across, across).without(DASHED, CENTRED).having(CUT)

    def values(self, moment: Moment) -> Values:
        order = [("first", self.first), ("last", self.open)]
        return {
            "layers": Count(self.folds, "layer"),
            "fine": Word("openings" if self.holes else "corners"),
            "order": Word("-".join(name for name, there in order if there) or "outer"),
            "whole": Word("yes" if self.whole else "no"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("wedge-cut", (("motif", self.shown),))


@dataclass(frozen=True, kw_only=True)
class OpenMotif(Handwork):
    """Take the basting out and open the motif."""

    folds: int
    pieces: int
    shown: str

    message: ClassVar[str] = "open-motif"
    needs = ((CUT, CutWedge),)

    def worked(self, table: Table, part: Part) -> Part:
        flat = replace(unfolded(part), basting=part.basting - {HELD})
        return flat.without(FLAT).having(CREASED)

    def values(self, moment: Moment) -> Values:
        return {"wedges": Count(self.folds, "wedge"), "pieces": Count(self.pieces)}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("unfold", (("motif", self.shown),))


@dataclass(frozen=True, kw_only=True)
class MarkWedges(_FromTemplate):
    """Mark the other wedges, or turn the same width under on them."""

    others: int

    message: ClassVar[str] = "mark-wedges"
    tools: ClassVar[tuple[str, ...]] = ("marker",)
    needs = ((CREASED, OpenMotif), (SOLID, MarkFinishedLine))
    leaves = ALL_MARKED
    line = "finished line"

    def values(self, moment: Moment) -> Values:
        return {"wedges": Count(self.others, "wedge")}


@dataclass(frozen=True)
class Wanted:
    """How many of a motif a size needs, and what each is cut from."""

    motif: str
    piece: str
    count: int
    name: Value
    marked: bool
    """Whether every wedge must be marked, because the edge is turned by eye."""


@dataclass(frozen=True, kw_only=True)
class MakeMotifs(Operation):
    """Make all the others in the same way, with the same papers."""

    wanted: tuple[Wanted, ...]
    papers: tuple[str, ...]
    """Which papers must still be whole: their lines, or `whole`."""
    folded: bool = True

    message: ClassVar[str] = "make-motifs"

    def carry_out(self, table: Table) -> None:
        for one in self.wanted:
            for line in self.papers:
                table.put(table.take(template(one.motif, line)))
            made = table.take(motif_heap(one.motif))
            table.need(made.is_(CREASED), CREASED, by=OpenMotif, part=made)
            marked = made.is_(ALL_MARKED) or not one.marked
            table.need(marked, ALL_MARKED, by=MarkWedges if self.folded else None, part=made)
            if one.count > 1:
                table.take(one.piece, one.count - 1)
            table.put(made, one.count)

    def values(self, moment: Moment) -> Values:
        made = tuple((one.count, one.name) for one in self.wanted)
        return {"motifs": counted_motifs(made), "folded": Word("yes" if self.folded else "no")}


def counted_motifs(made: tuple[tuple[int, Value], ...]) -> Value:
    """Return how many of each motif: `nine star motifs and two rush motifs`."""
    if len(made) == 1 and not (isinstance(made[0][1], Said) and made[0][1].values):
        return Count(made[0][0], "motif")
    items = tuple(said("some-motifs", count=Count(n), motif=name) for n, name in made)
    return items[0] if len(items) == 1 else Several(items)
