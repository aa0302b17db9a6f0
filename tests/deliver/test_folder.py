"""The folder of results under every fault that can be staged: killed, full, foreign, busy.

Sources: POSIX.1-2017 `rename()` (one name for a folder is replaced by another in a single
act) is what the design rests on; that no state in between loses the set is tried here by
killing a real process at each call that changes the disk.
"""

import hashlib
import json
import os
import subprocess
import sys
from pathlib import Path
from tempfile import gettempdir

import pytest

from publish.deliver import CODES, deliver, recover
from publish.deliver import folder as under_test
from publish.notes import PublishError

OLD = {"booklet.pdf": b"old booklet", "numbers.json": b"{}", "cutting/one.svg": b"<svg/>"}
NEW = {"booklet.pdf": b"new booklet, longer", "numbers.json": b"[]", "sheets/a1.pdf": b"%PDF"}


def held(out: Path) -> dict[str, bytes]:
    """Return what a folder holds, without its manifest."""
    files = [p for p in out.rglob("*") if p.is_file() and p.name != "manifest.json"]
    return {p.relative_to(out).as_posix(): p.read_bytes() for p in files}


def refused(out: Path, files: dict[str, bytes], code: str) -> str:
    with pytest.raises(PublishError) as stopped:
        deliver(out, files)
    (note,) = stopped.value.report.notes
    assert note.code == code and code in CODES
    assert note.help
    return note.received


def test_the_set_is_there_with_size_and_sum_of_each_file(tmp_path: Path) -> None:
    out = tmp_path / "build" / "samphire"
    deliver(out, NEW)
    assert held(out) == NEW
    manifest = json.loads((out / "manifest.json").read_text())
    assert list(manifest["files"]) == sorted(NEW)
    for name, data in NEW.items():
        assert manifest["files"][name] == {
            "sha256": hashlib.sha256(data).hexdigest(),
            "size": len(data),
        }


def test_a_new_set_leaves_nothing_of_the_old_one(tmp_path: Path) -> None:
    out = tmp_path / "samphire"
    deliver(out, OLD)
    deliver(out, NEW)
    assert held(out) == NEW
    assert [p.name for p in tmp_path.iterdir()] == ["samphire"]


def test_the_same_files_give_the_same_manifest(tmp_path: Path) -> None:
    deliver(tmp_path / "a", OLD)
    deliver(tmp_path / "b", dict(reversed(OLD.items())))
    first, second = ((tmp_path / n / "manifest.json").read_bytes() for n in "ab")
    assert first == second


# A process forks a child for each call that changes the disk; the child dies at that call.
# It prints what is left, before and after `recover`, once for each death.
KILLED = """
import json, os, signal, sys
from pathlib import Path
from publish.deliver import deliver, recover

out, old, new = Path(sys.argv[1]), eval(sys.argv[2]), eval(sys.argv[3])

def held():
    files = [p for p in out.rglob("*") if p.is_file() and p.name != "manifest.json"]
    return {p.relative_to(out).as_posix(): p.read_bytes() for p in files}

def die_at(left):
    def dying(real):
        def call(*a, **k):
            nonlocal left
            left -= 1
            if left < 0:
                os.kill(os.getpid(), signal.SIGKILL)
            return real(*a, **k)
        return call
    for name in ("rename", "fsync", "unlink", "rmdir", "mkdir"):
        setattr(os, name, dying(getattr(os, name)))
    deliver(out, new)
    os._exit(0)

for call in range(80):
    if old:
        deliver(out, old)
    child = os.fork()
    if child == 0:
        die_at(call)
    killed = os.WIFSIGNALED(os.waitpid(child, 0)[1])
    missing = not out.exists()
    recover(out)
    left = "old" if held() == old else "new" if held() == new else "broken"
    deliver(out, old or new)
    beside = sorted(p.name for p in out.parent.iterdir())
    print(json.dumps([killed, missing, left, beside]))
    if not killed:
        break
    if not old:
        import shutil
        shutil.rmtree(out)
"""
posix = pytest.mark.skipif(not hasattr(os, "fork"), reason="needs POSIX processes")


def deaths(out: Path, old: dict[str, bytes]) -> list[tuple[bool, bool, str, list[str]]]:
    """Return, for each call in turn: killed or not, target missing, what is left, neighbours."""
    program = [sys.executable, "-c", KILLED, str(out), repr(old), repr(NEW)]
    done = subprocess.run(
        program, check=True, cwd=Path(__file__).parents[2], capture_output=True, text=True
    )
    return [tuple(json.loads(line)) for line in done.stdout.splitlines()]


@posix
def test_killed_at_any_call_a_complete_set_remains(tmp_path: Path) -> None:
    seen = deaths(tmp_path / "samphire", OLD)
    assert len(seen) > 15 and [killed for killed, *_ in seen] == [True] * (len(seen) - 1) + [False]
    for call, (_, _, left, beside) in enumerate(seen):
        assert left in ("old", "new"), f"killed at call {call}"
        assert beside == ["samphire"], "nothing stays behind after the next build"
    assert any(missing for _, missing, *_ in seen), "the moment between the two renames"
    assert {left for _, _, left, _ in seen} == {"old", "new"}


@posix
def test_killed_while_there_is_no_set_yet_leaves_none_or_all(tmp_path: Path) -> None:
    seen = deaths(tmp_path / "samphire", {})
    for _, missing, left, beside in seen:
        assert (missing and left == "old") or left == "new"
        assert beside == ["samphire"]


def test_a_half_removed_old_set_is_never_put_back(tmp_path: Path) -> None:
    out, old = tmp_path / "samphire", tmp_path / ".samphire.old"
    deliver(old, OLD)
    (old / "booklet.pdf").unlink()
    recover(out)
    assert not out.exists() and not old.exists()


def test_a_full_disk_leaves_the_last_set(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    out = tmp_path / "samphire"
    deliver(out, OLD)

    def full(handle: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(under_test.os, "fsync", full)
    assert "No space left" in refused(out, NEW, "X903")
    assert held(out) == OLD
    assert [p.name for p in tmp_path.iterdir()] == ["samphire"]


def test_a_refused_rename_puts_the_old_set_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out = tmp_path / "samphire"
    deliver(out, OLD)
    real = os.rename

    def refuse(source: Path, target: Path) -> None:
        if str(source).endswith(".new"):
            raise OSError(16, "Device or resource busy")
        real(source, target)

    monkeypatch.setattr(under_test.os, "rename", refuse)
    refused(out, NEW, "X903")
    assert held(out) == OLD


@pytest.mark.parametrize("name", ["notes.txt", "photos/cover.jpg"])
def test_a_designers_own_file_is_never_swept_away(tmp_path: Path, name: str) -> None:
    out = tmp_path / "samphire"
    deliver(out, OLD)
    (out / name).parent.mkdir(exist_ok=True)
    (out / name).write_text("mine")
    assert refused(out, NEW, "X902") == name
    assert held(out) == {**OLD, name: b"mine"}


def test_a_folder_without_our_manifest_is_refused(tmp_path: Path) -> None:
    out = tmp_path / "holiday"
    out.mkdir()
    for number in range(5):
        (out / f"{number}.jpg").write_bytes(b"")
    (out / "manifest.json").write_text('{"made_by": "another", "files": {"0.jpg": {}}}')
    assert refused(out, NEW, "X902").endswith("and 3 more")
    assert len(list(out.iterdir())) == 6


def test_a_file_where_the_folder_should_be_is_refused(tmp_path: Path) -> None:
    (tmp_path / "samphire").write_text("a file")
    refused(tmp_path / "samphire", NEW, "X902")
    assert (tmp_path / "samphire").read_text() == "a file"


def test_desktop_litter_and_empty_folders_do_not_stop_a_build(tmp_path: Path) -> None:
    (tmp_path / "samphire").mkdir()
    deliver(tmp_path / "samphire", OLD)
    (tmp_path / "samphire" / ".DS_Store").write_bytes(b"\0")
    deliver(tmp_path / "samphire", NEW)
    assert held(tmp_path / "samphire") == NEW


@pytest.mark.parametrize(
    "name",
    [
        "../booklet.pdf",
        f"{gettempdir()}/booklet.pdf",
        "",
        "manifest.json",
        "Booklet.PDF",
        "a\\b",
        "c:x",
    ],
)
def test_names_that_would_leave_the_folder_or_clash_are_refused(tmp_path: Path, name: str) -> None:
    assert refused(tmp_path / "samphire", {"booklet.pdf": b"", name: b""}, "X901") == name
    assert list(tmp_path.iterdir()) == []


def test_a_link_to_a_folder_is_followed_and_kept(tmp_path: Path) -> None:
    (tmp_path / "drive").mkdir()
    (tmp_path / "samphire").symlink_to(tmp_path / "drive", target_is_directory=True)
    deliver(tmp_path / "samphire", NEW)
    assert (tmp_path / "samphire").is_symlink()
    assert held(tmp_path / "drive") == NEW


def test_two_builds_at_once_take_turns(tmp_path: Path) -> None:
    out = tmp_path / "samphire"
    program = "import sys; from pathlib import Path; from publish.deliver import deliver\n"
    program += "for n in range(25): deliver(Path(sys.argv[1]), eval(sys.argv[2]))"
    runs = [
        subprocess.Popen(
            [sys.executable, "-c", program, str(out), repr(files)], cwd=Path(__file__).parents[2]
        )
        for files in (OLD, NEW)
    ]
    assert [run.wait(timeout=60) for run in runs] == [0, 0]
    assert held(out) in (OLD, NEW)
