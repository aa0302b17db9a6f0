"""SVG text for a recorded drawing.

In: a drawing's primitives. Out: SVG text.
Invariant: the same drawing gives the same bytes; coordinates to 1/100 point; there is no id,
class, style, clip or pattern; neighbours that share attributes share a group.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from xml.sax.saxutils import escape, quoteattr

from publish.model.drawing import (
    FONT,
    HUNDREDTHS,
    TRACKING,
    WEIGHTS,
    Circle,
    Drawing,
    Lettering,
    Path,
    Primitive,
    Ring,
    Stroke,
)
from publish.units import POINTS_PER_INCH

Item = tuple[str, str, str]
"""Tag, attributes that neighbours may share, and the element's own text."""


def svg_of(drawing: Drawing, alt: str = "") -> str:
    """Return a drawing as SVG text; one user unit is one point."""
    left, top, wide, high = drawing.window
    label = f" aria-label={quoteattr(alt)}" if alt else ""
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img"{label} '
        f'width="{wide / POINTS_PER_INCH:.4f}in" height="{high / POINTS_PER_INCH:.4f}in" '
        f'viewBox="{number(left)} {number(top)} {number(wide)} {number(high)}">'
    )
    return head + "".join(_grouped([_item(p) for p in drawing.items])) + "</svg>"


def number(value: float) -> str:
    """Return a coordinate to 1/100 point, as short as it can be written."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def _item(primitive: Primitive) -> Item:
    if isinstance(primitive, Path):
        own = f'd="{"".join(_ring(ring, primitive.closed) for ring in primitive.rings)}"/>'
        return "path", _paint(primitive.fill, primitive.stroke, primitive.opacity), own
    if isinstance(primitive, Circle):
        x, y = primitive.centre
        own = f'cx="{number(x)}" cy="{number(y)}" r="{number(primitive.radius)}"/>'
        return "circle", _paint(primitive.fill, primitive.stroke, 1.0), own
    if not isinstance(primitive, Lettering):
        raise TypeError("a drawing made opaque is for print, not for SVG")
    slant = ' font-style="italic"' if primitive.face == "italic" else ""
    shared = (
        f'font-family="{FONT}" font-size="{number(primitive.size)}" '
        f'font-weight="{WEIGHTS[primitive.face]}"'
        f'{slant} letter-spacing="{number(TRACKING)}" fill="{primitive.fill}"'
    )
    (x, y), (u, v), turn = primitive.at, primitive.about, ""
    if primitive.angle:
        turn = f' transform="rotate({number(primitive.angle)} {number(u)} {number(v)})"'
    return "text", shared, f'x="{number(x)}" y="{number(y)}"{turn}>{escape(primitive.text)}</text>'


def _ring(ring: Ring, close: bool) -> str:
    """Return one part of a path: where it starts, then steps from point to point."""
    steps = [v - w for a, b in pairwise(ring) for v, w in zip(b, a, strict=True)]
    start = _packed(ring[0])
    return f"M{start}" + (f"l{_packed(steps)}" if steps else "") + "Z" * close


def _packed(hundredths: Sequence[int]) -> str:
    """Return numbers in a path, with no more signs between them than a reader needs."""
    words = [
        number(n / HUNDREDTHS).replace("0.", ".", 1)
        if -HUNDREDTHS < n < HUNDREDTHS
        else number(n / HUNDREDTHS)
        for n in hundredths
    ]
    return " ".join(words).replace(" -", "-")


def _paint(fill: str | None, stroke: Stroke | None, opacity: float) -> str:
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


def _grouped(items: Sequence[Item]) -> Iterable[str]:
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
