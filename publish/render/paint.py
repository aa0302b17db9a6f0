"""Shapes in inches as arrays of pixels.

In: a window on the quilt, shapely geometries. Out: how much of each pixel they cover,
which shape lies at each pixel, what colour.
Invariant: pixels are square; edges are smooth, but for `numbers`, whose pixels each belong
to one shape alone.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field

import cairocffi
import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from publish.render.arrays import Bytes, Grey

Points = npt.NDArray[np.float64]
Bend = Callable[[Points], Points]
"""Where points of the flat quilt (inches) come to lie."""

_FINE = 0.2
"""Pixels that a curve may be simplified by."""
_STRETCH = 0.75
"""Inches between the points that a straight line gets where cloth bends it."""


@dataclass(frozen=True)
class Window:
    """An array of pixels over the quilt: `left` and `top` in inches lie at its corner."""

    left: float
    top: float
    fine: float
    """Pixels to the inch."""
    columns: int
    rows: int
    bend: Bend | None = None
    _placed: dict[int, tuple[BaseGeometry, BaseGeometry]] = field(
        default_factory=dict, compare=False, repr=False
    )
    """What has been placed before, by the identity of the geometry, which it keeps alive."""

    @property
    def shape(self) -> tuple[int, int]:
        return self.rows, self.columns

    def placed(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return a geometry of the quilt in pixels."""
        self.place([geometry])
        return self._placed[id(geometry)][1]

    def place(self, shapes: Iterable[BaseGeometry]) -> None:
        """Place shapes together, which is quicker than one by one."""
        new = [s for s in shapes if id(s) not in self._placed]
        if not new:
            return
        moved = np.array(new, dtype=object)
        if self.bend is not None:
            moved = shapely.segmentize(moved, _STRETCH)
        moved = shapely.simplify(shapely.transform(moved, self._move), _FINE)
        for shape, there in zip(new, moved, strict=True):
            self._placed[id(shape)] = shape, there

    def _move(self, points: Points) -> Points:
        bent = points if self.bend is None else self.bend(points)
        moved: Points = (bent - (self.left, self.top)) * self.fine
        return moved

    def coarser(self, fine: float) -> Window:
        """Return a window on the same cloth with at most `fine` pixels to the inch."""
        if fine >= self.fine:
            return self
        columns, rows = (round(n * fine / self.fine) for n in (self.columns, self.rows))
        return Window(
            self.left, self.top, self.fine * columns / self.columns, columns, rows, self.bend
        )

    def across(self) -> tuple[Grey, Grey]:
        """Return x of every column and y of every row, in inches, as a row and a column."""
        x = self.left + (np.arange(self.columns, dtype=np.float32) + 0.5) / self.fine
        y = self.top + (np.arange(self.rows, dtype=np.float32) + 0.5) / self.fine
        return x[None, :].astype(np.float32), y[:, None].astype(np.float32)


class _Sheet:
    """A cairo surface of one window."""

    def __init__(self, window: Window, kind: int) -> None:
        self.surface = cairocffi.ImageSurface(kind, window.columns, window.rows)
        self.pen = cairocffi.Context(self.surface)
        self.pen.set_fill_rule(cairocffi.FILL_RULE_EVEN_ODD)
        self.window = window

    def trace(self, geometry: BaseGeometry) -> None:
        """Add the rings and lines of a geometry to the path."""
        self._trace(self.window.placed(geometry))

    def _trace(self, placed: BaseGeometry) -> None:
        for part in shapely.get_parts(placed):
            if part.geom_type == "Polygon":
                for ring in (part.exterior, *part.interiors):
                    self._run(ring.coords)
                    self.pen.close_path()
            elif part.geom_type in ("LineString", "LinearRing"):
                self._run(part.coords)
            elif hasattr(part, "geoms"):
                self._trace(part)

    def _run(self, points: Iterable[Sequence[float]]) -> None:
        pen, first = self.pen, True
        for x, y, *_ in points:
            if first:
                pen.move_to(x, y)
                first = False
            else:
                pen.line_to(x, y)

    def bytes(self, depth: int) -> Bytes:
        """Return the surface's bytes, `depth` to a pixel."""
        self.surface.flush()
        stride, high = self.surface.get_stride(), self.window.rows
        raw = np.frombuffer(self.surface.get_data(), np.uint8).reshape(high, stride)
        found: Bytes = raw[:, : self.window.columns * depth].copy()
        return found.reshape(high, self.window.columns, depth)


def covered(window: Window, *shapes: BaseGeometry) -> Grey:
    """Return how much of each pixel shapes cover together, 0 to 1."""
    sheet = _Sheet(window, cairocffi.FORMAT_A8)
    for shape in shapes:
        sheet.trace(shape)
        sheet.pen.fill()
    return _shares(sheet)


def drawn(
    window: Window,
    lines: BaseGeometry,
    width: float,
    dash: Sequence[float] = (),
    shift: float = 0.0,
) -> Grey:
    """Return how much of each pixel lines `width` inches wide cover, 0 to 1.

    `dash` are the lengths of dash and gap in inches, the first beginning `shift` before
    the line.
    """
    sheet = _Sheet(window, cairocffi.FORMAT_A8)
    pen = sheet.pen
    pen.set_line_width(max(width * window.fine, 0.2))
    pen.set_line_cap(cairocffi.LINE_CAP_ROUND if dash else cairocffi.LINE_CAP_BUTT)
    pen.set_line_join(cairocffi.LINE_JOIN_ROUND)
    if dash:
        pen.set_dash([d * window.fine for d in dash], shift * window.fine)
    sheet.trace(lines)
    pen.stroke()
    return _shares(sheet)


def _shares(sheet: _Sheet) -> Grey:
    found: Grey = sheet.bytes(1)[:, :, 0].astype(np.float32)
    found *= np.float32(1 / 255)
    return found


def numbers(window: Window, shapes: Sequence[BaseGeometry]) -> npt.NDArray[np.int32]:
    """Return the number, from 1, of the last shape at each pixel; 0 where there is none."""
    sheet = _Sheet(window, cairocffi.FORMAT_RGB24)
    sheet.pen.set_antialias(cairocffi.ANTIALIAS_NONE)
    for number, shape in enumerate(shapes, start=1):
        parts = ((number >> 16) & 255, (number >> 8) & 255, number & 255)
        sheet.pen.set_source_rgb(*(p / 255 for p in parts))
        sheet.trace(shape)
        sheet.pen.fill_preserve()
        sheet.pen.set_line_width(1)
        sheet.pen.stroke()
    found = sheet.bytes(4).astype(np.int32)
    total: npt.NDArray[np.int32] = found[:, :, 0] + 256 * found[:, :, 1] + 65536 * found[:, :, 2]
    return total


def coloured(window: Window, shapes: Iterable[tuple[BaseGeometry, str]], ground: str) -> Bytes:
    """Return shapes painted one over the other in `#rrggbb`, on a ground, as sRGB bytes.

    Each is painted half a pixel larger, so that no ground shows between neighbours.
    """
    sheet = _Sheet(window, cairocffi.FORMAT_RGB24)
    pen = sheet.pen
    pen.set_line_width(1)
    pen.set_source_rgb(*_parts(ground))
    pen.paint()
    for shape, colour in shapes:
        pen.set_source_rgb(*_parts(colour))
        sheet.trace(shape)
        pen.fill_preserve()
        pen.stroke()
    return sheet.bytes(4)[:, :, 2::-1]


def _parts(colour: str) -> tuple[float, float, float]:
    red, green, blue = (int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return red, green, blue
