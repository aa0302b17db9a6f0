"""Whether units measure in the steps what they measure in the draft.

In: a case. Out: notes.
Invariant: a step that makes a unit tells no size but that unit's.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from publish.model.draft import Unit
from publish.notes import Note, warning
from publish.proof.booklet.claims import Told, letters, sentences, step_place, told
from publish.proof.booklet.lengths import PRACTICE, Said, said
from publish.proof.case import Case
from publish.proof.values.sewn_sizes import as_sewn
from publish.surd import Surd

_RESULT = re.compile(r"\bmeasures?\b|\beach is\b|\btrim (?:it|each|each unit) to\b", re.IGNORECASE)
_SMALL = Fraction(1, 2)
"""Inches: what a step may say beside a measure: a tolerance, a seam, an allowance."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each size told of a unit, a row or the top that is not its own."""
    for one in told(case):
        found = [note for size in one.sizes for note in _at(case, one, size)]
        yield from dict.fromkeys(found)  # sizes that are told in one say a slip once


def _at(case: Case, one: Told, size: str) -> Iterator[Note]:
    for sentence in sentences(one.words):
        if not letters(case, sentence) or "measure" in sentence.lower():
            yield from _judged(case, one, size, sentence)


def _judged(case: Case, one: Told, size: str, sentence: str) -> Iterator[Note]:
    lengths = [length for length in said(sentence) if length.unit in case.units]
    if not lengths:
        return
    known = {as_sewn(case, size, unit) for unit in _made(case, one, size, sentence)}
    if any(not (isinstance(v, Surd) or case.exact(v)) for pair in known for v in pair):
        return  # told as the pieces are cut add up; the rehearsal holds that against the model
    pairs = {(case.near(wide), case.near(high)) for wide, high in known}
    if not pairs:
        return
    for text in _wrong(case, sentence, lengths, pairs):
        yield warning(
            "P826",
            step_place(case, one),
            f"{text} in {one.where} is not what is measured there",
            expected=" or ".join(_told(case, pair) for pair in sorted(pairs)),
            received=text,
        )


def _told(case: Case, pair: tuple[Fraction, Fraction]) -> str:
    wide, high = map(case.text, pair)
    return f"{wide} square" if wide == high else f"{wide} × {high}"


def _wrong(
    case: Case, sentence: str, lengths: list[Said], pairs: set[tuple[Fraction, Fraction]]
) -> Iterator[str]:
    """Yield what a sentence says of none of these sizes: a side, or two sides together."""
    sides = {side for pair in pairs for side in pair}
    either = pairs | {pair[::-1] for pair in pairs}
    practice = {
        v for v in case.practice(PRACTICE) if v <= _SMALL or "measure" not in sentence.lower()
    }
    practice |= {case.seam, 2 * case.seam}
    for first, second in zip(lengths, [*lengths[1:], None], strict=True):
        together = second is not None and f"{first.text} × {second.text}" in sentence
        alone = rf"(?<![\d./])(?<!\d ){re.escape(first.text)}"
        square = re.search(rf"{alone}(?: \([^)]*\))? square", sentence)
        if first.inches not in sides | practice:
            yield first.text
        elif together and second is not None and second.inches in sides:
            if (first.inches, second.inches) not in either:
                yield f"{first.text} × {second.text}"
        elif square and first.inches not in practice and (first.inches,) * 2 not in pairs:
            yield f"{first.text} square"


def _made(case: Case, one: Told, size: str, sentence: str) -> Iterator[Unit]:
    """Yield the units that a step on foundations makes, if the sentence tells how they come
    out; what stands for operations is held against them."""
    if one.section.key.startswith("foundation") and _RESULT.search(sentence):
        start = f"{one.section.key}-"
        units = case.drafts[size].assembly.outermost_first()
        yield from (u for u in units if one.step.key == start + _slug(u.kind))


def _slug(kind: str) -> str:
    return "-".join(re.findall(r"[a-z0-9]+", kind.lower()))
