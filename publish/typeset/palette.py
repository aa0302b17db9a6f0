"""The few colours of a booklet, taken from the designer's accent or the pattern's fabrics.

In: a pattern. Out: `Palette`, `#rrggbb` strings.
Invariant: every pair that is set as text on ground reaches `READABLE`, the contrast that
WCAG 2.0 (success criterion 1.4.3, level AA) asks of ordinary text.
"""

from __future__ import annotations

from dataclasses import dataclass

from coloraide import Color

from publish.colour import contrast, difference, laid_over, lightness
from publish.model.pattern import Pattern

INK = "#24221f"
PAPER = "#ffffff"
READABLE = 4.5
_STEPS = 40
_APART = 20.0
"""CIEDE2000: the second accent must look clearly unlike the first."""


@dataclass(frozen=True)
class Palette:
    """Named colours for a layout's style."""

    ink: str
    """Text."""
    paper: str
    quiet: str
    """Captions and running feet: lighter than ink, still readable."""
    accent: str
    """Headings and numerals: the designer's own, or from the darkest fabric."""
    second: str
    """Small marks beside the accent, from the most colourful other fabric."""
    rule: str
    """Hairlines."""
    tint: str
    """Boxes and group rows."""
    wash: str
    """The ground of the covers."""


def palette(pattern: Pattern) -> Palette:
    """Return the colours that a pattern's accent, or its fabrics, give."""
    colours = [f.colour for f in pattern.fabrics.values()]
    chosen = pattern.style.accent or min(colours, key=lightness)
    wash, accent = wash_of(chosen), accent_of(chosen)
    others = [c for c in colours if difference(c, chosen) > _APART]
    second = readable(max(others, key=_colourful)) if others else accent
    return Palette(
        ink=INK,
        paper=PAPER,
        quiet="#5c5852",
        accent=accent,
        second=second,
        rule=tinted(accent, 0.78, 0.02),
        tint=tinted(accent, 0.965, 0.008),
        wash=wash,
    )


def wash_of(colour: str) -> str:
    """Return the ground of the covers that goes with an accent."""
    return tinted(colour, 0.93, 0.016)


def accent_of(colour: str) -> str:
    """Return an accent as it is printed: readable on the ground of the covers."""
    return readable(colour, wash_of(colour))


def weakest(colour: str) -> float:
    """Return an accent's contrast with the ground that it reads worst on."""
    return contrast(colour, wash_of(colour))


def readable(colour: str, on: str = PAPER) -> str:
    """Return a colour, with as much ink mixed in as it needs to read on a ground."""
    for step in range(_STEPS):
        mixed = laid_over(INK, colour, step / _STEPS)
        if contrast(mixed, on) >= READABLE:
            return mixed if step else colour
    return INK


def tinted(colour: str, lightness: float, chroma: float) -> str:
    """Return a tint of the same hue: OKLCH `lightness` 0 to 1, `chroma` at most as given.

    A grey stays grey. Mixing with white would dull a dark fabric's tint to grey instead.
    """
    tint = Color(colour).convert("oklch")
    tint["lightness"] = lightness
    tint["chroma"] = min(tint["chroma"], chroma)
    return str(tint.convert("srgb").fit().to_string(hex=True))


def _colourful(colour: str) -> int:
    """Return the spread of the three channels: 0 for a grey."""
    channels = [int(colour[i : i + 2], 16) for i in (1, 3, 5)]
    return max(channels) - min(channels)
