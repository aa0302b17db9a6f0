"""A book's file, read over what its studio shares.

In: a path. Out: the `Volume`, or None; every finding; the text of the files.
Invariant: as in `load`: all at once, each with its place, and no bytes raise an exception.
"""

from __future__ import annotations

import os
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from publish.measures import Measures
from publish.model.pattern import Pattern, Sewing, Style
from publish.model.studio import Studio
from publish.model.volume import Part, Volume
from publish.notes import Note, Place, Report, Severity, error, shown_path
from publish.read.build import publication
from publish.read.check import Checker
from publish.read.defaults import fill
from publish.read.ledger import Ledger
from publish.read.schema_book import BOOK, BOOK_FILE, PART
from publish.read.schema_house import STYLE
from publish.read.schema_sewing import SEWING
from publish.read.source import Source, compose, open_beside
from publish.read.studio import lay_under, shared
from publish.read.telling import Telling, telling
from publish.words import language

Read = tuple[Volume | None, tuple[Note, ...], dict[str, str]]
_SHARED = ("languages", "layout", "papers", "style", "publication")


def load_book(path: Path) -> Read:
    """Return the book in a folder that holds `book.yaml`, or in that file."""
    target = path / BOOK_FILE if path.is_dir() else path
    if not target.is_file():
        note = error(
            "R101",
            Place(shown_path(target)),
            f"there is no {BOOK_FILE} here",
            expected=f"a folder holding {BOOK_FILE}, or that file",
            received=shown_path(path),
            help="write one beside the patterns",
        )
        return None, (note,), {}
    source = open_beside(target)
    if isinstance(source, Note):
        return None, (source,), {}
    ledger, values, studio, sources, way = _values(source)
    notes = Report().plus(ledger.notes).notes
    if values is None or any(n.severity is Severity.ERROR for n in notes):
        return None, notes, sources
    made = _volume(values, ledger, Path(os.path.abspath(target)), studio, way)
    return made, notes, sources


_Values = tuple[Ledger, dict[str, Any] | None, Studio | None, dict[str, str], Telling]


def _values(source: Source) -> _Values:
    home = Path(os.path.abspath(source.path)).parent
    ledger = Ledger(source.shown, source.lines, home)
    sources = {source.shown: source.text}
    node, notes = compose(source)
    ledger.notes.extend(notes)
    if node is None:
        return ledger, None, None, sources, Telling()
    house = shared(home, node)
    way = house.telling if house is not None else telling(node)
    values = Checker(ledger, BOOK, way).read(node)
    _names(values, ledger)
    if house is None:
        return ledger, values, None, sources, way
    if house.source is not None:
        sources[house.source.shown] = house.source.text
    kept = {k: v for k, v in house.values.items() if k in _SHARED}
    if "papers" in kept:
        kept["papers"] = [p for p in kept["papers"] if p in ("letter", "a4")] or None
    kept = {k: v for k, v in kept.items() if v is not None}
    values = lay_under(values, ledger, replace(house, values=kept))
    return ledger, values, Studio(house.path), sources, way


def _names(values: Mapping[str, Any], ledger: Ledger) -> None:
    """Note a pattern whose folder is called as another's is: a book knows them by that."""
    ways: list[tuple[tuple[str | int, ...], Path]] = [
        (("patterns", n), path) for n, path in enumerate(values.get("patterns") or ())
    ]
    for at, part in enumerate(values.get("parts") or ()):
        ways += [(("parts", at, "patterns", n), p) for n, p in enumerate(part.get("patterns", ()))]
    first: dict[str, Path] = {}
    for way, path in ways:
        other = first.setdefault(path.name.casefold(), path)
        if other is not path:
            ledger.note(
                "R176",
                ledger.place(*way),
                "another pattern of the book has this name",
                expected="each pattern once, in a folder of its own name",
                received=path.name,
                help="leave it out, or rename its folder",
            )


def _volume(
    values: Mapping[str, Any], ledger: Ledger, path: Path, studio: Studio | None, way: Telling
) -> Volume:
    top = fill(BOOK, values)
    speak = language(way.chosen, Measures())
    style = fill(STYLE, top["style"] or {})
    said = replace(
        publication(top["publication"] or {}, speak),
        skill="",
        stock_number="",
        barcode=top["isbn"] or "",
        blurb=top["blurb"],
    )
    looks = Pattern(
        key=path.parent.name if path.name == BOOK_FILE else path.stem,
        folder=path.parent,
        title=top["title"],
        subtitle=top["subtitle"],
        publication=said,
        papers=tuple(top["papers"]),
        layout=top["layout"],
        fabrics={},
        motifs={},
        blocks={},
        sizes={},
        sewing=Sewing(**fill(SEWING, {}), measures=speak.measures),
        language=way.chosen,
        places=dict(ledger.places),
        style=Style(style["accent"], style["logo"], dict(style["fonts"] or {})),
        studio=studio,
    )
    parts = [fill(PART, p) for p in top["parts"] or ()]
    if not parts:
        parts = [{"title": "", "lead": "", "patterns": top["patterns"]}]
    made = tuple(Part(p["title"], p["lead"], tuple(p["patterns"])) for p in parts)
    return Volume(looks, top["foreword"], made)
