"""What `foldwork new` writes: a small complete pattern to start from.

In: the folder to make. Out: the starter pattern's files, titled after the folder; beside
the second pattern of a studio, the file that says what its patterns share.
Invariant: the pattern builds without notes as it is written, and no pattern that was there
before is changed by it.
"""

from __future__ import annotations

import datetime
import os
import re
from importlib import resources
from pathlib import Path

import yaml

from publish import read
from publish.read import shared, studio_file

NOBODY = "Your studio"
SHARED = ("studio", "contact", "licence")
"""Of a publication: what is a studio's rather than a pattern's."""
STUDIO_HEAD = """\
# What the patterns beside this file share; a pattern's own key goes before it. Layout, fonts,
# cautions, prices and more can stand here: projects/REFERENCE.md, under "studio.yaml".
"""
FOLDS = {4: "four", 6: "six", 8: "eight", 12: "twelve", 16: "sixteen"}


def starter_files(folder: Path, folds: int = 8, more: str = "") -> dict[str, str]:
    """Return the starter pattern's files by name, titled after `folder`.

    `more` are further lines of the motif.
    """
    key = key_of(folder)
    house = shared(folder)
    named = house is not None and "studio" in house.values.get("publication", {})
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
            studio="" if named else f"  studio: {NOBODY}\n",
            year=datetime.date.today().year,
        ),
        f"{key}.svg": (source / "motif.svg").read_text(encoding="utf-8"),
    }


def start(folder: Path) -> list[Path]:
    """Write the starter pattern into `folder` and return the paths written.

    Raises FileExistsError when the folder exists and is not empty.
    """
    must_be_empty(folder)
    begun = start_studio(folder)
    return [*begun, *written(folder, {n: t.encode() for n, t in starter_files(folder).items()})]


def start_studio(folder: Path) -> list[Path]:
    """Write studio.yaml beside a folder and return its path, where there is none yet and
    other patterns lie beside the folder that all name one studio.

    It says what these agree on, so that it changes none of them.
    """
    home = Path(os.path.abspath(folder)).parent
    if studio_file(home) is not None:
        return []
    there = [read.load(path)[0] for path in sorted(home.glob(f"*/{read.FILE_NAME}"))]
    facts = [p.publication for p in there if p is not None]
    agreed = {
        name: found.pop() for name in SHARED if len(found := {getattr(f, name) for f in facts}) == 1
    }
    if not agreed.get("studio"):
        return []
    said = {"publication": {name: text for name, text in agreed.items() if text}}
    text = yaml.safe_dump(said, allow_unicode=True, sort_keys=False, width=88)
    return written(home, {read.STUDIO_FILE: (STUDIO_HEAD + text).encode()})


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
