"""Stage 1: the pattern file is read and checked, key by key, over what its studio shares.

In: a path. Out: the `Pattern`, or None; every finding; the text of the files, for showing
the lines that findings point at.
Invariant: everything wrong is found in one run, each finding has a place and says how to
mend it, and no bytes whatever raise an exception.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import yaml

from publish.model.pattern import Pattern
from publish.model.studio import Studio
from publish.notes import Note, Report, Severity
from publish.read.blocks import Blocks
from publish.read.book import load_book
from publish.read.build import build_pattern
from publish.read.check import Checker
from publish.read.codes import CODES
from publish.read.cross import check_agreement
from publish.read.cross_top import check_tops
from publish.read.defaults import measures_of
from publish.read.editor import json_schema
from publish.read.ledger import Ledger
from publish.read.manual import reference
from publish.read.metric import on_millimetres
from publish.read.origins import origins
from publish.read.schema import PATTERN, SMALLEST
from publish.read.schema_book import BOOK
from publish.read.schema_studio import FILE_NAME as STUDIO_FILE
from publish.read.schema_studio import STUDIO
from publish.read.source import FILE_NAME, Source, compose, open_source
from publish.read.studio import Shared, lay_under, shared, studio_file
from publish.read.telling import Telling, telling

__all__ = [
    "BOOK",
    "CODES",
    "FILE_NAME",
    "PATTERN",
    "SMALLEST",
    "STUDIO",
    "STUDIO_FILE",
    "json_schema",
    "load",
    "load_book",
    "reference",
    "shared",
    "studio_file",
]


def load(path: Path, language: str = "") -> tuple[Pattern | None, tuple[Note, ...], dict[str, str]]:
    """Return the pattern in a folder that holds `pattern.yaml`, or in that file, told in
    `language`, or where it is empty in the first of its own.

    The pattern is None when a note is an error. Notes are in the order of their places;
    the third value is the text of each file that notes point into, by its shown name.
    """
    source = open_source(path)
    if isinstance(source, Note):
        return None, (source,), {}
    node, faults = compose(source)
    house = shared(Path(os.path.abspath(source.path)).parent, node, language)
    if node is None:
        pattern, notes = None, [*faults, *(house.ledger.notes if house is not None else ())]
    else:
        way = house.telling if house is not None else telling(node, None, language)
        pattern, notes = _read(source, node, faults, house, way)
    sources = {source.shown: source.text}
    if house is not None and house.source is not None:
        sources[house.source.shown] = house.source.text
    return pattern, Report().plus(notes).notes, sources


def _read(
    source: Source, node: yaml.Node, notes: Sequence[Note], house: Shared | None, way: Telling
) -> tuple[Pattern | None, list[Note]]:
    home = Path(os.path.abspath(source.path))
    ledger = Ledger(source.shown, source.lines, home.parent)
    ledger.notes.extend(notes)
    values = Checker(ledger, PATTERN, way).read(node)
    if house is not None:
        values = lay_under(values, ledger, house)
    if measures_of(values).metric:
        values = on_millimetres(PATTERN, values)
    blocks = Blocks(values.get("blocks", {}).get, ledger)
    flat = {name: blocks.flat(name) for name in values.get("blocks", {})}
    check_tops(values, flat, ledger)
    check_agreement(values, ledger)
    if any(note.severity is Severity.ERROR for note in ledger.notes):
        return None, ledger.notes
    key = home.parent.name if home.name == FILE_NAME else home.stem
    made = {name: block for name, block in flat.items() if block is not None}
    pattern = build_pattern(values, made, key or "pattern", home.parent, ledger, way)
    return replace(
        pattern,
        studio=Studio(house.path, house.steps) if house is not None else None,
        origins=origins(node, source, ledger, house, pattern.measures.metric),
    ), ledger.notes
