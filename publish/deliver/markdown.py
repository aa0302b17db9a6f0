"""Tables and lists of the booklet as Markdown for a page that is not a booklet.

In: tables of the manual, plain rows. Out: Markdown (GitHub's tables).
Invariant: cells say what the booklet says; only what would break a table is escaped.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.model.words import Table

_RULES = {"l": "---", "r": "---:", "c": ":---:"}


def table_of(table: Table) -> list[str]:
    """Return one of the manual's tables: title, head, rows, notes."""
    align = table.align or "l" * len(table.head)
    rows = [
        [f"**{_bare(row.cells[0])}**", *[""] * (len(table.head) - 1)]
        if row.kind == "group"
        else row.cells
        for row in table.rows
    ]
    lines = [f"### {table.title}", ""] if table.title else []
    lines += [*rows_of(table.head, rows, align), ""]
    return [*lines, *(f"{note}\n" for note in table.notes)]


def rows_of(head: Sequence[str], rows: Sequence[Sequence[str]], align: str = "") -> list[str]:
    """Return a table's lines; `align` has one letter for each column."""
    rules = [_RULES[a] for a in align or "l" * len(head)]
    return [_row(head), _row(rules), *(_row(row) for row in rows)]


def bullets(items: Sequence[str]) -> list[str]:
    """Return a list, one line for each item, and a blank line after it."""
    return [*(f"- {item}" for item in items), ""]


def text_of(lines: Sequence[str]) -> str:
    """Return lines as a file: one line's end at the end of it."""
    return "\n".join(lines).rstrip() + "\n"


def _row(cells: Sequence[str]) -> str:
    return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def _bare(text: str) -> str:
    return text.replace("**", "")
