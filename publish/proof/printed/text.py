"""The text of a finished page as it lies on the paper: runs, letters, links.

In: a page that PDFium has opened. Out: `Run`s, letter sizes, `Link`s.
Invariant: points from the page's bottom left corner, after every turn and scaling in the
file; what cannot be seen (spaces, line ends) is left out.
"""

from __future__ import annotations

import ctypes
from dataclasses import dataclass
from functools import cached_property
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


@dataclass(frozen=True)
class Link:
    """What is printed under a link, and the page that it leads to, from 0."""

    words: str
    page: int


class PageText:
    """One page of an open PDF and what is read from its text, each thing once."""

    def __init__(self, page: pypdfium2.PdfPage) -> None:
        self.page = page

    @cached_property
    def text(self) -> pypdfium2.PdfTextPage:
        return self.page.get_textpage()

    @cached_property
    def runs(self) -> tuple[Run, ...]:
        """Return the runs of the page that hold anything to read."""
        found = []
        for index in range(self.text.count_rects()):
            left, bottom, right, top = self.text.get_rect(index)
            words = self.text.get_text_bounded(left, bottom, right, top).strip()
            if words:
                found.append(Run(left, bottom, right, top, words))
        return tuple(found)

    @cached_property
    def level(self) -> tuple[Run, ...]:
        """Return the runs whose letters stand upright: boxes of slanting ones cross anyway."""
        found = []
        for run in self.runs:
            middle = ((run.left + run.right) / 2, (run.bottom + run.top) / 2)
            index = pdfium.FPDFText_GetCharIndexAtPos(self.text, *middle, 9.0, 9.0)
            if index >= 0 and abs(pdfium.FPDFText_GetCharAngle(self.text, index)) < 0.01:
                found.append(run)
        return tuple(found)

    @cached_property
    def letters(self) -> tuple[tuple[str, float], ...]:
        """Return each letter with its printed size in points."""
        matrix = pdfium.FS_MATRIX()
        found = []
        for index in range(self.text.count_chars()):
            letter = chr(pdfium.FPDFText_GetUnicode(self.text, index))
            if letter.isspace() or not letter.isprintable():
                continue
            size = pdfium.FPDFText_GetFontSize(self.text, index)
            if pdfium.FPDFText_GetMatrix(self.text, index, matrix):
                size *= sqrt(abs(matrix.a * matrix.d - matrix.b * matrix.c))
            found.append((letter, size))
        return tuple(found)


def links(document: pypdfium2.PdfDocument, side: PageText) -> list[Link]:
    """Return the links of a page that lead to a page of the same file."""
    at, link, box = ctypes.c_int(0), pdfium.FPDF_LINK(), pdfium.FS_RECTF()
    found = []
    while pdfium.FPDFLink_Enumerate(side.page, ctypes.byref(at), ctypes.byref(link)):
        target = pdfium.FPDFLink_GetDest(document, link)
        if target and pdfium.FPDFLink_GetAnnotRect(link, ctypes.byref(box)):
            words = side.text.get_text_bounded(box.left, box.bottom, box.right, box.top)
            found.append(Link(words.strip(), pdfium.FPDFDest_GetDestPageIndex(document, target)))
    return found
