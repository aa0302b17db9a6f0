"""Whether a metric length in parentheses is the inches before it.

In: a case. Out: notes.
Invariant: where metric leads, `47 cm (18 1/2 in)` has the nearest sixteenth of an inch
behind it; else `18 1/2 in (47.0 cm)` and `1/4 in (6 mm)` follow from 1 in = 2.54 cm exactly,
rounded to the places shown. Yards and metres are two purchases of one need, each rounded
up by its own step, so they may differ by less than the larger step.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from publish.measures import CM, MM
from publish.notes import Note, error
from publish.proof.booklet.claims import said_at
from publish.proof.booklet.lengths import NUMBER, written
from publish.proof.booklet.words import passages
from publish.proof.case import Case, Code
from publish.units import (
    INCH_IN_MM,
    SIXTEENTH,
    YARD,
    fraction_text,
    maker_inches,
    number_in_words,
    parse_number,
)

CODES = {
    "P862": Code(
        "A metric length is not the inches beside it",
        "makers with a metric ruler cut it wrong",
        "`18 1/2 in (46.9 cm)`",
        "`18 1/2 in (47.0 cm)`",
    ),
}

_METRIC = r"\d+(?:\.\d+)?"
_LENGTH = re.compile(rf"(about )?({NUMBER}) in \(({_METRIC}) (mm|cm)\)")
_RECTANGLE = re.compile(
    rf"(about )?({NUMBER}) in × ({NUMBER}) in \(({_METRIC}) (mm|cm) × ({_METRIC}) (mm|cm)\)"
)
_BEHIND = re.compile(rf"({_METRIC}) (mm|cm) \((?:about )?({NUMBER}) in\)")
_SIDES_BEHIND = re.compile(
    rf"({_METRIC}) (mm|cm) × ({_METRIC}) (mm|cm) \((?:about )?({NUMBER}) in"
    rf" × (?:about )?({NUMBER}) in\)"
)
_PURCHASE = re.compile(rf"({NUMBER}) yd \(({_METRIC}) m\)( less)?")


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each metric length that does not follow from its inches."""
    if case.measures.metric:
        yield from _behind(case)
        return
    for passage in passages(case.manual):
        for about, inches, metric, unit in _pairs(passage.text):
            right = _metric(inches, metric, unit)
            if metric != right and not (about and _rounded(inches, metric, unit)):
                yield error(
                    "P862",
                    said_at(case, passage),
                    f"a metric length in {passage.where} is not the inches beside it",
                    expected=f"{inches} in ({right} {unit})",
                    received=f"{inches} in ({metric} {unit})",
                )
        for yards, metres, less in _PURCHASE.findall(passage.text):
            if None in (number_in_words(yards), number_in_words(metres)):
                continue
            if not _same_need(case, yards, metres, saved=bool(less)):
                yield error(
                    "P862",
                    said_at(case, passage),
                    f"yards and metres in {passage.where} are not the same need",
                    received=f"{yards} yd ({metres} m)",
                )


def _behind(case: Case) -> Iterator[Note]:
    """Yield a note for each length in inches that does not follow from the metric before it."""
    for passage in passages(case.manual):
        for number, unit, inches in _inches_behind(passage.text):
            length = parse_number(number) * (CM if unit == "cm" else MM)
            right = fraction_text(maker_inches(length))
            if inches != right:
                yield error(
                    "P862",
                    said_at(case, passage),
                    f"a length in inches in {passage.where} is not the metric one beside it",
                    expected=f"{number} {unit} ({right} in)",
                    received=f"{number} {unit} ({inches} in)",
                )


def _inches_behind(text: str) -> Iterator[tuple[str, str, str]]:
    yield from ((a, u, i) for a, u, i in _BEHIND.findall(text) if number_in_words(i) is not None)
    for a, first, b, second, i, j in _SIDES_BEHIND.findall(text):
        yield from ((a, first, i), (b, second, j))


def _pairs(text: str) -> Iterator[tuple[str, str, str, str]]:
    yield from (f for f in _LENGTH.findall(text) if number_in_words(f[1]) is not None)
    for about, width, height, metric, unit, metric_height, unit_height in _RECTANGLE.findall(text):
        if number_in_words(width) is None or number_in_words(height) is None:
            continue
        yield about, width, metric, unit
        yield about, height, metric_height, unit_height


def _rounded(inches: str, metric: str, unit: str) -> bool:
    """Return whether inches said to be about it are the nearest sixteenth to a metric length,
    itself printed to a millimetre, or below 5 mm to a tenth."""
    millimetres = Fraction(metric) * (10 if unit == "cm" else 1)
    off = abs(parse_number(inches) * INCH_IN_MM - millimetres)
    return off <= (SIXTEENTH * INCH_IN_MM + 1) / 2


def _metric(inches: str, like: str, unit: str) -> str:
    places = len(like.partition(".")[2])
    return written(parse_number(inches), unit, places)


def _same_need(case: Case, yards: str, metres: str, *, saved: bool) -> bool:
    """Return whether two purchases may be of one need; of what is `saved`, the difference
    of two purchases, each rounded up, both steps may part them."""
    sewing = case.pattern.sewing
    steps = [sewing.purchase_step, sewing.metric_step]
    metre = 1000 / INCH_IN_MM
    whole = yards.isdigit() and metres.isdigit()
    if whole or (parse_number(yards) * 4).denominator == 1:
        # Thread in whole yards and whole metres; runs of quilting in quarter yards, and their
        # totals summed as told, in which each run may be off by half a step either way.
        runs = max(len(case.drafts[k].quilting) for k in case.keys)
        steps.append(YARD if whole else max(YARD / 4, runs * (YARD / 8 + metre / 20)))
    if whole:
        steps.append(metre)
    difference = parse_number(yards) * YARD - Fraction(metres) * metre
    return abs(difference) < (sum(steps[:2], Fraction(0)) if saved else max(steps))
