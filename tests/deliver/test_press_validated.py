"""The print shop's files read by a validator that has nothing in common with what made them.

No library checks PDF/X-4 itself. What PDF/X-4 (ISO 15930-7) and PDF/A-2b (ISO 19005-2) ask
alike is checked instead, by page-validation, which is written in Rust and held to the
corpus of the veraPDF consortium: fonts embedded and complete, colours that the output
intent defines, no transparency without a blending space, no encryption, actions or attached
files, XMP that agrees with the document information. For that a copy of the file is given
PDF/A's marks in place of PDF/X's; nothing on its pages is touched.
"""

from __future__ import annotations

import io
from collections.abc import Callable

import page
import pikepdf
import pytest
from pressed import pressed

from publish.deliver import SPREADS, impose

OWN = (
    "<pdf:Trapped>False</pdf:Trapped>\n",
    "<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion>\n",
)
"""What PDF/X asks to be said, and PDF/A does not know."""
MARK = (
    '<rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">'
    "<pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>"
    "</rdf:Description>\n</rdf:RDF>"
)


CHANCE = {"STREAM-LENGTH-001"}
"""Compressed data that happens to end in a carriage return, and the line feed that qpdf puts
after it, are taken for one end of line, a byte too few."""


def rules(pdf: bytes, spoil: Callable[[pikepdf.Pdf], None] = lambda book: None) -> set[str]:
    """Return the rules of PDF/A-2b that a print shop's file breaks."""
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(pdf)) as book:
        words = book.Root["/Metadata"].read_bytes().decode()
        for own in OWN:
            assert own in words
            words = words.replace(own, "")
        book.Root["/Metadata"].write(words.replace("</rdf:RDF>", MARK).encode())
        book.Root["/OutputIntents"][0]["/S"] = pikepdf.Name.GTS_PDFA1
        spoil(book)
        book.save(stream, compress_streams=True)
    found = page.validate_pdf_bytes(stream.getvalue(), profile=page.ValidationProfile.PDF_A_2B)
    assert found.rules.total > 100
    return {failure.rule_id.removeprefix("PDFA2B-") for failure in found.failures} - CHANCE


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_single_pages_and_spreads_pass(paper: str) -> None:
    pages = pressed(paper).delivered.pdf
    assert rules(pages) == set()
    assert rules(impose(pages, SPREADS[paper]).pdf) == set()


def red(book: pikepdf.Pdf) -> None:
    book.pages[2].contents_add(b"q 1 0 0 rg 9 9 9 9 re f Q")


def font(book: pikepdf.Pdf) -> None:
    plain = pikepdf.Dictionary(
        Type=pikepdf.Name.Font, Subtype=pikepdf.Name.Type1, BaseFont=pikepdf.Name.Helvetica
    )
    book.pages[2].Resources["/Font"]["/Spoil"] = book.make_indirect(plain)
    book.pages[2].contents_add(b"q BT /Spoil 9 Tf 99 99 Td (a) Tj ET Q")


def action(book: pikepdf.Pdf) -> None:
    script = pikepdf.Dictionary(S=pikepdf.Name.JavaScript, JS=pikepdf.String("1"))
    book.Root["/OpenAction"] = book.make_indirect(script)


def profile(book: pikepdf.Pdf) -> None:
    del book.Root["/OutputIntents"]


@pytest.mark.parametrize("spoil", [red, font, action, profile], ids=lambda s: s.__name__)
def test_the_validator_finds_what_is_spoiled(spoil: Callable[[pikepdf.Pdf], None]) -> None:
    assert rules(pressed("letter").delivered.pdf, spoil)
