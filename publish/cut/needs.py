"""What a size needs from its fabrics, before letters and strips.

In: pattern, size, draft. Out: `Need`s: pieces with every way in which they may be cut.
Invariant: a need's first way is the plain one; every way gives the same finished piece.
The loss in each join is counted in the way's own lengths.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.units import round_up


@dataclass(frozen=True)
class Way:
    """One way to cut a need: `count` rectangles `across` by `along` the fabric.

    `joined` rectangles are sewn end to end for one finished piece. `words` says the way
    in the plan's list of choices and is empty for the only way.
    """

    across: Fraction
    along: Fraction
    count: int
    joined: int = 1
    may_turn: bool = False
    words: str = ""


@dataclass(frozen=True)
class Need:
    """Pieces of one size and purpose from one fabric. Lengths in inches."""

    name: str
    purpose: str
    fabric: str
    width: Fraction
    length: Fraction
    count: int
    ways: tuple[Way, ...]
    finished_width: Fraction | None = None
    finished_length: Fraction | None = None
    exact_width: Fraction | None = None
    exact_length: Fraction | None = None
    note: str = ""


def plain(width: Fraction, length: Fraction, count: int, directional: bool) -> tuple[Way, ...]:
    """Return the only way to cut a piece that fits the fabric: turned or not at will."""
    return (Way(width, length, count, may_turn=not directional and width != length),)


def long_ways(width: Fraction, length: Fraction, count: int, usable: Fraction,
              loss: Fraction, directional: bool = False) -> tuple[Way, ...]:  # fmt: skip
    """Return the ways to cut strips `width` by `length`: whole, or joined across.

    `loss` is the length that one join takes. A strip that fits across the fabric is one
    piece; a longer one is cut along the length, or joined from the fewest equal lengths
    that fit across the usable width.
    """
    if length <= usable:
        return plain(width, length, count, directional)
    along = Way(width, length, count, words="along the length, without joins")
    parts = -(-(length - loss) // (usable - loss))
    each = round_up((length + (parts - 1) * loss) / parts)
    if each > usable:  # rounding up took the last eighth
        parts, each = parts + 1, round_up((length + parts * loss) / (parts + 1))
    across = Way(each, width, count * parts, parts, words="across the width, joined")
    return (across,) if directional else (along, across)
