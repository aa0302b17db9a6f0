"""Continuous bias from a square: how many lines it holds, and how long a strip they give.

In: side of the square, strip width, seam, in inches. Out: lines, lengths.
Invariant: only whole lines count, and both seams are taken off, so that what is promised
can be cut.

A square of side s is cut on its diagonal and two straight edges are sewn together with a
seam t. Between the two bias edges there are then (s - 2t) / √2: the seam draws them together by
its two allowances. A line parallel to them is s√2 long, and (s - 2t)√2 once the
straight ends, 45 degrees to it, are sewn to a tube. Shifted by one line, n lines make one
strip n (s - 2t)√2 long. The handbooks' rule, the root of length times width, leaves out the
seams and what is narrower than a strip.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import count
from math import isqrt

from publish.measures import INCHES, Measures
from publish.units import EIGHTH


def lines(side: Fraction, width: Fraction, seam: Fraction) -> int:
    """Return how many whole strips of a width lie side by side between the bias edges."""
    across = max(side - 2 * seam, Fraction(0)) / width
    return isqrt(int(across * across / 2))


def strip_length(
    side: Fraction, width: Fraction, seam: Fraction, step: Fraction = EIGHTH
) -> Fraction:
    """Return the length of strip that a square gives, rounded down to a step."""
    of_one = max(side - 2 * seam, Fraction(0))
    square = 2 * (lines(side, width, seam) * of_one / step) ** 2
    return isqrt(int(square)) * step


def square_side(
    length: Fraction, width: Fraction, seam: Fraction, measures: Measures = INCHES
) -> Fraction:
    """Return the least side in whole inches or centimetres that gives a strip of a length."""
    unit = measures.whole
    least = isqrt(int(length * width / unit**2))
    return next(
        side * unit
        for side in count(least)
        if strip_length(side * unit, width, seam, measures.grid) >= length
    )
