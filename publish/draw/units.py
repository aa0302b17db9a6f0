"""A unit: its parts laid apart, then joined and pressed.

In: a size and `unit`, the kind or name of a unit of its seam tree. Out: the figure.
Invariant: the parts are the unit's own, in sewing order, in the direction they are sewn.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.draw.canvas import Canvas
from publish.draw.context import CannotDrawError, Context
from publish.draw.letters import set_inches
from publish.draw.marks import block_arrow, dimension, plus
from publish.draw.piecing import (
    Margins,
    holds,
    laid_size,
    letter_part,
    margins,
    paint_raw,
    piece_for,
    press_arrows,
    seam_middles,
)
from publish.draw.style import SOFT, STEP_WIDTH
from publish.draw.top import patches_of, units_of
from publish.draw.words import counted, listed, plain_size
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Placement, Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec

APART = 0.26
"""Inches between parts, for a plus sign."""
RIGHT = 0.26
"""Inches kept for a dimension at the right."""


@dataclass(frozen=True)
class Lay:
    """A unit or a part of it as it lies on the table."""

    unit: Unit
    margin: Margins
    motifs: tuple[Placement, ...]

    @property
    def size(self) -> tuple[Fraction, Fraction]:
        return laid_size(self.unit, self.margin)

    def frame(self, canvas: Canvas, scale: float, at: tuple[float, float]) -> Canvas:
        """Return a frame in inches of the top with this unit's raw corner at a point."""
        left = float(self.unit.box[0] - self.margin[0])
        top = float(self.unit.box[1] - self.margin[1])
        return canvas.frame(at[0] - left * scale, at[1] - top * scale, scale)


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the first unit of the kind that is joined from parts."""
    unit, draft = find_unit(context, spec), context.draft(spec)
    parts = [lay(context, draft, part, holds(draft, (part,))) for part in unit.parts]
    whole = lay(context, draft, unit, holds(draft, unit.parts))
    canvas = Canvas(STEP_WIDTH, 8.0)
    bench = _Bench(canvas, context, draft, context.plan(spec), unit.join == "across")
    scale = bench.scale(parts, whole)
    wide, high = (float(v) * scale for v in whole.size)
    low = bench.parts(parts, scale)
    if bench.across:
        block_arrow(canvas, (STEP_WIDTH / 2, low + 0.08), (STEP_WIDTH / 2, low + 0.34), SOFT, 8.0)
        bench.whole(whole, scale, ((STEP_WIDTH - wide) / 2, low + 0.42))
    else:
        middle, right = (0.02 + low) / 2, STEP_WIDTH - wide - RIGHT
        gap = (0.02 + wide + right) / 2
        block_arrow(canvas, (gap - 0.13, middle), (gap + 0.13, middle), SOFT, 8.0)
        bench.whole(whole, scale, (right, middle - high / 2))
    return canvas.figure(spec, _alt(context.plan(spec), parts, whole))


def lay(context: Context, draft: Draft, unit: Unit, motifs: tuple[Placement, ...]) -> Lay:
    """Return a unit as it lies: a ground that carries its motif has been trimmed."""
    return Lay(unit, margins(context, draft, unit, bool(motifs)), motifs)


def find_unit(context: Context, spec: FigureSpec) -> Unit:
    """Return the first joined unit whose kind or name is the figure's `unit`."""
    wanted = spec.get("unit")
    for unit in units_of(context.draft(spec).assembly):
        if unit.parts and wanted in (unit.kind, unit.name):
            return unit
    raise CannotDrawError(f"there is no unit {wanted!r} with seams at this size")


@dataclass(frozen=True)
class _Bench:
    canvas: Canvas
    context: Context
    draft: Draft
    plan: CutPlan
    across: bool

    def scale(self, parts: list[Lay], whole: Lay) -> float:
        """Return the scale at which parts, arrow, whole and dimensions fit the figure."""
        gaps = APART * (len(parts) - 1)
        total = float(sum(p.size[0 if self.across else 1] for p in parts))
        wide, high = (float(v) for v in whole.size)
        if self.across:
            return min((STEP_WIDTH - gaps - 0.04) / total, 1.5 / high,
                       (STEP_WIDTH - 2 * RIGHT) / wide)  # fmt: skip
        return min((2.7 - gaps) / total, (STEP_WIDTH - RIGHT - 0.44) / 2 / wide)

    def parts(self, parts: list[Lay], scale: float) -> float:
        """Lay the parts apart; return the height where they end."""
        total = float(sum(p.size[0] for p in parts)) * scale + APART * (len(parts) - 1)
        x, y = ((STEP_WIDTH - total) / 2 if self.across else 0.02), 0.02
        low = y
        for number, part in enumerate(parts):
            wide, high = (float(v) * scale for v in part.size)
            frame = part.frame(self.canvas, scale, (x, y))
            paint_raw(frame, self.context, self.draft, part.unit, part.margin, part.motifs)
            if not part.motifs:
                letter_part(frame, self.context, self.plan, part.unit, part.margin)
            low = max(low, y + high)
            x, y = (x + wide + APART, y) if self.across else (x, y + high + APART)
            if number + 1 < len(parts):
                at = (x - APART / 2, 0.02 + high / 2)
                plus(self.canvas, at if self.across else (0.02 + wide / 2, y - APART / 2))
        return low

    def whole(self, whole: Lay, scale: float, at: tuple[float, float]) -> None:
        """Draw the joined unit with its pressing arrows and its size."""
        frame = whole.frame(self.canvas, scale, at)
        paint_raw(frame, self.context, self.draft, whole.unit, whole.margin, whole.motifs)
        unit = whole.unit
        press_arrows(frame, unit, self.context.palette.accent, seam_middles(unit))
        wide, high = whole.size
        x, y = at[0] + float(wide) * scale, at[1] + float(high) * scale
        dimension(self.canvas, (x, y), (at[0], y), set_inches(wide), 9)
        dimension(self.canvas, (x, at[1]), (x, y), set_inches(high), 9)


def _alt(plan: CutPlan, parts: list[Lay], whole: Lay) -> str:
    unit = whole.unit
    named = []
    for part in parts:
        pieces = (piece_for(plan, patch) for patch in patches_of(part.unit))
        letters = listed([piece.letter for piece in pieces if piece])
        named.append(" ".join(w for w in (part.unit.name, letters, plain_size(*part.size)) if w))
    side = "side by side" if unit.join == "across" else "one above the other"
    press = {"open": "pressed open", "out": "pressed outward", "": "sewn"}.get(
        unit.press, f"pressed {unit.press}"
    )
    return (
        f"{counted(len(parts), 'part')} laid {side}: {'; '.join(named)}. Joined and {press}, "
        f"the {unit.name} measures {plain_size(*whole.size)}."
    )
