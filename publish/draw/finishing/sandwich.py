"""Basting the layers: seen from above, with rows of basting from the centre out.

In: a size. Out: the figure.
Invariant: the batting and backing reach beyond the top by the plan's own sizes.
"""

from __future__ import annotations

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, leader
from publish.draw.canvas.style import ARROW, BASTE, PAPER, STEP_WIDTH, Stroke
from publish.draw.cloth import batting, fabric, sheet
from publish.draw.context import Context
from publish.draw.finishing.layers import layers_of, top_size
from publish.draw.top import fit, paint_motifs, paint_patches
from publish.model.figure import Figure
from publish.model.words import FigureSpec

ROOM = (1.66, 2.2)
LEFT, TOP = 0.04, 0.04
ROWS = 4
"""Rows of basting on each side of the middle one: a picture, not a count."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the layers nested, the rows of basting, and the order they are sewn in."""
    say = context.labels
    backing, wadding = layers_of(context, spec)
    draft = context.draft(spec)
    scale = fit(backing.width, backing.height, ROOM)
    wide, high = float(backing.width), float(backing.height)
    canvas = context.canvas(STEP_WIDTH, 3.0)
    frame = canvas.frame(LEFT + wide * scale / 2, TOP + high * scale / 2, scale)
    sheets = [
        (float(w), float(h))
        for w, h in (
            (backing.width, backing.height),
            (wadding.width, wadding.height),
            top_size(context, spec),
        )
    ]
    boxes = [sheet(-w / 2, -h / 2, w, h) for w, h in sheets]
    fabric(frame, boxes[0], context.colour(backing.fabric), "wrong")
    batting(frame, boxes[1], 7.0)
    fabric(frame, boxes[2], context.colour(draft.patches[-1].fabric))
    inner = frame.frame(-float(draft.width) / 2, -float(draft.height) / 2)
    paint_patches(inner, context, draft.patches, pale=0.45)
    paint_motifs(inner, context, draft, draft.placements, pale=0.45)
    _rows(frame, sheets[2])
    _names(frame, sheets)
    top = top_size(context, spec)
    alt = say.text(
        "figure-sandwich",
        width=say.spoken(backing.width, backing.height),
        width_2=say.spoken(wadding.width, wadding.height),
        top=say.spoken(*top),
        overhang=say.plain(backing.overhang),
    )
    return canvas.figure(spec, alt)


def _rows(frame: Canvas, top: tuple[float, float]) -> None:
    """Draw the basting as a grid, and arrows from the centre to the four sides."""
    half_w, half_h = top[0] / 2, top[1] / 2
    for i in range(-ROWS + 1, ROWS):
        x, y = half_w * i / ROWS, half_h * i / ROWS
        frame.line((x, -half_h * 0.96), (x, half_h * 0.96), BASTE.but(weight=0.7))
        frame.line((-half_w * 0.96, y), (half_w * 0.96, y), BASTE.but(weight=0.7))
    rim = Stroke(PAPER, 3.2, (), "round")
    for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        start = (half_w * 0.1 * dx, half_h * 0.1 * dy)
        end = (half_w * 0.68 * dx, half_h * 0.68 * dy)
        frame.line(start, end, rim)
        arrow(frame, [start, end], ARROW)


NAMES = (
    ("figure-layer-backing", "figure-wrong-side-up"),
    ("figure-layer-batting",),
    ("figure-layer-top", "figure-right-side-up"),
)
"""Messages, from the lowest layer up."""
LINE = 11.5
"""Points between lines of words."""


def _names(frame: Canvas, sheets: list[tuple[float, float]]) -> None:
    """Name the layers in a column at the right, each with a line to its own rim."""
    beside = sheets[0][0] / 2 + frame.inches(9)
    y = -sheets[0][1] / 2 + frame.inches(9)
    for number, (words, (wide, high)) in enumerate(zip(NAMES, sheets, strict=True)):
        inner = sheets[number + 1][0] if number + 1 < len(sheets) else wide * 0.86
        low = high / 2 - frame.inches(4)
        target = ((wide + inner) / 4, min(max(y, -low), low))
        leader(frame, target, (beside, y), frame.labels.text(words[0]), halo=None)
        for i, text in enumerate(words[1:], 1):
            frame.text((beside, y), frame.labels.text(text), level="middle", shift=(2.5, LINE * i))
        y += frame.inches(LINE * len(words) + 8)
    y = max(y + frame.inches(6), frame.inches(30))
    for i, text in enumerate(
        (frame.labels.text("figure-baste-from-the"), frame.labels.text("figure-centre-out"))
    ):
        frame.text((beside, y), text, level="middle", shift=(2.5, LINE * i))
