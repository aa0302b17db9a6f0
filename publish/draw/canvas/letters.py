"""How wide text is, and how a length is set in a figure.

In: text, a size in points, a weight. Out: widths in points; lengths with true fractions.
Invariant: widths come from the font's own advance widths, so a label measured here is
as wide on the page; a set length still reads as the number it is when it is copied out.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from importlib.resources import files

from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from publish.model.drawing import TRACKING as TRACKING
from publish.surd import Exact, Surd
from publish.units import YARD, fraction_text, maker_inches

CAP_HEIGHT = 0.66
"""Of the type size: Source Sans Pro's capitals and figures."""
DESCENT = 0.22
FACES = {"regular": "Regular", "semibold": "Semibold", "bold": "Bold", "italic": "It"}

_VULGAR = {
    (1, 2): "½",
    (1, 4): "¼",
    (3, 4): "¾",
    (1, 3): "⅓",
    (2, 3): "⅔",
    (1, 8): "⅛",
    (3, 8): "⅜",
    (5, 8): "⅝",
    (7, 8): "⅞",
}
_RAISED = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹")
_LOWERED = str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")


@cache
def _advances(face: str) -> tuple[dict[int, int], int]:
    path = files("font_source_sans_pro") / "files" / f"SourceSansPro-{FACES[face]}.otf"
    with path.open("rb") as handle:
        font = TTFont(handle, lazy=False)
        metrics = font["hmtx"]
        widths = {code: metrics[name][0] for code, name in font.getBestCmap().items()}
        return widths, font["head"].unitsPerEm


def text_width(text: str, size: float, face: str = "regular") -> float:
    """Return the width of one line of text in points; a missing letter counts as wide."""
    widths, em = _advances(face)
    total = sum(widths.get(ord(letter), em) for letter in text)
    return total * size / em + TRACKING * max(len(text) - 1, 0)


def wrap(text: str, size: float, width: float, face: str = "regular") -> list[str]:
    """Break text at spaces into lines no wider than `width` points where words allow."""
    lines: list[str] = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(longer, size, face) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def set_number(value: Exact) -> str:
    """Return a number for a label: `18½`, `⅜`, `3³⁄₁₆`; on the diagonal, the nearest 1/8."""
    near = maker_inches(value)
    whole, rest = divmod(abs(near), 1)
    if rest == 0:
        return fraction_text(near)
    pair = (rest.numerator, rest.denominator)
    part = _VULGAR.get(pair) or (
        f"{str(pair[0]).translate(_RAISED)}⁄{str(pair[1]).translate(_LOWERED)}"
    )
    return f"{'−' if near < 0 else ''}{whole or ''}{part}"


def about(*lengths: Exact) -> str:
    """Return `about ` where a length lies on the diagonal and is rounded to be read."""
    return "about " if any(isinstance(length, Surd) for length in lengths) else ""


def set_inches(length: Exact) -> str:
    """Return `18½ in`, or `about 25½ in` on the diagonal."""
    return f"{about(length)}{set_number(length)} in"


def set_size(width: Exact, height: Exact) -> str:
    """Return `12 × 18 in`, or `18½ in square`."""
    if width == height:
        return f"{set_inches(width)} square"
    return f"{about(width, height)}{set_number(width)} × {set_number(height)} in"


def set_yards(length: Fraction) -> str:
    """Return a length in inches as yards: `1⅜ yd`."""
    return f"{set_number(length / YARD)} yd"
