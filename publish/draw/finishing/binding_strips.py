"""Making the binding: joining strips, pressing them, cutting bias from a square.

In: a workbench. Out: the drawing on its canvas; each function returns the alternative
text.
Invariant: joins run at 45 degrees to the strip; bias lines lie one strip width apart.
"""

from __future__ import annotations

from math import sqrt

from shapely.affinity import translate
from shapely.geometry import LineString, Polygon

from publish.draw.canvas.marks import arrow, bend, block_arrow, dimension, disc, leader
from publish.draw.canvas.style import (
    ARROW,
    CUT,
    FOLD,
    INK,
    PAPER,
    SOFT,
    STEP_WIDTH,
    STITCH,
    Stroke,
    edge_of,
    wrong_side,
)
from publish.draw.cloth import fabric, hatch, sheet
from publish.draw.context import CannotDrawError
from publish.draw.workbench import Workbench


def draw_join(bench: Workbench) -> str:
    """Draw two strips crossed at their ends and sewn on the diagonal, then opened."""
    say = bench.labels
    canvas, width = bench.canvas, float(bench.width)
    scale = 0.5 / width
    frame = canvas.frame(1.24, 0.24, scale)
    long = 1.1 / scale
    fabric(frame, sheet(-long, 0, long + width, width), bench.strip)
    fabric(frame, sheet(0, 0, width, long), bench.strip, "wrong")
    frame.line((0, 0), (width, width), STITCH)
    gap = float(bench.seam) * sqrt(2)
    frame.line((gap, 0), (width, width - gap), CUT)
    corner = Polygon([(gap, 0), (width, 0), (width, width - gap)])
    hatch(frame, corner, Stroke(PAPER, 0.8), 2.2)
    disc(frame, (-long + frame.inches(9), width / 2), "1")
    leader(
        frame,
        (width * 0.82, width * 0.82 - gap),
        (width + frame.inches(13), width * 0.42),
        say.text("figure-trim-to", seam=say.length(bench.seam)),
        halo=PAPER,
    )
    leader(
        frame,
        (width * 0.5, width * 1.5),
        (width + frame.inches(13), width * 1.5),
        say.text("figure-wrong-side"),
        halo=PAPER,
    )
    leader(
        frame,
        (-long * 0.55, width * 0.55),
        (-long * 0.55, width + frame.inches(13)),
        say.text("figure-right-side"),
        "middle",
        halo=PAPER,
    )
    _opened(bench, scale)
    return say.text(
        "figure-binding-strips-draw-join", width=say.plain(bench.width), seam=say.plain(bench.seam)
    )


def _opened(bench: Workbench, scale: float) -> None:
    """Draw the joined strip, right side up, its seam slanting across."""
    say = bench.labels
    canvas, width = bench.canvas, float(bench.width)
    top = 1.62
    frame = canvas.frame(0.3, top, scale)
    long = (STEP_WIDTH - 0.34) / scale
    fabric(frame, sheet(0, 0, long, width), bench.strip)
    middle = long * 0.42
    frame.line((middle, 0), (middle + width, width), Stroke(edge_of(bench.strip), 0.9))
    disc(canvas, (0.3 + 9 / 72, top + 0.25), "2")
    dimension(canvas, (0.3, top + 0.5), (0.3, top), say.length(bench.width), 10)


def draw_press(bench: Workbench) -> str:
    """Draw the strip with its middle line, and folded with the raw edges level."""
    say = bench.labels
    canvas, width = bench.canvas, float(bench.width)
    scale = 0.62 / width
    long = 1.46
    frame = canvas.frame(0.34, 0.16, scale)
    fabric(frame, sheet(0, 0, long / scale, width), bench.strip, "wrong")
    frame.line((0, width / 2), (long / scale, width / 2), FOLD)
    x = (long - 0.12) / scale
    arrow(frame, bend((x, width * 0.08), (x, width * 0.92), -0.3), ARROW, "open")
    dimension(frame, (0, width), (0, 0), say.length(bench.width), 10)
    leader(
        frame,
        (long * 0.5 / scale, width / 2),
        ((long + 0.17) / scale, width / 2),
        say.text("figure-fold"),
        dot=False,
        halo=PAPER,
    )
    block_arrow(canvas, (0.34 + long / 2, 0.86), (0.34 + long / 2, 1.08), SOFT, 8.0)
    half = bench.width / 2
    low = canvas.frame(0.34, 1.16, scale)
    fabric(low, sheet(0, 0, long / scale, width / 2), bench.strip)
    lip = width / 2 - low.inches(1.6)
    low.line((0, lip), (long / scale, lip), Stroke(edge_of(bench.strip), 0.4))
    dimension(low, (0, width / 2), (0, 0), say.length(half), 10)
    beside = (long + 0.17) / scale
    end = long / scale
    fold, raw = say.text("figure-fold"), say.text("figure-raw-edges")
    leader(low, (end, 0), (beside, low.inches(0)), fold, dot=False, halo=None)
    leader(low, (end, width / 2), (beside, width / 2), raw, dot=False, halo=None)
    return say.text(
        "figure-binding-strips-draw-press", width=say.plain(bench.width), half=say.plain(half)
    )


def draw_bias(bench: Workbench) -> str:
    """Draw the square cut on its diagonal, and the slanting shape with its ruled lines."""
    say = bench.labels
    plan = bench.plan.binding
    if plan is None or plan.square is None:
        raise CannotDrawError("this binding is not cut from a square")
    side = float(plan.square)
    scale = 0.82 / side
    canvas = bench.canvas
    first = canvas.frame(0.89, 0.12, scale)
    upper = Polygon([(0, 0), (side, 0), (0, side)])
    lower = Polygon([(side, 0), (side, side), (0, side)])
    for half in (upper, lower):
        fabric(first, half, bench.strip)
    first.line((0, side), (side, 0), Stroke(PAPER, 1.6))
    first.line((0, side), (side, 0), CUT)
    dimension(first, (side, side), (0, side), say.length(plan.square), 9)
    disc(canvas, (0.12, 0.22), "1")
    block_arrow(canvas, (1.3, 1.2), (1.3, 1.42), SOFT, 8.0)
    _slanting(bench, upper, translate(lower, -side, 0), side, plan.lines)
    return say.text(
        "figure-binding-strips-draw-bias",
        square=say.plain(plan.square),
        width=say.plain(bench.width),
    )


def _slanting(bench: Workbench, upper: Polygon, lower: Polygon, side: float, lines: int) -> None:
    say = bench.labels
    canvas, scale = bench.canvas, 0.96 / side
    frame = canvas.frame(0.3 + 0.96, 1.52, scale)
    for half in (upper, lower):
        frame.shape(half, wrong_side(bench.strip), Stroke(edge_of(bench.strip), 0.6))
    step = float(bench.width) * sqrt(2)
    shape = Polygon([(0, 0), (side, 0), (0, side), (-side, side)])
    for i in range(1, lines + 1):
        line = LineString([(i * step + 1, -1), (i * step - side - 1, side + 1)])
        frame.lines(line.intersection(shape), Stroke(INK, 0.45), 0)
    disc(canvas, (0.12, 1.62), "2")
    # the spacing of the ruled lines, measured square to them from the bias edge
    across = float(bench.width) / sqrt(2)
    foot = (side * 0.55, side * 0.45)
    head = (foot[0] - across, foot[1] - across)
    arrow(frame, [head, foot], Stroke(INK, 0.7), both=True, size=3.0)
    leader(
        frame,
        foot,
        (side * 0.66, side * 0.7),
        say.text("figure-apart", width=say.length(bench.width)),
        dot=False,
        halo=PAPER,
    )
