"""Whether a language says all that English says, and what English said when it was translated.

In: a language's code. Out: `Entry`s: messages that are missing, or older than their English.
Invariant: beside each language's messages stands, by name, a digest of the English that each was
made from (`made_from.json`); nothing but `record` writes it, when a translator says so.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from publish.words import language
from publish.words.language import own_sources

MADE_FROM = "made_from.json"


@dataclass(frozen=True)
class Entry:
    """A message to translate: its file, the English, and what the language has so far."""

    name: str
    file: str
    english: str
    own: str
    """Empty where the message is missing."""


def folder_of(code: str) -> Path:
    """Return where a language's messages stand."""
    return language(code).folder


def digest(source: str) -> str:
    """Return what a message is known by: its text, however its lines are broken."""
    return hashlib.sha256(" ".join(source.split()).encode()).hexdigest()[:16]


def to_translate(code: str) -> tuple[Entry, ...]:
    """Return the messages that are missing in a language or made from other English, in the
    order of the English files. A variant such as `en-GB` need not have any.

    A term, whose name begins with `-`, is the language's own business.
    """
    own, made_from = own_sources(folder_of(code)), recorded(code)
    whole = not language(code).grammar.base
    found = []
    for file, name, english in _english():
        old = name in own and made_from.get(name) != digest(english)
        if old or (whole and name not in own):
            found.append(Entry(name, file, english, own.get(name, "")))
    return tuple(found)


def _english() -> list[tuple[str, str, str]]:
    """Return file, name and text of each English message."""
    return [
        (path.name, name, source)
        for path in sorted(folder_of("en").glob("*.ftl"))
        for name, source in own_sources(path.parent, path.name).items()
        if not name.startswith("-")
    ]


def recorded(code: str) -> Mapping[str, str]:
    """Return the digests of the English that a language's messages were made from."""
    path = folder_of(code) / MADE_FROM
    found: Mapping[str, str] = json.loads(path.read_text("utf-8")) if path.is_file() else {}
    return found


def record(code: str) -> Path:
    """Take every message of a language as made from the English of today."""
    own = own_sources(folder_of(code))
    kept = {name: digest(english) for _, name, english in _english() if name in own}
    path = folder_of(code) / MADE_FROM
    path.write_text(json.dumps(kept, indent=0, sort_keys=True) + "\n", encoding="utf-8")
    return path


def listed(code: str, done: bool = False) -> tuple[int, str]:
    """Return how many messages are to be translated, and what is told of them; when it is
    `done`, record first what is there."""
    if done:
        record(code)
    entries = to_translate(code)
    told = [*lines(entries), f"{len(entries)} messages to translate"]
    return len(entries), "\n".join(told)


def lines(entries: tuple[Entry, ...]) -> list[str]:
    """Return what is to be translated, as text: by file, the English beside what there is."""
    found: list[str] = []
    file = ""
    for entry in entries:
        if entry.file != file:
            file = entry.file
            found += ["", f"# {file}"]
        found += ["", "out of date:" if entry.own else "missing:", entry.english.rstrip()]
        found += ["now:", entry.own.rstrip()] if entry.own else []
    return found[1:]
