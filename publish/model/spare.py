"""Which strips of a border can be left long until the top has been measured.

In: a size's cutting plan. Out: letters.
Invariant: a strip is left long only where it is alone in its strip of fabric, so that
nothing else is cut from what is left of it.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import CutPlan, Strip

ROOM = 1
"""Inches beyond the cut length from which on it is worth leaving a strip long."""


def left_long(plan: CutPlan) -> frozenset[str]:
    """Return the letters of border strips that are all cut alone, with room to spare."""
    border = {p.letter for p in plan.pieces if p.purpose.startswith("border ")}
    found: dict[str, bool] = {}
    for fabric in plan.fabrics.values():
        for strip in fabric.strips:
            for cut in strip.held:
                if cut.letter in border:
                    alone = long_alone(strip, fabric.usable_width)
                    found[cut.letter] = found.get(cut.letter, True) and alone
    return frozenset(letter for letter, alone in found.items() if alone)


def long_alone(strip: Strip, usable_width: Fraction) -> bool:
    """Return whether a strip of fabric holds one piece, shorter than it by `ROOM` or more."""
    if len(strip.held) != 1 or strip.placements:
        return False
    first = strip.held[0]
    return first.count == 1 and first.along == strip.depth and first.across + ROOM <= usable_width
