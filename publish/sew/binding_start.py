"""Where a binding begins and how its ends are joined, from the room that the sides give.

In: the sides of a quilt as trimmed. Out: `Start`, figures without a sentence.
Invariant: on the side where it begins there is room for the first stitches before the next
corner, for the opening between last and first stitch, and for a run of stitches after the
last corner; where no side has that room the ends are tucked and no opening is left.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from publish.measures import INCHES, Measures
from publish.surd import Length

OPENINGS = tuple(Fraction(n) for n in (10, 8, 6))
"""Inches left open between the last and the first stitch, the easiest to join in first.
Common practice, no source."""
RUN = Fraction(2)
"""Least stitching on the side of the start: after its last corner, and before its next.
Common practice, no source."""
TAIL = Fraction(6)
"""Binding left loose before the first stitch. Common practice, no source."""
TUCKED = Fraction(1)
"""How far the end of a binding lies inside its folded beginning. Common practice, no source."""


@dataclass(frozen=True)
class Start:
    """Where the first stitch lies and what is left open.

    `where`: in the `middle` of a side, or near the next `corner`, `before` inches from it;
    `ends`: `joined` by a diagonal seam in the `opening`, or `tucked`, the end so far `inside`
    the folded beginning. `tail` is left loose before the first stitch. `longer` says that
    only the longer sides have the room. All in inches.
    """

    where: Literal["middle", "corner"]
    ends: Literal["joined", "tucked"]
    before: Length
    opening: Fraction
    tail: Fraction
    longer: bool
    inside: Fraction = Fraction(0)


def start_of(width: Length, height: Length, measures: Measures = INCHES) -> Start:
    """Return where to begin on a quilt of this trimmed size.

    From the middle of any side where the shorter has the room, from the middle of a longer
    side, or close to the corner ahead, with as large an opening as there is room for.
    """
    short, long = min(width, height), max(width, height)
    openings = tuple(map(measures.usual, OPENINGS))
    run, tail, widest = measures.usual(RUN), measures.usual(TAIL), openings[0]
    for side in (short, long):
        if side / 2 >= widest + run:
            return Start("middle", "joined", side / 2, widest, tail, side != short)
    for opening in openings:
        if long >= opening + 2 * run:
            return Start("corner", "joined", run, opening, tail, long != short)
    loose = min(run, Fraction(int(float(long / measures.whole)), 4) * measures.whole)
    inside = min(measures.usual(TUCKED), loose)
    return Start("middle", "tucked", long / 2, Fraction(0), loose, long != short, inside)
