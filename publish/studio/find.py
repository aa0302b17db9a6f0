"""Which patterns are meant by paths: a pattern each, or folders that hold several.

In: paths. Out: a path for each pattern, in the order in which they are named, and within a
folder by name.
Invariant: a pattern is there once; a path without any pattern stays, so that reading it
says what is wrong.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator
from pathlib import Path

from publish.read import FILE_NAME


def find(paths: Iterable[Path]) -> tuple[Path, ...]:
    """Return the patterns that paths name or hold."""
    found: dict[str, Path] = {}
    for path in paths:
        inside = list(_below(path)) if path.is_dir() and not (path / FILE_NAME).is_file() else []
        for each in inside or [path]:
            found.setdefault(os.path.realpath(each), each)
    return tuple(found.values())


def _below(folder: Path) -> Iterator[Path]:
    """Yield the folders below one that hold a pattern; hidden ones are passed over."""
    for here, folders, files in os.walk(folder):
        folders[:] = sorted(name for name in folders if not name.startswith("."))
        if FILE_NAME in files:
            folders.clear()
            yield Path(here)
