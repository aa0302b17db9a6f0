"""Accepted warnings: held back with their reason, and never longer than they are needed."""

import json
import sys

import pytest
from helpers import changed, pattern

from publish import catalogue, cli, pipeline, proof
from publish.notes import Acceptance, Place, PublishError, Report, Spot, error, warning
from publish.read import SMALLEST
from publish.report import as_json, summary

SMALL = changed("block_size: 16 in, motif_size: 14 in", "block_size: 8 in, motif_size: 6 in")
"""The starter's motif at 6 in: necks that warn."""
PLUM = changed("moss: {", 'plum: {name: Plum, colour: "#6b4a5f"}\n  moss: {')
"""A fabric that nothing uses: R144, a warning, and nothing else."""


def accepting(*entries, text=PLUM):
    lines = "".join(f"  - {{{entry}}}\n" for entry in entries)
    return f"{text}accept:\n{lines}"


def checked(folder, text):
    return pipeline.examine(pattern(folder, text)).report


def codes(report):
    return [n.code for n in report]


def test_the_warning_is_there_without_it(tmp_path):
    assert codes(checked(tmp_path, PLUM)) == ["R144"]


@pytest.mark.parametrize("at", ["", ", at: fabrics", ", at: fabrics.plum"])
def test_an_accepted_warning_is_held_back_with_its_reason(tmp_path, at):
    report = checked(tmp_path, accepting(f"code: R144{at}, reason: For the next edition."))
    assert codes(report) == []
    ((note, acceptance),) = report.accepted
    assert (note.code, acceptance.reason) == ("R144", "For the next edition.")
    assert summary(report) == "no findings; 1 warning accepted"
    plain = json.loads(as_json(report))
    assert plain["findings"] == []
    assert plain["accepted"][0]["reason"] == "For the next edition."


def test_an_acceptance_elsewhere_holds_nothing_back(tmp_path):
    report = checked(tmp_path, accepting("code: R144, at: fabrics.moss, reason: Kept."))
    assert sorted(codes(report)) == ["R144", "R171"]
    idle = next(n for n in report if n.code == "R171")
    assert idle.place.path == "accept.0.code"
    assert "at: fabrics.plum" in idle.help


def test_an_acceptance_that_nothing_answers_to_is_a_warning(tmp_path):
    report = checked(tmp_path, accepting("code: R145, reason: Kept.", text=SMALLEST))
    (note,) = report.warnings
    assert (note.code, note.received) == ("R171", "R145")
    lines = (tmp_path / "pattern.yaml").read_text().splitlines()
    assert lines[note.place.line - 1][note.place.column - 1 :].startswith("R145")


def test_an_acceptance_of_no_code_names_the_nearest(tmp_path):
    report = checked(tmp_path, accepting("code: R194, reason: Kept.", text=SMALLEST))
    (note,) = report.warnings
    assert note.code == "R171" and "write `R" in note.help


def test_what_only_a_build_can_find_is_not_judged_by_a_check(tmp_path):
    assert "P876" in proof.ON_PAPER
    entry = "code: P876, reason: The printer is known."
    assert codes(checked(tmp_path, accepting(entry, text=SMALLEST))) == []


def test_an_error_cannot_be_accepted(tmp_path):
    text = SMALLEST + "steps:\n  - {remove: no-such-step}\n"
    assert codes(checked(tmp_path, text)) == ["W506"]
    report = checked(tmp_path, accepting("code: W506, reason: Kept.", text=text))
    assert sorted(n.code for n in report.errors) == ["R172", "W506"]
    refused = next(n for n in report.errors if n.code == "R172")
    assert refused.place.path == "accept.0.code" and "W506" in refused.received
    assert not report.accepted


def test_every_stage_has_codes_that_can_be_named(tmp_path):
    named = {code[0]: code for code in catalogue.titles()}
    text = accepting("code: S403, reason: Kept.", text=SMALLEST)
    (note,) = checked(tmp_path, text).warnings
    assert (note.code, note.received) == ("R171", "S403"), "read, and found to hold nothing back"
    for letter in sorted(named):
        entry = f"code: {letter}000, reason: Kept."
        assert "R125" not in codes(checked(tmp_path, accepting(entry, text=SMALLEST)))


def test_a_finding_of_sewing_that_is_no_error_is_held_back():
    place = Place("f", path="sizes.mini")
    accept = Acceptance("S403", "It becomes a label.", Place("f"), "sizes.mini")
    report = Report().accepting([accept]).plus([warning("S403", place, "2 of piece A left over")])
    assert codes(report) == [] and len(report.accepted) == 1
    stops = Report().accepting([accept]).plus([error("S403", place, "2 of piece A left over")])
    assert codes(stops) == ["S403"]


def test_what_judges_acceptances_cannot_be_accepted(tmp_path):
    report = checked(tmp_path, accepting("code: R171, reason: Kept.", text=SMALLEST))
    assert [n.code for n in report.errors] == ["R172"]


def test_a_place_covers_what_stands_below_it():
    accept = Acceptance("D332", "Kept.", Place("f"), "sizes.mini")
    inside = Place("f", path="sizes.mini.motif_size")
    assert accept.covers(warning("D332", inside, "narrow"))
    assert accept.covers(
        warning("D332", Place("f", path="motifs.m"), "narrow", spot=Spot("mini", "m", 0, 0))
    )
    assert not accept.covers(warning("D332", Place("f", path="sizes.minimal"), "narrow"))
    assert not accept.covers(warning("D334", inside, "sharp"))


def test_a_report_holds_back_whatever_comes_later():
    accept = Acceptance("D332", "Kept.", Place("f"))
    kept = warning("D332", Place("f"), "narrow")
    report = (
        Report().accepting([accept]).plus([kept]).plus([kept, error("D333", Place("f"), "slit")])
    )
    assert codes(report) == ["D333"] and report.accepted == ((kept, accept),)


def test_strict_counts_warnings_and_not_accepted_ones(tmp_path, capsys):
    path = str(pattern(tmp_path, PLUM))
    assert cli.main(["check", path]) == cli.CLEAN
    assert cli.main(["check", path, "--strict"]) == cli.ERRORS
    with pytest.raises(PublishError):
        pipeline.build(pattern(tmp_path, PLUM), tmp_path / "out", strict=True)
    assert not (tmp_path / "out").exists()
    path = str(pattern(tmp_path, accepting("code: R144, reason: For the next edition.")))
    capsys.readouterr()
    assert cli.main(["check", path, "--strict"]) == cli.CLEAN
    assert capsys.readouterr().out.splitlines()[-1] == "no findings; 1 warning accepted"


def test_an_accepted_finding_keeps_its_figure(tmp_path):
    text = accepting("code: D332, at: sizes.mini, reason: Kept.", text=SMALL)
    examined = pipeline.examine(pattern(tmp_path, text))
    held = [n for n, _ in examined.report.accepted]
    assert held and all(n.code == "D332" for n in held)
    assert sum(name.startswith("findings/mini-D332") for name in examined.files) == len(held)


def test_a_code_stands_in_one_table_and_is_looked_for_by_one_part():
    tables = [set(codes) for codes in (catalogue.codes(s) for s in catalogue.STAGES)]
    assert sum(map(len, tables)) == len(catalogue.titles())
    assert not catalogue.printed() & (catalogue.proofed() | catalogue.INSPECTED)
    for measure in proof.MEASUREMENTS:
        assert set(sys.modules[measure.__module__].CODES) <= proof.ON_PAPER
