"""Figures of the trade that more than one stage works with, each with its source.

In: nothing. Out: inches, degrees, counts.
Invariant: what is cut, printed and checked by such a figure reads it here, so that none of
them can differ.
"""

from __future__ import annotations

from fractions import Fraction

BACKING_SEAM = Fraction(1, 2)
"""Seam between panels of a backing, selvages off: a published worked example joins two 42 in
lengths to 83 in (reference back-3.75yd)."""

WEB_APART = Fraction(1, 2)
"""Left between shapes traced on web, which is cut out 3/16 in outside the line:
Quiltmaker magazine (F+W), Piecing and applique."""

PAPER_THICKNESS = Fraction(5, 1000)
"""Of one sheet of a folded booklet: the stock of the published example in `deliver.impose`."""

FOLDS = (4, 6, 8, 12, 16)
"""Into how many wedges a sheet of paper is folded for a motif: what can be folded evenly and
still be cut. Common practice, no source."""

SQUARE = 3.0
"""Degrees off square to a fold that no scissors keep and no eye sees once it is opened: a bend
of 6 degrees. Common practice, no source."""

SLIP = 12.0
"""Degrees off square up to which an edge at a fold was most likely meant to be square. Common
practice, no source."""

CUT_AWAY = Fraction(1, 4)
"""Inches inside the stitches at which the ground behind a motif is cut away: common practice,
no source."""

STITCH_APART = Fraction(1, 16)
"""Inches between appliqué stitches by hand: common practice, no source."""

STITCH_INTERVAL = Fraction(1, 8)
"""The most inches between them: Martha Stewart, How to applique by hand."""
