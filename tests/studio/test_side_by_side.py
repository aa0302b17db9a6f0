"""Several patterns at once: none stops another, and the bytes are the same."""

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from houses import changed, house

from publish import cli, pipeline
from publish.notes import Report
from publish.studio import side_by_side
from publish.studio.outcome import Outcome, State
from publish.studio.side_by_side import Asked, build, check
from publish.workers import Workers

TRIES = 1000
"""How often it is looked whether a process is gone."""
ONLY = "full-size"
"""The edition that is made soonest."""


def states(outcomes):
    return [(o.path.name, o.state) for o in outcomes]


def files(folder):
    return {
        p.relative_to(folder).as_posix(): p.read_bytes()
        for p in sorted(folder.rglob("*"))
        if p.is_file()
    }


def test_one_patterns_errors_stop_no_other(tmp_path, capsys):
    folders = house(tmp_path)
    changed(folders[0], "folds: 8", "folds: 9")
    changed(folders[2], "HF-3", "HF-2")
    out = tmp_path / "out"
    run = ["build", str(tmp_path), "--out", str(out), "--only", ONLY, "--jobs", "2"]
    assert cli.main(run) == cli.ERRORS
    shown = capsys.readouterr()
    assert [p.name for p in sorted(out.iterdir())] == ["reedmace"]
    lines = shown.out.splitlines()
    assert [line.split()[:2] for line in lines[1:4]] == [
        ["bulrush", "not"],
        ["reedmace", "built"],
        ["sedge", "not"],
    ]
    assert "error R124" in shown.err and "error R181" in shown.err
    assert (
        sum(
            " 1/3 " in f" {line}" or "2/3" in line or "3/3" in line
            for line in shown.err.splitlines()
        )
        == 3
    )


def test_a_build_of_what_changed_makes_only_that(tmp_path):
    folders = house(tmp_path, ("reedmace", "sedge"))
    asked = Asked(tmp_path / "out", only=ONLY, changed=True)
    assert {o.state for o in build(folders, asked, 1)} == {State.BUILT}
    before = files(asked.out)
    again = build(folders, asked, 1)
    assert states(again) == [("reedmace", State.UNCHANGED), ("sedge", State.UNCHANGED)]
    assert files(asked.out) == before
    changed(folders[1], "7 in", "6 in")
    assert states(build(folders, asked, 1)) == [
        ("reedmace", State.UNCHANGED),
        ("sedge", State.BUILT),
    ]


def test_warnings_of_an_unchanged_set_are_told_again(tmp_path):
    folders = house(tmp_path, ("sedge",), "publication: {studio: Hollow Fen Studio}\n")
    asked = Asked(tmp_path / "out", only=ONLY, changed=True)
    (first,), (again,) = build(folders, asked, 1), build(folders, asked, 1)
    assert again.state is State.UNCHANGED
    assert first.report.warnings
    assert [(n.code, n.place) for n in again.report] == [(n.code, n.place) for n in first.report]


def test_a_strict_build_of_an_unchanged_set_looks_again(tmp_path):
    folders = house(tmp_path, ("sedge",), "publication: {studio: Hollow Fen Studio}\n")
    build(folders, Asked(tmp_path / "out", only=ONLY), 1)
    (end,) = build(folders, Asked(tmp_path / "out", only=ONLY, strict=True, changed=True), 1)
    assert end.state is State.ERRORS


@pytest.mark.thorough
def test_the_bytes_do_not_depend_on_how_many_are_made_at_once(tmp_path):
    folders = house(tmp_path)
    sets = []
    for jobs in (1, 2):
        out = tmp_path / str(jobs)
        assert {o.state for o in build(folders, Asked(out, only=ONLY), jobs)} == {State.BUILT}
        sets.append(files(out))
    assert sets[0] == sets[1]


def test_a_mistake_of_ours_stops_no_other(tmp_path, monkeypatch):
    folders = house(tmp_path)
    right = pipeline.build

    def wrong(path, *values):
        if path == folders[1]:
            raise ZeroDivisionError("halved by nothing")
        return right(path, *values)

    monkeypatch.setattr(pipeline, "build", wrong)
    ends = build(folders, Asked(tmp_path / "out", only=ONLY), 1)
    assert [o.state for o in ends] == [State.BUILT, State.FAILED, State.BUILT]
    assert "halved by nothing" in ends[1].failure and ends[1].bad()


def dying(path, tally):
    """Stand in for a build: note that it was begun, and be ended from outside if it is bad."""
    with (Path(tally) / path.name).open("a") as begun:
        begun.write("begun ")
    if path.name.startswith("bad"):
        os.kill(os.getpid(), signal.SIGKILL)
    return Outcome(path, State.BUILT, Report())


def test_a_process_that_is_killed_takes_nobody_with_it(tmp_path):
    paths = [Path(name) for name in ("a", "bad", "b", "c", "d", "bad-too", "e")]
    with Workers(2) as pool:
        ends = {o.path: o for o in side_by_side._each(pool, dying, paths, (str(tmp_path),))}
    assert set(ends) == set(paths)
    for path, end in ends.items():
        assert end.state is (State.FAILED if path.name.startswith("bad") else State.BUILT)
        assert (path.name.startswith("bad")) == ("ended from outside" in end.failure)
    times = {p.name: p.read_text().count("begun") for p in tmp_path.iterdir()}
    assert max(times.values()) <= 2  # once beside the others, once alone


@pytest.mark.skipif(os.name != "posix", reason="needs process groups")
@pytest.mark.parametrize(("how", "code"), [(signal.SIGINT, 130), (signal.SIGTERM, 143)])
def test_ctrl_c_or_a_request_to_end_stops_all(tmp_path, how, code):
    house(tmp_path)
    out = tmp_path / "out"
    command = [sys.executable, "-m", "publish", "build", str(tmp_path), "--out", str(out)]
    run = subprocess.Popen(
        [*command, "--only", ONLY, "--jobs", "2"],
        start_new_session=True,
        text=True,
        stderr=subprocess.PIPE,
        stdout=subprocess.DEVNULL,
    )
    for line in run.stderr:  # the first one is done: the others are under way
        if line.startswith("1/"):
            break
    (os.killpg if how == signal.SIGINT else os.kill)(run.pid, how)  # a terminal tells them all
    _, said = run.communicate()
    assert run.returncode == code, said
    assert said.rstrip().endswith("stopped") or how == signal.SIGTERM
    assert "Traceback" not in said
    with pytest.raises(ProcessLookupError):
        for _ in range(TRIES):  # the others of the group go with the first
            os.killpg(run.pid, 0)
            time.sleep(0.02)


def test_a_check_of_several_is_one_report_each(tmp_path, capsys):
    folders = house(tmp_path)
    changed(folders[1], "HF-2", "HF-1")
    pages = tmp_path / "pages"
    run = ["check", *map(str, folders), "--json", "--report", str(pages), "--jobs", "2"]
    assert cli.main(run) == cli.ERRORS
    told = json.loads(capsys.readouterr().out)["patterns"]
    assert list(told) == [str(f) for f in folders]
    codes = [
        [n["code"] for n in told[str(f)]["findings"] if n["severity"] == "error"] for f in folders
    ]
    assert codes == [[], ["R181"], []]
    assert sorted(p.parent.name for p in pages.rglob("report.html")) == sorted(
        f.name for f in folders
    )


def test_what_a_pattern_accepts_is_held_back_between_patterns_too(tmp_path):
    folders = house(tmp_path, ("reedmace", "sedge"))
    changed(folders[1], "Sedge", "Reedmace")
    assert [n.code for n in check(folders, Asked(), 1)[1].report.warnings] == ["R183"]
    path = folders[1] / "pattern.yaml"
    accept = "accept: [{code: R183, reason: The second edition has its own folder.}]\n"
    path.write_text(path.read_text(encoding="utf-8") + accept, encoding="utf-8")
    assert [n.code for n in check(folders, Asked(), 1)[1].report.warnings] == []
