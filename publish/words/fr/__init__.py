"""French, as it is written in France: how values, lists and counts are put into words.

In: values. Out: text. The messages stand beside this file, one file for each chapter.
Invariant: what is special to French stands here and in the messages, nowhere else.

Instructions stand in the infinitive, names without articles, and what a sentence says of a name
follows it after a colon or in parentheses, so that neither gender nor elision depends on it.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Mapping
from typing import ClassVar

from publish.words.grammar import Grammar
from publish.words.lengths import LengthWords


class French(Grammar):
    """Counts stand in figures, and names without articles."""

    tag = "fr-FR"
    lengths = LengthWords("environ {}")
    """A square is told by both of its sides."""
    per_cent = "{}\u00a0%"
    joining = "et"
    for_sizes = "{0} pour {1}"
    nought = "aucun"
    times: ClassVar[Mapping[int, str]] = {
        1: "une fois",
        2: "deux fois",
        3: "trois fois",
        4: "quatre fois",
    }
    often = "{} fois"
    cases: ClassVar[Mapping[str, str]] = {"PLURAL": "plural"}

    def ordinal(self, place: int) -> str:
        """Return `1re` for 1, `2e` for 2: what is numbered here is feminine or stands for a
        plain number."""
        return "1re" if place == 1 else f"{place}e"

    def category(self, count: int) -> str:
        """Return the plural category of a whole number (CLDR): `one` for none and one."""
        return "one" if count in (0, 1) else "other"

    def sort_key(self, term: str) -> str:
        """Return what terms are sorted by: letters without their accents (as dictionaries have
        them, from memory)."""
        plain = unicodedata.normalize("NFD", term.casefold().replace("œ", "oe"))
        return "".join(sign for sign in plain if not unicodedata.combining(sign))


GRAMMAR = French()
