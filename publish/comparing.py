"""Opening what `foldwork compare` is given, and the files that it makes.

In: two paths, each a build folder, a pattern's folder or its file. Out: two editions and
their changes; the errata by file name.
Invariant: a path that holds no edition is a note, never a traceback; nothing is written
here.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from publish import compare, deliver, finished, pipeline, web_pdf
from publish.compare import Change, Edition
from publish.notes import Note, Place, PublishError, Report, error

NUMBERS, RECORD = "numbers.json", "edition.json"
CODES: dict[str, str] = {
    "X911": "There is nothing to compare at a path",
    "X912": "A build was made by an older Foldwork",
    "X913": "A file of a build cannot be read",
}


def opened(path: Path) -> Edition:
    """Return the edition at a path. Raises PublishError with the notes that say why not."""
    try:
        return _opened(path)
    except OSError as problem:  # no leave to look, a name that is too long
        raise _stop(
            "X911",
            path,
            "the path cannot be looked at",
            received=str(problem)[:120],
            help="check the name, and who may read there",
        ) from problem


def _opened(path: Path) -> Edition:
    if (path / NUMBERS).is_file():
        return _built(path)
    if path.is_dir() and not (path / "pattern.yaml").is_file():
        raise _stop(
            "X911",
            path,
            "the folder holds neither a build nor a pattern",
            expected=f"{NUMBERS}, or pattern.yaml",
            received=_held(path),
            help="name a folder that `foldwork build` made, or a pattern's",
        )
    if not path.exists():
        raise _stop(
            "X911",
            path,
            "there is no such file or folder",
            received=str(path),
            help="name a folder that `foldwork build` made, or a pattern's",
        )
    work = pipeline.prepare(path)
    work.stop_on_errors()
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    return compare.edition(str(path), numbers, finished.described(work))


def _built(folder: Path) -> Edition:
    """Return the edition that a build folder holds."""
    if not (folder / RECORD).is_file():
        raise _stop(
            "X912",
            folder,
            f"the build has no {RECORD}: an older Foldwork made it",
            expected=f"{NUMBERS} and {RECORD}",
            help="build that edition again, or compare its pattern.yaml",
        )
    numbers, record = (_json(folder / name) for name in (NUMBERS, RECORD))
    try:
        return compare.edition(str(folder), numbers, record)
    except ValueError as problem:
        raise _stop(
            "X913",
            folder / RECORD,
            f"{NUMBERS} and {RECORD} do not hold an edition",
            received=str(problem)[:120],
            help="build that edition again, or compare its pattern.yaml",
        ) from problem


def _json(path: Path) -> Any:
    try:
        return json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError) as problem:
        raise _stop(
            "X913",
            path,
            "the file is not JSON that can be read",
            received=str(problem)[:120],
            help="build that edition again, or compare its pattern.yaml",
        ) from problem


def _held(folder: Path) -> str:
    names = sorted(p.name for p in folder.iterdir())[:4]
    return ", ".join(names) or "an empty folder"


def _stop(
    code: str, path: Path, what: str, *, expected: str = "", received: str = "", help: str = ""
) -> PublishError:
    note: Note = error(
        code, Place(str(path)), what, expected=expected, received=received, help=help
    )
    return PublishError(Report((note,)))


def files(old: Edition, new: Edition, changes: Sequence[Change]) -> dict[str, bytes]:
    """Return the errata as files: a page, the same as PDF, data, and each overlay."""
    page = compare.page(old, new, changes)
    data = json.dumps(compare.data(old, new, changes), indent=2, ensure_ascii=False)
    made = {f"overlay-{name}.svg": svg.encode() for name, svg in compare.overlays(changes).items()}
    return {
        "errata.html": page.encode(),
        "errata.pdf": web_pdf.pdf(page),
        "errata.json": data.encode() + b"\n",
        **made,
    }
