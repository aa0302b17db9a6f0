"""How wide text is, and how a length is set in a figure.

In: text, a size in points, a weight. Out: widths in points; lengths with true fractions.
Invariant: widths come from the font's own advance widths, so a label measured here is
as wide on the page; a set length still reads as the number it is when it is copied out.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cache
from importlib.resources import files

from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from publish.measures import Measures, metre_text
from publish.model.drawing import TRACKING as TRACKING
from publish.surd import Exact, Surd
from publish.units import YARD, fraction_text, maker_inches
from publish.words import Language, language
from publish.words.values import Value

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


@dataclass(frozen=True)
class Labels:
    """The words of figures and of their alternative texts in a language, and the setting of
    lengths in them, in the unit that leads."""

    words: Language = field(default_factory=language)

    @property
    def measures(self) -> Measures:
        """Return what lengths are rounded to and told in."""
        return self.words.measures

    def text(self, message: str, **values: str | int | Value) -> str:
        """Return a message, as `Language.tell` does."""
        return self.words.tell(message, **values)

    def counted(self, count: int, noun: str) -> str:
        """Return `3 rows`: a number in figures and the noun of `figure-count-NOUN`."""
        return self.text(f"figure-count-{noun.replace(' ', '-')}", count=count)

    def pictured(self, what: str, where: str) -> str:
        """Return what a computed picture shows, without a full stop, with the message of where
        that is."""
        computed = self.text("figure-computed")
        return self.text("figure-pictured", what=what, where=self.text(where), computed=computed)

    def or_(self, items: Sequence[str]) -> str:
        """Return texts one of which holds, joined by `or`."""
        return self.text("figure-or").join(items)

    def listed(self, items: Sequence[str]) -> str:
        """Return `a`, `a and b`, `a, b and c`."""
        return self.words.listed(items)

    def number(self, value: Exact) -> str:
        """Return a number for a label: `18½`, `⅜`, `3³⁄₁₆`, on the diagonal the nearest 1/8;
        or centimetres, `47.5`."""
        return self.measures.number(value) if self.measures.metric else _set(maker_inches(value))

    def about(self, said: str, *lengths: Exact) -> str:
        """Return a text, with `about` where a length in it lies on the diagonal and is rounded
        to be read, or in metric where it is rounded at all."""
        rounded = (
            not self.measures.exact(v) if self.measures.metric else isinstance(v, Surd)
            for v in lengths
        )
        return self.words.lengths.words.about.format(said) if any(rounded) else said

    def length(self, length: Exact) -> str:
        """Return `18½ in`, or `about 25½ in` on the diagonal; `47 cm`, `7.5 mm`."""
        if self.measures.metric:
            return self.about(self.measures.text(length), length)
        return self.about(f"{self.number(length)} in", length)

    def size(self, width: Exact, height: Exact) -> str:
        """Return `12 × 18 in`, or `18½ in square`."""
        square = self.words.lengths.words.square
        if width == height and square:
            return square.format(self.length(width))
        return self.sides(width, height)

    def sides(self, width: Exact, height: Exact) -> str:
        """Return `12 × 18½ in`."""
        both = f"{self.number(width)} × {self.number(height)} {self.measures.unit}"
        return self.about(both, width, height)

    def buy(self, length: Fraction) -> str:
        """Return cloth by length as it is bought: `1⅜ yd`, `1.30 m`, `60 cm`."""
        return (
            self.measures.marked(metre_text(length))
            if self.measures.metric
            else f"{_set(length / YARD)} yd"
        )

    def plain(self, length: Exact) -> str:
        """Return `18 1/2 in` for alternative text, in digits that any reader can speak."""
        return self.measures.text(length)

    def spoken(self, width: Exact, height: Exact) -> str:
        """Return `20 × 24 in` for alternative text, in digits that any reader can speak."""
        return self.about(self.measures.sides(width, height), width, height)

    def plain_buy(self, length: Fraction) -> str:
        """Return cloth by length for alternative text."""
        return self.measures.bought(length, length)


ENGLISH = Labels()
"""Labels of what is drawn for the designer, such as findings."""


def _set(near: Fraction) -> str:
    whole, rest = divmod(abs(near), 1)
    if rest == 0:
        return fraction_text(near)
    pair = (rest.numerator, rest.denominator)
    part = _VULGAR.get(pair) or (
        f"{str(pair[0]).translate(_RAISED)}⁄{str(pair[1]).translate(_LOWERED)}"
    )
    return f"{'−' if near < 0 else ''}{whole or ''}{part}"
