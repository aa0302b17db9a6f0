"""The glossary and the metric table.

In: the text of the whole booklet. Out: the section.
Invariant: a term is explained exactly when the booklet uses it, and the metric table lists
every length in inches that the booklet prints, each once.
"""

from __future__ import annotations

import re
from fractions import Fraction

from publish.model.words import Block, Row, Section, Table
from publish.units import fraction_text, number_in_words
from publish.words.en.phrase import metric
from publish.write.terms import TERMS

_INCHES = re.compile(r"(?<![\d/.])(?<!unit )((?:\d+ )?\d+/\d+|\d+) in\b")
"""A length in inches; `unit 2 in the middle` holds none."""
_PAIRS = 4
"""Pairs of columns in the metric table."""


def section(text: str) -> Section:
    """Return the glossary of a booklet, from all of its other text."""
    terms = used(text)
    blocks: list[Block] = []
    if terms:
        rows = tuple(Row((f"**{term}**", meaning)) for term, meaning in terms)
        blocks.append(Table("glossary", "Terms", ("Term", "Meaning"), rows))
    found = lengths(text + "\n" + "\n".join(meaning for _, meaning in terms))
    if found:
        blocks.append(_metric(found))
    lead = "The words and the measurements of this booklet."
    return Section("glossary", "Glossary and metric table", tuple(blocks), lead)


def used(text: str) -> list[tuple[str, str]]:
    """Return the terms that a text uses, in alphabetical order, with their meanings."""
    found = [(t.name, t.meaning) for t in TERMS if re.search(t.form, text, re.IGNORECASE)]
    return sorted(found, key=lambda pair: pair[0].lower())


def lengths(text: str) -> list[Fraction]:
    """Return every length in inches that a text prints, shortest first, each once."""
    found = {number_in_words(m) for m in _INCHES.findall(text)}
    return sorted(n for n in found if n is not None)


def _metric(found: list[Fraction]) -> Table:
    """Set the lengths in columns: down the first pair, then the next."""
    depth = -(-len(found) // _PAIRS)
    rows = []
    for at in range(depth):
        cells: list[str] = []
        for pair in range(_PAIRS):
            place = at + pair * depth
            length = found[place] if place < len(found) else None
            cells += ["", ""] if length is None else [fraction_text(length), metric(length)]
        rows.append(Row(tuple(cells)))
    return Table(
        "metric",
        "Inches and centimetres",
        ("in", "metric") * _PAIRS,
        tuple(rows),
        "rl" * _PAIRS,
        (
            "Metric lengths are rounded to the nearest millimetre, or to a tenth of one when "
            "they are "
            "very short. Work in inches or in centimetres, not in both.",
        ),
    )
