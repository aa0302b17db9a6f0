"""What pages are packed from: items measured, long tables in pieces of a few rows.

In: an item, its forms, what was measured. Out: `Piece`s.
Invariant: a table stands in one form everywhere; its heading is counted once for each page or
column that it goes on in, and no piece ends with a group's heading or begins with a part of
the row before it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from publish.model.words import Row, Table
from publish.typeset.composing.forms import ASIDE, BESIDE, COLUMN, WIDE, Form, group_of
from publish.typeset.composing.grid import Grid
from publish.typeset.composing.items import Item
from publish.typeset.composing.measuring import Measured

SIDES = (BESIDE, ASIDE)
WHOLE = 12
"""Rows of a table that is never parted."""
FEW = 3
"""Rows of each of its pieces: what may stand alone."""
GAIN = 0.86
"""Share of the area across the measure that a table in a column must not take more than."""


@dataclass(frozen=True)
class Shape:
    """A piece in one form: heights at any scale of its figure."""

    form: Form
    base: float
    """Points that do not change with the figure; of words beside it, 0."""
    told: float
    figure: float
    """Points of the figure at scale 1."""
    below: float
    """Of a figure beside words: its caption."""

    def height(self, scale: float) -> float:
        if self.form.name in SIDES:
            return self.base + max(self.told, self.below + scale * self.figure)
        return self.base + scale * self.figure

    def air(self, scale: float, grid: Grid) -> float:
        """Return the area that stays empty in it, in square points."""
        if self.form.plate is None or self.form.name == COLUMN:
            return 0.0
        wide = float(self.form.plate.width) * scale
        shown = self.below + scale * self.figure
        if self.form.name == WIDE:
            return max(0.0, grid.measure - wide) * scale * self.figure
        room = grid.column if self.form.name == BESIDE else grid.aside
        words = grid.measure - grid.gutter - room
        under = max(0.0, self.told - shown) * room + max(0.0, shown - self.told) * words
        return under + max(0.0, room - wide) * shown


@dataclass(frozen=True)
class Piece:
    item: Item
    shapes: Mapping[str, Shape]
    rows: tuple[int, int] = (0, 0)
    again: float = 0.0
    """Points of the heading that is repeated where a table goes on."""
    goes_on: bool = False
    """Whether it is a later piece of the table before it."""
    columns: tuple[float, ...] = field(default=())

    @property
    def heads(self) -> bool:
        return self.item.heads


def pieces(item: Item, found: Sequence[tuple[Form, Measured]], grid: Grid) -> Iterator[Piece]:
    """Yield the pieces of one item."""
    fitting = [(f, m) for f, m in found if m.fits] or list(found[-1:])
    if item.kind != "table":
        shapes = {f.name: _shape(f, m) for f, m in fitting}
        narrow = next(((f, m) for f, m in found if f.name == COLUMN and m.shown), None)
        if narrow is not None and grid.columns == 2:
            shapes[BESIDE] = _beside(*narrow)
        yield Piece(item, shapes)
        return
    form, measured = _table_form(fitting, grid)
    table: Table = item.block
    for start, stop in _cuts(table, measured):
        last = stop == len(table.rows)
        high = sum(measured.rows[start:stop]) + (measured.notes if last else 0.0)
        high += 0.0 if start else measured.head
        shape = Shape(form, high, 0.0, 0.0, 0.0)
        group = group_of(table.rows, start)
        again = measured.head if start else 0.0
        again += 0.0 if group is None else measured.rows[group]
        yield Piece(item, {form.name: shape}, (start, stop), again, start > 0, measured.columns)


def _shape(form: Form, found: Measured) -> Shape:
    """Return how a measured form grows with its figure."""
    if form.name == ASIDE and found.shown:
        return _beside(form, found)
    if form.plate is None or not form.elastic:
        return Shape(form, found.height, 0.0, 0.0, 0.0)
    drawn = form.plate.height
    return Shape(form, found.height - form.usual * drawn, 0.0, drawn, 0.0)


def _beside(form: Form, found: Measured) -> Shape:
    """Return the form in which a figure stands beside the words that it was measured below."""
    drawn = form.plate.height
    own = replace(form, name=BESIDE) if form.name == COLUMN else form
    caption = found.shown - form.usual * drawn
    return Shape(own, found.height - found.both, found.told, drawn, caption)


def _table_form(found: Sequence[tuple[Form, Measured]], grid: Grid) -> tuple[Form, Measured]:
    """Return the form that a table takes everywhere: in a column where that saves paper."""
    narrow = next(((f, m) for f, m in found if f.name == COLUMN), None)
    wide = next(((f, m) for f, m in found if f.name == WIDE), None)
    if narrow is None or wide is None:
        return narrow or wide or found[0]
    area = narrow[1].height * (grid.column + grid.gutter / 2)
    return narrow if area < GAIN * wide[1].height * grid.measure else wide


def _cuts(table: Table, measured: Measured) -> list[tuple[int, int]]:
    """Return the rows of each piece, first and after the last."""
    rows = table.rows
    if len(rows) <= WHOLE or len(measured.rows) != len(rows):
        return [(0, len(rows))]
    cuts = [0]
    for n in range(1, len(rows)):
        if n - cuts[-1] >= FEW and len(rows) - n >= FEW and _may_part(rows, n):
            cuts.append(n)
    return list(zip(cuts, [*cuts[1:], len(rows)], strict=True))


def _may_part(rows: Sequence[Row], n: int) -> bool:
    """Return whether a table may go on elsewhere with row n."""
    return rows[n].kind not in ("part", "total") and rows[n - 1].kind != "group"
