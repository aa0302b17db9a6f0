"""How fabric and batting look.

In: a canvas, a polygon in its units, a fabric colour. Out: the filled, textured shape.
Invariant: a wrong side is always lighter than its right side and hatched; textures are
drawn as plain lines cut to the shape, since renderers treat SVG patterns differently.
"""

from __future__ import annotations

from math import cos, radians, sin
from typing import Any

from shapely.affinity import rotate
from shapely.geometry import LineString, MultiLineString, Polygon, box
from shapely.geometry.base import BaseGeometry
from shapely.prepared import prep

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import (
    BATTING,
    HAIR,
    Stroke,
    edge_of,
    wrong_hatch,
    wrong_side,
)


def fabric(
    canvas: Canvas,
    geometry: BaseGeometry,
    colour: str,
    side: str = "right",
    outline: Stroke | None = None,
    spacing: float = 3.4,
) -> None:
    """Draw a piece of fabric, `right` or `wrong` side up.

    `outline` defaults to a thin edge that shows on the fabric and on the page.
    """
    edge = outline or Stroke(edge_of(colour), 0.6)
    if side == "right":
        canvas.shape(geometry, colour, edge)
        return
    canvas.shape(geometry, wrong_side(colour))
    hatch(canvas, geometry, Stroke(wrong_hatch(colour), 0.3), spacing, 45.0)
    canvas.shape(geometry, None, edge)


def sheet(x: Any, y: Any, width: Any, height: Any) -> Polygon:
    """Return a rectangle by its top left corner and size, for the functions here."""
    x, y = float(x), float(y)
    return box(x, y, x + float(width), y + float(height))


def hatch(
    canvas: Canvas,
    geometry: BaseGeometry,
    stroke: Stroke,
    spacing: float = 3.4,
    angle: float = 45.0,
) -> None:
    """Hatch a shape: lines `spacing` points apart at `angle` degrees, cut to the shape.

    The lines of one angle lie on one grid over the whole page, so that neighbouring
    shapes of one kind read as one cloth.
    """
    shape = canvas.to_page(geometry)
    if shape.is_empty:
        return
    level = rotate(shape, -angle, origin=(0, 0))
    left, top, right, bottom = level.bounds
    first = int(top // spacing)
    rows = [
        LineString([(left - 1, i * spacing), (right + 1, i * spacing)])
        for i in range(first, int(bottom // spacing) + 2)
    ]
    lines = rotate(MultiLineString(rows), angle, origin=(0, 0)).intersection(shape)
    if not lines.is_empty:
        canvas.page.lines(lines, stroke, smooth=0)


def batting(canvas: Canvas, geometry: BaseGeometry, spacing: float = 9.0) -> None:
    """Draw batting: off-white with small loose curls."""
    canvas.shape(geometry, BATTING, Stroke(HAIR, 0.6))
    shape = canvas.to_page(geometry)
    if shape.is_empty:
        return
    inside = prep(shape.buffer(-2.6))
    left, top, right, bottom = shape.bounds
    curls = []
    for row in range(int((bottom - top) // spacing) + 2):
        for column in range(int((right - left) // spacing) + 2):
            x = left + (column + 0.5 * (row % 2)) * spacing + 2 * sin(row * 2.3 + column)
            y = top + row * spacing + 2 * cos(column * 1.7 + row)
            curl = _curl(x, y, (row * 73 + column * 131) % 360)
            if inside.contains(curl):
                curls.append(curl)
    if curls:
        canvas.page.lines(MultiLineString(curls), Stroke(HAIR, 0.4, (), "round"), smooth=0)


def _curl(x: float, y: float, turn: float) -> LineString:
    """Return a loose curl about a point; its turn follows its place, so none line up."""
    angles = [radians(turn + 200 * i / 6) for i in range(7)]
    return LineString([(x + 1.7 * cos(a), y + 1.3 * sin(a)) for a in angles])
