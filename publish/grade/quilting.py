"""How a size is quilted when neither it nor the pattern says so.

In: a size with its dimensions. Out: `QuiltingSpec`s, one for each area that it has.
Invariant: every area gets lines that can be drawn, none further apart than the batting's
label allows.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.pattern import QuiltingSpec
from publish.model.size import Size
from publish.surd import Length

ECHO = Fraction(1, 2)
"""Between echo lines round a motif. Common practice, no source."""
GRID = Fraction(2)
"""Between the lines of a diagonal grid over patchwork. Common practice, no source."""
ALONG = Fraction(1)
"""Between lines along a border. Common practice, no source."""


def usual(size: Size) -> tuple[QuiltingSpec, ...]:
    """Return the usual quilting of a size.

    Round a motif, lines that echo it; patchwork without one gets a diagonal grid. Borders
    get lines along them, or lines in their seams where they have no room for more.
    """
    if size.motif_span is not None:
        found = [
            QuiltingSpec("motif", "ditch"),
            QuiltingSpec("ground", "echo", _within(size, ECHO)),
        ]
    else:
        found = [QuiltingSpec("ground", "grid", _within(size, GRID))]
    if size.borders:
        apart = _within(size, ALONG)
        roomy = all(width > apart for width in frames(size))
        found.append(
            QuiltingSpec("border", "parallel", apart) if roomy else QuiltingSpec("border", "ditch")
        )
    return tuple(found)


def _within(size: Size, apart: Fraction) -> Fraction:
    """Return a distance, or the batting's largest gap where that is less."""
    gap = size.batting.largest_gap if size.batting is not None else None
    return apart if gap is None else min(apart, gap)


def frames(size: Size) -> list[Length]:
    """Return the widths of the borders, those that follow each other taken together."""
    found: list[Length] = []
    after_border = False
    for layer in size.layers:
        if layer.border is not None:
            if after_border:
                found[-1] += layer.border.width
            else:
                found.append(layer.border.width)
        after_border = layer.border is not None
    return found
