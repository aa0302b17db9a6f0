"""Whether every font is in the file, so that any printer sets the same letters.

In: a printed edition. Out: notes.
Invariant: each font that a page, or a drawing on it, may use has its font program
embedded (ISO 32000-1, 9.9), or draws its own letters (Type 3).
"""

from __future__ import annotations

from collections.abc import Iterator

import pikepdf

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed

CODES = {
    "P872": Code(
        "A font is not embedded",
        "another printer may set other letters, or lose fractions",
        "words in a font that the reader's machine must have",
        "fonts within the file",
    ),
}
_PROGRAMS = ("/FontFile", "/FontFile2", "/FontFile3")


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each font that is named and not embedded."""
    missing: dict[str, int] = {}
    seen: set[tuple[int, int]] = set()
    for number, page in enumerate(printed.objects.pages, start=1):
        for font in _fonts(page.get("/Resources"), seen):
            if not _embedded(font):
                missing.setdefault(str(font.get("/BaseFont", "without a name")).lstrip("/"), number)
    for name, number in missing.items():
        yield error(
            "P872",
            printed.pattern.place("layout"),
            f"the font {name} is not embedded",
            received=f"first used on page {number} of {printed.edition.name}",
            help="use a font file in the layout instead of a font of this machine",
        )


def names(book: pikepdf.Pdf) -> set[str]:
    """Return the names of all fonts that a file may use; parts of one font count once."""
    seen: set[tuple[int, int]] = set()
    return {
        str(font.get("/BaseFont", "")).lstrip("/").split("+")[-1]
        for page in book.pages
        for font in _fonts(page.get("/Resources"), seen)
    }


def _fonts(
    resources: pikepdf.Object | None, seen: set[tuple[int, int]]
) -> Iterator[pikepdf.Object]:
    """Yield the fonts of some resources and of every drawing and tile inside them."""
    if resources is None:
        return
    fonts = resources.get("/Font")
    if fonts is not None:
        yield from (font for _, font in fonts.items())
    for kind in ("/XObject", "/Pattern"):
        inner = resources.get(kind)
        for _, item in inner.items() if inner is not None else ():
            if item.objgen not in seen and "/Resources" in item:
                seen.add(item.objgen)
                yield from _fonts(item["/Resources"], seen)


def _embedded(font: pikepdf.Object) -> bool:
    kind = font.get("/Subtype")
    if kind == "/Type3":
        return True
    if kind == "/Type0":
        return all(_embedded(inner) for inner in font["/DescendantFonts"])
    descriptor = font.get("/FontDescriptor")
    return descriptor is not None and any(program in descriptor for program in _PROGRAMS)
