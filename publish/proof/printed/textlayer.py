"""Whether the numbers that a maker cuts and buys by can be read in the printed booklet.

In: a printed edition. Out: notes.
Invariant: every cut size and every length to buy stands in the text layer, so that it is
on paper, can be searched for, and is read out by a screen reader.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from publish.measures import Measures
from publish.model.cutplan import CutPlan
from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed
from publish.surd import Exact
from publish.units import YARD

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
    text, measures = "\n".join(printed.texts), printed.pattern.measures
    told: set[str] = set()
    for size, plan in printed.plans.items():
        yield from _counts(printed, size, plan, text)
        lengths = [*_numbers(plan), *_finished(printed, size, plan)]
        found = [(what, measures.text(exact), _pattern(measures, exact)) for what, exact in lengths]
        for what, said, pattern in (*found, *_bought(measures, plan)):
            if said in told or pattern.search(text):
                continue
            told.add(said)
            yield error(
                "P878",
                printed.pattern.place("sizes", size),
                f"{said}, {what}, is not in {printed.edition.name}",
            )


def _pattern(measures: Measures, length: Exact) -> re.Pattern[str]:
    """Return what finds a length to cut by in a text layer."""
    if measures.metric:
        return _plain(measures.text(length))
    return pattern_for(measures.near(length), "in")


def _plain(text: str) -> re.Pattern[str]:
    """Return what finds a decimal number with its unit."""
    return re.compile(rf"(?<![\d.]){_GAP.join(map(re.escape, text.split(' ')))}\b")


def _bought(measures: Measures, plan: CutPlan) -> Iterator[tuple[str, str, re.Pattern[str]]]:
    for fabric in plan.fabrics.values():
        if fabric.precut is not None:  # bought by the packet; its length need not be printed
            continue
        said = measures.bought(fabric.buy, fabric.buy_metric)
        pattern = _plain(said) if measures.metric else pattern_for(fabric.buy / YARD, "yd")
        yield f"what to buy of {fabric.fabric}", said, pattern


def _numbers(plan: CutPlan) -> Iterator[tuple[str, Fraction]]:
    for piece in plan.pieces:
        if piece.joined_from == 1:
            yield f"the width of piece {piece.letter}", piece.width
            yield f"the length of piece {piece.letter}", piece.length


def _finished(printed: Printed, key: str, plan: CutPlan) -> Iterator[tuple[str, Fraction]]:
    """Yield what is not cut as one piece: the top, backing, batting, binding, the form."""
    size = printed.sizes.get(key)
    if size is not None:
        yield f"the finished width of the {key}", size.width
        yield f"the finished height of the {key}", size.height
        if size.pillow is not None:
            yield "the pillow form", size.pillow.form
    for name, part in (("backing", plan.backing), ("batting", plan.batting)):
        if part is None:
            continue
        sides: tuple[tuple[str, Fraction], ...]
        sides = (("width", part.width), ("height", part.height))
        if name == "backing":  # of other lengths its pieces are told, which are cut larger
            sides = tuple(side for side in sides if printed.pattern.measures.exact(side[1]))
        yield from ((f"the {side} of the {name}", length) for side, length in sides)
    if plan.binding is not None and size is not None:
        yield "the length of the binding", plan.binding.length


def _counts(printed: Printed, size: str, plan: CutPlan, text: str) -> Iterator[Note]:
    """Yield a note for each piece whose number does not stand behind its size in the table."""
    if printed.manual is None:
        return
    measures = printed.pattern.measures
    behind = rf"{_GAP}\([^)]*\)" if measures.both else ""
    lying = [(f.lies(p), p) for f in plan.fabrics.values() for p in f.pieces]
    for (across, along), piece in lying:
        if piece.template or piece.shape != "rectangle":
            continue
        sides = _pattern(measures, across).pattern
        if across != along:
            sides += rf"{_GAP}×{_GAP}" + _pattern(measures, along).pattern
        counted = rf"{sides}{behind}(?:{_GAP}square)?{_GAP}{piece.count}(?!\d)"
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
