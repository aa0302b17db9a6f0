"""What can be looked up and nobody needs in order to sew: at the back of the booklet.

In: plans. Out: a section, or None.
Invariant: nothing here is said anywhere else.
"""

from __future__ import annotations

from publish.model.words import Block, Bullets, Paragraph, Section
from publish.write.context import Book
from publish.write.precut import alternatives


def section(book: Book) -> Section | None:
    """Return what is there to be looked up, at the back: what else the fabrics are cut from, and
    which of two ways of cutting a plan takes."""
    precuts = alternatives(book)
    blocks: list[Block] = [precuts] if precuts is not None else []
    chosen = [
        f"{book.title(key)}, {book.fabric(fabric)}: {choice}."
        for key in book.keys
        for fabric, plan in book.plans[key].fabrics.items()
        for choice in plan.choices
    ]
    blocks += (
        [Paragraph("**How the layouts save fabric**"), Bullets(tuple(chosen))] if chosen else []
    )
    if not blocks:
        return None
    return Section("looking-up", "For looking up", tuple(blocks))
