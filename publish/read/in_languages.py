"""Texts of the designer's own, in the languages that the pattern is told in.

In: a scalar, or a mapping from languages to scalars. Out: the text in the chosen language;
notes in a `Ledger`.
Invariant: every language's text is checked, whichever is chosen, so that a pattern has the
same findings in each; what a maker is told in two languages is written in both.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import yaml

from publish.notes import Severity
from publish.read.forms import Form, listed, nearest
from publish.read.ledger import At, Ledger
from publish.read.lists import FAULTY, Lists
from publish.read.telling import Telling
from publish.read.texts import Text
from publish.words import LANGUAGES


class InLanguages(Lists):
    """Reads texts that may be written by language."""

    def __init__(self, ledger: Ledger, telling: Telling) -> None:
        super().__init__(ledger)
        self.telling = telling

    def plain(self, form: Form, node: yaml.ScalarNode, at: At) -> Any:
        """Return the value of a scalar, or FAULTY."""
        raise NotImplementedError

    def one_for_all(self, form: Text, node: yaml.ScalarNode, at: At) -> None:
        """Warn of sentences that are one text where the pattern has several languages; a
        name serves in each."""
        first, *others = self.telling.asked
        if not (form.told and others and node.value.strip() not in ("", "none")):
            return
        where = ", ".join(others)
        self.note(
            "R178",
            self.ledger.at(node, at.path).place,
            f"{at.subject} is one text for every language",
            expected=f"a text in each of {', '.join(self.telling.asked)}",
            received=f"one text, which is printed in {where} as it is",
            help=f"write `{{{first}: ..., {others[0]}: ...}}`, or each below the key",
            severity=Severity.WARNING,
        )

    def by_language(self, form: Text, entries: Sequence[tuple[str, At, yaml.Node]], at: At) -> Any:
        """Return the text that serves the chosen language, or FAULTY."""
        found: dict[str, Any] = {}
        for code, there, node in entries:
            self.ledger.keep(there)
            if code not in LANGUAGES:
                self._no_language(code, there)
            elif not isinstance(node, yaml.ScalarNode):
                self.value(form.alone, node, At(there.path, there.place, at.example))
            else:
                under = At(there.path, there.place, at.example)
                found[code] = self.value(form.alone, node, under)
                self.ledger.texts[".".join(there.path)] = node.value
        missing = self.telling.missing(found)
        if missing:
            asked = ", ".join(self.telling.asked)
            self.note(
                "R177",
                at.place,
                f"{at.subject} has no text in {' and '.join(missing)}",
                expected=f"a text in each of {asked}",
                received=", ".join(found) or "none",
                help=f"write `{missing[0]}:` with a text below the key",
            )
        serves = self.telling.text_of(found)
        fits = FAULTY not in found.values() and serves is not None
        return found[serves] if fits and serves is not None else FAULTY

    def _no_language(self, code: str, at: At) -> None:
        near = nearest(code, LANGUAGES)
        self.note(
            "R125",
            at.place,
            f"`{code}` is not a language of Foldwork's",
            expected=listed(LANGUAGES),
            received=code,
            help=f"write `{near}`" if near else "leave it out",
        )
