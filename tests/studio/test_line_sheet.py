"""The line sheet: what shops order by, on paper and as data.

Bars are read back by ZXing (zxing-cpp), whose code has nothing in common with what draws
them.
"""

import io
import json
from argparse import Namespace

import pypdfium2
import pytest
import zxingcpp
from houses import changed, house
from PIL import Image

from publish import pipeline, several
from publish.kept import Store, users
from publish.notes import Report
from publish.studio import line_sheet, side_by_side
from publish.studio.outcome import Outcome, State

STUDIO = """\
publication: {studio: Hollow Fen Studio, contact: orders@hollowfen.example}
papers: [letter, a4]
prices: [{currency: EUR, retail: 14.50, wholesale: 7.25}, {currency: GBP, retail: 12.00}]
"""


@pytest.fixture(scope="module")
def outcomes(tmp_path_factory):
    """Return what became of two patterns, of which one has a barcode, and one that failed."""
    home = tmp_path_factory.mktemp("studio")
    folders = house(home, ("reedmace", "sedge"), STUDIO)
    changed(folders[0], "HF-1}", 'HF-1, barcode: "2000000001012"}')
    changed(folders[1], "HF-2", "HF-0")
    kept = Store(users())
    built = [pipeline.build(f, home / "out", ["letter"], "booklet", store=kept)[1] for f in folders]
    found = [
        Outcome(f, State.BUILT, Report(), f.name, t) for f, t in zip(folders, built, strict=True)
    ]
    return (*found, Outcome(home / "rush", State.ERRORS, Report(), "rush"))


@pytest.fixture(scope="module")
def made(outcomes, tmp_path_factory):
    return line_sheet.make(outcomes, tmp_path_factory.mktemp("made"))


def words(path):
    document = pypdfium2.PdfDocument(path)
    texts = [page.get_textpage().get_text_range() for page in document]
    return " ".join(" ".join(texts).replace("\xa0", " ").split())


def test_it_is_on_each_paper_and_as_data(made):
    assert made.state is State.BUILT
    names = {p.name for p in made.target.iterdir()}
    assert names == {
        "line-sheet-letter.pdf",
        "line-sheet-a4.pdf",
        "line-sheet.json",
        "manifest.json",
        "pictures",
    }
    assert made.pdfs == 2


@pytest.mark.parametrize(("paper", "inches"), [("letter", (8.5, 11)), ("a4", (8.27, 11.69))])
def test_its_pages_are_of_their_paper(made, paper, inches):
    document = pypdfium2.PdfDocument(made.target / f"line-sheet-{paper}.pdf")
    assert [round(side / 72, 2) for side in document[0].get_size()] == list(inches)


def test_it_says_what_shops_order_by(made):
    said = words(made.target / "line-sheet-letter.pdf")
    for what in (
        "Hollow Fen Studio: line sheet",
        "2 patterns",
        "orders@hollowfen.example",
        "Reedmace",
        "HF-1",
        "HF-0",
        "9 in (22.9 cm) square",
        "7.25",
        "14.50",
        "12.00",
        "on request",
        "First edition",
    ):
        assert what in said
    assert said.index("HF-0") < said.index("HF-1")  # in the order of stock numbers


def test_its_bars_are_read_by_another_library(made):
    page = pypdfium2.PdfDocument(made.target / "line-sheet-letter.pdf")[0]
    picture = page.render(scale=300 / 72).to_pil().convert("L")
    (found,) = zxingcpp.read_barcodes(picture)
    assert found.text == "2000000001012"
    # Nominal size, GS1 General Specifications, from memory: 95 modules of 0.33 mm.
    corners = found.position
    wide = (corners.top_right.x - corners.top_left.x) / 300 * 25.4
    assert wide == pytest.approx(95 * 0.33, rel=0.02)


def test_its_data_are_the_same(made):
    told = json.loads((made.target / "line-sheet.json").read_text(encoding="utf-8"))["patterns"]
    assert [p["stock_number"] for p in told] == ["HF-0", "HF-1"]
    first = told[0]
    assert first["prices"][0] == {"currency": "EUR", "retail": "14.50", "wholesale": "7.25"}
    assert first["barcode"] is None
    data = (made.target / first["picture"]["file"]).read_bytes()
    with Image.open(io.BytesIO(data)) as image:
        assert max(image.size) == line_sheet.SIDE
    assert "Computed from the pattern" in first["picture"]["alt"]


def test_who_is_left_out_is_told(made):
    (note,) = made.report
    assert (note.code, note.received) == ("X907", "not built")
    assert note.place.file.endswith("rush")


def test_it_is_made_again_only_when_it_says_something_else(outcomes, made):
    out = made.target.parent
    before = {p: p.read_bytes() for p in made.target.rglob("*") if p.is_file()}
    assert line_sheet.make(outcomes, out).state is State.UNCHANGED
    assert line_sheet.make(outcomes[:1], out).state is State.BUILT
    assert line_sheet.make(outcomes, out).state is State.BUILT
    assert {p: p.read_bytes() for p in made.target.rglob("*") if p.is_file()} == before


def test_nobodys_folder_is_replaced(outcomes, tmp_path):
    (tmp_path / "line-sheet").mkdir()
    (tmp_path / "line-sheet" / "mine.txt").write_text("mine", encoding="utf-8")
    end = line_sheet.make(outcomes, tmp_path)
    assert end.state is State.ERRORS
    assert [n.code for n in end.report.errors] == ["X902"]


def test_no_finished_pattern_no_line_sheet(tmp_path):
    end = line_sheet.make((Outcome(tmp_path / "rush", State.ERRORS, Report()),), tmp_path)
    assert (end.state, end.target, list(tmp_path.iterdir())) == (State.ERRORS, None, [])


@pytest.mark.parametrize(
    ("named", "only", "sheet"),
    [((".",), None, True), (("reedmace", "sedge"), None, False), ((".",), "press", False)],
)
def test_it_is_made_of_a_folder_of_whole_patterns(tmp_path, monkeypatch, named, only, sheet):
    folders = house(tmp_path, ("reedmace", "sedge"))
    ends = tuple(Outcome(f, State.ERRORS, Report(), f.name) for f in folders)
    monkeypatch.setattr(side_by_side, "build", lambda *_: ends)
    asked = Namespace(
        patterns=[tmp_path / n for n in named],
        out=tmp_path / "out",
        only=only,
        strict=False,
        changed=False,
        jobs=1,
        size="",
        language="",
        fresh=False,
        cluster="",
    )
    found = several.build(folders, None, asked)
    assert [o.key for o in found] == ["reedmace", "sedge", *(["line-sheet"] if sheet else [])]
