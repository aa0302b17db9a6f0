"""Whether the lists that say one thing twice say it alike.

In: a case. Out: notes.
Invariant: a size's pieces are the pieces of its fabrics; the pieces for backing, binding,
pillow back and sleeve are as many and as large as their own plans say.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from publish.model.cutplan import CutPlan, Piece
from publish.notes import Note, error
from publish.proof.case import Case, Code

CODES = {
    "P815": Code(
        "Two lists of pieces do not agree",
        "the maker cuts by one and sews by the other",
        "seven binding strips in the size's list and six in the binding's plan",
        "seven in both",
    ),
}

Cut = tuple[str, int, Fraction, Fraction]
"""Fabric, how many, and the two sides, the shorter first."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each piece that stands in one list and not in the other."""
    for size in case.keys:
        plan = case.plans[size]
        listed = Counter((p.letter, _cut(p)) for p in plan.pieces)
        bought = Counter((p.letter, _cut(p)) for f in plan.fabrics.values() for p in f.pieces)
        for letter in sorted({key for key, _ in (listed - bought) + (bought - listed)}):
            yield error(
                "P815",
                case.size_place(size),
                f"piece {letter} is not the same in the size's pieces and in its fabric's",
            )
        yield from _finishing(case, size, plan)


def _cut(piece: Piece) -> Cut:
    shorter, longer = sorted((piece.width, piece.length))
    return piece.fabric, piece.count, shorter, longer


def _finishing(case: Case, size: str, plan: CutPlan) -> Iterator[Note]:
    for purpose, wanted in _wanted(plan):
        found = [_cut(p) for p in plan.pieces if p.purpose == purpose]
        if found != [wanted]:
            yield error(
                "P815",
                case.size_place(size),
                f"the pieces cut for the {purpose} are not what its plan asks for",
                expected=_says(case, wanted),
                received=" and ".join(_says(case, cut) for cut in found) or "none",
            )


def _wanted(plan: CutPlan) -> Iterator[tuple[str, Cut]]:
    """Yield the purpose and the pieces of each finishing part."""
    if plan.backing is not None:
        back = plan.backing
        sides = sorted((back.panel_width, back.panel_length))
        yield "backing", (back.fabric, back.panels, sides[0], sides[1])
    if plan.binding is not None:
        bound = plan.binding
        usable = plan.fabrics[bound.fabric].usable_width if bound.fabric in plan.fabrics else None
        sides = sorted((bound.strip_width, bound.strip_length or usable or bound.strip_width))
        if bound.square is not None:
            sides = [bound.square, bound.square]
        yield "binding", (bound.fabric, bound.strips, sides[0], sides[1])
    if plan.pillow is not None:
        pillow = plan.pillow
        sides = sorted((pillow.piece_width, pillow.piece_length))
        yield "pillow back", (pillow.fabric, pillow.count, sides[0], sides[1])
    if plan.sleeve is not None:
        yield "sleeve", _cut(plan.sleeve)


def _says(case: Case, cut: Cut) -> str:
    fabric, count, shorter, longer = cut
    return f"{count} of {fabric}, {case.text(shorter)} × {case.text(longer)}"
