"""Sewing the binding on: the start, a corner, the two ends, and the finish on the back.

In: a workbench. Out: the drawing on its canvas; each function returns the alternative
text.
Invariant: raw edges lie on the quilt's edge, stitching one seam allowance inside it, and
folds at corners run at 45 degrees.
"""

from __future__ import annotations

from shapely.geometry import Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, block_arrow, dimension, disc, leader
from publish.draw.canvas.style import (
    ARROW,
    SOFT,
    STEP_WIDTH,
    STITCH,
    Stroke,
    edge_of,
    readable_on,
)
from publish.draw.cloth import fabric, sheet
from publish.draw.workbench import Workbench


def _quilt(
    frame: Canvas,
    bench: Workbench,
    left: float,
    top: float,
    right: float,
    bottom: float,
    back: bool = False,
) -> None:
    """Draw part of the quilt, with its edges only where the quilt really ends."""
    colour = bench.back if back else bench.front
    frame.rect(left, top, right - left, bottom - top, colour)


def _light(bench: Workbench) -> Stroke:
    """Return a stitch that shows on the binding."""
    return STITCH.but(readable_on(bench.strip))


def draw_start(bench: Workbench) -> str:
    """Draw the binding laid on the top edge, its tail loose, the first stitches."""
    say = bench.labels
    canvas, half = bench.canvas, float(bench.width) / 2
    scale = 0.34 / half
    frame = canvas.frame(0.06, 0.5, scale)
    wide, high = (STEP_WIDTH - 0.12) / scale, 1.0 / scale
    _quilt(frame, bench, 0, 0, wide, high)
    edge = Stroke(edge_of(bench.front), 0.6)
    frame.line((0, 0), (wide, 0), edge)
    start = wide * 0.24
    fabric(frame, sheet(start, 0, wide - start, half), bench.strip)
    sewn, seam = wide * 0.52, float(bench.seam)
    frame.line((sewn, seam), (wide, seam), _light(bench))
    frame.circle((sewn, seam), 1.5, readable_on(bench.strip))
    arrow(frame, [(sewn + 0.02 * wide, half * 1.4), (sewn + wide * 0.26, half * 1.4)], ARROW)
    dimension(frame, (start, 0), (sewn, 0), say.text("figure-loose-tail"), 9)
    leader(frame, (wide * 0.88, 0), (wide * 0.88, -frame.inches(12)), "", dot=True)
    frame.text((wide * 0.995, -frame.inches(15)), say.text("figure-raw-edges-level"), anchor="end")
    leader(
        frame,
        (start + wide * 0.06, half),
        (start + wide * 0.06, half * 1.75),
        say.text("figure-fold"),
        "middle",
        dot=False,
        halo=bench.front,
        fill=readable_on(bench.front),
    )
    frame.text(
        (sewn + wide * 0.14, half * 1.4),
        say.text("figure-seam", seam=say.length(bench.seam)),
        anchor="middle",
        level="top",
        fill=readable_on(bench.front),
        shift=(0, 6),
    )
    return say.text("figure-binding-edge-draw-start", seam=say.plain(bench.seam))


def draw_close(bench: Workbench) -> str:
    """Draw the opening between last and first stitch, and the tails that overlap in it."""
    say = bench.labels
    canvas, half = bench.canvas, float(bench.width) / 2
    scale = 0.3 / half
    frame = canvas.frame(0.06, 0.5, scale)
    wide, high = (STEP_WIDTH - 0.12) / scale, 1.0 / scale
    _quilt(frame, bench, 0, 0, wide, high)
    frame.line((0, 0), (wide, 0), Stroke(edge_of(bench.front), 0.6))
    last, first, seam = wide * 0.17, wide * 0.83, float(bench.seam)
    left, right = wide / 2 - half, wide / 2 + half
    fabric(frame, sheet(left, 0, wide - left, half), bench.strip)
    fabric(frame, sheet(0, half * 0.1, right, half), bench.strip)
    frame.line((0, seam), (last, seam), _light(bench))
    frame.line((first, seam), (wide, seam), _light(bench))
    for x in (last, first):
        frame.circle((x, seam), 1.5, readable_on(bench.strip))
    dimension(
        frame, (left, 0), (right, 0), say.text("figure-overlap", width=say.length(bench.width)), 9
    )
    on_quilt = readable_on(bench.front)
    for x, text, anchor in (
        (last, say.text("figure-last-stitch"), "middle"),
        (first, say.text("figure-first-stitch"), "middle"),
    ):
        leader(
            frame,
            (x, seam),
            (x, half * 2.1),
            text,
            anchor,
            dot=False,
            halo=bench.front,
            fill=on_quilt,
        )
    return say.text("figure-binding-edge-draw-close", width=say.plain(bench.width))


def draw_tuck(bench: Workbench) -> str:
    """Draw the folded beginning, left open, and the end that goes inside it."""
    canvas, half = bench.canvas, float(bench.width) / 2
    scale = 0.3 / half
    frame = canvas.frame(0.06, 0.5, scale)
    wide, high = (STEP_WIDTH - 0.12) / scale, 1.0 / scale
    _quilt(frame, bench, 0, 0, wide, high)
    frame.line((0, 0), (wide, 0), Stroke(edge_of(bench.front), 0.6))
    fold, first, seam = wide * 0.42, wide * 0.7, float(bench.seam)
    fabric(frame, sheet(0, half * 0.12, wide * 0.3, half * 0.76), bench.strip)
    fabric(frame, sheet(fold, 0, wide - fold, half), bench.strip)
    frame.line(
        (fold + seam, 0), (fold + seam, half), Stroke(readable_on(bench.strip), 0.5, (1.6, 1.4))
    )
    frame.line((first, seam), (wide, seam), _light(bench))
    frame.circle((first, seam), 1.5, readable_on(bench.strip))
    arrow(frame, [(wide * 0.31, half / 2), (fold + wide * 0.06, half / 2)], ARROW)
    on_quilt = readable_on(bench.front)
    for x, y, text, anchor in (
        (wide * 0.12, half * 0.8, "end", "middle"),
        (fold, half, bench.labels.text("figure-folded-beginning"), "middle"),
        (first, seam, bench.labels.text("figure-first-stitch"), "middle"),
    ):
        down = half * (2.6 if text == "folded beginning" else 1.8)
        leader(frame, (x, y), (x, down), text, anchor, dot=False, halo=bench.front, fill=on_quilt)
    return bench.labels.text("figure-binding-edge-draw-tuck")


def draw_corner(bench: Workbench) -> str:
    """Draw the three moments of a corner: stop, fold up, fold down."""
    say = bench.labels
    canvas = bench.canvas
    for number, paint in enumerate((_stop, _up, _down)):
        frame = canvas.frame(0.7 + 0.86 * number, 0.68, 0.3 / (float(bench.width) / 2))
        reach = 0.62 / (0.3 / (float(bench.width) / 2))
        _quilt(frame, bench, -reach, 0, 0, reach * 1.25)
        edge = Stroke(edge_of(bench.front), 0.6)
        frame.polyline([(-reach, 0), (0, 0), (0, reach * 1.25)], edge)
        paint(frame, bench, reach)
        disc(frame, (-reach + frame.inches(6.5), reach * 1.25 - frame.inches(7)), str(number + 1))
    for x in (0.7 + 0.12, 0.7 + 0.86 + 0.12):
        block_arrow(canvas, (x - 0.06, 1.1), (x + 0.06, 1.1), SOFT, 7.0)
    words = (
        say.text("figure-stop", seam=say.length(bench.seam)),
        say.text("figure-fold-up"),
        say.text("figure-fold-down"),
    )
    for number, text in enumerate(words):
        canvas.text((0.7 + 0.86 * number - 0.31, 1.6), text, anchor="middle", fill=SOFT)
    return say.text("figure-binding-edge-draw-corner", seam=say.plain(bench.seam))


def _stop(frame: Canvas, bench: Workbench, reach: float) -> None:
    half, seam = float(bench.width) / 2, float(bench.seam)
    fabric(frame, sheet(-reach, 0, reach + half * 0.45, half), bench.strip)
    frame.line((-reach, seam), (-seam, seam), _light(bench))
    frame.line(
        (-seam, seam - frame.inches(2.5)),
        (-seam, seam + frame.inches(2.5)),
        Stroke(readable_on(bench.strip), 0.8),
    )


def _up(frame: Canvas, bench: Workbench, reach: float) -> None:
    half, seam = float(bench.width) / 2, float(bench.seam)
    fabric(frame, Polygon([(-reach, 0), (0, 0), (-half, half), (-reach, half)]), bench.strip)
    tall = half * 1.6
    fabric(frame, Polygon([(0, 0), (-half, half), (-half, -tall), (0, -tall)]), bench.strip)
    frame.line((-reach, seam), (-half, seam), _light(bench))


def _down(frame: Canvas, bench: Workbench, reach: float) -> None:
    half, seam = float(bench.width) / 2, float(bench.seam)
    fabric(frame, sheet(-reach, 0, reach - half, half), bench.strip)
    fabric(frame, sheet(-half, 0, half, reach * 1.12), bench.strip)
    frame.line((-half, half), (0, 0), Stroke(readable_on(bench.strip), 0.5, (1.6, 1.4)))
    frame.line((-seam, 0), (-seam, reach * 1.12), _light(bench))


def draw_finish(bench: Workbench) -> str:
    """Draw the back's corner: binding turned over, blind stitches, the mitre."""
    canvas = bench.canvas
    wide = 0.2
    left, top, right, bottom = 0.06, 0.12, 1.6, 1.5
    _quilt(canvas, bench, left, top, right, bottom, back=True)
    fabric(
        canvas,
        Polygon([(left, top), (right, top), (right - wide, top + wide), (left, top + wide)]),
        bench.strip,
    )
    fabric(
        canvas,
        Polygon(
            [(right, top), (right, bottom), (right - wide, bottom), (right - wide, top + wide)]
        ),
        bench.strip,
    )
    stitch = Stroke(readable_on(bench.back), 0.7)
    count, step = 16, 0.085
    for i in range(1, count):
        x, y = left + i * step, top + wide
        if x < right - wide - 0.02:
            canvas.line((x, y + 0.022), (x + 0.028, y - 0.018), stitch)
        y = top + wide + i * step
        if y < bottom - 0.03:
            canvas.line((right - wide - 0.022, y), (right - wide + 0.018, y + 0.028), stitch)
    beside = right + 0.14
    for message, at, low in (
        ("figure-mitre", (right - wide / 2, top + wide / 2), 0.1),
        ("figure-blind-stitches", (right - wide, top + 0.62), 0.5),
        ("figure-backing", (right - wide - 0.34, top + 0.98), 0.92),
    ):
        leader(canvas, at, (beside, top + low), bench.labels.text(message))
    return bench.labels.text("figure-binding-edge-draw-finish")
