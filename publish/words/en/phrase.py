"""Small parts of sentences: numbers in words, plurals, lists, lengths with metric.

In: counts and exact lengths. Out: text without a full stop.
Invariant: every length is written by `publish.units`, inches first and the metric
equivalent in parentheses; nothing is measured or added up here.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from publish.surd import Length, Surd
from publish.units import (
    INCH_IN_MM,
    YARD,
    cm_text,
    decimal_text,
    inches_text,
    maker_inches,
    metres_text,
    mm_text,
    on_ruler,
    round_near,
    round_up,
    yards_text,
)

_WORDS = (
    "no",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
)
_ORDINALS = (
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
)
_METRE = 1000 / INCH_IN_MM
"""Inches in one metre."""


def number(count: int) -> str:
    """Return a count in words up to twelve, in figures above."""
    return _WORDS[count] if 0 <= count < len(_WORDS) else str(count)


def ordinal(place: int) -> str:
    """Return `first` for 1, and so on; in figures above twelve (`13th`)."""
    if 1 <= place <= len(_ORDINALS):
        return _ORDINALS[place - 1]
    tail = "th" if place % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(place % 10)
    return f"{place}{tail or 'th'}"


def plural(count: int, one: str, many: str = "") -> str:
    """Return the noun that agrees with a count: `strip` or `strips`."""
    return one if count == 1 else many or f"{one}s"


def counted(count: int, one: str, many: str = "") -> str:
    """Return `nine squares`, `one square`, `13 squares`."""
    return f"{number(count)} {plural(count, one, many)}"


def times(count: int) -> str:
    """Return `once`, `twice` or `three times`."""
    return {1: "once", 2: "twice"}.get(count, f"{number(count)} times")


def listed(items: Sequence[str], word: str = "and") -> str:
    """Return `a`, `a and b`, `a, b and c`."""
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} {word} {items[-1]}"


def capital(text: str) -> str:
    """Return the text with its first letter a capital, past any Markdown marks."""
    for at, sign in enumerate(text):
        if sign.isalnum():
            return text[:at] + sign.upper() + text[at + 1 :]
    return text


def article(phrase: str) -> str:
    """Return a phrase with `a` or `an` in front, by how its first word sounds.

    Figures are read as they are said: `an 8 in tail`, `an 18 in form`, `a 1 in hem`.
    """
    word = re.split(r"[ -]", phrase.lstrip("*"))[0].lower()
    if word[:1].isdigit():
        whole = word.split("/")[0]
        vowel = whole.startswith("8") or whole in ("11", "18")
    elif not re.search("[aeiouy]", word):
        vowel = word[:1] in "fhlmnrsx"  # said letter by letter: `an HST block`
    elif word in ("one", "once") or word.startswith(("uni", "use", "usa", "eu")):
        vowel = False
    else:
        vowel = word[:1] in "aeiou" or word.startswith(("hour", "heir", "hones"))
    return f"{'an' if vowel else 'a'} {phrase}"


def metric(length: Length) -> str:
    """Return a length in inches as `6 mm` below one inch and `47.0 cm` above.

    A length on the diagonal is that of the inches beside it, so that the two agree.
    """
    read = maker_inches(length) if isinstance(length, Surd) else length
    return mm_text(read) if read < 1 else cm_text(read)


def measure(length: Length) -> str:
    """Return `18 1/2 in (47.0 cm)`; below one inch, `1/4 in (6 mm)`.

    A length that no ruler has is rounded and said to be: `about 17 in (43.2 cm)`.
    """
    return f"{_about(length)}{inches_text(length)} ({metric(length)})"


def rectangle(width: Length, length: Length) -> str:
    """Return `12 in × 18 in (30.5 cm × 45.7 cm)`; a square as `18 in (45.7 cm) square`."""
    if width == length:
        return f"{measure(width)} square"
    inches = f"{_about(width, length)}{inches_text(width)} × {inches_text(length)}"
    return f"{inches} ({metric(width)} × {metric(length)})"


def _about(*lengths: Length) -> str:
    return "about " if not all(map(on_ruler, lengths)) else ""


def to_buy(yards: Fraction, metres: Fraction) -> str:
    """Return a purchase, given as two lengths in inches: `1 3/8 yd (1.30 m)`."""
    return f"{yards_text(yards)} ({metres_text(metres)})"


def run(*lengths: float) -> str:
    """Return a long run of stitching, given in inches, to the nearest quarter yard.

    Of several runs it is the sum of what is told of each, so that a total is the sum of
    the rows above it, in yards and in metres.
    """
    yards = sum((_near(n, YARD / 4) for n in lengths), Fraction(0))
    metres = sum((_near(n, _METRE / 10) for n in lengths), Fraction(0)) / _METRE
    return f"{yards_text(yards)} ({decimal_text(metres, 1)} m)"


def _near(length: float, step: Fraction) -> Fraction:
    """Return the multiple of a step nearest to a length, at least one."""
    return max(step, round_near(Fraction(length), step))


def stitch(length: Fraction) -> str:
    """Return the length of one machine stitch as its dial shows it: `2.5 mm`, `3 mm`."""
    millimetres = length * INCH_IN_MM
    return f"{decimal_text(millimetres, 0 if millimetres.denominator == 1 else 1)} mm"


def thread(length: Fraction) -> str:
    """Return thread, given in inches, rounded up to whole yards and metres."""
    metres = round_up(length, _METRE) / _METRE
    return f"{yards_text(round_up(length, YARD))} ({metres} m)"


def spools(length: Fraction, spool_metres: Fraction) -> int:
    """Return how many spools of so many metres hold a length in inches."""
    return max(1, int(round_up(length / (spool_metres * _METRE), Fraction(1))))
