"""The text of a finished page as it lies on the paper: runs, letters, links.

In: a page that PDFium has opened. Out: `Run`s, letter sizes, `Link`s.
Invariant: points from the page's bottom left corner, after every turn and scaling in the
file; what cannot be seen (spaces, line ends) is left out.
"""

from __future__ import annotations

import ctypes
from collections.abc import Iterator
from dataclasses import dataclass
from math import sqrt

import pypdfium2
import pypdfium2.raw as pdfium


@dataclass(frozen=True)
class Run:
    """Letters in one line, one font and one size."""

    left: float
    bottom: float
    right: float
    top: float
    words: str

    @property
    def area(self) -> float:
        return (self.right - self.left) * (self.top - self.bottom)

    def shared(self, other: Run) -> float:
        """Return the area that two runs have in common."""
        wide = min(self.right, other.right) - max(self.left, other.left)
        tall = min(self.top, other.top) - max(self.bottom, other.bottom)
        return wide * tall if wide > 0 and tall > 0 else 0.0


@dataclass(frozen=True)
class Link:
    """What is printed under a link, and the page that it leads to, from 0."""

    words: str
    page: int


def runs(page: pypdfium2.PdfPage) -> list[Run]:
    """Return the runs of a page that hold anything to read."""
    text = page.get_textpage()
    found = []
    for index in range(text.count_rects()):
        left, bottom, right, top = text.get_rect(index)
        words = text.get_text_bounded(left, bottom, right, top).strip()
        if words:
            found.append(Run(left, bottom, right, top, words))
    return found


def level(page: pypdfium2.PdfPage) -> list[Run]:
    """Return the runs whose letters stand upright: boxes of slanting ones cross anyway."""
    text = page.get_textpage()
    found = []
    for run in runs(page):
        middle = ((run.left + run.right) / 2, (run.bottom + run.top) / 2)
        index = pdfium.FPDFText_GetCharIndexAtPos(text, *middle, 9.0, 9.0)
        if index >= 0 and abs(pdfium.FPDFText_GetCharAngle(text, index)) < 0.01:
            found.append(run)
    return found


def letters(page: pypdfium2.PdfPage) -> Iterator[tuple[str, float]]:
    """Yield each letter with its printed size in points."""
    text = page.get_textpage()
    matrix = pdfium.FS_MATRIX()
    for index in range(text.count_chars()):
        letter = chr(pdfium.FPDFText_GetUnicode(text, index))
        if letter.isspace() or not letter.isprintable():
            continue
        size = pdfium.FPDFText_GetFontSize(text, index)
        if pdfium.FPDFText_GetMatrix(text, index, matrix):
            size *= sqrt(abs(matrix.a * matrix.d - matrix.b * matrix.c))
        yield letter, size


def links(document: pypdfium2.PdfDocument, page: pypdfium2.PdfPage) -> list[Link]:
    """Return the links of a page that lead to a page of the same file."""
    text = page.get_textpage()
    at, link, box = ctypes.c_int(0), pdfium.FPDF_LINK(), pdfium.FS_RECTF()
    found = []
    while pdfium.FPDFLink_Enumerate(page, ctypes.byref(at), ctypes.byref(link)):
        target = pdfium.FPDFLink_GetDest(document, link)
        if target and pdfium.FPDFLink_GetAnnotRect(link, ctypes.byref(box)):
            words = text.get_text_bounded(box.left, box.bottom, box.right, box.top)
            found.append(Link(words.strip(), pdfium.FPDFDest_GetDestPageIndex(document, target)))
    return found
