"""What every close-up of the motif's edge is drawn with.

In: points of the page. Out: stitches, clips, arrows, names, on the page.
Invariant: the turn-under and the distance between stitches keep their proportion to each
other; the finished line is solid, what lies hidden beneath is dashed, a clip is red-brown.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from shapely.geometry import LineString
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import arrow, bend
from publish.draw.canvas.style import (
    CREASE,
    FINISHED,
    INK,
    LABEL,
    LEADER,
    PAPER,
    RED_BROWN,
    Stroke,
    edge_of,
    mix,
)
from publish.draw.cloth import fabric
from publish.model.trade import STITCH_APART

ENLARGED = 2.1
"""How many times the close-ups are larger than the work."""
USUAL = Fraction(1, 8)
"""Turn-under that is drawn for a motif with raw edges, which has none."""
CLIP = Stroke(RED_BROWN, 1.1)
STITCHING = Stroke(RED_BROWN, 1.1, (), "round")


@dataclass(frozen=True)
class Close:
    """A close-up in points of the page: its canvas, the two fabrics, the turn-under."""

    canvas: Canvas
    page: Canvas
    ground: str
    cloth: str
    ink: str
    under: Fraction
    labels: Labels

    @property
    def turn(self) -> float:
        """Return the turn-under as drawn, in points."""
        return float(self.under) * 72 * ENLARGED

    @property
    def step(self) -> float:
        """Return the distance between stitches as drawn, in points."""
        return float(STITCH_APART) * 72 * ENLARGED

    def on(self, frame: Canvas) -> Close:
        """Return the same close-up on another frame of the page."""
        return replace(self, page=frame)

    def stitch(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """Draw one stitch."""
        self.page.line(start, end, STITCHING.but(colour=PAPER, weight=2.0))
        self.page.line(start, end, STITCHING)

    def motif(self, shape: BaseGeometry) -> None:
        fabric(self.page, shape, self.cloth, outline=Stroke(edge_of(self.cloth), 0.8))

    def hidden(self, shape: BaseGeometry) -> None:
        """Draw an edge that lies beneath the motif."""
        shade = mix(self.cloth, self.ink, 0.55)
        self.page.lines(shape, CREASE.but(colour=shade, weight=0.5))

    def finished(self, shape: BaseGeometry) -> None:
        self.page.lines(shape, FINISHED.but(colour=self.ink))


def stitches(close: Close, edge: LineString, start: float = 0.5) -> list[tuple[float, float]]:
    """Draw appliqué stitches over a finished edge; return where they cross it."""
    found = []
    at = start * close.step
    while at < edge.length - 2:
        here, ahead = edge.interpolate(at), edge.interpolate(at + 1)
        dx, dy = ahead.x - here.x, ahead.y - here.y
        nx, ny = dy - 0.35 * dx, -dx - 0.35 * dy
        a = (here.x + 3.4 * nx, here.y + 3.4 * ny)
        b = (here.x - 2.0 * nx, here.y - 2.0 * ny)
        close.stitch(a, b)
        found.append((here.x, here.y))
        at += close.step
    return found


def sweep(close: Close, start: tuple[float, float], end: tuple[float, float], bulge: float) -> None:
    """Draw the arrow of cloth that is turned under; it shows on any fabric."""
    track = bend(start, end, bulge)
    close.page.polyline(track, Stroke(PAPER, 2.6, (), "round"))
    arrow(close.page, track, Stroke(INK, 1.0), "open", size=5.0)


def name(page: Canvas, target: tuple[float, float], y: float, text: str) -> None:
    """Name a place by words straight above or below it, with a line that stops short."""
    short = y + 5.5 if y < target[1] else y - 5.5
    page.line(target, (target[0], short), LEADER)
    page.circle(target, 1.3, INK, Stroke(PAPER, 0.4))
    page.text((target[0], y), text, LABEL, "regular", "middle", "middle")
