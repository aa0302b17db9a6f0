"""How full the pages of a booklet are.

In: a printed edition. Out: for each page of its body, the share of its half-inch cells that
carry ink.
Invariant: covers and template sheets are left out; the body is what lies between the margins
and above the foot, the same share of every paper.
"""

from __future__ import annotations

from publish.proof.printed.paper import Printed

DPI = 36
CELL = 18
"""Dots to a cell: half an inch."""
INK = 215
"""Grey below which a dot is ink rather than a tint of the paper."""
ABOVE, BELOW, BESIDE = 0.06, 0.08, 0.07
"""Shares of the page that are margin: head, foot, each side."""
AIRY = 0.4
"""Share under which a page looks unfinished. Common practice, no source."""


def fill(printed: Printed) -> dict[int, float]:
    """Return how full each page of the body is, by its number; empty for other editions."""
    if not printed.edition.is_booklet:
        return {}
    sheets = set(printed.edition.sheet_pages.values())
    inner = [n for n in range(2, len(printed.pages)) if n not in sheets]
    return {number: _share(printed, number - 1) for number in inner}


def _share(printed: Printed, page: int) -> float:
    paper = printed.edition.paper
    whole = printed.raster(page, (0.0, 0.0, paper.width, paper.height), DPI).dots
    high, wide = whole.shape
    body = whole[int(ABOVE * high) : int((1 - BELOW) * high)]
    body = body[:, int(BESIDE * wide) : int((1 - BESIDE) * wide)]
    rows, columns = body.shape[0] // CELL, body.shape[1] // CELL
    cells = body[: rows * CELL, : columns * CELL].reshape(rows, CELL, columns, CELL)
    return float((cells < INK).any(axis=(1, 3)).mean()) if cells.size else 0.0
