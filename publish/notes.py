"""The shape of a problem: where it is, what was expected, what was found, how to mend it.

In: nothing. Out: `Place`, `Note`, `Acceptance`, `Report`, `PublishError`.
Invariant: nothing here prints, exits or raises for a designer's mistake; stages return
their notes beside their result, and only `cli.py` renders them.

Codes are stable and never reused. Their ranges: R1xx reading, G2xx grading, D3xx
drafting, C4xx cutting, S4xx sewing, W5xx writing, F6xx drawing, T7xx typesetting, P8xx
proof, X9xx delivering.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from enum import Enum
from pathlib import Path, PurePath


class Severity(Enum):
    """How much a note matters: an error stops the build, a warning does not."""

    ERROR = "error"
    WARNING = "warning"
    INFO = "info"


def shown_path(path: Path) -> str:
    """Return a path as places name it: from the current folder where that is shorter."""
    whole = os.path.abspath(path)
    try:
        near = os.path.relpath(whole)
    except ValueError:  # another drive
        return whole
    return near if len(near) <= len(whole) else whole


@dataclass(frozen=True, order=True)
class Place:
    """A position in a file that the designer wrote; line and column count from 1.

    `file` is relative to the folder that the command ran in, where that is shorter.
    `path` is the way through the YAML, such as `sizes.mini.block_size`.
    """

    file: str
    line: int = 1
    column: int = 1
    path: str = ""

    def __str__(self) -> str:
        return f"{self.file}:{self.line}:{self.column}"

    @property
    def folder(self) -> str:
        """The folder of the file, as `file` names it."""
        return str(PurePath(self.file).parent)

    def within(self, folder: str) -> Place:
        """Return the place as seen from a folder that is named as `file` is: for results,
        which must not differ by where they were made. Of a file elsewhere only the name."""
        path = PurePath(self.file)
        near = path.relative_to(folder) if path.is_relative_to(folder) else PurePath(path.name)
        return replace(self, file=near.as_posix())


@dataclass(frozen=True)
class Spot:
    """A point on the quilt that a note is about: inches from the centre of a motif.

    `measure` is the number found there and `needed` what the method asks for, both in
    inches; a figure marks the point.
    """

    size: str
    motif: str
    x: float
    y: float
    measure: float | None = None
    needed: float | None = None


@dataclass(frozen=True)
class Sketch:
    """A block as written, and the area of its grid that a note is about.

    Points count grid squares from the top left corner; arcs are drawn out.
    """

    block: str
    columns: int
    rows: int
    outlines: tuple[tuple[tuple[float, float], ...], ...]
    """Of its patches, in their order."""
    area: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Note:
    """One finding. `what` is a headline without a full stop."""

    code: str
    severity: Severity
    place: Place
    what: str
    expected: str = ""
    received: str = ""
    help: str = ""
    spot: Spot | None = None
    sketch: Sketch | None = None
    page: int = 0
    """Of the printed pages the one that it is about; 0 where it is about none."""


@dataclass(frozen=True)
class Acceptance:
    """A warning that the designer has weighed and keeps, with the reason.

    `at` is the way through the YAML to a value, such as `sizes.throw`: warnings at it and
    below it are accepted; an empty one accepts the code everywhere.
    """

    code: str
    reason: str
    place: Place
    """Where the acceptance itself stands."""
    at: str = ""

    def covers(self, note: Note) -> bool:
        """Return whether a note is of this code and at this place."""
        spots = [note.place.path]
        if note.spot is not None:
            spots += [f"sizes.{note.spot.size}", f"motifs.{note.spot.motif}"]
        inside = any(s == self.at or s.startswith(f"{self.at}.") for s in spots)
        return note.code == self.code and (not self.at or inside)


@dataclass(frozen=True)
class Report:
    """Every note of one run, in the order of their places.

    Warnings that one of `accepts` covers are not among the notes but in `accepted`, with
    the acceptance that holds them back. An error is never held back.
    """

    notes: tuple[Note, ...] = ()
    sources: dict[str, str] = field(default_factory=dict, compare=False, hash=False)
    """Text of each file that a note points into, for showing the line."""
    accepts: tuple[Acceptance, ...] = ()
    accepted: tuple[tuple[Note, Acceptance], ...] = ()

    @property
    def errors(self) -> tuple[Note, ...]:
        return tuple(n for n in self.notes if n.severity is Severity.ERROR)

    @property
    def warnings(self) -> tuple[Note, ...]:
        return tuple(n for n in self.notes if n.severity is Severity.WARNING)

    def __iter__(self) -> Iterator[Note]:
        return iter(self.notes)

    def plus(self, more: Iterable[Note], sources: dict[str, str] | None = None) -> Report:
        """Return a report with `more` notes added, sorted by place, repeats dropped."""
        merged = dict.fromkeys([*self.notes, *(n for n, _ in self.accepted), *more])
        ordered = sorted(merged, key=lambda n: (n.place, n.code, n.what))
        held = {n: a for n in ordered if (a := self._acceptance(n)) is not None}
        return Report(
            tuple(n for n in ordered if n not in held),
            {**self.sources, **(sources or {})},
            self.accepts,
            tuple(held.items()),
        )

    def accepting(self, accepts: Iterable[Acceptance]) -> Report:
        """Return the report with what is accepted held back."""
        return replace(self, accepts=tuple(accepts)).plus(())

    def _acceptance(self, note: Note) -> Acceptance | None:
        if note.severity is Severity.ERROR:
            return None
        return next((a for a in self.accepts if a.covers(note)), None)


class PublishError(Exception):
    """Work stopped because a report holds errors; `report` says which.

    `files` are results by name that were made all the same, such as figures that show
    the findings.
    """

    def __init__(self, report: Report, files: Mapping[str, bytes] | None = None) -> None:
        super().__init__(f"{len(report.errors)} error(s)")
        self.report = report
        self.files: dict[str, bytes] = dict(files or {})


def error(
    code: str,
    place: Place,
    what: str,
    *,
    expected: str = "",
    received: str = "",
    help: str = "",
    spot: Spot | None = None,
    page: int = 0,
) -> Note:
    """Return a note that stops the build."""
    return Note(code, Severity.ERROR, place, what, expected, received, help, spot, page=page)


def warning(
    code: str,
    place: Place,
    what: str,
    *,
    expected: str = "",
    received: str = "",
    help: str = "",
    spot: Spot | None = None,
    page: int = 0,
) -> Note:
    """Return a note that the designer should weigh."""
    return Note(code, Severity.WARNING, place, what, expected, received, help, spot, page=page)
