"""The scale-check square explained, at its true size.

In: nothing of the pattern. Out: the figure, which no layout may resize.
Invariant: both squares measure when printed what is written in them.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import FINISHED, HAIR, LABEL, SMALL, SOFT, STEP_WIDTH, TINT, Stroke
from publish.draw.context import Context
from publish.draw.sheets.page import check_words
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import UNITS

INCH_RULER = (UNITS["in"], 2, 8)
METRIC_RULER = (UNITS["cm"], 5, 10)
"""The unit that is numbered, how many of it, and the marks in each."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the 5 cm square with the small square inside it and a ruler laid along it."""
    small, large = context.pattern.measures.checks
    words = check_words(context.labels)
    inches = context.pattern.measures.has_inches
    side, half = float(large), float(small) / 2
    canvas = context.canvas(STEP_WIDTH, 2.7)
    left, top = (STEP_WIDTH - side) / 2, 0.46
    frame = canvas.frame(left, top)
    _ruler(frame, *(INCH_RULER if inches else METRIC_RULER))
    frame.rect(0, 0, large, large, None, FINISHED)
    frame.rect(0, 0, small, small, TINT, FINISHED)
    frame.text((half, half), words, LABEL, "semibold", "middle", "middle")
    frame.text(
        (side - 0.08, side - 0.1), context.labels.text("figure-5-cm-2"), LABEL, "semibold", "end"
    )
    frame.text(
        (side / 2, side),
        context.labels.text("figure-measure-both-squares-before-cutting"),
        LABEL,
        anchor="middle",
        fill=SOFT,
        shift=(0, 12),
    )
    alt = context.labels.text(
        "figure-scale",
        words=words,
        more=context.labels.text("figure-an-inch")
        if inches
        else context.labels.text("figure-a-centimetre"),
    )
    return canvas.figure(spec, alt, scalable=False)


def _ruler(frame: Canvas, unit: Fraction, units: int, parts: int) -> None:
    """Draw a ruler above the square, marked in parts, its zero on the corner."""
    deep, over = 0.36, 0.18
    frame.rect(-over, -deep, float(unit * units) + 2 * over, deep, "#fbfaf6", Stroke(HAIR, 0.5))
    for mark in range(units * parts + 1):
        x = float(unit) * mark / parts
        length = 0.15 if mark % parts == 0 else 0.11 if mark % (parts // 2) == 0 else 0.07
        frame.line((x, 0), (x, -length), Stroke(SOFT, 0.4))
        if mark % parts == 0:
            frame.text((x, -0.19), str(mark // parts), SMALL, anchor="middle", fill=SOFT)
