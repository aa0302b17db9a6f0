"""What every quicker method draws alike: squares laid on squares, drawn lines, stitching.

In: frames in inches of cloth, a making and the unit it makes. Out: marks on the frame.
Invariant: squares have the size that the plan cuts, stitching lies one seam allowance
from the drawn line, and the unit is shown at the size that it is trimmed to.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from shapely.geometry import LineString, Polygon
from shapely.ops import split

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import block_arrow, dimension, leader
from publish.draw.canvas.shapes import XY, bounds_of
from publish.draw.canvas.style import CUT, INK, LABEL, SOFT, STITCH, Stroke
from publish.draw.cloth import fabric
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.pressing import seam_arrows
from publish.draw.piecing.table import paint_raw
from publish.model.cutplan import Making, Piece
from publish.model.draft import Draft, Unit
from publish.model.words import FigureSpec

DRAWN = Stroke(INK, 0.8)
SEWN = STITCH.but(weight=1.1)
PEEK = 2.6
"""Points by which a lower square shows below and beside the one that lies on it."""


@dataclass(frozen=True)
class Job:
    """A making with everything a figure of it reads."""

    context: Context
    draft: Draft
    making: Making
    unit: Unit
    pieces: tuple[Piece, ...]
    """Of the making's letters, in their order."""
    seam: float

    @classmethod
    def of(cls, context: Context, spec: FigureSpec) -> Job:
        """Return the job that a figure names with `method` and `unit`."""
        method, kind, plan = spec.get("method"), spec.get("unit"), context.plan(spec)
        for making in plan.makings:
            if making.method == method and making.kind == kind:
                break
        else:
            raise CannotDrawError(f"no {method or 'units'} of kind {kind!r} are made at this size")
        found = {p.letter: p for p in plan.pieces}
        if any(letter not in found for letter in making.letters):
            raise CannotDrawError(f"the pieces for {kind!r} are not in the plan")
        draft = context.draft(spec)
        unit = next((u for u in draft.assembly.outermost_first() if u.kind == kind), None)
        if unit is None:
            raise CannotDrawError(f"there is no unit {kind!r} at this size")
        pieces = tuple(found[letter] for letter in making.letters)
        return cls(context, draft, making, unit, pieces, float(context.pattern.sewing.seam))

    def colour(self, number: int) -> str:
        return self.context.colour(self.pieces[min(number, len(self.pieces) - 1)].fabric)

    def letter(self, number: int) -> str:
        return self.pieces[min(number, len(self.pieces) - 1)].letter

    def side(self, number: int) -> float:
        return float(self.pieces[min(number, len(self.pieces) - 1)].width)

    def name(self, number: int) -> str:
        """Return `B in Still water`, for alternative text."""
        piece = self.pieces[min(number, len(self.pieces) - 1)]
        return self.context.labels.text(
            "figure-in-2", letter=piece.letter, name=self.context.pattern.fabrics[piece.fabric].name
        )


def square(frame: Canvas, at: XY, side: float, colour: str, face: str = "wrong") -> Polygon:
    """Draw a square of cloth by its top left corner and return it."""
    x, y = at
    shape = Polygon([(x, y), (x + side, y), (x + side, y + side), (x, y + side)])
    fabric(frame, shape, colour, face)
    return shape


def pair(frame: Canvas, side: float, lower: str, upper: str) -> Polygon:
    """Draw two squares right sides together: the upper wrong side up, the lower peeking out."""
    off = frame.inches(PEEK)
    square(frame, (off, off), side, lower, "right")
    return square(frame, (0, 0), side, upper, "wrong")


def beside(start: XY, end: XY, distance: float) -> tuple[XY, XY]:
    """Return a line moved to its right by a distance."""
    run = math.hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    nx, ny = (start[1] - end[1]) / run * distance, (end[0] - start[0]) / run * distance
    return (start[0] + nx, start[1] + ny), (end[0] + nx, end[1] + ny)


def stitched(frame: Canvas, start: XY, end: XY, within: Polygon, *distances: float) -> None:
    """Draw lines of stitching beside a line, at each distance, cut to a shape."""
    for distance in distances:
        line = LineString(beside(start, end, distance)).intersection(within)
        if not line.is_empty:
            frame.lines(line, SEWN, smooth=0)


def halves(shape: Polygon, start: XY, end: XY) -> tuple[Polygon, Polygon]:
    """Return the two parts of a shape that a line cuts; the one at its right first."""
    far = LineString(_longer(start, end))
    parts = [g for g in split(shape, far).geoms if g.geom_type == "Polygon"]
    ux, uy = end[0] - start[0], end[1] - start[1]

    def rightness(part: Polygon) -> float:
        x, y = part.centroid.x - start[0], part.centroid.y - start[1]
        return float(ux * y - uy * x)

    first, *_, last = sorted(parts, key=rightness, reverse=True)
    return first, last


def _longer(start: XY, end: XY) -> list[XY]:
    ux, uy = end[0] - start[0], end[1] - start[1]
    return [(start[0] - ux, start[1] - uy), (end[0] + ux, end[1] + uy)]


def notes(
    canvas: Canvas,
    frame: Canvas,
    rows: Sequence[tuple[XY, str]],
    x: float,
    top: float,
    step: float = 0.2,
) -> None:
    """Name places of a frame in a column of words at `x` inches of the canvas."""
    for number, (target, words) in enumerate(rows):
        at = (x * 72, (top + number * step) * 72)
        leader(canvas.page, frame.point(target), at, words, size=LABEL)


def trimmed(canvas: Canvas, job: Job, at: XY, side: float, halo: bool = True) -> float:
    """Draw the finished unit with its trim line, size and pressing arrows.

    `at` is where the picture begins and `side` the inches it may take; return where it
    ends below.
    """
    say = job.context.labels
    unit, making = job.unit, job.making
    wide, high = making.trim
    margin = (Fraction(wide) - unit.width) / 2, (Fraction(high) - unit.height) / 2
    scale = side / float(max(wide, high))
    left, top = float(unit.box[0] - margin[0]), float(unit.box[1] - margin[1])
    frame = canvas.frame(at[0] - left * scale, at[1] - top * scale, scale)
    seam = job.context.pattern.sewing.seam
    paint_raw(frame, job.context, job.draft, unit, (seam,) * 4)
    right, bottom = left + float(wide), top + float(high)
    over = frame.inches(6)
    for start, end in (
        ((left, top - over), (left, bottom + over)),
        ((right, top - over), (right, bottom + over)),
        ((left - over, top), (right + over, top)),
        ((left - over, bottom), (right + over, bottom)),
    ):
        frame.line(start, end, CUT)
    short = min(15.0, 0.3 * min(float(wide), float(high)) * scale * 72)
    for inner in unit.outermost_first():
        if inner.parts:
            own = frame.frame(0, 0, 1.0, inner.turn - unit.turn)
            seam_arrows(own, inner, job.context.palette.accent, short)
    dimension(frame, (right, bottom), (left, bottom), say.length(wide), 14)
    if wide != high:
        dimension(frame, (right, top), (right, bottom), say.length(high), 14)
    return at[1] + float(high) * scale


def then(canvas: Canvas, start: XY, end: XY) -> None:
    """Draw the arrow to the next state."""
    block_arrow(canvas, start, end, SOFT, 8.0)


def moved(shape: Polygon, by: XY) -> Polygon:
    return Polygon([(x + by[0], y + by[1]) for x, y in shape.exterior.coords])


def span(*shapes: Polygon) -> tuple[float, float]:
    """Return the width and height of shapes together."""
    left, top, right, bottom = bounds_of(shapes)
    return right - left, bottom - top
