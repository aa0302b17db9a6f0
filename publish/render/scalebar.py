"""A scale bar in a picture for a shop, whose reader sees nothing to compare a quilt with.

In: a picture's pixels, pixels to the inch. Out: the picture with a bar and its length in words.
Invariant: the bar's two ticks are as far apart, to a pixel, as the length that it names is
in the picture.
"""

from __future__ import annotations

import io
from fractions import Fraction
from importlib.resources import files

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from publish.render.arrays import Bytes
from publish.units import cm_text, inches_text

LENGTHS = (36, 24, 12, 6, 3, 1)
"""Inches that a bar may be long."""
LONGEST = 0.2
"""Share of the picture's width that it may take."""
INK = (38, 36, 34)
_FONT = "SourceSansPro-Semibold.otf"


def bar_inches(wide: int, fine: float) -> Fraction:
    """Return the length of the bar of a picture `wide` pixels across, in inches."""
    fits = [n for n in LENGTHS if n * fine <= LONGEST * wide]
    return Fraction(fits[0] if fits else LENGTHS[-1])


def with_bar(pixels: Bytes, fine: float) -> Bytes:
    """Return a picture with a bar in its lower left corner; `fine` is pixels to the inch."""
    high, wide = pixels.shape[:2]
    image = Image.fromarray(pixels)
    pen = ImageDraw.Draw(image)
    length = bar_inches(wide, fine)
    line = max(2, round(wide / 500))
    left, low = round(0.035 * wide), round(high - 0.035 * wide)
    right, tick = left + round(float(length) * fine), round(0.008 * wide)
    pen.rectangle((left, low - line + 1, right, low), fill=INK)
    for x in (left, right):
        pen.rectangle((x - line // 2, low - tick, x + (line - 1) // 2, low + tick), fill=INK)
    words = f"{inches_text(length)} ({cm_text(length)})"
    path = files("font_source_sans_pro") / "files" / _FONT
    font = ImageFont.truetype(io.BytesIO(path.read_bytes()), max(9, round(0.017 * wide)))
    pen.text((left, low - 1.4 * tick), words, INK, font, anchor="ls")
    return np.asarray(image, np.uint8)
