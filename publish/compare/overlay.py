"""Two outlines of a template laid over each other, as a picture.

In: an `Overlay`. Out: SVG.
Invariant: both are drawn to one scale from one origin; old and new are told apart without
colour: dashed and hatched, solid and dotted.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from html import escape

from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from publish.compare.model import Change, Overlay, Template
from publish.units import POINTS_PER_INCH, decimal_text

WHOLE, LENS = 276.0, 92.0
"""Points: the side of the picture of the whole, and the radius of the enlarged view."""
WIDTH, HEIGHT = 510.0, 300.0
EDGE = 12.0
"""Points: room round the whole for the ring."""
LENS_AT = (404.0, 104.0)
NEAREST, ROOMY = 0.3, 3.0
"""Inches of template that the enlarged view reaches to, at least; and in times the distance."""
OLD, NEW, SAME, INK = "#8c3b2e", "#1f5f6b", "#ece6d8", "#2b2926"
FACE = "font-family: 'Source Sans Pro', system-ui, sans-serif; font-size: 9px"

_DEFS = (
    '<defs><pattern id="gone-{name}" width="4" height="4" patternUnits="userSpaceOnUse" '
    f'patternTransform="rotate(45)"><path d="M0 0V4" stroke="{OLD}" stroke-width="1.2"/></pattern>'
    '<pattern id="come-{name}" width="4" height="4" patternUnits="userSpaceOnUse">'
    f'<circle cx="2" cy="2" r="1.1" fill="{NEW}"/></pattern>'
    '<clipPath id="lens-{name}"><circle cx="{x}" cy="{y}" r="{radius}"/></clipPath></defs>'
)


def overlays(changes: Iterable[Change]) -> dict[str, str]:
    """Return the picture of each change that has one, by the overlay's name."""
    return {c.overlay.name: picture(c.overlay) for c in changes if c.overlay is not None}


def picture(laid: Overlay) -> str:
    """Return the whole template, old and new, with the place where they differ most."""
    left, top, right, bottom = _outline(laid.old).union(_outline(laid.new)).bounds
    scale = WHOLE / max(right - left, bottom - top, 0.01)
    shift = (EDGE - left * scale, EDGE - top * scale)
    middle = tuple((a + b) / 2 for a, b in zip(*laid.at, strict=True))
    times = LENS / max(NEAREST, ROOMY * laid.distance)
    lens_shift = (LENS_AT[0] - middle[0] * times, LENS_AT[1] - middle[1] * times)
    spot = [c * scale + s for c, s in zip(middle, shift, strict=True)]
    ring = Point(middle).buffer(1.05 * LENS / times)
    body = [
        _DEFS.format(name=laid.name, x=LENS_AT[0], y=LENS_AT[1], radius=LENS),
        *_both(laid, scale, shift),
        f'<circle cx="{spot[0]:.2f}" cy="{spot[1]:.2f}" r="{max(5, LENS / times * scale):.2f}" '
        f'fill="none" stroke="{INK}" stroke-width="0.8"/>',
        f'<g clip-path="url(#lens-{laid.name})">',
        *_both(laid, times, lens_shift, ring),
        "</g>",
        f'<circle cx="{LENS_AT[0]}" cy="{LENS_AT[1]}" r="{LENS}" fill="none" stroke="{INK}" '
        'stroke-width="0.8"/>',
        _measure(laid, times, lens_shift),
        *_legend(laid),
    ]
    said = escape(alt(laid), quote=True)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="{said}" '
        f'width="{WIDTH / POINTS_PER_INCH:.3f}in" height="{HEIGHT / POINTS_PER_INCH:.3f}in" '
        f'viewBox="0 0 {WIDTH:g} {HEIGHT:g}">{"".join(body)}</svg>'
    )


def alt(laid: Overlay) -> str:
    return (
        f"The old and the new template laid over each other: they differ by up to "
        f"{decimal_text(Fraction(laid.distance), 2)} in, and in "
        f"{decimal_text(Fraction(laid.area), 2)} square inches."
    )


def _outline(template: Template) -> BaseGeometry:
    return template.cut


def _both(
    laid: Overlay, scale: float, shift: tuple[float, ...], window: BaseGeometry | None = None
) -> Iterator[str]:
    """Yield what both have, what only one has, and the two outlines."""
    old, new = laid.old.cut, laid.new.cut
    if old.equals(new):
        old, new = laid.old.finished, laid.new.finished
    parts = (
        (old.intersection(new), f'fill="{SAME}"'),
        (old.difference(new), f'fill="url(#gone-{laid.name})"'),
        (new.difference(old), f'fill="url(#come-{laid.name})"'),
    )
    for shape, look in parts:
        seen = shape if window is None else shape.intersection(window)
        yield f'<path {look} fill-rule="evenodd" d="{_path(seen, scale, shift)}"/>'
    dashed, solid = f'stroke="{OLD}" stroke-dasharray="4 2"', f'stroke="{NEW}"'
    edges = [(old.boundary, dashed), (new.boundary, solid)]
    edges += [(laid.old.lines, dashed)] if laid.old.lines is not None else []
    edges += [(laid.new.lines, solid)] if laid.new.lines is not None else []
    for line, look in edges:
        seen = line if window is None else line.intersection(window)
        yield f'<path fill="none" {look} stroke-width="0.9" d="{_path(seen, scale, shift)}"/>'


def _path(shape: BaseGeometry, scale: float, shift: tuple[float, ...]) -> str:
    """Return the rings and lines of a shape as path data; points have no extent."""
    drawn = []
    for part in getattr(shape, "geoms", [shape]):
        if hasattr(part, "geoms"):
            drawn.append(_path(part, scale, shift))
        elif part.geom_type == "Polygon":
            drawn += [_line(r, scale, shift) + "Z" for r in (part.exterior, *part.interiors)]
        elif part.geom_type in ("LineString", "LinearRing"):
            drawn.append(_line(part, scale, shift))
    return "".join(drawn)


def _line(line: BaseGeometry, scale: float, shift: tuple[float, ...]) -> str:
    points = (f"{x * scale + shift[0]:.2f} {y * scale + shift[1]:.2f}" for x, y in line.coords)
    return "M" + "L".join(points)


def _measure(laid: Overlay, scale: float, shift: tuple[float, ...]) -> str:
    """Return the line from the one outline to the other."""
    (x, y), (u, v) = ((a * scale + shift[0], b * scale + shift[1]) for a, b in laid.at)
    return (
        f'<path d="M{x:.2f} {y:.2f}L{u:.2f} {v:.2f}" stroke="{INK}" stroke-width="1.6"/>'
        f'<circle cx="{x:.2f}" cy="{y:.2f}" r="2" fill="{INK}"/>'
        f'<circle cx="{u:.2f}" cy="{v:.2f}" r="2" fill="{INK}"/>'
    )


def _legend(laid: Overlay) -> Iterator[str]:
    """Yield what the lines and tints mean."""
    x, y = LENS_AT[0] - LENS, LENS_AT[1] + LENS + 22
    rows = (
        (f'fill="url(#gone-{laid.name})" stroke="{OLD}" stroke-dasharray="4 2"', "old only"),
        (f'fill="url(#come-{laid.name})" stroke="{NEW}"', "new only"),
        (f'fill="{SAME}"', "the same"),
    )
    for at, (look, said) in enumerate(rows):
        down = y + 15 * at
        yield f'<rect x="{x}" y="{down - 8}" width="20" height="10" {look}/>'
        yield f'<text x="{x + 27}" y="{down}" style="{FACE}" fill="{INK}">{said}</text>'
    far = decimal_text(Fraction(laid.distance), 2)
    yield (
        f'<text x="{x + 95}" y="{y}" style="{FACE}" fill="{INK}">in the ring: {far} in apart</text>'
    )
