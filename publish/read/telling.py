"""Which languages a pattern is told in, and the designer's texts in one of them.

In: the trees of the pattern's file and its studio's, the language asked for. Out: `Telling`.
Invariant: known before anything else is read, so that every text is read as the words of one
language; a text may be one for all languages, or a mapping with one for each.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import yaml

from publish.words import LANGUAGES

KEY = "languages"


@dataclass(frozen=True)
class Telling:
    """The language that texts are read in, and all that the pattern is told in."""

    chosen: str = LANGUAGES[0]
    asked: tuple[str, ...] = LANGUAGES[:1]

    def text_of(self, written: Mapping[str, object]) -> str | None:
        """Return which of the languages that a text is written in serves the chosen one: a
        variant such as `en-GB` has that of `en` where it has none of its own."""
        return serving(self.chosen, written)

    def missing(self, written: Mapping[str, object]) -> tuple[str, ...]:
        """Return the languages that are asked for and that a text is not written in."""
        return tuple(code for code in self.asked if serving(code, written) is None)


DEFAULT = Telling()
"""In the one language that a pattern is told in where nothing is said."""


def serving(code: str, written: Mapping[str, object]) -> str | None:
    """Return the language of a mapping that serves another, itself where it is there."""
    return next((c for c in (code, code.partition("-")[0]) if c in written), None)


def telling(own: yaml.Node | None, house: yaml.Node | None = None, chosen: str = "") -> Telling:
    """Return how a pattern is told, by its own file, else its studio's, else by default;
    `chosen` is one that somebody asks for, which the pattern need not name."""
    asked = _written(own) or _written(house) or LANGUAGES[:1]
    chosen = chosen or asked[0]
    return Telling(chosen, asked if chosen in asked else (*asked, chosen))


def languages_of(node: yaml.MappingNode) -> tuple[str, ...]:
    """Return which keys of a mapping are languages: none where it is no text by language."""
    return tuple(
        k.value for k, _ in node.value if isinstance(k, yaml.ScalarNode) and k.value in LANGUAGES
    )


def _written(node: yaml.Node | None) -> tuple[str, ...]:
    """Return the languages that a file names, as far as there are such; checking says what
    is wrong with the others."""
    pairs = node.value if isinstance(node, yaml.MappingNode) else ()
    for key, value in pairs:
        if isinstance(key, yaml.ScalarNode) and key.value == KEY:
            items = value.value if isinstance(value, yaml.SequenceNode) else ()
            found = (item.value for item in items if isinstance(item, yaml.ScalarNode))
            return tuple(dict.fromkeys(code for code in found if code in LANGUAGES))
    return ()
