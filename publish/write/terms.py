"""The terms of the trade that the glossary can explain.

In: a language. Out: its terms.
Invariant: `form` is a regular expression that finds the term in running text, in any of
the shapes it takes there.
"""

from __future__ import annotations

from dataclasses import dataclass

from publish.words import Language

_TERM = "term-"


@dataclass(frozen=True)
class Term:
    name: str
    form: str
    meaning: str
    """As makers who measure so are told it."""


def terms(words: Language) -> tuple[Term, ...]:
    """Return every term that a language explains, sorted as the language sorts."""
    found = [
        Term(*(words.text(key, part=part) for part in ("", "form", _meaning(words, key))))
        for key in words.sources
        if key.startswith(_TERM)
    ]
    return tuple(sorted(found, key=lambda term: words.grammar.sort_key(term.name)))


def _meaning(words: Language, key: str) -> str:
    return "metric" if words.measures.metric and words.has(key, "metric") else "meaning"
