"""All sizes side by side to one scale.

In: every size. Out: one figure, with a bar that gives the scale.
Invariant: one scale for all; the bar is measured on that scale.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas import Canvas
from publish.draw.context import Context
from publish.draw.letters import about, set_number, text_width
from publish.draw.marks import TICK
from publish.draw.style import DIMENSION, HEAD, LABEL, SOFT, TEXT_COLUMN
from publish.draw.top import paint_top
from publish.draw.words import listed, plain_size
from publish.model.figure import Figure
from publish.model.size import Size
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH, cm_text, round_near

PER_ROW = 4
GAP = 0.28
TALLEST = 3.5
BELOW = 0.52
"""Inches: between tops, of the tallest top, and under a row for its words."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw every size with its name and finished size, up to four in a row."""
    sizes = list(context.sizes.values())
    shelves = [sizes[i : i + PER_ROW] for i in range(0, len(sizes), PER_ROW)]
    scale = min(_scale(shelf) for shelf in shelves)
    canvas = Canvas(TEXT_COLUMN, 9.0)
    base = 0.0
    for shelf in shelves:
        base += float(max(s.height for s in shelf)) * scale
        _shelf(canvas, context, shelf, scale, base)
        base += BELOW
    _bar(canvas, scale, base + 0.1)
    return canvas.figure(spec, _alt(sizes))


def _shelf(canvas: Canvas, context: Context, sizes: list[Size], scale: float, base: float) -> None:
    """Draw sizes side by side on one base line."""
    columns = [_column(size, scale) for size in sizes]
    left = (TEXT_COLUMN - sum(columns) - GAP * (len(sizes) - 1)) / 2
    for size, column in zip(sizes, columns, strict=True):
        centre = left + column / 2
        frame = canvas.frame(centre - float(size.width) * scale / 2,
                             base - float(size.height) * scale, scale)  # fmt: skip
        paint_top(frame, context, size.key)
        canvas.text((centre, base), size.title, HEAD, "semibold", "middle", shift=(0, 17))
        canvas.text((centre, base), _label(size), LABEL, "regular", "middle", fill=SOFT,
                    shift=(0, 28))  # fmt: skip
        left += column + GAP


def _label(size: Size) -> str:
    both = f"{set_number(size.width)} × {set_number(size.height)} in"
    return about(size.width, size.height) + both


def _column(size: Size, scale: float) -> float:
    """Return the printed width a size takes: its top or its label, whichever is wider."""
    label = max(text_width(size.title, HEAD, "semibold"), text_width(_label(size), LABEL))
    return max(float(size.width) * scale, label / POINTS_PER_INCH)


def _scale(sizes: list[Size]) -> float:
    """Return the greatest scale at which the row fits the column and the height."""
    room = TEXT_COLUMN - 0.1 - GAP * (len(sizes) - 1)
    low, high = 0.0, TALLEST / float(max(s.height for s in sizes))
    if sum(_column(s, high) for s in sizes) <= room:
        return high
    for _ in range(40):
        middle = (low + high) / 2
        fits = sum(_column(s, middle) for s in sizes) <= room
        low, high = (middle, high) if fits else (low, middle)
    return low


def _bar(canvas: Canvas, scale: float, y: float) -> None:
    """Draw the scale bar: the largest of 6, 12, 24 or 36 in that stays under 1 1/2 in."""
    lengths = [Fraction(n) for n in (36, 24, 12, 6) if n * scale <= 1.5]
    length = lengths[0] if lengths else round_near(Fraction(3), Fraction(1))
    half = float(length) * scale / 2
    middle = TEXT_COLUMN / 2
    tick = TICK / POINTS_PER_INCH
    canvas.line((middle - half, y), (middle + half, y), DIMENSION)
    for x in (middle - half, middle + half):
        canvas.line((x, y - tick), (x, y + tick), DIMENSION)
    words = f"{set_number(length)} in ({cm_text(length)})"
    canvas.text((middle, y), words, LABEL, anchor="middle", fill=SOFT, shift=(0, 11))


def _alt(sizes: list[Size]) -> str:
    each = [f"{s.title} {plain_size(s.width, s.height)}" for s in sizes]
    return f"The sizes side by side to one scale: {listed(each)}."
