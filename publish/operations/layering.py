"""Layering and basting: backing panels, the last paper, three layers held together.

In: keys of the top, the backing and the batting. Out: operations.
Invariant: a top that is layered is pressed and has no paper in it, and both layers reach past
its every edge.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.borders import PRESSED, PressBorder
from publish.operations.foundation_sections import LEFT_IN, LeavePaper
from publish.operations.operation import Moment, Operation, Shown, chosen
from publish.operations.parts import Layer, Part, sheet
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import (
    Count,
    Length,
    Letter,
    Named,
    Rectangle,
    Value,
    Values,
    Word,
)

READY, PINS = "pressed for the last time", "pins or long stitches"


@dataclass(frozen=True, kw_only=True)
class SewBacking(Operation):
    """Sew the panels of a backing together, one of them in two halves at both sides."""

    piece: str
    backing: str
    letter: str
    fabric: str
    count: int
    upright: bool
    """Whether the seams run up the quilt."""
    half: Exact | None
    seam: Exact

    message: ClassVar[str] = "sew-backing"

    @property
    def seams(self) -> int:
        return self.count - 1 if self.half is None else self.count

    def carry_out(self, table: Table) -> None:
        panel = table.take(self.piece, self.count)
        across, along = panel.width, panel.height
        if self.half is not None:
            fits = 2 * self.half <= across.told
            table.need(
                fits,
                "a panel that gives two halves",
                part=panel,
                expected=table.text(2 * self.half),
                received=table.text(across.told),
            )
        whole = across * self.count - 2 * self.seam * self.seams
        table.sew("piecing", along * self.seams)
        sides = (whole, along) if self.upright else (along, whole)
        table.put(replace(sheet(self.backing, *sides), known=panel.known))

    def values(self, moment: Moment) -> Values:
        backing = moment.after(self.backing)
        halves: Value | None = Length(self.half) if self.half is not None else None
        return chosen(
            {
                "panels": Count(self.count, "backing-panel"),
                "letter": Letter(self.letter),
                "fabric": Named(self.fabric),
                "split": Word("no" if self.half is None else "one" if self.count == 2 else "last"),
                "half": halves,
                "whole": Count(self.count - 1, "whole-panel"),
                "way": Word("vertical" if self.upright else "horizontal"),
                "seam": Length(self.seam),
                "seams": Count(self.seams),
                "backing": Rectangle(backing.width.told, backing.height.told),
            }
        )


@dataclass(frozen=True, kw_only=True)
class RemovePaper(Operation):
    """Tear out the last paper of foundations, which stays in until the sides are sewn."""

    top: str

    message: ClassVar[str] = "remove-paper"
    tools: ClassVar[tuple[str, ...]] = ("tweezers",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(top.is_(PRESSED), "the last seam pressed", by=PressBorder, part=top)
        table.need(bool(top.paper), "paper to remove", part=top)
        left = top.paper <= {LEFT_IN}
        table.need(
            left, "paper that was left in until its sides were sewn", by=LeavePaper, part=top
        )
        table.put(replace(top, paper=frozenset()))


@dataclass(frozen=True, kw_only=True)
class PressTop(Operation):
    """Press the finished top and clip threads that would show through."""

    top: str

    message: ClassVar[str] = "press-top"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(top.is_(PRESSED), "the last seam pressed", by=PressBorder, part=top)
        table.need(not top.paper, "the paper out before it is pressed", by=RemovePaper, part=top)
        table.put(top.having(READY))


@dataclass(frozen=True, kw_only=True)
class LayerQuilt(Operation):
    """Lay backing, batting and top on one another, the lower ones reaching further."""

    top: str
    backing: str
    batting: str
    quilt: str
    letter: str
    reach: tuple[Exact, Exact]
    """How far backing and batting must lie beyond each finished edge."""
    allowance: Exact
    """What of the top lies beyond its finished edge."""

    message: ClassVar[str] = "layer-quilt"
    tools: ClassVar[tuple[str, ...]] = ("tape",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(top.is_(READY), "a top that is pressed", by=PressTop, part=top)
        table.need(not top.paper, "a top without paper", by=RemovePaper, part=top)
        layers = []
        pairs = ((self.batting, "batting", 1), (self.backing, "backing", 0))
        for key, name, at in pairs:
            least = self._least(at, top)
            part = _as_it_lies(table.take(key, by=SewBacking if at == 0 else None), least)
            for side, asked in zip((part.width, part.height), least, strict=True):
                table.need(
                    not top.known or side.told >= asked,
                    f"{name} that reaches past every edge",
                    part=part,
                    expected=table.text(asked),
                    received=table.text(side.told),
                )
            layers.append(Layer(name, part.width, part.height))
        table.put(replace(top, key=self.quilt, layers=tuple(layers)).without(READY))

    def values(self, moment: Moment) -> Values:
        top = moment.before(self.top)
        backing, batting = (
            _as_it_lies(moment.before(key), self._least(at, top))
            for at, key in enumerate((self.backing, self.batting))
        )
        return chosen(
            {
                "letter": Letter(self.letter),
                "backing": Rectangle(backing.width.told, backing.height.told),
                "batting": Rectangle(batting.width.told, batting.height.told),
            }
        )

    def _least(self, at: int, top: Part) -> tuple[Exact, Exact]:
        """Return the width and height that a layer must have to reach past every edge."""
        more = 2 * self.reach[at] - 2 * self.allowance
        return top.width.exact + more, top.height.exact + more

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("layers")


def _as_it_lies(layer: Part, least: tuple[Exact, Exact]) -> Part:
    """Return a layer turned by a quarter where only so it reaches past every edge: a backing
    in one piece may be cut with its length across the cloth."""
    wide, high = layer.width.told, layer.height.told
    reaches = wide >= least[0] and high >= least[1]
    turned = high >= least[0] and wide >= least[1]
    return layer.sized(layer.height, layer.width) if turned and not reaches else layer


@dataclass(frozen=True, kw_only=True)
class BasteQuilt(Operation):
    """Baste the layers together from the centre out."""

    quilt: str
    rows: Exact
    motifs: bool

    message: ClassVar[str] = "baste-quilt"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        quilt = table.take(self.quilt, by=LayerQuilt)
        table.need(len(quilt.layers) > 1, "three layers", by=LayerQuilt, part=quilt)
        table.put(replace(quilt, basting=quilt.basting | {PINS}))

    def values(self, moment: Moment) -> Values:
        return {"rows": Length(self.rows), "edge": Word("motif" if self.motifs else "lines")}

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("sandwich")
