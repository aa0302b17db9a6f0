"""Trimming a block, or a pillow's quilted front, about the centre of its motif.

In: a size and `block`. Out: the figure.
Invariant: the trim line is the finished size and what its seams take up; the motif's
centre is the centre of the square that is kept.
"""

from __future__ import annotations

from fractions import Fraction

from shapely.geometry import box

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import dimension, leader
from publish.draw.canvas.style import CUT, HAIR, INK, PAPER, STEP_WIDTH, Stroke
from publish.draw.cloth import hatch
from publish.draw.context import Context
from publish.draw.piecing.table import Margins, ground_of, laid_size, margins, paint_raw, raw_patch
from publish.draw.top import paint_motifs
from publish.model.draft import Draft, Unit
from publish.model.figure import Figure
from publish.model.size import Size
from publish.model.words import FigureSpec

SIDE = 1.6
LEFT, TOP = 0.1, 0.1


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the block with its trim line, what is cut away, and the size to keep."""
    say = context.labels
    size, draft = context.size(spec), context.draft(spec)
    unit, margin, seam = _subject(context, spec, size, draft)
    wide, high = laid_size(unit, margin)
    scale = SIDE / float(max(wide, high))
    west, north = float(unit.box[0] - margin[0]), float(unit.box[1] - margin[1])
    canvas = context.canvas(STEP_WIDTH, 3.0)
    frame = canvas.frame(LEFT - west * scale, TOP - north * scale, scale)
    paint_raw(frame, context, draft, unit, margin)
    places = [p for p in draft.placements if _within(unit, float(p.x), float(p.y))]
    paint_motifs(frame, context, draft, places)
    kept = (unit.box[0] - seam, unit.box[1] - seam, unit.box[2] + seam, unit.box[3] + seam)
    _line(context.labels, frame, unit, margin, kept)
    for place in places[:1]:
        centre = (float(place.x), float(place.y))
        reach = frame.inches(5)
        for dx, dy in ((reach, 0), (0, reach)):
            frame.line(
                (centre[0] - dx, centre[1] - dy),
                (centre[0] + dx, centre[1] + dy),
                Stroke(PAPER, 1.6),
            )
            frame.line(
                (centre[0] - dx, centre[1] - dy), (centre[0] + dx, centre[1] + dy), Stroke(INK, 0.7)
            )
    alt = say.text(
        "figure-trim",
        wide=say.spoken(wide, high),
        kept=say.spoken(kept[2] - kept[0], kept[3] - kept[1]),
    )
    return canvas.figure(spec, alt)


def _subject(
    context: Context, spec: FigureSpec, size: Size, draft: Draft
) -> tuple[Unit, Margins, Fraction]:
    """Return what is trimmed, how far it reaches now, and the seam it is trimmed for."""
    unit = ground_of(draft, spec.get("block"))
    margin = margins(context, draft, unit, trimmed=False)
    whole_front = size.block_count == 1 and not size.borders
    if size.pillow is None or not (whole_front or "front" in spec.key):
        return unit, margin, context.pattern.sewing.seam
    if whole_front:
        return unit, margin, size.pillow.seam
    spare = max(margin[0], size.pillow.seam + context.pattern.sewing.seam)
    return draft.assembly, (spare,) * 4, size.pillow.seam


def _within(unit: Unit, x: float, y: float) -> bool:
    return unit.box[0] <= x <= unit.box[2] and unit.box[1] <= y <= unit.box[3]


def _line(
    say: Labels, frame: Canvas, unit: Unit, margin: Margins, kept: tuple[Fraction, ...]
) -> None:
    left, top, right, bottom = (float(v) for v in kept)
    whole = box(*raw_patch(unit, unit.patches[0], margin).bounds)
    for patch in unit.patches[1:]:
        whole = whole.union(raw_patch(unit, patch, margin))
    away = whole.difference(box(left, top, right, bottom))
    frame.shape(away, PAPER, None, opacity=0.72)
    hatch(frame, away, Stroke(HAIR, 0.4), 2.6)
    frame.shape(whole, None, Stroke(HAIR, 0.5))
    over = frame.inches(5)
    for start, end in (
        ((left, top - over), (left, bottom + over)),
        ((right, top - over), (right, bottom + over)),
        ((left - over, top), (right + over, top)),
        ((left - over, bottom), (right + over, bottom)),
    ):
        frame.line(start, end, CUT)
    wide, high = kept[2] - kept[0], kept[3] - kept[1]
    dimension(frame, (right, bottom), (left, bottom), say.length(wide), 17)
    dimension(frame, (right, top), (right, bottom), say.length(high), 17)
    corner = whole.bounds
    spot = (corner[2] - (corner[2] - right) / 2, top + (bottom - top) * 0.16)
    leader(
        frame,
        spot,
        (corner[2] + frame.inches(25), spot[1]),
        say.text("figure-trim-away"),
        halo=PAPER,
    )
