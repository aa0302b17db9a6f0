"""Figures that the booklet prints and that no pattern computes, each with its source.

In: nothing. Out: named lengths in inches (or as said) with where they come from.
Invariant: a length in the text is either computed from the pattern or named here; a
figure without a published source says so.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.model import trade
from publish.units import INCH_IN_MM, YARD

_NONE = "common practice, no source"


@dataclass(frozen=True)
class Practice:
    """A length in inches, and where it comes from."""

    value: Fraction
    source: str


CUT_AWAY = Practice(trade.CUT_AWAY, _NONE)
"""The ground behind a motif is cut away this far inside the stitches."""
PIECING_STITCH = Practice(Fraction(5, 2) / INCH_IN_MM, "melgeecrafts.com, stitch length table")
"""Length of one machine stitch in a seam (2.5 mm)."""

SPOOL_METRES = Practice(Fraction(200), _NONE)
"""Metres on the spool that thread is counted in."""
BOBBIN = Practice(64 * YARD, _NONE)
"""Thread on a full bobbin: about 64 yd of 50 wt thread on a class 15 bobbin."""
FOUNDATION_STITCH = Practice(Fraction(3, 2) / INCH_IN_MM, _NONE)
"""Length of one machine stitch through a paper foundation (1.5 mm), which then tears easily."""
FOUNDATION_SPARE = Practice(Fraction(1, 4), _NONE)
"""Cloth kept round a section until it is trimmed on its outer line."""
