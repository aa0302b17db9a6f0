"""Small parts of sentences: numbers in words, plurals, lists, the length of a stitch.

In: counts, words. Out: text without a full stop.
Invariant: nothing is counted or measured here.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from publish.words.grammar import capital as capital
from publish.words.grammar import listed as joined

NUMBERS = (
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
"""Counts that are told in words, from none on."""
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


def number(count: int) -> str:
    """Return a count in words up to twelve, in figures above."""
    return NUMBERS[count] if 0 <= count < len(NUMBERS) else str(count)


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


def listed(items: Sequence[str], word: str = "and") -> str:
    """Return `a`, `a and b`, `a, b and c`."""
    return joined(items, word)


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
