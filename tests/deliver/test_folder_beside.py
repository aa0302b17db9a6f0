"""The folders beside the results: ours are cleared, somebody's own are left alone.

Source: POSIX.1-2017, `fsync()` and `rename()`.
"""

import os
from pathlib import Path

import pytest
from test_folder import NEW, OLD, held, refused

from publish.deliver import deliver, recover
from publish.deliver import folder as under_test


@pytest.mark.parametrize("state", ["old", "new"])
@pytest.mark.parametrize("manifest", [None, "{}", '{"made_by": "another", "files": {"a": {}}}'])
def test_somebodys_own_folder_of_such_a_name_is_left_alone(
    tmp_path: Path, state: str, manifest: str | None
) -> None:
    out, own = tmp_path / "samphire", tmp_path / f".samphire.{state}"
    deliver(out, OLD)
    own.mkdir()
    (own / "letters.txt").write_text("mine")
    if manifest is not None:
        (own / "manifest.json").write_text(manifest)
    before = sorted(p.name for p in own.iterdir())
    recover(out)
    assert "letters.txt" in refused(out, NEW, "X902")
    assert sorted(p.name for p in own.iterdir()) == before and held(out) == OLD


def test_an_own_file_among_ours_keeps_the_folder_beside(tmp_path: Path) -> None:
    out, old = tmp_path / "samphire", tmp_path / ".samphire.old"
    deliver(out, NEW)
    deliver(old, OLD)
    (old / "letters.txt").write_text("mine")
    recover(out)
    assert refused(out, NEW, "X902") == "letters.txt"
    assert (old / "letters.txt").read_text() == "mine"


def test_a_manifest_cut_off_while_written_is_known_as_ours(tmp_path: Path) -> None:
    out, fresh = tmp_path / "samphire", tmp_path / ".samphire.new"
    deliver(tmp_path / "other", OLD)
    whole = (tmp_path / "other" / "manifest.json").read_bytes()
    for length in (0, 1, 9, 25, len(whole) - 5):
        fresh.mkdir()
        (fresh / "manifest.json").write_bytes(whole[:length])
        deliver(out, NEW)
        assert held(out) == NEW and not fresh.exists()


def test_each_step_is_on_the_disk_before_the_next(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """POSIX.1-2017 promises nothing of the order in which what is not flushed reaches the
    disk: a rename is there for good once the folder that holds both names is flushed."""
    out, steps = tmp_path / "deep" / "samphire", []
    deliver(out, OLD)
    place = {os.stat(p).st_ino: n for p, n in ((out.parent, "parent"), (tmp_path, "above"))}
    rename, fsync, unlink = os.rename, os.fsync, Path.unlink

    def note_rename(source: Path, target: Path) -> None:
        steps.append(f"{Path(source).name} -> {Path(target).name}")
        rename(source, target)

    def note_fsync(handle: int) -> None:
        steps.append(f"flush {place.get(os.fstat(handle).st_ino, 'within')}")
        fsync(handle)

    def note_unlink(path: Path, missing_ok: bool = False) -> None:
        steps.append("remove")
        unlink(path, missing_ok)

    monkeypatch.setattr(under_test.os, "rename", note_rename)
    monkeypatch.setattr(under_test.os, "fsync", note_fsync)
    monkeypatch.setattr(Path, "unlink", note_unlink)
    deliver(out, NEW)
    first = steps.index("samphire -> .samphire.old")
    assert set(steps[:first]) == {"flush within"} and first == len(NEW) + 1 + 2
    assert steps[first : first + 4] == [
        "samphire -> .samphire.old",
        "flush parent",
        ".samphire.new -> samphire",
        "flush parent",
    ]
    assert set(steps[first + 4 :]) == {"remove"}
    steps.clear()
    deliver(tmp_path / "deep" / "a" / "b" / "new", OLD)
    assert steps[:2] == ["flush within", "flush parent"]
