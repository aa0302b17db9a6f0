"""Whether each fabric's plan can be cut: strips that fit, with every piece in them.

In: a case. Out: notes.
Invariant: a strip's pieces fit its depth and the usable width; the strips hold as many
of each piece as are cut, at the size they are cut; the plan is as long as its strips.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from publish.model.cutplan import Cut, FabricPlan, Piece, Strip
from publish.notes import Note, error
from publish.proof.case import Case, Code

CODES = {
    "P831": Code(
        "A strip holds more than its width or depth",
        "the last piece cannot be cut",
        "41 in of pieces in a strip across 40 in",
        "40 in or less in each strip",
    ),
    "P832": Code(
        "The strips do not hold the pieces that are cut",
        "a piece has no cloth",
        "16 squares in the strips and 18 to cut",
        "as many in the strips as are cut",
    ),
    "P833": Code(
        "A plan's length is not the sum of its strips",
        "too little is bought",
        "strips of 10 and 12 in, and a plan of 20 in",
        "22 in",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each plan that cannot be cut as it says."""
    for size, fabric, plan in case.fabric_plans():
        for strip in plan.strips:
            yield from _fits(case, fabric, plan, strip)
        yield from _holds(case, size, fabric, plan)
        length = sum((s.depth * s.count for s in plan.strips), Fraction(0))
        if length != plan.length:
            yield error(
                "P833",
                case.size_place(size),
                f"the length of the {case.name(fabric)} plan is not the sum of its strips",
                expected=case.text(length),
                received=case.text(plan.length),
            )


def _fits(case: Case, fabric: str, plan: FabricPlan, strip: Strip) -> Iterator[Note]:
    place = case.pattern.place("fabrics", fabric, "usable_width")
    letters = ", ".join(c.letter for c in strip.held)
    if strip.used > plan.usable_width:
        yield error(
            "P831",
            place,
            f"a strip of {case.name(fabric)} ({letters}) is wider than the fabric",
            expected=f"at most {case.text(plan.usable_width)}",
            received=case.text(strip.used),
            help="use a wider fabric, or correct usable_width",
        )
    yield from _deep(case, fabric, strip)
    for section in strip.sections:
        taken = sum((s.depth * s.count for s in section.strips), Fraction(0))
        for words, most, has in (
            ("strips are deeper than it", strip.depth, taken),
            ("pieces are wider than it", section.width, max(s.used for s in section.strips)),
        ):
            if has > most:
                letters = ", ".join(c.letter for s in section.strips for c in s.held)
                yield error(
                    "P831",
                    place,
                    f"a section of {case.name(fabric)} ({letters}): its {words}",
                    expected=f"at most {case.text(most)}",
                    received=case.text(has),
                )
        for inner in section.strips:
            yield from _deep(case, fabric, inner)


def _deep(case: Case, fabric: str, strip: Strip) -> Iterator[Note]:
    place = case.pattern.place("fabrics", fabric, "usable_width")
    for cut in strip.cuts:
        if cut.along > strip.depth:
            yield error(
                "P831",
                place,
                f"piece {cut.letter} is longer than its strip of {case.name(fabric)}",
                expected=f"at most {case.text(strip.depth)}",
                received=case.text(cut.along),
            )


def _holds(case: Case, size: str, fabric: str, plan: FabricPlan) -> Iterator[Note]:
    pieces = {p.letter: p for p in plan.pieces}
    held: Counter[str] = Counter()
    for strip in plan.strips:
        for cut in strip.held:
            held[cut.letter] += cut.count * strip.count
            piece = pieces.get(cut.letter)
            if piece is not None and not _makes(piece, cut, case.seam):
                yield error(
                    "P832",
                    case.size_place(size),
                    f"piece {cut.letter} stands in the {case.name(fabric)} plan at another size",
                    expected=f"{case.text(piece.width)} × {case.text(piece.length)}",
                    received=f"{case.text(cut.across)} × {case.text(cut.along)}",
                )
    wanted = {p.letter: p.count * p.joined_from for p in plan.pieces}
    for letter in sorted({*held, *wanted}):
        if held[letter] != wanted.get(letter, 0):
            yield error(
                "P832",
                case.size_place(size),
                f"the {case.name(fabric)} plan holds the wrong number of piece {letter}",
                expected=str(wanted.get(letter, 0)),
                received=str(held[letter]),
            )


def _makes(piece: Piece, cut: Cut, seam: Fraction) -> bool:
    """Return whether a cut is the piece, or one of the lengths that are joined for it."""
    if piece.joined_from > 1:
        narrow, whole = sorted((piece.width, piece.length))
        each = cut.across if cut.along == narrow else cut.along
        joined = each * piece.joined_from - 2 * seam * (piece.joined_from - 1)
        return narrow in (cut.across, cut.along) and joined >= whole
    ways = [(piece.width, piece.length)]
    if piece.may_turn:
        ways.append((piece.length, piece.width))
    return (cut.across, cut.along) in ways
