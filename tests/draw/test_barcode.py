"""Barcodes: check digits against published examples, bars read back by another library.

Reading back is ZXing's (zxing-cpp), whose code has nothing in common with what draws.
"""

from __future__ import annotations

import io
import re
from itertools import groupby

import cairosvg
import pytest
import zxingcpp
from PIL import Image

from publish.draw import DRAWINGS
from publish.draw.barcode import draw
from publish.draw.context import CannotDrawError
from publish.gtin import EAN, ISBN, UPC, parse_gtin
from publish.model.figure import Figure
from publish.model.words import FigureSpec

# Body and whole number, with where it is worked out.
PUBLISHED = {
    # GS1, How to calculate a check digit manually
    "EAN 629104150021": (EAN, "6291041500213"),
    # GS1 Sweden, Calculating the check digit
    "EAN 730001100001": (EAN, "7300011000017"),
    # crifan.com docbook on UPC (encyclopedia text), UPC-A check digit
    "03600029145": (UPC, "036000291452"),
    # truevue.org (encyclopedia text), ISBN-13 check digit example
    "978030640615": (ISBN, "9780306406157"),
}


def figure(digits: str) -> Figure:
    spec = FigureSpec("barcode", "barcode", None, (("digits", digits),))
    return draw(None, spec)  # type: ignore[arg-type]  # a barcode shows nothing of the pattern


def picture(drawn: Figure, dpi: int = 600) -> Image.Image:
    """Return the figure at its printed size."""
    wide = round(drawn.width * dpi)
    return Image.open(io.BytesIO(cairosvg.svg2png(drawn.svg.encode(), output_width=wide)))


@pytest.mark.parametrize(("body", "expected"), PUBLISHED.items())
def test_published_check_digits(body: str, expected: tuple[str, str]) -> None:
    found = parse_gtin(body)
    assert (found.kind, found.digits) == expected
    whole = parse_gtin(expected[1])
    assert whole == found


@pytest.mark.parametrize(
    ("text", "kind", "digits"),
    [
        ("6291041500213", EAN, "6291041500213"),
        ("UPC 0-36000-29145-2", UPC, "036000291452"),
        ("036000291452", UPC, "036000291452"),
        ("ISBN 978-0-306-40615-7", ISBN, "9780306406157"),
        ("isbn-13: 978 0 306 40615 7", ISBN, "9780306406157"),
        ("ISBN 0-306-40615-2", ISBN, "9780306406157"),
        ("9790060115615", EAN, "9790060115615"),
    ],
)
def test_ways_of_writing(text: str, kind: str, digits: str) -> None:
    """979-0 is printed music: the ISMN is the Bärenreiter example of the ISMN manual, from
    memory, and its check digit is proved by the rule itself."""
    found = parse_gtin(text)
    assert (found.kind, found.digits) == (kind, digits)


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("6291041500214", "should be 3"),
        ("036000291453", "should be 2.*EAN"),
        ("9780306406158", "should be 7"),
        ("ISBN 0-306-40615-3", "ten-digit"),
        ("ISBN 6291041500213", "begins with 978"),
        ("12345", "13 digits, or 12"),
        ("HF-101", "only digits"),
        ("", "only digits"),
    ],
)
def test_numbers_that_are_none(text: str, reason: str) -> None:
    with pytest.raises(ValueError, match=reason):
        parse_gtin(text)


@pytest.mark.parametrize(
    "digits", ["6291041500213", "7300011000017", "036000291452", "9780306406157"]
)
def test_another_library_reads_the_bars(digits: str) -> None:
    read = zxingcpp.read_barcodes(picture(figure(digits)).convert("L"))
    assert [b.text for b in read] == [digits.zfill(13)]


@pytest.mark.parametrize(
    ("digits", "quiet"), [("6291041500213", (11, 7)), ("036000291452", (9, 9))]
)
def test_nominal_size_and_quiet_zones(digits: str, quiet: tuple[int, int]) -> None:
    """GS1 General Specifications at 100 %, from memory: 37.29 x 25.93 mm over all, 22.85 mm
    bars, quiet zones 11 and 7 modules for EAN-13, 9 and 9 for UPC-A, guards 5 modules more."""
    drawn = figure(digits)
    assert not drawn.scalable
    assert (drawn.width * 25.4, drawn.height * 25.4) == pytest.approx((37.29, 25.93), abs=0.001)
    dots = picture(drawn, 1200).convert("L").point(lambda v: 255 * (v > 128))
    row = list(dots.crop((0, 40, dots.width, 41)).get_flattened_data())
    runs = [(ink, len(list(run)) * 37.29 / dots.width / 0.33) for ink, run in groupby(row)]
    modules = [wide for _, wide in runs]
    assert (round(modules[0]), round(modules[-1])) == quiet
    assert all(abs(wide - round(wide)) < 0.1 for wide in modules), "bars are whole modules"
    assert sum(round(wide) for wide in modules) == 113
    # A bar of the first digit under the bars, and the guard before it.
    deep = {int(x): float(h) for x, h in re.findall(r"M(\d+) 0h\d+v([\d.]+)h", drawn.svg)}
    assert deep[quiet[0]] * 0.33 == pytest.approx(22.85 + 5 * 0.33, abs=0.001)
    assert min(deep.values()) * 0.33 == pytest.approx(22.85, abs=0.001)


def test_an_isbn_stands_over_its_bars() -> None:
    drawn = figure("9780306406157")
    assert "ISBN 978-0-306-40615-7" in drawn.svg
    assert drawn.height > figure("6291041500213").height
    assert drawn.alt == "Barcode, ISBN-13, 9780306406157."


def test_the_digits_are_set_under_the_bars() -> None:
    said = re.findall(r">([\d]+)</text>", figure("036000291452").svg)
    assert said == ["0", "36000", "29145", "2"]
    said = re.findall(r">([\d]+)</text>", figure("6291041500213").svg)
    assert said == ["6", "291041", "500213"]


def test_a_wrong_number_is_a_note_not_a_drawing() -> None:
    assert DRAWINGS["barcode"] is draw
    with pytest.raises(CannotDrawError, match="should be 3"):
        figure("6291041500214")
