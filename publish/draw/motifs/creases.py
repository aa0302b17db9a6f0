"""The ground creased in halves and diagonals.

In: a size and `block`. Out: the figure.
Invariant: all creases pass through the ground's centre; a seam that already runs there
is drawn as a seam.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, bend, leader
from publish.draw.canvas.style import (
    ARROW,
    INK,
    LABEL,
    SOFT,
    STEP_WIDTH,
    Stroke,
    readable_on,
)
from publish.draw.context import Context
from publish.draw.piecing.table import ground_of, laid_size, margins, paint_raw
from publish.model.draft import Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec

Corners = tuple[float, float, float, float]
"""Left, top, right, bottom of the raw ground."""
SIDE = 1.62
LEFT, TOP = 0.06, 0.3


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw one block's ground as it was cut, with its creases and how each is folded."""
    say = context.labels
    draft = context.draft(spec)
    unit = ground_of(draft, spec.get("block"))
    margin = margins(context, draft, unit, trimmed=False)
    wide, high = laid_size(unit, margin)
    scale = SIDE / float(max(wide, high))
    canvas = context.canvas(STEP_WIDTH, 3.0)
    west, north = float(unit.box[0] - margin[0]), float(unit.box[1] - margin[1])
    frame = canvas.frame(LEFT - west * scale, TOP - north * scale, scale)
    paint_raw(frame, context, draft, unit, margin)
    corners = (west, north, west + float(wide), north + float(high))
    upright, level = seams_through(unit)
    _creases(frame, context, unit, corners, (upright, level))
    _labels(frame, corners, (upright, level))
    words = say.size(wide, high)
    frame.text(
        ((corners[0] + corners[2]) / 2, corners[3]),
        words,
        LABEL,
        anchor="middle",
        fill=SOFT,
        shift=(0, 12),
    )
    lines = [
        name
        for name, there in (
            (say.text("figure-upright"), upright),
            (say.text("figure-level"), level),
        )
        if not there
    ]
    folds = [
        *(say.text("figure-in-half", name=name) for name in lines),
        say.text("figure-on-both-diagonals"),
    ]
    seams = "" if len(lines) == 2 else say.text("figure-creases")
    alt = say.text(
        "figure-creases-2", wide=say.spoken(wide, high), folds=say.listed(folds), seams=seams
    )
    return canvas.figure(spec, alt)


def seams_through(unit: Unit) -> tuple[bool, bool]:
    """Say whether a seam already runs through the centre upright, and level."""
    left, top, right, bottom = unit.box
    middle = ((left + right) / 2, (top + bottom) / 2)
    edges: list[tuple[Fraction, ...]] = [p.box for p in unit.parts]
    upright = bool(edges) and all(b[0] >= middle[0] or b[2] <= middle[0] for b in edges)
    level = bool(edges) and all(b[1] >= middle[1] or b[3] <= middle[1] for b in edges)
    return upright, level


def _creases(
    frame: Canvas, context: Context, unit: Unit, corners: Corners, seams: tuple[bool, bool]
) -> None:
    left, top, right, bottom = corners
    x, y = (left + right) / 2, (top + bottom) / 2
    patch = unit.parts[0].patch
    ground = context.colour(patch.fabric) if patch is not None else "#ffffff"
    ink = INK if readable_on(ground) == INK else readable_on(ground)
    crease = Stroke(ink, 0.6, (2.5, 1.8))
    lines = [((left, top), (right, bottom)), ((left, bottom), (right, top))]
    if not seams[0]:
        lines.append(((x, top), (x, bottom)))
    if not seams[1]:
        lines.append(((left, y), (right, y)))
    for start, end in lines:
        frame.line(start, end, crease)
    frame.circle((x, y), 1.9, ink)


def _labels(frame: Canvas, corners: Corners, seams: tuple[bool, bool]) -> None:
    left, top, right, bottom = corners
    x, y = (left + right) / 2, (top + bottom) / 2
    beside = right + frame.inches(13)
    step = frame.inches(4)
    if not seams[0]:
        over = [(left + step, top - step), (right - step, top - step)]
        arrow(frame, bend(over[0], over[1], 0.11), ARROW, "open")
    half = (
        frame.labels.text("figure-seam-2")
        if seams[1]
        else frame.labels.text("figure-crease-in-half")
    )
    leader(frame, (right - frame.inches(20), y), (beside, y), half, dot=True, halo=None)
    corner = (right - frame.inches(14), top + frame.inches(14))
    leader(
        frame,
        corner,
        (beside, top + frame.inches(14)),
        frame.labels.text("figure-crease-on-the"),
        halo=None,
    )
    frame.text(
        (beside, top + frame.inches(23)),
        frame.labels.text("figure-diagonal"),
        LABEL,
        "regular",
        "start",
        "middle",
        shift=(2.5, 0),
    )
    leader(
        frame,
        (x, y),
        (beside, bottom - frame.inches(26)),
        frame.labels.text("figure-centre"),
        halo=None,
        dot=False,
    )
