"""Colours of fabrics: how light they are, how far apart, and how they show through.

In: `#rrggbb` strings, as fabrics have them. Out: plain numbers and `#rrggbb` strings.
Invariant: all colour science is the library's (coloraide); this file only chooses the
measure and states what is an estimate.
"""

from __future__ import annotations

from dataclasses import dataclass

from coloraide import Color

OPACITY = 0.9
"""Share of light that one layer of quilting cotton returns of its own colour when it is
pale and lies on another: an estimate for lining decisions, common practice, no source."""

VISIONS = {"protan": "red-weak", "deutan": "green-weak", "tritan": "blue-weak"}
"""The three forms of colour-vision deficiency that are previewed, in plain words."""

CLOSE_STEP = 12.0
"""Lightness step (CIEDE2000 of greys) below which two fabrics that touch blur into one at arm's
length: common practice, no source."""


@dataclass(frozen=True)
class Step:
    """How far apart two fabrics are in lightness, and whether that is close."""

    value: float
    close: bool


def lightness_step(one: str, other: str) -> Step:
    """Return the lightness step: the CIEDE2000 difference of two colours' greys."""
    greys = [Color("lab-d65", [lightness(colour), 0, 0]) for colour in (one, other)]
    value = float(greys[0].delta_e(greys[1], method="2000"))
    return Step(value, value < CLOSE_STEP)


def grey(colour: str) -> str:
    """Return the neutral grey that is exactly as light as a colour."""
    neutral = Color("lab-d65", [lightness(colour), 0, 0])
    return str(neutral.convert("srgb").fit(method="clip").to_string(hex=True))


def lightness(colour: str) -> float:
    """Return CIE L* (D65) between 0 for black and 100 for white."""
    return float(Color(colour).convert("lab-d65")["l"])


def difference(one: str, other: str) -> float:
    """Return the CIEDE2000 difference of two colours (kL = kC = kH = 1)."""
    return float(Color(one).delta_e(Color(other), method="2000"))


def contrast(one: str, other: str) -> float:
    """Return the WCAG 2 contrast ratio, from 1 to 21."""
    return float(Color(one).contrast(Color(other), method="wcag21"))


def ink_on(colour: str, dark: str = "#2b2a28", light: str = "#ffffff") -> str:
    """Return whichever of `dark` and `light` reads better on a colour."""
    return dark if contrast(colour, dark) >= contrast(colour, light) else light


def laid_over(one: str, other: str, share: float) -> str:
    """Return `share` of the first colour over the second, mixed in linear light."""
    mixed = Color(other).mix(Color(one), share, space="srgb-linear")
    return str(mixed.convert("srgb").to_string(hex=True))


def seen_by(colour: str, vision: str) -> str:
    """Return a colour as someone with a `VISIONS` deficiency (complete form) sees it."""
    filtered = Color(colour).filter(vision).convert("srgb").fit(method="clip")
    return str(filtered.to_string(hex=True))


def show_through(over: str, under: str, opacity: float = OPACITY) -> tuple[str, float]:
    """Return the estimated look of one layer laid on another, and its CIEDE2000 change.

    A darker fabric hides what lies under it; a paler one takes on some of it. Estimate:
    the upper layer returns `opacity` of its own colour and lets the rest through.
    """
    seen = laid_over(over, under, opacity) if lightness(over) > lightness(under) else over
    return seen, difference(seen, over)
