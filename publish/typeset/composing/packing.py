"""Which items stand on which page, in which form and size: the cheapest way there is.

In: pieces in reading order, the grid. Out: `Page`s of `Band`s.
Invariant: reading order is kept, down a column, then across, then down the page; nothing
is parted from its heading; the same pieces always give the same pages.

A page is a pile of bands. A band is one piece across the measure, or two columns of pieces.
The search is a dynamic programme over (next piece, height used on the page): pages cost most,
then air inside bands, ragged ends, figures made smaller and sections that begin low on a page.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from publish.typeset.composing.forms import ASIDE, BESIDE, COLUMN, WIDE
from publish.typeset.composing.grid import Grid
from publish.typeset.composing.pieces import Piece, Shape

AIRY = 0.45
"""Share of a page's height under which it looks unfinished."""
MANY = 40
"""Pieces that a band of two columns holds at most."""
STEP = 8.0
"""Points by which heights on a page are told apart."""
LEVELS = (0.0, 1.0, 2.0)
"""Figures at their least, their usual and their largest size."""
_AIR, _RAGGED, _BAND, _SMALL = 0.5, 2.0, 0.006, 0.012
"""Costs in pages: of a page of air, of a page's empty end (squared), of a band, of a figure
at its least size."""
_MID, _LOW, _PARTED, _TORN = 0.03, 0.1, 0.06, 0.6
"""Of a title down a page, of one in its last third, of a table that goes on elsewhere, of a
short section that does."""
_OVER = 50.0


@dataclass(frozen=True)
class Band:
    """Pieces from `start`: to `middle` in the left column, to `stop` in the right one; one
    piece in a `form` across the measure where that is not `column`."""

    start: int
    middle: int
    stop: int
    form: str
    level: float
    height: float


@dataclass(frozen=True)
class Page:
    bands: tuple[Band, ...]
    last: bool = False
    """Whether a part of the booklet ends with it."""


def scale(shape: Shape, level: float) -> float:
    """Return a figure's scale: 0 is its least, 1 its usual, 2 its largest."""
    form = shape.form
    if level <= 1.0:
        return form.least + (form.usual - form.least) * level
    return form.usual + (form.most - form.usual) * (level - 1.0)


@dataclass
class _State:
    cost: float
    height: float
    opened: bool
    """Whether the page began with something that begins one in any case."""
    before: _State | None
    band: Band | None


@dataclass
class Columns:
    """Sums over the pieces that can stand in a column, at each level."""

    pieces: Sequence[Piece]
    grid: Grid
    sums: dict[float, list[float]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        for level in LEVELS:
            total, sums = 0.0, [0.0]
            for at, piece in enumerate(self.pieces):
                shape = piece.shapes.get(COLUMN)
                total += gap(self.pieces, at, self.grid)
                total += shape.height(scale(shape, level)) if shape else 0.0
                sums.append(total)
            self.sums[level] = sums

    def stack(self, start: int, stop: int, level: float) -> float:
        """Return the height of pieces below each other in a column."""
        if start == stop:
            return 0.0
        sums = self.sums[level]
        first = gap(self.pieces, start, self.grid)
        return sums[stop] - sums[start] - first + self.pieces[start].again


def gap(pieces: Sequence[Piece], at: int, grid: Grid) -> float:
    """Return the distance of a piece from the one before it."""
    return 0.0 if pieces[at].goes_on else grid.gap(pieces[at].item.gap)


def pack(pieces: Sequence[Piece], grid: Grid) -> list[Page]:
    """Return the pages of a run of pieces that ends with the last page."""
    if not pieces:
        return []
    columns = Columns(pieces, grid)
    states: list[dict[int, _State]] = [{} for _ in range(len(pieces) + 1)]
    states[0][0] = _State(0.0, 0.0, False, None, None)
    for at in range(len(pieces)):
        if at:
            _turn(pieces, at, states[at], grid)
        useful = _useful(states[at])
        if not useful:
            continue
        bands = list(_bands(columns, at))
        for state in useful:
            for band, cost in bands:
                _add(columns, state, band, cost, states[band.stop])
    ends = [(s.cost + _end(s.height, grid), s.height, s) for s in states[-1].values()]
    return _pages(min(ends, key=lambda e: e[:2])[2]) if ends else []


def _useful(states: dict[int, _State]) -> list[_State]:
    """Return the states of which none is both fuller and dearer than another."""
    kept: list[_State] = []
    for state in sorted(states.values(), key=lambda s: (s.height, s.cost)):
        if not kept or state.cost < kept[-1].cost:
            kept.append(state)
    return kept


def _turn(pieces: Sequence[Piece], at: int, states: dict[int, _State], grid: Grid) -> None:
    """Let the page end before a piece, where it may; it must, where that begins one."""
    if _stays(pieces, at):
        return
    torn = _TORN if pieces[at].item.brief else _PARTED if pieces[at].goes_on else 0.0
    ends = []
    for state in states.values():
        if state.height > 0:
            void = max(0.0, 1 - state.height / grid.height - 0.04)
            ends.append((state.cost + 1.0 + _RAGGED * void * void + torn, state.height, state))
    best = min(ends, key=lambda e: e[:2]) if ends else None
    if pieces[at].item.fresh:
        # Rather than leave a page nearly empty, what begins one runs on.
        few = {k: s for k, s in states.items() if not s.opened and s.height < AIRY * grid.height}
        states.clear()
        states |= few
    if best is not None:
        states[0] = _State(best[0], 0.0, False, best[2], None)


def _stays(pieces: Sequence[Piece], at: int) -> bool:
    """Return whether a piece must stand below the one before it."""
    return pieces[at].item.follows or _bound(pieces, at - 1)


def _bound(pieces: Sequence[Piece], at: int) -> bool:
    """Return whether a piece heads what comes after it."""
    after = pieces[at + 1].item if at + 1 < len(pieces) else None
    if not pieces[at].heads or after is None:
        return False
    return after.kind not in ("title",) and not (
        pieces[at].item.kind == "words" and after.kind == "part"
    )


def _end(height: float, grid: Grid) -> float:
    return 0.5 + 0.5 * height / grid.height


def _add(columns: Columns, state: _State, band: Band, cost: float, onto: dict[int, _State]) -> None:
    """Put a band below what stands on the page, if there is room."""
    pieces, grid = columns.pieces, columns.grid
    first = pieces[band.start]
    height = state.height + band.height
    if state.height > 0:
        height += gap(pieces, band.start, grid)
        if first.item.kind == "title":
            cost += _MID + (_LOW if state.height > 0.66 * grid.height else 0.0)
        if band.form != COLUMN or grid.columns == 1:
            height -= first.again
    if height > grid.height:
        if state.height > 0:
            return
        cost += _OVER
    opened = first.item.fresh if state.height == 0 else state.opened
    made = _State(state.cost + cost, height, opened, state, band)
    key = int(height / STEP) + 1
    known = onto.get(key)
    if known is None or (made.cost, made.height) < (known.cost, known.height):
        onto[key] = made


def _bands(columns: Columns, at: int) -> Iterator[tuple[Band, float]]:
    """Yield every band that can begin with a piece, with its cost."""
    piece, grid = columns.pieces[at], columns.grid
    page = grid.height * grid.measure
    for name in (BESIDE, ASIDE, WIDE):
        shape = piece.shapes.get(name)
        for level in LEVELS if shape is not None and shape.form.elastic else LEVELS[1:2]:
            if shape is not None:
                size = scale(shape, level)
                high = shape.height(size) + piece.again
                cost = _BAND + _AIR * shape.air(size, grid) / page
                cost += _SMALL if level < 1 else 0.0
                yield Band(at, at + 1, at + 1, name, level, high), cost
    if COLUMN in piece.shapes:
        yield from _columns(columns, at, page)


def _columns(columns: Columns, at: int, page: float) -> Iterator[tuple[Band, float]]:
    """Yield the bands of columns that begin with a piece."""
    pieces, grid = columns.pieces, columns.grid
    elastic = 0
    for stop in range(at + 1, min(at + MANY, len(pieces)) + 1):
        last = pieces[stop - 1]
        if COLUMN not in last.shapes or (stop > at + 1 and last.item.fresh):
            return
        elastic += last.shapes[COLUMN].form.elastic
        if grid.columns == 2 and columns.stack(at, stop, 0.0) > 2.1 * grid.height and stop > at + 1:
            return
        if grid.columns == 1 and stop > at + 1:
            return
        if _bound(pieces, stop - 1) and grid.columns == 2:
            continue
        for level in LEVELS if elastic else LEVELS[1:2]:
            middle = _middle(columns, at, stop, level) if grid.columns == 2 else stop
            if middle is None:
                continue
            left, right = columns.stack(at, middle, level), columns.stack(middle, stop, level)
            high = max(left, right)
            if high > grid.height and stop > at + 1:
                continue
            lower = (at, middle) if left < right else (middle, stop)
            air = (high - min(high, columns.stack(*lower, 2.0))) * (
                grid.column if grid.columns > 1 else 0.0
            )
            cost = _BAND + _AIR * air / page + (_SMALL * elastic if level < 1 else 0.0)
            cost += _PARTED if middle < stop and pieces[middle].goes_on else 0.0
            cost += 2 * _PARTED if pieces[at].goes_on and grid.columns == 2 else 0.0
            yield Band(at, middle, stop, COLUMN, level, high), cost


def _middle(columns: Columns, at: int, stop: int, level: float) -> int | None:
    """Return where the right column begins so that the band is lowest; None for nowhere."""
    pieces = columns.pieces
    best: tuple[float, int] | None = None
    for middle in range(at + 1, stop + 1):
        if middle < stop and _stays(pieces, middle):
            continue
        left, right = columns.stack(at, middle, level), columns.stack(middle, stop, level)
        high = max(left, right)
        if best is None or high < best[0] - 0.01:
            best = (high, middle)
        elif left > right:
            break
    return best[1] if best is not None else None


def _pages(state: _State) -> list[Page]:
    """Return the pages that lead to a state."""
    found: list[list[Band]] = [[]]
    at: _State | None = state
    while at is not None and at.before is not None:
        if at.band is not None:
            found[-1].append(at.band)
        else:
            found.append([])
        at = at.before
    made = [tuple(reversed(bands)) for bands in reversed(found)]
    return [Page(bands, n == len(made)) for n, bands in enumerate(made, start=1)]
