"""Laying a motif on its ground: creases, centre on centre, folds on creases, basting.

In: keys of motifs and grounds. Out: operations.
Invariant: a motif lies on a ground that is creased and reaches past it on every side.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.borders import PRESSED
from publish.operations.handwork import Handwork, Needs, ground_heap, laid_heap, motif_heap
from publish.operations.operation import Moment, Operation, Shown, chosen
from publish.operations.parts import Layer, Part
from publish.operations.table import Table
from publish.operations.unit_pressing import PressUnit
from publish.surd import Length as Exact
from publish.words.values import Length, Letter, Value, Values, Word

CREASED = "its guide lines creased"
LAID, ALIGNED = "its motif centred", "its motif turned to its creases"
FUSED = "fused to its ground"
ROWS, LONG = "basted but for its narrow arms", "long stitches"


@dataclass(frozen=True, kw_only=True)
class CreaseGround(Operation):
    """Fold a ground into its guide lines."""

    source: str
    """What the grounds are called before: `piece B`, or as here where they are pieced."""
    block: str
    count: int
    letter: str
    """Empty for a pieced ground."""
    name: Value
    """Of the block."""
    seams: str
    """Which creases its seams stand for: `none`, `one` or `both` of those in half."""

    message: ClassVar[str] = "crease-ground"

    def carry_out(self, table: Table) -> None:
        ground = table.take(self.source, self.count)
        table.need(bool(self.letter) or ground.is_(PRESSED), PRESSED, by=PressUnit, part=ground)
        table.put(replace(ground, key=ground_heap(self.block)).having(CREASED), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "ground": Word("whole" if self.letter else "pieced"),
            "letter": Letter(self.letter),
            "block": self.name,
            "seams": Word(self.seams),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("crease-ground", (("block", self.block),))


@dataclass(frozen=True)
class Laid:
    """A motif and the block that it is laid on, and how many there are."""

    motif: str
    block: str
    count: int
    done: Needs
    """States that the motif must be in, with the verbs that leave them."""


@dataclass(frozen=True, kw_only=True)
class CentreMotif(Operation):
    """Lay each motif on its ground, centre on centre."""

    laid: tuple[Laid, ...]

    message: ClassVar[str] = "centre-motif"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        for one in self.laid:
            motif = table.take(motif_heap(one.motif), one.count)
            ground = table.take(ground_heap(one.block), one.count, by=CreaseGround)
            table.need(ground.is_(CREASED), CREASED, by=CreaseGround, part=ground)
            table.need(not motif.paper, "the motif without its paper", part=motif)
            for state, by in one.done:
                table.need(motif.is_(state), state, by=by, part=motif)
            for mine, under in ((motif.width, ground.width), (motif.height, ground.height)):
                table.need(
                    not motif.known or under.told > mine.told,
                    "a ground larger than its motif",
                    part=ground,
                    expected=table.text(mine.told),
                    received=table.text(under.told),
                )
            layer = Layer(f"motif {one.motif}", motif.width, motif.height)
            block = replace(ground, key=laid_heap(one.block), layers=(*ground.layers, layer))
            known = ground.known and motif.known
            table.put(replace(block.having(LAID), known=known), one.count)


@dataclass(frozen=True, kw_only=True)
class AlignMotif(Handwork):
    """Turn a motif so that its folds lie on the creases of the ground, and pin it."""

    motif: str
    name: Value | None
    """Of the motif, where motifs are turned differently."""
    guides: str
    """Which creases its folds lie on: `both`, `half`, `diagonal`, `level`, `upright`, `none`
    or `fused`."""
    folded: bool
    """Whether its creases come from being folded."""
    clear: Exact
    """How far its points stay inside the finished block."""
    basted: bool
    block: str
    """Of those that are pictured."""

    message: ClassVar[str] = "align-motif"
    tools: ClassVar[tuple[str, ...]] = ("pins",)
    needs = ((LAID, CentreMotif),)
    leaves = ALIGNED

    @property
    def says(self) -> str:
        return "align-motif" if self.name is None else "align-motif-named"

    def values(self, moment: Moment) -> Values:
        return chosen(
            {
                "guides": Word(self.guides),
                "creases": Word("folds" if self.folded else "creases"),
                "clear": Length(self.clear),
                "then": Word("basted" if self.basted else "fused"),
                "motif": self.name,
            }
        )

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("place-motif", (("motif", self.motif), ("block", self.block)))


@dataclass(frozen=True, kw_only=True)
class BasteMotif(Handwork):
    """Baste each motif to its ground, clear of the edge that is sewn."""

    inside: Exact
    """How far inside the edge the basting lies."""
    edge: str
    """`raw` or `pressed`."""
    narrow: bool
    """Whether some arm is too narrow for a row along either side."""

    message: ClassVar[str] = "baste-motif"
    tools: ClassVar[tuple[str, ...]] = ("needle",)
    needs = ((ALIGNED, AlignMotif),)

    def worked(self, table: Table, part: Part) -> Part:
        return part.having(ROWS) if self.narrow else basted(part)

    def values(self, moment: Moment) -> Values:
        return {"inside": Length(self.inside), "edge": Word(self.edge)}


@dataclass(frozen=True, kw_only=True)
class BasteArms(Handwork):
    """Baste narrow arms along their middle."""

    message: ClassVar[str] = "baste-arms"
    needs = ((ROWS, BasteMotif),)

    def worked(self, table: Table, part: Part) -> Part:
        return basted(part.without(ROWS))


def basted(part: Part) -> Part:
    """Return a block whose motif is held by long stitches."""
    return replace(part, basting=part.basting | {LONG})
