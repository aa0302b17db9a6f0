"""How each chapter that is told from its operations is laid out.

In: a book. Out: what is asked of `tell.chapter`.
"""

from __future__ import annotations

from publish.words.values import Word
from publish.write.context import Book
from publish.write.tell import Asked


def assembling(book: Book) -> Asked:
    """Return how the chapter on assembling is told."""
    return Asked(apart=True, values={"trimmed": _yes(bool(book.motifs))})


def borders(book: Book) -> Asked:
    """Return how the chapter on borders and rounds is told."""
    return Asked(apart=True, values={"rounds": _yes(any(book.sizes[k].rounds for k in book.keys))})


def _yes(so: bool) -> Word:
    return Word("yes" if so else "no")
