"""What the cutting table says of a ground that is trimmed once its motif is sewn.

In: sizes. Out: a note.
Invariant: it tells what the block will be trimmed to, where that is one size.
"""

from __future__ import annotations

from publish.words.values import Length, Rectangle, Said, said
from publish.write.context import Book

TRIM = "trim-square-after-applique"
"""The note of a ground that is trimmed once its motif is sewn."""


def trim_note(book: Book, key: str) -> Said:
    """Return what the cutting table says of a ground that is trimmed later."""
    size = book.sizes[key]
    if size.pillow is not None and size.bare:
        if size.block_count == 1:
            return said("trim-after-quilting", size=Rectangle(*book.front(key)))
        return said("trim-after-applique")
    return said(TRIM, side=Length(book.raw(size.block_side)))
