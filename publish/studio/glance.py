"""A first look at one pattern: what reading says of it, and whether its set is up to date.

In: a path, and what is asked for. Out: a `Glance`.
Invariant: nothing is written, and a pattern that cannot be read is told so by its build or
check, not here.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from publish import deliver, read
from publish.inputs import differing
from publish.model.pattern import Pattern
from publish.notes import Note, Place, Report, Severity, shown_path
from publish.studio.outcome import Glance, Named


def glance(
    path: Path,
    out: Path | None,
    papers: tuple[str, ...] | None,
    only: str | None,
    size: str = "",
    language: str = "",
) -> Glance:
    """Read one pattern; with `out`, compare what it depends on with its finished set."""
    pattern, _, sources = read.load(path, language)
    if pattern is None:
        return Glance(path)
    changed: tuple[str, ...] = ("a build",)
    if out is not None:
        made_from = deliver.recorded(out / pattern.key)
        changed = (
            differing(pattern, papers, only, made_from, size, language)
            if made_from
            else ("no build yet",)
        )
    said, place = pattern.publication, pattern.place
    return Glance(
        path,
        pattern.key,
        said.studio,
        pattern.places["studio"].file if pattern.studio is not None else "",
        Named(pattern.title, place("title")),
        Named(said.stock_number, place("publication", "stock_number")),
        Named(said.barcode, place("publication", "barcode")),
        tuple(_fabrics(pattern)),
        pattern.accepts,
        sources,
        changed,
        readable=True,
    )


def _fabrics(pattern: Pattern) -> Iterator[Named]:
    for key, fabric in pattern.fabrics.items():
        yield Named(fabric.name, pattern.place("fabrics", key, "name"), fabric.colour)
    for way, colourway in pattern.colourways.items():
        for number, fabric in enumerate(colourway.fabrics.values()):
            place = pattern.place("colourways", way, "swaps", number, "name")
            yield Named(fabric.name, place, fabric.colour)


def found_before(glanced: Glance, target: Path) -> Report:
    """Return what the build of a finished set has found, from its own report."""
    try:
        told = json.loads((target / "findings.json").read_text(encoding="utf-8"))
        notes = [_note(n, glanced) for n in (*told["findings"], *told["accepted"])]
    except (OSError, ValueError, KeyError, TypeError):  # a set of templates alone has none
        notes = []
    return Report(accepts=glanced.accepts).plus(notes, dict(glanced.sources))


def up_to_date(glanced: Glance, out: Path, strict: bool) -> tuple[Report, Path] | None:
    """Return what the build of a pattern's finished set has found, and where that is, where a
    build would make the same; None where it must be made."""
    if not glanced.readable or glanced.changed:
        return None
    target = out / glanced.key
    found = found_before(glanced, target)
    return None if strict and found.warnings else (found, target)


def _note(told: dict[str, Any], glanced: Glance) -> Note:
    """Return a note with its place as seen from here again."""
    file = glanced.house if told["file"] == Path(glanced.house).name else ""
    if not file:
        home = glanced.path if glanced.path.is_dir() else glanced.path.parent
        file = shown_path(home / told["file"])
    place = Place(file, told["line"], told["column"], told["path"])
    return Note(
        told["code"],
        Severity(told["severity"]),
        place,
        told["what"],
        told["expected"],
        told["received"],
        told["help"],
    )
