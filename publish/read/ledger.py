"""What reading takes down on its way: notes, places, names defined and names used.

In: nothing. Out: `Ledger`, filled by the checker; `At`, where the reading is.
Invariant: every place carries the way through the file that leads to it.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import yaml

from publish.notes import Note, Place, Severity, Sketch
from publish.read.characters import printable, shown
from publish.read.special import Ref

Path_ = tuple[str, ...]


@dataclass(frozen=True)
class At:
    """A value's way through the file, its place, and an example of what can stand there."""

    path: Path_
    place: Place
    example: str

    @property
    def subject(self) -> str:
        """What a headline calls the value: its key, or its number in a list."""
        return _subject(self.path)


def _subject(path: Path_) -> str:
    if not path:
        return "the file"
    if path[-1].isdigit() and len(path) > 1:
        return f"item {int(path[-1]) + 1} of {_subject(path[:-1])}"
    return f"`{path[-1]}`"


@dataclass(frozen=True)
class Use:
    """A fabric, motif or block named somewhere."""

    ref: Ref
    key: str
    place: Place


class Ledger:
    """Collects what is found in one file."""

    def __init__(self, file: str, lines: list[str], folder: Path) -> None:
        self.file, self.lines, self.folder = file, lines, folder
        self.notes: list[Note] = []
        self.places: dict[str, Place] = {"": Place(file)}
        self.uses: list[Use] = []
        self.texts: dict[str, str] = {}
        """Of texts by language: each, by the way to it."""
        self.defined: dict[str, list[str]] = {}
        """Keys of the designer's own by section: `fabrics`, `motifs`, `blocks`, `sizes`."""

    def note(
        self,
        code: str,
        place: Place,
        what: str,
        *,
        expected: str = "",
        received: str = "",
        help: str = "",
        severity: Severity = Severity.ERROR,
        sketch: Sketch | None = None,
    ) -> None:
        """Take down a finding, made safe to show."""
        self.notes.append(
            Note(
                code,
                severity,
                place,
                printable(what),
                printable(expected),
                shown(received) or "nothing",
                printable(help),
                sketch=sketch,
            )
        )

    def at(self, node: yaml.Node, path: Path_, example: str = "") -> At:
        """Return where `node` starts."""
        mark = node.start_mark
        assert mark is not None  # every node here was composed from text
        place = Place(self.file, mark.line + 1, mark.column + 1, ".".join(path))
        return At(path, place, example)

    def keep(self, at: At) -> At:
        """Remember a value's place, for the stages that ask by path."""
        self.places[".".join(at.path)] = at.place
        return at

    def place(self, *path: str | int) -> Place:
        """Return where a value stands, or the nearest thing around it that does."""
        parts = [str(p) for p in path]
        while parts and ".".join(parts) not in self.places:
            parts.pop()
        return self.places[".".join(parts)]

    def lend(self, path: Path_, lender: Path_) -> None:
        """Let a value that is taken from elsewhere answer with the place it is taken from."""
        place = self.places.get(".".join(lender))
        if place is not None:
            self.places.setdefault(".".join(path), place)

    def line_after(self, place: Place) -> str:
        """Return what stands on a line from a place on."""
        inside = place.line <= len(self.lines)
        return self.lines[place.line - 1][place.column - 1 :] if inside else ""
