"""What a build depends on: which change makes which finished set out of date."""

import shutil
from pathlib import Path

import pytest
from houses import changed, house

from publish import deliver, inputs, read
from publish.notes import Note, Place, Report, Severity

STUDIO = """\
publication:
  studio: Hollow Fen Studio
  contact: patterns@hollowfen.example
sewing:
  mis_cut: 2 in
"""


def loaded(folder):
    return read.load(folder)[0]


def differing(folder, before, papers=None, only=None):
    return inputs.differing(loaded(folder), papers, only, before)


@pytest.fixture
def two(tmp_path):
    """Return two patterns and what each was made from; the second has a contact of its own."""
    folders = house(tmp_path, ("reedmace", "sedge"), STUDIO)
    changed(folders[1], "HF-2}", "HF-2, contact: sedge@hollowfen.example}")
    return [(f, inputs.inputs(loaded(f), None, None)) for f in folders]


def test_nothing_changed_nothing_differs(two):
    assert [differing(*one) for one in two] == [(), ()]


def test_a_word_of_the_studio_concerns_only_who_shows_it(two, tmp_path):
    changed(tmp_path, "patterns@", "mistakes@", "studio.yaml")
    assert [differing(*one) for one in two] == [("values",), ()]


def test_a_value_of_the_studio_concerns_all_who_have_it(two, tmp_path):
    changed(tmp_path, "2 in", "3 in", "studio.yaml")
    assert [differing(*one) for one in two] == [("values",), ("values",)]


def test_a_comment_at_the_end_concerns_nobody(two, tmp_path):
    changed(tmp_path, "  mis_cut: 2 in\n", "  mis_cut: 2 in\n# noted\n", "studio.yaml")
    assert [differing(*one) for one in two] == [(), ()]


def test_a_line_further_down_is_shown_in_the_report(two, tmp_path):
    changed(tmp_path, "sewing:", "# noted\nsewing:", "studio.yaml")
    assert [differing(*one) for one in two] == [("values",), ("values",)]


@pytest.mark.parametrize("name", ["pattern.yaml", "m.svg"])
def test_a_file_of_a_pattern_concerns_it_alone(two, name):
    path = two[0][0] / name
    path.write_text(path.read_text(encoding="utf-8") + "\n", encoding="utf-8")
    assert [differing(*one) for one in two] == [(name,), ()]


def test_a_picture_that_the_studio_names_counts_by_its_content(two, tmp_path):
    shutil.copy(two[0][0] / "m.svg", tmp_path / "logo.svg")
    path = tmp_path / "studio.yaml"
    path.write_text(STUDIO + "style: {logo: logo.svg}\n", encoding="utf-8")
    before = inputs.inputs(loaded(two[0][0]), None, None)
    (tmp_path / "logo.svg").write_text("<svg/>", encoding="utf-8")
    assert differing(two[0][0], before) == ("../logo.svg",)


@pytest.mark.parametrize("whose", ["reedmace", "."])
def test_a_layout_of_the_designers_counts(two, tmp_path, whose):
    home = tmp_path / whose / "layouts" / "fen"
    home.mkdir(parents=True)
    (home / "style.css").write_text("h1 {}", encoding="utf-8")
    (found,) = differing(*two[0])
    assert found.endswith("layouts/fen/style.css")


def test_what_is_asked_for_counts(two):
    folder, before = two[0]
    assert differing(folder, before, ("a4",)) == ("asked",)
    assert differing(folder, before, None, "press") == ("asked",)


def test_another_program_makes_everything_anew(two, monkeypatch):
    monkeypatch.setattr(inputs, "program", lambda: "another")
    assert differing(*two[0]) == ("program",)


def test_where_the_folders_lie_does_not_count(tmp_path):
    digests = []
    for name in ("here", "far/away"):
        home = tmp_path / name
        home.mkdir(parents=True)
        digests.append(inputs.inputs(loaded(house(home, ("sedge",), STUDIO)[0]), None, None))
    assert digests[0] == digests[1]


def test_lines_that_the_report_shows_count_as_they_stand(two, tmp_path):
    folder = two[1][0]
    place = Place(loaded(folder).places["studio"].file, 5, 12, "sewing.mis_cut")
    report = Report((Note("C499", Severity.WARNING, place, "seen"),))
    before = inputs.inputs(loaded(folder), None, None, report)
    assert differing(folder, before) == ()
    changed(tmp_path, "patterns@", "mistakes@", "studio.yaml")
    assert differing(folder, before) == (inputs.AS_SHOWN,)


def test_the_manifest_says_what_a_set_was_made_from(tmp_path):
    out = tmp_path / "out"
    assert deliver.recorded(out) == {}
    deliver.deliver(out, {"a.txt": b"a"}, {"values": "1", "m.svg": "2"})
    assert deliver.recorded(out) == {"values": "1", "m.svg": "2"}
    (out / "a.txt").write_bytes(b"cut off"[:0])
    assert deliver.recorded(out) == {}  # a set that is not whole is made again
    deliver.deliver(Path(out), {"a.txt": b"a"})
    assert deliver.recorded(out) == {}
