"""Whether the barcode is printed at its nominal size, white on both sides.

In: a printed edition of a pattern with a barcode. Out: notes.
Invariant: on the last page, the booklet's back cover, the bars of the pattern's own number
are as wide and as tall as `NOMINAL` says, within `TOLERANCE`, from the outer edge of the
first bar to the outer edge of the last, with nothing dark in the quiet zones.

The bars are found by their dots alone: a row of the page is searched for stretches of dark
and light whose widths are those of the number. Sizes are those of the GS1 General
Specifications for EAN-13 and UPC-A at 100 %, from memory: module 0.33 mm, 95 modules of
bars (31.35 mm) and 113 with quiet zones (37.29 mm); guard bars 22.85 mm and 5 modules
(24.50 mm), 25.93 mm with the digits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby

import numpy as np
import numpy.typing as npt
from barcode.ean import EuropeanArticleNumber13

from publish.gtin import UPC, Gtin, parse_gtin
from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed, Raster
from publish.units import INCH_IN_MM

CODES = {
    "P890": Code(
        "The barcode is not printed as it should be",
        "a shop's till cannot read it",
        "bars that a layout prints at 97 % of their size",
        "bars in their nominal size, white all round",
    ),
}
MODULE = 0.33
"""Millimetres."""
MODULES = 95
NOMINAL = (MODULES * MODULE, 22.85 + 5 * MODULE)
"""Millimetres: width of the bars, height of the first of them."""
QUIET = {UPC: (9, 9)}
EAN_QUIET = (11, 7)
"""Modules of white before and after the bars."""
TOLERANCE = 0.01
"""Share: three tenths of a millimetre of the width, under a fortieth of a bar each."""
STEP = 0.1
"""Inches between the rows that are searched: bars are nine times as tall."""
LOOSE = 0.6
"""Modules by which one bar may miss its width and still be one of the number's."""

Ink = npt.NDArray[np.bool_]


@dataclass(frozen=True)
class Found:
    """A barcode on a page: millimetres, and modules of white at its sides."""

    width: float
    height: float
    before: float
    after: float


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note when the back cover's barcode is missing, resized or crowded."""
    number = printed.pattern.publication.barcode
    if not number or not printed.edition.is_booklet:
        return
    gtin = parse_gtin(number)
    found = printed.once(found_in)
    if found is None:
        yield _note(printed, f"the bars of {gtin.digits}", "nothing like them")
        return
    for side, got, wanted in zip(
        ("wide", "tall"), (found.width, found.height), NOMINAL, strict=True
    ):
        if abs(got - wanted) > TOLERANCE * wanted:
            yield _note(printed, f"bars {wanted:.2f} mm {side}", f"{got:.2f} mm")
    before, after = QUIET.get(gtin.kind, EAN_QUIET)
    if found.before < before - LOOSE or found.after < after - LOOSE:
        received = f"{found.before:.1f} and {found.after:.1f}"
        yield _note(printed, f"{before} and {after} modules of white beside the bars", received)


def found_in(printed: Printed) -> Found | None:
    """Return the bars of the pattern's number as the last page has them, or None."""
    paper = printed.edition.paper
    raster = printed.raster(len(printed.pages) - 1, (0, 0, paper.width, paper.height))
    wanted = widths(parse_gtin(printed.pattern.publication.barcode))
    for row in range(0, raster.ink.shape[0], max(1, round(STEP * raster.y))):
        first = _fit(raster.ink[row], wanted)
        if first is not None:
            return _measured(raster, row, first, len(wanted))
    return None


def widths(gtin: Gtin) -> npt.NDArray[np.float64]:
    """Return the widths of bars and gaps in turn, in modules."""
    code = EuropeanArticleNumber13(gtin.digits.zfill(13), no_checksum=True).build()[0]
    return np.array([len(list(run)) for _, run in groupby(code)], dtype=float)


def _edges(line: Ink) -> npt.NDArray[np.int64]:
    """Return where dark begins and ends in turn, a stretch of dark first."""
    padded = np.concatenate(([False], line, [False]))
    return np.flatnonzero(padded[1:] != padded[:-1])


def _fit(line: Ink, wanted: npt.NDArray[np.float64]) -> int | None:
    """Return which edge of a row begins a run of the wanted widths, at any scale."""
    edges = _edges(line)
    runs = np.diff(edges)
    if len(runs) < len(wanted):
        return None
    parts = np.lib.stride_tricks.sliding_window_view(runs, len(wanted))[::2]
    modules = parts.sum(axis=1, keepdims=True) / MODULES
    fits = np.flatnonzero((np.abs(parts / modules - wanted) < LOOSE).all(axis=1))
    return 2 * int(fits[0]) if len(fits) else None


def _measured(raster: Raster, row: int, first: int, count: int) -> Found:
    edges = _edges(raster.ink[row])
    left, right = int(edges[first]), int(edges[first + count])
    module = (right - left) / MODULES
    before = left - (int(edges[first - 1]) if first else 0)
    after = (
        int(edges[first + count + 1]) if first + count + 1 < len(edges) else raster.ink.shape[1]
    ) - right
    bar = raster.ink[:, left + max(1, round(module / 2)) - 1]
    above, below = np.flatnonzero(~bar[:row]), np.flatnonzero(~bar[row:])
    top = int(above[-1]) + 1 if len(above) else 0
    bottom = row + (int(below[0]) if len(below) else len(bar) - row)
    inch = float(INCH_IN_MM)
    return Found(
        (right - left) / raster.x * inch,
        (bottom - top) / raster.y * inch,
        before / module,
        after / module,
    )


def _note(printed: Printed, expected: str, received: str) -> Note:
    return error(
        "P890",
        printed.pattern.place("publication", "barcode"),
        f"the barcode on the back cover of {printed.edition.name} is not as it should be",
        expected=expected,
        received=received,
        help="the layout's back cover must print manual.back.barcode at its own size, on white",
    )
