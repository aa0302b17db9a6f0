"""The quilting lines on the top, area by area, with a key.

In: a size. Out: the figure.
Invariant: the lines are the draft's own; each entry of the key is one of its areas.
"""

from __future__ import annotations

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.style import INK, LABEL, RED_BROWN, SOFT, Stroke
from publish.draw.context import CannotDrawError, Context
from publish.draw.top import fit, paint_binding, paint_motifs, paint_patches
from publish.draw.words import quilting_words
from publish.model.draft import Draft, QuiltingLines
from publish.model.figure import Figure
from publish.model.words import FigureSpec

ROOM = (3.5, 3.2)
LOW = 2.5
"""Inches for the quilting, and how tall it is on half-size paper: two go on a page."""
PALE = 0.62
STROKES = (
    Stroke(RED_BROWN, 0.7),
    Stroke(INK, 0.5),
    Stroke(SOFT, 0.6, (3.0, 1.4)),
    Stroke(INK, 0.6, (0.2, 1.6), "round"),
)
"""Told apart without colour: plain, fine, dashed, dotted."""
WORDS_AT = 1.18
"""Inches from the left of the key at which an area's style stands."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the top pale, its quilting over it, and the key beneath."""
    say = context.labels
    size, draft = context.size(spec), context.draft(spec)
    if not draft.quilting:
        raise CannotDrawError("this size has no quilting")
    seam = float(context.pattern.sewing.seam)
    room = (ROOM[0] - 0.02, LOW if context.paper.parent else ROOM[1])
    scale = fit(float(size.width) + 2 * seam, float(size.height) + 2 * seam, room)
    wide = (float(size.width) + 2 * seam) * scale
    canvas = context.canvas(ROOM[0], 8.0)
    left = (ROOM[0] - wide) / 2 + seam * scale
    frame = canvas.frame(left, seam * scale + 0.02, scale)
    paint_binding(frame, context, size.key)
    paint_patches(frame, context, draft.patches, PALE)
    paint_motifs(frame, context, draft, draft.placements, PALE)
    for lines, stroke in zip(draft.quilting, _strokes(len(draft.quilting)), strict=True):
        frame.lines(lines.lines, stroke)
    _key(say, canvas, draft, (float(size.height) + 2 * seam) * scale + 0.2)
    each = [
        f"{say.text(_area(draft, q, 'within'))} {quilting_words(say, q, say.plain)}"
        for q in draft.quilting
    ]
    alt = say.text(
        "figure-the-quilting-lines-of-the",
        title=size.title,
        width=say.spoken(size.width, size.height),
        each="; ".join(each),
    )
    return canvas.figure(spec, alt)


def _strokes(count: int) -> list[Stroke]:
    return [STROKES[i % len(STROKES)] for i in range(count)]


def _area(draft: Draft, lines: QuiltingLines, where: str = "key") -> str:
    """Return the message of what an area is called, in the key or `within` a sentence; without
    motifs the ground is the patchwork."""
    patchwork = lines.area == "ground" and not draft.placements
    return f"figure-{where}-{'patchwork' if patchwork else lines.area}"


def _key(say: Labels, canvas: Canvas, draft: Draft, top: float) -> None:
    """Draw a line sample, the area, the style and the spacing for each area."""
    strokes = _strokes(len(draft.quilting))
    for row, (lines, stroke) in enumerate(zip(draft.quilting, strokes, strict=True)):
        y = top + row * 0.16
        if not lines.lines.is_empty:
            canvas.line((0.05, y), (0.42, y), stroke)
        canvas.text((0.52, y), say.text(_area(draft, lines)), LABEL, "semibold", level="middle")
        canvas.text((WORDS_AT, y), quilting_words(say, lines, say.length), LABEL, level="middle")
