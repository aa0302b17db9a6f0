"""Backing, batting and top as layers, seen from the side and apart.

In: a size. Out: the figure.
Invariant: all three are drawn to one scale and slant; each carries its own size, read
from the plan, and the top its raw size.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels, text_width, wrap
from publish.draw.canvas.style import HEAD, LABEL, LEADER, SOFT, STEP_WIDTH, Stroke
from publish.draw.cloth import batting, fabric, sheet
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.table import ground_of, laid_size, margins
from publish.draw.top import paint_motifs, paint_patches
from publish.model.cutplan import BackingPlan, BattingPlan
from publish.model.draft import Draft
from publish.model.figure import Figure
from publish.model.words import FigureSpec

LEAN = 0.42
FLAT = 0.4
"""How far a unit of depth leans to the right, and how much height it keeps."""
RISE = 0.62
"""Inches between layers."""
ROOM = 2.52


def top_size(context: Context, spec: FigureSpec) -> tuple[Fraction, Fraction]:
    """Return the top's width and height before quilting: with the seam beyond its edges, on a
    pillow the one that closes the cover; a ground that is trimmed later still has its spare."""
    size, draft, seam = context.size(spec), context.draft(spec), context.pattern.sewing.seam
    if size.pillow is not None:
        seam = size.pillow.seam
        if size.block_count == 1 and not size.layers and draft.placements:
            ground = ground_of(draft, "")
            return laid_size(ground, margins(context, draft, ground, trimmed=False))
    return size.width + 2 * seam, size.height + 2 * seam


def layers_of(context: Context, spec: FigureSpec) -> tuple[BackingPlan, BattingPlan]:
    """Return the backing and batting of a figure's size."""
    plan = context.plan(spec)
    if plan.backing is None or plan.batting is None:
        raise CannotDrawError("this size has no backing and batting")
    return plan.backing, plan.batting


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the three layers above each other, each named with its size."""
    say = context.labels
    backing, wadding = layers_of(context, spec)
    top = top_size(context, spec)
    wide = float(backing.width) + LEAN * float(backing.height)
    scale = ROOM / wide
    canvas = context.canvas(STEP_WIDTH, 6.0)
    heights = [0.0, RISE, 2 * RISE]
    tall = float(backing.height) * FLAT * scale
    middle = (ROOM / 2 + 0.04, tall / 2 + 0.1)
    frames = [_slanted(canvas, middle, scale, h) for h in heights]
    for x, y in ((-1, -1), (1, -1), (-1, 1), (1, 1)):  # threads that tie the corners
        half = (float(top[0]) / 2 * x, float(top[1]) / 2 * y)
        canvas.page.line(frames[0].point(half), frames[2].point(half), LEADER)
    low = frames[2]
    fabric(low, _centred(backing.width, backing.height), context.colour(backing.fabric), "wrong")
    _panels(low, backing)
    batting(frames[1], _centred(wadding.width, wadding.height), 8.0)
    _top(frames[0], context, context.draft(spec), top)
    name = context.pattern.fabrics[backing.fabric].name
    rows = [
        (say.text("figure-top"), say.text("figure-right-side-up"), top),
        (say.text("figure-batting"), wadding.name, (wadding.width, wadding.height)),
        (
            say.text("figure-backing-2"),
            say.text("figure-layer-wrong-side-up", name=name),
            (backing.width, backing.height),
        ),
    ]
    base = tall + 2 * RISE + 0.34
    for word, note, size in rows:
        base += _row(context.labels, canvas, base, word, note, size)
    sizes = "; ".join(f"{w.lower()} {say.spoken(*s)}, {n}" for w, n, s in rows)
    return canvas.figure(spec, say.text("figure-layers", sizes=sizes))


def _slanted(canvas: Canvas, middle: tuple[float, float], scale: float, down: float) -> Canvas:
    """Return a frame in inches of cloth about its centre, lying flat seen from the side."""
    return canvas.leaning(middle[0], middle[1] + down, (scale, 0.0), (-LEAN * scale, FLAT * scale))


def _centred(width: Fraction, height: Fraction) -> object:
    return sheet(-width / 2, -height / 2, width, height)


def _panels(frame: Canvas, backing: BackingPlan) -> None:
    """Draw the seams that join the backing's panels, evenly about its middle; half a
    panel lies at either edge where the last one is split."""
    wide, high = float(backing.width), float(backing.height)
    first = 1.0 if backing.half is None else 0.5
    for i in range(backing.panels - (backing.half is None)):
        share = (i + first) / backing.panels - 0.5
        if backing.seams == "vertical":
            ends = ((share * wide, -high / 2), (share * wide, high / 2))
        else:
            ends = ((-wide / 2, share * high), (wide / 2, share * high))
        frame.line(*ends, Stroke(SOFT, 0.6))


def _top(frame: Canvas, context: Context, draft: Draft, top: tuple[Fraction, Fraction]) -> None:
    fabric(frame, _centred(*top), context.colour(draft.patches[-1].fabric))
    inner = frame.leaning(-float(draft.width) / 2, -float(draft.height) / 2, (1, 0), (0, 1))
    paint_patches(inner, context, draft.patches)
    paint_motifs(inner, context, draft, draft.placements)


LINE = 0.17
"""Inches from line to line of the list of layers."""


def _row(
    say: Labels, canvas: Canvas, y: float, word: str, note: str, size: tuple[Fraction, Fraction]
) -> float:
    """Set a layer's name, what it is and its size, and return the height that they take.

    What does not fit between name and size goes below them.
    """
    words = f"{say.sides(size[0], size[1])}"
    taken = 0.12 + text_width(words, LABEL, "semibold") / 72
    canvas.text((0.06, y), word, HEAD - 1, "semibold")
    canvas.text((STEP_WIDTH - 0.06, y), words, LABEL, "semibold", "end")
    room = STEP_WIDTH - 0.62 - 0.06
    beside = text_width(note, LABEL) / 72 <= room - taken
    lines = [note] if beside else wrap(note, LABEL, room * 72)
    for number, line in enumerate(lines, 0 if beside else 1):
        canvas.text((0.62, y + number * LINE), line, LABEL, fill=SOFT)
    return LINE * (len(lines) + (0 if beside else 1))
