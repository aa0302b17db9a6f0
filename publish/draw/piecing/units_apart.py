"""A unit whose seams run at any angle, along curves, or are set in: its parts laid apart.

In: a unit of the seam tree. Out: the figure: parts drawn away from each other square to
their seams, then joined and pressed.
Invariant: a part keeps the way it lies in the unit; it is moved only along the normals of
the seams that join it.
"""

from __future__ import annotations

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import block_arrow, dimension
from publish.draw.canvas.shapes import bounds_of, laid, outline_of
from publish.draw.canvas.style import SOFT, STEP_WIDTH
from publish.draw.context import Context
from publish.draw.piecing.apart import Spread, of_unit, paint_signs, paint_spread
from publish.draw.piecing.called import called
from publish.draw.piecing.pressing import main_seams, press_words, seam_arrows
from publish.draw.piecing.table import (
    Margins,
    holds,
    margins,
    paint_raw,
    piece_for,
    raw_patches,
    told_size,
)
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec

LARGEST = 0.42
"""Printed inches to an inch of cloth, at the most: small units are not blown up."""
GAP = 0.24
"""Inches between the raw edges of parts laid apart, for a plus sign."""
ROOM = (1.35, 1.5)
"""Inches for the parts, and what is left beside them for the joined unit."""
BESIDE = 0.34
"""Inches kept for the arrow between."""


def draw(context: Context, spec: FigureSpec, unit: Unit) -> Figure:
    """Draw the parts apart, an arrow, and the unit joined and pressed."""
    draft, plan = context.draft(spec), context.plan(spec)
    canvas = context.canvas(STEP_WIDTH, 8.0)
    around = margins(context, draft, unit, bool(holds(draft, unit.parts)))
    scale, apart = _fit(context, draft, unit)
    left, top, right, bottom = bounds_of(apart.shapes())
    tall = (bottom - top) * scale
    joined = bounds_of(shape for _, shape in raw_patches(unit, around))
    wide, high = ((joined[2] - joined[0]) * scale, (joined[3] - joined[1]) * scale)
    beside = wide + (right - left) * scale + BESIDE + 0.3 <= STEP_WIDTH
    start = 0.02 if beside else (STEP_WIDTH - (right - left) * scale) / 2
    frame = canvas.frame(start - left * scale, 0.02 - top * scale, scale)
    paint_spread(frame, context, plan, apart)
    paint_signs(frame, apart)
    if beside:
        x, y = STEP_WIDTH - 0.28 - wide, 0.02 + max((tall - high) / 2, 0.0)
        middle = (start + (right - left) * scale + x) / 2
        ends = ((middle - 0.13, y + high / 2), (middle + 0.13, y + high / 2))
    else:
        x, y = (STEP_WIDTH - wide) / 2, tall + 0.46
        ends = ((STEP_WIDTH / 2, tall + 0.1), (STEP_WIDTH / 2, tall + 0.36))
    block_arrow(canvas, *ends, SOFT, 8.0)
    own = canvas.frame(x - joined[0] * scale, y - joined[1] * scale, scale)
    paint_raw(own, context, draft, unit, around, holds(draft, unit.parts))
    seam_arrows(own, unit, context.palette.accent, min(15.0, 0.42 * min(wide, high) * 72))
    measured(context.labels, own, unit, around)
    return canvas.figure(spec, _alt(context, plan, unit, around))


def _fit(context: Context, draft: Draft, unit: Unit) -> tuple[float, Spread]:
    """Return the scale at which the parts fit their room with the same printed gap."""
    return of_unit(context, draft, unit).fitted(GAP, ROOM, LARGEST)


def measured(say: Labels, frame: Canvas, unit: Unit, around: Margins) -> None:
    """Dimension a joined unit that is a rectangle as it lies, what is round it included."""
    if unit.arcs or not _rectangle(unit):
        return
    west, north, east, south = (float(v) for v in around)
    left, top, right, bottom = (float(v) for v in unit.box)
    left, top, right, bottom = left - west, top - north, right + east, bottom + south
    width, height = told_size(unit, around, False)
    dimension(frame, (right, bottom), (left, bottom), say.length(width), 9)
    dimension(frame, (right, top), (right, bottom), say.length(height), 9)


def _rectangle(unit: Unit) -> bool:
    shape = laid(outline_of(unit), unit.turn)
    return bool(shape.area > 0.9999 * float(unit.width) * float(unit.height))


KINDS = {
    "curve": "curved-seam",
    "set in": "set-in-seam",
    "mitred": "mitred-seam",
    "slant": "slanting-seam",
    "across": "upright-seam",
    "down": "level-seam",
}
"""How parts are joined, and the noun of such a seam."""


def _alt(context: Context, plan: CutPlan, unit: Unit, around: Margins) -> str:
    say = context.labels
    named = []
    for part in unit.parts:
        letters = letters_of(say, plan, part)
        fabrics = dict.fromkeys(context.pattern.fabrics[p.fabric].name for p in part.patches)
        named.append(
            " ".join(w for w in (part.name, letters, "in", say.listed(list(fabrics))) if w)
        )
    seams = say.counted(len(main_seams(unit)), KINDS.get(unit.join or "", "seam"))
    size = say.text("figure-is-ready-2")
    if _rectangle(unit):
        size = say.text("figure-measures-2", unit=say.spoken(*told_size(unit, around, False)))
    press = press_words(say, unit)
    return say.text(
        "figure-units-apart-alt",
        parts=say.counted(len(unit.parts), "part"),
        named="; ".join(named),
        seams=seams,
        press=press,
        name=called(say, unit),
        size=size,
    )


def letters_of(say: Labels, plan: CutPlan, unit: Unit) -> str:
    """Return the letters of the pieces in a unit: `A, B and C`."""
    pieces = (piece_for(plan, patch) for patch in unit.patches)
    return say.listed(list(dict.fromkeys(p.letter for p in pieces if p is not None)))
