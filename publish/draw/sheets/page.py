"""What stands on every template sheet besides the template: title strip, check square, key.

In: the words of the sheet, the paper, the tiling. Out: marks on the sheet's canvas.
Invariant: the strip lies above the window, so that its check square can never meet the
template; the 5 cm square lies in the window only where nothing else does, and becomes a
bar in the strip where there is no such place. Sides are measured between the middles of
their lines.
"""

from __future__ import annotations

from dataclasses import dataclass

from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import ENGLISH, Labels, text_width
from publish.draw.canvas.style import (
    CREASE,
    CUT,
    FINISHED,
    FOLD,
    HAIR,
    INK,
    LABEL,
    PAPER,
    SMALL,
    THIN,
    TINT,
    Stroke,
    mix,
)
from publish.draw.sheets.labels import Room, text_box
from publish.draw.sheets.spread import Spread
from publish.draw.sheets.tiling import Tiling
from publish.draw.sheets.windows import Window
from publish.measures import INCHES, Measures, metric_text
from publish.model.book import Paper
from publish.units import inches_text

MARGIN = 0.5
"""Inches kept free above and below, for printers that cannot reach the edge."""
SIDE = 0.375
"""Inches kept free at the left and at the right, where printers reach further (common
practice, no source)."""
STRIP = 1.13
"""Height of the title strip in inches: it holds the check square."""
GAP = 0.12
SQUARE = 1.0
"""Room for the check square: an inch, or a little less in centimetres."""
FIVE_CM = 5 / 2.54
"""5 cm in inches."""
KEY = 0.86
"""Inches that the key map may fill in each direction."""
BETWEEN = 0.16
PALE = mix(HAIR, PAPER, 0.45)
CHECK = Stroke(INK, 0.5)
TITLE_SIZE = 12.0
NAME_SIZE = 9.5
LINE = 11.0
"""Points from one line of the strip to the next."""


@dataclass(frozen=True)
class Heading:
    """The words of the strip, from the largest to the smallest."""

    title: str
    name: str
    lines: tuple[str, ...]
    turned: bool
    """Whether the edge is turned under, so that finished and cut line differ."""
    folds: bool
    legend: tuple[tuple[Stroke, str], ...] = ()
    """The lines and what they mean, where they are not those of a motif."""
    labels: Labels = ENGLISH
    """The language of the sheet, and which ruler the small check square is for."""


def window_size(paper: Paper) -> tuple[float, float]:
    """Return the width and height that one sheet can print, in inches."""
    return paper.width - 2 * SIDE, paper.height - 2 * MARGIN - STRIP - GAP


def window_corner() -> tuple[float, float]:
    """Return where the window begins on the page, in inches."""
    return SIDE, MARGIN + STRIP + GAP


def square_of(paper: Paper, measures: Measures = INCHES) -> tuple[float, float, float]:
    """Return left, top and side of the check square on the page, in inches."""
    return paper.width - SIDE - SQUARE, MARGIN, float(measures.checks[0])


def check_words(say: Labels) -> str:
    """Return what the small check square measures: `1 in`, or `2.5 cm`."""
    small = say.measures.checks[0]
    if say.measures.has_inches:
        return inches_text(small)
    return say.measures.marked(metric_text(small))


def strip(canvas: Canvas, paper: Paper, heading: Heading, bar: bool) -> None:
    """Draw the title strip: names, counts, the meaning of the lines, the scale check.

    With `bar` the strip also holds the 5 cm check, for a sheet without room for its square.
    """
    x, y = SIDE * 72, MARGIN * 72
    page = canvas.page
    page.text((x, y + 1.5), heading.title, TITLE_SIZE, "bold", level="top")
    page.text((x, y + 16), heading.name, NAME_SIZE, "semibold", level="top")
    for index, words in enumerate(heading.lines):
        page.text((x, y + 29.5 + LINE * index), words, LABEL, level="top")
    _legend(page, (x, y + STRIP * 72 - 6), heading)
    left, top, side = square_of(paper, heading.labels.measures)
    _square(canvas, left, top, side, f"{check_words(heading.labels)}.")
    if bar:
        _bar(canvas, left - BETWEEN - FIVE_CM, top)
    base = MARGIN + STRIP + GAP / 2
    canvas.line((SIDE, base), (paper.width - SIDE, base), Stroke(HAIR, 0.4))


def metric_square(canvas: Canvas, room: Room, off: BaseGeometry | None = None) -> bool:
    """Draw the 5 cm square where the window is free, a corner first; False without room.

    `off` is a shape that it must keep off as well.
    """
    side = FIVE_CM * 72
    free = room if off is None else Room(room.area, room.taken.union(off), room.margin)
    spot = free.corner(side, side, 7.0) or free.spot(side + 14, side + 14)
    if spot is None:
        return False
    corner = ((spot[0] - side / 2) / 72, (spot[1] - side / 2) / 72)
    _square(canvas, *corner, FIVE_CM, canvas.labels.text("figure-5-cm"))
    room.take(text_box(spot, side, side))
    return True


def _legend(page: Canvas, at: tuple[float, float], heading: Heading) -> None:
    x, y = at
    for stroke, words in legend(heading):
        page.line((x, y), (x + 20, y), stroke)
        page.text((x + 23, y), words, SMALL, level="middle")
        x += 23 + text_width(words, SMALL) + 9


def legend(heading: Heading) -> list[tuple[Stroke, str]]:
    """Return the lines of a sheet and what each means."""
    if heading.legend:
        return list(heading.legend)
    say = heading.labels
    entries = [(FINISHED, say.text("figure-finished-line"))]
    if heading.turned:
        entries.append((CUT, say.text("figure-cut-line")))
    if heading.folds:
        entries.append(
            (FOLD, say.text("figure-fold") if heading.turned else say.text("figure-wedge-edge"))
        )
    else:
        entries.append((CREASE, say.text("figure-centre-line")))
    return entries


def _square(canvas: Canvas, left: float, top: float, side: float, measure: str) -> None:
    """Draw a check square that says what it must measure."""
    canvas.rect(left, top, side, side, None, CHECK)
    middle = (left + side / 2) * 72
    centre = (top + side / 2) * 72
    page = canvas.page
    for words, y, face in (
        (canvas.labels.text("figure-print-at-100"), -14, "semibold"),
        (canvas.labels.text("figure-this-square-must"), -1, "regular"),
        (canvas.labels.text("figure-measure-exactly"), 8, "regular"),
        (measure, 17, "semibold"),
    ):
        page.text((middle, centre + y), words, SMALL, face, "middle")


def _bar(canvas: Canvas, left: float, top: float) -> None:
    """Draw the 5 cm bar, a field for each centimetre."""
    centimetre = FIVE_CM / 5
    high = 0.16
    low = top + SQUARE - high
    for index in range(0, 5, 2):
        canvas.rect(left + index * centimetre, low, centimetre, high, HAIR)
    canvas.rect(left, low, FIVE_CM, high, None, CHECK)
    middle = (left + FIVE_CM / 2) * 72
    page = canvas.page
    words = canvas.labels.text("figure-page-bar")
    page.text((middle, low * 72 - 5), words, SMALL, "regular", "middle")


def _key_map(
    canvas: Canvas,
    at: tuple[float, float],
    room: float,
    spread: Spread,
    here: Window,
) -> None:
    """Draw how the sheets join, `room` inches wide or high at `at`; `here` is tinted."""
    tiling = spread.tiling
    left, top, right, bottom = _extent(tiling)
    scale = room / max(right - left, bottom - top)
    frame = canvas.frame(at[0] - left * scale, at[1] - top * scale, scale)
    for window in tiling.windows:
        a, b, c, d = tiling.inner(window)
        frame.rect(a, b, c - a, d - b, TINT if window == here else PAPER)
    for lying in spread.lying:
        own = frame.frame(lying.x, lying.y)
        own.shape(lying.template.cut_body.buffer(0), PALE, None)
    for window in tiling.windows:
        a, b, c, d = tiling.inner(window)
        bold = window == here
        frame.rect(a, b, c - a, d - b, None, Stroke(INK, 1.1) if bold else THIN)
    for window in tiling.windows:
        a, b, c, d = tiling.inner(window)
        face = "bold" if window == here else "regular"
        frame.text((a, b), window.label, SMALL, face, "start", "top", shift=(3.0, 3.5))


def _extent(tiling: Tiling) -> tuple[float, float, float, float]:
    """Return left, top, right, bottom of all the sheets, joined."""
    boxes = [tiling.inner(w) for w in tiling.windows]
    return (
        min(b[0] for b in boxes),
        min(b[1] for b in boxes),
        max(b[2] for b in boxes),
        max(b[3] for b in boxes),
    )


def key(canvas: Canvas, paper: Paper, spread: Spread, here: Window) -> None:
    """Draw the key map in the strip, left of the bar, with its name beneath."""
    left, top, right, bottom = _extent(spread.tiling)
    scale = KEY / max(right - left, bottom - top)
    middle = square_of(paper)[0] - 2 * BETWEEN - FIVE_CM - KEY / 2
    corner = (middle - (right - left) * scale / 2, MARGIN + KEY - (bottom - top) * scale)
    _key_map(canvas, corner, KEY, spread, here)
    below = (middle * 72, (MARGIN + SQUARE) * 72)
    canvas.page.text(
        below, canvas.labels.text("figure-how-the-sheets-join"), SMALL, "regular", "middle"
    )
