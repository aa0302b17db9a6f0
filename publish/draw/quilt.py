"""The finished quilt or pillow front.

In: a size; `dimensions` yes or no. Out: the figure.
Invariant: drawn to scale; every dimension shown is one of the size's own.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas import Canvas
from publish.draw.context import Context
from publish.draw.letters import set_inches
from publish.draw.marks import dimension, leader
from publish.draw.top import fit, paint_top
from publish.draw.words import plain_size, top_words
from publish.model.figure import Figure
from publish.model.size import Size
from publish.model.words import FigureSpec

PLAIN = (6.0, 7.5)
MEASURED = (4.5, 5.5)
"""Inches of room: alone on a page, and with dimensions in a text column."""
MARGIN = {"left": 0.34, "right": 0.95, "top": 0.3, "bottom": 0.34}


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the finished top with its binding, its appliqué and its quilting."""
    size = context.size(spec)
    measured = spec.get("dimensions", "no") == "yes"
    room = MEASURED if measured else PLAIN
    margin = MARGIN if measured else dict.fromkeys(MARGIN, 0.04)
    seam = 2 * context.pattern.sewing.seam
    inner = (room[0] - margin["left"] - margin["right"], room[1])
    scale = fit(size.width + seam, size.height + seam, inner)
    wide = float(size.width + seam) * scale + margin["left"] + margin["right"]
    canvas = Canvas(wide, room[1])
    edge = float(seam) / 2 * scale
    frame = canvas.frame(margin["left"] + edge, margin["top"] + edge, scale)
    paint_top(frame, context, size.key, quilting=True)
    if measured:
        _dimensions(frame, size)
    return canvas.figure(spec, _alt(context, size))


def _dimensions(frame: Canvas, size: Size) -> None:
    width, height = size.width, size.height
    edge = sum((b.width for b in size.borders), Fraction(0))
    dimension(frame, (0, 0), (width, 0), set_inches(width), 12)
    dimension(frame, (0, height), (0, 0), set_inches(height), 12)
    right = edge + size.block_side
    dimension(frame, (right, height), (edge, height), f"block {set_inches(size.block_side)}", 13)
    outer = Fraction(0)
    for number, border in reversed(list(enumerate(size.borders))):
        y = float(height) * 0.16 + frame.inches(15) * number
        label = "border" if len(size.borders) == 1 else f"border {number + 1}:"
        target = (width - outer - border.width / 2, y)
        beside = (float(width) + frame.inches(13), y)
        leader(frame, target, beside, f"{label} {set_inches(border.width)}", halo=None)
        outer += border.width


def _alt(context: Context, size: Size) -> str:
    what = "pillow front" if size.finish == "pillow" else "quilt"
    bound = ""
    if size.binding is not None and size.finish != "pillow":
        bound = f", bound in {context.pattern.fabrics[size.binding.fabric].name}"
    return (
        f"{size.title}: the finished {what}, {plain_size(size.width, size.height)}: "
        f"{top_words(context, size)}{bound}."
    )
