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

HAND_RATIO = Fraction(2)


def thread(pattern: Pattern, size: Size, draft: Draft) -> ThreadPlan:
    """Return the thread for every purpose, in inches."""
    ratio = pattern.sewing.tension_ratio
    applique = Fraction(0)
    for place in draft.placements:
        by_hand = pattern.motifs[place.motif].method != "fusible"
        edge = ceil(draft.motifs[place.motif].perimeter)
        applique += edge * (HAND_RATIO if by_hand else ratio)
    quilting = sum((Fraction(ceil(q.length)) for q in draft.quilting), Fraction(0))
    bound = ruled(size.perimeter) if size.binding is not None else Fraction(0)
    return ThreadPlan(
        piecing=Fraction(ceil(draft.seam_length * ratio)),
        applique=applique,
        quilting=quilting * ratio,
        binding=bound * (ratio + HAND_RATIO),
        ratio=ratio,
    )
