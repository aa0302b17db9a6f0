"""What a build depends on, as a digest of each part: is a finished set still what it was
made from?

In: a pattern as it was read, and what was asked for. Out: digests by name.
Invariant: two builds with the same digests give the same bytes; nothing in them depends on
where the folders lie. What the studio's file says counts by the values that the pattern has
from it, so that a word changed there changes only the patterns that show it.
"""

from __future__ import annotations

import dataclasses
import hashlib
import os
import platform
from collections.abc import Iterator, Mapping
from functools import cache
from importlib import metadata
from pathlib import Path

import publish
from publish.kept import source
from publish.model.pattern import Pattern
from publish.notes import Place, Report

PROGRAM, ASKED, VALUES = "program", "asked", "values"
AS_SHOWN = "studio.yaml, lines shown"
"""The studio's file as it stands: only where the report shows lines of it."""


def inputs(
    pattern: Pattern,
    papers: tuple[str, ...] | None,
    only: str | None,
    report: Report | None = None,
    size: str = "",
    language: str = "",
) -> dict[str, str]:
    """Return the digest of everything that a build of the pattern depends on, by name.

    `report` is that of a finished build, whose pages show lines of the files.
    """
    found = {
        PROGRAM: program(),
        ASKED: _digest(f"{papers or ''} {only or ''} {size} {language}".encode()),
        VALUES: _digest("\n".join(_said(pattern, pattern)).encode()),
    }
    own = pattern.places[""]
    source = pattern.folder / Path(own.file).name
    found |= {_named(pattern, p): _of_file(p) for p in sorted({source, *files(pattern)})}
    if report is not None and pattern.studio is not None:
        notes = (*report, *(n for n, _ in report.accepted))
        if any(n.place.file != own.file for n in notes):
            found[AS_SHOWN] = _of_file(pattern.studio.path)
    return found


def differing(
    pattern: Pattern,
    papers: tuple[str, ...] | None,
    only: str | None,
    made_from: Mapping[str, str],
    size: str = "",
    language: str = "",
) -> tuple[str, ...]:
    """Return the names of what is not as it was when a set was made."""
    now = inputs(pattern, papers, only, size=size, language=language)
    if AS_SHOWN in made_from and pattern.studio is not None:
        now[AS_SHOWN] = _of_file(pattern.studio.path)
    names = dict.fromkeys([*now, *made_from])
    return tuple(name for name in names if now.get(name) != made_from.get(name))


@cache
def program() -> str:
    """Return the digest of the program itself, of Python and of every library beside it."""
    home = Path(publish.__file__).parent
    layouts = next(p for p in (home / "layouts", home.parent / "layouts") if p.is_dir())
    said = [source(top).hex() for top in (home, layouts)]
    libraries = {f"{d.name} {d.version}" for d in metadata.distributions()}
    system = f"{platform.python_version()} {platform.system()} {platform.machine()}"
    return _digest("\n".join([system, *sorted(libraries), *said]).encode())


def _said(value: object, pattern: Pattern) -> Iterator[str]:
    """Yield a value of the pattern as text, the same wherever its folder lies."""
    if isinstance(value, Place):
        near = value.within(pattern.places[""].folder)
        yield f"{near} {near.path}"
    elif isinstance(value, Path):
        yield _named(pattern, value)
    elif dataclasses.is_dataclass(value) and not isinstance(value, type):
        for field in dataclasses.fields(value):
            yield field.name
            if not (isinstance(value, Pattern) and field.name == "folder"):
                yield from _said(getattr(value, field.name), pattern)
    elif isinstance(value, Mapping):
        for key, inner in value.items():
            yield f"{key}:"
            yield from _said(inner, pattern)
    elif isinstance(value, (tuple, list)):
        yield f"{len(value)} items"
        for inner in value:
            yield from _said(inner, pattern)
    else:
        yield repr(value)


def files(pattern: Pattern) -> Iterator[Path]:
    """Yield every file that the pattern names, and those of the designer's own layouts."""
    yield from _paths(pattern)
    folders = [pattern.folder]
    if pattern.studio is not None:
        folders.append(pattern.studio.folder)
    for folder in folders:
        yield from (p for p in (folder / "layouts").rglob("*") if p.is_file())


def _paths(value: object) -> Iterator[Path]:
    if isinstance(value, Path):
        yield value
    elif dataclasses.is_dataclass(value) and not isinstance(value, type):
        skipped = ("folder", "studio") if isinstance(value, Pattern) else ()
        for field in dataclasses.fields(value):
            if field.name not in skipped:
                yield from _paths(getattr(value, field.name))
    elif isinstance(value, Mapping):
        for inner in value.values():
            yield from _paths(inner)
    elif isinstance(value, (tuple, list)):
        for inner in value:
            yield from _paths(inner)


def _named(pattern: Pattern, path: Path) -> str:
    """Return a file's name as seen from the pattern's folder."""
    return Path(os.path.relpath(path, pattern.folder)).as_posix()


def _of_file(path: Path) -> str:
    try:
        return _digest(path.read_bytes())
    except OSError:  # gone since it was read: as good as changed
        return "not there"


def _digest(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()
