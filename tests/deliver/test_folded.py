"""The half-size booklet two to a side, folded in the mind and read page by page.

Folding is played through leaf by leaf, as in test_impose; what stands on each half of each
side is read by PDFium and compared with the single pages, read the same way.
"""

from __future__ import annotations

from pathlib import Path

import pypdfium2
import pytest
from finished import made
from test_impose import read_when_folded

from publish import pipeline
from publish.deliver import HALVES, impose
from publish.starting import start
from publish.work import print_editions

Box = tuple[float, float, float, float]


def words(page: pypdfium2.PdfPage, box: Box | None = None) -> str:
    """Return the letters and figures in part of a page, in the order in which they lie."""
    text = page.get_textpage()
    said = text.get_text_bounded(*box) if box else text.get_text_bounded()
    return "".join(sorted(c for c in said if c.isalnum()))


def halves(pdf: bytes) -> list[tuple[str, str]]:
    """Return what stands on the left and on the right half of each side."""
    found = []
    for page in pypdfium2.PdfDocument(pdf):
        wide, high = page.get_size()
        found.append((words(page, (0, 0, wide / 2, high)), words(page, (wide / 2, 0, wide, high))))
    return found


@pytest.mark.parametrize("name", ["tideline-half-letter", "washland-a5"])
def test_sheets_of_a_home_printer_fold_into_page_order(name: str) -> None:
    book = made(name)
    single = [words(page) for page in book.pages]
    sheet = HALVES[book.edition.paper.parent]
    folded = impose(book.edition.pdf, sheet, marks=False)
    assert folded.scale == 1.0, "nothing is reduced"
    sides = halves(folded.pdf)
    assert len(sides) % 2 == 0 and 2 * len(sides) == len(single) + folded.fillers
    # Each half by a number of its own; folding puts these in the order of reading.
    numbered = tuple((2 * i, 2 * i + 1) for i in range(len(sides)))
    read = [sides[n // 2][n % 2] for n in read_when_folded(numbered)]
    fillers = slice(len(single) - 1, len(single) - 1 + folded.fillers)
    assert all(page == "" for page in read[fillers]), "a filler's heading is drawn, not set"
    del read[fillers]
    assert read == single
    size = pypdfium2.PdfDocument(folded.pdf)[0].get_size()
    assert size == pytest.approx((float(sheet.width) * 72, float(sheet.height) * 72), abs=0.01)


@pytest.mark.parametrize("thick", [True, pytest.param(False, marks=pytest.mark.thorough)])
def test_a_half_size_paper_brings_the_folded_booklet(tmp_path: Path, thick: bool) -> None:
    """Sheet k moves by (k - 1) times the thickness: Color Vision Printing, Saddle stitch
    binding: what is creep."""
    folder = tmp_path / "bulrush"
    start(folder)
    file = folder / "pattern.yaml"
    key = "publication:\n  paper_thickness: " + ("0.02 in" if thick else "0 in")
    file.write_text(file.read_text().replace("publication:", key, 1))
    work = pipeline.prepare(folder)
    print_editions(work, ["half-letter"], "booklet")
    assert [e.name for e in work.editions] == ["booklet-half-letter"]
    said = work.files["folded-letter.txt"].decode()
    sheets = len(pypdfium2.PdfDocument(work.files["folded-letter.pdf"])) // 2
    assert said.startswith(f"{sheets} sheets of US Letter, both sides")
    moved = f"{(sheets - 1) * 0.02 * 25.4:.1f} mm nearer the fold"
    assert (moved in said) is thick and ("Creep" in said) is thick


@pytest.mark.thorough
def test_a_print_shop_gets_the_sheets_apart_and_pages_numbered_through(tmp_path: Path) -> None:
    folder = tmp_path / "bulrush"
    start(folder)
    work = pipeline.prepare(folder)
    print_editions(work, ["letter"], "press")
    assert not work.report.errors, work.report.errors
    booklet, sheets = work.editions
    assert (booklet.name, sheets.name) == ("press-letter", "press-templates-letter")
    assert booklet.sheet_pages == {} and sheets.sheet_pages
    spreads = pypdfium2.PdfDocument(work.files["spreads-letter.pdf"])
    read = []
    for page in spreads:
        wide = page.get_size()[0]
        text = page.get_textpage()
        for left, right in ((0, wide / 2), (wide / 2, wide)):
            foot = text.get_text_bounded(left, 0, right, 110).split()
            read.append(int(foot[-1]) if foot and foot[-1].isdigit() else 0)
    numbered = tuple((2 * i, 2 * i + 1) for i in range(len(spreads)))
    folios = [read[n] for n in read_when_folded(numbered)]
    pages = len(pypdfium2.PdfDocument(booklet.pdf))
    inside = folios[1 : pages - 1]
    assert inside == list(range(2, pages)), "no number is skipped where sheets were"
