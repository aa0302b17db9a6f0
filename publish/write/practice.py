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


BASTE_FROM_EDGE = Practice(Fraction(1, 2), "Martha Stewart, How to applique by hand")
"""Basting lies this far inside the motif's raw edge."""
WEDGE_BASTING = Practice(Fraction(1, 4), _NONE)
"""Basting through a folded wedge lies this far inside the finished line."""
CUT_AWAY = Practice(Fraction(1, 4), _NONE)
"""The ground behind a motif is cut away this far inside the stitches."""
STITCH_APART = Practice(Fraction(1, 16), _NONE)
"""About so far apart are appliqué stitches by hand; `STITCH_INTERVAL` is the most."""
ZIGZAG_LENGTH = Practice(Fraction(3, 2) / INCH_IN_MM, _NONE)
"""Length of a zigzag round a raw edge (1.5 mm): close enough to cover it."""
ZIGZAG_WIDTH = Practice(Fraction(5, 2) / INCH_IN_MM, _NONE)
"""Width of that zigzag, and length of a blanket stitch (2.5 mm)."""
STITCH_INTERVAL = Practice(Fraction(1, 8), "Martha Stewart, How to applique by hand")
"""The most between two appliqué stitches by hand."""
PIECING_STITCH = Practice(Fraction(5, 2) / INCH_IN_MM, "melgeecrafts.com, stitch length table")
"""Length of one machine stitch in a seam (2.5 mm)."""
QUILTING_STITCH = Practice(3 / INCH_IN_MM, "quiltadvice.com, What is matchstick quilting")
"""Length of one machine stitch when quilting (3 mm)."""

THREAD_LENGTH = Practice(Fraction(18), _NONE)
"""Length of hand-sewing thread to cut."""
TURN_AHEAD = Practice(Fraction(1, 2), _NONE)
"""How far ahead of the needle the edge is turned."""
BASTING_ROWS = Practice(Fraction(4), _NONE)
"""Distance between rows of basting, or between safety pins, in the quilt sandwich."""
RULER_SPARE = Practice(Fraction(1, 16), _NONE)
"""A mark further off than this is worth doing again."""

SCALE_INCH = Practice(Fraction(1), "the check square on each template sheet")
SCALE_CM = Practice(10 * 5 / INCH_IN_MM, "the check square on each template sheet")
SPOOL_METRES = Practice(Fraction(200), _NONE)
"""Metres on the spool that thread is counted in."""
BOBBIN = Practice(64 * YARD, _NONE)
"""Thread on a full bobbin: about 64 yd of 50 wt thread on a class 15 bobbin."""
FUSED_SPARE = Practice(Fraction(3, 16), "Quiltmaker magazine (F+W), Piecing and applique")
"""Web is cut out this far outside the traced line."""
WEB_APART = Practice(trade.WEB_APART, "Quiltmaker magazine (F+W), Piecing and applique")
"""Least distance between shapes traced on one sheet of web."""
BACKING_SEAM = Practice(trade.BACKING_SEAM, _NONE)
"""Seam that joins backing panels."""
FOUNDATION_STITCH = Practice(Fraction(3, 2) / INCH_IN_MM, _NONE)
"""Length of one machine stitch through a paper foundation (1.5 mm), which then tears easily."""
FOUNDATION_SPARE = Practice(Fraction(1, 4), _NONE)
"""Cloth kept round a section until it is trimmed on its outer line."""
