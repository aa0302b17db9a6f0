"""Pages made full: figures grow and gaps open until the last line reaches the foot.

In: packed pages, their pieces, the grid. Out: `Leaf`s, what a layout's templates set.
Invariant: nothing grows beyond what keeps its page; the columns of a band end together as far
as figures and gaps allow; the page that ends a part is filled only when it is nearly full.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from publish.typeset.composing.forms import COLUMN, Placed, placed
from publish.typeset.composing.grid import Grid
from publish.typeset.composing.items import Sheets
from publish.typeset.composing.packing import Band, Page, gap, scale
from publish.typeset.composing.pieces import Piece, Shape

SPARE = 1.0
"""Points kept free at a page's foot: what is measured is rounded."""
ROUNDS = 18
"""Halvings by which a size is found."""
NEARLY = 0.3
"""Share of a last page that may be empty for its figures to grow into it."""


@dataclass(frozen=True)
class Row:
    """A band as set: one column across the measure, or two; `gap` points below the last."""

    columns: tuple[tuple[Placed, ...], ...]
    gap: float
    wide: bool


@dataclass(frozen=True)
class Leaf:
    """A page of rows, or the template sheets that have pages of their own."""

    rows: tuple[Row, ...] = ()
    sheets: tuple[object, ...] = ()


def leaf(page: Page, pieces: Sequence[Piece], grid: Grid) -> Leaf:
    """Return one page with its figures and gaps at their final sizes."""
    gaps = [0.0 if n == 0 else gap(pieces, band.start, grid) for n, band in enumerate(page.bands)]
    room = grid.height - SPARE - sum(gaps)

    def high(growth: float) -> float:
        return sum(_height(b, pieces, grid, growth, n == 0) for n, b in enumerate(page.bands))

    void = room - high(0.0)
    growth = 0.0
    if not page.last or void < NEARLY * grid.height:
        growth = _most(lambda t: high(t) <= room)
    left = max(0.0, room - high(growth))
    opened = _opened(gaps, left, grid) if not page.last or void < NEARLY * grid.height else gaps
    rows = []
    for n, band in enumerate(page.bands):
        rows.append(_row(band, pieces, grid, growth, opened[n], n == 0))
    return Leaf(tuple(_joined(rows)))


def _most(fits: Callable[[float], bool]) -> float:
    """Return the largest number up to 1 that fits; 0 where none does."""
    if fits(1.0):
        return 1.0
    low, high = 0.0, 1.0
    for _ in range(ROUNDS):
        middle = (low + high) / 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    return low


def _opened(gaps: list[float], left: float, grid: Grid) -> list[float]:
    """Return the gaps between bands, opened evenly by what is left of the page."""
    open_ = [n for n, g in enumerate(gaps) if g > 0]
    each = min(grid.stretch, left / len(open_)) if open_ else 0.0
    return [g + each if n in open_ else g for n, g in enumerate(gaps)]


def _size(shape: Shape, level: float, growth: float) -> float:
    """Return a figure's scale between that of its level and its largest."""
    start = scale(shape, level)
    return start + (shape.form.most - start) * growth


def _height(band: Band, pieces: Sequence[Piece], grid: Grid, growth: float, top: bool) -> float:
    if band.form != COLUMN or grid.columns == 1:
        piece = pieces[band.start]
        shape = piece.shapes[band.form]
        again = piece.again if top else 0.0
        return shape.height(_size(shape, band.level, growth)) + again
    stacks = ((band.start, band.middle), (band.middle, band.stop))
    return max(_stack(s, band, pieces, grid, growth) for s in stacks)


def _stack(
    ends: tuple[int, int], band: Band, pieces: Sequence[Piece], grid: Grid, growth: float
) -> float:
    """Return the height of a column's pieces with their figures grown."""
    total = 0.0
    for at in range(*ends):
        shape = pieces[at].shapes[COLUMN]
        total += shape.height(_size(shape, band.level, growth))
        total += pieces[at].again if at == ends[0] else gap(pieces, at, grid)
    return total


def _row(
    band: Band, pieces: Sequence[Piece], grid: Grid, growth: float, space: float, top: bool
) -> Row:
    if band.form != COLUMN or grid.columns == 1:
        piece = pieces[band.start]
        shape = piece.shapes[band.form]
        return Row(((_placed(piece, shape, _size(shape, band.level, growth), 0.0),),), space, True)
    high = _height(band, pieces, grid, growth, top)
    columns = []
    for ends in ((band.start, band.middle), (band.middle, band.stop)):
        own = _beside_each_other(ends, band, pieces, grid, growth, high)
        left = max(0.0, high - _stack(ends, band, pieces, grid, own))
        inner = [gap(pieces, at, grid) for at in range(*ends)]
        inner[:1] = [0.0] * len(inner[:1])
        inner = _opened(inner, left, grid)
        columns.append(
            tuple(
                _placed(pieces[at], s := pieces[at].shapes[COLUMN], _size(s, band.level, own), g)
                for at, g in zip(range(*ends), inner, strict=True)
            )
        )
    return Row(tuple(_merged(c) for c in columns), space, False)


def _beside_each_other(
    ends: tuple[int, int],
    band: Band,
    pieces: Sequence[Piece],
    grid: Grid,
    growth: float,
    high: float,
) -> float:
    """Return how far a column's figures grow on until it ends beside the other."""

    def fits(more: float) -> bool:
        return _stack(ends, band, pieces, grid, growth + (1 - growth) * more) <= high + 0.01

    return growth + (1 - growth) * _most(fits)


def _placed(piece: Piece, shape: Shape, size: float, space: float) -> Placed:
    made = placed(piece.item, shape.form, size)
    return replace(made, rows=piece.rows, columns=piece.columns, gap=space)


def _merged(column: Sequence[Placed]) -> tuple[Placed, ...]:
    """Return a column with the pieces of a table that follow each other as one."""
    found: list[Placed] = []
    for each in column:
        before = found[-1] if found else None
        if (
            before
            and each.rows[0]
            and each.block is before.block
            and before.rows[1] == each.rows[0]
        ):
            found[-1] = replace(before, rows=(before.rows[0], each.rows[1]))
        else:
            found.append(each)
    return tuple(found)


def _joined(rows: Sequence[Row]) -> list[Row]:
    """Return rows with those across the measure that are one table as one."""
    found: list[Row] = []
    for _, group in groupby(enumerate(rows), key=lambda p: (p[1].wide, p[1].wide or p[0])):
        run = [row for _, row in group]
        if not run[0].wide:
            found += run
            continue
        for row in run:
            both = (
                _merged((*found[-1].columns[0], *row.columns[0]))
                if found and found[-1].wide
                else ()
            )
            if len(both) == 1:
                found[-1] = replace(found[-1], columns=(both,))
            else:
                found.append(row)
    return found


def sheets_leaf(found: Sheets) -> Leaf:
    """Return the pages of template sheets."""
    return Leaf(sheets=found.blocks)
