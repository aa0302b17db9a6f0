"""Sections whose steps differ from size to size.

In: a function that writes the steps of one size. Out: one section, or a parent with a
child for each size.
Invariant: steps of a child section are numbered from 1; a child names its size.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from publish.model.words import Block, Paragraph, Section
from publish.write.context import Book
from publish.write.steps import StepList

Writer = Callable[[Book, str, StepList], None]


def alone(book: Book, keys: Sequence[str]) -> tuple[Block, ...]:
    """Return a paragraph that says which sizes a part is for, where it is not for all."""
    if not book.only(keys):
        return ()
    return (Paragraph(f"This part is for the {book.titles(keys)} only."),)


def per_size(book: Book, key: str, title: str, lead: str, keys: Sequence[str], writer: Writer,
             opening: Sequence[Block] = ()) -> tuple[Section, ...]:  # fmt: skip
    """Return the sections of a subject for these sizes; none without sizes."""
    if not keys:
        return ()
    if len(keys) == 1:
        steps = StepList(book, key, keys)
        writer(book, keys[0], steps)
        only = book.only(keys)
        blocks = (*alone(book, keys), *opening, steps.block())
        return (Section(key, title, blocks, lead, sizes=only),)
    found = [Section(key, title, tuple(opening), lead)]
    for size in keys:
        child = f"{key}-{size}"
        steps = StepList(book, child, [size])
        writer(book, size, steps)
        found.append(
            Section(child, f"{title}: {book.title(size)}", (steps.block(),), sizes=(size,),
                    parent=key)
        )  # fmt: skip
    return tuple(found)
