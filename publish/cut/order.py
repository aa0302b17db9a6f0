"""The order in which strips are cut.

In: strips in any order. Out: the same strips.
Invariant: what needs an unbroken length of cloth comes first, then the largest pieces,
then the rest, so that a slip can still be made good from what is left (common practice,
no source). Equal strips stay together.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from publish.model.cutplan import Strip


def cutting_order(strips: Iterable[Strip], usable: Fraction) -> tuple[Strip, ...]:
    """Return strips with pieces longer than the width first, the longest of them first;
    then by the area of each strip's largest piece, the deeper first of equals."""

    def rank(strip: Strip) -> tuple[Fraction, Fraction, Fraction, str]:
        longest = max((c.along for c in strip.held), default=Fraction(0))
        largest = max((c.across * c.along for c in strip.held), default=Fraction(0))
        letters = " ".join(c.letter for c in strip.held)
        return -longest if longest > usable else Fraction(0), -largest, -strip.depth, letters

    return tuple(sorted(strips, key=rank))
