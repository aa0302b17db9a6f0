"""Lengths in a plan's own words: in yards, and beside them in metres.

In: two lengths in inches. Out: text.
Invariant: both lengths are given; neither is made from the other, because each is
rounded to its own purchase step.
"""

from __future__ import annotations

from fractions import Fraction

from publish.units import metres_text, yards_text


def to_buy(yards: Fraction, metres: Fraction) -> str:
    """Return `1/2 yd (0.50 m)`; without metres where the difference is none in metres."""
    return f"{yards_text(yards)} ({metres_text(metres)})" if metres > 0 else yards_text(yards)
