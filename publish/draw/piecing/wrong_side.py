"""A unit from its wrong side: the seam allowances, and which way they lie.

In: a size and `unit`, the kind or name of a unit with seams. Out: the figure.
Invariant: the unit is turned over left to right; every seam in it, its parts' seams
included, has its allowances where they are pressed.
"""

from __future__ import annotations

import math

from shapely.affinity import scale as scaled
from shapely.geometry import LineString
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import block_arrow
from publish.draw.canvas.shapes import XY, bounds_of, laid
from publish.draw.canvas.style import LABEL, PAPER, STEP_WIDTH, STITCH, Stroke, edge_of, wrong_side
from publish.draw.cloth import fabric
from publish.draw.context import Context
from publish.draw.piecing.called import called
from publish.draw.piecing.pressing import Seam, main_seams, press_words, ways_of
from publish.draw.piecing.table import holds, margins, raw_patches
from publish.draw.piecing.units import find_unit
from publish.model.draft import Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec

ROOM = (2.0, 2.1)


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw a unit's wrong side with its allowances and pressing arrows."""
    say = context.labels
    unit, seam = find_unit(context, spec), context.pattern.sewing.seam
    draft = context.draft(spec)
    around = margins(context, draft, unit, bool(holds(draft, (unit,))))
    shapes = [(p, _over(s)) for p, s in raw_patches(unit, around)]
    left, top, right, bottom = bounds_of(s for _, s in shapes)
    scale = min(ROOM[0] / (right - left), ROOM[1] / (bottom - top))
    canvas = context.canvas(STEP_WIDTH, 4.0)
    x = (STEP_WIDTH - (right - left) * scale) / 2
    frame = canvas.frame(x - left * scale, 0.05 - top * scale, scale)
    for patch, shape in shapes:
        fabric(frame, shape, context.colour(patch.fabric), "wrong")
    whole = unary_union([s.buffer(1e-5) for _, s in shapes])
    inside = [u for u in unit.outermost_first() if u.parts]
    count = 0
    for inner in reversed(inside):
        for each in main_seams(inner):
            _allowances(frame, context, inner, each, (unit.turn, whole))
            count += 1
    for each in main_seams(unit):
        _arrows(frame, context, unit, each)
    low = canvas.extent[3]
    words = say.text("figure-wrong-side-allowances-wide", seam=say.length(seam))
    canvas.page.text((STEP_WIDTH * 36, low + 13), words, LABEL, anchor="middle")
    alt = say.text(
        "figure-wrong-side-2",
        name=called(say, unit),
        count=say.counted(count, "seam"),
        seam=say.plain(seam),
        unit=say.counted(len(main_seams(unit)), "seam"),
        labels=press_words(context.labels, unit),
    )
    return canvas.figure(spec, alt)


def _over(shape: BaseGeometry) -> BaseGeometry:
    """Return a shape turned over left to right."""
    return scaled(shape, -1, 1, origin=(0, 0))


def _allowances(
    frame: Canvas, context: Context, inner: Unit, seam: Seam, within: tuple[int, BaseGeometry]
) -> None:
    """Draw a seam's allowances beside it, on the side that they are pressed to."""
    wide = float(context.pattern.sewing.seam)
    turn, whole = within
    ways = ways_of(inner, seam)
    fabrics = [inner.parts[i].patches[0].fabric for i in (seam.first, seam.last)]
    line = laid(seam.line, turn - inner.turn)
    for number, way in enumerate(ways):
        colour = wrong_side(context.colour(fabrics[min(number, 1)]))
        band = _band(seam, way, wide)
        shown = _over(laid(band, turn - inner.turn)).intersection(whole)
        frame.shape(shown, colour, Stroke(edge_of(colour), 0.45))
    frame.lines(_over(line), STITCH, smooth=0)


def _band(seam: Seam, way: XY, wide: float) -> BaseGeometry:
    """Return the strip beside a seam on the side that a vector points to.

    It reaches past the seam's ends to the raw edges, as allowances do.
    """
    line = _longer(seam.line, wide)
    toward = seam.normal[0] * way[0] + seam.normal[1] * way[1]
    both = (line.buffer(sign * wide, single_sided=True, join_style="mitre") for sign in (1, -1))
    return max(both, key=lambda band: toward * _side(band, seam))


def _longer(line: LineString, by: float) -> LineString:
    """Return a line with both of its ends drawn out straight."""
    points = [(x, y) for x, y in line.simplify(1e-4).coords]
    for here, before in ((0, 1), (-1, -2)):
        (ax, ay), (bx, by_) = points[here], points[before]
        run = math.hypot(ax - bx, ay - by_) or 1.0
        points[here] = (ax + (ax - bx) / run * by, ay + (ay - by_) / run * by)
    return LineString(points)


def _side(band: BaseGeometry, seam: Seam) -> float:
    x, y = band.centroid.x - seam.middle[0], band.centroid.y - seam.middle[1]
    return float(x * seam.normal[0] + y * seam.normal[1])


def _arrows(frame: Canvas, context: Context, unit: Unit, seam: Seam) -> None:
    """Draw the way the allowances go, mirrored as the unit is."""
    half = frame.inches(8.0)
    x, y = -seam.middle[0], seam.middle[1]
    for dx, dy in ways_of(unit, seam):
        start = (x, y) if unit.press == "open" else (x + dx * half, y - dy * half)
        block_arrow(
            frame, start, (x - dx * half, y + dy * half), context.palette.accent, 7.0, rim=PAPER
        )
