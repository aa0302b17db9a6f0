"""Whether every page is the size of the paper and has something on it.

In: a printed edition. Out: notes.
Invariant: a page's media box, and its crop box where it has one, is the paper's size
within `SLACK`; nothing rotates or rescales it; no page is white all over.

Paper sizes: ANSI/ASME Y14.1 (letter, 8 1/2 x 11 in) and ISO 216 (A4, 210 x 297 mm).
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed
from publish.units import POINTS_PER_INCH

CODES = {
    "P871": Code(
        "A page is not the size of the paper",
        "a printer shrinks it, templates too",
        "an A4 page in a file for Letter",
        "every page 8 1/2 × 11 in",
    ),
    "P873": Code(
        "A page is blank",
        "the maker thinks that something is missing",
        "a white page between two sections",
        "pages with something on them",
    ),
    "P879": Code(
        "A template sheet has no page",
        "a piece cannot be cut",
        "a booklet for the throw without the throw's wedge",
        "a page for each sheet",
    ),
}
SLACK = 0.5
"""Points: 0.18 mm, a tenth of what ISO 216 allows the paper itself (1.5 mm or more)."""
WHITE = 250
"""Grey at and above which a dot is bare paper."""
GLANCE_DPI = 36


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page of another size, blank, or not to be found."""
    paper = printed.edition.paper
    wanted = (paper.width * POINTS_PER_INCH, paper.height * POINTS_PER_INCH)
    for number, page in enumerate(printed.objects.pages, start=1):
        for box in (page.mediabox, page.cropbox):
            left, bottom, right, top = (float(v) for v in box)
            found = (right - left, top - bottom)
            if any(abs(a - b) > SLACK for a, b in zip(found, wanted, strict=True)):
                yield error(
                    "P871",
                    printed.place,
                    f"page {number} of {printed.edition.name} is not the size of {paper.name}",
                    expected=_points(*wanted),
                    received=_points(*found),
                    page=number,
                )
                break
        if float(page.get("/UserUnit", 1)) != 1 or int(page.get("/Rotate", 0)) != 0:
            yield error(
                "P871",
                printed.place,
                f"page {number} of {printed.edition.name} is rotated or has a unit of its own",
                page=number,
            )
        whole = (0.0, 0.0, paper.width, paper.height)
        if printed.raster(number - 1, whole, GLANCE_DPI).dots.min(initial=255) >= WHITE:
            blank = f"page {number} of {printed.edition.name} is blank"
            yield error("P873", printed.place, blank, page=number)
    for key, number in printed.edition.sheet_pages.items():
        if not 1 <= number <= len(printed.pages):
            yield error(
                "P879",
                printed.place,
                f"the template sheet {key} has no page",
                expected=f"a page up to {len(printed.pages)}",
                received=str(number),
            )


def _points(width: float, height: float) -> str:
    inches = f"{width / POINTS_PER_INCH:.3f} × {height / POINTS_PER_INCH:.3f} in"
    return f"{width:.1f} × {height:.1f} points ({inches})"
