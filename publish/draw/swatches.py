"""The fabrics: a swatch of each with its name and what it is used for.

In: the pattern's fabrics and every size's cut pieces. Out: one figure.
Invariant: a fabric's uses are read from the pieces cut from it; a name on a swatch
reads at WCAG AA contrast.
"""

from __future__ import annotations

from shapely.geometry import Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import wrap
from publish.draw.canvas.style import HEAD, LABEL, SOFT, Stroke, edge_of, readable_on
from publish.draw.context import Context
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH

GAP = 0.16
HIGH = 0.95
PER_ROW = 5
TOOTH = 0.055
EDGE = 0.01
"""Inches: between swatches, a swatch's height, a tooth of its pinked edge, the margin."""

USES = (
    ("ground", "figure-use-ground"),
    ("motif", "figure-use-motif"),
    ("border", "figure-use-borders"),
    ("binding", "figure-use-binding"),
    ("backing", "figure-use-backing"),
    ("pillow back", "figure-use-pillow-back"),
    ("sleeve", "figure-use-sleeve"),
)
"""First word of a piece's purpose, and the message of what a swatch calls it."""
PIECED = (("ground", "figure-use-blocks"), ("foundation", "figure-use-blocks"))
"""The same where nothing is laid on the blocks."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the fabrics that some size cuts, in the pattern's order."""
    keys = [k for k in context.pattern.fabrics if uses(context, k)]
    columns = max(min(PER_ROW, len(keys)), 3)
    wide = (context.column - 2 * EDGE - GAP * (columns - 1)) / columns
    canvas = context.canvas(context.column, 1.0)
    row_height = HIGH + 0.55
    for i, key in enumerate(keys):
        x, y = EDGE + (i % columns) * (wide + GAP), (i // columns) * row_height
        _swatch(canvas, context, key, (x, y, wide))
    each = [
        context.labels.text(
            "figure-for",
            name=context.pattern.fabrics[k].name,
            context=context.labels.listed(uses(context, k)),
        )
        for k in keys
    ]
    return canvas.figure(
        spec, context.labels.text("figure-the-fabrics", keys=len(keys), each="; ".join(each))
    )


def uses(context: Context, fabric: str) -> list[str]:
    """Return what a fabric is used for over all sizes, in the order of sewing."""
    found = set()
    for key, plan in context.plans.items():
        for piece in plan.pieces:
            pieced = () if _under_motif(context, key, piece.letter) else PIECED
            if piece.fabric == fabric:
                known = [u for start, u in (*pieced, *USES) if piece.purpose.startswith(start)]
                found.add(known[0] if known else f"figure-use-{piece.purpose.replace(' ', '-')}")
    order = [name for _, name in (*PIECED, *USES)]
    found_in_order = sorted(found, key=lambda u: (order.index(u) if u in order else len(order), u))
    return [context.labels.text(message) for message in found_in_order]


def _under_motif(context: Context, size: str, letter: str) -> bool:
    """Return whether a piece's patches lie in blocks that all carry a motif."""
    cut = context.plans[size].sources
    blocks = {p.block for p in context.drafts[size].patches if cut.get(p.key) == letter}
    found = [context.pattern.blocks[b] for b in blocks if b is not None]
    return all(block.motif for block in found) and bool(context.pattern.motifs)


def _swatch(canvas: Canvas, context: Context, key: str, at: tuple[float, float, float]) -> None:
    x, y, wide = at
    fabric = context.pattern.fabrics[key]
    canvas.shape(
        _pinked(x, y, wide, HIGH), fabric.colour, Stroke(edge_of(fabric.colour), 0.35), smooth=0
    )
    ink = readable_on(fabric.colour)
    room = wide * POINTS_PER_INCH - 14
    lines = wrap(fabric.name, HEAD, room, "semibold")
    for i, line in enumerate(lines):
        up = -11.0 * (len(lines) - 1 - i) - 12
        canvas.text((x, y + HIGH), line, HEAD, "semibold", fill=ink, shift=(8, up))
    words = context.labels.listed(uses(context, key))
    for i, line in enumerate(wrap(words, LABEL, wide * POINTS_PER_INCH)):
        canvas.text((x, y + HIGH), line, LABEL, fill=SOFT, shift=(1, 12 + 9.5 * i))


def _pinked(x: float, y: float, wide: float, high: float) -> Polygon:
    """Return a rectangle whose top and bottom edges are cut with pinking shears."""
    teeth = max(round(wide / (2 * TOOTH)), 1)
    step = wide / (2 * teeth)
    top = [(x + i * step, y + (TOOTH if i % 2 == 0 else 0)) for i in range(2 * teeth + 1)]
    bottom = [(px, y + high - (py - y)) for px, py in reversed(top)]
    return Polygon(top + bottom)
