"""The glossary and the table of lengths told both ways.

In: the text of the whole booklet. Out: the section.
Invariant: a term is explained exactly when the booklet uses it, and the table lists
every length that the booklet prints in the unit that leads, each once.
"""

from __future__ import annotations

import re
from fractions import Fraction

from publish.measures import CM, MM, Measures, metric_text
from publish.model.words import Block, Row, Section, Table
from publish.units import fraction_text, maker_inches, number_in_words
from publish.words.en.lengths import Lengths, metric
from publish.write.terms import TERMS

_CENTIMETRES = re.compile(r"(?<![\d/.])(\d+(?:\.\d+)?) (cm|mm)\b")
_INCHES = re.compile(r"(?<![\d/.])(?<!unit )((?:\d+ )?\d+/\d+|\d+) in\b")
"""A length in inches; `unit 2 in the middle` holds none."""
_PAIRS = 4
"""Pairs of columns in the metric table."""


def section(text: str, tell: Lengths, table: bool = True) -> Section:
    """Return the glossary of a booklet, from all of its other text; with a `table` of lengths
    where it tells them both ways."""
    terms = used(text, tell.measures)
    blocks: list[Block] = []
    if terms:
        rows = tuple(Row((f"**{term}**", meaning)) for term, meaning in terms)
        blocks.append(Table("glossary", "Terms", ("Term", "Meaning"), rows))
    if not (table and tell.measures.both):
        return Section("glossary", "Glossary", tuple(blocks), "The words of this booklet.")
    whole = text + "\n" + "\n".join(meaning for _, meaning in terms)
    made = _metres if tell.measures.metric else _metric
    found = (centimetres if tell.measures.metric else lengths)(whole)
    if found:
        blocks.append(made(found))
    title = "Glossary and table of inches" if tell.measures.metric else "Glossary and metric table"
    lead = "The words and the measurements of this booklet."
    return Section("glossary", title, tuple(blocks), lead)


def used(text: str, measures: Measures) -> list[tuple[str, str]]:
    """Return the terms that a text uses, in alphabetical order, with their meanings."""
    found = [(t.name, t.told(measures)) for t in TERMS if re.search(t.form, text, re.IGNORECASE)]
    return sorted(found, key=lambda pair: pair[0].lower())


def lengths(text: str) -> list[Fraction]:
    """Return every length in inches that a text prints, shortest first, each once."""
    found = {number_in_words(m) for m in _INCHES.findall(text)}
    return sorted(n for n in found if n is not None)


def centimetres(text: str) -> list[Fraction]:
    """Return every length in centimetres or millimetres that a text prints, in inches, shortest
    first, each once."""
    found = {
        n * (CM if unit == "cm" else MM)
        for number, unit in _CENTIMETRES.findall(text)
        if (n := number_in_words(number)) is not None
    }
    return sorted(found)


def _metric(found: list[Fraction]) -> Table:
    return Table(
        "metric",
        "Inches and centimetres",
        ("in", "metric") * _PAIRS,
        _columns([(fraction_text(length), metric(length)) for length in found]),
        "rl" * _PAIRS,
        (
            "Metric lengths are rounded to the nearest millimetre, or to a tenth of one when "
            "they are "
            "very short. Work in inches or in centimetres, not in both.",
        ),
    )


def _metres(found: list[Fraction]) -> Table:
    return Table(
        "metric",
        "Centimetres and inches",
        ("metric", "in") * _PAIRS,
        _columns([(metric_text(v), fraction_text(maker_inches(v))) for v in found]),
        "rl" * _PAIRS,
        (
            "Inches are rounded to the nearest sixteenth. Work in centimetres or in inches, not "
            "in both.",
        ),
    )


def _columns(pairs: list[tuple[str, str]]) -> tuple[Row, ...]:
    """Set pairs in columns: down the first, then the next."""
    depth = -(-len(pairs) // _PAIRS)
    rows = []
    for at in range(depth):
        cells: list[str] = []
        for column in range(_PAIRS):
            place = at + column * depth
            cells += pairs[place] if place < len(pairs) else ("", "")
        rows.append(Row(tuple(cells)))
    return tuple(rows)
