"""What can be looked up and nobody needs in order to sew: at the back of the booklet.

In: plans. Out: a section, or None.
Invariant: nothing here is said anywhere else.
"""

from __future__ import annotations

from publish.model.words import Section
from publish.write.context import Book
from publish.write.precut import alternatives


def section(book: Book) -> Section | None:
    """Return what else the fabrics can be cut from."""
    precuts = alternatives(book)
    if precuts is None:
        return None
    return Section("looking-up", book.text("chapter-looking-up"), (precuts,))
