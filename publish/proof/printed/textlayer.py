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
from publish.proof.printed.paper import Printed
from publish.units import YARD, fraction_text, maker_inches, on_ruler

CODES = {
    "P878": Code(
        "A number to cut or buy by is not in the booklet",
        "the maker has to guess",
        "a piece of 17 1/2 in, and no `17 1/2 in` on any page",
        "each size, count and length to buy in words",
    ),
}
_GAP = "[\\s\u00a0\u2009\u202f]*"


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each cut size or length to buy that the text layer lacks."""
    if not printed.edition.name.startswith("booklet"):
        return
    text = "\n".join(printed.texts)
    told: set[str] = set()
    for size, plan in printed.plans.items():
        yield from _counts(printed, size, plan, text)
        for what, exact, unit in (*_numbers(plan), *_finished(printed, size, plan)):
            value = maker_inches(exact) if unit == "in" else exact
            said = f"{fraction_text(value)} {unit}"
            if said in told or pattern_for(value, unit).search(text):
                continue
            told.add(said)
            yield error(
                "P878",
                printed.pattern.place("sizes", size),
                f"{said}, {what}, is not in {printed.edition.name}",
            )


def _numbers(plan: CutPlan) -> Iterator[tuple[str, Fraction, str]]:
    for piece in plan.pieces:
        if piece.joined_from == 1:
            yield f"the width of piece {piece.letter}", piece.width, "in"
            yield f"the length of piece {piece.letter}", piece.length, "in"
    for fabric in plan.fabrics.values():
        if fabric.precut is not None:  # bought by the packet; its yards need not be printed
            continue
        yield f"what to buy of {fabric.fabric}", fabric.buy / YARD, "yd"


def _finished(printed: Printed, key: str, plan: CutPlan) -> Iterator[tuple[str, Fraction, str]]:
    """Yield what is not cut as one piece: the top, backing, batting, binding, the form."""
    size = printed.sizes.get(key)
    if size is not None:
        yield f"the finished width of the {key}", size.width, "in"
        yield f"the finished height of the {key}", size.height, "in"
        if size.pillow is not None:
            yield "the pillow form", size.pillow.form, "in"
    for name, part in (("backing", plan.backing), ("batting", plan.batting)):
        if part is None:
            continue
        sides: tuple[tuple[str, Fraction], ...]
        sides = (("width", part.width), ("height", part.height))
        if name == "backing":  # of other lengths its pieces are told, which are cut larger
            sides = tuple(side for side in sides if on_ruler(side[1]))
        yield from ((f"the {side} of the {name}", length, "in") for side, length in sides)
    if plan.binding is not None and size is not None:
        yield "the length of the binding", plan.binding.length, "in"


def _counts(printed: Printed, size: str, plan: CutPlan, text: str) -> Iterator[Note]:
    """Yield a note for each piece whose number does not stand behind its size in the table."""
    if printed.manual is None:
        return
    lying = [(f.lies(p), p) for f in plan.fabrics.values() for p in f.pieces]
    for (across, along), piece in lying:
        if piece.template or piece.shape != "rectangle":
            continue
        sides = pattern_for(maker_inches(across), "in").pattern
        if across != along:
            sides += rf"{_GAP}×{_GAP}" + pattern_for(maker_inches(along), "in").pattern
        counted = rf"{sides}{_GAP}\([^)]*\)(?:{_GAP}square)?{_GAP}{piece.count}(?!\d)"
        if not re.search(counted, text):
            yield error(
                "P878",
                printed.pattern.place("sizes", size),
                f"how many of piece {piece.letter} are cut for the {size} is not in "
                f"{printed.edition.name}",
                expected=str(piece.count),
            )


def pattern_for(value: Fraction, unit: str) -> re.Pattern[str]:
    """Return what finds a value in a text layer, however its fraction was set."""
    whole, rest = divmod(value, 1)
    parts = [str(whole)] if whole or not rest else []
    if rest:
        parts.append(f"{rest.numerator}{_GAP}[/⁄]{_GAP}{rest.denominator}")
    return re.compile(rf"(?<![\d/⁄.]){_GAP.join(parts)}{_GAP}{unit}\b")
