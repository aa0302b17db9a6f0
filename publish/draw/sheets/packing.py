"""Several templates on one sheet, or on sheets that are joined: where each lies.

In: the outlines that each template may be laid in, one for each way of turning it, and the
window of a sheet. Out: `Nest`s: grids of sheets, and what lies where on each.
Invariant: outlines on one nest are `APART` or further from each other and inside the grid;
what fits one sheet crosses no join. All lengths are inches.

Templates are laid on a raster (`raster.py`), the largest first, each as high as it can lie
and then as far to the left, on the first nest that has room.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from shapely.affinity import translate
from shapely.geometry.base import BaseGeometry

from publish.draw.sheets.raster import CELL, Cells, Floats, free, inner, mask_of, within
from publish.draw.sheets.windows import Window
from publish.model.halves import OVERLAP

TRIED = 40
"""Places that are looked at for one that the joins suit, in order."""

Suits = Callable[["Place", Sequence[Window]], bool]
"""Whether the joins of a grid may cut a piece where it would lie."""


def _any(_place: Place, _windows: Sequence[Window]) -> bool:
    return True


@dataclass(frozen=True)
class Outline:
    """One way in which a template may lie: everything that it covers, and of that the words
    beside it, which no join may cut."""

    area: BaseGeometry
    words: BaseGeometry | None = None


@dataclass(frozen=True)
class Piece:
    """A template to be laid: the ways in which it may lie, the best first.

    `rows` and `columns` are the sheets that it needs by itself in its first way.
    """

    name: int
    ways: tuple[Outline, ...]
    rows: int = 1
    columns: int = 1

    @property
    def joined(self) -> bool:
        return self.rows * self.columns > 1


@dataclass(frozen=True)
class Place:
    """Where a piece lies: which of its ways, and how far its outline is moved."""

    name: int
    way: int
    x: float
    y: float


@dataclass(frozen=True)
class Nest:
    """Sheets in a grid, and what lies on them; the first sheet's corner is the origin."""

    rows: int
    columns: int
    places: tuple[Place, ...] = ()


@dataclass
class _Bin:
    """A nest while it is filled: the cells that are taken."""

    nest: Nest
    taken: Cells
    windows: tuple[Window, ...]


def windows_of(rows: int, columns: int, window: tuple[float, float]) -> tuple[Window, ...]:
    """Return the sheets of a grid, neighbours sharing an overlap, in the order of joining."""
    wide, high = window
    found = []
    for row in range(rows):
        for column in range(columns):
            x, y = column * (wide - OVERLAP), row * (high - OVERLAP)
            number = row * columns + column + 1
            found.append(Window(row, column, (x, y, x + wide, y + high), number))
    return tuple(found)


def pack(
    pieces: Sequence[Piece], window: tuple[float, float], suits: Suits = _any
) -> tuple[Nest, ...]:
    """Return nests that hold every piece, on as few sheets as any of some orders gives.

    `suits` says of a joined piece whether the joins may cut it where it would lie. A piece
    that the raster finds no room for on sheets of its own, being as large as they are, lies
    alone, its outline moved to the middle of its grid. Equal pieces give equal nests.
    """
    packer = _Packer(window, suits)
    least = _least(pieces, window)
    best: tuple[Nest, ...] = ()
    tried: list[tuple[int, ...]] = []
    for order in _orders(pieces):
        names = tuple(piece.name for piece in order)
        if names in tried:
            continue
        tried.append(names)
        for low in (True, False):
            nests = packer.laid(order, low)
            if not best or _sheets(nests) < _sheets(best):
                best = nests
            if _sheets(best) <= least:
                return best
    return best


def repeated(nest: Nest, pieces: Sequence[Piece], window: tuple[float, float], most: int) -> Nest:
    """Return a nest of one sheet with its pieces laid as often as they fit, `most` times at
    the most, each the same number of times."""
    wanted = {place.name for place in nest.places}
    once = [piece for piece in pieces if piece.name in wanted]
    packer, best = _Packer(window, _any), nest
    for times in range(2, most + 1):
        order = sorted(once * times, key=lambda p: -p.ways[0].area.area)
        nests = packer.laid(order, low=True)
        if len(nests) > 1:
            break
        best = nests[0]
    return best


def _sheets(nests: Iterable[Nest]) -> int:
    return sum(nest.rows * nest.columns for nest in nests)


def _least(pieces: Sequence[Piece], window: tuple[float, float]) -> int:
    """Return a floor for the sheets: by area, and by the piece that needs the most."""
    area = sum(min(way.area.area for way in piece.ways) for piece in pieces)
    by_area = math.ceil(float(area) / (window[0] * window[1]) - 1e-9)
    return max([by_area, *(int(piece.rows * piece.columns) for piece in pieces)])


def _orders(pieces: Sequence[Piece]) -> Iterable[list[Piece]]:
    """Yield the orders that are tried: joined pieces first in each."""

    def sides(piece: Piece) -> list[float]:
        left, top, right, bottom = piece.ways[0].area.bounds
        return sorted((right - left, bottom - top))

    for rank in (
        lambda p: -p.ways[0].area.area,
        lambda p: -sides(p)[1],
        lambda p: -sides(p)[0],
    ):
        yield sorted(pieces, key=lambda p: (-p.rows * p.columns, rank(p)))


class _Packer:
    """Lays pieces on sheets of one window, and keeps the cells of every outline."""

    def __init__(self, window: tuple[float, float], suits: Suits) -> None:
        self.window = window
        self.suits = suits
        self.masks: dict[int, dict[int, Cells]] = {}

    def laid(self, order: Iterable[Piece], low: bool) -> tuple[Nest, ...]:
        """Lay pieces in an order; of the ways in which one may lie, that which reaches down
        the least is taken, or with `low` False that which reaches the least to the right."""
        bins: list[_Bin] = []
        for piece in order:
            if not any(self._put(bin_, piece, low) for bin_ in bins):
                bins.append(self._opened(piece))
                if not self._put(bins[-1], piece, low):
                    _alone(bins[-1], piece)
        return tuple(b.nest for b in bins)

    def _opened(self, piece: Piece) -> _Bin:
        windows = windows_of(piece.rows, piece.columns, self.window)
        wide, high = windows[-1].box[2:]
        taken = np.zeros((int(high / CELL) + 1, int(wide / CELL) + 1), dtype=bool)
        return _Bin(Nest(piece.rows, piece.columns), taken, windows)

    def _put(self, bin_: _Bin, piece: Piece, low: bool) -> bool:
        """Lay a piece on a nest where there is room; return whether there was."""
        best: tuple[float, float, int, int, int] | None = None
        for way, mask in self._ways(piece).items():
            at = self._first(bin_, piece, way, mask, low)
            if at is None:
                continue
            left, top, right, bottom = piece.ways[way].area.bounds
            down, across = at[0] * CELL + bottom - top, at[1] * CELL + right - left
            reach = (down, across) if low else (across, down)
            if best is None or reach < best[:2]:
                best = (*reach, way, *at)
        if best is None:
            return False
        _, _, way, row, column = best
        mask = self.masks[piece.name][way]
        held = bin_.taken[row : row + mask.shape[0], column : column + mask.shape[1]]
        held |= mask[: held.shape[0], : held.shape[1]]
        places = (*bin_.nest.places, _place(piece, way, row, column))
        bin_.nest = replace(bin_.nest, places=places)
        return True

    def _ways(self, piece: Piece) -> dict[int, Cells]:
        """Return the cells of every way in which a piece may lie, alike ones once."""
        if piece.name not in self.masks:
            found: dict[tuple[tuple[int, ...], bytes], tuple[int, Cells]] = {}
            for way, outline in enumerate(piece.ways):
                mask = mask_of(outline.area)
                found.setdefault((mask.shape, mask.tobytes()), (way, mask))
            self.masks[piece.name] = dict(found.values())
        return self.masks[piece.name]

    def _first(
        self, bin_: _Bin, piece: Piece, way: int, mask: Cells, low: bool
    ) -> tuple[int, int] | None:
        """Return the cell at which a mask's corner may lie: the highest, then the leftmost, or
        the other way round; of some that are tried, the first that the joins suit."""
        outline = piece.ways[way]
        found = free(bin_.taken, mask, empty=not bin_.nest.places)
        found = found[_allowed(bin_.windows, piece, outline, found.astype(float) * CELL)]
        if not len(found):
            return None
        if not low:
            found = found[np.lexsort((found[:, 0], found[:, 1]))]
        if piece.joined:
            for row, column in found[:: max(1, len(found) // TRIED)]:
                if self.suits(_place(piece, way, int(row), int(column)), bin_.windows):
                    return int(row), int(column)
        return int(found[0][0]), int(found[0][1])


def _alone(bin_: _Bin, piece: Piece) -> None:
    """Lay a piece by itself in the middle of its grid, and let nothing else lie there."""
    left, top, right, bottom = piece.ways[0].area.bounds
    wide, high = bin_.windows[-1].box[2:]
    x, y = (wide - left - right) / 2, (high - top - bottom) / 2
    bin_.nest = replace(bin_.nest, places=(Place(piece.name, 0, x, y),))
    bin_.taken[:] = True


def _allowed(windows: Sequence[Window], piece: Piece, outline: Outline, corners: Floats) -> Cells:
    """Return at which corners (down, across) a piece may lie: within the grid, its words on
    one sheet, and on one sheet itself unless it needs several."""
    whole = (0.0, 0.0, *windows[-1].box[2:])
    sheets = [inner(w, windows) for w in windows]
    good = within(outline.area, outline.area, corners, [whole])
    if not piece.joined:
        good &= within(outline.area, outline.area, corners, sheets)
    elif outline.words is not None:
        good &= within(outline.area, outline.words, corners, sheets)
    return good


def _place(piece: Piece, way: int, row: int, column: int) -> Place:
    left, top = piece.ways[way].area.bounds[:2]
    return Place(piece.name, way, column * CELL - left, row * CELL - top)


def outlines(nest: Nest, pieces: Sequence[Piece]) -> tuple[BaseGeometry, ...]:
    """Return the outlines of a nest where they lie."""
    by_name = {piece.name: piece for piece in pieces}
    return tuple(translate(by_name[p.name].ways[p.way].area, p.x, p.y) for p in nest.places)
