"""How each chapter that is told from its operations is laid out.

In: a book. Out: what is asked of `tell.chapter`.
"""

from __future__ import annotations

from publish.words.values import yes
from publish.write.context import Book
from publish.write.tell import Asked


def assembling(book: Book) -> Asked:
    """Return how the chapter on assembling is told."""
    return Asked(apart=True, values={"trimmed": yes(bool(book.motifs))})


def borders(book: Book) -> Asked:
    """Return how the chapter on borders and rounds is told."""
    return Asked(apart=True, values={"rounds": yes(any(book.sizes[k].rounds for k in book.keys))})
