"""The finished pillow cover, and a back with a zip.

In: a pillow. Out: the drawing on its canvas; each function returns the alternative text.
Invariant: the cover's size and the form's are the size's own.
"""

from __future__ import annotations

from collections.abc import Sequence

from shapely.geometry import Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import bend, block_arrow, dimension, leader
from publish.draw.canvas.style import (
    LABEL,
    PAPER,
    SOFT,
    STITCH,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.cloth import fabric, sheet
from publish.draw.finishing.pillow_back import Pillow
from publish.draw.top import paint_motifs, paint_patches

SIDE = 1.02
FULLNESS = 0.035
"""How far the edges of a full pillow draw in between its corners, as a share of a side."""


def _plump(wide: float, high: float) -> Polygon:
    """Return the outline of a full pillow: corners out, edges drawn in."""
    corners: Sequence[tuple[float, float]] = ((0, 0), (wide, 0), (wide, high), (0, high))
    ring: list[tuple[float, float]] = []
    for start, end in zip(corners, (*corners[1:], corners[0]), strict=True):
        ring += bend(start, end, -FULLNESS)[:-1]
    return Polygon(ring)


def draw_turn(pillow: Pillow) -> str:
    """Draw the cover from the back, with its opening, and from the front."""
    say = pillow.context.labels
    size = pillow.bench.size
    wide, high = float(size.width), float(size.height)
    scale = SIDE / wide
    canvas = pillow.bench.canvas
    back = canvas.frame(0.08, 0.08, scale)
    outline = _plump(wide, high)
    colour = pillow.bench.strip
    fabric(back, outline, colour)
    _opening(back, pillow, wide, high)
    front = canvas.frame(0.08 + SIDE + 0.34, 0.08, scale)
    draft = pillow.context.drafts[size.key]
    fabric(front, outline, pillow.context.colour(draft.patches[0].fabric))
    if len(draft.patches) > 1:
        paint_patches(front, pillow.context, draft.patches)
    paint_motifs(front, pillow.context, draft, draft.placements)
    middle = 0.08 + high * scale / 2
    block_arrow(canvas, (SIDE + 0.14, middle), (SIDE + 0.36, middle), SOFT, 8.0)
    low = 0.08 + high * scale + 0.19
    canvas.text((0.08 + SIDE / 2, low), say.text("figure-back"), LABEL, anchor="middle")
    canvas.text((0.42 + SIDE * 1.5, low), say.text("figure-front"), LABEL, anchor="middle")
    canvas.text(
        (1.3, low + 0.17),
        say.text(
            "figure-cover-form-square",
            width=say.length(size.width),
            form=say.length(pillow.plan.form),
        ),
        LABEL,
        "semibold",
        "middle",
    )
    return say.text(
        "figure-pillow-cover-draw-turn",
        width=say.spoken(size.width, size.height),
        form=say.plain(pillow.plan.form),
    )


def _opening(frame: Canvas, pillow: Pillow, wide: float, high: float) -> None:
    """Draw the upper hem across the back, its stitching, and the shadow under it."""
    colour = pillow.bench.strip
    edge = (high + float(pillow.plan.overlap)) / 2
    fold = float(pillow.plan.hem / 2)
    inset = wide * FULLNESS
    shade = mix(colour, "#000000", 0.35)
    frame.polyline(bend((inset * 0.8, edge), (wide - inset * 0.8, edge), -0.02), Stroke(shade, 1.5))
    frame.polyline(
        bend((inset, edge - fold), (wide - inset, edge - fold), -0.02),
        STITCH.but(readable_on(colour), 0.5),
    )


def draw_zip(pillow: Pillow) -> str:
    """Draw the two back pieces joined, seen from the wrong side, with the zip over the seam."""
    say = pillow.context.labels
    plan, bench = pillow.plan, pillow.bench
    long = max(plan.piece_width, plan.piece_length)
    short = min(plan.piece_width, plan.piece_length)
    scale = 1.66 / float(long)
    frame = bench.canvas.frame(0.06, 0.06, scale)
    wide, hem = float(long), float(plan.hem)
    deep = float(short) - hem
    for y in (0.0, deep):
        fabric(frame, sheet(0, y, wide, deep), bench.strip, "wrong")
    for y in (deep - hem, deep):  # the allowances, pressed open
        fabric(frame, sheet(0, y, wide, hem), bench.strip)
    _teeth(frame, wide, deep, hem)
    ends = wide * 0.1
    thread = Stroke(readable_on(bench.strip), 0.9)
    for start, finish in ((0.0, ends), (wide - ends, wide)):
        frame.line((start, deep), (finish, deep), thread)
    beside = wide + frame.inches(12)
    dimension(frame, (wide, deep), (wide, deep + hem), say.length(plan.hem), 8)
    leader(
        frame,
        (wide * 0.8, deep),
        (beside, deep * 0.62),
        say.text("figure-zip-face-down"),
        halo=PAPER,
    )
    leader(
        frame,
        (ends / 2, deep),
        (ends / 2, deep * 0.56),
        say.text("figure-short-stitches"),
        "start",
        halo=PAPER,
    )
    frame.text((wide / 2, deep * 1.62), say.text("figure-wrong-side"), anchor="middle", halo=PAPER)
    return say.text(
        "figure-pillow-cover-draw-zip", long=say.spoken(long, short), hem=say.plain(plan.hem)
    )


def _teeth(frame: Canvas, wide: float, deep: float, hem: float) -> None:
    """Draw the zip: tape, teeth and pull, face down over the seam."""
    start, end = wide * 0.1, wide * 0.9
    tape = min(hem * 0.62, frame.inches(7))
    frame.rect(start, deep - tape, end - start, 2 * tape, "#d9d4ca", Stroke(SOFT, 0.5))
    frame.line((start, deep), (end, deep), Stroke("#8b857b", 2.2, (0.9, 0.9)))
    for y in (deep - tape * 0.6, deep + tape * 0.6):
        frame.line((start, y), (end, y), STITCH.but(weight=0.6))
    frame.rect(
        end - frame.inches(9),
        deep - frame.inches(2),
        frame.inches(6),
        frame.inches(4),
        SOFT,
        Stroke(edge_of("#8b857b"), 0.4),
    )
