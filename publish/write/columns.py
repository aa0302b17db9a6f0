"""Tables with a column for each size.

In: a book, what stands in the rows. Out: rows, tables.
Invariant: a size that has nothing of a row has a dash there; a row that no size has is left out.
"""

from __future__ import annotations

from collections.abc import Callable

from publish.model.cutplan import CutPlan
from publish.model.words import Row, Table
from publish.words.values import Said, Value
from publish.write.context import Book

NONE = "–"
Cell = Callable[[CutPlan], Value | None]
"""What a table says of a size, from its plan; None where the size has none."""


def table_of(book: Book, key: str, rows: list[Row], notes: tuple[str, ...] = ()) -> Table:
    """Return a table with a column for each size."""
    head = ("", *(book.title(k) for k in book.keys))
    columns = "l" + "r" * len(book.keys)
    return Table(key, book.text(f"table-{key}"), head, tuple(rows), columns, notes)


def rows_of(book: Book, each: list[tuple[Said, Cell]]) -> list[Row]:
    """Return a row for each of what some size has."""
    rows = []
    for name, value in each:
        cells = [value(book.plans[k]) for k in book.keys]
        if any(c is not None for c in cells):
            told = (book.words.value(c) if c is not None else NONE for c in cells)
            rows.append(Row((book.words.value(name), *told)))
    return rows
