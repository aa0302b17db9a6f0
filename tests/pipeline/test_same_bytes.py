"""The same pattern gives the same files, whatever machine it is built on.

Two builds in processes of their own, with another order of sets, another time zone, another
number of processes, from and to folders of other names.
"""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from helpers import pattern
from kills import held
from small import CARRIES, MOTIF, text

ROOT = Path(__file__).resolve().parents[2]
SMALL = text("mini: {block: carries, block_size: 9 in, motif_size: 7 in}", CARRIES, MOTIF)


def built(path, out, seed, zone, jobs):
    """Return every file of a build."""
    command = [sys.executable, "-m", "publish", "build", path, "--out", out, "--jobs", jobs]
    run = subprocess.run(
        [str(word) for word in command],
        cwd=ROOT,
        env={**os.environ, "PYTHONHASHSEED": seed, "TZ": zone},
        capture_output=True,
    )
    assert run.returncode == 0, run.stderr.decode()
    return held(out)


def differing(one, two):
    """Return the names of files that are not the same in both."""
    return sorted(name for name in one.keys() | two.keys() if one.get(name) != two.get(name))


def twice(tmp_path, folder):
    """Build one folder's pattern as two machines would, and return what differs."""
    found = []
    for seed, zone, jobs, name in (
        ("1", "UTC", 1, "a"),
        ("4711", "Asia/Tokyo", 2, "elsewhere, farther/down"),
    ):
        home = tmp_path / name / "samphire"
        shutil.copytree(folder, home)
        found.append(built(home / "pattern.yaml", tmp_path / name / "out", seed, zone, jobs))
    assert any(name.endswith(".dxf") for name in found[0]) and len(found[0]) > 10
    return differing(*found)


@pytest.mark.thorough
def test_two_builds_of_a_small_pattern_are_the_same(tmp_path):
    source = tmp_path / "source"
    source.mkdir()
    pattern(source, SMALL)
    assert twice(tmp_path, source) == []


@pytest.mark.thorough
@pytest.mark.parametrize("name", ["samphire", "millrace"])
def test_two_builds_of_a_demo_are_the_same(tmp_path, name):
    assert twice(tmp_path, ROOT / "projects" / name) == []


def test_a_file_that_differs_is_named():
    assert differing({"a": b"1", "b": b"2"}, {"a": b"1", "b": b"3", "c": b""}) == ["b", "c"]
