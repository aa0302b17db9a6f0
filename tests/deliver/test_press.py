"""The press edition, read back: colours, boxes, identity, and nothing moved.

PDF/X-4 (ISO 15930-7) and the press shop's rules are from memory where no source is named.
"""

from __future__ import annotations

import io
import time
from dataclasses import replace

import bulrush
import numpy as np
import pikepdf
import pypdfium2
import pytest
import zxingcpp
from PIL import ImageCms
from pressed import NUMBER, pressed

from publish.deliver import SPREADS, impose, press
from publish.deliver.inks import CONDITIONS

PAPERS = ("letter", "a4")
BLEED = {"letter": 9.0, "a4": 3 / 25.4 * 72}
"""Trade figures: bleed 1/8 in is 9 pt and 3 mm 8.504 pt (arithmetic)."""
TRIM = {"letter": (612.0, 792.0), "a4": (595.276, 841.890)}
IDENTIFIERS = {"letter": "CGATS TR 006", "a4": "FOGRA39"}
COLOUR_OPERATORS = {"g", "G", "rg", "RG", "k", "K", "cs", "CS", "sc", "SC", "scn", "SCN", "sh"}

by_paper = pytest.mark.parametrize("paper", PAPERS)


def opened(pdf: bytes) -> pikepdf.Pdf:
    return pikepdf.open(io.BytesIO(pdf))


def every_stream(book: pikepdf.Pdf) -> list[pikepdf.Object]:
    """Return every page and every stream in the file that is a drawing or a tile."""
    forms = [
        o
        for o in book.objects
        if isinstance(o, pikepdf.Stream)
        and (o.get("/Subtype") == "/Form" or o.get("/PatternType") == 1)
    ]
    return [*(page.obj for page in book.pages), *forms]


@by_paper
def test_every_colour_operator_is_in_inks(paper: str) -> None:
    with opened(pressed(paper).delivered.pdf) as book:
        used = set()
        for stream in every_stream(book):
            for step in pikepdf.parse_content_stream(stream):
                name = str(step.operator)
                if name in COLOUR_OPERATORS:
                    tile = name in ("cs", "CS") and step.operands[0] == "/Pattern"
                    used.add("tile" if tile else name)
                if name in ("k", "K"):
                    assert sum(float(v) for v in step.operands) <= 3.0 + 0.01
    assert {"k", "K"} <= used
    assert used <= {"k", "K", "g", "G", "tile", "scn", "SCN"}


@by_paper
def test_the_boxes_lie_in_each_other(paper: str) -> None:
    with opened(pressed(paper).delivered.pdf) as book:
        for page in book.pages:
            media, bleed, trim = (
                [float(v) for v in page.obj[n]] for n in ("/MediaBox", "/BleedBox", "/TrimBox")
            )
            assert (trim[2] - trim[0], trim[3] - trim[1]) == pytest.approx(TRIM[paper], abs=0.01)
            for i, sign in enumerate((1, 1, -1, -1)):
                assert sign * (trim[i] - bleed[i]) == pytest.approx(BLEED[paper], abs=0.01)
                assert sign * (bleed[i] - media[i]) > 18, "room for the crop marks"
            assert "/Annots" not in page.obj


@by_paper
def test_the_printing_condition_is_named_and_embedded(paper: str) -> None:
    with opened(pressed(paper).delivered.pdf) as book:
        (intent,) = book.Root["/OutputIntents"]
        assert intent["/S"] == "/GTS_PDFX"
        assert str(intent["/OutputConditionIdentifier"]) == IDENTIFIERS[paper]
        assert str(intent["/RegistryName"]) == "http://www.color.org"
        data = intent["/DestOutputProfile"].read_bytes()
    profile = ImageCms.ImageCmsProfile(io.BytesIO(data)).profile
    assert (profile.device_class.strip(), profile.xcolor_space.strip()) == ("prtr", "CMYK")
    assert IDENTIFIERS[paper].replace(" ", "")[-3:] in profile.profile_description


@by_paper
def test_the_file_says_what_it_is(paper: str) -> None:
    with opened(pressed(paper).delivered.pdf) as book:
        assert book.pdf_version == "1.6"
        with book.open_metadata(update_docinfo=False) as xmp:
            assert xmp["{http://www.npes.org/pdfx/ns/id/}GTS_PDFXVersion"] == "PDF/X-4"
            assert xmp["pdf:Trapped"] == "False"
            assert xmp["dc:title"] == "Bulrush: A four-fold paper-cut appliqué in two sizes"
            assert xmp["dc:creator"] == ["Hollow Fen Studio"]
            assert xmp["xmp:CreateDate"] == xmp["xmp:ModifyDate"] == "2026-01-01T00:00:00Z"
        assert book.docinfo["/Trapped"] == "/False"
        assert str(book.docinfo["/CreationDate"]) == "D:20260101000000Z"
        assert not {"/Outlines", "/Names", "/StructTreeRoot"} & set(book.Root.keys())
        assert not book.is_encrypted


@by_paper
def test_fonts_are_embedded(paper: str) -> None:
    with opened(pressed(paper).delivered.pdf) as book:
        fonts = [
            o
            for o in book.objects
            if isinstance(o, pikepdf.Dictionary) and o.get("/Type") == "/FontDescriptor"
        ]
        assert len(fonts) >= 6
        assert all(any(f"/FontFile{n}" in font for n in ("", 2, 3)) for font in fonts)


@by_paper
def test_the_words_are_the_booklets(paper: str) -> None:
    """The same lines on the same pages, at the same places after the cut."""
    made = pressed(paper)
    home = pypdfium2.PdfDocument(made.booklet.pdf)
    shop = pypdfium2.PdfDocument(made.delivered.pdf)
    assert len(home) == len(shop)
    for one, other in zip(home, shop, strict=True):
        words = [page.get_textpage() for page in (one, other)]
        assert words[0].get_text_range() == words[1].get_text_range()
        if words[0].count_chars():
            assert words[0].get_charbox(0) == pytest.approx(words[1].get_charbox(0), abs=0.05)


@by_paper
def test_the_covers_bleed(paper: str) -> None:
    """Just outside the cut the colour is what it is just inside, down to the band."""
    shop = pypdfium2.PdfDocument(pressed(paper).delivered.pdf)
    for page in (shop[0], shop[len(shop) - 1]):
        left, bottom, right, top = page.get_trimbox()
        media = page.get_mediabox()
        dots = page.render(scale=2).to_numpy()[..., :3].astype(int)
        x, y = (round(2 * v) for v in (left - media[0], media[3] - top))
        x2, y2 = (round(2 * v) for v in (right - media[0], media[3] - bottom))
        deep = round(2 * (BLEED[paper] - 1))
        middle = (x + x2) // 2
        assert np.abs(dots[y + 4, middle] - dots[y - deep, middle]).max() <= 2
        assert np.abs(dots[y2 - 4, middle] - dots[y2 + deep, middle]).max() <= 2
        for row in (y + 40, y2 - 8):
            assert np.abs(dots[row, x + 4] - dots[row, x - deep]).max() <= 2
            assert np.abs(dots[row, x2 - 4] - dots[row, x2 + deep]).max() <= 2
            assert dots[row, x - deep].min() < 245, "it is not paper white"


@by_paper
def test_nothing_is_see_through(paper: str) -> None:
    with opened(pressed(paper).booklet.pdf) as book:
        found = [s for page in book.pages for s in page.obj["/Resources"]["/ExtGState"].values()]
        assert min(float(s.get("/ca", 1)) for s in found) == pytest.approx(0.72)
    with opened(pressed(paper).delivered.pdf) as book:
        shares = [
            float(s[k])
            for page in book.pages
            for s in page.obj["/Resources"]["/ExtGState"].values()
            for k in ("/ca", "/CA")
            if k in s
        ]
        assert set(shares) <= {1.0}


def test_the_barcode_is_black_alone_and_reads() -> None:
    """GS1 asks for a dark one-ink code; the number is its worked example."""
    made = pressed("letter")
    shop = pypdfium2.PdfDocument(made.delivered.pdf)
    found = {
        b.text: n
        for n in range(len(shop))
        for b in zxingcpp.read_barcodes(shop[n].render(scale=4).to_pil().convert("L"))
    }
    assert list(found) == [NUMBER]
    with opened(made.delivered.pdf) as book:
        steps = list(pikepdf.parse_content_stream(book.pages[found[NUMBER]]))
    blacks = [
        i
        for i, s in enumerate(steps)
        if str(s.operator) == "k" and [float(v) for v in s.operands] == [0, 0, 0, 1]
    ]
    assert blacks


def test_neither_clock_nor_chance_is_in_the_file(monkeypatch: pytest.MonkeyPatch) -> None:
    made = pressed("letter")
    monkeypatch.setattr(time, "time", lambda: 4102444800.0)
    assert press(bulrush.pattern(), made.typeset) == made.delivered.pdf
    unpublished = replace(bulrush.pattern().publication, year=0, studio="")
    with opened(press(bulrush.pattern(publication=unpublished), made.typeset)) as book:
        assert str(book.docinfo["/CreationDate"]) == "D:19700101000000Z"


def test_spreads_of_a_press_edition_stay_in_its_inks() -> None:
    made = pressed("letter")
    pages = [
        n
        for n in range(1, len(pypdfium2.PdfDocument(made.delivered.pdf)) + 1)
        if n not in made.delivered.sheet_pages.values()
    ]
    spreads = impose(made.delivered.pdf, SPREADS["letter"], pages)
    with opened(spreads.pdf) as book:
        assert len(book.Root["/OutputIntents"]) == 1
        for stream in every_stream(book):
            names = {str(s.operator) for s in pikepdf.parse_content_stream(stream)}
            assert not names & {"rg", "RG", "sh"}
        trim, bleed = ([float(v) for v in book.pages[0].obj[n]] for n in ("/TrimBox", "/BleedBox"))
        assert trim[0] - bleed[0] == pytest.approx(9)
    words = pypdfium2.PdfDocument(spreads.pdf)[0].get_textpage().get_text_range()
    assert "A four-fold paper-cut appliqué" in words and "You will need" in words


def test_profiles_are_in_the_package() -> None:
    for condition in CONDITIONS.values():
        assert condition.path.is_file()
        assert len(condition.profile) < 100_000
