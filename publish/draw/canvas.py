"""The one drawing vocabulary: primitives recorded in inches, written as SVG.

In: shapes, lines and text in a frame's own units. Out: SVG text, and its extent.
Invariant: the same calls give the same bytes; the SVG has no ids, classes, styles, clips
or patterns, only presentation attributes, so that every renderer agrees and figures can
stand in one document. One SVG user unit is one point; a canvas unit is one printed inch,
and a frame inside it may have any scale. Weights, dashes and text are always points.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from math import cos, hypot, radians, sin
from typing import Any

from shapely.affinity import affine_transform
from shapely.geometry.base import BaseGeometry

from publish.draw.letters import CAP_HEIGHT, DESCENT, FACES, text_width
from publish.draw.style import INK, LABEL, SMALL
from publish.draw.svg import svg_of
from publish.model.drawing import (
    HUNDREDTHS,
    Circle,
    Drawing,
    Lettering,
    Path,
    Primitive,
    Ring,
    Stroke,
)
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH

SMOOTH = 0.1
"""Points: curves are thinned to this at the printed size unless told otherwise."""


Spot = tuple[float, float]
"""A point on the page in points."""


@dataclass
class Record:
    """What all frames of one canvas write into."""

    items: list[Primitive] = field(default_factory=list)
    left: float = float("inf")
    top: float = float("inf")
    right: float = float("-inf")
    bottom: float = float("-inf")

    def reach(self, points: Iterable[Spot], margin: float = 0.0) -> None:
        """Grow the extent (points) to hold `points`."""
        for x, y in points:
            self.left, self.right = min(self.left, x - margin), max(self.right, x + margin)
            self.top, self.bottom = min(self.top, y - margin), max(self.bottom, y + margin)


class Canvas:
    """A drawing surface `width` x `height` inches, or a frame on one."""

    def __init__(self, width: float, height: float) -> None:
        self.width, self.height = width, height
        self._record = Record()
        self._matrix = (float(POINTS_PER_INCH), 0.0, 0.0, float(POINTS_PER_INCH), 0.0, 0.0)

    # --- frames -----------------------------------------------------------------------

    def frame(self, x: float, y: float, scale: float = 1.0, turn: float = 0.0,
              mirror: bool = False) -> Canvas:  # fmt: skip
        """Return a frame whose origin lies at (x, y) here and whose unit is `scale` here.

        `turn` is in degrees clockwise on the page; `mirror` flips the frame left to right
        before it is turned. Text is never turned or flipped with a frame.
        """
        c, s = cos(radians(turn)) * scale, sin(radians(turn)) * scale
        m, n = (-c, -s) if mirror else (c, s)
        return self.leaning(x, y, (m, n), (-s, c))

    def leaning(self, x: float, y: float, across: Spot, down: Spot) -> Canvas:
        """Return a frame whose origin lies at (x, y) here and whose unit steps are the
        vectors `across` and `down`: for cloth seen from the side."""
        a, b, d, e = self._matrix[:4]
        (m, n), (p, q) = across, down
        px, py = self.point((x, y))
        inner = Canvas.__new__(Canvas)
        inner.width, inner.height = self.width, self.height
        inner._record = self._record
        inner._matrix = (a * m + d * n, b * m + e * n, a * p + d * q, b * p + e * q, px, py)
        return inner

    def point(self, at: tuple[Any, Any]) -> Spot:
        """Return a point of this frame in points of the page."""
        a, b, d, e, ox, oy = self._matrix
        x, y = float(at[0]), float(at[1])
        return a * x + d * y + ox, b * x + e * y + oy

    @property
    def unit(self) -> float:
        """Points of the page per unit of this frame."""
        return hypot(self._matrix[0], self._matrix[1])

    def inches(self, points: float) -> float:
        """Return a printed length in points as units of this frame."""
        return points / self.unit

    def to_page(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return a geometry of this frame in points of the page."""
        a, b, d, e, ox, oy = self._matrix
        return affine_transform(geometry, [a, d, b, e, ox, oy])

    @property
    def page(self) -> Canvas:
        """Return a frame in points of the page."""
        inner = self.frame(0, 0)
        inner._matrix = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
        return inner

    @property
    def extent(self) -> tuple[float, float, float, float]:
        """Left, top, right, bottom of what has been drawn, in points of the page."""
        s = self._record
        return s.left, s.top, s.right, s.bottom

    # --- shapes -----------------------------------------------------------------------

    def line(self, start: tuple[Any, Any], end: tuple[Any, Any], stroke: Stroke) -> None:
        """Draw a straight line."""
        self.polyline((start, end), stroke)

    def polyline(self, points: Iterable[tuple[Any, Any]], stroke: Stroke) -> None:
        """Draw an open line through points."""
        self._path([[self.point(p) for p in points]], None, stroke, close=False)

    def lines(self, geometry: BaseGeometry, stroke: Stroke, smooth: float = SMOOTH) -> None:
        """Draw every line of a line geometry as one path."""
        self._path(runs_of(self.to_page(geometry), smooth), None, stroke, close=False)

    def polygon(self, points: Iterable[tuple[Any, Any]], fill: str | None = None,
                stroke: Stroke | None = None, opacity: float = 1.0) -> None:  # fmt: skip
        """Draw a closed polygon."""
        self._path([[self.point(p) for p in points]], fill, stroke, opacity=opacity)

    def rect(self, x: Any, y: Any, width: Any, height: Any, fill: str | None = None,
             stroke: Stroke | None = None, opacity: float = 1.0) -> None:  # fmt: skip
        """Draw a rectangle by its top left corner and size."""
        x, y, right, bottom = float(x), float(y), float(x + width), float(y + height)
        corners = ((x, y), (right, y), (right, bottom), (x, bottom))
        self.polygon(corners, fill, stroke, opacity)

    def shape(self, geometry: BaseGeometry, fill: str | None = None,
              stroke: Stroke | None = None, opacity: float = 1.0,
              smooth: float = SMOOTH) -> None:  # fmt: skip
        """Draw a polygon geometry, holes left open. `smooth` 0 keeps every corner."""
        rings = rings_of(self.to_page(geometry), smooth)
        self._path(rings, fill, stroke, opacity=opacity)

    def circle(self, centre: tuple[Any, Any], radius: float, fill: str | None = None,
               stroke: Stroke | None = None) -> None:  # fmt: skip
        """Draw a circle; `radius` is in points of the page."""
        x, y = self.point(centre)
        weight = stroke.weight / 2 if stroke else 0.0
        self._record.reach([(x, y)], radius + weight)
        self._record.items.append(Circle((x, y), radius, fill, stroke))

    def _path(self, rings: list[list[Spot]], fill: str | None, stroke: Stroke | None,
              close: bool = True, opacity: float = 1.0) -> None:  # fmt: skip
        rings = [ring for ring in rings if len(ring) > 1]
        if not rings:
            return
        for ring in rings:
            self._record.reach(ring, stroke.weight / 2 if stroke else 0.0)
        kept = tuple(_hundredths(ring, close) for ring in rings)
        self._record.items.append(Path(kept, close, fill, stroke, opacity))

    # --- text -------------------------------------------------------------------------

    def text(self, at: tuple[Any, Any], text: str, size: float = LABEL, face: str = "regular",
             anchor: str = "start", level: str = "base", fill: str = INK, angle: float = 0.0,
             halo: str | None = None, shift: Spot = (0.0, 0.0)) -> None:  # fmt: skip
        """Set one line of text.

        `anchor` start, middle or end; `level` says which height of the letters lies at
        the point: base, middle or top (of the capitals). `angle` turns the text clockwise
        about the point. `halo` paints that colour behind it. `shift` moves the text by
        points of the page, before turning.
        """
        if size < SMALL or face not in FACES:
            raise ValueError(f"text must be at least {SMALL} pt in a known face: {text!r}")
        px, py = self.point(at)
        wide = text_width(text, size, face)
        x = px + shift[0] - {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
        y = py + shift[1] + {"base": 0.0, "middle": 0.5, "top": 1.0}[level] * size * CAP_HEIGHT
        box = (x, y - size * 0.74, x + wide, y + size * DESCENT)
        corners = [_turned(p, (px, py), angle) for p in _corners(box)]
        self._record.reach(corners)
        if halo is not None:
            loose = (box[0] - 1.5, y - size * CAP_HEIGHT - 1.4, box[2] + 1.5, y + size * 0.2 + 0.6)
            self.page.polygon([_turned(p, (px, py), angle) for p in _corners(loose)], halo)
        self._record.items.append(Lettering(text, (x, y), (px, py), angle, size, face, fill))

    # --- result -----------------------------------------------------------------------

    def drawing(self, window: tuple[float, float, float, float] | None = None) -> Drawing:
        """Return what was drawn; `window` (left, top, right, bottom in points) replaces the
        whole surface."""
        whole = (0.0, 0.0, self.width * POINTS_PER_INCH, self.height * POINTS_PER_INCH)
        left, top, right, bottom = window or whole
        return Drawing(tuple(self._record.items), (left, top, right - left, bottom - top))

    def svg(self, alt: str = "", window: tuple[float, float, float, float] | None = None) -> str:
        """Return the drawing as SVG text."""
        return svg_of(self.drawing(window), alt)

    def figure(self, spec: FigureSpec, alt: str, trim: bool = True, pad: float = 2.0,
               scalable: bool = True) -> Figure:  # fmt: skip
        """Return the finished figure.

        With `trim` the height is cut or grown to what was drawn plus `pad` points, so
        that nothing is clipped above or below; the width stays as it was set out.
        """
        wide, high = self.width * POINTS_PER_INCH, self.height * POINTS_PER_INCH
        window = (0.0, 0.0, wide, high)
        if trim and self._record.items:
            window = (0.0, self._record.top - pad, wide, self._record.bottom + pad)
        drawing = self.drawing(window)
        height = drawing.window[3] / POINTS_PER_INCH
        svg = svg_of(drawing, alt)
        return Figure(spec.key, svg, self.width, height, alt, spec.caption, scalable, drawing)


def _corners(box: tuple[float, float, float, float]) -> list[Spot]:
    left, top, right, bottom = box
    return [(left, top), (right, top), (right, bottom), (left, bottom)]


def _turned(point: Spot, about: Spot, angle: float) -> Spot:
    if not angle:
        return point
    c, s = cos(radians(angle)), sin(radians(angle))
    x, y = point[0] - about[0], point[1] - about[1]
    return about[0] + c * x - s * y, about[1] + s * x + c * y


def _hundredths(ring: Iterable[Spot], close: bool) -> Ring:
    """Return a ring in hundredths of a point, no corner twice in a row.

    Each corner is rounded by itself, so that rounding never adds up.
    """
    points = [(round(x * HUNDREDTHS), round(y * HUNDREDTHS)) for x, y in ring]
    kept = [p for i, p in enumerate(points) if i == 0 or p != points[i - 1]]
    if close and len(kept) > 1 and kept[0] == kept[-1]:
        kept.pop()
    return tuple(kept)


def rings_of(geometry: BaseGeometry, smooth: float) -> list[list[Spot]]:
    """Return every ring of the polygons in a geometry."""
    if smooth:
        geometry = geometry.simplify(smooth)
    found = []
    for part in getattr(geometry, "geoms", [geometry]):
        if part.geom_type == "Polygon" and not part.is_empty:
            found += [list(ring.coords) for ring in (part.exterior, *part.interiors)]
        elif hasattr(part, "geoms"):
            found += rings_of(part, 0)
    return found


def runs_of(geometry: BaseGeometry, smooth: float) -> list[list[Spot]]:
    """Return every run of points of the lines in a geometry."""
    if smooth:
        geometry = geometry.simplify(smooth)
    found = []
    for part in getattr(geometry, "geoms", [geometry]):
        if part.geom_type in ("LineString", "LinearRing") and not part.is_empty:
            found.append(list(part.coords))
        elif hasattr(part, "geoms"):
            found += runs_of(part, 0)
    return found
