"""What this stage accepts and how exactly it works, in one place.

In: nothing. Out: named constants.
Invariant: every tolerance that rounds geometry is here with its reason, and every limit
keeps the work on one drawing bounded in time and memory. Those on the file as such are
in `publish.svgfile`.
"""

from __future__ import annotations

CHORD = 0.002
"""Inches at print size between a curve and the straight pieces it is drawn with: half the
width of the finest printed line."""

SNAP = 0.005
"""Inches at print size: a point this close to a fold is on it. Less than a pencil line."""

GRID = 1e-7
"""Inches: wedges are joined on this grid, so that no hairline stays open at a fold."""

MAX_PICTURE = 100_000_000
"""Of a picture that is traced."""

MAX_STYLE = 100_000
"""Characters of one style sheet, or of one element's style."""

MAX_STYLES = 1_000_000
"""Characters of the elements' own styles, each wording counted once."""

MAX_STYLED = 2_000_000
"""Selectors held against elements, all together: about a second's work."""

MAX_NUMBERS = 300_000
"""Numbers in the path data and point lists of the drawn element, repeated uses counted."""

MAX_POINTS = 40_000
"""Points of the drawn element after its curves are flattened."""

MAX_OPENED = 40_000
"""Points of a motif at its finished size, all its repeats together."""

MAX_CROSSINGS = 4_000
"""Places where outlines cross."""

MAX_NEAR = 2_000_000
"""Pairs of outline pieces whose boxes overlap, looked at to find the crossings."""

MAX_COORDINATE = 1e6
"""User units from the origin."""

MAX_LINES = 20_000
"""Quilting lines of one area."""
