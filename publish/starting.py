"""A small complete pattern to start from.

In: a folder that does not exist yet. Out: `pattern.yaml` and its drawing in it.
Invariant: nothing that exists is overwritten, and what is written builds unedited.
"""

from __future__ import annotations

import datetime
import re
from importlib import resources
from pathlib import Path


def starter_files(folder: Path) -> dict[str, str]:
    """Return the starter pattern's files by name, titled after `folder`."""
    key = re.sub(r"[^a-z0-9]+", "-", folder.resolve().name.lower()).strip("-")
    key = "pattern" if key in ("", "none") else key
    source = resources.files("publish") / "starter"
    template = (source / "pattern.yaml").read_text(encoding="utf-8")
    title = key.replace("-", " ").capitalize()
    year = datetime.date.today().year
    return {
        "pattern.yaml": template.format(title=title, key=key, year=year),
        f"{key}.svg": (source / "motif.svg").read_text(encoding="utf-8"),
    }


def start(folder: Path) -> list[Path]:
    """Write the starter pattern into `folder` and return the paths written.

    Raises FileExistsError when the folder exists and is not empty.
    """
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise FileExistsError(f"{folder} exists already")
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for name, text in starter_files(folder).items():
        path = folder / name
        path.write_text(text, encoding="utf-8")
        written.append(path)
    return written
