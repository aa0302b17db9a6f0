"""Split a template that is larger than a page into sheets that join without a gap.

In: a shape in inches and the size of the window that one sheet can print.
Out: `Tiling`: how the shape was turned, the window of each sheet, and where the
registration marks lie.
Invariant: the windows together hold the whole shape; windows side by side share an
overlap; a mark in an overlap is printed whole on both of its sheets.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import shapely
from shapely import affinity
from shapely.geometry import Point, box
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.sheets.windows import Box, Window, along_joins, at
from publish.model.halves import OVERLAP

MARK = 0.11
"""Half the diagonal of a registration diamond: it fits inside the overlap."""
SHIFTS = (0.5, 0.25, 0.75, 0.0, 1.0)
"""Where in its slack the grid is tried; the middle first, so that no sheet is a sliver."""
SHARES = (0.22, 0.18, 0.26, 0.14, 0.3, 0.1, 0.34, 0.38, 0.42)
"""Where along a join a diamond is tried, from its nearer end."""
SIDES = ("left", "right", "above", "below")
_NEGLIGIBLE = 1e-9


@dataclass(frozen=True)
class Mark:
    """A registration diamond, numbered, centred in the overlap of two sheets."""

    number: int
    x: float
    y: float
    sheets: tuple[str, str]


@dataclass(frozen=True)
class Tiling:
    """A shape laid on a grid of sheets.

    `turn` is in degrees clockwise on the page about the shape's own origin; `shape` is
    the shape so turned. `windows` are in the order in which the sheets are joined: row
    by row, each row from the left. `overlap` is in inches.
    """

    turn: float
    shape: BaseGeometry
    windows: tuple[Window, ...]
    rows: int
    columns: int
    overlap: float
    marks: tuple[Mark, ...]

    def neighbour(self, window: Window, side: str) -> Window | None:
        """Return the sheet that joins `window` at `left`, `right`, `above` or `below`."""
        down, across = {"left": (0, -1), "right": (0, 1), "above": (-1, 0), "below": (1, 0)}[side]
        return at(self.windows, window.row + down, window.column + across)

    def marks_on(self, window: Window) -> tuple[Mark, ...]:
        return tuple(m for m in self.marks if window.label in m.sheets)

    def inner(self, window: Window) -> Box:
        """Return what is left of a window when its joins are cut along their middles."""
        half = self.overlap / 2
        left, top, right, bottom = window.box
        joined = {side: self.neighbour(window, side) is not None for side in SIDES}
        return (
            left + half * joined["left"],
            top + half * joined["above"],
            right - half * joined["right"],
            bottom - half * joined["below"],
        )


def tile(
    shape: BaseGeometry,
    window: tuple[float, float],
    turns: Sequence[float] = (0.0,),
    overlap: float = OVERLAP,
    lines: BaseGeometry | None = None,
) -> Tiling:
    """Return the tiling with the fewest sheets.

    Among equals the earlier of `turns` (degrees clockwise) wins, then the grid along whose
    joins the least of `lines` runs, then the one that is nearer the middle. Raises ValueError
    when the shape is empty or the window is not larger than twice the overlap: both are
    mistakes of the caller.
    """
    if shape.is_empty:
        raise ValueError("an empty shape has no sheets")
    if min(window) <= 2 * overlap:
        raise ValueError("the window is too small for its overlap")
    lines = _outline(shape) if lines is None else lines
    best: tuple[float, BaseGeometry, tuple[Window, ...]] | None = None
    for turn in turns:
        turned = affinity.rotate(shape, turn, origin=(0, 0)) if turn else shape
        if best is not None and _fewest_possible(turned, window, overlap) >= len(best[2]):
            continue
        grids = list(_grids(turned, window, overlap))
        fewest = min(len(windows) for windows in grids)
        if best is not None and fewest >= len(best[2]):
            continue
        drawn = affinity.rotate(lines, turn, origin=(0, 0)) if turn else lines
        equal = [windows for windows in grids if len(windows) == fewest]
        best = turn, turned, min(equal, key=lambda w: round(along_joins(drawn, w, overlap), 2))
        if fewest == 1:
            break
    assert best is not None
    return _finish(*best, overlap)


def gridded(shape: BaseGeometry, cells: Sequence[Window]) -> Tiling:
    """Return the tiling of shapes that lie on a grid of sheets already, without the sheets
    that they do not need."""
    return _finish(0.0, shape, _needed(shape, tuple(cells), OVERLAP), OVERLAP)


def joined(pieces: Iterable[tuple[BaseGeometry, tuple[float, float]]]) -> BaseGeometry:
    """Return what the sheets show when they are laid together.

    Each piece is the geometry drawn on one sheet, measured from its window's corner, and
    that corner on the template.
    """
    return unary_union([affinity.translate(drawn, dx, dy) for drawn, (dx, dy) in pieces])


def _fewest_possible(shape: BaseGeometry, window: tuple[float, float], overlap: float) -> int:
    """Return a floor for the sheets.

    Every row and every column of the grid holds some of a shape in one piece; a shape in
    several pieces still needs two sheets where it is longer than one.
    """
    left, top, right, bottom = shape.bounds
    longest = max(
        _count(right - left, window[0], overlap), _count(bottom - top, window[1], overlap)
    )
    return longest if shape.geom_type == "Polygon" else min(2, longest)


def _count(extent: float, window: float, overlap: float) -> int:
    count = 1
    while count * window - (count - 1) * overlap < extent - _NEGLIGIBLE:
        count += 1
    return count


def _grids(
    shape: BaseGeometry, window: tuple[float, float], overlap: float
) -> Iterable[tuple[Window, ...]]:
    left, top, right, bottom = shape.bounds
    width, height = window
    columns = _count(right - left, width, overlap)
    rows = _count(bottom - top, height, overlap)
    slack_x = columns * width - (columns - 1) * overlap - (right - left)
    slack_y = rows * height - (rows - 1) * overlap - (bottom - top)
    single = rows == columns == 1
    shapely.prepare(shape)
    for shift_y in SHIFTS[:1] if single else SHIFTS:
        for shift_x in SHIFTS[:1] if single else SHIFTS:
            x0, y0 = left - shift_x * slack_x, top - shift_y * slack_y
            cells = (
                Window(row, column, _cell(x0, y0, row, column, window, overlap))
                for row in range(rows)
                for column in range(columns)
            )
            yield _needed(shape, tuple(cells), overlap)


def _cell(
    x0: float, y0: float, row: int, column: int, window: tuple[float, float], overlap: float
) -> Box:
    x = x0 + column * (window[0] - overlap)
    y = y0 + row * (window[1] - overlap)
    return x, y, x + window[0], y + window[1]


def _needed(shape: BaseGeometry, cells: tuple[Window, ...], overlap: float) -> tuple[Window, ...]:
    """Drop the sheets that print nothing, or nothing that their neighbours do not.

    A sheet that only carries the join between two others stays.
    """
    kept = [c for c in cells if shape.intersects(c.area)]
    kept = [c for c in kept if _amount(shape.intersection(c.area)) > _NEGLIGIBLE]
    for cell in list(kept):
        left, top, right, bottom = cell.box
        own = box(left + overlap, top + overlap, right - overlap, bottom - overlap)
        if shape.intersects(own.buffer(-_NEGLIGIBLE)):
            continue  # no neighbour prints the inside of a sheet
        rest = [c for c in kept if c is not cell]
        beside = [c for c in rest if abs(c.row - cell.row) < 2 and abs(c.column - cell.column) < 2]
        alone = shape.intersection(cell.area).difference(unary_union([c.area for c in beside]))
        if rest and _amount(alone) <= _NEGLIGIBLE and _groups(rest) <= _groups(kept):
            kept = rest
    return tuple(kept)


def _groups(cells: Sequence[Window]) -> int:
    """Return into how many parts the sheets fall that are not joined side by side."""
    waiting = {(c.row, c.column) for c in cells}
    groups = 0
    while waiting:
        groups += 1
        edge = [waiting.pop()]
        while edge:
            row, column = edge.pop()
            beside = {(row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1)}
            edge += beside & waiting
            waiting -= beside
    return groups


def _amount(geometry: BaseGeometry) -> float:
    """Return area and length together: nothing is shown only when both are nothing."""
    return float(geometry.area + geometry.length)


def _finish(
    turn: float, shape: BaseGeometry, windows: tuple[Window, ...], overlap: float
) -> Tiling:
    top, left = min(w.row for w in windows), min(w.column for w in windows)
    moved = tuple(
        Window(w.row - top, w.column - left, w.box, number) for number, w in enumerate(windows, 1)
    )
    rows = 1 + max(w.row for w in moved)
    columns = 1 + max(w.column for w in moved)
    marks = _marks(shape, moved, overlap)
    return Tiling(turn, shape, moved, rows, columns, overlap, marks)


def _marks(shape: BaseGeometry, windows: tuple[Window, ...], overlap: float) -> tuple[Mark, ...]:
    found: list[Mark] = []
    outline = _outline(shape)
    for window in windows:
        left, top, right, bottom = window.box
        for down, across in ((0, 1), (1, 0)):
            other = at(windows, window.row + down, window.column + across)
            if other is None:
                continue
            middle = right - overlap / 2 if across else bottom - overlap / 2
            span = (top, bottom) if across else (left, right)
            for along in _clear_places(outline, middle, span, vertical=bool(across)):
                x, y = (middle, along) if across else (along, middle)
                found.append(Mark(len(found) + 1, x, y, (window.label, other.label)))
    return tuple(found)


def _outline(shape: BaseGeometry) -> BaseGeometry:
    """Return the lines of a shape: its own, and the boundaries of its polygons."""
    parts = getattr(shape, "geoms", [shape])
    return unary_union([p.boundary if p.geom_type == "Polygon" else p for p in parts])


def _clear_places(
    outline: BaseGeometry, middle: float, span: tuple[float, float], *, vertical: bool
) -> tuple[float, float]:
    """Return two places along a join, one in each half, as clear of the lines as can be.

    The ends are left out: there the overlaps of four sheets meet.
    """
    start, end = span
    chosen = []
    for toward in (start, end):
        away = end if toward == start else start
        places = [toward + share * (away - toward) for share in SHARES]
        room = [outline.distance(Point((middle, p) if vertical else (p, middle))) for p in places]
        clear = next((p for p, r in zip(places, room, strict=True) if r > 2 * MARK), None)
        chosen.append(places[room.index(max(room))] if clear is None else clear)
    return chosen[0], chosen[1]
