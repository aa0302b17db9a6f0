"""Whether the designer's own words of a step agree with the operations that it stands for.

In: a case with its making. Out: notes.
Invariant: only her words are read, never those that were made from the operations; a letter,
a length or a count in them is one that the step's own operations take, leave or tell.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import fields
from fractions import Fraction

from publish.notes import Note, warning
from publish.operations.borders import MeasureTop
from publish.operations.operation import Moment
from publish.operations.parts import Part
from publish.operations.rehearsal import counts_told, lengths_told, values_told
from publish.proof.booklet import prose_sizes
from publish.proof.booklet.claims import COUNT, LETTER, Told, fragments, number, step_place, told
from publish.proof.booklet.lengths import PRACTICE, said
from publish.proof.case import Case
from publish.surd import Surd
from publish.words import language
from publish.words.values import Count, Length


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each letter and length that is not the operations' own."""
    for one in told(case):
        if one.step.own and one.step.covers:
            yield from _letters(case, one)
            yield from _lengths(case, one)
            yield from _counts(case, one)
            moments = {size: moments_of(case, one, size) for size in one.sizes}
            yield from prose_sizes.check(case, one, moments)


def moments_of(case: Case, one: Told, size: str) -> list[Moment]:
    """Return the operations that a step stands for, as they were at a size."""
    made = case.making.sizes.get(size)
    return list(made.covering(one.step.covers)) if made is not None else []


def _letters(case: Case, one: Told) -> Iterator[Note]:
    for text, sizes in fragments(case, one.words, one.sizes):
        known = {
            part.key.split()[-1]
            for size in sizes
            for moment in moments_of(case, one, size)
            for part in _parts(moment)
        }
        for letter in sorted(set(LETTER.findall(text)) - known):
            yield warning(
                "P804",
                step_place(case, one),
                f"{one.where} names piece {letter}, which its work does not take",
                expected=" or ".join(sorted(k for k in known if k.isupper())),
                received=letter,
            )


def _lengths(case: Case, one: Told) -> Iterator[Note]:
    for text, sizes in fragments(case, one.words, one.sizes):
        known = {
            case.near(length) for size in sizes for length in _settled(moments_of(case, one, size))
        }
        lengths = [length for length in said(text) if length.unit in case.units]
        told, practice = _told_once(case, one, sizes), case.practice(PRACTICE)
        # What is usual may be added to what is told; it cannot stand in the place of it.
        usual = practice if told <= {length.inches for length in said(one.words)} else frozenset()
        for length in lengths:
            if length.inches in known | usual:
                continue
            yield warning(
                "P809",
                step_place(case, one),
                f"{length.text} in {one.where} is no length of what is done there",
                expected=" or ".join(map(case.text, sorted(known))),
                received=length.text,
                help="use the computed value in the text instead of typing it",
            )


def _told_once(case: Case, one: Told, sizes: Iterable[str]) -> set[Fraction]:
    """Return the lengths that the operations of a step tell whatever they are told with.

    A measure of the top is told one way or the other.
    """
    moments = [
        m
        for size in sizes
        for m in moments_of(case, one, size)
        if not isinstance(m.operation, MeasureTop)
    ]
    return {case.near(v.inches) for v in values_told(moments) if isinstance(v, Length)}


def _counts(case: Case, one: Told) -> Iterator[Note]:
    """A count with the noun of one that the operations tell."""
    for text, sizes in fragments(case, one.words, one.sizes):
        known: dict[str, set[int]] = {}
        for size in sizes:
            for count in counts_told(moments_of(case, one, size)):
                known.setdefault(count.noun, set()).add(count.number)
        for noun, numbers in known.items():
            one_, many = (language().value(Count(n, noun)).split(" ", 1)[1] for n in (1, 2))
            for word in re.findall(rf"({COUNT}) (?:{one_}|{many})\b", text, re.IGNORECASE):
                if number(word) not in numbers:
                    yield warning(
                        "P808",
                        step_place(case, one),
                        f"the number of {many} in {one.where} is not what is needed",
                        expected=" or ".join(map(str, sorted(numbers))),
                        received=word,
                    )


def _parts(moment: Moment) -> Iterator[Part]:
    for part, _ in (*moment.took, *moment.gave):
        yield part


def _settled(moments: Iterable[Moment]) -> Iterator[Fraction | Surd]:
    """Yield what operations tell, their own operands, and what their parts measure."""
    moments = list(moments)
    yield from lengths_told(moments)
    for moment in moments:
        for field in fields(moment.operation):
            value = getattr(moment.operation, field.name)
            if isinstance(value, Fraction | Surd):
                yield value
        left = (part for part, _ in moment.gave)
        for part in left if moment.operation.trims else _parts(moment):
            for edge in part.edges:
                yield from (edge.length.exact, edge.length.told)
