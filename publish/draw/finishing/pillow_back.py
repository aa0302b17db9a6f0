"""An envelope back: hemming the pieces, laying them on the front, sewing round.

In: a pillow. Out: the drawing on its canvas; each function returns the alternative text.
Invariant: one scale for front and back pieces of a figure; the overlap drawn is the
plan's.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from shapely.geometry import box

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, dimension, leader
from publish.draw.canvas.style import (
    ARROW,
    CREASE,
    INK,
    PAPER,
    STITCH,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.cloth import fabric, sheet
from publish.draw.context import Context
from publish.draw.piecing.table import paint_raw
from publish.draw.top import paint_motifs
from publish.draw.workbench import Workbench
from publish.model.cutplan import PillowPlan
from publish.model.pattern import PillowSpec


@dataclass(frozen=True)
class Pillow:
    """A pillow's bench, plan and finish."""

    context: Context
    bench: Workbench
    plan: PillowPlan
    spec: PillowSpec

    @property
    def front(self) -> tuple[Fraction, Fraction]:
        """The trimmed front's width and height: finished size and two seams."""
        size, seam = self.bench.size, self.spec.seam
        return size.width + 2 * seam, size.height + 2 * seam

    @property
    def hemmed(self) -> Fraction:
        """The short side of a back piece once it is hemmed."""
        return min(self.plan.piece_width, self.plan.piece_length) - self.plan.hem

    def paint_front(self, frame: Canvas) -> None:
        """Draw the trimmed front, right side up, its raw corner at the frame's origin."""
        draft = self.context.drafts[self.bench.size.key]
        seam = float(self.spec.seam)
        inner = frame.frame(seam, seam)
        paint_raw(inner, self.context, draft, draft.assembly, (self.spec.seam,) * 4)
        paint_motifs(inner, self.context, draft, draft.placements)


def draw_hem(pillow: Pillow) -> str:
    """Draw a back piece, wrong side up, its long edge folded over twice and sewn."""
    say = pillow.context.labels
    bench, plan = pillow.bench, pillow.plan
    long = max(plan.piece_width, plan.piece_length)
    short = min(plan.piece_width, plan.piece_length)
    scale = 1.72 / float(long)
    frame = bench.canvas.frame(0.34, 0.06, scale)
    wide, high, fold = float(long), float(pillow.hemmed), float(plan.hem / 2)
    fabric(frame, sheet(0, 0, wide, high), bench.strip, "wrong")
    fabric(frame, sheet(0, high - fold, wide, fold), bench.strip)
    thread = STITCH.but(readable_on(bench.strip))
    inner = high - fold + frame.inches(1.6)
    frame.line((0, inner), (wide, inner), thread)
    dimension(frame, (0, high), (0, 0), say.length(pillow.hemmed), 9)
    beside = wide + frame.inches(10)
    middle = high - fold / 2
    leader(frame, (wide * 0.96, middle), (beside, middle), say.text("figure-hem"), halo=None)
    words = say.text("figure-fold-then-again", hem=say.length(plan.hem / 2))
    frame.text((wide / 2, high), words, anchor="middle", shift=(0, 12))
    frame.text(
        (wide / 2, high * 0.42),
        say.text("figure-wrong-side"),
        anchor="middle",
        level="middle",
        halo=PAPER,
    )
    return say.text(
        "figure-pillow-back-draw-hem",
        count=say.counted(plan.count, "back piece"),
        long=say.spoken(long, short),
        hem=say.plain(plan.hem / 2),
        hemmed=say.plain(pillow.hemmed),
    )


def draw_layer(pillow: Pillow) -> str:
    """Draw the front with one back piece on it and the other coming."""
    say = pillow.context.labels
    bench, plan = pillow.bench, pillow.plan
    front_w, front_h = pillow.front
    wide, high, deep = float(front_w), float(front_h), float(pillow.hemmed)
    scale = 1.5 / wide
    start = high + 0.08 / scale
    frame = bench.canvas.frame(0.06, 0.06, scale)
    pillow.paint_front(frame)
    _back(frame, pillow, (0.0, 0.0), up=True)
    frame.line((0, high - deep), (wide, high - deep), CREASE.but(INK, 0.7))
    _back(frame, pillow, (0.0, start), up=False)
    x = wide * 0.86
    frame.line((x, start + deep * 0.4), (x, high - deep * 0.22), Stroke(PAPER, 2.6, (), "round"))
    arrow(frame, [(x, start + deep * 0.4), (x, high - deep * 0.25)], ARROW)
    dimension(frame, (wide, high - deep), (wide, deep), say.length(plan.overlap), 9)
    beside = wide + frame.inches(12)
    leader(
        frame,
        (wide * 0.94, deep * 0.3),
        (beside, deep * 0.3),
        say.text("figure-first-back"),
        halo=None,
    )
    frame.text((beside, deep * 0.3), say.text("figure-wrong-side-up"), shift=(2.5, 11.5))
    y = start + deep * 0.7
    leader(frame, (wide * 0.94, y), (beside, y), say.text("figure-second-back"), halo=None)
    return say.text(
        "figure-pillow-back-draw-layer",
        front_w=say.spoken(front_w, front_h),
        overlap=say.plain(plan.overlap),
    )


def _back(frame: Canvas, pillow: Pillow, at: tuple[float, float], up: bool) -> None:
    """Draw a hemmed back piece, wrong side up, its hem below (`up`) or above."""
    colour, fold = pillow.bench.strip, float(pillow.plan.hem / 2)
    wide, deep = float(pillow.front[0]), float(pillow.hemmed)
    x, y = at
    fabric(frame, sheet(x, y, wide, deep), colour, "wrong")
    edge = y + deep - fold if up else y
    fabric(frame, sheet(x, edge, wide, fold), colour)


def draw_sew(pillow: Pillow) -> str:
    """Draw the layers with the seam all round and its doubled ends at the hems."""
    say = pillow.context.labels
    bench = pillow.bench
    front_w, front_h = pillow.front
    wide, high, deep = float(front_w), float(front_h), float(pillow.hemmed)
    seam = float(pillow.spec.seam)
    scale = 1.62 / wide
    frame = bench.canvas.frame(0.06, 0.06, scale)
    _back(frame, pillow, (0.0, 0.0), up=True)
    _back(frame, pillow, (0.0, high - deep), up=False)
    thread = Stroke(mix(bench.strip, "#000000", 0.35), 1.0, (2.2, 1.4))
    frame.lines(box(seam, seam, wide - seam, high - seam).exterior, thread, 0)
    for x in (seam, wide - seam):  # back stitches hold the seam where the hems cross it
        beyond = x + frame.inches(1.8)
        frame.line((beyond, high - deep - seam), (beyond, deep + seam), thread)
    beside = wide + frame.inches(11)
    leader(
        frame,
        (wide - seam, high * 0.16),
        (beside, high * 0.16),
        say.text("figure-seam", seam=say.length(pillow.spec.seam)),
        halo=None,
    )
    leader(
        frame,
        (wide - seam, high / 2),
        (beside, high / 2),
        say.text("figure-back-stitch"),
        halo=None,
    )
    frame.text((beside, high / 2), say.text("figure-at-the-hems"), shift=(2.5, 11.5))
    frame.shape(box(0, 0, wide, high), None, Stroke(edge_of(bench.strip), 0.7))
    return say.text("figure-pillow-back-draw-sew", seam=say.plain(pillow.spec.seam))
