"""Lengths in a plan's own words, and what pieces are called.

In: two lengths in inches; names of the trade. Out: text; values that a language says.
Invariant: both lengths are given; neither is made from the other, because each is
rounded to its own purchase step.
"""

from __future__ import annotations

from fractions import Fraction

from publish.measures import INCHES, Measures
from publish.words import english
from publish.words.values import Purchase, Said, Word, said


def to_buy(yards: Fraction, metres: Fraction, measures: Measures = INCHES) -> str:
    """Return `1/2 yd (0.50 m)`; what leads alone where the difference is none in the other."""
    return english(Purchase(yards, metres), measures)


def piece_called(name: str) -> Said:
    """Return what a piece is called, as a value, from its name in the trade."""
    return said("cut-piece", piece=Word("-".join(name.split())))
