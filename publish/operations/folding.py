"""Folding a motif's square into one wedge.

In: the square's key, the folds in order. Out: operations.
Invariant: each fold finds as many layers as the one before it has left.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.handwork import Handwork, motif_heap
from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Letter, Named, Rectangle, Value, Values, Word

FLAT, CENTRED = "pressed flat", "its centre marked"
FOLDS = {
    "half": (1, 2),
    "quarter": (2, 4),
    "diagonal": (4, 8),
    "third": (2, 4),
    "last-third": (4, 6),
}
"""Layers before and after each fold; `again` doubles what there is."""
SEQUENCE = {
    4: ("half", "quarter"),
    6: ("half", "third", "last-third"),
    8: ("half", "quarter", "diagonal"),
    12: ("half", "third", "last-third", "again"),
    16: ("half", "quarter", "diagonal", "again"),
}
"""The folds that make a wedge of each number, in order."""
THICK = 12
"""Layers from which on scissors have as much as they will cut: common practice, no source."""


def is_folded(symmetry: str, method: str, folds: int) -> bool:
    """Return whether a motif is cut from folded cloth, by how its pattern describes it."""
    return symmetry == "mirror" and method != "fusible" and folds in SEQUENCE


def layered(count: int) -> str:
    """Return the state of cloth that is folded into so many layers."""
    return f"folded into {count} layers"


def layers_of(part: Part) -> int:
    """Return into how many layers cloth is folded; 1 for what lies open."""
    return next((n for n in (2, 4, 6, 8, 12, 16) if layered(n) in part.state), 1)


def unfolded(part: Part) -> Part:
    """Return cloth without its folds."""
    return part.without(*(s for s in part.state if s.startswith("folded into ")))


@dataclass(frozen=True, kw_only=True)
class PrepareSquare(Operation):
    """Take the square of a motif and press it."""

    piece: str
    motif: str
    letter: str
    fabric: str
    name: Value
    least: Exact
    """What the square must measure both ways: the motif with its turn-under."""

    message: ClassVar[str] = "prepare-square"
    tools: ClassVar[tuple[str, ...]] = ("iron", "starch")

    def carry_out(self, table: Table) -> None:
        square = table.take(self.piece)
        for side in (square.width, square.height):
            table.need(
                not square.known or side.told >= self.least,
                "cloth for the motif and its turn-under",
                part=square,
                expected=table.text(self.least),
                received=table.text(side.told),
            )
        table.put(replace(square, key=motif_heap(self.motif)).having(FLAT))

    def values(self, moment: Moment) -> Values:
        square = moment.before(self.piece)
        return {
            "letter": Letter(self.letter),
            "fabric": Named(self.fabric),
            "square": Rectangle(square.width.told, square.height.told),
            "motif": self.name,
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("fold", (("stage", "0"), ("motif", self.motif)))


@dataclass(frozen=True, kw_only=True)
class FoldSquare(Handwork):
    """Fold the cloth once more and press the fold."""

    fold: str
    """`half`, `quarter`, `diagonal`, `third`, `last-third` or `again`."""
    folds: int
    """Into how many layers it is folded in the end."""
    number: int
    last: bool
    shown: str
    """Key of the motif that is pictured."""

    message: ClassVar[str] = "fold"
    needs = ((FLAT, PrepareSquare),)

    @property
    def says(self) -> str:
        return f"fold-{self.fold}"

    @property
    def uses(self) -> tuple[str, ...]:
        return ("iron", "marker") if self.fold == "third" else ("iron",)

    def worked(self, table: Table, part: Part) -> Part:
        have = layers_of(part)
        before, after = FOLDS.get(self.fold, (have, 2 * have))
        table.need(
            have == before > 0,
            f"{before} layers",
            by=FoldSquare,
            part=part,
            expected=str(before),
            received=str(have),
        )
        if self.fold == "third":
            paper = table.take(f"printed template {self.shown}", 2)
            table.put(paper, 2)
        return unfolded(part).having(layered(after))

    def values(self, moment: Moment) -> Values:
        (part, _), *_rest = moment.gave
        return {
            "layers": Count(layers_of(part), "layer"),
            "folds": Count(self.folds),
            "last": Word("yes" if self.last else "no"),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("fold", (("stage", str(self.number)), ("motif", self.shown)))


@dataclass(frozen=True, kw_only=True)
class MarkCentre(Handwork):
    """Find the two folded edges of the wedge, and mark where they meet."""

    folds: int
    grain: str
    """Of the multiple folds: `straight`, `bias` or `off grain`."""

    message: ClassVar[str] = "mark-centre"
    leaves = CENTRED

    def worked(self, table: Table, part: Part) -> Part:
        have = layers_of(part)
        table.need(
            have == self.folds,
            f"{self.folds} layers",
            by=FoldSquare,
            part=part,
            expected=str(self.folds),
            received=str(have),
        )
        return part.having(CENTRED)

    def values(self, moment: Moment) -> Values:
        return {
            "layers": Count(self.folds, "layer"),
            "grain": Word(self.grain.replace(" ", "-")),
            "thick": Word("yes" if self.folds >= THICK else "no"),
        }
