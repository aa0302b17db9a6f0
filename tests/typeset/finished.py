"""A finished edition, read back with PDFium (words, outlines) and pikepdf (objects)."""

from __future__ import annotations

import io
from dataclasses import dataclass

import pikepdf
import pypdfium2 as pdfium

from publish.model.book import Edition


@dataclass
class Book:
    """An edition, with the words of each page as a reader's program finds them."""

    edition: Edition
    pages: pdfium.PdfDocument
    objects: pikepdf.Pdf
    words: list[str]


def read_back(edition: Edition) -> Book:
    pages = pdfium.PdfDocument(edition.pdf)
    words = [p.get_textpage().get_text_range().replace("\r\n", "\n") for p in pages]
    return Book(edition, pages, pikepdf.open(io.BytesIO(edition.pdf)), words)
