"""How a language puts values into words: what languages share, and what each says itself.

In: values. Out: text. A language's module has its own `Grammar` as `GRAMMAR`.
Invariant: what stands here holds for every language that there is; what is special to one
stands in its module and its messages.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from typing import ClassVar

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


def listed(items: Sequence[str], word: str) -> str:
    """Return `a`, `a WORD b`, `a, b WORD c`."""
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} {word} {items[-1]}"


def capital(text: str) -> str:
    """Return the text with its first letter a capital, past any Markdown marks."""
    for at, sign in enumerate(text):
        if sign.isalnum():
            return text[:at] + sign.upper() + text[at + 1 :]
    return text


class Grammar:
    """A language's grammar; counts stand in figures where it does not say otherwise."""

    tag: ClassVar[str]
    """The language as RFC 5646 writes it, for whatever reads pages aloud or hyphenates them."""
    base: ClassVar[str] = ""
    """The language whose messages stand in for those that this one does not have."""
    decimal_mark: ClassVar[str] = ","
    lengths: ClassVar[LengthWords]
    per_cent: ClassVar[str] = "{} %"
    joining: ClassVar[str]
    """What joins the last of several: `and`."""
    for_sizes: ClassVar[str]
    """A text, `{0}`, with the titles of the sizes that it is for, `{1}`."""
    nought: ClassVar[str]
    times: ClassVar[Mapping[int, str]]
    """How often, up to a number: `once`, `twice`."""
    often: ClassVar[str]
    """How often above that, round the number."""
    cases: ClassVar[Mapping[str, str]] = {}
    """Grammatical forms that a message may ask for by name, with the part that has them."""

    def number(self, count: int) -> str:
        """Return a count as sentences have it; none as a word."""
        return str(count) if count else self.nought

    def ordinal(self, place: int) -> str:
        """Return a place in a row, counted from 1."""
        raise NotImplementedError

    def how_often(self, count: int) -> str:
        """Return `once`, `twice` or `12 times`."""
        return self.times.get(count, self.often.format(self.number(count)))

    def category(self, count: int) -> str:
        """Return the plural category of a whole number (CLDR): `one`, or `other`."""
        return "one" if count == 1 else "other"

    def sort_key(self, term: str) -> str:
        """Return what terms are sorted by."""
        return term.casefold()

    def listed(self, items: Sequence[str], word: str = "") -> str:
        """Return texts one after another, as the language lists them."""
        return listed(items, word or self.joining)

    def by_size(self, items: Sequence[tuple[str, tuple[str, ...]]]) -> str:
        """Return each text with the titles of the sizes that it is for."""
        return self.listed([self.for_sizes.format(s, self.plain(Titles(t))) for s, t in items])

    def plain(self, value: Value, measures: Measures = INCHES) -> str:
        """Return a value that needs no other message in words; TypeError for one that does."""
        tell = Lengths(measures, self.lengths)
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
                return measures.marked(self.per_cent.format(f"{float(100 * share):g}"))
            case Figures(count):
                return str(count)
            case Count(count):
                return self.number(count)
            case Letter(letter):
                return f"**{letter}**"
            case Named(name):
                return name
            case Titles(titles):
                return self.listed([f"**{title}**" for title in titles])
        raise TypeError(f"{value!r} cannot be said by itself")

    @cached_property
    def functions(self) -> Mapping[str, Callable[[Value | None, str, Measures], str]]:
        """Return what a message may ask for by name, from a value, what it says and how lengths
        are told.

        `CAPITAL` a first capital; `SHORT` a length or two sides in what leads alone, of a square
        one; `SIDES` both sides always; `ORDINAL`, `TIMES`, `FIGURES` of a count: `first`,
        `twice`, `12`.
        """
        return {
            "CAPITAL": lambda value, said, measures: capital(said),
            "SHORT": _short,
            "SIDES": _sides,
            "ORDINAL": lambda value, said, measures: _counted(value, said, self.ordinal),
            "TIMES": lambda value, said, measures: _counted(value, said, self.how_often),
            "FIGURES": lambda value, said, measures: _counted(value, said, str),
        }


def _short(value: Value | None, said: str, measures: Measures) -> str:
    match value:
        case Length(inches):
            return measures.text(inches)
        case Rectangle(width, height) if width == height:
            return measures.text(width)
    return _sides(value, said, measures)


def _sides(value: Value | None, said: str, measures: Measures) -> str:
    return measures.sides(value.width, value.height) if isinstance(value, Rectangle) else said


def _counted(value: Value | None, said: str, tell: Callable[[int], str]) -> str:
    return tell(value.number) if isinstance(value, Count) else said
