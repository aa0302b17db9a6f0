"""The finished quilt or pillow front.

In: a size; `dimensions` yes or no. Out: the figure.
Invariant: drawn to scale; every dimension shown is one of the size's own.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import dimension, leader
from publish.draw.canvas.shapes import bounds_of, polygon_of
from publish.draw.context import Context
from publish.draw.pictured import with_pictures
from publish.draw.top import fit, paint_top
from publish.draw.words import top_words
from publish.model.draft import Draft
from publish.model.figure import COVER, Figure, Picture
from publish.model.size import Size
from publish.model.words import FigureSpec

PLAIN = (6.0, 7.5)
MEASURED = (4.5, 5.5)
"""Inches of room: alone on a page, and with dimensions in a text column."""
MARGIN = {"left": 0.34, "right": 0.95, "top": 0.3, "bottom": 0.34}


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the finished top with its binding, its appliqué and its quilting."""
    size = context.size(spec)
    if COVER in context.pictures and spec.key == context.manual.cover.figure.key:
        return _pictured(context, spec, context.pictures[COVER])
    measured = spec.get("dimensions", "no") == "yes"
    room = MEASURED if measured else PLAIN
    margin = MARGIN if measured else dict.fromkeys(MARGIN, 0.04)
    seam = 2 * context.pattern.sewing.seam
    inner = (room[0] - margin["left"] - margin["right"], room[1])
    scale = fit(size.width + seam, size.height + seam, inner)
    wide = float(size.width + seam) * scale + margin["left"] + margin["right"]
    canvas = context.canvas(wide, room[1])
    edge = float(seam) / 2 * scale
    frame = canvas.frame(margin["left"] + edge, margin["top"] + edge, scale)
    paint_top(frame, context, size.key, quilting=True)
    if measured:
        _dimensions(context.labels, frame, context.draft(spec), size)
    return canvas.figure(spec, described(context, size))


def _pictured(context: Context, spec: FigureSpec, shown: Picture) -> Figure:
    """Show the size as it will look."""
    wide = PLAIN[0]
    high = wide * shown.height / shown.width
    canvas = context.canvas(wide, high)
    say, what = context.labels, described(context, context.size(spec))[:-1]
    alt = say.pictured(what, shown.where)
    figure = canvas.figure(spec, alt, trim=False)
    return with_pictures(figure, {COVER: (0, 0, wide, high)}, alone=True)


def _dimensions(say: Labels, frame: Canvas, draft: Draft, size: Size) -> None:
    width, height = size.width, size.height
    dimension(frame, (0, 0), (width, 0), say.length(width), 12)
    dimension(frame, (0, height), (0, 0), say.length(height), 12)
    left, _, right, _ = _block_box(draft)
    words = say.text("figure-block", block_side=say.length(size.block_side))
    if not size.on_point:
        dimension(frame, (right, height), (left, height), words, 13)
    outer = Fraction(0)
    layers = [r for r in size.layers if r.border is not None]
    number = len(layers)
    for layer in reversed(size.layers):
        deep = (layer.width - layer.inner_width) / 2
        if layer.border is not None:
            y = float(height) * 0.16 + frame.inches(15) * (number - 1)
            label = "border" if len(layers) == 1 else say.text("figure-border", number=number)
            target = (width - outer - deep / 2, y)
            beside = (float(width) + frame.inches(13), y)
            leader(frame, target, beside, f"{label} {say.length(layer.border.width)}", halo=None)
            number -= 1
        outer += deep
    if size.on_point:
        y = float(height) * 0.16 + frame.inches(15) * len(layers)
        beside = (float(width) + frame.inches(13), max(y, float(height) / 2))
        leader(frame, _last_block(draft), beside, words, halo=None)


def _block_box(draft: Draft) -> tuple[float, float, float, float]:
    """Return the box of the first block of the last row, or of the top without blocks."""
    blocks = [p for p in draft.patches if p.row is not None and p.column is not None]
    last = [p for p in blocks if p.row == max(q.row or 0 for q in blocks)]
    first = [p for p in last if p.column == min(q.column or 0 for q in last)]
    return bounds_of(polygon_of(p) for p in first or draft.patches)


def _last_block(draft: Draft) -> tuple[float, float]:
    """Return the middle of a block at the right edge, half way down."""
    blocks = [p for p in draft.patches if p.row is not None and p.column is not None]
    right = [p for p in blocks if p.column == max(q.column or 0 for q in blocks)]
    rows = sorted({p.row or 0 for p in right})
    box = bounds_of(polygon_of(p) for p in right if (p.row or 0) == rows[len(rows) // 2])
    return (box[0] + box[2]) / 2, (box[1] + box[3]) / 2


def described(context: Context, size: Size) -> str:
    """Return what a picture of a size shows."""
    say = context.labels
    what = say.text("figure-pillow-front") if size.finish == "pillow" else "quilt"
    bound = ""
    if size.binding is not None and size.finish != "pillow":
        bound = say.text("figure-bound-in", name=context.pattern.fabrics[size.binding.fabric].name)
    return say.text(
        "figure-the-finished",
        title=size.title,
        what=what,
        width=say.spoken(size.width, size.height),
        context=top_words(context, size),
        bound=bound,
    )
