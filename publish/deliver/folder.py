"""Replace a folder of results as one act: the whole new set, or the old one untouched.

In: the folder and the files to put in it. Out: the folder, with `manifest.json`.
Invariant: at every moment, also after `kill -9` or a full disk, the last complete set is
in the folder or beside it under a name that the next call puts back. A folder that holds
anything we did not make is never replaced.

The set is first written and flushed to a folder beside the target, its manifest before
everything else; then the old set is renamed aside and the new one renamed in, and the old
one removed, its manifest after everything else. So both folders beside the target can be
told from somebody's own folder of that name at every moment: they hold a manifest of ours
and nothing that it does not list. Between the two renames the target is missing: `recover`
ends that state.

Each step is on the disk before the next begins, so a power cut leaves what a kill at the
same place would: files are flushed before the folders that name them, those before the
first rename, each rename before the next step. On macOS the drive's own cache is flushed
as well. The calls lock the folder that holds the target, where the system can (not on
Windows), so that two builds take turns.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import shutil
from collections.abc import Iterator, Mapping
from pathlib import Path, PurePosixPath

from publish.notes import Note, Place, PublishError, Report, error

try:
    import fcntl
except ImportError:  # Windows has no advisory locks on folders
    fcntl = None  # type: ignore[assignment]

MANIFEST = "manifest.json"
MAKER = "foldwork"
LITTER = frozenset({".DS_Store", "Thumbs.db", "desktop.ini"})
"""Files that desktops leave in any folder they show: nobody's work."""


def deliver(
    out: Path, files: Mapping[str, bytes], made_from: Mapping[str, str] | None = None
) -> None:
    """Make `out` hold exactly `files`, and a manifest with each one's size and SHA-256.

    `made_from` stands in the manifest as it is, for `recorded` to find.
    Names are relative paths with `/`. Raises PublishError when a name would leave the
    folder (X901), when `out` holds anything we did not make (X902), or when the system
    refuses to write (X903); the last complete set is then still there.
    """
    _refuse_names(out, files)
    try:
        target = out.resolve()
        _make_folder(target.parent)
        with _turn(target.parent):
            for beside in (_beside(target, "new"), _beside(target, "old")):
                _refuse_strangers(beside, beside)
            _recover(target)
            _refuse_strangers(out, target)
            _replace(target, files, made_from)
    except OSError as problem:
        raise _stop(
            "X903",
            out,
            "the results cannot be written",
            received=str(problem),
            help="give --out another folder, or make room and check who may write there",
        ) from problem


def recover(out: Path) -> None:
    """Put back the last complete set after a build that was killed while swapping.

    Does nothing when there is nothing to put back. Raises OSError only when the system
    refuses the renaming.
    """
    target = out.resolve()
    if _beside(target, "old").exists() or _beside(target, "new").exists():
        with _turn(target.parent):
            _recover(target)


def held(out: Path) -> dict[str, bytes]:
    """Return the files of a set without its manifest, by name."""
    every = (p for p in sorted(out.rglob("*")) if p.is_file())
    found = {p.relative_to(out).as_posix(): p.read_bytes() for p in every}
    found.pop(MANIFEST, None)
    return found


def recorded(out: Path) -> dict[str, str]:
    """Return what the set in a folder says that it was made from; empty where there is no
    whole set there, or it does not say."""
    try:
        recover(out)
        if _complete(out):
            found = json.loads((out / MANIFEST).read_text(encoding="utf-8"))["made_from"]
            return {str(name): str(value) for name, value in found.items()}
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        pass
    return {}


def _beside(target: Path, state: str) -> Path:
    return target.with_name(f".{target.name}.{state}")


@contextlib.contextmanager
def _turn(parent: Path) -> Iterator[None]:
    """Hold the lock on a folder, waiting for whoever has it."""
    if fcntl is None:
        yield
        return
    handle = os.open(parent, os.O_RDONLY)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        os.close(handle)


def _recover(target: Path) -> None:
    fresh, old = _beside(target, "new"), _beside(target, "old")
    if not target.exists() and _complete(old):
        os.rename(old, target)
        _flush(target.parent)
    for leftover in (fresh, old):
        if leftover.is_dir() and not _strangers(leftover):
            _remove(leftover)


def _remove(folder: Path) -> None:
    """Remove a folder of ours, by its manifest to be known as ours until it is empty."""
    for path in folder.iterdir():
        if path.is_dir() and not path.is_symlink():
            shutil.rmtree(path)
        elif path.name != MANIFEST:
            path.unlink()
    (folder / MANIFEST).unlink(missing_ok=True)
    folder.rmdir()


def _make_folder(folder: Path) -> None:
    """Make a folder and those above it, each entered in the one above for good."""
    missing = [p for p in (folder, *folder.parents) if not p.exists()]
    folder.mkdir(parents=True, exist_ok=True)
    for made in missing:
        _flush(made.parent)


def _replace(target: Path, files: Mapping[str, bytes], made_from: Mapping[str, str] | None) -> None:
    fresh, old = _beside(target, "new"), _beside(target, "old")
    try:
        _write(fresh, files, made_from)
        _swap(fresh, target, old)
    except OSError:
        with contextlib.suppress(OSError):
            _remove(fresh)
        raise


def _write(folder: Path, files: Mapping[str, bytes], made_from: Mapping[str, str] | None) -> None:
    """Write and flush every file, the manifest first: what it lists is ours."""
    folder.mkdir()
    listed = {
        name: {"sha256": hashlib.sha256(data).hexdigest(), "size": len(data)}
        for name, data in sorted(files.items())
    }
    said: dict[str, object] = {"made_by": MAKER, "files": listed}
    if made_from:
        said["made_from"] = dict(made_from)
    manifest = json.dumps(said, indent=2, ensure_ascii=False)
    for name, data in [(MANIFEST, f"{manifest}\n".encode()), *sorted(files.items())]:
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("xb") as stream:
            stream.write(data)
            stream.flush()
            _sync(stream.fileno())
    for inner in [*(p for p in folder.rglob("*") if p.is_dir()), folder]:
        _flush(inner)


def _swap(fresh: Path, target: Path, old: Path) -> None:
    replaced = target.exists()
    if replaced:
        os.rename(target, old)
        _flush(target.parent)
    try:
        os.rename(fresh, target)
    except OSError:
        if replaced:
            os.rename(old, target)
        raise
    _flush(target.parent)
    with contextlib.suppress(OSError):  # what stays is cleared by the next build
        if replaced:
            _remove(old)


def _flush(folder: Path) -> None:
    """Make a folder's own entries last through a power cut, where the system can."""
    if fcntl is None:
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        _sync(handle)
    finally:
        os.close(handle)


def _sync(handle: int) -> None:
    """Bring what is written to the disk itself, past its cache where that is asked apart."""
    os.fsync(handle)
    full = getattr(fcntl, "F_FULLFSYNC", None)  # macOS: fsync stops at the drive's cache
    if full is not None:
        with contextlib.suppress(OSError):  # a drive on the network that does not know it
            fcntl.fcntl(handle, full)


def _refuse_names(out: Path, files: Mapping[str, bytes]) -> None:
    seen = {MANIFEST.casefold()}
    for name in files:
        parts = PurePosixPath(name).parts
        leaves = not parts or name.startswith("/") or ".." in parts or "\\" in name or ":" in name
        if leaves or name.casefold() in seen:
            raise _stop(
                "X901",
                out,
                "a file of the results has a name that cannot be used",
                expected="a relative path of its own inside the folder",
                received=name,
                help=f"rename it; {MANIFEST} is written last and by itself",
            )
        seen.add(name.casefold())


def _refuse_strangers(out: Path, target: Path) -> None:
    """Raise PublishError when the target is, or holds, anything we did not make."""
    if not target.exists():
        return
    if not target.is_dir():
        raise _stop(
            "X902",
            out,
            "the results need a folder, and a file has its name",
            help="move the file away, or give --out another folder",
        )
    strangers = _strangers(target)
    if strangers:
        more = f" and {len(strangers) - 3} more" if len(strangers) > 3 else ""
        raise _stop(
            "X902",
            out,
            "the folder for the results holds files that were not made here",
            received=", ".join(strangers[:3]) + more,
            help="move them away, or give --out another folder: a build replaces all of it",
        )


def _strangers(folder: Path) -> list[str]:
    """Return the files in a folder that its manifest does not list."""
    listed = _listed(folder)
    ours = {MANIFEST, *listed} if listed or _begun(folder / MANIFEST) else set()
    found = (p for p in folder.rglob("*") if p.is_symlink() or not p.is_dir())
    names = {p.relative_to(folder).as_posix() for p in found if p.name not in LITTER}
    return sorted(names - ours)


def _begun(manifest: Path) -> bool:
    """Return whether a file can be a manifest of ours that was cut off while written."""
    try:
        text = manifest.read_text(encoding="utf-8")
    except (OSError, ValueError):
        return False
    opening = json.dumps({"made_by": MAKER}, indent=2)[:-2]
    return text.startswith(opening) or opening.startswith(text)


def _listed(folder: Path) -> dict[str, int]:
    """Return the size of each file in a folder's manifest; empty when it has none of ours."""
    try:
        manifest = json.loads((folder / MANIFEST).read_text(encoding="utf-8"))
        if manifest["made_by"] == MAKER:
            return {name: file["size"] for name, file in manifest["files"].items()}
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        pass
    return {}


def _complete(folder: Path) -> bool:
    """Return whether a folder holds every file of its manifest, at its full size."""
    sizes = _listed(folder)
    present = ((folder / name, size) for name, size in sizes.items())
    return bool(sizes) and all(p.is_file() and p.stat().st_size == n for p, n in present)


def _stop(
    code: str, out: Path, what: str, *, expected: str = "", received: str = "", help: str = ""
) -> PublishError:
    note: Note = error(code, Place(str(out)), what, expected=expected, received=received, help=help)
    return PublishError(Report((note,)))
