"""A book of two small patterns: read, bound, and looked at page by page as a PDF.

The ISBN is the worked example of ISO 2108's check digit that is printed everywhere
(978-0-306-40615-7). Bars are read by ZXing (zxing-cpp).
"""

import io
import json
import re
from fractions import Fraction

import pikepdf
import pypdfium2
import pytest
import zxingcpp
from helpers import ROOT
from houses import PATTERN, house, one
from jsonschema import Draft202012Validator

from publish import cli, read
from publish.bound.wrap import Spine

STUDIO = """\
publication:
  studio: Hollow Fen Studio
  contact: patterns@hollowfen.example
  licence: Quilts made from this pattern may be sold.
  paper_thickness: 1/100 in
"""
SQUARE = "This square must measure"
"""On every template sheet."""
BOOK = """\
title: A Year of Fens
isbn: "978-0-306-40615-7"
foreword: |
  These quilts were made in one winter.
blurb: Two walks along still water.
parts:
  - {title: Quiet water, lead: Both are small., patterns: [reedmace, sedge]}
papers: [letter]
"""


def written(home, text=BOOK, studio=STUDIO):
    house(home, ("reedmace", "sedge"), studio)
    path = home / "sedge" / "pattern.yaml"
    path.write_text(path.read_text("utf-8").replace("7 in}", "6 in, sleeve: 3 in}"), "utf-8")
    (home / "book.yaml").write_text(text, encoding="utf-8")
    return home


def findings(home, text):
    return read.load_book(written(home, text))[1]


def test_a_book_has_its_patterns_in_order_and_the_rest_from_the_studio(tmp_path):
    volume, notes, _ = read.load_book(written(tmp_path))
    assert not notes
    assert [p.name for p in volume.patterns] == ["reedmace", "sedge"]
    looks = volume.looks
    assert (looks.publication.studio, looks.publication.barcode) == (
        "Hollow Fen Studio",
        "ISBN-13 9780306406157",
    )
    assert looks.papers == ("letter",)
    assert looks.place("publication", "contact").file.endswith("studio.yaml")


def test_patterns_may_stand_without_parts(tmp_path):
    volume, notes, _ = read.load_book(written(tmp_path, "title: T\npatterns: [sedge, reedmace]\n"))
    assert not notes and [p.name for p in volume.patterns] == ["sedge", "reedmace"]


@pytest.mark.parametrize(
    ("text", "code", "line"),
    [
        ("title: T\n", "R111", 1),
        ("title: T\npatterns: [sedge, gone]\n", "R131", 2),
        ("title: T\npatterns: [../sedge]\n", "R132", 2),
        ("title: T\npatterns: [sedge, sedge]\n", "R129", 2),
        ("title: T\npatterns: [sedge, ./sedge]\n", "R129", 2),
        ('title: T\nisbn: "2000000001012"\npatterns: [sedge]\n', "R134", 2),
        ("title: T\npatterns: [sedge]\nparts: []\n", "R128", 3),
        ("title: T\npaterns: [sedge]\n", "R110", 2),
        ("title: T\npatterns: [sedge]\npapers: [a5]\n", "R125", 3),
        (
            "title: T\nparts:\n- {title: P, patterns: [sedge]}\n- {title: Q, patterns: [sedge]}\n",
            "R176",
            4,
        ),
    ],
)
def test_slips_have_their_place(tmp_path, text, code, line):
    found = [(n.code, n.place.line) for n in findings(tmp_path, text)]
    assert (code, line) in found


def test_a_path_without_a_book(tmp_path):
    assert [n.code for n in read.load_book(tmp_path)[1]] == ["R101"]


def test_the_schema_for_editors_is_written():
    committed = json.loads((ROOT / "projects/book.schema.json").read_text(encoding="utf-8"))
    assert committed == read.json_schema(read.BOOK), "run `foldwork reference`"
    Draft202012Validator.check_schema(committed)


def test_a_patterns_error_stops_the_book(tmp_path, capsys):
    home = written(tmp_path)
    one(
        home / "sedge", PATTERN.format(title="Sedge", number="HF-2").replace("folds: 8", "folds: 9")
    )
    assert cli.main(["book", str(home), "--out", str(tmp_path / "out")]) == cli.ERRORS
    assert "R124" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    home = written(tmp_path_factory.mktemp("fens"))
    out = home / "out"
    assert cli.main(["book", str(home), "--out", str(out), "--jobs", "1"]) == cli.CLEAN
    (target,) = out.iterdir()
    return target


@pytest.fixture(scope="module")
def pages(made):
    document = pypdfium2.PdfDocument(made / "book-letter.pdf")
    return [" ".join(p.get_textpage().get_text_range().split()) for p in document]


@pytest.fixture(scope="module")
def marks(made):
    """Return (level, title, page from 1) of every bookmark."""
    document = pypdfium2.PdfDocument(made / "book-letter.pdf")
    return [(m.level, m.get_title(), m.get_dest().get_index() + 1) for m in document.get_toc()]


def test_its_files(made):
    assert {p.name for p in made.iterdir()} == {
        "book-letter.pdf",
        "press-book-letter.pdf",
        "press-cover-letter.pdf",
        "manifest.json",
    }


def test_each_thing_stands_once_and_in_its_place(marks):
    outer = [title for level, title, _ in marks if level == 0]
    wanted = [
        "Foreword",
        "Tools",
        "Working safely",
        "Before you start",
        "Techniques",
        "Quiet water",
        "Reedmace",
        "Sedge",
        "Templates",
        "Glossary and metric table",
        "Index",
        "This edition",
    ]
    assert [title for title in outer if title in wanted] == wanted
    for title in ("Tools", "Working safely", "Index"):
        assert sum(t == title for _, t, _ in marks) == 1
    assert sum(t.startswith("Glossary") for _, t, _ in marks) == 1


def test_references_lead_to_the_page_that_they_name(pages, marks):
    text = " ".join(pages)
    found = re.findall(r"Work steps (\d+) (?:to|and) (\d+) of ([^.]+?) on page (\d+)\.", text)
    techniques = {t: p for level, t, p in marks if level == 1}
    assert len(found) > 6
    first = next(p for _, t, p in marks if t == "Techniques")
    last = next(p for _, t, p in marks if t == "Quiet water")
    for _, _, broken, page in found:
        # The number of a step beside a line's end is read between that line and the next.
        title = re.sub(r" \d+ ", " ", broken)
        assert first <= int(page) < last
        assert title in pages[int(page) - 1]
        assert title in techniques


def test_what_is_told_once_is_not_told_again(pages):
    text = " ".join(pages)
    assert text.count("Press the strip in half along its whole length") == 1


def test_templates_are_at_the_back_and_true(pages, marks):
    start = next(p for _, t, p in marks if t == "Templates")
    end = next(p for _, t, p in marks if t.startswith("Glossary"))
    sheets = [n for n, words in enumerate(pages, 1) if SQUARE in words]
    assert len(sheets) == 2  # a wedge for each pattern; preflight has measured the squares
    assert all(start < n < end for n in sheets)
    assert [name for n in sheets for name in ("Reedmace", "Sedge") if name in pages[n - 1]] == [
        "Reedmace",
        "Sedge",
    ]


def test_the_index_names_pages_that_use_the_term(pages, marks):
    start = next(p for _, t, p in marks if t == "Index") - 1
    stop = next(p for _, t, p in marks if t == "This edition")
    listed = " ".join(pages[start:stop])
    entry = re.search(r"selvage ((?:\d+(?:–\d+)?(?:, )?)+)", listed)
    assert entry is not None
    numbers = []
    for part in entry[1].strip(", ").split(", "):
        first, _, last = part.partition("–")
        numbers += range(int(first), int(last or first) + 1)
    glossary = next(p for _, t, p in marks if t.startswith("Glossary"))
    using = [n for n, words in enumerate(pages, 1) if "selvage" in words.lower() and n < glossary]
    contents = next(p for _, t, p in marks if t == "Foreword")
    assert numbers == [n for n in using if n >= contents]


def test_the_back_has_the_isbn_and_every_pattern(made, pages):
    document = pypdfium2.PdfDocument(made / "book-letter.pdf")
    picture = document[len(document) - 1].render(scale=300 / 72).to_pil().convert("L")
    assert [b.text for b in zxingcpp.read_barcodes(picture)] == ["9780306406157"]
    assert "Reedmace" in pages[-1] and "Two walks along still water." in pages[-1]


def test_the_cover_is_as_wide_as_its_pages_and_spine(made):
    """A leaf is two pages; the width of a spine is the thickness of its leaves (common
    practice, no source)."""
    with pikepdf.open(made / "press-book-letter.pdf") as inside:
        count = len(inside.pages)
        inner = [float(v) for v in inside.pages[0].obj["/TrimBox"]]
    assert count % 2 == 0
    with pikepdf.open(made / "press-cover-letter.pdf") as cover:
        (sheet,) = cover.pages
        trim = [float(v) for v in sheet.obj["/TrimBox"]]
        bleed = [float(v) for v in sheet.obj["/BleedBox"]]
    assert (inner[2] - inner[0], inner[3] - inner[1]) == pytest.approx((612, 792), abs=0.01)
    spine = count / 2 * 0.01 * 72
    assert trim[2] - trim[0] == pytest.approx(2 * 612 + spine, abs=0.01)
    assert trim[3] - trim[1] == pytest.approx(792, abs=0.01)
    assert trim[0] - bleed[0] == pytest.approx(9, abs=0.01)


def test_the_covers_stand_upright_on_either_side(made):
    document = pypdfium2.PdfDocument(made / "press-cover-letter.pdf")
    page = document[0]
    found = page.get_textpage()
    places = {}
    for words in ("Two walks", "A Year"):
        at = found.search(words).get_next()
        places[words] = found.get_charbox(at[0])
    middle = page.get_size()[0] / 2
    assert places["Two walks"][0] < middle
    picture = page.render(scale=300 / 72).to_pil().convert("L")
    (bars,) = zxingcpp.read_barcodes(picture)
    assert bars.text == "9780306406157" and abs(bars.orientation) < 5
    assert bars.position.top_left.x < picture.width / 2


def test_the_print_shops_files_say_what_they_are(made):
    for name in ("press-book-letter.pdf", "press-cover-letter.pdf"):
        with pikepdf.open(io.BytesIO((made / name).read_bytes())) as file:
            assert str(file.trailer["/Info"]["/GTS_PDFXVersion"]) == "PDF/X-4"
            assert "/OutputIntents" in file.Root


@pytest.mark.parametrize(
    ("pages", "leaf", "width"),
    [(200, "1/200", "1/2"), (96, "1/250", "24/125"), (2, "1/100", "1/100")],
)
def test_spines(pages, leaf, width):
    assert Spine(pages, Fraction(leaf)).width == Fraction(width)
