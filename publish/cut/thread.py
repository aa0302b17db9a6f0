"""Thread.

In: pattern, size, draft. Out: `ThreadPlan`.
Invariant: lengths from curves are rounded up to a whole inch before anything is added.

Thread: a lockstitch (301) seam uses 2.5 times its length, needle and bobbin alike
(Coats, standard stitch type classification guide); the pattern's `tension_ratio` may say
otherwise. Hand stitching: twice its length (common practice, no source).
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from publish.cut.finishing import ruled
from publish.model.cutplan import ThreadPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.surd import Length

HAND_RATIO = Fraction(2)
ZIGZAG_RATIO = Fraction(7)
"""A zigzag stitch (304) uses 7 times its length: the same guide, from memory."""


def thread(pattern: Pattern, size: Size, draft: Draft) -> ThreadPlan:
    """Return the thread for every purpose, in inches."""
    ratio = pattern.sewing.tension_ratio
    motifs: dict[str, Fraction] = {}
    for place in draft.placements:
        by_hand = pattern.motifs[place.motif].method != "fusible"
        edge = ceil(draft.motifs[place.motif].perimeter)
        fabric = pattern.motifs[place.motif].fabric
        motifs[fabric] = motifs.get(fabric, Fraction(0)) + edge * (HAND_RATIO if by_hand else ratio)
    quilting = sum((Fraction(ceil(q.length)) for q in draft.quilting), Fraction(0))
    bound = (
        ruled(size.perimeter, pattern.measures.grid) if size.binding is not None else Fraction(0)
    )
    return ThreadPlan(
        piecing=Fraction(ceil(draft.seam_length * ratio + _making_up(size, ratio))),
        applique=sum(motifs.values(), Fraction(0)),
        quilting=quilting * ratio,
        binding=bound * (ratio + HAND_RATIO),
        ratio=ratio,
        motifs=motifs,
    )


def _making_up(size: Size, ratio: Fraction) -> Length:
    """Return the thread that makes a pillow: the hems of its two backs, or both sides of its
    zip, the seam all round, and a zigzag over the raw edges."""
    if size.pillow is None:
        return Fraction(0)
    allowance = 2 * size.pillow.seam
    round_ = 2 * (size.width + size.height + 2 * allowance)
    return ratio * (2 * (size.height + allowance) + round_) + ZIGZAG_RATIO * round_
