"""English, as it is written in Canada: how values, lists and articles are put into words.

In: values. Out: text. The messages stand beside this file, one file for each chapter.
Invariant: what is special to English stands here and in the messages, nowhere else.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import ClassVar

from publish.measures import Measures
from publish.words.en.phrase import NUMBERS, article, number, ordinal
from publish.words.grammar import Grammar
from publish.words.lengths import ENGLISH
from publish.words.values import Value


class English(Grammar):
    """Counts stand in words up to twelve, and a name may have an article."""

    tag = "en-CA"
    decimal_mark = "."
    lengths = ENGLISH
    joining = "and"
    for_sizes = "{0} for the {1}"
    nought = NUMBERS[0]
    times: ClassVar[Mapping[int, str]] = {1: "once", 2: "twice"}
    often = "{} times"

    def number(self, count: int) -> str:
        return number(count)

    def ordinal(self, place: int) -> str:
        return ordinal(place)

    @cached_property
    def functions(self) -> Mapping[str, Callable[[Value | None, str, Measures], str]]:
        """Return what every language has, and `A`: a text with its article in front."""
        return {**super().functions, "A": lambda value, said, measures: article(said)}


GRAMMAR = English()
