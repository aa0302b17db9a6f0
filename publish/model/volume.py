"""A book of patterns as its file says it.

In: nothing. Out: frozen types.
Invariant: only what the file and its studio's say; the patterns themselves are read each
from its own folder.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from publish.model.pattern import Pattern


@dataclass(frozen=True)
class Part:
    """Patterns under one heading; a book without parts has one whose title is empty."""

    title: str
    lead: str
    patterns: tuple[Path, ...]


@dataclass(frozen=True)
class Volume:
    """A book: its words, its patterns in order, and its looks.

    `looks` is a pattern without cloth, blocks and sizes: title, publication, papers, layout
    and style, as pages and covers ask for them.
    """

    looks: Pattern
    foreword: str
    parts: tuple[Part, ...]

    @property
    def patterns(self) -> tuple[Path, ...]:
        return tuple(path for part in self.parts for path in part.patterns)
