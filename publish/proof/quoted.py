"""Whether every length in the booklet's words is one that the stages computed.

In: a case. Out: notes.
Invariant: a length with a unit equals a settled length of the sizes its passage is about,
or is one of the trade's own figures below; anything else is a warning that names the
nearest settled length, since a maker would measure it out.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from publish.notes import Note, warning
from publish.proof.case import Case, Code
from publish.proof.lengths import NEAR, Said, Settled, said, settled
from publish.proof.words import Passage, passages
from publish.surd import Exact
from publish.units import (
    INCH_IN_MM,
    UNITS,
    YARD,
    decimal_text,
    fraction_text,
    maker_inches,
    parse_length,
)

CODES = {
    "P861": Code(
        "A length in the words matches no computed length", "the maker may cut or sew to it"
    ),
}

_PRACTICE = {
    "1/16": "a mark further off is worth doing again",
    "1/8": "the most between two hand stitches",
    "3/16": "left round fused shapes",
    "1/4": "raw edge left across a trimmed corner; the usual seam",
    "1/2": "basting inside a raw edge; turning ahead of the needle; seam of a joined backing",
    "1": "the check square; a marked inch on a ruler",
    "4": "between rows of basting",
    "6": "binding left loose before the first stitch",
    "10": "edge left open for the closing join",
    "18": "hand-sewing thread",
}
PRACTICE = frozenset(Fraction(*map(int, n.split("/"))) for n in _PRACTICE)
"""Inches that the booklet may name without computing them: common practice."""
PRACTICE_METRIC = frozenset(
    parse_length(text)
    for text in ("5 cm", "1.5 mm", "2.5 mm", "3 mm", "4 mm", "45 mm", "200 m", "59 m")
)
"""Inches: the check bar, stitch lengths, a rotary blade, a spool of thread, a bobbin of it."""
PRACTICE_YARDS = frozenset({64 * YARD})
"""Inches: the thread on a full bobbin."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each length in the words that nothing accounts for."""
    known = {key: settled(case, (key,)) for key in case.keys}
    judged: dict[tuple[tuple[str, ...], str], bool] = {}
    told: set[tuple[str, str]] = set()
    for passage in passages(case.manual):
        keys = tuple(k for k in passage.sizes if k in known) or case.keys
        for length in said(passage.text):
            if (keys, length.text) not in judged:
                judged[keys, length.text] = _accounted(length, *_union(known, keys))
            if judged[keys, length.text] or (passage.where, length.text) in told:
                continue
            told.add((passage.where, length.text))
            yield _note(case, passage, length, _union(known, keys)[0])


def _union(known: Mapping[str, Settled], keys: tuple[str, ...]) -> Settled:
    exact = {v for k in keys for v in known[k][0]}
    return exact, {v for k in keys for v in known[k][1]}


def _accounted(length: Said, exact: set[Exact], curved: set[float]) -> bool:
    value, unit = length.inches, length.unit
    if unit in ("mm", "cm", "m"):
        number = length.text.split(" ")[0]
        places = len(number.partition(".")[2])
        shown = {_metric(v, unit, places) for v in exact | PRACTICE}
        last = float(Fraction(1, 10**places) * UNITS[unit])
        near = any(abs(float(value) - v) <= last for v in curved)
        return number in shown or near or value in PRACTICE_METRIC
    if unit == "yd":
        return value in exact | PRACTICE_YARDS or any(_run(float(value), v) for v in curved)
    return value in exact | PRACTICE or any(abs(float(value) - v) <= NEAR for v in curved)


def _run(told: float, length: float) -> bool:
    """Return whether a run of stitching is told in the nearest quarter yard, at least one,
    or in whole yards that hold it."""
    quarter = float(YARD) / 4
    nearest = abs(told - length) <= quarter / 2 or (told == quarter and length < quarter)
    return nearest or (told % YARD == 0 and 0 <= told - length < YARD)


def _number(inches: Exact, unit: str) -> str:
    if unit in ("in", "ft", "yd"):
        return fraction_text(maker_inches(inches) / UNITS[unit])
    return _metric(inches, unit, {"mm": 0, "cm": 1, "m": 2}[unit])


def _metric(inches: Exact, unit: str, places: int) -> str:
    scale = {"mm": 1, "cm": 10, "m": 1000}[unit]
    return decimal_text(inches * INCH_IN_MM / scale, places)


def _note(case: Case, passage: Passage, length: Said, exact: set[Exact]) -> Note:
    nearest = min(exact, key=lambda v: (abs(v - length.inches), v))
    perhaps = f"{_number(nearest, length.unit)} {length.unit}"
    return warning(
        "P861", case.pattern.place("steps", passage.section),
        f"{length.text} in {passage.where} matches no computed length",
        expected=f"perhaps {perhaps}", received=length.text,
        help="use the computed value in the text instead of typing it",
    )  # fmt: skip
