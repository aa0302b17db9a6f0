"""French, as it is written in France: how values, lists and counts are put into words.

In: values. Out: text. The messages stand beside this file, one file for each chapter.
Invariant: what is special to French stands here and in the messages, nowhere else.

Instructions stand in the infinitive, names without articles, and what a sentence says of a name
follows it after a colon or in parentheses, so that neither gender nor elision depends on it.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable, Mapping, Sequence

from publish.measures import INCHES, Measures
from publish.units import INCH_IN_MM, decimal_text
from publish.words.lengths import Lengths, LengthWords
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

TAG = "fr-FR"
"""The language as RFC 5646 writes it, for whatever reads pages aloud or hyphenates them."""
BASE = ""
"""The language whose messages stand in for those that this one does not have; none."""
DECIMAL_MARK = ","
LENGTHS = LengthWords("environ {}")
"""A square is told by both of its sides."""


def sort_key(term: str) -> str:
    """Return what terms are sorted by: letters without their accents (as dictionaries have
    them, from memory)."""
    plain_letters = unicodedata.normalize("NFD", term.casefold().replace("œ", "oe"))
    return "".join(c for c in plain_letters if not unicodedata.combining(c))


def plain(value: Value, measures: Measures = INCHES) -> str:
    """Return a value that needs no other message in words; TypeError for one that does."""
    tell = Lengths(measures, LENGTHS)
    match value:
        case Length(inches):
            return tell.measure(inches)
        case Rectangle(width, height):
            return tell.rectangle(width, height)
        case Stitch(inches):
            millimetres = inches * INCH_IN_MM
            places = 0 if millimetres.denominator == 1 else 1
            return measures.marked(f"{decimal_text(millimetres, places)} mm")
        case Purchase(yards, metres):
            return tell.to_buy(yards, metres)
        case Run(lengths):
            return tell.run(*lengths)
        case Thread(inches):
            return tell.thread(inches)
        case Percent(share):
            return measures.marked(f"{float(100 * share):g}\u00a0%")
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


def number(count: int) -> str:
    """Return a count in figures, as instructions have it; none as a word."""
    return str(count) if count else "aucun"


def ordinal(place: int) -> str:
    """Return `1re` for 1, `2e` for 2, and so on: what is numbered here is feminine or stands
    for a plain number."""
    return "1re" if place == 1 else f"{place}e"


def category(count: int) -> str:
    """Return the plural category of a whole number: `one` for none and one (CLDR, French)."""
    return "one" if count in (0, 1) else "other"


def listed(items: Sequence[str], word: str = "et") -> str:
    """Return `a`, `a et b`, `a, b et c`."""
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} {word} {items[-1]}"


def capital(text: str) -> str:
    """Return the text with its first letter a capital, past any Markdown marks."""
    for at, sign in enumerate(text):
        if sign.isalnum():
            return text[:at] + sign.upper() + text[at + 1 :]
    return text


def by_size(items: Sequence[tuple[str, tuple[str, ...]]]) -> str:
    """Return each text with the titles of the sizes that it is for.

    `40 cm pour **Mini** et 45 cm pour **Coussin** et **Plaid**`.
    """
    return listed([f"{said} pour {plain(Titles(titles))}" for said, titles in items])


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
    if not isinstance(value, Count):
        return said
    words = {1: "une fois", 2: "deux fois", 3: "trois fois", 4: "quatre fois"}
    return words.get(value.number, f"{value.number} fois")


def _figures(value: Value, said: str, measures: Measures) -> str:
    del measures
    return str(value.number) if isinstance(value, Count) else said


CASES: Mapping[str, str] = {"PLURAL": "plural"}
"""Grammatical forms that a message may ask for by name, with the part that has them."""

FUNCTIONS: Mapping[str, Callable[[Value, str, Measures], str]] = {
    "CAPITAL": lambda value, said, measures: capital(said),
    "SHORT": _short,
    "SIDES": _sides,
    "ORDINAL": _ordinal,
    "TIMES": _times,
    "FIGURES": _figures,
}
"""What a message may ask for by name; as in English, which has articles as well."""
