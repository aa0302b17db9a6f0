"""Curved and set-in seams: where to pin, where to stop and turn.

In: a size and `unit`, the kind of a unit; for a curve, `stage` pin or press. Out: the
figures `curve` and `set-in`.
Invariant: marks stand on the finished seam line of both parts: the middle, the ends and
the quarters of a curve, and the inside corner at which a set-in seam pivots.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from shapely.geometry import LineString

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, bend, disc
from publish.draw.canvas.shapes import XY, bounds_of
from publish.draw.canvas.style import INK, LABEL, PAPER, SOFT, STEP_WIDTH, STITCH, Stroke
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.apart import Spread, of_unit, paint_spread
from publish.draw.piecing.called import called
from publish.draw.piecing.pressing import Seam, main_seams, press_words, seam_arrows, seams_of
from publish.draw.piecing.table import holds, margins, paint_raw, raw_patches
from publish.draw.piecing.units_apart import LARGEST, letters_of, measured
from publish.model.draft import Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec

ROOM = (2.1, 2.1)
GAP = 0.3
PINS = ((0.5, "1"), (0.0, "2"), (1.0, "2"), (0.25, "3"), (0.75, "3"))
"""Where a curve is pinned, as shares of its length, and in which order."""
MATCH = Stroke(SOFT, 0.6, (1.5, 1.5))


@dataclass(frozen=True)
class _Parts:
    """A unit's parts laid apart on a canvas."""

    canvas: Canvas
    frame: Canvas
    apart: Spread

    @classmethod
    def of(cls, context: Context, spec: FigureSpec, unit: Unit) -> _Parts:
        taken = of_unit(context, context.draft(spec), unit)
        scale, apart = taken.fitted(GAP, ROOM, LARGEST)
        a, b, c, _ = bounds_of(apart.shapes())
        canvas = context.canvas(STEP_WIDTH, 4.0)
        left = (STEP_WIDTH - (c - a) * scale) / 2
        frame = canvas.frame(left - a * scale, 0.1 - b * scale, scale)
        paint_spread(frame, context, context.plan(spec), apart)
        return cls(canvas, frame, apart)

    def on(self, part: int, point: XY) -> XY:
        """Return a point of the unit where a part has been moved to."""
        dx, dy = self.apart.moves[part]
        return point[0] + dx, point[1] + dy

    def seam_line(self, seam: Seam, part: int, stroke: Stroke) -> None:
        points = [self.on(part, (x, y)) for x, y in seam.line.coords]
        self.frame.polyline(points, stroke)


def unit_of(context: Context, spec: FigureSpec, join: str) -> Unit:
    """Return the first unit of a kind or name, joined as asked."""
    wanted = spec.get("unit")
    stack = [context.draft(spec).assembly]
    while stack:
        unit = stack.pop(0)
        if unit.join == join and wanted in (unit.kind, unit.name, ""):
            return unit
        stack += unit.parts
    raise CannotDrawError(f"there is no unit {wanted!r} joined by a {join} seam at this size")


def curve(context: Context, spec: FigureSpec) -> Figure:
    """Draw a curved seam pinned, or sewn and pressed."""
    unit = unit_of(context, spec, "curve")
    stage = spec.get("stage", "pin")
    if stage == "pin":
        return _pin(context, spec, unit)
    if stage == "press":
        return _press(context, spec, unit)
    raise CannotDrawError(f"there is no stage {stage!r}")


def _pin(context: Context, spec: FigureSpec, unit: Unit) -> Figure:
    """Draw the parts apart, the places that are pinned joined by dotted lines."""
    say = context.labels
    parts = _Parts.of(context, spec, unit)
    for seam in main_seams(unit):
        for part in (seam.first, seam.last):
            parts.seam_line(seam, part, STITCH)
        for share, number in PINS:
            at = seam.line.interpolate(share, normalized=True)
            ends = [parts.on(part, (at.x, at.y)) for part in (seam.first, seam.last)]
            parts.frame.line(ends[0], ends[1], MATCH)
            for end in ends:
                parts.frame.circle(end, 1.6, INK, Stroke(PAPER, 0.5))
            middle = ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2)
            disc(parts.frame, middle, number)
    names = say.listed(
        [f"{called(say, p)} {letters_of(say, context.plan(spec), p)}".strip() for p in unit.parts]
    )
    alt = say.text("figure-curves-pin", names=names, seam=say.plain(context.pattern.sewing.seam))
    return parts.canvas.figure(spec, alt)


def _press(context: Context, spec: FigureSpec, unit: Unit) -> Figure:
    """Draw the unit joined, with its arrow and its size."""
    draft = context.draft(spec)
    held = holds(draft, unit.parts)
    around = margins(context, draft, unit, bool(held))
    left, top, right, bottom = bounds_of(s for _, s in raw_patches(unit, around))
    scale = min(1.6 / (right - left), 1.6 / (bottom - top), LARGEST)
    canvas = context.canvas(STEP_WIDTH, 3.0)
    x = (STEP_WIDTH - (right - left) * scale) / 2
    frame = canvas.frame(x - left * scale, 0.05 - top * scale, scale)
    paint_raw(frame, context, draft, unit, around, held)
    seam_arrows(frame, unit, context.palette.accent, 18.0)
    measured(context.labels, frame, unit, around)
    return canvas.figure(
        spec,
        context.labels.text(
            "figure-curves-press",
            name=called(context.labels, unit),
            labels=press_words(context.labels, unit),
        ),
    )


def set_in(context: Context, spec: FigureSpec) -> Figure:
    """Draw the part that is set in, its sides numbered as they are sewn."""
    say = context.labels
    unit = unit_of(context, spec, "set in")
    parts = _Parts.of(context, spec, unit)
    last = _set_in_part(unit)
    seams = [side for s in seams_of(unit) if s.last == last for side in _sides(s)]
    for number, seam in enumerate(seams, 1):
        parts.seam_line(seam, last, STITCH)
        parts.seam_line(seam, seam.first, STITCH)
        middle = seam.middle
        ends = parts.on(seam.first, middle), parts.on(last, middle)
        disc(
            parts.frame, ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2), str(number)
        )
    pivots = _pivots(seams)
    for point in pivots:
        for part in sorted({last, *(s.first for s in seams)}):
            spot = parts.on(part, point)
            parts.frame.circle(spot, 2.6, PAPER, Stroke(INK, 1.0))
    _pivot_words(context, parts, last, pivots)
    letters = [
        letters_of(context.labels, context.plan(spec), p) or called(say, p) for p in unit.parts
    ]
    alt = say.text(
        "figure-curves-set-in",
        parts=say.counted(len(unit.parts), "part"),
        letters=say.listed(letters),
        letters_2=letters[last],
        seams=say.counted(len(seams), "side"),
        pivots=say.counted(len(pivots), "point"),
        seam=say.plain(context.pattern.sewing.seam),
    )
    return parts.canvas.figure(spec, alt)


def _set_in_part(unit: Unit) -> int:
    """Return the last part that has seams with two others, or the last of all."""
    seams = seams_of(unit)
    several = [i for i in range(1, len(unit.parts)) if sum(s.last == i for s in seams) > 1]
    return several[-1] if several else len(unit.parts) - 1


def _sides(seam: Seam) -> list[Seam]:
    """Return the straight sides of a seam that turns corners, with normals of their own."""
    found = []
    for (ax, ay), (bx, by) in pairwise(seam.line.simplify(0.01).coords):
        run = math.hypot(bx - ax, by - ay) or 1.0
        nx, ny = (by - ay) / run, (ax - bx) / run
        sign = 1.0 if nx * seam.normal[0] + ny * seam.normal[1] >= 0 else -1.0
        line = LineString([(ax, ay), (bx, by)])
        found.append(Seam(seam.first, seam.last, line, (nx * sign, ny * sign)))
    return found


def _pivots(seams: list[Seam]) -> list[XY]:
    """Return where two sides that a part is set in along meet."""
    return [
        point
        for i, one in enumerate(seams)
        for other in seams[i + 1 :]
        for point in _touching(one.line, other.line)
    ]


def _touching(one: LineString, other: LineString) -> list[XY]:
    ends = [one.coords[0], one.coords[-1]]
    others = [other.coords[0], other.coords[-1]]
    return [
        (a[0], a[1])
        for a in ends
        if any(abs(a[0] - b[0]) + abs(a[1] - b[1]) < 0.02 for b in others)
    ]


def _pivot_words(context: Context, parts: _Parts, last: int, pivots: list[XY]) -> None:
    """Say what the ring means, and turn an arrow about the first."""
    say = context.labels
    if not pivots:
        return
    frame, page = parts.frame, parts.canvas.page
    spot = parts.on(last, pivots[0])
    x, y = frame.point(spot)
    arrow(page, bend((x - 9, y + 3), (x + 3, y - 9), 0.4), Stroke(INK, 0.9), size=4.0)
    low = parts.canvas.extent[3] + 13
    page.circle((14, low), 2.6, PAPER, Stroke(INK, 1.0))
    words = say.text("figure-curves-pivot-words", seam=say.length(context.pattern.sewing.seam))
    page.text((21, low), words, LABEL, level="middle")
