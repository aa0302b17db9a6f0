"""Blocks, sashing, cornerstones and setting triangles as rows, straight or on point.

In: a size. Out: `Band`s of `Cell`s: rows of blocks and the rows of sashing between them.
Invariant: cells cover the inside of the borders once, and each band is one strip from edge
to edge, so bands are joined by full straight seams, and so are the cells of a band.

Everything is worked out in the frame of the blocks. Straight, that is the top itself. On
point the frame is turned 45 degrees clockwise, and its origin is the top left corner of
what the blocks fill: the block at row r and column c, with its strips of sashing, is the
square of the lattice in column c + r and row r - c, and where the edge of the top cuts
through the lattice's squares it leaves setting triangles. So nothing is irrational here,
although much of it is once it is turned.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from publish.arcs import Ring
from publish.draft.homes import Home, inner_box, moved
from publish.model.draft import Patch
from publish.model.size import Size
from publish.surd import turned

Flat = tuple[tuple[Fraction, Fraction], ...]
Span = tuple[Fraction, Fraction, int | None]
"""Where something begins and ends along one axis; the number of the row or column of
blocks, None for a strip of sashing."""


@dataclass(frozen=True)
class Cell:
    """One place of a band: the home of a block, or a patch."""

    flat: Flat
    """Its outline in the frame."""
    ring: Ring
    """The same in the top."""
    home: Home | None = None
    patch: Patch | None = None


@dataclass(frozen=True)
class Band:
    """A row of blocks, or a row of sashing, from left to right in the frame."""

    cells: tuple[Cell, ...]
    sashing: bool = False

    @property
    def corner(self) -> bool:
        """Return whether it is nothing but a corner triangle."""
        only = self.cells[0].patch
        return len(self.cells) == 1 and only is not None and only.role == "setting"


def bands(size: Size, places: Iterable[Home]) -> tuple[Band, ...]:
    """Return the rows that lie inside the borders, from the top of the frame."""
    known = {_square(size, home): home for home in places}
    left, top, _, _ = inner_box(size)
    turn = 45 if size.on_point else 0
    counts = dict.fromkeys(("sashing", "cornerstone", "side triangle", "corner triangle"), 0)
    found = []
    for low, high, row in _spans(size, upright=True):
        cells = []
        for ring, column in _cut(size, low, high, row):
            placed = moved(tuple(turned(p, turn) for p in ring), left, top)
            home = None if column is None or row is None else known.get((row, column))
            if home is not None:
                cells.append(Cell(ring, placed, home))
                continue
            name, fabric, role = _filling(size, ring, row, column)
            counts[name] += 1
            key = f"{name} {counts[name]}"
            cells.append(Cell(ring, placed, None, Patch(key, placed, fabric, role, turn=turn)))
        if cells:
            found.append(Band(tuple(cells), row is None))
    return tuple(found)


def _square(size: Size, home: Home) -> tuple[int, int]:
    """Return row and column of the lattice square that a block fills."""
    if not size.on_point:
        return home.row, home.column
    return home.row - home.column, home.row + home.column + (0 if home.arranged else 1)


def _spans(size: Size, upright: bool) -> Iterator[Span]:
    """Yield the rows of the frame, or its columns, with the strips of sashing between."""
    side, width = size.block_side, size.sashing.width if size.sashing else Fraction(0)
    if size.on_point:
        # Squares are centred on multiples of the pitch; those outside the blocks are cut.
        first, last = (-size.columns, size.rows) if upright else (-1, size.columns + size.rows - 1)
        start, outer = (first + (0 if upright else 1)) * size.pitch - side / 2, False
    else:
        first, last = 0, (size.rows if upright else size.columns) - 1
        outer = bool(size.sashing and size.sashing.outer)
        start = width if outer else Fraction(0)
    for number in range(first, last + 1):
        if width and (outer or number > first):
            yield start - width, start, None
        yield start, start + side, number
        start += side + width
    if width and outer:
        yield start - width, start, None


def _cut(
    size: Size, low: Fraction, high: Fraction, row: int | None
) -> Iterator[tuple[Flat, int | None]]:
    """Yield what a row of the frame holds: rings inside the top, and their columns."""
    spans = list(_spans(size, upright=False))
    if row is None and size.sashing is not None and size.sashing.cornerstones is None:
        spans = [(spans[0][0], spans[-1][1], None)]  # the strip between rows runs through
    for begin, end, column in spans:
        ring: Flat = ((begin, low), (end, low), (end, high), (begin, high))
        if size.on_point:
            ring = _within(size, ring)
        if ring:
            yield ring, column


def _within(size: Size, ring: Flat) -> Flat:
    """Return the part of a ring that lies inside the top, in the frame on point."""
    wide, high = 2 * size.columns * size.pitch, 2 * size.rows * size.pitch
    sides = ((1, -1, 0), (1, 1, 0), (-1, 1, wide), (-1, -1, high))
    for across, down, room in sides:
        ring = _halved(ring, across, down, Fraction(room))
    return ring if len(ring) > 2 else ()


def _halved(ring: Flat, across: int, down: int, room: Fraction) -> Flat:
    """Return the part of a ring where across·x + down·y + room is not negative."""
    found: list[tuple[Fraction, Fraction]] = []
    for (x, y), (u, v) in zip(ring, (*ring[1:], *ring[:1]), strict=True):
        one, two = across * x + down * y + room, across * u + down * v + room
        if one >= 0:
            found.append((x, y))
        if one * two < 0:
            share = one / (one - two)
            found.append((x + share * (u - x), y + share * (v - y)))
    kept = tuple(p for i, p in enumerate(found) if p != found[i - 1])
    return kept if len(kept) > 2 else ()


def _filling(size: Size, ring: Flat, row: int | None, column: int | None) -> tuple[str, str, str]:
    """Return name, fabric and role of what is no block."""
    sashing = size.sashing
    if row is not None and column is not None:
        # A corner triangle is a quarter of a square, a side triangle half of one.
        half = 2 * _area(ring) == size.block_side**2
        return f"{'side' if half else 'corner'} triangle", size.setting_fabric, "setting"
    assert sashing is not None
    if row is None and column is None and sashing.cornerstones is not None:
        return "cornerstone", sashing.cornerstones, "cornerstone"
    return "sashing", sashing.fabric, "sashing"


def _area(ring: Flat) -> Fraction:
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    return sum((x * v - u * y for (x, y), (u, v) in pairs), Fraction(0)) / 2
