"""Files that are no pattern: missing, binary, empty, huge, nested, sharing their nodes."""

import os
from pathlib import Path

import pytest
from helpers import DRAWING, changed, notes_of, pattern

from publish import read
from publish.notes import Place
from publish.read import SMALLEST


def only(notes):
    assert len(notes) == 1, notes
    assert all((notes[0].what, notes[0].expected, notes[0].help))
    return notes[0]


def written(folder, data):
    (folder / "pattern.yaml").write_bytes(data)
    return read.load(folder)


def test_a_path_that_leads_nowhere_names_the_nearest(tmp_path):
    (tmp_path / "samphire").mkdir()
    result, notes, sources = read.load(tmp_path / "samphir")
    note = only(notes)
    assert (result, sources, note.code) == (None, {}, "R101")
    assert note.help.endswith("samphire`")


def test_a_folder_without_a_pattern_names_what_it_holds(tmp_path):
    assert "foldwork new" in only(read.load(tmp_path)[1]).help
    (tmp_path / "pattern.yml").write_text(SMALLEST, encoding="utf-8")
    assert only(read.load(tmp_path)[1]).help.startswith("rename pattern.yml to pattern.yaml")


@pytest.mark.parametrize("name", ["a\0b", "x" * 5000, "/dev/null", "no/such/place"])
def test_a_path_that_cannot_be_a_pattern(name):
    assert only(read.load(Path(name))[1]).code == "R101"


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="needs file permissions")
def test_a_file_that_may_not_be_read(tmp_path):
    path = pattern(tmp_path)
    path.chmod(0)
    assert only(read.load(path)[1]).code == "R101"


def test_bytes_that_are_not_utf_8_have_a_place(tmp_path):
    note = only(written(tmp_path, b"title: Bulrush\nsubtitle: Caf\xe9\n")[1])
    assert (note.code, note.place.line, note.place.column) == ("R102", 2, 14)
    assert note.received == "the byte E9"
    note = only(written(tmp_path, "title: Bulrush".encode("utf-16"))[1])
    assert (note.code, note.received) == ("R102", "UTF-16")


def test_a_byte_order_mark_is_no_part_of_the_text(tmp_path):
    (tmp_path / "bulrush.svg").write_text(DRAWING, encoding="utf-8")
    result, notes, _ = written(tmp_path, b"\xef\xbb\xbf" + SMALLEST.encode())
    assert (result.title, notes) == ("Bulrush", ())


@pytest.mark.parametrize("line_end", ["\n", "\r\n", "\r"])
def test_any_line_end_will_do(tmp_path, line_end):
    (tmp_path / "bulrush.svg").write_text(DRAWING, encoding="utf-8")
    text = changed("folds: 8", "folds: 7").replace("\n", line_end)
    _, notes, _ = written(tmp_path, text.encode())
    assert (only(notes).place.line, only(notes).place.column) == (6, 42)


@pytest.mark.parametrize("data", [b"", b"\n\n", b"# only a comment\n", b"---\n...\n"])
def test_an_empty_file_says_so(tmp_path, data):
    note = only(written(tmp_path, data)[1])
    assert note.code in {"R103", "R112", "R113"}
    assert note.place == Place(note.place.file)


def test_control_characters_have_a_place(tmp_path):
    note = only(written(tmp_path, b"title: Bulrush\nsubtitle: a\x00b\n")[1])
    assert (note.code, note.place.line, note.place.column) == ("R109", 2, 12)
    assert note.received == "U+0000"


BILLION = "a: &a [x, x, x, x, x, x, x, x, x]\n" + "".join(
    f"{b}: &{b} [{', '.join(['*' + a] * 9)}]\n"
    for a, b in zip("abcdefghi", "bcdefghij", strict=True)
)

HOSTILE = {
    "nine to the tenth by aliases": BILLION,
    "an alias of itself": "a: &a [*a]\n",
    "a merge of itself": "a: &a {<<: *a}\n",
    "open brackets": "[" * 250_000,
    "open braces": "{" * 250_000,
    "list in list": "- " * 120_000,
    "key in key": "? " * 120_000,
    "deep indents": "".join(" " * n + "a:\n" for n in range(600)),
    "quotation marks": '"' * 250_000,
    "colons": ":" * 250_000,
    "a long word": "title: " + "a" * 250_000,
    "a long length": "sewing: {seam: " + "a" * 250_000 + "!}",
    "many keys": "".join(f"colour_{n}: 1\n" for n in range(3_000)),
    "many aliases": "a: &a x\nb: [" + "*a, " * 60_000 + "]",
    "tabs": "\ta: b\n" * 40_000,
    "blank lines": "\n" * 250_000,
    "a version of many digits": "%YAML " + "9" * 5_000 + ".1\n---\na: b",
    "an escape out of range": 'title: "\\UFFFFFFFF"',
}


@pytest.mark.parametrize("text", HOSTILE.values(), ids=HOSTILE.keys())
def test_a_hostile_file_is_refused(tmp_path, text):
    result, notes, _ = written(tmp_path, text.encode())
    assert result is None
    assert notes


def test_size_depth_and_number_have_limits(tmp_path):
    assert only(written(tmp_path, b"#" * 300_000)[1]).code == "R104"
    deep = only(written(tmp_path, b"a: " + b"[" * 60 + b"]" * 60)[1])
    assert (deep.code, deep.place.line, deep.received) == ("R104", 1, "more than 24 levels")
    many = only(written(tmp_path, b"a: [" + b"1," * 30_000 + b"]")[1])
    assert (many.code, many.received) == ("R104", "more than 20,000 values")


def test_aliases_are_refused_one_by_one(tmp_path):
    _, notes, _ = written(tmp_path, BILLION.encode())
    assert sum(n.code == "R107" for n in notes) == 50


def test_places_are_shown_from_the_current_folder_where_that_is_shorter(tmp_path, monkeypatch):
    inner = tmp_path / "projects" / "bulrush"
    inner.mkdir(parents=True)
    path = pattern(inner, changed("folds: 8", "folds: 7"))
    monkeypatch.chdir(tmp_path)
    _, notes, sources = read.load(path)
    assert only(notes).place.file == os.path.join("projects", "bulrush", "pattern.yaml")
    assert sources == {notes[0].place.file: path.read_text(encoding="utf-8")}
    monkeypatch.chdir("/")
    assert only(read.load(path)[1]).place.file == os.path.relpath(path)


def test_a_drawing_may_not_be_reached_through_a_link_out_of_the_folder(tmp_path):
    outside = tmp_path / "outside.svg"
    outside.write_text(DRAWING, encoding="utf-8")
    inner = tmp_path / "bulrush"
    inner.mkdir()
    (inner / "bulrush.svg").symlink_to(outside)
    assert only(notes_of(inner, SMALLEST, drawings=())).code == "R132"


def test_a_drawing_may_lie_in_a_folder_below(tmp_path):
    (tmp_path / "art").mkdir()
    text = changed("bulrush.svg", "art/bulrush.svg")
    assert notes_of(tmp_path, text, drawings=("art/bulrush.svg",)) == ()
