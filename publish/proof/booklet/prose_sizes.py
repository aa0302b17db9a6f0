"""Whether sizes and ways in the designer's own words are those of the operations she words.

In: the sentences of a step of hers, the moments of its operations. Out: notes.
Invariant: two sides told together are those of one thing that is taken, left or told there; a
measure taken one way is the top's that way; seams are pressed the ways that they are.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from itertools import zip_longest

from publish.notes import Note, warning
from publish.operations.borders import MeasureTop
from publish.operations.foundation_sections import PressSections
from publish.operations.joining import PressSeams
from publish.operations.on_point import PressDiagonalRow
from publish.operations.operation import Moment
from publish.operations.rehearsal import values_told
from publish.proof.booklet.claims import Told, fragments, sentences, step_place
from publish.proof.booklet.lengths import said
from publish.proof.case import Case, Code
from publish.words.values import Rectangle, Word

CODES = {
    "P826": Code(
        "A unit is told at a size that it does not have",
        "the maker unpicks a seam that was right",
        "`The half ground measures 18 1/2 in × 10 in.`, of two 10 in squares and a 1/4 in seam",
        "`The half ground measures 19 1/2 in × 10 in.`",
    ),
}

Pair = tuple[Fraction, Fraction]
_ACROSS = {"across": r"\bside to side\b|\bacross\b|\bwidth\b", "down": r"\btop to bottom\b"}
_PRESSING = (PressSeams, PressDiagonalRow, PressSections)
_WAYS = {
    "left": r"\bto the left\b",
    "right": r"\bto the right\b",
    "up": r"\bup(?:wards?)?\b",
    "down": r"\bdown(?:wards?)?\b",
    "open": r"\bopen\b",
}


def check(case: Case, one: Told, moments: dict[str, list[Moment]]) -> Iterator[Note]:
    """Yield a warning for each pair of sides, measure and way that is not the operations'."""
    for text, sizes in fragments(case, one.words, one.sizes):
        mine = [m for size in sizes for m in moments.get(size, ())]
        yield from _pairs(case, one, text, mine)
        yield from _measures(case, one, text, mine)
    for size in one.sizes:
        yield from _ways(case, one, moments.get(size, []))


def _pairs(case: Case, one: Told, text: str, moments: Sequence[Moment]) -> Iterator[Note]:
    """`19 1/2 in × 1 1/2 in`, `54 1/2 in square`."""
    known = set(_known(case, moments))
    for said_, pair in _told(case, text):
        if known and pair not in known and pair[::-1] not in known:
            yield warning(
                "P826",
                step_place(case, one),
                f"{said_} in {one.where} is not what is measured there",
                expected=" or ".join(sorted({_text(case, p) for p in known})),
                received=said_,
            )


def _told(case: Case, text: str) -> Iterator[tuple[str, Pair]]:
    lengths = [length for length in said(text) if length.unit in case.units]
    for first, second in zip_longest(lengths, lengths[1:]):
        if second is not None and f"{first.text} × {second.text}" in text:
            yield f"{first.text} × {second.text}", (first.inches, second.inches)
        elif re.search(
            rf"(?<![\d./×])(?<!\d )(?<!× ){re.escape(first.text)}(?: \([^)]*\))? square", text
        ):
            yield f"{first.text} square", (first.inches, first.inches)


def _known(case: Case, moments: Iterable[Moment]) -> Iterator[Pair]:
    for moment in moments:
        for value in values_told((moment,)):
            if isinstance(value, Rectangle):
                yield case.near(value.width), case.near(value.height)
        for part, _ in (*moment.took, *moment.gave):
            if part.edges:
                yield case.near(part.width.told), case.near(part.height.told)
                yield case.near(part.width.exact), case.near(part.height.exact)


def _text(case: Case, pair: Pair) -> str:
    wide, high = map(case.text, pair)
    return f"{wide} square" if wide == high else f"{wide} × {high}"


def _measures(case: Case, one: Told, text: str, moments: Sequence[Moment]) -> Iterator[Note]:
    """A measure from side to side is the width of the top, one from top to bottom its height."""
    for moment in (m for m in moments if isinstance(m.operation, MeasureTop)):
        assert isinstance(moment.operation, MeasureTop)
        top = moment.after(moment.operation.top)
        for sentence in sentences(text):
            ways = [w for w, form in _ACROSS.items() if re.search(form, sentence, re.IGNORECASE)]
            if len(ways) != 1 or "measure" not in sentence.lower():
                continue
            right = case.near((top.width if ways == ["across"] else top.height).told)
            for length in said(sentence):
                if length.unit in case.units and length.inches != right:
                    yield warning(
                        "P826",
                        step_place(case, one),
                        f"{length.text} in {one.where} is not what is measured there",
                        expected=case.text(right),
                        received=length.text,
                    )


def _ways(case: Case, one: Told, moments: Sequence[Moment]) -> Iterator[Note]:
    """Seams are pressed to all the sides that they are pressed to, and to no other."""
    pressing = [m for m in moments if isinstance(m.operation, _PRESSING)]
    right = {v.key for v in values_told(pressing) if isinstance(v, Word) and v.key in _WAYS}
    spoken = " ".join(s for s in sentences(one.words) if re.search(r"\bpress", s, re.IGNORECASE))
    named = {way for way, form in _WAYS.items() if re.search(form, spoken, re.IGNORECASE)}
    if right and named and named != right:
        yield warning(
            "P829",
            step_place(case, one),
            f"{one.where} presses seams the wrong way",
            expected=" and ".join(sorted(right)),
            received=" and ".join(sorted(named)),
        )
