"""The last join of the binding: two tails sewn at a right angle, the quilt folded beneath.

In: a workbench. Out: the drawing on its canvas; the function returns the alternative text.
Invariant: the join is drawn as the first ones were, on the diagonal of the square where the
strips cross; the corner that is trimmed lies away from both tails.
"""

from __future__ import annotations

from math import sqrt

from shapely.geometry import Polygon

from publish.draw.canvas.marks import cut_line, leader
from publish.draw.canvas.style import (
    CUT,
    FOLD,
    INK,
    PAPER,
    STITCH,
    Stroke,
    edge_of,
    readable_on,
    wrong_side,
)
from publish.draw.cloth import fabric, hatch, sheet
from publish.draw.workbench import Workbench

SQUARE, TAIL = 0.5, 1.15
"""Inches on the page: the square where the tails cross, and how far they run on from it."""


def draw_tails(bench: Workbench) -> str:
    """Draw the opened tails crossed and sewn, and the quilt's edge folded between them."""
    say, width = bench.labels, float(bench.width)
    scale = SQUARE / width
    frame = bench.canvas.frame(TAIL + 0.06, 0.12, scale)
    long = TAIL / scale
    rise = long * 0.08
    middle = (rise - long / 2, (width + long) / 2 - rise)
    quilt = Polygon([(-long, width), middle, (0, long), (-long, long)])
    frame.shape(quilt, bench.front)
    frame.polyline([(-long, width), middle, (0, long)], Stroke(edge_of(bench.front), 0.8))
    frame.line(middle, (-long, long), FOLD.but(colour=readable_on(bench.front)))
    fabric(frame, sheet(-long, 0, long + width, width), bench.strip)
    fabric(frame, sheet(0, 0, width, long), bench.strip, "wrong")
    frame.line((0, 0), (width, width), STITCH)
    gap = float(bench.seam) * sqrt(2)
    cut_line(frame, (gap, 0), (width, width - gap), CUT, wrong_side(bench.strip))
    hatch(frame, Polygon([(gap, 0), (width, 0), (width, width - gap)]), Stroke(PAPER, 0.8), 2.2)
    for share in (0.22, 0.58):  # pins across the diagonal
        x, half = width * share, width * 0.11
        frame.line((x - half, x + half), (x + half, x - half), Stroke(INK, 0.7, (), "round"))
        frame.circle((x + half, x - half), 1.5, PAPER, Stroke(INK, 0.5))
    beside = width + frame.inches(13)
    spot = (width * 0.92, width * 0.92 - gap)
    leader(
        frame, spot, (beside, width * 0.3), say.text("figure-trim-to", seam=say.length(bench.seam))
    )
    leader(frame, (width / 2, width * 1.5), (beside, width * 1.5), say.text("figure-wrong-side"))
    foot = long + frame.inches(12)
    fold = ((middle[0] - long) / 2, (middle[1] + long) / 2)
    leader(frame, fold, (fold[0], foot), say.text("figure-quilt-folded"), "middle", dot=False)
    return say.text("figure-binding-tails", seam=say.plain(bench.seam))
