"""The windows of the sheets of one grid, and what runs along the joins between them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

import shapely
from shapely.geometry import box
from shapely.geometry.base import BaseGeometry

from publish.model.halves import OVERLAP

BESIDE = 0.12
"""Inches: a line that is nearer to a join than this runs along it."""

Box = tuple[float, float, float, float]
"""Left, top, right, bottom."""


@dataclass(frozen=True)
class Window:
    """What one sheet prints: `box` on the turned shape, its place in the grid from 0."""

    row: int
    column: int
    box: Box
    number: int = 0
    """From 1, in the order in which sheets are joined."""

    @property
    def label(self) -> str:
        return str(self.number)

    @property
    def area(self) -> BaseGeometry:
        return box(*self.box)


def at(windows: Iterable[Window], row: int, column: int) -> Window | None:
    return next((w for w in windows if (w.row, w.column) == (row, column)), None)


def along_joins(lines: BaseGeometry, windows: Sequence[Window], overlap: float = OVERLAP) -> float:
    """Return how many inches of lines run along the joins of sheets, nearer than `BESIDE`.

    A line that crosses a join counts by what it advances along it meanwhile: nothing, if it
    crosses squarely.
    """
    total = 0.0
    for window in windows:
        left, top, right, bottom = window.box
        if at(windows, window.row, window.column + 1) is not None:
            middle = right - overlap / 2
            total += _run(lines, (middle - BESIDE, top, middle + BESIDE, bottom), 1)
        if at(windows, window.row + 1, window.column) is not None:
            middle = bottom - overlap / 2
            total += _run(lines, (left, middle - BESIDE, right, middle + BESIDE), 0)
    return total


def _run(lines: BaseGeometry, strip: Box, axis: int) -> float:
    """Return how far lines advance along one axis (0 across, 1 down) within a strip."""
    seen = lines.intersection(box(*strip))
    total = 0.0
    for line in getattr(seen, "geoms", [seen]):
        corners = shapely.get_coordinates(line)[:, axis] if line.geom_type == "LineString" else ()
        total += float(sum(abs(b - a) for a, b in pairwise(corners)))
    return total
