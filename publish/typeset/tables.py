"""How the columns of a table are set: to which side, and which are kept on one line.

In: a `Table`. Out: a `Column` for each column.
Invariant: only lengths of words are weighed, so that a layout sets the same table alike
on every paper; nothing in the cells is changed.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from publish.model.words import Table

LINE = 127
"""Letters of a table's size that fit across the measure, unless a layout says."""
GAP = 2.5
"""Letters that the space beside a column takes."""
LEAST = 24
"""Letters that each column which may wrap must be left."""
FIGURE = 12
"""Letters of the longest cell that is still compared as a figure."""
ALIKE = 0.95
"""Share of a wrapping column's length above which another column wraps too."""

_MARKS = re.compile(r"\*+|`+|\[|\]\([^)]*\)")
_FRACTION = re.compile(r"\d+/\d+")


@dataclass(frozen=True)
class Column:
    """`side` is `l`, `r` or `c`; `whole` keeps every cell on one line."""

    side: str
    whole: bool


def columns(table: Table, line: float = LINE) -> tuple[Column, ...]:
    """Return how to set each column on lines of so many letters.

    The shortest columns are kept whole, one after another, as long as the rest have room;
    a column of long cells that wrap is set to the left, and its neighbours with it.
    """
    widths = [_widest(table, n) for n in range(len(table.head))]
    whole = _whole(widths, line)
    sides = list(table.align) if table.align else ["l"] * len(table.head)
    wrapped = any(s == "r" and n not in whole for n, s in enumerate(sides))
    return tuple(
        Column("l" if s == "r" and wrapped and widths[n] > FIGURE else s, n in whole)
        for n, s in enumerate(sides)
    )


def _whole(widths: list[float], line: float) -> set[int]:
    """Return the columns that are kept on one line."""
    room = line - GAP * len(widths)
    order = sorted(range(len(widths)), key=lambda n: widths[n])
    whole: set[int] = set()
    for done, n in enumerate(order, start=1):
        room -= widths[n]
        if room < LEAST * (len(widths) - done):
            break
        whole.add(n)
    wrapping = [w for n, w in enumerate(widths) if n not in whole]
    # Columns of about the same length wrap together rather than one for the other's sake.
    return {n for n in whole if not wrapping or widths[n] <= ALIKE * min(wrapping)}


def _widest(table: Table, column: int) -> float:
    """Return the letters of a column's longest cell, its heading included."""
    cells = [r.cells[column] for r in table.rows if r.kind != "group" and column < len(r.cells)]
    return max(_letters(cell) for cell in (table.head[column], *cells))


def _letters(text: str) -> float:
    """Return about how many letters a cell takes; a fraction takes the room of one."""
    return len(_FRACTION.sub("½", _MARKS.sub("", text)))
