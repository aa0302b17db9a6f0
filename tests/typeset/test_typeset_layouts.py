"""Layouts that build on others, and booklets on half-size paper.

Paper: half of US Letter is 5.5 x 8.5 in, 396 x 612 pt (arithmetic from ANSI/ASME Y14.1);
A5 is 148 x 210 mm (ISO 216), 419.528 x 595.276 pt.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import bulrush
import bulrush_drawn
import pikepdf
import pytest
from finished import Book, read_back

from publish.model.book import A4, A5, HALF_LETTER, LETTER, PAPERS, Paper
from publish.model.words import Manual, Paragraph, Section, Step, Steps, TemplateSheets
from publish.notes import Severity
from publish.typeset import inspect, typeset
from publish.typeset.layout import Layout, find, known
from publish.words import language
from publish.write import half_size

SMALL = {"half-letter": (396.0, 612.0), "a5": (419.528, 595.276)}
ARTWORK = bulrush_drawn.artwork(LETTER)


@pytest.fixture
def own(tmp_path: Path) -> Path:
    """Return the folder of a layout beside the pattern that extends Tideline."""
    folder = tmp_path / "layouts" / "creek"
    folder.mkdir(parents=True)
    (folder / "layout.yaml").write_text("extends: tideline\n", encoding="utf-8")
    return folder


def found(own: Path, paper: Paper = LETTER) -> Layout:
    layout, notes = find(bulrush.pattern(layout=own.name, folder=own.parents[1]), paper)
    assert notes == () and layout is not None
    return layout


def short() -> Manual:
    step = Step("one", 1, "Fold it in half.", tip="Use a cold iron.")
    section = Section("one", "One", (Paragraph("A paragraph."), Steps((step,))))
    return replace(bulrush.manual(), sections=(section,))


def built(own: Path, manual: Manual | None = None) -> Book:
    pattern = bulrush.pattern(layout=own.name, folder=own.parents[1])
    edition, notes = typeset(pattern, manual or short(), ARTWORK, LETTER)
    assert notes == () and edition is not None
    return read_back(edition)


def test_both_designs_can_be_named() -> None:
    assert {"tideline", "washland"} <= set(known(bulrush.pattern()))


def test_a_layout_that_only_extends_looks_as_the_other_does(own: Path) -> None:
    tideline, _ = typeset(bulrush.pattern(), short(), ARTWORK, LETTER)
    assert tideline is not None
    assert built(own).edition.html == tideline.html


def test_settings_of_its_own_go_before_those_it_extends(own: Path) -> None:
    base, _ = find(bulrush.pattern(), LETTER)
    assert base is not None
    (own / "layout.yaml").write_text(
        "extends: tideline\nsettings: {line: 13, reeds: 3}\npapers: {a4: {lines: 54}}\n",
        encoding="utf-8",
    )
    letter, a4 = found(own), found(own, A4)
    assert letter.settings["line"] == 13 and letter.settings["reeds"] == 3
    assert letter.settings["lines"] == base.settings["lines"]
    assert a4.settings["lines"] == 54 and a4.settings["letters"] == base.settings["letters"]
    assert letter.fonts == base.fonts and letter.families == base.families


def test_a_style_of_its_own_is_laid_over_the_other(own: Path) -> None:
    (own / "style.css").write_text("h1 { color: #123456 }\n", encoding="utf-8")
    assert [p.parent.name for p in found(own).styles] == ["tideline", "creek"]
    book = built(own)
    steps = pikepdf.parse_content_stream(book.objects.pages[1])
    fills = [[float(v) for v in s.operands] for s in steps if str(s.operator) == "rg"]
    assert any(f == pytest.approx([n / 255 for n in (0x12, 0x34, 0x56)], abs=0.001) for f in fills)


def test_a_file_of_its_own_replaces_one_and_may_build_on_it(own: Path) -> None:
    (own / "steps.html").write_text(
        '{% from "tideline/steps.html" import step as plain, told with context %}\n'
        '{% macro step(p) %}<p class="words">Take your time.</p>{{ plain(p) }}{% endmacro %}\n',
        encoding="utf-8",
    )
    text = built(own).text
    assert "Take your time." in text and "Fold it in half." in text


def test_a_page_may_extend_the_other_by_its_blocks_and_files(own: Path) -> None:
    (own / "booklet.html").write_text(
        '{% include "tideline/booklet.html" %}<p class="words">Printed by the bank.</p>',
        encoding="utf-8",
    )
    assert "Printed by the bank." in built(own).text


def test_files_are_found_in_both(own: Path) -> None:
    for path in (own / "reed.svg", own.parents[1] / "secret.svg"):
        path.write_text("<svg/>", encoding="utf-8")
    layout = found(own)
    reed, caution = layout.file("reed.svg"), layout.file("caution.svg")
    assert reed == own / "reed.svg"
    assert caution is not None and caution.parent.name == "tideline"
    assert layout.file("../../secret.svg") is None and layout.file("/etc/hostname") is None


def test_layouts_that_extend_each_other_in_a_circle_are_told(own: Path) -> None:
    other = own.with_name("pool")
    other.mkdir()
    (other / "layout.yaml").write_text("extends: creek\n", encoding="utf-8")
    (own / "layout.yaml").write_text("extends: pool\n", encoding="utf-8")
    layout, (note,) = find(bulrush.pattern(layout="creek", folder=own.parents[1]), LETTER)
    assert layout is None
    assert note.code == "T702" and note.received == "creek"
    assert note.place.file.endswith("pool/layout.yaml")


def test_a_slip_in_a_style_laid_over_points_at_its_own_line(own: Path) -> None:
    (own / "style.css").write_text("/* reeds */\np { colr: red }\n", encoding="utf-8")
    pattern = bulrush.pattern(layout="creek", folder=own.parents[1])
    edition, (note,) = typeset(pattern, short(), ARTWORK, LETTER)
    assert edition is not None
    assert note.place.file.endswith("creek/style.css") and note.place.line == 2


def test_a_layout_that_does_not_know_half_size_paper_is_told(own: Path) -> None:
    (own / "layout.yaml").write_text(
        (Path(__file__).parents[2] / "layouts/tideline/layout.yaml")
        .read_text(encoding="utf-8")
        .split("  half-letter:")[0],
        encoding="utf-8",
    )
    for name in ("booklet.html", "style.css"):
        (own / name).write_text("", encoding="utf-8")
    pattern = bulrush.pattern(layout="creek", folder=own.parents[1], papers=("a4", "a5"))
    (note,) = [n for n in inspect(pattern) if n.severity is Severity.ERROR]
    assert note.code == "T702" and note.severity is Severity.ERROR
    assert note.what == "the layout has no settings for A5"


def test_half_size_pages_are_of_their_paper(small: Book) -> None:
    for page in small.pages:
        assert page.get_size() == pytest.approx(SMALL[small.edition.paper.key], abs=0.01)


def test_half_size_papers_are_halves() -> None:
    for paper in (HALF_LETTER, A5):
        whole = PAPERS[paper.parent]
        assert paper.height == pytest.approx(whole.width)
        assert paper.width == pytest.approx(whole.height / 2, abs=0.02)  # ISO 216 rounds down


def test_half_size_booklets_have_no_template_sheets_and_say_where_they_are(small: Book) -> None:
    assert small.edition.sheet_pages == {}
    parent = PAPERS[small.edition.paper.parent]
    where = f"templates-{parent.key}, for {parent.name} paper"
    # PDFium gives a hyphen at the end of a line as U+FFFE.
    assert where.replace(" ", "") in small.text.replace("\ufffe", "-").replace(" ", "")
    assert "Sheet on page" not in small.text


def test_half_size_booklets_hold_all_the_words(small: Book) -> None:
    for words in (
        "The mini hangs in a hall",
        "a ruler that shows 1/8 in",
        "Blades and heat",
        "All fabrics",
        "Try your own fabrics.",
        "18 1/2 in × 54 1/2 in",
        "The throw uses the same wedge",
        "patterns@hollowfen.example",
    ):
        assert words in small.text


def test_half_size_words_stay_on_their_page(small: Book) -> None:
    for number, page in enumerate(small.pages):
        words = page.get_textpage()
        width, height = page.get_size()
        inside = 0 < number < len(small.words) - 1
        side, end = (27.0, 15.0) if inside else (0.0, 0.0)
        for n in range(words.count_rects()):
            left, bottom, right, top = words.get_rect(n)
            assert left >= side - 0.5 and right <= width - side + 0.5, (number + 1, n)
            assert bottom >= end - 0.5 and top <= height - end + 0.5, (number + 1, n)


def test_template_sheets_on_half_size_paper_are_refused() -> None:
    edition, notes = typeset(bulrush.pattern(), bulrush.manual(), ARTWORK, HALF_LETTER)
    assert edition is None
    assert [(n.code, n.expected) for n in notes] == [("T709", "no template sheets, or US Letter")]


def test_a_manual_for_whole_paper_keeps_its_sheets() -> None:
    manual = bulrush.manual()
    assert half_size(manual, LETTER, language()) is manual
    small = half_size(manual, A5, language())
    kinds = [type(b) for s in small.sections for b in s.blocks]
    assert TemplateSheets not in kinds
    assert [s.key for s in small.sections] == [s.key for s in manual.sections]
    assert half_size(small, A5, language()) == small
