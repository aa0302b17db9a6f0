"""SVG text for recorded primitives.

In: rings, runs, strokes, type. Out: attributes and elements as text.
Invariant: coordinates to 1/100 point, never an id, class, style, clip or pattern.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from xml.sax.saxutils import escape

from shapely.geometry.base import BaseGeometry

from publish.draw.letters import TRACKING
from publish.draw.style import FONT, Stroke

Spot = tuple[float, float]
"""A point on the page in points."""
Item = tuple[str, str, str]
"""Tag, attributes that neighbours may share, and the element's own text."""

_WEIGHTS = {"regular": "400", "semibold": "600", "bold": "700", "italic": "400"}


def number(value: float) -> str:
    """Return a coordinate to 1/100 point, as short as it can be written."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def ring_text(ring: Sequence[Spot], close: bool) -> str:
    """Return one part of a path: where it starts, then steps from point to point.

    Steps are differences of points already rounded, so that rounding never adds up.
    """
    points = [(round(x * 100), round(y * 100)) for x, y in ring]
    kept = [p for i, p in enumerate(points) if i == 0 or p != points[i - 1]]
    if close and len(kept) > 1 and kept[0] == kept[-1]:
        kept.pop()
    steps = [v - w for a, b in pairwise(kept) for v, w in zip(b, a, strict=True)]
    start = _packed(kept[0])
    return f"M{start}" + (f"l{_packed(steps)}" if steps else "") + "Z" * close


def _packed(hundredths: Sequence[int]) -> str:
    """Return numbers in a path, with no more signs between them than a reader needs."""
    words = [number(n / 100).replace("0.", ".", 1) if -100 < n < 100 else number(n / 100)
             for n in hundredths]  # fmt: skip
    return " ".join(words).replace(" -", "-")


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


def paint(fill: str | None, stroke: Stroke | None, opacity: float) -> str:
    parts = [f'fill="{fill or "none"}"']
    if fill:
        parts.append('fill-rule="evenodd"')
    if opacity < 1:
        parts.append(f'fill-opacity="{number(opacity)}"')
    if stroke:
        parts.append(f'stroke="{stroke.colour}" stroke-width="{number(stroke.weight)}"')
        parts.append('stroke-linejoin="round"')
        if stroke.cap != "butt":
            parts.append(f'stroke-linecap="{stroke.cap}"')
        if stroke.dash:
            parts.append(f'stroke-dasharray="{" ".join(number(d) for d in stroke.dash)}"')
    return " ".join(parts)


def type_of(size: float, face: str, fill: str) -> str:
    slant = ' font-style="italic"' if face == "italic" else ""
    return (
        f'font-family="{FONT}" font-size="{number(size)}" font-weight="{_WEIGHTS[face]}"'
        f'{slant} letter-spacing="{number(TRACKING)}" fill="{fill}"'
    )


def text_own(text: str, at: Spot, about: Spot, angle: float) -> str:
    turn = ""
    if angle:
        turn = f' transform="rotate({number(angle)} {number(about[0])} {number(about[1])})"'
    return f'x="{number(at[0])}" y="{number(at[1])}"{turn}>{escape(text)}</text>'


def grouped(items: Sequence[Item]) -> Iterable[str]:
    """Yield elements, neighbours that share their attributes under one group."""
    start = 0
    while start < len(items):
        tag, shared, _ = items[start]
        end = start
        while end < len(items) and items[end][:2] == (tag, shared):
            end += 1
        if end - start == 1:
            yield f"<{tag} {shared} {items[start][2]}"
        else:
            yield f"<g {shared}>" + "".join(f"<{tag} {i[2]}" for i in items[start:end]) + "</g>"
        start = end
