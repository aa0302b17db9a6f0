"""Whether an inch on a template sheet is an inch.

In: a printed edition. Out: notes.
Invariant: the check square that the PDF draws measures what the sheet says it does,
within `TOLERANCE`, from the middle of one line to the middle of the other.

The square is found by its ink: the columns (rows) that are dark along most of its height
(width), so that words inside it do not matter.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from publish.model.figure import Sheet
from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import DARK, Floats, Printed

CODES = {
    "P876": Code(
        "The check square does not measure what it says",
        "every piece is cut wrong",
        "a square of 0.97 in called 1 in",
        "a square of 1 in: the sheet placed at 100 %",
    ),
}
TOLERANCE = 0.002
"""Share of the side: 0.002 in (0.05 mm) on an inch, about the width of a pencil's trace."""
AROUND = 0.1
"""Inches beyond the square in which its lines are looked for."""
MOST = 0.8


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each sheet whose check square is off or cannot be found."""
    for sheet, page in printed.sheets():
        sides = sides_of(printed, sheet, page)
        wanted = sheet.square[2]
        for name, side in zip(("width", "height"), sides, strict=True):
            if side is None:
                yield error(
                    "P876",
                    printed.sheet_place(sheet),
                    f"the check square of {sheet.title} cannot be found on page {page + 1} "
                    f"of {printed.edition.name}",
                    expected=f"a square {wanted:g} in wide",
                    page=page + 1,
                )
                break
            if abs(side - wanted) > TOLERANCE * wanted:
                yield error(
                    "P876",
                    printed.sheet_place(sheet),
                    f"the {name} of the check square of {sheet.title} is off on page {page + 1} "
                    f"of {printed.edition.name}",
                    expected=f"{wanted:.3f} in",
                    received=f"{side:.3f} in",
                    page=page + 1,
                    help="a template sheet must be placed at 100 %: see the layout",
                )


def sides_of(printed: Printed, sheet: Sheet, page: int) -> tuple[float | None, float | None]:
    """Return the width and height of a sheet's square in inches; None when not found."""
    left, top, side = sheet.square
    far = AROUND * side
    raster = printed.raster(page, (left - far, top - far, left + side + far, top + side + far))
    dark = 255.0 - raster.dots.astype(np.float64)
    return (
        _between(dark, side, raster.x, left - raster.left),
        _between(dark.T, side, raster.y, top - raster.top),
    )


def _between(dark: Floats, side: float, dots: float, start: float) -> float | None:
    """Return the distance between the two upright lines nearest to where they belong.

    A line's middle is the middle of its darkness, so it is known to a part of a dot.
    """
    rows = dark[round(dark.shape[0] * 0.15) : round(dark.shape[0] * 0.85)]
    lined = np.flatnonzero((rows > 255 - DARK).mean(axis=0) > MOST)
    if not lined.size:
        return None
    profile = rows.mean(axis=0)
    lines = np.split(lined, np.flatnonzero(np.diff(lined) > 1) + 1)
    middles = np.array([_middle(profile, line[0] - 1, line[-1] + 2) / dots for line in lines])
    near = [middles[np.abs(middles - wanted).argmin()] for wanted in (start, start + side)]
    return float(near[1] - near[0]) if near[1] - near[0] > side / 2 else None


def _middle(profile: Floats, first: int, last: int) -> float:
    at = np.arange(max(first, 0), min(last, len(profile)))
    return float(((at + 0.5) * profile[at]).sum() / profile[at].sum())
