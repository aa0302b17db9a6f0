"""Where an outline finds room among others, on a raster of cells.

In: outlines in inches, the cells that are taken. Out: the cells at which one may lie.
Invariant: outlines whose cells are apart are `APART` or further from each other: a cell is
taken as soon as a point of it is too near. Where a shape may lie is the correlation of its
cells with those that are taken.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt
import shapely
from scipy.signal import fftconvolve
from shapely.geometry.base import BaseGeometry

from publish.draw.sheets.windows import Box, Window
from publish.model.halves import OVERLAP

APART = 0.15
"""Inches between two templates: room for scissors (common practice, no source)."""
CELL = 1 / 16
"""Inches: the steps in which a place is looked for."""

Cells = npt.NDArray[np.bool_]
Floats = npt.NDArray[np.float64]


def mask_of(area: BaseGeometry) -> Cells:
    """Return the cells that an outline takes, the first at its bounds' upper left corner.

    Every cell is taken that has a point nearer than `APART`; those to the left of the bounds
    and above them are left out, so that an outline may touch the edge of its sheet. Two
    outlines that come too near still share a cell: of their nearest points p and q, one of p,
    q and the corner between them lies right of both left edges and below both upper ones.
    """
    left, top, right, bottom = area.bounds
    columns, rows = (math.ceil((span + APART) / CELL) + 1 for span in (right - left, bottom - top))
    grown = area.buffer(APART + CELL * math.sqrt(0.5) + 0.005)
    shapely.prepare(grown)
    xs = left + (np.arange(columns) + 0.5) * CELL
    ys = top + (np.arange(rows) + 0.5) * CELL
    return np.asarray(shapely.contains_xy(grown, *np.meshgrid(xs, ys)), dtype=bool)


def free(taken: Cells, mask: Cells, empty: bool) -> npt.NDArray[np.int64]:
    """Return the cells at which a mask meets nothing that is taken, row by row."""
    rows, columns = mask.shape
    over = math.ceil(APART / CELL) + 2
    taken = np.pad(taken, ((0, over), (0, over)))
    if rows > taken.shape[0] or columns > taken.shape[1]:
        return np.zeros((0, 2), dtype=np.int64)
    if empty:
        clear = np.ones((taken.shape[0] - rows + 1, taken.shape[1] - columns + 1), dtype=bool)
    else:
        cells = mask[::-1, ::-1].astype(np.float32)
        clear = fftconvolve(taken.astype(np.float32), cells, mode="valid") < 0.5
    return np.argwhere(clear)


def within(area: BaseGeometry, part: BaseGeometry, corners: Floats, boxes: Sequence[Box]) -> Cells:
    """Return at which corners of an area a part of it lies within one of some boxes."""
    left, top, right, bottom = part.bounds
    x, y = corners[:, 1] - area.bounds[0], corners[:, 0] - area.bounds[1]
    slack = 1e-9
    held = np.zeros(len(corners), dtype=bool)
    for a, b, c, d in boxes:
        held |= (
            (left + x >= a - slack)
            & (top + y >= b - slack)
            & (right + x <= c + slack)
            & (bottom + y <= d + slack)
        )
    return held


def inner(window: Window, windows: Sequence[Window]) -> Box:
    """Return what of a sheet no neighbour prints as well."""
    left, top, right, bottom = window.box
    last = windows[-1]
    return (
        left + OVERLAP * (window.column > 0),
        top + OVERLAP * (window.row > 0),
        right - OVERLAP * (window.column < last.column),
        bottom - OVERLAP * (window.row < last.row),
    )
