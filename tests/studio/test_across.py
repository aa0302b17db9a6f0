"""What comparing the patterns of a studio finds, with both places."""

import pytest
from houses import changed, house

from publish import catalogue, pipeline
from publish.studio.across import compared, unused_wording
from publish.studio.find import find
from publish.studio.glance import glance


def found(folders):
    """Return (pattern, code, line, line of the other place) of every note."""
    glances = [glance(f, None, None, None) for f in folders]
    assert all(g.readable for g in glances)
    return [
        (path.name, note.code, note.place.line, note)
        for path, notes in compared(glances).items()
        for note in notes
    ]


def test_patterns_of_one_studio_may_share_cloth_and_nothing_is_said(tmp_path):
    assert found(house(tmp_path)) == []


BARCODE = 'stock_number: HF-{0}, barcode: "2000000001012"'


@pytest.mark.parametrize(
    ("code", "one", "two", "line"),
    [
        ("R181", ("HF-1", "HF-7"), ("HF-2", "HF-7"), 2),
        ("R181", ("HF-1", "HF 7"), ("HF-2", "hf-7"), 2),
        (
            "R182",
            ("stock_number: HF-1", BARCODE.format(1)),
            ("stock_number: HF-2", BARCODE.format(2)),
            2,
        ),
        ("R183", ("Bulrush", "Sedge"), ("Reedmace", "sedge"), 1),
        ("R184", ("#f4efe6", "#ffffff"), ("#f4efe6", "#f4efe5"), 4),
        ("R185", ("Pale linen", "pale Linen"), ("Pale linen", "Pale-linen"), 4),
    ],
)
def test_what_must_differ_or_be_alike(tmp_path, code, one, two, line):
    bulrush, reedmace, _ = folders = house(tmp_path)
    changed(bulrush, *one)
    changed(reedmace, *two)
    notes = [(name, c, n, note) for name, c, n, note in found(folders) if name == "reedmace"]
    ((_, got, at, note),) = notes
    assert (got, at) == (code, line)
    assert note.place.file.endswith("reedmace/pattern.yaml")
    both = f"{note.expected} {note.received}"
    assert f"bulrush/pattern.yaml:{line}:" in both.replace("\\", "/")
    assert note.help


def test_a_colourways_cloth_counts_too(tmp_path):
    bulrush, reedmace, _ = folders = house(tmp_path)
    swap = 'colourways: {{d: {{title: D, swaps: [{{fabric: moss, name: Dusk, colour: "{0}"}}]}}}}\n'
    changed(bulrush, "motifs:\n", swap.format("#222222") + "motifs:\n")
    changed(reedmace, "motifs:\n", swap.format("#222223") + "motifs:\n")
    assert [(name, code, line) for name, code, line, _ in found(folders)] == [
        ("reedmace", "R184", 6)
    ]


def test_studios_are_compared_by_barcode_alone(tmp_path):
    one, two = tmp_path / "one", tmp_path / "two"
    one.mkdir()
    two.mkdir()
    here = house(one, ("sedge",))
    there = house(two, ("sedge",), "publication: {studio: Another Fen}\n")
    assert [(n, c) for n, c, _, _ in found([*here, *there])] == [("sedge", "R186")]
    for folder in (*here, *there):
        changed(folder, "stock_number: HF-1", BARCODE.format(1))
    assert {c for _, c, _, _ in found([*here, *there])} == {"R182", "R186"}


def test_a_folder_of_results_is_one_patterns(tmp_path):
    folders = house(tmp_path, ("sedge", "line-sheet"))
    assert [(n, c) for n, c, _, _ in found(folders)] == [("line-sheet", "R186")]


def test_wording_that_no_pattern_has_the_step_of(tmp_path):
    steps = "steps: [{remove: no-such-step}, {step: folding-half, tip: Take your time.}]\n"
    folders = house(tmp_path, ("sedge", "reedmace"), steps)
    reports = [pipeline.prepare(f).report for f in folders]
    home = pipeline.prepare(folders[0]).pattern.places["studio"].file
    unused = [n for n in reports[0] if n.code == "W511"]
    (note,) = [
        n for n in unused_wording([(home, r) for r in reports]) if n.received == "no-such-step"
    ]
    assert (note.code, note.place.line, note.place.file) == ("R187", 1, home)
    assert not unused_wording([(home, reports[0]), (home, ())])  # the other one has the step
    assert unused


def test_every_code_is_in_the_catalogue():
    shown = {*(f"R18{n}" for n in range(1, 8)), "X907"}
    assert set(catalogue.BETWEEN) == shown
    assert not shown & set(catalogue.titles())


def test_patterns_are_found_once_in_the_order_asked_for(tmp_path):
    folders = house(tmp_path)
    (tmp_path / ".hidden").mkdir()
    (tmp_path / ".hidden" / "pattern.yaml").touch()
    assert find([tmp_path]) == tuple(folders)
    sedge = tmp_path / "sedge"
    assert find([sedge, tmp_path, sedge / "pattern.yaml"])[:2] == (sedge, tmp_path / "bulrush")
    assert find([tmp_path / "gone"]) == (tmp_path / "gone",)
    empty = tmp_path / "empty"
    empty.mkdir()
    assert find([empty]) == (empty,)
