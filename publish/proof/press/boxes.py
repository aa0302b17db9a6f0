"""Whether a press edition can be trimmed: its boxes, and colour that runs over the edge.

In: a printed press edition. Out: notes.
Invariant: on each page the trim box is the size of the paper, lies in the bleed box, and
that in the media box; the bleed is `BLEED` wide; what is coloured at the trimmed edge is
coloured beyond it too.

Boxes: ISO 32000-1, 14.11.2. The bleed: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from publish.model.book import BLEED
from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed
from publish.units import POINTS_PER_INCH

CODES = {
    "P885": Code(
        "The boxes of a page do not fit the paper",
        "the printer trims wrongly",
        "a trim box as large as the page with its bleed",
        "trim inside bleed inside page",
    ),
    "P886": Code(
        "Colour stops at the trimmed edge",
        "a white line shows where the cut is off",
        "a coloured page that ends where the knife should fall",
        "colour 1/8 in beyond the edge",
    ),
}
SLACK = 0.05
"""Points."""
DPI = 72
WHITE = 250
MOST = 0.05
"""Share of an edge whose colour may end there, such as a line that meets it."""

Rect = tuple[float, float, float, float]
"""Left, bottom, right, top in points."""


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page that cannot be trimmed as it should be."""
    paper = printed.edition.paper
    wanted = (paper.width * POINTS_PER_INCH, paper.height * POINTS_PER_INCH)
    least = float(BLEED[paper.key] * POINTS_PER_INCH)
    for number, page in enumerate(printed.objects.pages, start=1):
        found = [page.obj.get(name) for name in ("/MediaBox", "/BleedBox", "/TrimBox")]
        if any(box is None for box in found):
            yield _note(printed, "P885", number, "has not all of its boxes")
            continue
        media, bleed, trim = (_rect(box) for box in found)
        size = (trim[2] - trim[0], trim[3] - trim[1])
        if any(abs(a - b) > SLACK for a, b in zip(size, wanted, strict=True)):
            yield _note(printed, "P885", number, f"is not trimmed to {paper.name}")
        if min(_gaps(media, bleed)) < -SLACK or min(_gaps(bleed, trim)) < -SLACK:
            yield _note(printed, "P885", number, "has boxes that do not lie in each other")
        elif min(_gaps(bleed, trim)) < least - SLACK:
            yield _note(printed, "P885", number, f"has less bleed than {least:.2f} points")
        else:
            yield from _edges(printed, number, media, trim)


def _edges(printed: Printed, number: int, media: Rect, trim: Rect) -> Iterator[Note]:
    """Yield a note when colour at a trimmed edge ends there."""
    whole = tuple(v / POINTS_PER_INCH for v in (0, 0, media[2] - media[0], media[3] - media[1]))
    dots = printed.raster(number - 1, (whole[0], whole[1], whole[2], whole[3]), DPI).dots
    left, top, right, bottom = (
        round(v)
        for v in (trim[0] - media[0], media[3] - trim[3], trim[2] - media[0], media[3] - trim[1])
    )
    away = 3
    pairs = {
        "left": (dots[top:bottom, left + away], dots[top:bottom, left - away]),
        "right": (dots[top:bottom, right - away], dots[top:bottom, right + away]),
        "top": (dots[top + away, left:right], dots[top - away, left:right]),
        "bottom": (dots[bottom - away, left:right], dots[bottom + away, left:right]),
    }
    for edge, (inside, outside) in pairs.items():
        if np.mean((inside < WHITE) & (outside >= WHITE)) > MOST:
            yield _note(printed, "P886", number, f"has colour that stops at its {edge} edge")


def _rect(box: object) -> Rect:
    left, bottom, right, top = (float(v) for v in box)  # type: ignore[attr-defined]
    return left, bottom, right, top


def _gaps(outer: Rect, inner: Rect) -> tuple[float, ...]:
    """Return how far the inner box's four sides lie inside the outer's."""
    return (inner[0] - outer[0], inner[1] - outer[1], outer[2] - inner[2], outer[3] - inner[3])


def _note(printed: Printed, code: str, page: int, what: str) -> Note:
    return error(
        code,
        printed.pattern.place("layout"),
        f"page {page} of {printed.edition.name} {what}",
        help="the layout's pages must use `bleed`: see layouts/README.md",
    )
