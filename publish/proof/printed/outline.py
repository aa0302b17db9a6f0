"""Whether a template's printed outline is the drafted one, at its true size and place.

In: a printed edition. Out: notes.
Invariant: along the finished outline as drafted, the PDF has ink; the ink's
distances from it, taken square to the line, show no change of size beyond `TOLERANCE`
and no shift beyond `SHIFT`.

Every template on a sheet is measured by itself. Its drafted outline is turned and mirrored
as the sheet says, laid on the page, and sampled. At each sample the dots across the line
are read, and their dark middle gives how far off the ink is. A change of size s and a shift t
move a point p with the outward direction n by n . (s p + t): least squares over the samples
gives s and t.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from shapely import affinity
from shapely.geometry import box
from shapely.geometry.base import BaseGeometry

from publish.model.figure import Shown
from publish.notes import Note, Place, error
from publish.proof.case import Code
from publish.proof.printed.paper import DARK, DPI, Floats, Printed, Raster
from publish.proof.values.drafted import lines_of

CODES = {
    "P877": Code(
        "A template's outline is not printed as drafted",
        "the motif comes out wrong",
        "a wedge printed at 97 %",
        "a wedge on the line that was drafted",
    ),
}
TOLERANCE = 0.002
"""Share by which the printed outline may be larger or smaller."""
SHIFT = 0.01
"""Inches by which it may lie beside its place: less than a pencil line."""
STEP = 0.05
"""Inches between samples, at the least."""
MOST = 1000
"""Samples on one sheet, about: a long outline is sampled at longer steps."""
REACH = 0.04
"""Inches across the line that are read on each side of it."""
FEWEST = 40
"""Samples below which a sheet shows too little to be judged."""
FOUND = 0.9
"""Share of the samples that must have ink: letters may interrupt a line."""
BLIND = 0.05
"""Share of the best told direction below which a change along another is not judged."""
TILE = 8.0
"""Inches: side of the part of a page that is turned into dots at once."""
EDGE = 0.06
"""Inches inside the window's edge that are left out."""


@dataclass(frozen=True)
class Fit:
    """How the printed outline lies to the drafted one."""

    samples: int
    found: float
    """Share of the samples with ink."""
    size: float
    """Relative change of size: 0 when true."""
    shift: float
    """Inches."""


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each template on a sheet whose outline is missing, shifted or of
    another size."""
    for sheet, page in printed.sheets():
        for shown in sheet.shown:
            lines = lines_of(printed, shown)
            fit = None if lines is None else fit_along(printed, shown, page, lines)
            if fit is None:
                continue
            also = "" if shown.asked == sheet.leads else f" ({shown.motif}, {shown.size})"
            where = f"{sheet.title}{also}, page {page + 1} of {printed.edition.name}"
            yield from _judged(fit, where, printed.pattern.place("motifs", shown.motif))


def _judged(fit: Fit, where: str, place: Place) -> Iterator[Note]:
    if fit.found < FOUND:
        yield error(
            "P877",
            place,
            f"the outline of {where} is not where it was drafted",
            expected="ink along the whole of it",
            received=f"{fit.found:.0%} of it",
        )
    elif abs(fit.size) > TOLERANCE or fit.shift > SHIFT:
        yield error(
            "P877",
            place,
            f"the outline of {where} is off",
            expected="100.0 % of its size, in its place",
            received=f"{100 * (1 + fit.size):.1f} %, {fit.shift:.3f} in beside it",
        )


def fit_along(printed: Printed, shown: Shown, page: int, lines: BaseGeometry) -> Fit | None:
    """Return how drafted lines lie on a page; None when it shows too little of them."""
    points, across = _samples(_on_page(lines, shown))
    if len(points) < FEWEST:
        return None
    off = _offsets(printed, page, points, across)
    seen = ~np.isnan(off)
    if seen.sum() < FEWEST:
        return Fit(len(points), float(seen.mean()), math.nan, math.nan)
    points, across, off = points[seen], across[seen], off[seen]
    about = points.mean(axis=0)
    far = float(np.sqrt(((points - about) ** 2).sum(axis=1).mean())) or 1.0
    columns = np.column_stack([((points - about) * across).sum(axis=1) / far, across])
    # Lines that all run one way tell nothing of a shift along them: that part stays 0.
    (size, x, y), *_ = np.linalg.lstsq(columns, off, rcond=BLIND)
    size /= far
    return Fit(len(seen), float(seen.mean()), float(size), math.hypot(x, y))


def _offsets(printed: Printed, page: int, points: Floats, across: Floats) -> Floats:
    """Return how far the ink lies beside each point; the page is read tile by tile.

    A sheet may be a metre long: all of its dots at once would fill the memory.
    """
    off = np.full(len(points), math.nan)
    tiles = np.floor(points / TILE).astype(int)
    for tile in np.unique(tiles, axis=0):
        left, top = (float(v) * TILE - 2 * REACH for v in tile)
        right, bottom = left + TILE + 4 * REACH, top + TILE + 4 * REACH
        raster = printed.raster(page, (left, top, right, bottom))
        for index in np.flatnonzero((tiles == tile).all(axis=1)):
            off[index] = _offset(raster, points[index], across[index])
    return off


def _on_page(outline: BaseGeometry, shown: Shown) -> BaseGeometry:
    """Return drafted lines as they lie on the page, within the template's window."""
    if shown.mirrored:
        outline = affinity.scale(outline, -1, 1, origin=(0, 0))
    outline = affinity.rotate(outline, shown.turn, origin=(0, 0))
    left, top = shown.at
    outline = affinity.translate(outline, left - shown.x, top - shown.y)
    wide, high = shown.window
    window = box(left + EDGE, top + EDGE, left + wide - EDGE, top + high - EDGE)
    return outline.intersection(window)


def _samples(outline: BaseGeometry) -> tuple[Floats, Floats]:
    """Return points along the outline, away from its corners, and the directions across."""
    points, across = [], []
    step = max(STEP, outline.length / MOST)
    for line in getattr(outline, "geoms", [outline]):
        if line.geom_type != "LineString":
            continue
        for at in np.arange(step, line.length - step, step):
            before, here, after = (line.interpolate(at + d) for d in (-REACH, 0, REACH))
            dx, dy = after.x - before.x, after.y - before.y
            run = math.hypot(dx, dy)
            if run < 1.96 * REACH:  # the line bends here: no one direction is across it
                continue
            points.append((here.x, here.y))
            across.append((-dy / run, dx / run))
    return np.array(points).reshape(-1, 2), np.array(across).reshape(-1, 2)


def _offset(raster: Raster, point: Floats, across: Floats) -> float:
    """Return how far the ink lies beside a point, across the line; NaN without ink."""
    reach = np.arange(-round(REACH * DPI), round(REACH * DPI) + 1) / DPI
    columns = ((point[0] + reach * across[0] - raster.left) * raster.x).astype(int)
    rows = ((point[1] + reach * across[1] - raster.top) * raster.y).astype(int)
    inside = (columns >= 0) & (rows >= 0)
    inside &= (columns < raster.dots.shape[1]) & (rows < raster.dots.shape[0])
    dark = np.zeros(len(reach), dtype=bool)
    dark[inside] = raster.dots[rows[inside], columns[inside]] < DARK
    found = np.flatnonzero(dark)
    if not found.size:
        return math.nan
    runs = np.split(found, np.flatnonzero(np.diff(found) > 1) + 1)
    middles = [float(reach[run].mean()) for run in runs]
    return min(middles, key=abs)
