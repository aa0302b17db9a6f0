"""A border being added: what is there already, and the strips round it in sewing order.

In: a size and `border`, its index from the innermost. Out: the figure.
Invariant: the strips are the draft's own patches; those sewn first carry the number 1.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import text_width
from publish.draw.canvas.marks import disc
from publish.draw.canvas.style import CREASE, HEAD, INK, SMALL, STEP_WIDTH, readable_on
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.table import (
    holds,
    laid_size,
    margins,
    paint_raw,
    piece_for,
    single,
    together,
)
from publish.model.draft import Draft, Patch
from publish.model.figure import Figure
from publish.model.size import Size
from publish.model.words import FigureSpec

APART = 0.26
EDGE = 0.18
"""Inches between the top and its strips, and beyond them for letters."""
SIDES = ("left", "right", "top", "bottom")


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the top so far with the strips of one border round it."""
    size, draft = context.size(spec), context.draft(spec)
    asked = spec.get("border", "0")
    index = int(asked) if asked.isdecimal() else len(size.borders)
    if index >= len(size.borders):
        raise CannotDrawError(f"there is no border {asked!r} at this size")
    strips, done = split(size, draft, index)
    inner = together(done, "top", askew=False)
    seam = context.pattern.sewing.seam
    wide, high = laid_size(inner, (seam,) * 4)
    deep = size.borders[index].width + 2 * seam
    scale = (STEP_WIDTH - 2 * (APART + EDGE)) / float(wide + 2 * deep)
    canvas = context.canvas(STEP_WIDTH, (float(high + 2 * deep)) * scale + 2 * (APART + EDGE))
    corner = float(deep - seam) * scale + APART + EDGE
    left = corner + float(seam - inner.box[0]) * scale
    top = corner + float(seam - inner.box[1]) * scale
    frame = canvas.frame(left, top, scale)
    paint_raw(frame, context, draft, inner, (seam,) * 4, holds(draft, (inner,)))
    for side, patch in strips.items():
        _strip(canvas, context, spec, side, patch, (left, top, scale))
    mitred = size.borders[index].corners == "mitred"
    _numbers(canvas, strips, (left, top, scale), mitred)
    return canvas.figure(spec, _alt(context, spec, strips, index, laid_size(inner, (seam,) * 4)))


def split(size: Size, draft: Draft, index: int) -> tuple[dict[str, Patch], list[Patch]]:
    """Return a border's patches by side, and every patch sewn before it."""
    layer = [r for r in size.layers if r.border is not None][index]
    across, down = (size.width - layer.width) / 2, (size.height - layer.height) / 2
    outer = (across, down, size.width - across, size.height - down)
    width = size.borders[index].width
    inner = (outer[0] + width, outer[1] + width, outer[2] - width, outer[3] - width)
    strips: dict[str, Patch] = {}
    done = []
    for patch in draft.patches:
        left, top, right, bottom = patch.box
        if left >= inner[0] and top >= inner[1] and right <= inner[2] and bottom <= inner[3]:
            done.append(patch)
        elif patch.role != "border":
            continue
        elif left >= outer[0] and top >= outer[1] and right <= outer[2] and bottom <= outer[3]:
            strips[_side(patch, inner)] = patch
    return strips, done


def _side(patch: Patch, inner: tuple[Fraction, ...]) -> str:
    left, top, right, bottom = patch.box
    if bottom <= inner[1] or (top < inner[1] and bottom < inner[3]):
        return "top"
    if top >= inner[3] or (bottom > inner[3] and top > inner[1]):
        return "bottom"
    return "left" if right <= inner[0] or left < inner[0] else "right"


_AWAY = {"left": (-1, 0), "right": (1, 0), "top": (0, -1), "bottom": (0, 1)}


def _strip(
    canvas: Canvas,
    context: Context,
    spec: FigureSpec,
    side: str,
    patch: Patch,
    origin: tuple[float, float, float],
) -> None:
    """Draw a strip moved outward, with its letter and cut size."""
    left, top, scale = origin
    dx, dy = _AWAY[side]
    frame = canvas.frame(left + dx * APART, top + dy * APART, scale)
    unit = single(patch)
    margin = margins(context, context.draft(spec), unit, trimmed=True)
    paint_raw(frame, context, context.draft(spec), unit, margin)
    piece = piece_for(context.plan(spec), patch)
    if piece is None:
        return
    a, b, c, d = (float(v) for v in patch.box)
    centre = ((a + c) / 2, (b + d) / 2)
    words = f"{piece.letter}  {context.labels.sides(piece.width, piece.length)}"
    thick = min(c - a, d - b) * scale * 72
    angle = 0.0 if dx == 0 else -90.0
    if side in ("right", "bottom"):
        words = piece.letter
        angle = 0.0
    size = SMALL if len(words) > 2 else HEAD
    inside = thick >= size + 2 and max(c - a, d - b) * scale * 72 > text_width(words, size) + 24
    if inside:
        frame.text(
            centre,
            words,
            size,
            "semibold",
            "middle",
            "middle",
            readable_on(context.colour(patch.fabric)),
            angle,
        )
        return
    away = thick / 2 + size * 0.5 + 3.5
    x, y = frame.point(centre)
    canvas.page.text(
        (x + dx * away, y + dy * away), words, size, "semibold", "middle", "middle", INK, angle
    )


def _numbers(
    canvas: Canvas, strips: dict[str, Patch], origin: tuple[float, float, float], mitred: bool
) -> None:
    """Number the strips in sewing order, and the mitres after them."""
    left, top, scale = origin
    frame = canvas.frame(left, top, scale)
    gap = APART / 2 / scale
    for side, patch in strips.items():
        dx, dy = _AWAY[side]
        a, b, c, d = (float(v) for v in patch.box)
        x = c - gap if dx < 0 else a + gap if dx > 0 else (a + c) / 2
        y = d - gap if dy < 0 else b + gap if dy > 0 else (b + d) / 2
        first = mitred or side in ("left", "right")
        disc(frame, (x, y), "1" if first else "2")
    if mitred and len(strips) == 4:
        box = [
            strips["left"].box[0],
            strips["top"].box[1],
            strips["right"].box[2],
            strips["bottom"].box[3],
        ]
        a, b, c, d = (float(v) for v in box)
        wide = float(strips["left"].box[2] - strips["left"].box[0])
        out = APART / scale
        for x, y, sx, sy in ((a, b, -1, -1), (c, b, 1, -1), (c, d, 1, 1), (a, d, -1, 1)):
            inner = (x - sx * (wide - out * 0.2), y - sy * (wide - out * 0.2))
            outer = (x + sx * out * 0.8, y + sy * out * 0.8)
            frame.line(inner, outer, CREASE)
            disc(frame, ((inner[0] + outer[0]) / 2, (inner[1] + outer[1]) / 2), "2")


def _alt(
    context: Context,
    spec: FigureSpec,
    strips: dict[str, Patch],
    index: int,
    inner: tuple[Fraction, Fraction],
) -> str:
    say = context.labels
    border = context.size(spec).borders[index]
    pieces = {s: piece_for(context.plan(spec), p) for s, p in strips.items()}
    named = [
        f"{side} {piece.letter} {say.spoken(piece.width, piece.length)}"
        for side, piece in ((s, pieces.get(s)) for s in SIDES)
        if piece is not None
    ]
    order = (
        say.text("figure-borders-alt")
        if border.corners == "mitred"
        else say.text("figure-borders-alt-2")
    )
    return say.text(
        "figure-borders-alt-3",
        inner=say.spoken(*inner),
        strips=say.counted(len(strips), "strip"),
        name=context.pattern.fabrics[border.fabric].name,
        named=say.listed(named),
        order=order,
    )
