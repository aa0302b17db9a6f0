"""German, as it is written in Germany: how values, lists and counts are put into words.

In: values. Out: text. The messages stand beside this file, one file for each chapter;
GLOSSARY.md says which word stands for which thing, and how sentences are built.
Invariant: what is special to German stands here and in the messages, nowhere else.

Instructions stand in the infinitive, names without articles and counts in figures, so that
hardly a word is inflected; what is, a message has in a part of its own.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar

from publish.words.grammar import Grammar
from publish.words.lengths import LengthWords

_SORTED = str.maketrans({"ä": "a", "ö": "o", "ü": "u", "ß": "ss"})


class German(Grammar):
    """Counts stand in figures, and names without articles."""

    tag = "de-DE"
    lengths = LengthWords("etwa {}")
    """A square is told by both of its sides."""
    joining = "und"
    for_sizes = "{0} für {1}"
    nought = "kein"
    times: ClassVar[Mapping[int, str]] = {1: "einmal", 2: "zweimal", 3: "dreimal", 4: "viermal"}
    often = "{}-mal"
    cases: ClassVar[Mapping[str, str]] = {"PLURAL": "plural", "DATIVE": "dative"}

    def ordinal(self, place: int) -> str:
        return f"{place}."

    def sort_key(self, term: str) -> str:
        """Return what terms are sorted by: umlauts as their vowels (DIN 5007-1, from memory)."""
        return term.casefold().translate(_SORTED)


GRAMMAR = German()
