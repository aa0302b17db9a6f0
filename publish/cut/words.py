"""Lengths in a plan's own words: by what leads, and beside it by what follows.

In: two lengths in inches. Out: text.
Invariant: both lengths are given; neither is made from the other, because each is
rounded to its own purchase step.
"""

from __future__ import annotations

from fractions import Fraction

from publish.measures import INCHES, Measures
from publish.words.lengths import Lengths


def to_buy(yards: Fraction, metres: Fraction, measures: Measures = INCHES) -> str:
    """Return `1/2 yd (0.50 m)`; what leads alone where the difference is none in the other."""
    if (yards if measures.metric else metres) > 0:
        return Lengths(measures).to_buy(yards, metres)
    return measures.bought(yards, metres)
