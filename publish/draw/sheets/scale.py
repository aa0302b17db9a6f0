"""The scale-check square explained, at its true size.

In: nothing of the pattern. Out: the figure, which no layout may resize.
Invariant: the inch square measures 1 in and the centimetre square 5 cm when printed.
"""

from __future__ import annotations

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import set_inches
from publish.draw.canvas.style import FINISHED, HAIR, LABEL, SMALL, SOFT, STEP_WIDTH, TINT, Stroke
from publish.draw.context import Context
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import UNITS, fraction_text

FIVE_CM = 5 * UNITS["cm"]
INCH = UNITS["in"]


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the 5 cm square with the inch square inside it and a ruler laid along it."""
    del context
    side = float(FIVE_CM)
    canvas = Canvas(STEP_WIDTH, 2.7)
    left, top = (STEP_WIDTH - side) / 2, 0.46
    frame = canvas.frame(left, top)
    _ruler(frame)
    frame.rect(0, 0, FIVE_CM, FIVE_CM, None, FINISHED)
    frame.rect(0, 0, INCH, INCH, TINT, FINISHED)
    frame.text((0.5, 0.5), set_inches(INCH), LABEL, "semibold", "middle", "middle")
    frame.text((side - 0.08, side - 0.1), "5 cm", LABEL, "semibold", "end")
    frame.text(
        (side / 2, side),
        "Measure both squares before cutting.",
        LABEL,
        anchor="middle",
        fill=SOFT,
        shift=(0, 12),
    )
    alt = (
        f"The scale-check square at full size: a square of {fraction_text(INCH)} in inside a "
        "square of 5 cm, with an inch ruler laid along the top edge and its zero on the corner."
    )
    return canvas.figure(spec, alt, scalable=False)


def _ruler(frame: Canvas) -> None:
    """Draw an inch ruler above the square, marked in eighths, its zero on the corner."""
    deep, over = 0.36, 0.18
    frame.rect(-over, -deep, 2.0 + 2 * over, deep, "#fbfaf6", Stroke(HAIR, 0.5))
    for eighth in range(17):
        x = eighth / 8
        length = 0.15 if eighth % 8 == 0 else 0.11 if eighth % 4 == 0 else 0.07
        frame.line((x, 0), (x, -length), Stroke(SOFT, 0.4))
        if eighth % 8 == 0:
            frame.text((x, -0.19), str(eighth // 8), SMALL, anchor="middle", fill=SOFT)
