"""The cloth on the page: where a point of it is drawn.

In: a frame in inches of cloth, a fabric's plan, its colour. Out: `Bench`.
Invariant: cloth runs down the page or across it; its length begins at the top or the left.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.style import Stroke
from publish.model.cutplan import FabricPlan, PieceTemplate


@dataclass(frozen=True)
class Bench:
    """The cloth on the page: its frame, and whether it runs down or across."""

    frame: Canvas
    down: bool
    plan: FabricPlan
    colour: str
    labels: Labels
    templates: Mapping[str, PieceTemplate] = field(default_factory=dict)
    """By key: what pieces are cut with."""

    def at(self, along: Fraction | float, across: Fraction | float) -> tuple[float, float]:
        a, b = float(along), float(across)
        return (b, a) if self.down else (a, b)

    def rect(
        self,
        along: Fraction,
        across: Fraction,
        length: Fraction,
        width: Fraction,
        fill: str | None,
        stroke: Stroke | None,
    ) -> None:
        (x, y), (w, h) = self.at(along, across), self.at(length, width)
        self.frame.rect(x, y, w, h, fill, stroke)

    def printed(self, length: Fraction | float) -> float:
        """Return a length of cloth in points of the page."""
        return float(length) * self.frame.unit
