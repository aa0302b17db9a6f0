"""What is left of a fabric in one piece when everything is cut.

In: a plan's strips in their order, what of the length bought they leave. Out: the largest
rectangle that nothing is cut from, across the fabric first.
Invariant: it is left whatever is cut, as long as no allowance is used up: it is what the
allowances do not count as theirs.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from publish.model.cutplan import Strip

WORTH_KEEPING = Fraction(5)
"""Inches each way: two small blocks can still be cut from it. Common practice, no source."""

Size = tuple[Fraction, Fraction]


def largest_left(strips: Iterable[Strip], width: Fraction, end: Fraction) -> Size | None:
    """Return the largest piece left, or None where none is worth keeping.

    `end` is how long the fabric is behind its last strip.
    """
    found = [(width, end), *(size for strip in strips for size in _beside(strip, width))]
    kept = [size for size in found if min(size) >= WORTH_KEEPING]
    return max(kept, key=lambda size: (size[0] * size[1], size), default=None)


def _beside(strip: Strip, width: Fraction) -> Iterator[Size]:
    """Yield what is left beside a strip's pieces, and in its sections."""
    yield width - strip.used, strip.depth
    for section in strip.sections:
        taken = sum((inner.depth * inner.count for inner in section.strips), Fraction(0))
        yield section.width, strip.depth - taken
        for inner in section.strips:
            yield from _beside(inner, section.width)
