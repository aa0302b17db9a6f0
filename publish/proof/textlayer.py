"""Whether the numbers that a maker cuts and buys by can be read in the printed booklet.

In: a printed edition. Out: notes.
Invariant: every cut size and every length to buy stands in the text layer, so that it is
on paper, can be searched for, and is read out by a screen reader.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from publish.model.cutplan import CutPlan
from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.paper import Printed
from publish.units import YARD, fraction_text

CODES = {
    "P878": Code("A number to cut or buy by is not in the booklet", "the maker has to guess"),
}
_GAP = "[\\s\u00a0\u2009\u202f]*"


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each cut size or length to buy that the text layer lacks."""
    if not printed.edition.name.startswith("booklet"):
        return
    text = "\n".join(printed.texts)
    told: set[str] = set()
    for size, plan in printed.plans.items():
        for what, value, unit in _numbers(plan):
            said = f"{fraction_text(value)} {unit}"
            if said in told or pattern_for(value, unit).search(text):
                continue
            told.add(said)
            yield error(
                "P878", printed.pattern.place("sizes", size),
                f"{said}, {what}, is not in {printed.edition.name}",
            )  # fmt: skip


def _numbers(plan: CutPlan) -> Iterator[tuple[str, Fraction, str]]:
    for piece in plan.pieces:
        if piece.joined_from == 1:
            yield f"the width of piece {piece.letter}", piece.width, "in"
            yield f"the length of piece {piece.letter}", piece.length, "in"
    for fabric in plan.fabrics.values():
        if fabric.precut is not None:  # bought by the packet; its yards need not be printed
            continue
        yield f"what to buy of {fabric.fabric}", fabric.buy / YARD, "yd"


def pattern_for(value: Fraction, unit: str) -> re.Pattern[str]:
    """Return what finds a value in a text layer, however its fraction was set."""
    whole, rest = divmod(value, 1)
    parts = [str(whole)] if whole or not rest else []
    if rest:
        parts.append(f"{rest.numerator}{_GAP}[/⁄]{_GAP}{rest.denominator}")
    return re.compile(rf"(?<![\d/⁄.]){_GAP.join(parts)}{_GAP}{unit}\b")
