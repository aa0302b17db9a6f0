"""The glossary and the table of lengths told both ways.

In: the text of the whole booklet. Out: the section.
Invariant: a term is explained exactly when the booklet uses it, and the table lists
every length that the booklet prints in the unit that leads, each once.
"""

from __future__ import annotations

import re
from fractions import Fraction

from publish.measures import CM, MM, metric_text
from publish.model.words import Block, Row, Section, Table
from publish.units import fraction_text, maker_inches, number_in_words
from publish.words import Language
from publish.words.lengths import metric
from publish.write.terms import Term, terms

_CENTIMETRES = re.compile(r"(?<![\d/.,])(\d+(?:[.,]\d+)?) (cm|mm)\b")
_INCHES = re.compile(r"(?<![\d/.])(?<!unit )((?:\d+ )?\d+/\d+|\d+) in\b")
"""A length in inches; `unit 2 in the middle` holds none."""
_PAIRS = 4
"""Pairs of columns in the metric table."""
_CHAPTER = "chapter-glossary"


def section(text: str, words: Language) -> Section:
    """Return the glossary of a booklet, from all of its other text; with a table of lengths
    where a booklet tells them both ways."""
    found, measures = used(text, words), words.measures
    blocks: list[Block] = []
    if found:
        rows = tuple(Row((f"**{term.name}**", term.meaning)) for term in found)
        head = tuple(words.text("table-terms", part=part) for part in ("term", "meaning"))
        blocks.append(Table("glossary", words.text("table-terms"), head, rows))
    if not measures.both:
        title, lead = (words.text(_CHAPTER, part=part) for part in ("", "lead"))
        return Section("glossary", title, tuple(blocks), lead)
    whole = text + "\n" + "\n".join(term.meaning for term in found)
    told = (centimetres if measures.metric else lengths)(whole)
    if told:
        blocks.append((_metres if measures.metric else _metric)(told, words))
    title = words.text(_CHAPTER, part="inches" if measures.metric else "metric")
    lead = words.text(_CHAPTER, part="lead-both")
    return Section("glossary", title, tuple(blocks), lead)


def used(text: str, words: Language) -> list[Term]:
    """Return the terms that a text uses, in alphabetical order."""
    return [term for term in terms(words) if re.search(term.form, text, re.IGNORECASE)]


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
        if (n := number_in_words(number.replace(",", "."))) is not None
    }
    return sorted(found)


def _metric(found: list[Fraction], words: Language) -> Table:
    return Table(
        "metric",
        words.text("table-inches"),
        (words.text("table-inches", part="inches"), words.text("table-inches", part="metric"))
        * _PAIRS,
        _columns([(fraction_text(v), words.measures.marked(metric(v))) for v in found]),
        "rl" * _PAIRS,
        (words.text("table-inches", part="note"),),
    )


def _metres(found: list[Fraction], words: Language) -> Table:
    return Table(
        "metric",
        words.text("table-centimetres"),
        (words.text("table-inches", part="metric"), words.text("table-inches", part="inches"))
        * _PAIRS,
        _columns(
            [(words.measures.marked(metric_text(v)), fraction_text(maker_inches(v))) for v in found]
        ),
        "rl" * _PAIRS,
        (words.text("table-centimetres", part="note"),),
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
