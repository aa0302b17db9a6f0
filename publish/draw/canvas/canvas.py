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

from publish.draw.canvas.letters import CAP_HEIGHT, DESCENT, ENGLISH, FACES, Labels, text_width
from publish.draw.canvas.rings import Spot, corners, hundredths, rings_of, runs_of, turned
from publish.draw.canvas.style import INK, LABEL, SMALL
from publish.draw.canvas.svg import svg_of
from publish.model.drawing import (
    Circle,
    Drawing,
    Lettering,
    Path,
    Primitive,
    Stroke,
)
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH

SMOOTH = 0.1
"""Points: curves are thinned to this at the printed size unless told otherwise."""


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

    def __init__(self, width: float, height: float, labels: Labels = ENGLISH) -> None:
        self.width, self.height, self.labels = width, height, labels
        self._record = Record()
        self._matrix = (float(POINTS_PER_INCH), 0.0, 0.0, float(POINTS_PER_INCH), 0.0, 0.0)

    # --- frames -----------------------------------------------------------------------

    def frame(
        self, x: float, y: float, scale: float = 1.0, turn: float = 0.0, mirror: bool = False
    ) -> Canvas:
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
        inner.width, inner.height, inner.labels = self.width, self.height, self.labels
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

    def polygon(
        self,
        points: Iterable[tuple[Any, Any]],
        fill: str | None = None,
        stroke: Stroke | None = None,
        opacity: float = 1.0,
    ) -> None:
        """Draw a closed polygon."""
        self._path([[self.point(p) for p in points]], fill, stroke, opacity=opacity)

    def rect(
        self,
        x: Any,
        y: Any,
        width: Any,
        height: Any,
        fill: str | None = None,
        stroke: Stroke | None = None,
        opacity: float = 1.0,
    ) -> None:
        """Draw a rectangle by its top left corner and size."""
        x, y, right, bottom = float(x), float(y), float(x + width), float(y + height)
        outline = ((x, y), (right, y), (right, bottom), (x, bottom))
        self.polygon(outline, fill, stroke, opacity)

    def shape(
        self,
        geometry: BaseGeometry,
        fill: str | None = None,
        stroke: Stroke | None = None,
        opacity: float = 1.0,
        smooth: float = SMOOTH,
    ) -> None:
        """Draw a polygon geometry, holes left open. `smooth` 0 keeps every corner."""
        rings = rings_of(self.to_page(geometry), smooth)
        self._path(rings, fill, stroke, opacity=opacity)

    def circle(
        self,
        centre: tuple[Any, Any],
        radius: float,
        fill: str | None = None,
        stroke: Stroke | None = None,
    ) -> None:
        """Draw a circle; `radius` is in points of the page."""
        x, y = self.point(centre)
        weight = stroke.weight / 2 if stroke else 0.0
        self._record.reach([(x, y)], radius + weight)
        self._record.items.append(Circle((x, y), radius, fill, stroke))

    def _path(
        self,
        rings: list[list[Spot]],
        fill: str | None,
        stroke: Stroke | None,
        close: bool = True,
        opacity: float = 1.0,
    ) -> None:
        rings = [ring for ring in rings if len(ring) > 1]
        if not rings:
            return
        for ring in rings:
            self._record.reach(ring, stroke.weight / 2 if stroke else 0.0)
        kept = tuple(hundredths(ring, close) for ring in rings)
        self._record.items.append(Path(kept, close, fill, stroke, opacity))

    # --- text -------------------------------------------------------------------------

    def text(
        self,
        at: tuple[Any, Any],
        text: str,
        size: float = LABEL,
        face: str = "regular",
        anchor: str = "start",
        level: str = "base",
        fill: str = INK,
        angle: float = 0.0,
        halo: str | None = None,
        shift: Spot = (0.0, 0.0),
    ) -> None:
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
        extent = [turned(p, (px, py), angle) for p in corners(box)]
        self._record.reach(extent)
        if halo is not None:
            loose = (box[0] - 1.5, y - size * CAP_HEIGHT - 1.4, box[2] + 1.5, y + size * 0.2 + 0.6)
            self.page.polygon([turned(p, (px, py), angle) for p in corners(loose)], halo)
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

    def figure(
        self, spec: FigureSpec, alt: str, trim: bool = True, pad: float = 2.0, scalable: bool = True
    ) -> Figure:
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
