"""What is cut from a roll in squares: fusible web and stabiliser.

In: the roll's width, how many squares, their side. Out: `WebPlan`.
Invariant: a square wider than the roll is made of as many lengths side by side as cover
it. The widths themselves are the pattern's: 17 in for web and 20 in for stabiliser,
in metric 45 and 50 cm, where it says nothing (common practice, no source).
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import WebPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern, Sewing
from publish.units import round_up


def squares(width: Fraction, count: int, side: Fraction, sewing: Sewing) -> WebPlan:
    """Return squares cut side by side from a roll, the side rounded up to 1/8 in or 5 mm."""
    side = sewing.measures.rough_up(side)
    beside, lengths = width // side, -(-side // width)
    length = (-(-count // beside) if beside else count * lengths) * side
    buy = round_up(length, sewing.first_step)
    return WebPlan(width, length, buy, count, side)


def stabiliser(pattern: Pattern, draft: Draft) -> WebPlan | None:
    """Return the stabiliser: a square as large as the motif's own for each that asks for it."""
    asking = [p.motif for p in draft.placements if pattern.motifs[p.motif].stabiliser]
    if not asking:
        return None
    side = max(draft.motifs[key].span for key in asking) + pattern.sewing.motif_margin
    return squares(pattern.sewing.stabiliser_width, len(asking), side, pattern.sewing)
