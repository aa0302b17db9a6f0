"""A recorded drawing as an image that WeasyPrint sets into its pages without parsing SVG.

In: a `Drawing`, the font configuration of a document. Out: `DrawnImage`, for the image cache.
Invariant: a page shows what the same drawing's SVG would show; lines are written as whole
hundredths of a point, and each line of text is one run of letters, so that it is found,
copied and read out as it is written.

WeasyPrint's image cache (`HTML.render(cache=...)`) is public: it asks an image for its size
and to draw itself on a stream. Setting text takes inner functions of WeasyPrint, all of them
in `_letter` and `_style`; `tests/typeset/test_drawn.py` holds them to the look of the SVG.
"""

from __future__ import annotations

from functools import lru_cache
from math import cos, inf, radians, sin
from typing import Any

from weasyprint.css.properties import INITIAL_VALUES
from weasyprint.draw.text import draw_first_line
from weasyprint.matrix import Matrix
from weasyprint.text.fonts import FontConfiguration
from weasyprint.text.line_break import split_first_line

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
    Seen,
    Stroke,
)

PIXELS = 4 / 3
"""CSS pixels in a point."""
_ROUND = 4 / 3 * (2**0.5 - 1)
"""Length of a Bézier's handles, in radii, for a quarter of a circle."""
_CAPS = {"butt": 0, "round": 1, "square": 2}


class DrawnImage:
    """One drawing, as WeasyPrint's image cache takes it."""

    def __init__(self, drawing: Drawing, fonts: FontConfiguration) -> None:
        self.drawing, self.fonts = drawing, fonts

    def get_intrinsic_size(self, resolution: float, font_size: float) -> tuple[float, ...]:
        """Return width, height (CSS pixels) and their ratio."""
        del resolution, font_size
        _, _, wide, high = self.drawing.window
        return wide * PIXELS, high * PIXELS, wide / high

    def draw(self, stream: Any, width: float, height: float, style: Any) -> None:
        """Draw on a page's stream, `width` x `height` CSS pixels from its origin."""
        del style
        left, top, wide, high = self.drawing.window
        across, down = width / wide, height / high
        stream.transform(a=across, d=down, e=-left * across, f=-top * down)
        for item in self.drawing.items:
            self._draw(stream, item)

    def _draw(self, stream: Any, item: Primitive) -> None:
        if isinstance(item, Lettering):
            self._letter(stream, item)
        elif isinstance(item, Seen):
            stream.push_state()
            stream.stream.append(f"{_outline(item.area)} W* n".encode())
            for inner in item.items:
                self._draw(stream, inner)
            stream.pop_state()
        else:
            stream.push_state()
            if isinstance(item, Path) and item.opacity < 1:
                stream.set_alpha(item.opacity)
            stream.stream.append(_operators(item))
            stream.pop_state()

    def _letter(self, stream: Any, line: Lettering) -> None:
        style = _style(self.fonts, line.size, line.face)
        layout, _, _, _, _, baseline = split_first_line(line.text, style, None, inf, 0)
        layout.reactivate(style)
        stream.push_state()
        if line.angle:
            turn = Matrix(e=-line.about[0], f=-line.about[1])
            turn = turn @ _turned(line.angle) @ Matrix(e=line.about[0], f=line.about[1])
            stream.transform(*turn.values)
        stream.stream.append(f"{_colour(line.fill)} rg".encode())
        stream.begin_text()
        box = _TextBox(layout, style, baseline)
        draw_first_line(stream, box, "none", "none", Matrix(d=-1, e=line.at[0], f=line.at[1]))
        stream.end_text()
        stream.pop_state()


class _TextBox:
    """What WeasyPrint's text drawing asks of a box."""

    def __init__(self, layout: Any, style: Any, baseline: float) -> None:
        self.pango_layout, self.style, self.baseline = layout, style, baseline
        self.text = layout.text


class _Style(dict[str, Any]):
    """Computed values of CSS, with the fonts that they are looked up in."""

    font_config: FontConfiguration


def _style(fonts: FontConfiguration, size: float, face: str) -> _Style:
    style = _Style(INITIAL_VALUES)
    style.font_config = fonts
    style["font_family"] = [FONT]
    style["font_size"] = size
    style["font_weight"] = WEIGHTS[face]
    style["font_style"] = "italic" if face == "italic" else "normal"
    # Letters stand by their own widths, as they were measured when the drawing was made.
    style["font_kerning"] = "none"
    style["font_variant_ligatures"] = "none"
    style["letter_spacing"] = TRACKING
    return style


def _turned(angle: float) -> Matrix:
    c, s = cos(radians(angle)), sin(radians(angle))
    return Matrix(c, s, -s, c)


@lru_cache(maxsize=4096)
def _operators(item: Path | Circle) -> bytes:
    """Return the PDF operators that paint an outline, in points."""
    said = []
    if item.fill:
        said.append(f"{_colour(item.fill)} rg")
    if item.stroke:
        said.append(_pen(item.stroke))
    said.append(_outline(item) if isinstance(item, Path) else _round(item))
    said.append("B*" if item.fill and item.stroke else "f*" if item.fill else "S")
    return "\n".join(said).encode()


def _pen(stroke: Stroke) -> str:
    dash = " ".join(_short(d) for d in stroke.dash)
    return (
        f"{_colour(stroke.colour)} RG {_short(stroke.weight)} w 1 j "
        f"{_CAPS[stroke.cap]} J [{dash}] 0 d"
    )


def _outline(path: Path) -> str:
    parts = []
    for ring in path.rings:
        (x, y), *rest = ring
        parts.append(f"{_hundredths(x)} {_hundredths(y)} m")
        parts += [f"{_hundredths(x)} {_hundredths(y)} l" for x, y in rest]
        if path.closed:
            parts.append("h")
    return "\n".join(parts)


def _round(circle: Circle) -> str:
    (x, y), r = circle.centre, circle.radius
    k = r * _ROUND
    corners = [(r, 0.0), (0.0, r), (-r, 0.0), (0.0, -r)]
    said = [f"{_short(x + r)} {_short(y)} m"]
    for (a, b), (c, d) in zip(corners, [*corners[1:], corners[0]], strict=True):
        handles = (x + a + k * c / r, y + b + k * d / r, x + c + k * a / r, y + d + k * b / r)
        ends = (*handles, x + c, y + d)
        said.append(" ".join(_short(v) for v in ends) + " c")
    return "\n".join((*said, "h"))


def _hundredths(value: int) -> str:
    whole, rest = divmod(abs(value), HUNDREDTHS)
    sign = "-" if value < 0 else ""
    return f"{sign}{whole}.{rest:02d}" if rest else f"{sign}{whole}"


def _short(value: float) -> str:
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


@lru_cache(maxsize=1024)
def _colour(colour: str) -> str:
    """Return `#rrggbb` as three operands, each from 0 to 1."""
    return " ".join(_short(int(colour[i : i + 2], 16) / 255) for i in (1, 3, 5))
