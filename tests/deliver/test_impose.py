"""Printer's spreads, folded in the mind and measured on the paper.

What is right comes from outside the code: the pages are numbered drawings made by cairo;
folding is played through leaf by leaf; where a number lands is read back by PDFium.
"""

from __future__ import annotations

import io
from fractions import Fraction

import cairosvg
import numpy as np
import numpy.typing as npt
import pikepdf
import pypdfium2
import pytest

from publish.deliver.impose import (
    HALVES,
    SPREADS,
    Stock,
    creep_of,
    filled,
    impose,
    spreads,
)
from publish.model.trade import PAPER_THICKNESS

LETTER, A4 = (612.0, 792.0), (210 / 25.4 * 72, 297 / 25.4 * 72)
CLOSE = 0.05
"""Points: PDFium gives letters to a hundredth, and cairo places them on its own grid."""


def numbered(count: int, size: tuple[float, float], bleed: float = 0.0) -> bytes:
    """Return a PDF whose page n holds `n` alone, an inch from the left and from the top."""
    width, height = size
    book = pikepdf.new()
    for n in range(1, count + 1):
        svg = (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{width + 2 * bleed}pt" '
            f'height="{height + 2 * bleed}pt" viewBox="{-bleed} {-bleed} {width + 2 * bleed} '
            f'{height + 2 * bleed}"><text x="72" y="72" font-size="20" '
            f'font-family="DejaVu Sans">{n}</text></svg>'
        )
        with pikepdf.open(io.BytesIO(cairosvg.svg2pdf(svg.encode(), dpi=72))) as one:
            page = one.pages[0]
            left, bottom, right, top = (float(v) for v in page.mediabox)
            scale = (right - left) / (width + 2 * bleed)
            assert scale == pytest.approx(1, abs=1e-3)
            page.obj["/BleedBox"] = pikepdf.Array([left, bottom, right, top])
            page.obj["/TrimBox"] = pikepdf.Array(
                [left + bleed, bottom + bleed, right - bleed, top - bleed]
            )
            book.pages.append(page)
    stream = io.BytesIO()
    book.save(stream)
    return stream.getvalue()


def words_at(pdf: bytes) -> list[list[tuple[int, float, float, float]]]:
    """Return number, left, bottom and height of each number on each page, in points."""
    found = []
    for page in pypdfium2.PdfDocument(pdf):
        text = page.get_textpage()
        here: list[tuple[int, float, float, float]] = []
        for i in range(text.count_rects()):
            left, bottom, right, top = text.get_rect(i)
            said = text.get_text_bounded(left, bottom, right, top).strip()
            here.append((int(said), left, bottom, top - bottom))
        found.append(here)
    return found


def read_when_folded(sides: tuple[tuple[int, int], ...]) -> list[int]:
    """Return the pages in the order that a reader turns them.

    Each sheet is folded with its back inside and laid into the one before. A leaf is the
    half of a sheet: the right half of the front is a leaf's first page, and the left half
    of the back is on the other side of the same paper, because the sheet turns about its
    short edge.
    """
    sheets = [(sides[i], sides[i + 1]) for i in range(0, len(sides), 2)]
    leaves = [(front[1], back[0]) for front, back in sheets]
    leaves += [(back[1], front[0]) for front, back in reversed(sheets)]
    return [page for leaf in leaves for page in leaf]


@pytest.mark.parametrize("count", [4, 8, 12, 32, 64])
def test_folding_gives_the_pages_in_order(count: int) -> None:
    order = list(range(1, count + 1))
    assert read_when_folded(spreads(order)) == order


def test_a_booklet_of_eight_is_printed_as_printers_do() -> None:
    """Two sheets of eight pages: 8-1, 2-7, 6-3, 4-5 (common practice, no source)."""
    assert spreads([1, 2, 3, 4, 5, 6, 7, 8]) == ((8, 1), (2, 7), (6, 3), (4, 5))


@pytest.mark.parametrize(
    ("count", "expected"),
    [(1, [1, 0, 0, 0]), (2, [1, 0, 0, 2]), (4, [1, 2, 3, 4]), (5, [1, 2, 3, 4, 0, 0, 0, 5])],
)
def test_fillers_stand_before_the_back_cover(count: int, expected: list[int]) -> None:
    assert filled(range(1, count + 1)) == expected


def test_creep_of_nested_sheets() -> None:
    """Color Vision Printing, Saddle stitch binding: what is creep: 0.005 in stock."""
    assert [str(c) for c in creep_of(4, Fraction("0.005"))] == ["0", "1/200", "1/100", "3/200"]


@pytest.mark.parametrize(
    ("size", "sheet", "scale"),
    [
        (LETTER, SPREADS["letter"], 1.0),
        (A4, SPREADS["a4"], 1.0),
        (LETTER, HALVES["letter"], 5.5 / 8.5),
        (A4, HALVES["a4"], 148.5 / 210),
        ((396.0, 612.0), SPREADS["half-letter"], 1.0),
        ((148 / 25.4 * 72, 210 / 25.4 * 72), SPREADS["a5"], 1.0),
    ],
    ids=["letter on tabloid", "A4 on A3", "letter halved", "A4 halved", "half letter", "A5"],
)
def test_each_number_is_found_in_its_place(
    size: tuple[float, float], sheet: Stock, scale: float
) -> None:
    pdf = numbered(16, size)
    made = impose(pdf, sheet, marks=False, thickness=Fraction("0.01"))
    assert made.scale == pytest.approx(scale, abs=1e-4)
    assert made.fillers == 0
    single = words_at(pdf)
    half, high = float(sheet.width) * 36, float(sheet.height) * 72
    pages = words_at(made.pdf)
    assert len(pages) == 8
    for index, (pair, found) in enumerate(zip(made.sides, pages, strict=True)):
        assert [n for n, *_ in sorted(found, key=lambda f: f[1])] == list(pair)
        creep = 0.01 * 72 * (index // 2)
        for n, left, bottom, height in found:
            right = n == pair[1]
            aside = (half - size[0] * made.scale) / 2
            start = half + aside - creep if right else aside + creep
            offset, low, tall = single[n - 1][0][1:]
            assert left == pytest.approx(start + offset * made.scale, abs=CLOSE)
            up = (high - size[1] * made.scale) / 2
            assert bottom == pytest.approx(up + low * made.scale, abs=CLOSE)
            assert height == pytest.approx(tall * made.scale, abs=CLOSE)


def grey(pdf: bytes, page: int, scale: float) -> npt.NDArray[np.uint8]:
    """Return a page as grey dots, row by row; `scale` dots to a point."""
    dots = pypdfium2.PdfDocument(pdf)[page].render(scale=scale, grayscale=True).to_numpy()
    return dots.reshape(dots.shape[:2])


def boxes(pdf: bytes) -> list[list[float]]:
    """Return the media, bleed and trim box of the first page."""
    with pikepdf.open(io.BytesIO(pdf)) as book:
        page = book.pages[0].obj
        return [[float(v) for v in page[n]] for n in ("/MediaBox", "/BleedBox", "/TrimBox")]


@pytest.mark.parametrize("bleed", [0.0, 9.0])
def test_marks_stand_outside_and_the_boxes_are_nested(bleed: float) -> None:
    made = impose(numbered(4, LETTER, bleed), SPREADS["letter"])
    media, bled, trim = boxes(made.pdf)
    assert (trim[2] - trim[0], trim[3] - trim[1]) == (17 * 72, 11 * 72)
    for outer, inner, least in ((media, bled, 18), (bled, trim, bleed)):
        gaps = [inner[0] - outer[0], inner[1] - outer[1], outer[2] - inner[2], outer[3] - inner[3]]
        assert min(gaps) >= least
    bitmap = grey(made.pdf, 0, 4)
    rows, columns = bitmap.shape
    beside = bitmap[:, : int(bled[0] * 4) - 2]
    above = bitmap[: int((media[3] - bled[3]) * 4) - 2]
    assert beside.min() < 200, "crop marks beside the sheet"
    assert above.min() < 200, "crop and fold marks above it"
    middle = above[:, columns // 2 - 4 : columns // 2 + 4]
    assert middle.min() < 200, "a fold mark over the fold"
    assert rows == pytest.approx(media[3] * 4, abs=1)


def test_no_page_reaches_across_the_fold() -> None:
    """A page black all over, pushed inwards by creep, stays in its half."""
    width, height = LETTER
    book = pikepdf.new()
    for n in range(16):
        book.add_blank_page(page_size=LETTER)
        ink = b"0 0 0 1 k 0 0 612 792 re f" if n % 2 == 0 else b""
        book.pages[n].contents_add(ink)
    stream = io.BytesIO()
    book.save(stream)
    made = impose(stream.getvalue(), SPREADS["letter"], thickness=Fraction("0.1"), marks=False)
    assert made.sides[6] == (10, 7)
    dots = grey(made.pdf, 6, 2)[int(height)]
    fold = int(width * 2)
    assert dots[: fold - 2].min() > 250, "the left page is blank up to the fold"
    assert dots[fold + 2] < 60, "the right page begins at the fold"
    pushed = int(0.3 * 72 * 2)
    assert dots[-pushed + 3 :].min() > 250 and dots[-pushed - 3] < 60, "and moved inwards"


def test_filler_pages_are_ruled_and_said() -> None:
    made = impose(numbered(6, LETTER), SPREADS["letter"], marks=False)
    assert made.fillers == 2
    assert made.sides == ((6, 1), (2, 0), (0, 3), (4, 5))
    assert "2 pages for notes added before the back cover" in made.said
    dots = grey(made.pdf, 1, 2)
    right = dots[:, dots.shape[1] // 2 + 200 : -300]
    inked = (right.min(axis=1) < 230).astype(int)
    assert 25 <= (np.diff(inked) == 1).sum() <= 32, "about thirty ruled lines"
    blank = impose(numbered(6, LETTER), SPREADS["letter"], marks=False, filler="blank")
    dots = grey(blank.pdf, 1, 1)
    assert dots[:, dots.shape[1] // 2 + 5 :].min() == 255
    assert "2 blank pages added" in blank.said


def test_only_the_pages_asked_for_are_imposed() -> None:
    made = impose(numbered(9, LETTER), SPREADS["letter"], [1, 2, 3, 4, 5, 6, 7, 9], marks=False)
    assert {n for page in words_at(made.pdf) for n, *_ in page} == {1, 2, 3, 4, 5, 6, 7, 9}
    assert read_when_folded(made.sides) == [1, 2, 3, 4, 5, 6, 7, 9]


def test_the_same_pages_give_the_same_bytes() -> None:
    pdf = numbered(5, A4)
    assert impose(pdf, SPREADS["a4"]).pdf == impose(pdf, SPREADS["a4"]).pdf


@pytest.mark.parametrize("pages", [[], [0], [5]])
def test_pages_that_are_not_there_are_refused(pages: list[int]) -> None:
    with pytest.raises(ValueError, match="from 1 to 4"):
        impose(numbered(4, LETTER), SPREADS["letter"], pages)


def test_what_was_done_is_said_in_words() -> None:
    made = impose(numbered(8, A4), HALVES["a4"], thickness=PAPER_THICKNESS)
    assert made.said == (
        "2 sheets of A4, both sides, turned on the short edge, folded and stapled in the fold. "
        "Pages are reduced to 70.7 %. "
        "Creep is allowed for: the innermost pages are 0.1 mm nearer the fold."
    )
