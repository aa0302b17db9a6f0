"""Whether the lengths told with a piece's letter are that piece's.

In: a case. Out: notes.
Invariant: a length in a sentence that names pieces is a cut, finished or joined size of one
of them, or of the part they make, or one of the trade's own figures.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from publish.model.cutplan import CutPlan, Piece
from publish.notes import Note, warning
from publish.proof.booklet.claims import Told, fragments, letters, sentences, step_place, told
from publish.proof.booklet.lengths import PRACTICE, said, values
from publish.proof.case import Case, Code

CODES = {
    "P828": Code(
        "A length told of a piece is not that piece's",
        "the maker checks it and cuts it again",
        "`Lay the backing **L** down, 70 in square`, where L is joined to 72 in",
        "`Lay the backing **L** down, {{ each.backing }}`",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each length that belongs to another piece."""
    usual = case.practice(PRACTICE)
    for one in told(case):
        yield from _turned(case, one)
        for text in sentences(one.words):
            named = set(letters(case, text))
            if not named:
                continue
            for part, sizes in fragments(case, text, one.sizes):
                known = {case.near(v) for k in sizes for v in _known(case, k, named)}
                if not known:
                    continue
                for length in said(part):
                    if length.unit in case.units and length.inches not in known | usual:
                        which = " and ".join(sorted(named))
                        yield warning(
                            "P828",
                            step_place(case, one),
                            f"{length.text} in {one.where} is no length of {which}",
                            expected=" or ".join(case.text(v) for v in sorted(known)[-4:]),
                            received=length.text,
                        )


def _turned(case: Case, one: Told) -> Iterator[Note]:
    """A sentence that tells the turn-under with a length tells the motif's own."""
    widths = {m.turn_under for m in case.pattern.motifs.values() if m.method != "fusible"}
    for text in sentences(one.words):
        lengths = [length for length in said(text) if length.unit in case.units]
        if "turn-under" in text and lengths and widths.isdisjoint(v.inches for v in lengths):
            yield warning(
                "P828",
                step_place(case, one),
                f"the turn-under in {one.where} is not the motif's",
                expected=" or ".join(map(case.text, sorted(widths))),
                received=lengths[0].text,
            )


def _known(case: Case, size: str, named: set[str]) -> Iterator[Fraction]:
    plan = case.plans[size]
    for piece in plan.pieces:
        if piece.letter in named:
            yield from _of(case, size, plan, piece)


def _of(case: Case, size: str, plan: CutPlan, piece: Piece) -> Iterator[Fraction]:
    """Yield every length that a piece has, as it is cut, sewn and joined."""
    seam, sewing = case.seam, case.pattern.sewing
    parts: list[object] = [piece]
    if piece.purpose == "backing":
        parts.append(plan.backing)
    if piece.purpose == "binding":
        parts.append(plan.binding)
    if piece.purpose == "pillow back":
        parts += [plan.pillow, case.sizes[size].pillow]
    if piece.purpose.split()[0] == "motif":
        parts += [plan.motif_square, case.sizes[size].motif_span]
    parts += [case.sizes[size].sleeve if piece.purpose == "sleeve" else None]
    for part in parts:
        yield from (v for v in values(part) if isinstance(v, Fraction))
    for side in (piece.finished_width, piece.finished_length):
        if side is not None:
            yield from (side + seam, side + 2 * seam)
    for fabric in plan.fabrics.values():
        for strip in fabric.strips:
            for one in (strip, *(s for section in strip.sections for s in section.strips)):
                for cut in (c for c in one.cuts if c.letter == piece.letter):
                    yield from (cut.across, cut.along, one.depth, strip.depth)
            yield from (section.width for section in strip.sections)
    yield from (seam, 2 * seam, sewing.motif_margin, sewing.ground_margin)
    for made in plan.makings:
        if piece.letter in made.letters:
            yield from made.trim
