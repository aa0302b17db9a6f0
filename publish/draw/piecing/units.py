"""A unit: its parts laid apart, then joined and pressed.

In: a size and `unit`, the kind or name of a unit of its seam tree. Out: the figure.
Invariant: the parts are the unit's own, in sewing order, in the direction they are sewn.
"""

from __future__ import annotations

from dataclasses import dataclass

from shapely.geometry import Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import block_arrow, dimension, plus
from publish.draw.canvas.shapes import bounds_of
from publish.draw.canvas.style import SOFT, STEP_WIDTH
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing import exploded, units_apart
from publish.draw.piecing.called import called
from publish.draw.piecing.pressing import press_arrows, press_words, seam_arrows, seam_middles
from publish.draw.piecing.table import (
    Margins,
    holds,
    laid_size,
    letter_part,
    margins,
    paint_raw,
    piece_for,
    raw_patches,
    told_size,
)
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Patch, Placement, Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.surd import Length

Bounds = tuple[float, float, float, float]

FEW = 4
"""Letters that alternative text repeats."""
LETTERED = 12
"""Patches of a part that are lettered: the patches of more are known by then."""
LARGEST = units_apart.LARGEST
APART = 0.26
"""Inches between parts, for a plus sign."""
MOST_APART = 1.04
"""Inches for all the gaps of a row together."""
RIGHT = 0.26
"""Inches kept for a dimension at the right."""


@dataclass(frozen=True)
class Lay:
    """A unit or a part of it as it lies on the table."""

    unit: Unit
    margin: Margins
    motifs: tuple[Placement, ...]
    shapes: tuple[tuple[Patch, Polygon], ...]
    """Its patches with their raw edges, in its own frame."""

    @property
    def size(self) -> tuple[Length, Length]:
        """Return its width and height with its allowances."""
        return laid_size(self.unit, self.margin)

    @property
    def told(self) -> tuple[Length, Length]:
        """Return the same as a ruler shows it."""
        return told_size(self.unit, self.margin, bool(self.motifs))

    @property
    def outer(self) -> Bounds:
        """Return left, top, right, bottom of its size with allowances."""
        left, top, right, bottom = (float(v) for v in self.unit.box)
        west, north, east, south = (float(v) for v in self.margin)
        return left - west, top - north, right + east, bottom + south

    @property
    def extent(self) -> Bounds:
        """Return the same of its raw edges: sharp points reach further than its size."""
        found = bounds_of(shape for _, shape in self.shapes)
        close = all(abs(a - b) < 1e-6 for a, b in zip(self.outer, found, strict=True))
        return self.outer if close else found

    def frame(self, canvas: Canvas, scale: float, at: tuple[float, float]) -> Canvas:
        """Return a frame in inches of the unit with its raw corner at a point."""
        left, top = self.extent[:2]
        return canvas.frame(at[0] - left * scale, at[1] - top * scale, scale)


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the first unit of the kind that is joined from parts."""
    unit, draft = find_unit(context, spec), context.draft(spec)
    if unit.name == "centre" and not in_line(unit):
        return exploded.setting(context, spec)
    if not in_line(unit):
        return units_apart.draw(context, spec, unit)
    parts = [lay(context, draft, part, holds(draft, (part,))) for part in unit.parts]
    whole = lay(context, draft, unit, holds(draft, unit.parts))
    canvas = context.canvas(STEP_WIDTH, 8.0)
    bench = _Bench(canvas, context, draft, context.plan(spec), unit.join == "across")
    scale = bench.scale(parts, whole)
    wide, high = (v * scale for v in _spans(whole))
    low = bench.parts(parts, scale)
    if bench.across:
        block_arrow(canvas, (STEP_WIDTH / 2, low + 0.08), (STEP_WIDTH / 2, low + 0.34), SOFT, 8.0)
        bench.whole(whole, scale, ((STEP_WIDTH - wide) / 2, low + 0.42))
    else:
        middle, right = (0.02 + low) / 2, STEP_WIDTH - wide - RIGHT
        gap = (0.02 + wide + right) / 2
        block_arrow(canvas, (gap - 0.13, middle), (gap + 0.13, middle), SOFT, 8.0)
        bench.whole(whole, scale, (right, middle - high / 2))
    return canvas.figure(spec, _alt(context.labels, context.plan(spec), parts, whole))


def in_line(unit: Unit) -> bool:
    """Return whether a unit's parts lie side by side, or one above the other, as it lies."""
    return unit.join in ("across", "down") and all(p.turn == unit.turn for p in unit.parts)


def _spans(lay: Lay) -> tuple[float, float]:
    left, top, right, bottom = lay.extent
    return right - left, bottom - top


def lay(context: Context, draft: Draft, unit: Unit, motifs: tuple[Placement, ...]) -> Lay:
    """Return a unit as it lies: a ground that carries its motif has been trimmed."""
    margin = margins(context, draft, unit, bool(motifs))
    return Lay(unit, margin, motifs, tuple(raw_patches(unit, margin)))


def find_unit(context: Context, spec: FigureSpec) -> Unit:
    """Return the first joined unit whose kind or name is the figure's `unit`."""
    wanted = spec.get("unit")
    for unit in context.draft(spec).assembly.outermost_first():
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

    def gap(self, parts: list[Lay]) -> float:
        """Return the inches between parts: less where there are many."""
        return min(APART, MOST_APART / max(len(parts) - 1, 1))

    def scale(self, parts: list[Lay], whole: Lay) -> float:
        """Return the scale at which parts, arrow, whole and dimensions fit the figure."""
        gaps = self.gap(parts) * (len(parts) - 1)
        total = sum(_spans(p)[0 if self.across else 1] for p in parts)
        wide, high = _spans(whole)
        if self.across:
            return min(
                (STEP_WIDTH - gaps - 0.04) / total,
                1.5 / high,
                (STEP_WIDTH - 2 * RIGHT) / wide,
                LARGEST,
            )
        return min((2.7 - gaps) / total, (STEP_WIDTH - RIGHT - 0.44) / 2 / wide, LARGEST)

    def parts(self, parts: list[Lay], scale: float) -> float:
        """Lay the parts apart; return the height where they end."""
        gap = self.gap(parts)
        total = sum(_spans(p)[0] for p in parts) * scale + gap * (len(parts) - 1)
        x, y = ((STEP_WIDTH - total) / 2 if self.across else 0.02), 0.02
        low = y
        for number, part in enumerate(parts):
            wide, high = (v * scale for v in _spans(part))
            frame = part.frame(self.canvas, scale, (x, y))
            paint_raw(frame, self.context, self.draft, part.unit, part.margin, part.motifs)
            if not part.motifs and len(part.unit.patches) <= LETTERED:
                letter_part(frame, self.context, self.plan, part.unit, part.margin)
            low = max(low, y + high)
            x, y = (x + wide + gap, y) if self.across else (x, y + high + gap)
            if number + 1 < len(parts):
                at = (x - gap / 2, 0.02 + high / 2)
                plus(
                    self.canvas,
                    at if self.across else (0.02 + wide / 2, y - gap / 2),
                    min(7.0, gap * 50),
                )
        return low

    def whole(self, whole: Lay, scale: float, at: tuple[float, float]) -> None:
        """Draw the joined unit with its pressing arrows and its size."""
        frame = whole.frame(self.canvas, scale, at)
        paint_raw(frame, self.context, self.draft, whole.unit, whole.margin, whole.motifs)
        unit = whole.unit
        colour = self.context.palette.accent
        if unit.press in ("first", "last", "sashing"):
            seam_arrows(frame, unit, colour, min(15.0, 0.42 * 72 * scale * min(_spans(whole))))
        else:
            press_arrows(frame, unit, colour, seam_middles(unit))
        if whole.extent != whole.outer:  # a triangle's points: its size is not to be seen
            return
        wide, high = whole.size
        x, y = at[0] + float(wide) * scale, at[1] + float(high) * scale
        dimension(self.canvas, (x, y), (at[0], y), self.context.labels.length(whole.told[0]), 9)
        dimension(self.canvas, (x, at[1]), (x, y), self.context.labels.length(whole.told[1]), 9)


def _alt(say: Labels, plan: CutPlan, parts: list[Lay], whole: Lay) -> str:
    unit = whole.unit
    named = []
    for part in parts:
        letters = say.listed(_letters(plan, part.unit))
        size = say.spoken(*part.told) if part.extent == part.outer else ""
        named.append(" ".join(w for w in (called(say, part.unit), letters, size) if w))
    side = (
        say.text("figure-side-by-side")
        if unit.join == "across"
        else say.text("figure-one-above-the-other")
    )
    done = (
        say.text("figure-measures", told=say.spoken(*whole.told))
        if whole.extent == whole.outer
        else say.text("figure-is-ready")
    )
    return say.text(
        "figure-laid-joined-and-the",
        parts=say.counted(len(parts), "part"),
        side=side,
        named="; ".join(named),
        value=press_words(say, unit),
        name=called(say, unit),
        done=done,
    )


def _letters(plan: CutPlan, unit: Unit) -> list[str]:
    """Return the letters of a unit's pieces, each once where there are many."""
    found = [piece.letter for p in unit.patches if (piece := piece_for(plan, p)) is not None]
    return found if len(found) <= FEW else list(dict.fromkeys(found))
