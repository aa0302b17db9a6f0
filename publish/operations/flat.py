"""A motif that cannot be folded: traced whole from its joined template, and cut flat.

In: the motif's square. Out: operations.
Invariant: both lines come from one template, whose sheets are joined first.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.handwork import Handwork, motif_heap
from publish.operations.marking import ALL_MARKED, CREASED, CUT, DASHED, template
from publish.operations.operation import Moment, Operation
from publish.operations.parts import Part, measured
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Letter, Named, Value, Values, Word

WHOLE = "whole"


@dataclass(frozen=True, kw_only=True)
class JoinTemplate(Operation):
    """Print the sheets of a whole template and tape them together."""

    motif: str
    name: Value

    message: ClassVar[str] = "join-template"
    tools: ClassVar[tuple[str, ...]] = ("printer", "scissors", "tape")

    def carry_out(self, table: Table) -> None:
        table.put(Part(template(self.motif, WHOLE)))
        table.spare.add(template(self.motif, WHOLE))

    def values(self, moment: Moment) -> Values:
        return {"motif": self.name}


@dataclass(frozen=True, kw_only=True)
class TraceMotif(Operation):
    """Press and crease the square, and trace both lines through it."""

    piece: str
    motif: str
    letter: str
    fabric: str
    under: Exact
    turning: bool
    """Whether the design has no mirror line: why it is not folded."""

    message: ClassVar[str] = "trace-motif"
    tools: ClassVar[tuple[str, ...]] = ("iron", "marker", "light box")

    def carry_out(self, table: Table) -> None:
        paper = template(self.motif, WHOLE)
        table.put(table.take(paper, by=JoinTemplate))
        square = replace(table.take(self.piece), key=motif_heap(self.motif))
        table.put(square.having(CREASED, DASHED, ALL_MARKED))

    def values(self, moment: Moment) -> Values:
        return {
            "letter": Letter(self.letter),
            "fabric": Named(self.fabric),
            "under": Length(self.under),
            "turning": Word("yes" if self.turning else "no"),
        }


@dataclass(frozen=True, kw_only=True)
class CutFlat(Handwork):
    """Cut a traced motif out."""

    across: Exact
    """Of the motif with its turn-under."""
    holes: bool
    pieces: int

    message: ClassVar[str] = "cut-flat"
    tools: ClassVar[tuple[str, ...]] = ("scissors", "small scissors")
    needs = ((DASHED, TraceMotif),)

    def worked(self, table: Table, part: Part) -> Part:
        across = measured(self.across)
        for side in (part.width, part.height):
            table.need(side.told >= self.across, "cloth for the motif", part=part)
        return part.sized(across, across).without(DASHED).having(CUT)

    def values(self, moment: Moment) -> Values:
        return {"holes": Word("yes" if self.holes else "no"), "pieces": Count(self.pieces)}
