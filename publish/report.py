"""Notes as text: one line each, with the source line marked, or JSON.

In: a `Report`. Out: strings; only `cli.py` prints them.
Invariant: the one-line form is `file:line:column: error CODE: what; expected; received;
help`, so that editors can jump to it. What a file says cannot steer the terminal or turn
the reading order of a line: such characters are shown escaped.
"""

from __future__ import annotations

import json
import unicodedata
from collections.abc import Mapping
from typing import Any

from publish.notes import Note, Report

_UNSEEN = ("Cc", "Cf", "Cs", "Co", "Zl", "Zp")
"""Unicode's general categories of characters that are not seen but do something: controls,
formats (those of bidirectional text among them), separators of lines and paragraphs."""


def visible(text: str) -> str:
    """Return text with every character that is not seen written as `\\u202e`."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(_escaped(c) if unicodedata.category(c) in _UNSEEN else c for c in text)


def _escaped(sign: str) -> str:
    """Return a character as JSON escapes it, in UTF-16 code units."""
    units = sign.encode("utf-16-be", "surrogatepass")
    return "".join(f"\\u{units[i]:02x}{units[i + 1]:02x}" for i in range(0, len(units), 2))


def visible_lines(text: str) -> str:
    """Return text of several lines, each safe to show."""
    return "\n".join(map(visible, text.split("\n")))


def visible_json(plain: object) -> str:
    """Return data as JSON that is safe to show: escaped, it says the same."""
    return visible_lines(json.dumps(plain, indent=2, ensure_ascii=False))


def concise(note: Note) -> str:
    """Return a note as one line."""
    parts = [note.what]
    if note.expected:
        parts.append(f"expected {note.expected}")
    if note.received:
        parts.append(f"received {note.received}")
    if note.help:
        parts.append(f"help: {note.help}")
    return visible(f"{note.place}: {note.severity.value} {note.code}: " + "; ".join(parts))


def marked(note: Note, sources: dict[str, str]) -> str:
    """Return a note as one line, with its source line below and the column marked."""
    lines = sources.get(note.place.file, "").splitlines()
    if not 1 <= note.place.line <= len(lines):
        return concise(note)
    number = str(note.place.line)
    source = lines[note.place.line - 1].replace("\t", " ").rstrip()
    gutter = " " * len(number)
    pointer = " " * len(visible(source[: note.place.column - 1].ljust(note.place.column - 1)))
    return f"{concise(note)}\n  {number} | {visible(source)}\n  {gutter} | {pointer}^"


def summary(report: Report) -> str:
    """Return `2 errors, 1 warning`, or `no findings; 1 warning accepted`."""
    counts = [(len(report.errors), "error"), (len(report.warnings), "warning")]
    said = ", ".join(_counted(n, word) for n, word in counts if n) or "no findings"
    held = len(report.accepted)
    return f"{said}; {_counted(held, 'warning')} accepted" if held else said


def _counted(count: int, word: str) -> str:
    return f"{count} {word}{'s' if count != 1 else ''}"


def as_json(report: Report, folder: str | None = None) -> str:
    """Return the report as JSON: findings, and accepted ones, in the order of their places.

    Files are named as places name them, or as seen from a `folder`.
    """
    return visible_json(_whole(report, folder))


def all_as_json(reports: Mapping[str, Report]) -> str:
    """Return the reports of several patterns as JSON, each as `as_json` has it, by path."""
    return visible_json({"patterns": {p: _whole(r, None) for p, r in reports.items()}})


def _whole(report: Report, folder: str | None) -> dict[str, Any]:
    return {
        "findings": [_plain(n, folder) for n in report],
        "accepted": [{**_plain(n, folder), "reason": a.reason} for n, a in report.accepted],
    }


def _plain(note: Note, folder: str | None) -> dict[str, Any]:
    place = note.place if folder is None else note.place.within(folder)
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
