"""Notes as text: one line each, with the source line marked, or JSON.

In: a `Report`. Out: strings; only `cli.py` prints them.
Invariant: the one-line form is `file:line:column: error CODE: what; expected; received;
help`, so that editors can jump to it.
"""

from __future__ import annotations

import json
from typing import Any

from publish.notes import Note, Report


def concise(note: Note) -> str:
    """Return a note as one line."""
    parts = [note.what]
    if note.expected:
        parts.append(f"expected {note.expected}")
    if note.received:
        parts.append(f"received {note.received}")
    if note.help:
        parts.append(f"help: {note.help}")
    return f"{note.place}: {note.severity.value} {note.code}: " + "; ".join(parts)


def marked(note: Note, sources: dict[str, str]) -> str:
    """Return a note as one line, with its source line below and the column marked."""
    lines = sources.get(note.place.file, "").splitlines()
    if not 1 <= note.place.line <= len(lines):
        return concise(note)
    number = str(note.place.line)
    source = lines[note.place.line - 1].replace("\t", " ").rstrip()
    gutter = " " * len(number)
    pointer = " " * (note.place.column - 1)
    return f"{concise(note)}\n  {number} | {source}\n  {gutter} | {pointer}^"


def summary(report: Report) -> str:
    """Return `2 errors, 1 warning`, or `no findings; 1 warning accepted`."""
    counts = [(len(report.errors), "error"), (len(report.warnings), "warning")]
    said = ", ".join(_counted(n, word) for n, word in counts if n) or "no findings"
    held = len(report.accepted)
    return f"{said}; {_counted(held, 'warning')} accepted" if held else said


def _counted(count: int, word: str) -> str:
    return f"{count} {word}{'s' if count != 1 else ''}"


def as_json(report: Report) -> str:
    """Return the report as JSON: findings, and accepted ones, in the order of their places."""
    plain = {
        "findings": [_plain(n) for n in report],
        "accepted": [{**_plain(n), "reason": a.reason} for n, a in report.accepted],
    }
    return json.dumps(plain, indent=2, ensure_ascii=False)


def _plain(note: Note) -> dict[str, Any]:
    place = note.place
    plain: dict[str, Any] = {
        "code": note.code,
        "severity": note.severity.value,
        "file": place.file,
        "line": place.line,
        "column": place.column,
        "path": place.path,
        "what": note.what,
        "expected": note.expected,
        "received": note.received,
        "help": note.help,
    }
    if note.spot is not None:
        plain["spot"] = vars(note.spot)
    return plain
