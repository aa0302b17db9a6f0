"""Results kept from one run to the next: taken only where nothing that made them has changed.

Folders: XDG Base Directory Specification, version 0.8, under "Environment variables".
"""

import os
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from publish import kept
from publish.kept import NOWHERE, Store, digest, users

PART = b"a square of 12 in"


class Maker:
    """Counts how often it was asked."""

    def __init__(self, result: bytes = b"picture") -> None:
        self.times, self.result = 0, result

    def __call__(self) -> bytes:
        self.times += 1
        return self.result


def files(folder: Path) -> list[Path]:
    return sorted(p for p in folder.iterdir() if p.is_file())


def test_a_result_is_made_once(tmp_path: Path) -> None:
    maker = Maker()
    for _ in range(3):
        assert Store(tmp_path / "new").made("picture", [PART], maker) == b"picture"
    assert maker.times == 1


def test_without_a_folder_nothing_is_kept() -> None:
    maker = Maker()
    assert [NOWHERE.made("picture", [PART], maker) for _ in range(2)] == [b"picture"] * 2
    assert maker.times == 2


def test_what_it_is_made_from_is_told_apart(tmp_path: Path) -> None:
    store, maker = Store(tmp_path), Maker()
    for kind, parts in (
        ("picture", [b"ab", b"c"]),
        ("picture", [b"a", b"bc"]),
        ("picture", [b"abc"]),
        ("plan", [b"abc"]),
    ):
        store.made(kind, parts, maker)
    assert maker.times == 4


def test_fresh_makes_anew_and_keeps_that(tmp_path: Path) -> None:
    Store(tmp_path).made("picture", [PART], lambda: b"old")
    assert Store(tmp_path, fresh=True).made("picture", [PART], lambda: b"new") == b"new"
    assert Store(tmp_path).made("picture", [PART], Maker()) == b"new"


def test_another_version_finds_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each of source, libraries, Python and machine is another version."""
    store, maker = Store(tmp_path), Maker()
    store.made("picture", [PART], maker)
    changes: list[tuple[object, str, object]] = [
        (kept.metadata, "version", lambda name: "99"),
        (kept.platform, "machine", lambda: "another"),
        (kept.sys, "version", "4.0"),
        (kept, "__file__", str(Path(__file__).parent / "words" / "kept.py")),
    ]
    for times, (owner, name, value) in enumerate(changes, start=2):
        with monkeypatch.context() as patch:
            patch.setattr(owner, name, value)
            kept.stamp.cache_clear()
            store.made("picture", [PART], maker)
        assert maker.times == times, name
    kept.stamp.cache_clear()
    store.made("picture", [PART], maker)
    assert maker.times == len(changes) + 1


def test_where_versions_are_unknown_nothing_is_trusted(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def unknown(name: str) -> str:
        raise kept.metadata.PackageNotFoundError(name)

    maker = Maker()
    with monkeypatch.context() as patch:
        patch.setattr(kept.metadata, "version", unknown)
        kept.stamp.cache_clear()
        assert [Store(tmp_path).made("picture", [PART], maker) for _ in range(2)]
    kept.stamp.cache_clear()
    assert maker.times == 2 and not files(tmp_path)


SPOILED: dict[str, Callable[[bytes], bytes]] = {
    "cut short": lambda data: data[:-1],
    "empty": lambda data: b"",
    "one bit": lambda data: data[:-3] + bytes([data[-3] ^ 1]) + data[-2:],
    "longer": lambda data: data + b"x",
    "another form": lambda data: b"another form" + data[12:],
}


@pytest.mark.parametrize("spoil", SPOILED.values(), ids=SPOILED)
def test_a_damaged_file_counts_as_none(tmp_path: Path, spoil: Callable[[bytes], bytes]) -> None:
    store, maker = Store(tmp_path), Maker()
    store.made("picture", [PART], maker)
    (path,) = files(tmp_path)
    whole = path.read_bytes()
    path.write_bytes(spoil(whole))
    assert store.made("picture", [PART], maker) == b"picture"
    assert maker.times == 2 and path.read_bytes() == whole


def test_it_stays_within_its_bounds_and_what_was_used_last_stays(tmp_path: Path) -> None:
    store = Store(tmp_path, most=10_000)
    makers = {n: Maker(bytes([n]) * 900) for n in range(20)}
    for n, maker in makers.items():
        store.made("picture", [bytes([n])], maker)
        for age, path in enumerate(sorted(files(tmp_path), key=lambda p: -p.stat().st_mtime_ns)):
            os.utime(path, (time.time() - age, time.time() - age))
        store.made("picture", [bytes([0])], makers[0])  # in use all along
        assert sum(p.stat().st_size for p in files(tmp_path)) <= 10_000
    assert makers[0].times == 1 and makers[1].times == 1
    store.made("picture", [bytes([1])], makers[1])
    assert makers[1].times == 2


def test_what_is_too_large_is_not_kept(tmp_path: Path) -> None:
    Store(tmp_path, most=1000).made("picture", [PART], Maker(b"x" * 400))
    assert not files(tmp_path)


def test_only_its_own_files_are_removed(tmp_path: Path) -> None:
    """The folder may be one that holds other things, such as the user's own."""
    own = tmp_path / "letter.txt"
    own.write_bytes(b"x" * 5000)
    left = tmp_path / ".foldwork-new-killed"
    left.write_bytes(b"half")
    os.utime(left, (0, 0))
    writing = tmp_path / ".foldwork-new-another"
    writing.write_bytes(b"half")
    store = Store(tmp_path, most=2000)
    for n in range(12):
        store.made("picture", [bytes([n])], Maker(b"y" * 150))
    assert own.exists() and writing.exists() and not left.exists()


def test_where_nothing_can_be_written_everything_is_made(tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_bytes(b"")
    maker = Maker()
    for _ in range(2):
        assert Store(blocked / "folder").made("picture", [PART], maker) == b"picture"
    assert maker.times == 2


def test_many_at_once_share_a_folder(tmp_path: Path) -> None:
    """Runs that make, read and tidy at the same time all get what they asked for."""
    store = Store(tmp_path, most=40_000)

    def ask(n: int) -> bool:
        wanted = bytes([n % 9]) * 3000
        return store.made("picture", [bytes([n % 9])], lambda: wanted) == wanted

    with ThreadPoolExecutor(8) as pool:
        assert all(pool.map(ask, range(400)))
    assert not [p for p in files(tmp_path) if p.name.startswith(".")]


def test_a_result_is_seen_whole_or_not_at_all(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A run that is killed before the last act leaves nothing that another would read."""

    def killed(source: str, target: Path) -> None:
        raise KeyboardInterrupt

    with monkeypatch.context() as patch, pytest.raises(KeyboardInterrupt):
        patch.setattr(kept.os, "replace", killed)
        Store(tmp_path).made("picture", [PART], Maker())
    maker = Maker()
    assert Store(tmp_path).made("picture", [PART], maker) == b"picture" and maker.times == 1


@pytest.mark.skipif(kept.sys.platform in ("win32", "darwin"), reason="other folders there")
def test_the_users_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.delenv("FOLDWORK_CACHE")
    monkeypatch.delenv("XDG_CACHE_HOME", raising=False)
    assert users() == tmp_path / ".cache" / "foldwork"
    monkeypatch.setenv("XDG_CACHE_HOME", "/var/cache/me")
    assert users() == Path("/var/cache/me/foldwork")
    monkeypatch.setenv("XDG_CACHE_HOME", "not/absolute")
    assert users() == tmp_path / ".cache" / "foldwork"
    monkeypatch.setenv("FOLDWORK_CACHE", str(tmp_path / "elsewhere"))
    assert users() == tmp_path / "elsewhere"
    monkeypatch.setenv("FOLDWORK_CACHE", "")
    assert users() is None


def test_where_parts_end_matters() -> None:
    assert len({digest(b"ab", b""), digest(b"a", b"b"), digest(b"", b"ab"), digest(b"ab")}) == 4
