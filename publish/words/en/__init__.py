"""English, as it is written in Canada: how values, lists and articles are put into words.

In: values. Out: text. The messages stand beside this file, one file for each chapter.
Invariant: what is special to English stands here and in the messages, nowhere else.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from publish.measures import INCHES, Measures
from publish.words.en.phrase import (
    article,
    capital,
    listed,
    number,
    ordinal,
    stitch,
    times,
)
from publish.words.lengths import ENGLISH, Lengths
from publish.words.values import (
    Count,
    Figures,
    Length,
    Letter,
    Named,
    Percent,
    Purchase,
    Rectangle,
    Run,
    Stitch,
    Thread,
    Titles,
    Value,
)

__all__ = [
    "BASE",
    "CASES",
    "DECIMAL_MARK",
    "FUNCTIONS",
    "LENGTHS",
    "TAG",
    "by_size",
    "category",
    "listed",
    "number",
    "ordinal",
    "plain",
    "sort_key",
]

TAG = "en-CA"
"""The language as RFC 5646 writes it, for whatever reads pages aloud or hyphenates them."""


BASE = ""
"""The language whose messages stand in for those that this one does not have; none."""
DECIMAL_MARK = "."
LENGTHS = ENGLISH


def sort_key(term: str) -> str:
    """Return what terms are sorted by."""
    return term.casefold()


def plain(value: Value, measures: Measures = INCHES) -> str:
    """Return a value that needs no other message in words; TypeError for one that does."""
    match value:
        case Length(inches):
            return Lengths(measures).measure(inches)
        case Rectangle(width, height):
            return Lengths(measures).rectangle(width, height)
        case Stitch(inches):
            return measures.marked(stitch(inches))
        case Purchase(yards, metres):
            return Lengths(measures).to_buy(yards, metres)
        case Run(lengths):
            return Lengths(measures).run(*lengths)
        case Thread(inches):
            return Lengths(measures).thread(inches)
        case Percent(share):
            return f"{float(100 * share):g} %"
        case Figures(count):
            return str(count)
        case Count(count):
            return number(count)
        case Letter(letter):
            return f"**{letter}**"
        case Named(name):
            return name
        case Titles(titles):
            return listed([f"**{title}**" for title in titles])
    raise TypeError(f"{value!r} cannot be said by itself")


def category(count: int) -> str:
    """Return the plural category of a whole number: `one` or `other` (CLDR, English)."""
    return "one" if count == 1 else "other"


def by_size(items: Sequence[tuple[str, tuple[str, ...]]]) -> str:
    """Return each text with the titles of the sizes that it is for.

    `16 in for the **Mini** and 18 in for the **Pillow** and **Throw**`.
    """
    return listed([f"{said} for the {plain(Titles(titles))}" for said, titles in items])


def _short(value: Value, said: str, measures: Measures) -> str:
    match value:
        case Length(inches):
            return measures.text(inches)
        case Rectangle(width, height) if width == height:
            return measures.text(width)
        case Rectangle(width, height):
            return measures.sides(width, height)
    return said


def _sides(value: Value, said: str, measures: Measures) -> str:
    return measures.sides(value.width, value.height) if isinstance(value, Rectangle) else said


def _ordinal(value: Value, said: str, measures: Measures) -> str:
    del measures
    return ordinal(value.number) if isinstance(value, Count) else said


def _times(value: Value, said: str, measures: Measures) -> str:
    del measures
    return times(value.number) if isinstance(value, Count) else said


def _figures(value: Value, said: str, measures: Measures) -> str:
    del measures
    return str(value.number) if isinstance(value, Count) else said


CASES: Mapping[str, str] = {}
"""Grammatical forms that a message may ask for by name; English has none."""

FUNCTIONS: Mapping[str, Callable[[Value, str, Measures], str]] = {
    "A": lambda value, said, measures: article(said),
    "CAPITAL": lambda value, said, measures: capital(said),
    "SHORT": _short,
    "SIDES": _sides,
    "ORDINAL": _ordinal,
    "TIMES": _times,
    "FIGURES": _figures,
}
"""What a message may ask for by name, from a value, what it says and how lengths are told:

`A` its article in front; `CAPITAL` a first capital; `SHORT` a length or two sides in what
leads alone, of a square one; `SIDES` both sides always;
`ORDINAL`, `TIMES`, `FIGURES` of a count: `first`, `twice`, `12`.
"""
