"""Every fault is found, at its line, in one run, with words that mend it."""

import re
from pathlib import Path

import pytest
from helpers import FAULTS, PROJECTS, announced, assert_no_notes, changed, notes_of

from publish import grade, read
from publish.notes import Severity

FIXTURES = sorted(FAULTS.glob("*.yaml"))
ELSEWHERE = {"R101", "R102", "R103", "R104", "R137", "R173", "R176", "G201"}
"""Faults that no comment in a file can announce: see test_read_files,
test_read_house, test_read_studio, test_book, test_grade_size."""


def findings(path):
    """Return what reading and grading find in a fixture."""
    pattern, notes, _ = read.load(path)
    notes = list(notes)
    for key in pattern.sizes if pattern else ():
        notes += grade.grade(pattern, key)[1]
    return notes


@pytest.mark.parametrize("path", FIXTURES, ids=lambda p: p.stem)
def test_every_announced_fault_is_found_and_no_other(path):
    wanted = announced(path.read_text(encoding="utf-8"), "RG")
    assert {(n.code, n.place.line) for n in findings(path)} == wanted


@pytest.mark.parametrize("path", FIXTURES, ids=lambda p: p.stem)
def test_severity_is_as_announced(path):
    lines = path.read_text(encoding="utf-8").splitlines()
    for note in findings(path):
        assert f"# {note.severity.value}:" in lines[note.place.line - 1], note


@pytest.mark.parametrize("path", FIXTURES, ids=lambda p: p.stem)
def test_a_note_says_what_was_expected_received_and_how_to_mend_it(path):
    for note in findings(path):
        assert all((note.what, note.expected, note.received, note.help)), note
        assert not note.what.endswith("."), note
        line = path.read_text(encoding="utf-8").splitlines()[note.place.line - 1]
        assert 1 <= note.place.column <= len(line), note


def test_ten_faults_are_found_in_one_load():
    pattern, notes, sources = read.load(FAULTS / "ten-faults.yaml")
    assert pattern is None
    assert len(notes) == 10
    assert len({n.code for n in notes}) == 10
    assert len({(n.place.line, n.place.column) for n in notes}) == 10
    assert list(notes) == sorted(notes, key=lambda n: n.place)
    assert {n.place.file for n in notes} == set(sources)


def test_ten_faults_have_the_columns_of_their_values():
    _, notes, _ = read.load(FAULTS / "ten-faults.yaml")
    lines = (FAULTS / "ten-faults.yaml").read_text(encoding="utf-8").splitlines()
    pointed = [lines[n.place.line - 1][n.place.column - 1 :] for n in notes]
    starts = [
        "subtitel",
        '"#4f6b4"',
        "rust:",
        "bulrsh.svg",
        "7",
        "mos",
        "1/8",
        "-1/4 in",
        "block_size: 18 in",
        "14 kg",
    ]
    assert all(text.startswith(start) for text, start in zip(pointed, starts, strict=True))


@pytest.mark.parametrize("name", ["samphire", "towpath", "millrace", "heronry"])
def test_a_demo_pattern_has_no_findings(name):
    pattern, notes, _ = read.load(PROJECTS / name)
    assert_no_notes(notes)
    for key in pattern.sizes:
        assert_no_notes(grade.grade(pattern, key)[1])


@pytest.mark.parametrize(
    ("old", "new", "help_"),
    [
        ("title:", "titel:", "write `title`"),
        ("motifs:", "motif:", "write `motifs`"),
        ("title:", "Title:", "write `title`"),
        ("block_size", "block size", "write `block_size`"),
        ('colour: "#f4efe6"', 'color: "#f4efe6"', "write `colour`"),
        ("title: Bulrush", "title: Bulrush\nxyzzy: 1", "known keys are `title`"),
        ("title: Bulrush", "title: Bulrush\nseam: 1/4 in", "key of `sewing` and `pillow`"),
        ("ground: linen", "ground: linin", "write `linen`"),
        ("ground: linen", "ground: velvet", "the fabrics are `linen` and `moss`"),
        ("block_size: 16 in", "block_size: 16", "write `16 in`"),
        ("block_size: 16 in", "block_size: 16 inc", "write `16 inch`"),
        ("block_size: 16 in", "block_size: 1:30", "time of day"),
        ("block_size: 16 in", "block_size: no", "to leave it at its default, remove the key"),
        ("block_size: 16 in", 'block_size: "16,5 cm"', "comma is not read: write `16.5 cm`"),
        ("block_size: 16 in", "block_size: 15,5 in", "comma is not read: write `15.5 in`"),
        ("linen: {", "Linen: {", "write `linen`: small letters"),
        ("block_size: 16 in", "block_size: 16 in x 16 in", "one length for both directions"),
        ("folds: 8", "folds: 10", "write `8` or `12`"),
        ('"#f4efe6"', '"#fed"', 'write `"#ffeedd"`'),
        ('"#f4efe6"', "f4efe6", 'write `"#f4efe6"`'),
        ("bulrush.svg", "Bulrush.svg", "write `bulrush.svg`"),
        ("bulrush.svg", "../elsewhere/bulrush.svg", "into that folder and write `bulrush.svg`"),
        ("bulrush.svg", "bulrush.png", "write `bulrush.svg`"),
        ("folds: 8", "folds: 8, method: fusable", "write `fusible`"),
    ],
)
def test_help_names_the_mend(tmp_path, old, new, help_):
    notes = notes_of(tmp_path, changed(old, new))
    assert [help_ in note.help for note in notes] == [True], notes


def test_a_misspelt_section_is_read_on(tmp_path):
    notes = notes_of(tmp_path, changed("fabrics:", "fabrcs:").replace("4f6b4a", "4f6b4"))
    assert [n.code for n in notes] == ["R110", "R126"]


def test_a_file_of_another_kind_names_each_missing_key(tmp_path):
    notes = notes_of(tmp_path, "name: something else\n")
    assert sorted(n.code for n in notes) == ["R110", "R111", "R111", "R111", "R111"]


def test_every_code_is_declared_and_shown_by_a_fixture():
    shown = set().union(*({c for c, _ in announced(p.read_text("utf-8"), "RG")} for p in FIXTURES))
    assert shown | ELSEWHERE == set(read.CODES) | set(grade.CODES)
    assert not shown & ELSEWHERE


@pytest.mark.parametrize("stage", [read, grade], ids=["read", "grade"])
def test_the_table_of_codes_is_the_codes_in_use(stage):
    files = [p for p in Path(stage.__file__).parent.glob("*.py") if p.name != "codes.py"]
    used = set().union(*(re.findall(r'"([RG]\d{3})"', p.read_text("utf-8")) for p in files))
    assert used == set(stage.CODES)
    assert all(title and not title.endswith(".") for title in stage.CODES.values())


def test_a_warning_leaves_the_pattern_usable(tmp_path):
    text = changed("moss: {", 'plum: {name: Plum, colour: "#6b4a5f"}\n  moss: {')
    (tmp_path / "pattern.yaml").write_text(text, encoding="utf-8")
    (tmp_path / "bulrush.svg").write_text("<svg/>", encoding="utf-8")
    pattern, notes, _ = read.load(tmp_path)
    assert pattern is not None
    assert [(n.code, n.severity) for n in notes] == [("R144", Severity.WARNING)]
