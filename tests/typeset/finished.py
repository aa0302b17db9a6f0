"""A finished edition, read back with PDFium (words, outlines) and pikepdf (objects)."""

from __future__ import annotations

import io
from dataclasses import dataclass
from functools import cache

import bulrush
import bulrush_drawn
import pikepdf
import pypdfium2 as pdfium
from shared import shared

from publish.model.book import PAPERS, Edition, full_size
from publish.typeset import typeset
from publish.words import language
from publish.write import half_size


@dataclass
class Book:
    """An edition, with the words of each page as a reader's program finds them."""

    edition: Edition
    pages: pdfium.PdfDocument
    objects: pikepdf.Pdf
    words: list[str]
    layout: str = "tideline"

    @property
    def text(self) -> str:
        """All words, with single blanks between them."""
        return " ".join("\n".join(self.words).split())


def read_back(edition: Edition, layout: str = "tideline") -> Book:
    pages = pdfium.PdfDocument(edition.pdf)
    words = [p.get_textpage().get_text_range().replace("\r\n", "\n") for p in pages]
    return Book(edition, pages, pikepdf.open(io.BytesIO(edition.pdf)), words, layout)


@cache
def made(name: str) -> Book:
    """Return the Bulrush booklet for a layout and a paper, read back."""
    return read_back(_edition(name), name.partition("-")[0])


@shared
def _edition(name: str) -> Edition:
    """Return the booklet, set without a single note."""
    layout, _, key = name.partition("-")
    paper = PAPERS[key]
    artwork = bulrush_drawn.artwork(full_size(paper))
    manual = half_size(bulrush.manual(), paper, language())
    edition, notes = typeset(bulrush.pattern(layout=layout), manual, artwork, paper)
    assert notes == ()
    assert edition is not None
    return edition
