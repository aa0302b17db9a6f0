"""The finished PDF measured: silent on a true page, loud on one spoiled in one way.

Sources: letter paper is 8 1/2 × 11 in (ANSI/ASME Y14.1) and one point is 1/72 in
(ISO 32000-1, 8.3.2.3); font programs are embedded as FontFile, FontFile2 or FontFile3
(ISO 32000-1, 9.9). The tolerance of 0.2 % on the check square is the project's own.
"""

import math
from dataclasses import replace
from fractions import Fraction

import numpy as np
import pikepdf
import pytest
from printing import SHEET, WHOLE, edition, findings, page_svg, pdf_of, sheet_svg, text
from reedmace import draft, pattern
from reedmace_case import codes, manual, only, plan
from shapely.geometry.base import BaseGeometry

from publish.model.figure import Artwork, Sheet
from publish.proof import measure
from publish.proof.printed import outline, scale
from publish.proof.printed.paper import Printed
from publish.proof.printed.textlayer import pattern_for
from publish.proof.values.drafted import motif_lines

NUMBERS = (
    "17 1/2 in 15 1/2 in 16 1/2 in 2 1/2 in 20 1/2 in 28 in 40 in 2 1/4 in 26 in",
    "1 3/8 yd, 1/4 yd and 3/4 yd",
)


def opened(book: pikepdf.Pdf, *sheets: object) -> Printed:
    groups = {s.leads: (s,) for s in sheets}
    return Printed(pattern(), {"mini": draft()}, Artwork({}, groups), edition(book, sheets), {})


def drawn_on(sheet: Sheet) -> BaseGeometry:
    return motif_lines(draft().motifs["reedmace"], sheet.leads[2])


def test_true_sheets_are_silent() -> None:
    book = pdf_of([sheet_svg(), sheet_svg(WHOLE)])
    assert codes(findings(book, (SHEET, WHOLE))) == []


def test_the_square_is_measured_to_a_thousandth_of_an_inch() -> None:
    for percent in (100, 99, 101, 97.3):
        share = percent / 100
        book = pdf_of([sheet_svg(change=f"translate(504 36) scale({share}) translate(-504 -36)")])
        with opened(book, SHEET) as printed:
            sides = scale.sides_of(printed, SHEET, 0)
        assert sides == pytest.approx((share, share), abs=0.001)


@pytest.mark.parametrize("change", ["scale(0.995 1)", "scale(1 1.004)", "scale(0.97)"])
def test_a_sheet_out_of_scale_is_found(change: str) -> None:
    found = findings(pdf_of([sheet_svg(change=f"translate(504 36) {change} translate(-504 -36)")]))
    assert "P876" in codes(found)
    note = next(n for n in found if n.code == "P876")
    assert note.expected == "1.000 in" and "page 1 of templates-letter" in note.what


def test_a_change_too_small_to_matter_is_silent() -> None:
    assert codes(findings(pdf_of([sheet_svg(change="scale(1.001)")]))) == []


def test_a_missing_square_is_found() -> None:
    note = only(findings(pdf_of([sheet_svg(square=False)])), "P876")
    assert "cannot be found" in note.what


@pytest.mark.parametrize("sheet", [SHEET, WHOLE])
@pytest.mark.parametrize("share", [1.0, 0.996, 1.003])
def test_the_outline_is_measured_apart_from_the_square(sheet: object, share: float) -> None:
    # Scaled about the window's middle, within reach of where the line should be.
    about = f"translate(300 440) scale({share}) translate(-300 -440)"
    book = pdf_of([sheet_svg(sheet, change=about, square=False)])
    with opened(book, sheet) as printed:
        fit = outline.fit_along(printed, sheet.shown[0], 0, drawn_on(sheet))
    assert fit is not None and fit.found > 0.99 and fit.samples > 100
    assert fit.size == pytest.approx(share - 1, abs=2e-4)


def test_a_shifted_outline_is_measured() -> None:
    book = pdf_of([sheet_svg(change="translate(1.44 0.72)")])  # 0.02 in and 0.01 in
    with opened(book, SHEET) as printed:
        fit = outline.fit_along(printed, SHEET.shown[0], 0, drawn_on(SHEET))
    assert fit is not None
    assert fit.shift == pytest.approx(math.hypot(0.02, 0.01), abs=1e-3)
    assert "beside it" in only(findings(book), "P877").received


@pytest.mark.parametrize("sheet", [SHEET, WHOLE])
def test_an_outline_of_another_size_or_turn_is_found(sheet: object) -> None:
    about = "translate(300 440) {} translate(-300 -440)"
    for change in (about.format("scale(1.004)"), about.format("rotate(3)")):
        spoiled = replace(sheet)
        found = findings(pdf_of([sheet_svg(spoiled, change=change)]), (spoiled,))
        assert "P877" in codes(found)


def test_a_missing_outline_is_found() -> None:
    note = only(findings(pdf_of([sheet_svg(outline=False)])), "P877")
    assert note.received == "0% of it"


def test_a_mirrored_sheet_printed_unmirrored_is_found() -> None:
    # the wedge leans left of the upright
    leaning = replace(SHEET.shown[0], mirrored=True, turn=90.0, x=-7.0)
    mirrored = replace(SHEET, shown=(leaning,))
    assert codes(findings(pdf_of([sheet_svg(mirrored)]), (mirrored,))) == []
    assert "P877" in codes(findings(pdf_of([sheet_svg(SHEET)]), (mirrored,)))


def test_a_page_of_another_size() -> None:
    page = page_svg(text("hello", 100, 100), 210 / 25.4, 297 / 25.4)
    note = only(findings(pdf_of([page], ("One",)), ()), "P871")
    assert note.expected.startswith("612.0 × 792.0 points (8.500 × 11.000 in)")


@pytest.mark.parametrize("key", ["/UserUnit", "/Rotate"])
def test_a_page_that_is_rescaled_or_turned(key: str) -> None:
    book = pdf_of([page_svg(text("hello", 100, 100))])
    book.pages[0].obj[key] = {"/UserUnit": 2, "/Rotate": 90}[key]
    assert "P871" in codes(findings(book, ()))


def test_a_blank_page() -> None:
    book = pdf_of([page_svg(text("hello", 100, 100)), page_svg("")], ("One", "Two"))
    assert "page 2" in only(findings(book, ()), "P873").what


def test_a_font_that_is_not_embedded() -> None:
    book = pdf_of([page_svg(text("hello", 100, 100))])
    font = pikepdf.Dictionary(
        Type=pikepdf.Name.Font, Subtype=pikepdf.Name.Type1, BaseFont=pikepdf.Name.Helvetica
    )
    book.pages[0].Resources.Font["/Plain"] = book.make_indirect(font)
    assert "Helvetica" in only(findings(book, ()), "P872").what


def test_a_font_inside_a_drawing_is_looked_at() -> None:
    book = pdf_of([page_svg(text("hello", 100, 100))])
    font = pikepdf.Dictionary(
        Type=pikepdf.Name.Font, Subtype=pikepdf.Name.TrueType, BaseFont=pikepdf.Name.Marsh
    )
    drawing = book.make_stream(
        b"",
        Type=pikepdf.Name.XObject,
        Subtype=pikepdf.Name.Form,
        BBox=[0, 0, 1, 1],
        Resources=pikepdf.Dictionary(Font=pikepdf.Dictionary(F=font)),
    )
    book.pages[0].Resources.XObject = pikepdf.Dictionary(Inner=drawing)
    assert "Marsh" in only(findings(book, ()), "P872").what


@pytest.mark.parametrize("shift", [(460, 0), (-130, 0), (0, 95), (0, -690)])
def test_text_that_runs_off_the_page(shift: tuple[int, int]) -> None:
    book = pdf_of([page_svg(text("selvage", 100, 100, 24))])
    assert codes(findings(book, ())) == []
    x, y = shift
    book.pages[0].contents_add(f"1 0 0 1 {x} {y} cm".encode(), prepend=True)
    assert only(findings(book, ()), "P874").received


def test_bookmarks() -> None:
    pages = [page_svg(text("hello", 100, 100))] * 2
    assert codes(findings(pdf_of(pages, ("One", "Two")), ())) == []
    assert "no bookmarks" in only(findings(pdf_of(pages, ()), ()), "P875").what
    lost = pdf_of(pages, ("One",))
    with lost.open_outline() as found:
        found.root.append(pikepdf.OutlineItem("Lost"))
    assert only(findings(lost, ()), "P875").received == "Lost"


def test_a_sheet_without_a_page() -> None:
    book = pdf_of([sheet_svg()])
    lost = replace(edition(book, (SHEET,)), sheet_pages={"reedmace-mini-wedge-1": 2})
    note = only(measure(pattern(), {"mini": draft()}, Artwork({}, {}), lost), "P879")
    assert (note.expected, note.received) == ("a page up to 1", "2")


def test_numbers_in_the_text_layer() -> None:
    lines = [text(words, 40, 100 + 30 * at) for at, words in enumerate(NUMBERS)]
    whole = pdf_of([page_svg("".join(lines))], ())
    assert codes(findings(whole, (), "booklet-letter")) == []
    lines[1] = text("1 3/8 yd, 1/4 yd", 40, 130)
    note = only(findings(pdf_of([page_svg("".join(lines))], ()), (), "booklet-letter"), "P878")
    assert note.what == "3/4 yd, what to buy of moss, is not in booklet-letter"
    assert codes(findings(pdf_of([page_svg(lines[0])]), ())) == [], "templates carry no tables"


@pytest.mark.parametrize("slip", [None, *range(6)])
def test_a_count_stands_behind_its_size_as_the_piece_lies(slip: int | None) -> None:
    """Sizes are given across the fabric, then along it: a border lies turned in its strip."""
    rows = [
        "B 17 1/2 in (44.5 cm) square {}",
        "A 15 1/2 in (39.4 cm) square {}",
        "C 16 1/2 in × 2 1/2 in (41.9 cm × 6.4 cm) {}",
        "D 20 1/2 in × 2 1/2 in (52.1 cm × 6.4 cm) {}",
        "E 28 in (71.1 cm) square {}",
        "F 40 in × 2 1/4 in (101.6 cm × 5.7 cm) {}",
    ]
    counts = [1, 1, 2, 2, 1, 3]
    if slip is not None:
        counts[slip] += 1
    lines = [*map(str.format, rows, counts), *NUMBERS, "20 in, 90 in"]
    page = "".join(text(words, 40, 100 + 30 * at) for at, words in enumerate(lines))
    book = edition(pdf_of([page_svg(page)], ()), (), "booklet-letter")
    made = ({"mini": draft()}, Artwork({}, {}), book, {"mini": plan()}, manual())
    missing = [n for n in measure(pattern(), *made) if "how many" in n.what]
    assert len(missing) == (slip is not None)


@pytest.mark.parametrize(
    ("shown", "found"),
    [
        ("2 1/2 in", True),
        ("2\u20091⁄2 in", True),
        ("21/2 in", True),
        ("a 2 1/2\nin strip", True),
        ("12 1/2 in", False),
        ("2 1/24 in", False),
        ("2 1/2 inches", False),
        ("2 in", False),
    ],
)
def test_a_value_is_found_however_its_fraction_is_set(shown: str, found: bool) -> None:
    assert bool(pattern_for(Fraction(5, 2), "in").search(shown)) is found


def test_dots_lie_where_the_raster_says() -> None:
    body = '<rect x="144" y="360" width="72" height="36" fill="#000"/>'
    with opened(pdf_of([page_svg(body)])) as printed:
        for box in ((0, 0, 8.5, 11), (1.37, 4.21, 3.6, 6.03)):
            raster = printed.raster(0, box)
            rows, columns = np.nonzero(raster.ink)
            assert raster.left + columns.min() / raster.x == pytest.approx(2, abs=0.002)
            assert raster.left + (columns.max() + 1) / raster.x == pytest.approx(3, abs=0.002)
            assert raster.top + rows.min() / raster.y == pytest.approx(5, abs=0.002)
            assert raster.top + (rows.max() + 1) / raster.y == pytest.approx(5.5, abs=0.002)
