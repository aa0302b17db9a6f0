"""What becomes of a rectangle on the cloth: triangles, slanting pieces, template shapes.

In: a bench, a piece where it lies. Out: its cuts drawn within the rectangle.
Invariant: the cuts are drawn where they are made: a square cut once has one diagonal, cut
twice both, and a template's own outline lies in its box, turned but never mirrored.
"""

from __future__ import annotations

import math

from shapely.affinity import affine_transform, rotate, translate
from shapely.geometry import Polygon

from publish.draw.canvas.style import CUT, Stroke, mix, readable_on
from publish.draw.cutting.bench_table import Bench
from publish.draw.cutting.layout import Laid
from publish.model.cutplan import Piece, PieceTemplate

TRIANGLES = {"once-cut triangle": 1, "twice-cut triangle": 2}
SLANTED = ("parallelogram", "diamond", "equilateral triangle")
XY = tuple[float, float]


def whole(piece: Piece, laid: Laid) -> bool:
    """Return whether what lies here is the piece, and not a length to be joined."""
    return sorted((piece.width, piece.length)) == sorted((laid.width, laid.length))


def draw_cuts(bench: Bench, laid: Laid, piece: Piece) -> None:
    """Draw the cuts that make patches of a rectangle."""
    if not whole(piece, laid):
        return
    stroke = Stroke(mix(bench.colour, readable_on(bench.colour), 0.6), 0.6, CUT.dash)
    x, y = float(laid.across), float(laid.along)
    w, h = float(laid.width), float(laid.length)
    for a, b in _lines(piece, w, h):
        start, end = (bench.at(y + p[1], x + p[0]) for p in (a, b))
        bench.frame.line(start, end, stroke)


def _lines(piece: Piece, w: float, h: float) -> list[tuple[XY, XY]]:
    """Return the cuts within a rectangle `w` across and `h` along."""
    if piece.shape in TRIANGLES:
        both: list[tuple[XY, XY]] = [((0.0, 0.0), (w, h)), ((w, 0.0), (0.0, h))]
        return both[: TRIANGLES[piece.shape]]
    if piece.shape in SLANTED:
        return [
            ((b, a), (d, c)) if h > w else ((a, b), (c, d))
            for (a, b), (c, d) in _slanted(piece, max(w, h), min(w, h))
        ]
    return []


def _slanted(piece: Piece, long: float, deep: float) -> list[tuple[XY, XY]]:
    """Return the slanting cuts of a strip: one before, between and after its patches."""
    angle = math.radians(piece.angle or 45)
    lean = deep / math.tan(angle)
    step = (long - lean) / piece.yields
    if piece.apart is not None:
        step = float(piece.apart) / math.sin(angle)
    if piece.shape == "equilateral triangle":
        ends = [(lean * i, lean * (i + 1)) for i in range(piece.yields + 1)]
        return [
            ((a, deep), (b, 0.0)) if i % 2 == 0 else ((a, 0.0), (b, deep))
            for i, (a, b) in enumerate(ends)
            if b <= long + 1e-6
        ]
    return [((step * i, deep), (step * i + lean, 0.0)) for i in range(piece.yields + 1)]


def shape_of(bench: Bench, laid: Laid, template: PieceTemplate) -> Polygon:
    """Return a template's cut line where it lies, in the frame of the bench."""
    left, top, right, bottom = template.cut.bounds
    outline = translate(template.cut, -left, -top)
    wide, high = right - left, bottom - top
    turned = abs(float(laid.width) - wide) > abs(float(laid.length) - wide)
    if turned:
        outline = translate(rotate(outline, 90, origin=(0, 0)), high, 0)
        wide, high = high, wide
    x, y = float(laid.across), float(laid.along)
    if bench.down:
        placed: Polygon = translate(outline, x, y)
        return placed
    level: Polygon = affine_transform(outline, [0, 1, -1, 0, y, x + wide])
    return level
