"""Whether a fabric is cut large before small, and whether what is told as left is there.

In: a case. Out: notes.
Invariant: strips with pieces longer than the width come first, the longest of them first,
then strips by their largest piece; what is left is reckoned again from the strips, the
purchases and the allowances.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from publish.model.cutplan import FabricPlan, Strip
from publish.notes import Note, error
from publish.proof.case import Case, Code

CODES = {
    "P897": Code(
        "A fabric is not cut large before small",
        "after a slip, the large pieces no longer fit what is left",
        "thirteen squares of 3 in, and then a border 57 in long",
        "the border first",
    ),
    "P898": Code(
        "The piece told as left is not the largest that is left",
        "the maker counts on cloth that is not there, or throws a good piece away",
        "`A piece of 12 × 28 in is left`, where sections take 10 in of the 12",
        "the largest piece that no strip and no allowance takes",
    ),
}

Size = tuple[Fraction, Fraction]

LEAST = 5
"""Inches each way from which on a piece is worth keeping. Common practice, no source."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each plan out of order, and for each wrong piece left."""
    for size, fabric, plan in case.fabric_plans():
        yield from _order(case, size, fabric, plan)
        if plan.precut is None:
            yield from _left(case, size, fabric, plan)


def _order(case: Case, size: str, fabric: str, plan: FabricPlan) -> Iterator[Note]:
    for before, after in pairwise(plan.strips):
        if _large(after, plan.usable_width) > _large(before, plan.usable_width):
            letters = [", ".join(c.letter for c in strip.held) for strip in (after, before)]
            yield error(
                "P897",
                case.size_place(size),
                f"{case.name(fabric)} is not cut large before small",
                expected=f"the strip of {letters[0]} before that of {letters[1]}",
                received=f"the strip of {letters[1]} first",
            )


def _large(strip: Strip, width: Fraction) -> Size:
    """Return a strip's longest piece, where it is longer than the width, and its largest."""
    longest = max((c.along for c in strip.held), default=Fraction(0))
    area = max((c.across * c.along for c in strip.held), default=Fraction(0))
    return (longest, Fraction(0)) if longest > width else (Fraction(0), area)


def _left(case: Case, size: str, fabric: str, plan: FabricPlan) -> Iterator[Note]:
    found = [plan.left] if plan.left is not None else []
    kept = [one for one in _remainders(case, fabric, plan) if min(one) >= LEAST]
    largest = max((a * b for a, b in kept), default=Fraction(0))
    there = all(one in kept for one in found)
    if not there or sum(a * b for a, b in found) != largest:
        best = max(kept, key=lambda one: (one[0] * one[1], one), default=None)
        yield error(
            "P898",
            case.size_place(size),
            f"what is left of {case.name(fabric)} is told wrong",
            expected=_told(case, best),
            received=_told(case, plan.left),
        )


def _remainders(case: Case, fabric: str, plan: FabricPlan) -> Iterator[Size]:
    """Yield every rectangle that the cuts leave, across the fabric first."""
    cloth, sewing = case.pattern.fabrics.get(fabric), case.pattern.sewing
    shrinkage = Fraction(0) if cloth is None else cloth.shrinkage
    length = min(plan.buy, plan.buy_metric) * (1 - shrinkage)
    length -= sewing.straightening + sewing.mis_cut
    for strip in plan.strips:
        length -= strip.count * (strip.depth + sewing.squaring)
        yield from _of_strip(strip, plan.usable_width)
    yield plan.usable_width, length


def _of_strip(strip: Strip, width: Fraction) -> Iterator[Size]:
    yield width - strip.used, strip.depth
    for section in strip.sections:
        rest = strip.depth
        for inner in section.strips:
            rest -= inner.depth * inner.count
            yield from _of_strip(inner, section.width)
        yield section.width, rest


def _told(case: Case, size: Size | None) -> str:
    return "nothing worth keeping" if size is None else " × ".join(map(case.text, size))
