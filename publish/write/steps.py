"""Numbered steps and figures: keys, numbers and the words that say which sizes.

In: text and figure kinds from the sections. Out: `Step`, `Steps`, `FigureSpec`.
Invariant: steps of one section are numbered from 1 without gaps; the key of a figure
follows from what it shows, so that asking twice for one figure yields one drawing.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from publish.model.words import FigureSpec, Step, Steps
from publish.write.context import Book


def figure(kind: str, size: str | None, caption: str, name: str = "", **values: str) -> FigureSpec:
    """Return a figure of a kind; `name` tells apart two uses of the same drawing."""
    parts = [kind, size or "", *values.values(), name]
    return FigureSpec(slug(*parts), kind, size, tuple(values.items()), caption)


def slug(*parts: str) -> str:
    """Return a key made of words: small letters, figures and single hyphens."""
    return "-".join(re.findall(r"[a-z0-9]+", " ".join(parts).lower()))


class StepList:
    """Collects the steps of one section and numbers them."""

    def __init__(self, book: Book, section: str, scope: Sequence[str] | None = None) -> None:
        self._book = book
        self._section = section
        self._scope = book.keys if scope is None else tuple(scope)
        self._count = 0
        self._waiting: list[Step] = []

    def add(
        self,
        key: str,
        text: str,
        *,
        sizes: Sequence[str] | None = None,
        right: str = "",
        tip: str = "",
        caution: str = "",
        figure: FigureSpec | None = None,
        covers: tuple[str, ...] = (),
        aliases: tuple[tuple[str, str], ...] = (),
    ) -> None:
        """Add a step; one for some sizes only says so in its first words."""
        only = () if sizes is None else self._book.only(sizes, self._scope)
        if only:
            text = self._book.only_for(only) + text
        self._count += 1
        self._waiting.append(
            Step(
                slug(self._section, key),
                self._count,
                text,
                right,
                tip,
                caution,
                figure,
                only,
                covers,
                False,
                aliases,
            )
        )

    def block(self) -> Steps:
        """Return the steps added since the last call; their numbers run on."""
        done, self._waiting = tuple(self._waiting), []
        return Steps(done)
