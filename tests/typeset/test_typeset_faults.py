"""What goes wrong in layouts, artwork and text ends in a note with its place."""

from __future__ import annotations

import shutil
from dataclasses import replace
from pathlib import Path

import bulrush
import bulrush_drawn
import pytest

from publish.model.book import LETTER
from publish.model.figure import Artwork
from publish.model.words import Manual, Paragraph, Section
from publish.notes import Note, Severity
from publish.typeset import CODES, typeset
from publish.typeset.layout import find

LAYOUTS = Path(__file__).parents[2] / "layouts"
ARTWORK = bulrush_drawn.artwork(LETTER)


@pytest.fixture
def own(tmp_path: Path) -> Path:
    """Return a copy of the layout as a designer's own, beside the pattern."""
    folder = tmp_path / "layouts" / "mine"
    for part in ("shared", "tideline"):
        shutil.copytree(LAYOUTS / part, folder, dirs_exist_ok=True)
    return folder


def notes_of(own: Path, manual: Manual | None = None, artwork: Artwork = ARTWORK) -> list[Note]:
    """Return the notes of a booklet that must not be made."""
    pattern = bulrush.pattern(layout=own.name, folder=own.parents[1])
    edition, notes = typeset(pattern, manual or bulrush.manual(), artwork, LETTER)
    assert edition is None
    assert all(n.code in CODES for n in notes)
    return list(notes)


def add(path: Path, text: str) -> int:
    """Add a line to a file and return its number."""
    before = path.read_text(encoding="utf-8")
    path.write_text(before + text + "\n", encoding="utf-8")
    return before.count("\n") + 1


def short(text: str = "Fold it.") -> Manual:
    section = Section("one", "One", (Paragraph(text),))
    return replace(bulrush.manual(), sections=(section,))


def test_an_unknown_name_in_a_template_is_a_note_at_its_line(own: Path) -> None:
    line = add(own / "contents.html", "{{ patern.title }}")
    (note,) = notes_of(own)
    assert note.code == "T703"
    assert note.place.file.endswith("mine/contents.html") and note.place.line == line
    assert "'patern' is undefined" in note.what


def test_an_unknown_attribute_in_a_macro_is_a_note_at_its_line(own: Path) -> None:
    path = own / "words.html"
    text = path.read_text(encoding="utf-8").replace("{{ p.block.text | prose }}", "{{ item.txt }}")
    path.write_text(text, encoding="utf-8")
    line = next(n for n, t in enumerate(text.splitlines(), 1) if "item.txt" in t)
    (note,) = notes_of(own)
    assert (note.code, note.place.line) == ("T703", line)
    assert note.place.file.endswith("words.html")


def test_a_slip_in_template_syntax_is_a_note_at_its_line(own: Path) -> None:
    line = add(own / "booklet.html", "{% if %}")
    (note,) = notes_of(own)
    assert (note.code, note.place.line) == ("T703", line)


def test_a_value_that_does_not_fit_is_a_note_at_its_line(own: Path) -> None:
    line = add(own / "style.css", "{{ settings.line + 'pt' }}")
    (note,) = notes_of(own)
    assert (note.code, note.place.line) == ("T703", line)
    assert note.place.file.endswith("style.css")


def test_a_slip_in_the_style_is_a_warning_at_its_line(own: Path) -> None:
    line = add(own / "style.css", "p { colr: red }")
    pattern = bulrush.pattern(layout="mine", folder=own.parents[1])
    edition, (note,) = typeset(pattern, short(), ARTWORK, LETTER)
    assert edition is not None
    assert (note.code, note.severity) == ("T710", Severity.WARNING)
    assert note.place.file.endswith("style.css") and note.place.line == line
    assert "colr" in note.what


def test_nothing_is_fetched_from_outside(own: Path) -> None:
    add(own / "style.css", 'h1 { background: url("https://fen.example/a.png") }')
    add(own / "style.css", 'li { background: url("file:///etc/hostname") }')
    add(own / "style.css", 'h2 { background: url("layout:../../../secret.png") }')
    assert {n.code for n in notes_of(own)} == {"T711"}
    assert len(notes_of(own)) == 3


def test_an_unknown_layout_names_those_there_are(own: Path) -> None:
    (note,) = notes_of(own.with_name("tidelin"))
    assert note.code == "T701"
    assert "mine" in note.expected and "tideline" in note.expected


@pytest.mark.parametrize("name", ["../tideline", "tideline/", ".", ""])
def test_a_layout_is_a_name_and_not_a_path(own: Path, name: str) -> None:
    pattern = bulrush.pattern(layout=name, folder=own.parents[1])
    layout, notes = find(pattern, LETTER)
    assert layout is None and [n.code for n in notes] == ["T701"]


@pytest.mark.parametrize(
    ("settings", "line", "said"),
    [
        ("fonts: [\n", 2, "not YAML"),
        ("- a list\n", 1, "not a set of keys"),
        ("about: nothing\n", 1, "lists no fonts"),
        ("fonts: [{family: A}]\n", 1, "a font is not described"),
        ("fonts: [{family: A, file: none.ttf}]\n", 1, "a font file is not there"),
        ("fonts: [{family: A, file: none.ttf, package: no_such}]\n", 1, "font file is not there"),
        ("papers: {legal: {}}\n", 1, "unknown paper"),
        ("papers: {letter: 3}\n", 1, "papers.letter is not a set of keys"),
        ("settings: 3\n", 1, "settings is not a set of keys"),
        ("colour: red\n", 1, "unknown key"),
        ("extends: sideline\n", 1, "no layout of the name"),
        ("extends: tideline\nfonts: []\n", 1, "lists no fonts"),
        ("extends: tideline\nstyle: none.css\n", 1, "lacks a file"),
        ("extends: tideline\nfamilies: {feet: A}\n", 1, "unknown role"),
        ("extends: tideline\nfamilies: {text: A}\n", 1, "has no font file"),
        ("extends: tideline\nfamilies: A\n", 1, "families is not a set of keys"),
        ("template: other.html\n", 1, "lacks a file"),
    ],
)
def test_faulty_settings_are_notes(own: Path, settings: str, line: int, said: str) -> None:
    (own / "layout.yaml").write_text(settings, encoding="utf-8")
    notes = notes_of(own)
    assert {n.code for n in notes} == {"T702"}
    assert any(said in n.what and n.place.line == line for n in notes)


def test_a_character_without_a_glyph_is_named(own: Path) -> None:
    (note,) = notes_of(own, short("Fold 折 the square."))
    assert note.code == "T704"
    assert note.received == "折 (U+6298)"


def test_a_figure_that_was_not_drawn_is_named(own: Path) -> None:
    figures = {k: f for k, f in ARTWORK.figures.items() if k != "step-3"}
    (note,) = notes_of(own, artwork=replace(ARTWORK, figures=figures))
    assert (note.code, note.received) == ("T705", "step-3")


def test_sheets_that_were_not_drawn_are_named(own: Path) -> None:
    notes = notes_of(own, artwork=replace(ARTWORK, sheets={}))
    assert {n.code for n in notes} == {"T706"}
    assert [n.received for n in notes] == ["bulrush, mini, wedge", "bulrush, throw, wedge"]


def test_a_sheet_that_is_not_the_papers_size_is_refused(own: Path) -> None:
    key = ("bulrush", "mini", "wedge")
    sheets = ARTWORK.sheets[key]
    smaller = replace(sheets[0], svg=sheets[0].svg.replace("8.5000in", "8.4000in"))
    changed = {**ARTWORK.sheets, key: (smaller, *sheets[1:])}
    (note,) = notes_of(own, artwork=replace(ARTWORK, sheets=changed))
    assert note.code == "T707"
    assert note.expected == "8.500 x 11.000 in" and note.received == "8.400 x 11.000 in"


def test_a_layout_that_forgets_the_sheets_is_told(own: Path) -> None:
    path = own / "sheets.html"
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace('id="{{ sheet_anchor(sheet) }}"', ""), encoding="utf-8")
    homeless = [n.received for n in notes_of(own) if n.code == "T708"]
    assert homeless == ["bulrush-mini-wedge-0", "bulrush-mini-wedge-1", "bulrush-throw-wedge-0"]


def test_every_code_of_the_stage_is_in_its_range() -> None:
    assert all(code.startswith("T7") and len(code) == 4 for code in CODES)
