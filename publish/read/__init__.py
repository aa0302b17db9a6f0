"""Stage 1: the pattern file is read and checked, key by key.

In: a path. Out: the `Pattern`, or None; every finding; the text of the file, for showing
the lines that findings point at.
Invariant: everything wrong is found in one run, each finding has a place and says how to
mend it, and no bytes whatever raise an exception.
"""

from __future__ import annotations

import os
from pathlib import Path

from publish.model.pattern import Pattern
from publish.notes import Note, Report, Severity
from publish.read.blocks import Blocks
from publish.read.build import build_pattern
from publish.read.check import Checker
from publish.read.codes import CODES
from publish.read.cross import check_agreement
from publish.read.cross_top import check_tops
from publish.read.editor import json_schema
from publish.read.ledger import Ledger
from publish.read.manual import reference
from publish.read.schema import PATTERN, SMALLEST
from publish.read.source import FILE_NAME, Source, compose, open_source

__all__ = ["CODES", "SMALLEST", "json_schema", "load", "reference"]


def load(path: Path) -> tuple[Pattern | None, tuple[Note, ...], dict[str, str]]:
    """Return the pattern in a folder that holds `pattern.yaml`, or in that file.

    The pattern is None when a note is an error. Notes are in the order of their places;
    the third value is the text of each file that notes point into, by its shown name.
    """
    source = open_source(path)
    if isinstance(source, Note):
        return None, (source,), {}
    pattern, notes = _read(source)
    return pattern, Report().plus(notes).notes, {source.shown: source.text}


def _read(source: Source) -> tuple[Pattern | None, list[Note]]:
    node, notes = compose(source)
    if node is None:
        return None, list(notes)
    home = Path(os.path.abspath(source.path))
    ledger = Ledger(source.shown, source.lines, home.parent)
    ledger.notes.extend(notes)
    values = Checker(ledger, PATTERN).read(node)
    blocks = Blocks(values.get("blocks", {}).get, ledger)
    flat = {name: blocks.flat(name) for name in values.get("blocks", {})}
    check_tops(values, flat, ledger)
    check_agreement(values, ledger)
    if any(note.severity is Severity.ERROR for note in ledger.notes):
        return None, ledger.notes
    key = home.parent.name if home.name == FILE_NAME else home.stem
    made = {name: block for name, block in flat.items() if block is not None}
    return build_pattern(values, made, key or "pattern", home.parent, ledger), ledger.notes
