"""The hanging sleeve: made, and sewn to the back.

In: a size and `detail`: make or attach. Out: the figure.
Invariant: the strip's size is the cut piece's, the sleeve's depth the size's own.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, bend, block_arrow, dimension, leader
from publish.draw.canvas.style import (
    ARROW,
    FOLD,
    INK,
    PAPER,
    SOFT,
    STEP_WIDTH,
    STITCH,
    Stroke,
    edge_of,
    mix,
    readable_on,
    wrong_side,
)
from publish.draw.cloth import fabric, sheet
from publish.draw.context import CannotDrawError, Context
from publish.draw.workbench import Workbench
from publish.model.cutplan import Piece
from publish.model.figure import Figure
from publish.model.words import FigureSpec


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the sleeve being made or attached."""
    size, piece = context.size(spec), context.plan(spec).sleeve
    if piece is None or size.sleeve is None:
        raise CannotDrawError("this size has no hanging sleeve")
    bench = Workbench.of(context, spec, context.canvas(STEP_WIDTH, 4.0), size.sleeve, piece.fabric)
    if spec.get("detail") == "attach":
        return bench.canvas.figure(spec, _attach(bench, piece, size.sleeve))
    return bench.canvas.figure(spec, _make(bench, piece, size.sleeve))


def _sides(piece: Piece) -> tuple[Fraction, Fraction]:
    """Return the strip's length and its depth."""
    return max(piece.width, piece.length), min(piece.width, piece.length)


def hemmed(cut: Fraction, seam: Fraction) -> Fraction:
    """Return how long a strip is once each end is folded twice by a seam's width."""
    return cut - 4 * seam


def _make(bench: Workbench, piece: Piece, depth: Fraction) -> str:
    say = bench.labels
    cut, deep = _sides(piece)
    long = hemmed(cut, bench.seam)
    wide, high = 1.9, 0.72
    canvas = bench.canvas
    left, top = 0.4, 0.26
    fabric(canvas, sheet(left, top, wide, high), bench.strip, "wrong")
    hem = 0.1
    for x in (left, left + wide - hem):  # the hems show the right side, folded over twice
        fabric(canvas, sheet(x, top, hem, high), bench.strip)
        inner = x + hem - 0.025 if x == left else x + 0.025
        canvas.line((inner, top), (inner, top + high), STITCH.but(readable_on(bench.strip)))
    canvas.line((left + hem, top + high / 2), (left + wide - hem, top + high / 2), FOLD)
    x = left + wide * 0.72
    arrow(canvas, bend((x, top + high * 0.1), (x, top + high * 0.9), 0.24), ARROW, "open")
    dimension(canvas, (left, top), (left + wide, top), say.length(long), 9)
    dimension(canvas, (left, top + high), (left, top), say.length(deep), 9)
    middle = left + wide / 2
    block_arrow(canvas, (middle, top + high + 0.1), (middle, top + high + 0.32), SOFT, 8.0)
    low = top + high + 0.44
    _tube(bench, (left, low, wide), depth)
    return say.text(
        "figure-sleeve-make",
        long=say.spoken(long, deep),
        seam=say.plain(bench.seam),
        depth=say.plain(depth),
    )


def _tube(bench: Workbench, at: tuple[float, float, float], depth: Fraction) -> None:
    """Draw the flat tube, its seam pressed open along the middle."""
    say = bench.labels
    canvas, (left, top, wide) = bench.canvas, at
    high, lip = 0.42, 0.055
    fabric(canvas, sheet(left, top, wide, high), bench.strip)
    middle = top + high / 2
    canvas.rect(
        left,
        middle - lip,
        wide,
        2 * lip,
        wrong_side(bench.strip),
        Stroke(edge_of(bench.strip), 0.4),
    )
    canvas.line((left, middle), (left + wide, middle), Stroke(INK, 0.7))
    dimension(canvas, (left, top + high), (left, top), say.length(depth), 9)
    spot = left + wide * 0.62
    leader(
        canvas,
        (spot, middle),
        (spot, top + high + 0.16),
        say.text("figure-seam-pressed-open"),
        "middle",
        halo=PAPER,
    )


def _attach(bench: Workbench, piece: Piece, depth: Fraction) -> str:
    say = bench.labels
    size, seam = bench.size, bench.seam
    canvas = bench.canvas
    scale = (STEP_WIDTH - 0.5) / float(size.width + 2 * seam)
    frame = canvas.frame(0.06 + float(seam) * scale, 0.1 + float(seam) * scale, scale)
    width, edge = float(size.width), float(seam)
    show = 1.35 / scale
    frame.rect(0, 0, width, show, bench.back)
    rim = Stroke(edge_of(bench.edging), 0.4)
    for x, y, w, h in (
        (-edge, -edge, 2 * edge, show + edge),
        (width - edge, -edge, 2 * edge, show + edge),
        (-edge, -edge, width + 2 * edge, 2 * edge),
    ):
        frame.rect(x, y, w, h, bench.edging, rim)
    length = float(hemmed(_sides(piece)[0], seam))
    left, top, deep = (width - length) / 2, edge * 1.6, float(depth)
    fabric(frame, sheet(left, top, length, deep), bench.strip)
    _sewn(frame, bench, (left, top, length, deep))
    rod = mix(SOFT, PAPER, 0.25)
    y = top + deep / 2
    for start, end in ((left * 0.4, left), (left + length, width - left * 0.4)):
        frame.line((start, y), (end, y), Stroke(rod, 3.4, (), "round"))
    frame.line((left, y), (left + length, y), Stroke(readable_on(bench.strip), 0.5, (2.0, 2.0)))
    dimension(frame, (width + edge, top), (width + edge, top + deep), say.length(depth), 14)
    below = top + deep
    spot = (left + length * 0.3, below)
    ink = readable_on(bench.back)
    leader(
        frame,
        spot,
        (spot[0], below + frame.inches(17)),
        say.text("figure-sew-both-folds-by-hand"),
        "middle",
        halo=bench.back,
        fill=ink,
    )
    back = say.text("figure-back-of-the-quilt")
    frame.text((width / 2, show), back, anchor="middle", fill=ink, shift=(0, -7))
    return say.text("figure-sleeve-attach", depth=say.plain(depth))


def _sewn(frame: Canvas, bench: Workbench, at: tuple[float, float, float, float]) -> None:
    """Draw small slanted stitches along the sleeve's two folds."""
    left, top, length, deep = at
    stitch = Stroke(readable_on(bench.back), 0.6)
    count = 30
    for i in range(1, count):
        x = left + length * i / count
        for y, way in ((top, -1), (top + deep, 1)):
            lean = frame.inches(1.4)
            frame.line((x - lean, y + way * lean), (x + lean, y - way * lean), stitch)
