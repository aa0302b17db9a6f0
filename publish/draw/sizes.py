"""All sizes side by side to one scale.

In: every size. Out: one figure, with a bar that gives the scale.
Invariant: one scale for all; the bar is measured on that scale. Where all sizes have been
pictured, the pictures stand in place of the drawings.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels, text_width, wrap
from publish.draw.canvas.marks import TICK
from publish.draw.canvas.style import DIMENSION, HEAD, INK, LABEL, SOFT
from publish.draw.context import Context
from publish.draw.pictured import Box, with_pictures
from publish.draw.top import paint_top
from publish.measures import CM, INCHES
from publish.model.figure import Figure, Spot, row_name
from publish.model.size import Size
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH, cm_text

PER_ROW = 4
GAP = 0.28
TALLEST = 2.65
TALL = 3.4
ROW_GAP = 0.1
BELOW = 0.52
EDGE = 0.06
"""Inches: between tops, of the tallest top, of a row's picture, between such pictures, under a
row for its words, and for the outlines of the outermost where there are none."""
NARROWEST = 1.25
"""Inches: the least width that a title is set in before it is broken."""
INCH_MARKS = (36, 24, 12, 6, 3)
LEAD = 12.0
"""Points from line to line of a title."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw every size with its name and finished size, up to four in a row.

    With `labels=no` there are no words, for where they stand beside the figure or where
    it is made so small that nobody could read them.
    """
    labels = spec.get("labels") != "no"
    if row_name(0) in context.pictures:
        return _pictured(context, spec, labels)
    sizes = list(context.sizes.values())
    shelves = [sizes[i : i + PER_ROW] for i in range(0, len(sizes), PER_ROW)]
    scale = min(_scale(context.labels, shelf, context.column) for shelf in shelves)
    column = (
        context.column
        if labels
        else max(_wide(context.labels, shelf, scale) for shelf in shelves) + EDGE
    )
    canvas = context.canvas(column, 9.0)
    base = 0.0
    for shelf in shelves:
        base += float(max(s.height for s in shelf)) * scale
        _shelf(canvas, context, shelf, scale, (column, base), labels)
        lines = max(len(_title(s, scale)) for s in shelf)
        base += BELOW + (lines - 1) * LEAD / POINTS_PER_INCH if labels else GAP
    if labels:
        _bar(context.labels, canvas, column / 2, scale, base + 0.1)
    return canvas.figure(spec, _alt(context.labels, sizes))


def _pictured(context: Context, spec: FigureSpec, labels: bool) -> Figure:
    """Show the pictures of all sizes, row by row, with their names below them."""
    names = [row_name(number) for number in range(len(context.pictures))]
    rows = {name: context.pictures[name] for name in names if name in context.pictures}
    wide = min(context.column, *(TALL * row.width / row.height for row in rows.values()))
    column = context.column if labels else wide
    canvas = context.canvas(column, 9.0)
    left, y = (column - wide) / 2, 0.0
    boxes: dict[str, Box] = {}
    for number, (name, row) in enumerate(rows.items()):
        y += ROW_GAP if number and not labels else 0
        high = wide * row.height / row.width
        boxes[name] = (left, y, wide, high)
        canvas.rect(left, y, wide, high)  # for the figure's extent
        y += high
        if labels:
            y += max(
                _below(context.labels, canvas, context.sizes[s.key], s, boxes[name])
                for s in row.spots
            )
    if labels:
        _bar(context.labels, canvas, column / 2, wide / rows[row_name(0)].inches, y + 0.1)
    where = rows[row_name(0)].where
    what = _alt(context.labels, list(context.sizes.values()))[:-1]
    alt = context.labels.pictured(what, where)
    return with_pictures(canvas.figure(spec, alt), boxes)


def _below(say: Labels, canvas: Canvas, size: Size, spot: Spot, box: Box) -> float:
    """Write a size's name and measurements below its place in a picture; return the room that
    they take, in inches."""
    left, top, wide, high = box
    middle, room = left + (spot.left + spot.width / 2) * wide, spot.column * wide
    points = room * POINTS_PER_INCH
    title = wrap(size.title, HEAD, points, "semibold")
    label = wrap(_label(say, size), LABEL, points)
    lines = [(line, HEAD, "semibold", INK) for line in title]
    lines += [(line, LABEL, "regular", SOFT) for line in label]
    for number, (line, type_size, face, fill) in enumerate(lines):
        canvas.text(
            (middle, top + high),
            line,
            type_size,
            face,
            "middle",
            fill=fill,
            shift=(0, 15 + LEAD * number),
        )
    return (LEAD * len(lines) + 12) / POINTS_PER_INCH


def _shelf(
    canvas: Canvas,
    context: Context,
    sizes: list[Size],
    scale: float,
    place: tuple[float, float],
    labels: bool,
) -> None:
    """Draw sizes side by side in the middle of a column, on a base line."""
    columns = [_column(context.labels, size, scale) for size in sizes]
    column, base = place
    left = (column - _wide(context.labels, sizes, scale)) / 2
    for size, column in zip(sizes, columns, strict=True):
        centre = left + column / 2
        frame = canvas.frame(
            centre - float(size.width) * scale / 2, base - float(size.height) * scale, scale
        )
        paint_top(frame, context, size.key)
        if labels:
            title = _title(size, scale)
            for number, line in enumerate(title):
                canvas.text(
                    (centre, base), line, HEAD, "semibold", "middle", shift=(0, 17 + LEAD * number)
                )
            low = 28 + LEAD * (len(title) - 1)
            canvas.text(
                (centre, base),
                _label(context.labels, size),
                LABEL,
                "regular",
                "middle",
                fill=SOFT,
                shift=(0, low),
            )
        left += column + GAP


def _label(say: Labels, size: Size) -> str:
    return say.sides(size.width, size.height)


def _wide(say: Labels, sizes: list[Size], scale: float) -> float:
    """Return the printed width of sizes side by side."""
    return sum(_column(say, s, scale) for s in sizes) + GAP * (len(sizes) - 1)


def _column(say: Labels, size: Size, scale: float) -> float:
    """Return the printed width a size takes: its top or its label, whichever is wider."""
    title = max(text_width(line, HEAD, "semibold") for line in _title(size, scale))
    label = max(title, text_width(_label(say, size), LABEL))
    return max(float(size.width) * scale, label / POINTS_PER_INCH)


def _title(size: Size, scale: float) -> list[str]:
    """Return a size's title in lines no wider than its top, or than `NARROWEST`."""
    room = max(float(size.width) * scale, NARROWEST) * POINTS_PER_INCH
    return wrap(size.title, HEAD, room, "semibold")


def _scale(say: Labels, sizes: list[Size], column: float) -> float:
    """Return the greatest scale at which the row fits the column and the height."""
    room = column - 0.1 - GAP * (len(sizes) - 1)
    low, high = 0.0, TALLEST / float(max(s.height for s in sizes))
    if sum(_column(say, s, high) for s in sizes) <= room:
        return high
    for _ in range(40):
        middle = (low + high) / 2
        fits = sum(_column(say, s, middle) for s in sizes) <= room
        low, high = (middle, high) if fits else (low, middle)
    return low


def _bar(say: Labels, canvas: Canvas, middle: float, scale: float, y: float) -> None:
    """Draw the scale bar: the largest of 6, 12, 24 or 36 in, or of 10, 20, 50 or 100 cm, that
    stays under 1 1/2 in."""
    metric = say.measures.metric
    marks = [n * CM for n in (100, 50, 20, 10, 5)] if metric else list(map(Fraction, INCH_MARKS))
    length = next((n for n in marks if n * scale <= 1.5), marks[-1])
    half = float(length) * scale / 2
    tick = TICK / POINTS_PER_INCH
    canvas.line((middle - half, y), (middle + half, y), DIMENSION)
    for x in (middle - half, middle + half):
        canvas.line((x, y - tick), (x, y + tick), DIMENSION)
    words = say.length(length)
    if say.measures == INCHES:
        words += f" ({cm_text(length)})"
    canvas.text((middle, y), words, LABEL, anchor="middle", fill=SOFT, shift=(0, 11))


def _alt(say: Labels, sizes: list[Size]) -> str:
    each = [f"{s.title} {say.spoken(s.width, s.height)}" for s in sizes]
    return say.text("figure-sizes-alt", each=say.listed(each))
