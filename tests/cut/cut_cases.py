"""Sizes of the worked-out pattern, varied, and their plans.

In: changes to `reedmace`. Out: patterns, sizes, `CutPlan`s.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import reedmace

from publish import cut
from publish.model.cutplan import CutPlan
from publish.model.pattern import BorderSpec, Pattern
from publish.model.size import Size

F = Fraction


def pattern(**fabrics: dict[str, object]) -> Pattern:
    """Return the pattern with fields of some of its fabrics changed, by key."""
    base = reedmace.pattern()
    changed = {k: replace(f, **fabrics.get(k, {})) for k, f in base.fabrics.items()}
    return replace(base, fabrics=changed)


def framed(width: int, height: int, border: int = 4, fabric: str = "sandbar", **changes) -> Size:
    """Return a size whose border makes it `width` by `height` in."""
    spec = BorderSpec(F(border), fabric)
    return replace(
        reedmace.size(),
        borders=(spec,),
        inner_width=F(width - 2 * border),
        inner_height=F(height - 2 * border),
        width=F(width),
        height=F(height),
        **changes,
    )


def planned(made: Pattern, size: Size) -> CutPlan:
    """Return the plan of one size, which must be cut without an error."""
    plans, notes = cut.cut(made, {"mini": size}, {"mini": reedmace.draft()})
    assert not [n for n in notes if n.code != "C403"], notes
    return plans["mini"]


def cuts(plan: CutPlan, purpose: str):
    """Return every cut of a purpose's piece, with its strip."""
    piece = plan.piece(purpose)
    return [
        (c, s)
        for s in plan.fabrics[piece.fabric].strips
        for c in s.cuts
        if c.letter == piece.letter
    ]
