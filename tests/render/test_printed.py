"""Computed pictures in the finished PDFs: fine enough for print, in the press's inks, with
their words.

300 pixels to the printed inch: common practice, no source.
"""

import io
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import pikepdf
import pypdfium2
import pytest
from small import prepared

from publish.kept import Store, users
from publish.model.book import PAPERS
from publish.proof.printed.pictures import pictures
from publish.work import print_editions

COMPUTED = "Computed from the pattern, not photographed."

FINE = 300
MADE = "are computed, not photographed"
SIZES = """
    mini: {block: nine, block_size: 9 in, columns: 2, rows: 2}
    throw: {block: nine, block_size: 9 in, columns: 5, rows: 6}
"""
MORE = """colourways:
  dusk: {title: Dusk, swaps: [{fabric: oat, name: Night cloth, colour: "#26343c"}]}
  ebb: {title: Ebb, swaps: [{fabric: fern, name: Silt cloth, colour: "#8a7d5b"}]}
"""
FIRST = ("tideline", "letter")
PLACES = [
    pytest.param(layout, paper, marks=() if (layout, paper) == FIRST else pytest.mark.thorough)
    for layout in ("tideline", "washland")
    for paper in PAPERS
]


@cache
def printed(layout: str, paper: str, edition: str, more: str = MORE) -> bytes:
    """Return the booklet of a small pattern."""
    with TemporaryDirectory() as folder:
        work = prepared(Path(folder), SIZES, more=f"layout: {layout}\n{more}")
        print_editions(work, [paper], edition, store=Store(users()))
        return next(e.pdf for e in work.editions if e.is_booklet)


def words(pdf: bytes) -> str:
    """Return all text of a file, its lines joined."""
    book = pypdfium2.PdfDocument(pdf)
    text = " ".join(page.get_textpage().get_text_bounded() for page in book)
    return " ".join(text.split())


def told(pdf: bytes) -> list[str]:
    """Return every alternative text of a file."""
    with pikepdf.open(io.BytesIO(pdf)) as book:
        found = [o.get("/Alt") for o in book.objects if isinstance(o, pikepdf.Dictionary)]
    return [str(alt) for alt in found if alt is not None]


@pytest.mark.parametrize(("layout", "paper"), PLACES)
def test_pictures_are_fine_enough_and_say_what_they_are(layout: str, paper: str) -> None:
    pdf = printed(layout, paper, "booklet")
    with pikepdf.open(io.BytesIO(pdf)) as book:
        shown = list(pictures(book))
        pages = len(book.pages)
    # The cover, all sizes on the opener and on the back, and three colourways.
    assert len(shown) == 6
    assert {shown[0].page, shown[-1].page} == {1, pages}
    assert all(min(p.across, p.down) >= FINE for p in shown), shown
    assert {p.space for p in shown} == {"/DeviceRGB"}
    assert f"front cover, of all sizes and of other colours {MADE}" in words(pdf)
    computed = [alt for alt in told(pdf) if alt.endswith(COMPUTED)]
    assert len(computed) == 4  # the colourways are one figure
    assert sum("on a pale wall" in alt for alt in computed) == 1
    assert sum("lying flat" in alt for alt in computed) == 2


@pytest.mark.parametrize(("layout", "paper"), PLACES)
def test_the_print_shops_are_in_inks(layout: str, paper: str) -> None:
    with pikepdf.open(io.BytesIO(printed(layout, paper, "press"))) as book:
        shown = list(pictures(book))
        images = [o for o in book.objects if isinstance(o, pikepdf.Stream)]
        images = [o for o in images if o.get("/Subtype") == "/Image"]
        large = [o for o in images if int(o["/Width"]) > 400]
        assert len(shown) == 6 and len(large) == 5  # one of them shown twice
        assert all(min(p.across, p.down) >= FINE for p in shown), shown
        assert {str(o["/ColorSpace"]) for o in large} == {"/DeviceCMYK"}
        assert not any("/SMask" in o for o in images)


@pytest.mark.parametrize("number", [pytest.param(n, marks=pytest.mark.thorough) for n in (1, 3, 4)])
def test_colourways_are_fine_enough_however_many_there_are(number: int) -> None:
    ways = "\n".join(
        f"  w{n}: {{title: Way {n}, swaps: [{{fabric: oat, name: Dye {n}, colour: '#26{n}43c'}}]}}"
        for n in range(number)
    )
    pdf = printed("tideline", "letter", "booklet", f"colourways:\n{ways}\n")
    with pikepdf.open(io.BytesIO(pdf)) as book:
        shown = list(pictures(book))
    assert len(shown) == 3 + 1 + number
    assert all(min(p.across, p.down) >= FINE for p in shown), shown


def test_a_drawn_cover_has_no_computed_picture() -> None:
    pdf = printed("tideline", "letter", "booklet", f"cover: drawn\n{MORE}")
    with pikepdf.open(io.BytesIO(pdf)) as book:
        assert not list(pictures(book))
    assert MADE not in words(pdf)
    assert not any(COMPUTED in alt for alt in told(pdf))
