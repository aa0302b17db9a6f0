"""Printed sheets measured as a maker would: with a ruler, here 600 dots to the inch."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from shapely.geometry import LineString
from shapely.ops import unary_union
from sheet_print import line_middle, printed, raster
from sheet_samples import context_for, motif_shape, samphire_wedge, sheets_of

from publish.draw.sheets.template import stood, template_of
from publish.model.book import A4, LETTER

DPI = 600
# A4: ISO 216, 210 x 297 mm, as quoted by mainthebest.com (the standard was not opened).
# US Letter: ANSI/ASME Y14.1 size A, 8 1/2 x 11 in, as quoted by printing-master.blogspot.com.
# Points per inch (72) and the point sizes that follow from it are from memory.
PAGES = [(LETTER, 8.5 * 72, 11 * 72), (A4, 210 / 25.4 * 72, 297 / 25.4 * 72)]
INCH = 25.4
"""Millimetres: international yard and pound agreement, 1959."""


@pytest.fixture(scope="module", params=PAGES, ids=["letter", "a4"])
def page(request):
    """A sheet of the demo motif, its PDF and its dots."""
    paper, width, height = request.param
    shape = motif_shape(samphire_wedge(Fraction(14)), 8, Fraction(14))
    (sheet,) = sheets_of(context_for(shape), "samphire", "throw", "wedge", paper)
    document = printed(sheet.svg, paper.width, paper.height)
    return shape, sheet, document, (width, height), raster(document, DPI)


def test_the_page_has_the_published_size(page):
    _, _, document, size, _ = page
    assert len(document) == 1
    assert document[0].get_size() == pytest.approx(size, abs=0.05)


def measured(dots, left, top, side):
    """Return the width and height of a square's lines in inches, found by their ink."""
    far = int(0.05 * DPI)
    x, y, s = left * DPI, top * DPI, side * DPI
    tall = dots[int(y + 0.1 * s) : int(y + 0.3 * s)]  # above the words inside the square
    wide = dots[:, int(x + 0.02 * s) : int(x + 0.1 * s)]
    across, down = (tall < 128).mean(axis=0), (wide < 128).mean(axis=1)
    return (
        (line_middle(across, x + s, far) - line_middle(across, x, far)) / DPI,
        (line_middle(down, y + s, far) - line_middle(down, y, far)) / DPI,
    )


def test_the_check_square_measures_one_inch(page):
    _, sheet, _, _, dots = page
    width, height = measured(dots, *sheet.square)
    assert width == pytest.approx(1, rel=0.002)
    assert height == pytest.approx(1, rel=0.002)


def test_the_other_square_measures_five_centimetres(page):
    _, sheet, _, _, dots = page
    side = 5 / 2.54
    left = sheet.shown[0].at[0] + sheet.shown[0].window[0] - side
    top = sheet.shown[0].at[1] + sheet.shown[0].window[1] - side
    # Its place is chosen by the sheet, near the lower right corner: found by its long lines.
    corner = dots[int(top * DPI - 0.3 * DPI) :, int((left - 0.3) * DPI) :] < 128
    columns = np.flatnonzero(corner[int(0.5 * DPI) : int(0.9 * DPI)].mean(axis=0) > 0.95)
    rows = np.flatnonzero(corner[:, int(0.5 * DPI) : int(0.9 * DPI)].mean(axis=1) > 0.95)
    for found in (columns, rows):
        lines = np.split(found, np.flatnonzero(np.diff(found) > 1) + 1)
        assert len(lines) == 2
        apart = (lines[1].mean() - lines[0].mean()) / DPI * INCH
        assert apart == pytest.approx(50, rel=0.002)


def test_the_printed_outline_is_the_motif(page):
    """Ink lies on the drafted outline: no change of size beyond 0.2 percent, no shift.

    Where the ink lies beside a point p of the outline, taken along the direction n across
    it, is n . (size p + shift): least squares over all points gives size and shift.
    """
    shape, sheet, _, _, dots = page
    folds = unary_union([fold.line for fold in template_of(shape).folds])
    outline = stood(shape.wedge, sheet.shown[0].turn, sheet.shown[0].mirrored).geoms[0].exterior
    left, top = sheet.shown[0].at
    rows, beside = [], []
    for at in np.arange(0.05, outline.length - 0.05, 0.05):
        before, here, after = (outline.interpolate(at + step) for step in (-0.02, 0, 0.02))
        if folds.distance(here) < 0.06:
            continue
        across = np.array([before.y - after.y, after.x - before.x])
        across /= np.hypot(*across)
        start = np.array([here.x + left - sheet.shown[0].x, here.y + top - sheet.shown[0].y])
        steps = np.arange(-12, 13) / DPI
        spots = ((start + steps[:, None] * across) * DPI).astype(int)
        dark = np.flatnonzero(dots[spots[:, 1], spots[:, 0]] < 128)
        assert dark.size, f"no ink within half a millimetre of {here}"
        beside.append(steps[dark].mean())
        rows.append([across @ (here.x, here.y), *across])
    size, *shift = np.linalg.lstsq(np.array(rows), np.array(beside), rcond=None)[0]
    assert len(beside) > 300
    assert abs(size) < 0.002
    assert np.hypot(*shift) < 0.1 / INCH


def test_the_wedge_measures_true_along_its_multiple_folds(page):
    """A ruler from the centre along the upright fold meets the finished line where the
    drafted contact ends."""
    shape, sheet, _, _, dots = page
    start, end = shape.edges[0].contact[0]
    left, top = sheet.shown[0].at
    x, y = left - sheet.shown[0].x, top - sheet.shown[0].y
    outline = stood(shape.wedge, sheet.shown[0].turn, sheet.shown[0].mirrored).boundary
    beside = 0.04  # inches right of the fold, clear of its own ink
    upright = LineString([(beside, 0), (beside, -end - 1)])
    drafted = sorted(-p.y for p in outline.intersection(upright).geoms)
    rows = np.flatnonzero(dots[:, int((x + beside) * DPI)] < 128) / DPI
    for distance in (drafted[0], drafted[-1]):
        assert np.abs((y - rows) - distance).min() < 0.002 * end
    assert drafted[0] == pytest.approx(start, abs=0.1)
    assert drafted[-1] == pytest.approx(end, abs=0.1)
