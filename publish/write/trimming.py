"""What the cutting table says of a ground that is trimmed once its motif is sewn.

In: sizes. Out: a note.
Invariant: it tells what the block will be trimmed to, where that is one size.
"""

from __future__ import annotations

from publish.write.context import Book


def trim_note(book: Book, key: str) -> str:
    """Return what the cutting table says of a ground that is trimmed later."""
    size = book.sizes[key]
    if size.pillow is not None and size.bare:
        if size.block_count == 1:
            return f"trim to {book.say.rectangle(*book.front(key))} after quilting"
        return "trim after appliqué"
    return f"trim to {book.say.measure(book.raw(size.block_side))} square after appliqué"
