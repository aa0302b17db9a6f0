"""Finding room for words, so that nothing overlaps illegibly.

In: the area that words may lie in, the lines they must keep clear of, their size.
Out: where they go, or None when there is no room.
Invariant: words that are placed lie wholly inside the area and clear of every line and of
all words placed before them. All lengths are points of the page.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import atan2, cos, degrees, radians, sin

import numpy as np
import shapely
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import CAP_HEIGHT, text_width
from publish.draw.canvas.style import INK, LABEL

Spot = tuple[float, float]
STEP = 4.0
"""Points between the places that are tried."""
REACH = 60.0
"""Points: how far words may stand from what they name."""
SLIDES = (0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.2, 0.8, 0.14, 0.86)
"""Shares of an edge at which words along it are tried, its middle first."""


def text_box(at: Spot, width: float, height: float, angle: float = 0.0) -> Polygon:
    """Return the rectangle that words fill, centred at a point, turned clockwise."""
    c, s = cos(radians(angle)), sin(radians(angle))
    corners = [(x * width / 2, y * height / 2) for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
    return Polygon([(at[0] + c * x - s * y, at[1] + s * x + c * y) for x, y in corners])


def readable_angle(angle: float) -> float:
    """Return an angle along which words read from the left or from the bottom."""
    level = (angle + 90) % 180 - 90
    return -90.0 if abs(abs(level) - 90) < 0.01 else level


@dataclass
class Room:
    """The area that is left for words on one drawing."""

    area: BaseGeometry
    taken: BaseGeometry
    margin: float = 2.0

    def fits(self, box: Polygon) -> bool:
        return bool(self.area.contains(box)) and box.distance(self.taken) >= self.margin

    def take(self, *shapes: BaseGeometry) -> None:
        """Keep words off these shapes from now on."""
        self.taken = unary_union([self.taken, *shapes])

    def spot(
        self,
        width: float,
        height: float,
        near: Spot | None = None,
        angle: float = 0.0,
        within: BaseGeometry | None = None,
    ) -> Spot | None:
        """Return a free place for a box: the nearest to `near`, or the roomiest.

        A place further than `REACH` from `near` does not count: the words would not be
        read with what they name.
        """
        area = self.area if within is None else self.area.intersection(within)
        if near is not None:
            area = area.intersection(Point(near).buffer(REACH))
        free = area.difference(self.taken.simplify(0.2).buffer(self.margin))
        if free.is_empty:
            return None
        shapely.prepare(free)
        places = np.array(list(_grid(free.bounds, STEP if near is not None else 2 * STEP)))
        corners = np.array(text_box((0, 0), width, height, angle).exterior.coords)
        boxes = shapely.polygons(places[:, None, :] + corners[None, :, :])
        fitting = shapely.contains(free, boxes)
        if not fitting.any():
            return None
        places, boxes = places[fitting], boxes[fitting]
        if near is not None:
            score = -((places - np.array(near)) ** 2).sum(axis=1)
        else:
            score = shapely.distance(boxes, free.boundary.simplify(0.2))
        x, y = places[int(np.argmax(np.round(score, 6)))]
        return float(x), float(y)

    def corner(self, width: float, height: float, inset: float) -> Spot | None:
        """Return a free corner of the area for a box: the right ones first, the lower first."""
        left, top, right, bottom = self.area.bounds
        xs = (right - inset - width / 2, left + inset + width / 2)
        ys = (bottom - inset - height / 2, top + inset + height / 2)
        for at in ((x, y) for x in xs for y in ys):
            if self.fits(text_box(at, width + inset, height + inset)):
                return at
        return None

    def along(
        self, line: LineString, width: float, height: float, offsets: Sequence[float]
    ) -> tuple[Spot, float] | None:
        """Return a free place for words along a straight line, and their angle.

        `offsets` are distances to the right of the line's direction, tried in turn.
        """
        for offset in offsets:
            for share in SLIDES:
                at, angle = beside(line, offset, share)
                if self.fits(text_box(at, width, height, angle)):
                    return at, angle
        return None


def beside(line: LineString, offset: float, share: float = 0.5) -> tuple[Spot, float]:
    """Return a point at a share of a straight line's length and off to its right, and the angle
    at which words read along it."""
    (x0, y0), (x1, y1) = line.coords[0], line.coords[-1]
    length = line.length or 1.0
    ux, uy = (x1 - x0) / length, (y1 - y0) / length
    at = (x0 + share * (x1 - x0) - uy * offset, y0 + share * (y1 - y0) + ux * offset)
    return at, readable_angle(degrees(atan2(uy, ux)))


def words(
    canvas: Canvas,
    room: Room,
    at: Spot,
    text: str,
    size: float = LABEL,
    face: str = "regular",
    angle: float = 0.0,
    fill: str = INK,
) -> None:
    """Set words centred at a point of the page, and keep later words off them."""
    canvas.page.text(at, text, size, face, "middle", "middle", fill, angle)
    room.take(text_box(at, text_width(text, size, face), size * CAP_HEIGHT * 1.5, angle))


def size_of(text: str, size: float = LABEL, face: str = "regular") -> tuple[float, float]:
    """Return the width and height of words as they are kept clear."""
    return text_width(text, size, face) + 2, size * CAP_HEIGHT * 1.6


def _grid(bounds: tuple[float, float, float, float], step: float) -> Iterable[Spot]:
    left, top, right, bottom = bounds
    columns, rows = int((right - left) / step) + 1, int((bottom - top) / step) + 1
    for row in range(rows):
        for column in range(columns):
            yield left + (column + 0.5) * step, top + (row + 0.5) * step
