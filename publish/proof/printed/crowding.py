"""Whether pages hold more than they have room for.

In: a printed edition. Out: notes.
Invariant: between the covers, and but for template sheets, text keeps `MARGIN` from every
edge, which most home printers cannot print nearer to; no two lines lie over each other.
The margin is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed
from publish.proof.printed.text import Run
from publish.units import POINTS_PER_INCH

CODES = {
    "P894": Code(
        "A page holds more than it has room for",
        "words are cut off, or run together",
        "a table that runs into the foot of its page",
        "a table that goes on on the next page",
    ),
}
MARGIN = 0.25
"""Inches."""
MOST = 0.35
"""Share of the smaller of two lines that may lie under the other: what a raised figure or
a tight heading comes to."""


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page with text in the margin or lines over each other."""
    if not printed.edition.is_booklet:
        return
    sheets = set(printed.edition.sheet_pages.values())
    last = len(printed.pages)
    for number, side in enumerate(printed.sides, start=1):
        if number not in sheets | {1, last}:
            crossing = _outside(side.runs, side.page.get_size())
            if crossing:
                yield _note(printed, number, "has text in its margin", crossing[0].words)
        over = _over(side.level)
        if over:
            yield _note(printed, number, "has lines over each other", " / ".join(over[0]))


def _outside(found: Sequence[Run], size: tuple[float, float]) -> list[Run]:
    edge = MARGIN * POINTS_PER_INCH
    return [
        run
        for run in found
        if min(run.left, run.bottom, size[0] - run.right, size[1] - run.top) < edge
    ]


def _over(found: Sequence[Run]) -> list[tuple[str, str]]:
    """Return the words of lines that share too much of the paper."""
    if not found:
        return []
    left, bottom, right, top = np.array([(r.left, r.bottom, r.right, r.top) for r in found]).T
    wide = np.minimum.outer(right, right) - np.maximum.outer(left, left)
    tall = np.minimum.outer(top, top) - np.maximum.outer(bottom, bottom)
    area = (right - left) * (top - bottom)
    least = MOST * np.minimum.outer(area, area)
    shared = np.where((wide > 0) & (tall > 0), wide * tall, 0.0)
    pairs = np.argwhere(np.triu((shared > least) & (least > 0), 1))
    return [(found[one].words, found[other].words) for one, other in pairs]


def _note(printed: Printed, page: int, what: str, words: str) -> Note:
    return error(
        "P894",
        printed.pattern.place("layout"),
        f"page {page} of {printed.edition.name} {what}",
        received=words[:60],
        help="shorten the words, or give them more room in the layout",
        page=page,
    )
