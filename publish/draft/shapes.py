"""One SVG shape element as lines and curves.

In: an element of a drawing, the viewport it is in. Out: `Subpath`s in its own coordinates.
Invariant: every value is checked before it is used; what cannot be understood raises
`DrawingError` with words for the designer, never anything else.

Path data, arcs included, is read by svgelements.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from dataclasses import dataclass
from xml.etree.ElementTree import Element

import numpy as np
import svgelements

from publish.draft.curves import Points, arc, bezier
from publish.draft.limits import MAX_POINTS
from publish.svgfile import local

DRAWN = ("path", "rect", "circle", "ellipse", "polygon", "polyline", "line")

PIXELS = {
    "": 1.0,
    "px": 1.0,
    "in": 96.0,
    "cm": 96 / 2.54,
    "mm": 96 / 25.4,
    "q": 96 / 101.6,
    "pt": 96 / 72,
    "pc": 16.0,
}
"""User units in one of each unit of length (CSS Values and Units, absolute lengths)."""

_NUMBER = r"[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?"
NUMBER = re.compile(_NUMBER)
_LENGTH = re.compile(rf"({_NUMBER})\s*([A-Za-z]*|%)")
_FUNCTION = re.compile(r"(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]*)\)")
_COUNTS = {
    "matrix": (6,),
    "translate": (1, 2),
    "scale": (1, 2),
    "rotate": (1, 3),
    "skewX": (1,),
    "skewY": (1,),
}


class DrawingError(Exception):
    """A value of a drawing that cannot be understood; the message says which and why."""


@dataclass(frozen=True)
class Curve:
    """A Bezier curve by its control points, or an arc of an ellipse.

    For an arc the points are the centre and the ends of two conjugate half axes.
    """

    points: Points
    start: float = 0.0
    sweep: float | None = None

    def moved(self, matrix: Points) -> Curve:
        return Curve(apply(matrix, self.points), self.start, self.sweep)

    def flat(self, tolerance: float) -> Points:
        """Return the points after the first, within `tolerance` of the curve."""
        if self.sweep is None:
            return bezier(self.points, tolerance)
        centre, a, b = self.points
        return arc(centre, a - centre, b - centre, self.start, self.sweep, tolerance)


@dataclass(frozen=True)
class Subpath:
    """Connected lines and curves, and whether the path closes them."""

    start: Points
    curves: tuple[Curve, ...]
    closed: bool

    def moved(self, matrix: Points) -> Subpath:
        start = apply(matrix, self.start[None, :])[0]
        return Subpath(start, tuple(c.moved(matrix) for c in self.curves), self.closed)

    def flat(self, tolerance: float) -> Points:
        """Return the points of the path; DrawingError when there are too many."""
        parts, count = [self.start[None, :]], 0
        for curve in self.curves:
            parts.append(curve.flat(tolerance))
            count += len(parts[-1])
            if count > MAX_POINTS:
                raise DrawingError(f"an outline has more than {MAX_POINTS} points")
        points = np.concatenate(parts)
        keep = np.ones(len(points), dtype=bool)
        keep[1:] = np.any(points[1:] != points[:-1], axis=1)
        return points[keep]


def apply(matrix: Points, points: Points) -> Points:
    """Return points of shape (n, 2) moved by a 3 x 3 matrix."""
    return points @ matrix[:2, :2].T + matrix[:2, 2]


def length(text: str, whole: float, what: str) -> float:
    """Return a length in user units; `whole` is what a percentage is of."""
    match = _LENGTH.fullmatch(text.strip())
    unit = match.group(2).lower() if match else ""
    if match is None or (unit != "%" and unit not in PIXELS):
        raise DrawingError(f"{what} {text.strip()[:40]!r} is not a length")
    number = float(match.group(1))
    value = number * whole / 100 if unit == "%" else number * PIXELS[unit]
    if not math.isfinite(value):
        raise DrawingError(f"{what} {text.strip()[:40]!r} is not a finite length")
    return value


def numbers(text: str, what: str) -> list[float]:
    """Return a list of numbers separated by spaces or commas."""
    if NUMBER.sub("", text).strip(", \t\r\n\f"):
        raise DrawingError(f"{what} {text.strip()[:40]!r} is not a list of numbers")
    found = [float(n) for n in NUMBER.findall(text)]
    if not all(map(math.isfinite, found)):
        raise DrawingError(f"{what} holds a number that is not finite")
    return found


def transform(text: str) -> Points:
    """Return a transform attribute as a 3 x 3 matrix."""
    if _FUNCTION.sub("", text).strip(", \t\r\n\f"):
        raise DrawingError(f"transform {text.strip()[:40]!r} cannot be understood")
    for name, inside in _FUNCTION.findall(text):
        if len(numbers(inside, f"transform {name}")) not in _COUNTS[name]:
            raise DrawingError(f"transform {name}({inside[:30]}) has the wrong number of values")
    m = svgelements.Matrix(text)
    found = np.array([[m.a, m.c, m.e], [m.b, m.d, m.f], [0.0, 0.0, 1.0]])
    if not np.isfinite(found).all():
        raise DrawingError(f"transform {text.strip()[:40]!r} is not finite")
    return found


def subpaths(element: Element, view: tuple[float, float]) -> tuple[Subpath, ...]:
    """Return what a shape element draws; empty when it draws nothing."""
    segments = _segments(element, view)
    found: list[Subpath] = []
    start: Points | None = None
    curves: list[Curve] = []
    for segment in segments:
        end = np.array([segment.end.x, segment.end.y])
        if isinstance(segment, svgelements.Move):
            _finish(found, start, curves, closed=False)
            start, curves = end, []
        elif isinstance(segment, svgelements.Close):
            _finish(found, start, curves, closed=True)
            start, curves = end, []
        else:
            curves.append(_curve(segment))
    _finish(found, start, curves, closed=False)
    return tuple(found)


def _finish(found: list[Subpath], start: Points | None, curves: list[Curve], closed: bool) -> None:
    if start is not None and curves:
        found.append(Subpath(start, tuple(curves), closed))


def _curve(segment: svgelements.PathSegment) -> Curve:
    ends = [segment.start, segment.end]
    if isinstance(segment, svgelements.Arc) and segment.sweep:
        return Curve(
            _array([segment.center, segment.prx, segment.pry]),
            float(segment.get_start_t()),
            float(segment.sweep),
        )
    if isinstance(segment, svgelements.CubicBezier):
        ends = [segment.start, segment.control1, segment.control2, segment.end]
    elif isinstance(segment, svgelements.QuadraticBezier):
        ends = [segment.start, segment.control, segment.end]
    return Curve(_array(ends))


def _array(points: list[svgelements.Point]) -> Points:
    return np.array([[p.x, p.y] for p in points], dtype=float)


def _segments(element: Element, view: tuple[float, float]) -> list[svgelements.PathSegment]:
    name = local(element)
    if name == "path":
        return _path(element.get("d") or "")
    if name in ("polygon", "polyline"):
        values = numbers(element.get("points") or "", "points")
        if len(values) % 2:
            raise DrawingError("points has an odd number of values")
        kind = svgelements.Polygon if name == "polygon" else svgelements.Polyline
        pairs = list(zip(values[::2], values[1::2], strict=True))
        return list(kind(*pairs).segments()) if len(pairs) > 1 else []
    width, height = view
    across, down = width, height
    both = math.hypot(width, height) / math.sqrt(2)

    def get(key: str, whole: float, default: str = "0") -> float:
        return length(element.get(key) or default, whole, key)

    if name == "line":
        ends = [get("x1", across), get("y1", down), get("x2", across), get("y2", down)]
        return list(svgelements.SimpleLine(*ends).segments())
    if name == "rect":
        return _rect(element, get, across, down)
    rx = get("r", both) if name == "circle" else get("rx", across)
    ry = rx if name == "circle" else get("ry", down)
    if rx <= 0 or ry <= 0:
        return []
    return list(
        svgelements.Ellipse(cx=get("cx", across), cy=get("cy", down), rx=rx, ry=ry).segments()
    )


def _rect(
    element: Element, get: Callable[..., float], across: float, down: float
) -> list[svgelements.PathSegment]:
    width, height = get("width", across), get("height", down)
    if width <= 0 or height <= 0:
        return []
    rx = get("rx", across) if element.get("rx", "auto") != "auto" else None
    ry = get("ry", down) if element.get("ry", "auto") != "auto" else None
    rx, ry = (ry if rx is None else rx), (rx if ry is None else ry)
    rx, ry = min(max(rx or 0, 0), width / 2), min(max(ry or 0, 0), height / 2)
    if not rx or not ry:
        rx = ry = 0
    corner = {"x": get("x", across), "y": get("y", down)}
    return list(svgelements.Rect(width=width, height=height, rx=rx, ry=ry, **corner).segments())


def _path(data: str) -> list[svgelements.PathSegment]:
    if not data.strip():
        return []
    if data.lstrip()[0] not in "Mm":
        raise DrawingError(f"path data {data.strip()[:30]!r} does not begin with M")
    try:
        segments = list(svgelements.Path(data))
    except (ValueError, TypeError, AttributeError, IndexError, OverflowError, ZeroDivisionError):
        raise DrawingError(f"path data cannot be understood after {_readable(data)!r}") from None
    for segment in segments:
        values = [v for p in _corners(segment) for v in (p.x, p.y)]
        if not all(map(math.isfinite, values)):
            raise DrawingError("path data holds a number that is not finite")
    return segments


def _corners(segment: svgelements.PathSegment) -> list[svgelements.Point]:
    names = ("start", "end", "control", "control1", "control2", "center", "prx", "pry")
    return [p for p in (getattr(segment, n, None) for n in names) if p is not None]


def _readable(data: str) -> str:
    """Return the end of the longest run of whole commands that can be read."""
    cuts = [m.start() for m in re.finditer(r"[MmLlHhVvCcSsQqTtAaZz]", data)]
    low, high = 0, len(cuts) - 1
    while low < high:
        middle = (low + high + 1) // 2
        try:
            svgelements.Path(data[: cuts[middle]])
            low = middle
        except Exception:  # any failure means that this much cannot be read
            high = middle - 1
    return data[: cuts[low]].strip()[-30:]
