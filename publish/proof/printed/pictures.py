"""Whether pictures have enough dots for their printed size, in colours that print alike.

In: a printed edition for a screen or a home printer. Out: notes.
Invariant: every picture in the file, inside drawings too, has `COARSE` dots or more to
each printed inch, both ways, and its colours are grey or red, green and blue: a
home printer's own business starts there.

Sizes are worked out from the transformations in the page's own operators (ISO 32000-1,
8.3.4). The least resolution is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot

import pikepdf

from publish.notes import Note, error, warning
from publish.proof.case import Code
from publish.proof.printed.paper import Printed
from publish.units import POINTS_PER_INCH

CODES = {
    "P892": Code(
        "A picture has too few dots",
        "it prints in steps and blurs",
        "a photo of 600 dots, printed 6 in wide",
        "a photo of 1800 dots, printed 6 in wide",
    ),
    "P893": Code(
        "A picture's colours are not a home printer's",
        "they come out otherwise",
        "a photo in CMYK in the booklet",
        "a photo in sRGB",
    ),
}
COARSE = 150
"""Dots to the inch: below the 200 that a photograph is warned of before it is placed, and
what a logo of few dots may come to."""
_SPACES = {"/DeviceRGB", "/DeviceGray", "/CalRGB", "/CalGray"}
_COMPONENTS = {1, 3}
DEEPEST = 12
"""Drawings within drawings that are followed."""


@dataclass(frozen=True)
class Picture:
    """A picture where it is printed, in dots to the inch across and down."""

    page: int
    across: float
    down: float
    space: str


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each picture that is coarse or in other inks."""
    yield from coarse(printed)
    for picture in printed.once(shown):
        if not picture.space:
            yield error(
                "P893",
                printed.pattern.place("photos"),
                f"a picture on page {picture.page} of {printed.edition.name} is in colours for "
                "a print shop",
                expected="grey, or red, green and blue",
            )


def coarse(printed: Printed) -> Iterator[Note]:
    """Yield a note for each picture with too few dots, in whatever inks it is."""
    for picture in printed.once(shown):
        least = min(picture.across, picture.down)
        if least < COARSE:
            yield warning(
                "P892",
                printed.pattern.place("photos"),
                f"a picture on page {picture.page} of {printed.edition.name} has too few dots for "
                "its printed size",
                expected=f"at least {COARSE} to the inch",
                received=f"{least:.0f} to the inch",
                help="use the picture as it came from the camera, or print it smaller",
            )


def shown(printed: Printed) -> tuple[Picture, ...]:
    """Return every picture of an edition as often as it is printed."""
    return tuple(pictures(printed.objects))


def pictures(book: pikepdf.Pdf) -> Iterator[Picture]:
    """Yield every picture of a file as often as it is printed, masks left out."""
    for number, page in enumerate(book.pages, start=1):
        whole = pikepdf.Matrix()
        yield from _in(page, page.get("/Resources"), whole, number, 0)


def _in(
    stream: pikepdf.Page | pikepdf.Object,
    resources: pikepdf.Object | None,
    matrix: pikepdf.Matrix,
    page: int,
    depth: int,
) -> Iterator[Picture]:
    """Yield the pictures that a page or a drawing shows."""
    held = resources.get("/XObject") if resources is not None else None
    if held is None or depth > DEEPEST:
        return
    kept: list[pikepdf.Matrix] = []
    for each in pikepdf.parse_content_stream(stream, "q Q cm Do"):
        if isinstance(each, pikepdf.ContentStreamInlineImage):
            continue
        name, operands = str(each.operator), list(each.operands)
        if name == "q":
            kept.append(matrix)
        elif name == "Q":
            matrix = kept.pop() if kept else matrix
        elif name == "cm":
            matrix = pikepdf.Matrix(*(float(v) for v in operands)) @ matrix
        elif name == "Do":
            shown = held.get(str(operands[0]))
            if shown is None:
                continue
            if shown.get("/Subtype") == "/Image" and not shown.get("/ImageMask", False):
                yield _picture(shown, matrix, page)
            elif shown.get("/Subtype") == "/Form":
                own = pikepdf.Matrix(*(float(v) for v in shown.get("/Matrix", (1, 0, 0, 1, 0, 0))))
                inner = shown.get("/Resources", resources)
                yield from _in(shown, inner, own @ matrix, page, depth + 1)


def _picture(image: pikepdf.Object, matrix: pikepdf.Matrix, page: int) -> Picture:
    """Return a picture, which fills the unit square of its coordinates."""
    across = hypot(matrix.a, matrix.b) / POINTS_PER_INCH
    down = hypot(matrix.c, matrix.d) / POINTS_PER_INCH
    dots = int(image["/Width"]), int(image["/Height"])
    return Picture(
        page,
        dots[0] / across if across else 0.0,
        dots[1] / down if down else 0.0,
        _space(image.get("/ColorSpace")),
    )


def _space(space: pikepdf.Object | None) -> str:
    """Return the name of a colour space of a screen, empty for any other."""
    if isinstance(space, pikepdf.Array):
        kind = str(space[0])
        if kind == "/Indexed":
            return _space(space[1])
        if kind == "/ICCBased":
            return kind if int(space[1].get("/N", 0)) in _COMPONENTS else ""
        return kind if kind in _SPACES else ""
    return str(space) if str(space) in _SPACES else ""
