"""Sewing on a printed foundation: placing, sewing, folding back and trimming, done.

In: a size; `section`, a foundation section's key; `stage` place, sew, trim or done.
Out: the figure.
Invariant: the paper is seen from its printed side, the mirror image of the block, with
the fabric under it; the line of stitching is the section's own first seam.
"""

from __future__ import annotations

import math

from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import block_arrow, leader
from publish.draw.canvas.shapes import XY, bounds_of, grown
from publish.draw.canvas.style import (
    CREASE,
    CUT,
    FINISHED,
    HAIR,
    INK,
    LABEL,
    PAPER,
    SOFT,
    STEP_WIDTH,
    STITCH,
    TINT,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.cloth import fabric, hatch
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.foundation_paper import BEYOND, Paper, across, mirrored
from publish.draw.piecing.table import letter_inside
from publish.model.draft import FoundationSection
from publish.model.figure import Figure
from publish.model.words import FigureSpec

STAGES = ("place", "sew", "trim", "done")
ROOM = (1.4, 1.9)
LEFT, TOP = 0.15, 0.15
SEE_THROUGH = 0.72


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw one stage of sewing a section."""
    stage, key = spec.get("stage", "place"), spec.get("section")
    held = {s.key: s for s in context.draft(spec).foundations}
    if key not in held:
        raise CannotDrawError(f"there is no foundation {key!r} at this size")
    if stage not in STAGES:
        raise CannotDrawError(f"there is no stage {stage!r}")
    paper = _Picture(context, held[key], context.canvas(STEP_WIDTH, 4.0))
    alt = {"place": paper.place, "sew": paper.sew, "trim": paper.trim, "done": paper.done}[stage]()
    return paper.canvas.figure(spec, alt)


class _Picture(Paper):
    """A section's printed side, drawn, with what is under it."""

    def __init__(self, context: Context, section: FoundationSection, canvas: Canvas) -> None:
        super().__init__(context, section)
        self.canvas, self.say = canvas, context.labels

    def frame(
        self, *around: BaseGeometry, room: tuple[float, float] = ROOM, left: float = LEFT
    ) -> Canvas:
        """Return a frame in inches of the paper, for it and the shapes round it."""
        a, b, c, d = bounds_of([self.cut, *around])
        scale = min(room[0] / (c - a), room[1] / (d - b), 0.62)
        return self.canvas.frame(left - a * scale, TOP - b * scale, scale)

    def printed(self, frame: Canvas, shape: Polygon, opacity: float = SEE_THROUGH) -> None:
        """Draw the paper within a shape: its lines, numbers and trim line."""
        frame.shape(shape, PAPER, None, opacity=opacity)
        frame.shape(shape, None, CUT.but(weight=0.5))
        lines = MultiLineString([self.whole.exterior, *(LineString(s) for s in self.seams)])
        frame.lines(lines.intersection(shape), FINISHED, smooth=0)
        for number, patch in enumerate(self.shapes):
            seen = patch.intersection(shape)
            if seen.area > 0.6 * patch.area and seen.geom_type == "Polygon":
                letter_inside(frame, seen, self.name(number), INK)

    def under(self, frame: Canvas, shape: Polygon, number: int) -> None:
        fabric(frame, shape, self.colours[number], "wrong")

    def hidden(self, frame: Canvas, shape: Polygon) -> None:
        """Draw the edges of fabric that the paper hides."""
        frame.shape(shape, None, CREASE)

    def notes(self, frame: Canvas, rows: list[tuple[XY, str]]) -> None:
        """Name places in a column at the right of the paper."""
        x = (LEFT + ROOM[0] + 0.18) * 72
        for number, (target, words) in enumerate(rows):
            y = (TOP + 0.3 + 0.24 * number) * 72
            leader(self.canvas.page, frame.point(target), (x, y), words, size=LABEL)

    def place(self) -> str:
        """The first fabric under its patch, wrong side to the paper."""
        rough = self.rough(0)
        frame = self.frame(rough)
        self.under(frame, rough, 0)
        self.printed(frame, self.cut)
        self.hidden(frame, rough)
        right, middle = rough.bounds[2], rough.centroid.y
        self.notes(
            frame,
            [((right - BEYOND / 2, middle), self.say.text("figure-fabric", value=self.name(0)))],
        )
        self.canvas.text(
            ((LEFT + ROOM[0] + 0.22), TOP + 0.48), self.say.text("figure-wrong-side-to"), LABEL
        )
        self.canvas.text(
            ((LEFT + ROOM[0] + 0.22), TOP + 0.62), self.say.text("figure-the-paper"), LABEL
        )
        return self.say.text(
            "figure-foundation-place",
            letter=self.section.letter,
            value=self.name(0),
            shapes=self.name(len(self.shapes) - 1),
            value_2=self.cloth(0),
        )

    def pair(self, frame: Canvas) -> tuple[Polygon, Polygon]:
        """Draw fabrics 1 and 2 right sides together under the paper; return them."""
        first = self.rough(0)
        second = self.laid()
        self.under(frame, second, 1)
        self.under(frame, first, 0)
        return first, second

    def stitching(self, frame: Canvas) -> None:
        start, end = self.seam()
        run = math.hypot(end[0] - start[0], end[1] - start[1])
        more = float(self.allowance) / run
        dx, dy = (end[0] - start[0]) * more, (end[1] - start[1]) * more
        frame.line(
            (start[0] - dx, start[1] - dy),
            (end[0] + dx, end[1] + dy),
            Stroke(STITCH.colour, 1.5, (2.4, 1.4)),
        )

    def sew(self) -> str:
        """The second fabric laid on the first, and the first line sewn."""
        frame = self.frame(self.rough(0), self.laid())
        first, second = self.pair(frame)
        self.printed(frame, self.cut)
        self.hidden(frame, first)
        self.hidden(frame, second)
        self.stitching(frame)
        start, end = self.seam()
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        self.notes(frame, [(middle, self.say.text("figure-sew-on-the-line"))])
        x = LEFT + ROOM[0] + 0.22
        for line, words in enumerate(
            (
                self.say.text("figure-past", allowance=self.say.length(self.allowance)),
                self.say.text("figure-both-of-its-ends"),
            )
        ):
            self.canvas.text((x, TOP + 0.48 + 0.14 * line), words, LABEL)
        return self.say.text(
            "figure-foundation-sew",
            value=self.name(1),
            value_2=self.cloth(1),
            value_3=self.name(0),
            allowance=self.say.plain(self.allowance),
        )

    def trim(self) -> str:
        """The paper folded back on the line, and the allowance trimmed."""
        seam = self.seam()
        kept, turned = self.folded(seam)
        flap = across(turned, seam)
        frame = self.frame(self.rough(0), self.laid(), flap)
        self.pair(frame)
        gone = self.waste(seam)
        frame.shape(gone, PAPER, None, opacity=0.6)
        hatch(frame, gone, Stroke(HAIR, 0.4), 2.6)
        self.printed(frame, kept, 1.0)
        frame.shape(flap, TINT, Stroke(SOFT, 0.6))
        self.stitching(frame)
        edge = self.parallel(seam)
        frame.line(*edge, CUT)
        middle = tuple((a + b) / 2 for a, b in zip(*edge, strict=True))
        flap_at = flap.representative_point()
        rows = [
            (
                (middle[0], middle[1]),
                self.say.text("figure-trim-to-2", allowance=self.say.length(self.allowance)),
            ),
            ((flap_at.x, flap_at.y), self.say.text("figure-paper-folded")),
        ]
        self.notes(frame, rows)
        self.canvas.text(
            (LEFT + ROOM[0] + 0.22, TOP + 0.72), self.say.text("figure-back-on-the-line"), LABEL
        )
        return self.say.text(
            "figure-foundation-trim", allowance=self.say.plain(self.allowance), value=self.name(1)
        )

    def done(self) -> str:
        """The printed side, trimmed, and the finished side in its fabrics."""
        room = (1.0, 1.7)
        frame = self.frame(room=room, left=0.08)
        self.printed(frame, self.cut, 1.0)
        a, b, c, d = self.cut.bounds
        scale = frame.unit / 72
        wide, middle = (c - a) * scale, TOP + (d - b) * scale / 2
        x = STEP_WIDTH - 0.08 - wide
        gap = (0.08 + wide + x) / 2
        block_arrow(self.canvas, (gap - 0.13, middle), (gap + 0.13, middle), SOFT, 8.0)
        # The finished side is the block's own way round: the mirror image of the paper.
        own = self.canvas.frame(x + c * scale, TOP - b * scale, scale)
        outline = mirrored(self.whole)
        allowance = float(self.allowance)
        for number, shape in enumerate(self.shapes):
            colour = self.colours[number]
            grew = grown(mirrored(shape), outline, lambda _a, _b: allowance)
            own.shape(
                grew.intersection(mirrored(self.cut)),
                colour,
                Stroke(mix(edge_of(colour), INK, 0.2), 0.4),
            )
            letter_inside(own, mirrored(shape), self.name(number), readable_on(colour))
        own.shape(outline, None, Stroke(PAPER, 0.7, (2.0, 1.6)))
        low = TOP + (d - b) * scale + 0.2
        self.canvas.text(
            (0.08 + wide / 2, low), self.say.text("figure-printed-side"), LABEL, anchor="middle"
        )
        self.canvas.text(
            (x + wide / 2, low), self.say.text("figure-finished-side"), LABEL, anchor="middle"
        )
        fabrics = [f"{self.name(i)} {self.cloth(i)}" for i in range(len(self.shapes))]
        return self.say.text(
            "figure-foundation-done",
            letter=self.section.letter,
            allowance=self.say.plain(self.allowance),
            fabrics=self.say.listed(fabrics),
        )
