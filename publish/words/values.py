"""Typed values that a message puts into words, and the spans that come out.

In: exact lengths, counts, names. Out: frozen values; `Span`, `Spans`.
Invariant: a value holds no words of any language, but for names that the designer gave.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeAlias

from publish.surd import Length as Exact


@dataclass(frozen=True)
class Length:
    """A length in inches, exact."""

    inches: Exact


@dataclass(frozen=True)
class Rectangle:
    """Two sides in inches, exact: width and height as the thing lies in the quilt."""

    width: Exact
    height: Exact


@dataclass(frozen=True)
class Stitch:
    """The length of one machine stitch, in inches."""

    inches: Exact


@dataclass(frozen=True)
class Count:
    """How many; with `noun`, of what: the message `noun-NAME` says it in the language."""

    number: int
    noun: str = ""


@dataclass(frozen=True)
class Figures(Count):
    """How many, told in figures."""


@dataclass(frozen=True)
class Word:
    """A choice that a message makes words of by `->`; never printed as it is."""

    key: str


@dataclass(frozen=True)
class Letter:
    """The letter of a piece, as tables and figures have it."""

    letter: str


@dataclass(frozen=True)
class Named:
    """A name that the designer gave: of a fabric, a batting, the pattern."""

    name: str


@dataclass(frozen=True)
class Said:
    """Another message with values of its own: the name of a part, a way to press."""

    message: str
    values: tuple[tuple[str, Value], ...] = ()


@dataclass(frozen=True)
class Several:
    """Values one after another, joined by `and` or `or`, or what the language has for them;
    by `;` where they are lists themselves."""

    items: tuple[Value, ...]
    word: str = "and"


@dataclass(frozen=True)
class Purchase:
    """A length to buy, in inches, rounded up by each system's own step."""

    yards: Fraction
    metres: Fraction


@dataclass(frozen=True)
class Run:
    """Long runs of stitching in inches, told as the sum of what is told of each."""

    lengths: tuple[float, ...]


@dataclass(frozen=True)
class Thread:
    """A length of thread in inches."""

    inches: Fraction


@dataclass(frozen=True)
class Percent:
    """A share of one, told in hundredths."""

    share: Fraction


@dataclass(frozen=True)
class Titles:
    """Sizes by their titles."""

    titles: tuple[str, ...]


@dataclass(frozen=True)
class BySize:
    """A value that differs: each with the titles of the sizes that it is for."""

    items: tuple[tuple[tuple[str, ...], Value], ...]


Value: TypeAlias = (
    Length
    | Rectangle
    | Stitch
    | Count
    | Word
    | Letter
    | Named
    | Said
    | Several
    | Titles
    | BySize
    | Purchase
    | Run
    | Thread
    | Percent
)
Values: TypeAlias = Mapping[str, Value]


@dataclass(frozen=True)
class Span:
    """Some text, and the value that it is made of; None for words of the message itself."""

    text: str
    value: Value | None = None
    name: str = ""
    """What the message calls the value."""


Spans: TypeAlias = tuple[Span, ...]


def text(spans: Spans) -> str:
    """Return spans as one string."""
    return "".join(span.text for span in spans)


def said(message: str, **values: Value) -> Said:
    """Return a message with values of its own as a value."""
    return Said(message, tuple(values.items()))


def yes(so: object) -> Word:
    """Return `yes` or `no`, for a message to choose by."""
    return Word("yes" if so else "no")


def side_by_side(values: Mapping[str, Value]) -> Value:
    """Return one value of several by the titles of their sizes: itself where all agree."""
    groups: dict[Value, list[str]] = {}
    for title, value in values.items():
        groups.setdefault(value, []).append(title)
    if len(groups) == 1:
        return next(iter(groups))
    return BySize(tuple((tuple(titles), value) for value, titles in groups.items()))
