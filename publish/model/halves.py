"""Piece templates that are printed as their half, to be cut from folded paper.

In: a piece template. Out: the line that its paper is folded on, or None.
Invariant: folded on it, outline, seam line and notches fall on themselves; the whole is
larger than a sheet, and the half takes fewer.

Every axis of symmetry goes through the middle of gravity, and through a corner or the
middle of a side where a shape has no more than a few; a curve's points are too many to be
tried, so that a shape with curves is asked along the eight directions of a square.
"""

from __future__ import annotations

import math
from itertools import pairwise

from shapely.affinity import affine_transform, rotate
from shapely.geometry import Point, Polygon
from shapely.geometry.base import BaseGeometry

from publish.model.book import TEMPLATE_SHEET
from publish.model.cutplan import PieceTemplate

XY = tuple[float, float]
TURNS = tuple(range(0, 180, 15))
"""Degrees: how a template is tried on a sheet."""
OVERLAP = 0.5
"""Inches that neighbouring sheets print twice (common practice, no source)."""
FEW = 16
"""Corners above which only the directions of a square are tried."""
_CLOSE = 1e-3
FAR = 200.0


def sheets_for(shape: BaseGeometry) -> int:
    """Return how many sheets a shape takes on any whole paper, turned as may be, if every
    sheet of its grid is needed."""
    return min(_sheets(rotate(shape, turn).bounds) for turn in TURNS)


def fold_of(piece: PieceTemplate) -> tuple[XY, XY] | None:
    """Return the fold of a template that is printed as its half: two points, the printed half
    to the left of the way from one to the other as the page shows it, whose y points down."""
    whole = sheets_for(piece.cut)
    if whole == 1:
        return None
    for angle in _angles(piece.cut):
        fold = _axis(piece.cut, angle)
        if _folds(piece, fold) and sheets_for(piece.cut.intersection(beside(fold))) < whole:
            return fold
    return None


def beside(fold: tuple[XY, XY]) -> Polygon:
    """Return what lies to the left of a fold, as far as any template reaches."""
    (ax, ay), (bx, by) = fold
    run = math.hypot(bx - ax, by - ay)
    ux, uy = (bx - ax) / run * FAR, (by - ay) / run * FAR
    back, on = (ax - ux, ay - uy), (bx + ux, by + uy)
    return Polygon([back, on, (on[0] + uy, on[1] - ux), (back[0] + uy, back[1] - ux)])


def _sheets(bounds: tuple[float, float, float, float]) -> int:
    left, top, right, bottom = bounds
    wide, high = (float(side) for side in TEMPLATE_SHEET)
    return min(
        math.ceil((a - OVERLAP) / (wide - OVERLAP)) * math.ceil((b - OVERLAP) / (high - OVERLAP))
        for a, b in ((right - left, bottom - top), (bottom - top, right - left))
    )


def _angles(shape: Polygon) -> list[float]:
    """Return the directions in which an axis is looked for, in degrees below 180."""
    middle, corners = shape.centroid, list(shape.exterior.coords)
    found = [0.0, 90.0, 45.0, 135.0]
    if len(corners) <= FEW:
        halfway = [((a + c) / 2, (b + d) / 2) for (a, b), (c, d) in pairwise(corners)]
        for x, y in [*corners[:-1], *halfway]:
            found.append(math.degrees(math.atan2(y - middle.y, x - middle.x)) % 180)
    return found


def _axis(shape: Polygon, degrees: float) -> tuple[XY, XY]:
    """Return where a line through the middle of gravity enters and leaves a shape's reach."""
    middle, angle = shape.centroid, math.radians(degrees)
    reach = max(Point(middle).distance(Point(c)) for c in shape.exterior.coords)
    dx, dy = reach * math.cos(angle), reach * math.sin(angle)
    return (middle.x - dx, middle.y - dy), (middle.x + dx, middle.y + dy)


def _folds(piece: PieceTemplate, fold: tuple[XY, XY]) -> bool:
    """Return whether everything on a template falls on itself when it is folded."""
    (ax, ay), (bx, by) = fold
    twice = 2 * math.atan2(by - ay, bx - ax)
    c, s = math.cos(twice), math.sin(twice)
    matrix = [c, s, s, -c, ax - c * ax - s * ay, ay - s * ax + c * ay]
    for shape in (piece.cut, piece.finished):
        over = affine_transform(shape, matrix)
        if over.exterior.hausdorff_distance(shape.exterior) > _CLOSE:
            return False
    notches = [Point(at) for at in piece.notches]
    return all(
        any(affine_transform(notch, matrix).distance(other) < _CLOSE for other in notches)
        for notch in notches
    )
