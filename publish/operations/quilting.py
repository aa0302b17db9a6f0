"""Quilting: area by area from the centre out, between the basting and its taking out.

In: the key of the quilt, the lines that are drawn. Out: operations.
Invariant: nothing is quilted that is not basted, and the basting comes out after the last line.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.layering import BasteQuilt, LayerQuilt
from publish.operations.operation import Moment, Operation, chosen
from publish.operations.parts import Part
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import (
    Length,
    Stitch,
    Values,
    Word,
)

BEGUN = "quilting begun"


def quilted(area: str) -> str:
    """Return the state of a quilt whose area is quilted."""
    return f"{area} quilted"


@dataclass(frozen=True, kw_only=True)
class BeginQuilting(Operation):
    """Fit foot and needle and try the stitch on a scrap sandwich."""

    quilt: str
    stitch: Exact

    message: ClassVar[str] = "begin-quilting"
    tools: ClassVar[tuple[str, ...]] = ("walking foot", "needle")

    def carry_out(self, table: Table) -> None:
        table.put(_basted(table, self.quilt).having(BEGUN))

    def values(self, moment: Moment) -> Values:
        return {"stitch": Stitch(self.stitch)}


@dataclass(frozen=True, kw_only=True)
class AnchorQuilt(Operation):
    """Quilt along seams about the middle of a large quilt first."""

    quilt: str
    seams: str
    """Which: one `each way`, `one` alone, or those `round` the middle."""

    message: ClassVar[str] = "anchor-quilt"

    def carry_out(self, table: Table) -> None:
        quilt = _basted(table, self.quilt)
        table.need(quilt.is_(BEGUN), "foot and stitch tried", by=BeginQuilting, part=quilt)
        table.put(quilt.having("anchored"))

    def values(self, moment: Moment) -> Values:
        return {"seams": Word(self.seams)}


@dataclass(frozen=True, kw_only=True)
class QuiltArea(Operation):
    """Quilt one area in one style."""

    quilt: str
    area: str
    style: str
    lines: str
    """How straight lines run, for the words to choose by."""
    spacing: Exact | None
    length: Exact
    """Of the lines, in inches."""
    motifs: bool
    """Whether the top has motifs: without them the ground is the patchwork."""
    after: tuple[str, ...]
    """What is quilted before: work goes from the centre out."""
    anchored: bool = False
    """Whether the quilt is large enough to be anchored first, and has seams for it."""

    message: ClassVar[str] = "quilt-area"

    @property
    def says(self) -> str:
        return f"quilt-area-{self._how()}"

    @property
    def uses(self) -> tuple[str, ...]:
        marked = self.style in ("parallel", "grid")
        return ("marker",) if marked else ("free-motion foot",) * (self.says == "quilt-area-ditch")

    def _how(self) -> str:
        if self.style == "ditch":
            return "ditch" if self.area == "motif" else "seams"
        if self.style == "echo" and self.area != "ground":
            return f"echo-{self.area}"
        return self.style.replace(" ", "-")

    def carry_out(self, table: Table) -> None:
        quilt = _basted(table, self.quilt)
        table.need(quilt.is_(BEGUN), "foot and stitch tried", by=BeginQuilting, part=quilt)
        anchored = quilt.is_("anchored") or not self.anchored
        table.need(anchored, "seams about the middle quilted", by=AnchorQuilt, part=quilt)
        for area in self.after:
            table.need(quilt.is_(quilted(area)), quilted(area), by=QuiltArea, part=quilt)
        table.sew("quilting", self.length)
        table.put(quilt.having(quilted(f"{self.area} {self.style} {self.lines}".strip())))

    def values(self, moment: Moment) -> Values:
        area = "patchwork" if self.area == "ground" and not self.motifs else self.area
        return chosen(
            {
                "area": Word(area),
                "lines": Word(self.lines),
                "apart": Length(self.spacing) if self.spacing is not None else None,
                "edge": Word("motif" if self.motifs else "edge"),
            }
        )


@dataclass(frozen=True, kw_only=True)
class RemoveBasting(Operation):
    """Take the basting out and look at the back."""

    quilt: str
    areas: tuple[str, ...]
    """What must be quilted by now."""

    message: ClassVar[str] = "remove-basting"

    def carry_out(self, table: Table) -> None:
        quilt = _basted(table, self.quilt)
        for area in self.areas:
            table.need(quilt.is_(quilted(area)), quilted(area), by=QuiltArea, part=quilt)
        table.put(replace(quilt, basting=frozenset()))


def _basted(table: Table, key: str) -> Part:
    """Take a quilt whose layers are held together."""
    quilt = table.take(key, by=LayerQuilt)
    table.need(bool(quilt.basting), "basted layers", by=BasteQuilt, part=quilt)
    return quilt
