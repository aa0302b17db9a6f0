"""The forms that an item can stand in, and the sizes that its figure can have in each.

In: an item, the grid, the artwork. Out: `Form`s.
Invariant: no figure is offered at a size at which its lettering is under `SMALLEST`, unless it
fits no page otherwise; a figure that is not scalable keeps its size.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from publish.model.drawing import Lettering, Primitive, Seen
from publish.model.figure import Artwork
from publish.model.words import FigureSpec, Row, Table
from publish.typeset import plates
from publish.typeset.composing.grid import Grid
from publish.typeset.composing.items import Item

COLUMN, BESIDE, ASIDE, WIDE = "column", "beside", "aside", "wide"
"""In a column; words in the left column and their figure in the right one; the same with more
room for the figure; across the measure."""
SMALLEST = 6.1
"""Points: no letter of a figure is made smaller. A tenth above what the finished pages are
measured by."""
LEAST = 0.75
"""Of its own size: no figure is made smaller, whatever its lettering."""
TALLEST = 0.8
"""Of a page's height: a figure with words is no taller; one with a page of its own, but for
its heading, `WHOLE`."""
WHOLE = 0.88
FREE = 10.0
NARROW = 0.62
"""Letters of a table's longest cells, all columns together, that fit a column, as a share of
what fit across the measure: more would wrap in every row."""


@dataclass(frozen=True)
class Form:
    """An item in one of its forms: `width` of its box, its figure at its own size, and by
    what the figure may be multiplied. `plate` is None for an item without one."""

    name: str
    width: float
    plate: Any = None
    least: float = 1.0
    most: float = 1.0
    far: bool = False
    """Whether a step's figure takes the room below its number too."""

    @property
    def usual(self) -> float:
        """Return the scale at which it is measured: its own size, or the nearest to it."""
        return min(max(1.0, self.least), self.most)

    @property
    def elastic(self) -> bool:
        return self.plate is not None and self.most > self.least


def forms(item: Item, grid: Grid, artwork: Artwork) -> tuple[Form, ...]:
    """Return every form that an item may stand in, at least one."""
    names = _NAMES.get(item.kind, (COLUMN,))
    spec = _spec(item)
    if item.kind == "step" and spec is not None:
        names = (COLUMN, ASIDE, WIDE)
    if grid.columns == 1:
        names = (COLUMN,)
    if item.kind == "photo":
        photo = item.block.within(grid.measure, grid.height * 0.66)
        return (Form(names[-1], grid.measure, photo),)
    if spec is None:
        return tuple(Form(n, grid.column if n == COLUMN else grid.measure) for n in names)
    return _sized(item, spec, names, grid, artwork)


_NAMES: dict[str, tuple[str, ...]] = {
    "contents": (WIDE,),
    "title": (WIDE,),
    "part": (COLUMN, WIDE),
    "small": (COLUMN, WIDE),
    "words": (COLUMN, WIDE),
    "told": (COLUMN,),
    "table": (COLUMN, WIDE),
    "figure": (COLUMN, WIDE),
    "grid": (WIDE,),
    "photo": (WIDE,),
    "where": (COLUMN, WIDE),
}


def _spec(item: Item) -> FigureSpec | None:
    """Return the figure that an item shows and that may be sized."""
    if item.kind == "step":
        found: FigureSpec | None = item.block.figure
        return found
    block = item.figure if item.kind == "told" else item.block if item.kind == "figure" else None
    return block.figure if block is not None else None


def _sized(
    item: Item, spec: FigureSpec, names: tuple[str, ...], grid: Grid, artwork: Artwork
) -> tuple[Form, ...]:
    """Return the forms in which a figure can be read; the widest one where it is in none."""
    plate = plates.plate(artwork, spec)
    page = item.kind == "figure" and item.block.width == "page"
    if page:
        names = names[-1:]
    found = []
    for name in names:
        made = _in_room(item, Form(name, _width(name, grid), plate), page, grid, artwork, spec)
        if made.most >= made.least or name == names[-1]:
            most = made.most or 1.0
            found.append(replace(made, least=min(made.least, most), most=most))
            if name == COLUMN:
                break
    return tuple(found)


def _width(name: str, grid: Grid) -> float:
    return {COLUMN: grid.column, ASIDE: grid.narrow}.get(name, grid.measure)


def _in_room(
    item: Item, form: Form, page: bool, grid: Grid, artwork: Artwork, spec: FigureSpec
) -> Form:
    """Return a form with the sizes that its figure can have there; `most` is under `least`
    where it has none."""
    plate = form.plate
    tall = grid.height * (WHOLE if page else TALLEST) / plate.height
    room = grid.aside if form.name == ASIDE else form.width
    least = 1.0 if not plate.scalable else 0.0 if page else _least(artwork, spec, grid)
    far = False
    if item.kind == "step" and form.name != ASIDE:
        far = least * plate.width > room - grid.hang
        room -= 0.0 if far else grid.hang
    grow = 1.0 if not plate.scalable else FREE if page else grid.grow
    most = min(grow, room / plate.width, tall)
    if page:
        least = 0.7 * most
    return replace(form, least=least, most=most if plate.scalable or most >= 1 else 0.0, far=far)


def _least(artwork: Artwork, spec: FigureSpec, grid: Grid) -> float:
    """Return the least scale at which a figure's words can be read."""
    figure = artwork.figures[spec.key]
    if figure.drawing is None:
        return grid.legible
    sizes = list(_lettered(figure.drawing.items))
    return max(LEAST, SMALLEST / min(sizes)) if sizes else LEAST


def _lettered(items: Iterable[Primitive]) -> Iterator[float]:
    """Yield the size of every line of a drawing's lettering, in points."""
    for item in items:
        if isinstance(item, Lettering):
            yield item.size
        elif isinstance(item, Seen):
            yield from _lettered(item.items)


@dataclass(frozen=True)
class Placed:
    """An item as a layout's templates set it: in a form, its figure sized."""

    kind: str
    block: Any
    section: Any
    form: str
    width: float
    plate: Any = None
    rows: tuple[int, int] = (0, 0)
    """Of a table: which of its rows, first and after the last; all where both are 0."""
    columns: tuple[float, ...] = ()
    """Of a table: how wide its columns are, in points; empty while that is measured."""
    far: bool = False
    """Whether a step's figure takes the room below its number too."""
    gap: float = 0.0
    """Points to what stands before it in its column."""

    @property
    def some(self) -> Table:
        """Return the table with those of its rows that stand here, headed by their group again;
        its notes after the last."""
        table: Table = self.block
        start, stop = self.rows
        if stop == 0 or (start == 0 and stop == len(table.rows)):
            return table
        notes = table.notes if stop == len(table.rows) else ()
        head = group_of(table.rows, start)
        again = () if head is None else (table.rows[head],)
        return replace(table, rows=(*again, *table.rows[start:stop]), notes=notes)


def group_of(rows: Sequence[Row], at: int) -> int | None:
    """Return which row heads the group that goes on with row `at`; None at the start of one or
    where rows are in none."""
    if at == 0 or rows[at].kind == "group":
        return None
    return next((n for n in reversed(range(at)) if rows[n].kind == "group"), None)


def placed(item: Item, form: Form, scale: float) -> Placed:
    """Return an item in a form, its figure at a scale."""
    plate = form.plate
    if plate is not None and item.kind != "photo":
        plate = replace(plate, width=plate.width * scale, height=plate.height * scale)
    return Placed(item.kind, item.block, item.section, form.name, form.width, plate, far=form.far)
