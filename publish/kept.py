"""Results kept from one run to the next, by everything that they were made from.

In: a kind, the parts that a result is made from, a call that makes it. Out: its bytes.
Invariant: a kept result is used only where its parts, this program's source and the
libraries that it needs are the same; only bytes are kept, and nothing in them is unpickled
or run; a file that is damaged or cut short counts as none. Keeping never stops a run: where
nothing can be written, everything is made anew.

Several runs may share a folder: a file is written beside its place and then put there as
one act, so that a reader finds a whole one or none.
"""

from __future__ import annotations

import contextlib
import hashlib
import os
import platform
import re
import sys
import tempfile
import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib import metadata
from pathlib import Path

VARIABLE = "FOLDWORK_CACHE"
"""Of the environment: the folder that results are kept in; empty for none."""
NAME = "foldwork"
MOST = 2**30
"""Bytes that all kept results take together; the ones used longest ago go first."""
_LEFT = 0.75
"""Share of that which stays when some must go, so that not each new one looks again."""
_LARGEST = 1 / 8
"""Share of that which one result may take."""
_FORM = b"foldwork kept result, form 1\n"
_UNFINISHED = ".foldwork-new-"
_OURS = re.compile(r"[a-z]+-[0-9a-f]{64}")
"""Names of kept results: nothing else in the folder is ever removed."""
_STALE = 3600.0
"""Seconds after which an unfinished file is one that a killed run has left."""
_DIGEST = hashlib.sha256().digest_size


@dataclass(frozen=True)
class Store:
    """Where results are kept; nowhere without a folder.

    `fresh` makes each one anew, and keeps it then.
    """

    folder: Path | None = None
    fresh: bool = False
    most: int = MOST

    def made(self, kind: str, parts: Iterable[bytes], make: Callable[[], bytes]) -> bytes:
        """Return a result: the kept one where there is one, else what `make` returns.

        `parts` must hold everything that `make` depends on besides this program and its
        libraries; `kind` is a word of small letters that tells results of one maker from another's.
        """
        version = None if self.folder is None else stamp()
        if self.folder is None or version is None:
            return make()
        path = self.folder / f"{kind}-{digest(version, kind.encode(), *parts).hex()}"
        found = None if self.fresh else _read(path)
        if found is None:
            found = make()
            if len(found) <= _LARGEST * self.most:
                _write(path, found)
                _tidy(self.folder, self.most)
        return found


NOWHERE = Store()
"""Keeps nothing."""


def users() -> Path | None:
    """Return the folder that the user's programs keep such things in, ours within it.

    XDG Base Directory Specification 0.8; on macOS and Windows their makers' guidelines. None
    where there is no home, or where `FOLDWORK_CACHE` is empty.
    """
    named = os.environ.get(VARIABLE)
    if named is not None:
        return Path(named) if named.strip() else None
    try:
        if sys.platform == "win32":
            base = os.environ.get("LOCALAPPDATA")
            return (Path(base) if base else Path.home() / "AppData" / "Local") / NAME / "Cache"
        if sys.platform == "darwin":
            return Path.home() / "Library" / "Caches" / NAME
        base = os.environ.get("XDG_CACHE_HOME")
        # The specification: a path that is not absolute is to be passed over.
        absolute = base is not None and Path(base).is_absolute()
        return (Path(base) if base and absolute else Path.home() / ".cache") / NAME
    except RuntimeError:  # no home
        return None


def digest(*parts: bytes) -> bytes:
    """Return the SHA-256 of parts and of where each ends."""
    found = hashlib.sha256()
    for part in parts:
        found.update(len(part).to_bytes(8, "big"))
        found.update(part)
    return found.digest()


@lru_cache(maxsize=1)
def stamp() -> bytes | None:
    """Return what tells this program, its libraries and its machine from any other.

    None where the libraries' versions are not known: then nothing kept can be trusted.
    """
    try:
        libraries = [f"{name} {metadata.version(name)}" for name in _libraries()]
    except metadata.PackageNotFoundError:
        return None
    said = [sys.version, platform.platform(), platform.machine(), *libraries]
    return digest(*(text.encode() for text in said), source(Path(__file__).parent))


@cache
def source(folder: Path) -> bytes:
    """Return the digest of every file below a folder of this program, read once in a run."""
    parts = []
    for path in sorted(p for p in folder.rglob("*") if p.is_file() and p.suffix != ".pyc"):
        parts += [path.relative_to(folder).as_posix().encode(), path.read_bytes()]
    return digest(*parts)


def _libraries() -> list[str]:
    """Return the names of the libraries that a user of this program has installed."""
    needed = metadata.requires(NAME) or []
    plain = [line for line in needed if "extra ==" not in line]
    return sorted(re.split(r"[^\w.-]", line, maxsplit=1)[0] for line in plain)


def _read(path: Path) -> bytes | None:
    """Return what a file keeps, or None where it is not whole; note that it was used."""
    try:
        data = path.read_bytes()
    except OSError:
        return None
    head = len(_FORM) + _DIGEST
    found = data[head:]
    if data[:head] != _FORM + digest(found):
        return None
    with contextlib.suppress(OSError):
        os.utime(path)
    return found


def _write(path: Path, found: bytes) -> None:
    """Put a result in its place as one act, or leave it."""
    unfinished = None
    try:
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        handle, unfinished = tempfile.mkstemp(prefix=_UNFINISHED, dir=path.parent)
        with os.fdopen(handle, "wb") as stream:
            stream.write(_FORM + digest(found) + found)
        os.replace(unfinished, path)
    except OSError:  # a full disk, a folder that may not be written, a file in use
        if unfinished is not None:
            with contextlib.suppress(OSError):
                os.unlink(unfinished)


def _stale(written: float) -> bool:
    return written < time.time() - _STALE


def _tidy(folder: Path, most: int) -> None:
    """Remove the results that were used longest ago where all take too much, and what
    killed runs have left unfinished. Whatever another run has just removed is gone."""
    kept: list[tuple[float, int, str]] = []
    with contextlib.suppress(OSError), os.scandir(folder) as entries:
        for entry in entries:
            with contextlib.suppress(OSError):
                state = entry.stat(follow_symlinks=False)
                if _OURS.fullmatch(entry.name):
                    kept.append((state.st_mtime, state.st_size, entry.path))
                elif entry.name.startswith(_UNFINISHED) and _stale(state.st_mtime):
                    os.unlink(entry.path)
    total = sum(size for _, size, _ in kept)
    if total <= most:
        return
    for _, size, path in sorted(kept):
        with contextlib.suppress(OSError):
            os.unlink(path)
        total -= size
        if total <= _LEFT * most:
            return
