"""What `foldwork new` writes: a small complete pattern to start from.

In: the folder to make. Out: the starter pattern's files, titled after the folder.
Invariant: the pattern builds without notes as it is written.
"""

from __future__ import annotations

import datetime
import re
from importlib import resources
from pathlib import Path

FOLDS = {4: "four", 6: "six", 8: "eight", 12: "twelve", 16: "sixteen"}


def starter_files(folder: Path, folds: int = 8, more: str = "") -> dict[str, str]:
    """Return the starter pattern's files by name, titled after `folder`.

    `more` are further lines of the motif.
    """
    key = key_of(folder)
    source = resources.files("publish") / "starter"
    template = (source / "pattern.yaml").read_text(encoding="utf-8")
    article = "An" if folds == 8 else "A"
    return {
        "pattern.yaml": template.format(
            title=key.replace("-", " ").capitalize(),
            subtitle=f"{article} {FOLDS[folds]}-fold paper-cut appliqué",
            key=key,
            folds=folds,
            more=more,
            year=datetime.date.today().year,
        ),
        f"{key}.svg": (source / "motif.svg").read_text(encoding="utf-8"),
    }


def start(folder: Path) -> list[Path]:
    """Write the starter pattern into `folder` and return the paths written.

    Raises FileExistsError when the folder exists and is not empty.
    """
    must_be_empty(folder)
    return written(folder, {n: t.encode() for n, t in starter_files(folder).items()})


def key_of(folder: Path) -> str:
    """Return the key that a folder gives its motif."""
    key = re.sub(r"[^a-z0-9]+", "-", folder.resolve().name.lower()).strip("-")
    return "pattern" if key in ("", "none") else key


def must_be_empty(folder: Path) -> None:
    """Raise FileExistsError when a folder exists and is not empty."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise FileExistsError(f"{folder} exists already")


def written(folder: Path, files: dict[str, bytes]) -> list[Path]:
    """Write files into a folder and return their paths."""
    folder.mkdir(parents=True, exist_ok=True)
    paths = []
    for name, content in files.items():
        path = folder / name
        path.write_bytes(content)
        paths.append(path)
    return paths
