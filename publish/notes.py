"""The shape of a problem: where it is, what was expected, what was found, how to mend it.

In: nothing. Out: `Place`, `Note`, `Report`, `PublishError`.
Invariant: nothing here prints, exits or raises for a designer's mistake; stages return
their notes beside their result, and only `cli.py` renders them.

Codes are stable and never reused. Their ranges: R1xx reading, G2xx grading, D3xx
drafting, C4xx cutting, W5xx writing, F6xx drawing, T7xx typesetting, P8xx proof,
X9xx delivering.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from enum import Enum


class Severity(Enum):
    """How much a note matters: an error stops the build, a warning does not."""

    ERROR = "error"
    WARNING = "warning"
    INFO = "info"


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


@dataclass(frozen=True)
class Report:
    """Every note of one run, in the order of their places."""

    notes: tuple[Note, ...] = ()
    sources: dict[str, str] = field(default_factory=dict, compare=False, hash=False)
    """Text of each file that a note points into, for showing the line."""

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
        merged = dict.fromkeys([*self.notes, *more])
        ordered = sorted(merged, key=lambda n: (n.place, n.code, n.what))
        return Report(tuple(ordered), {**self.sources, **(sources or {})})


class PublishError(Exception):
    """Work stopped because a report holds errors; `report` says which.

    `files` are results by name that were made all the same, such as figures that show
    the findings.
    """

    def __init__(self, report: Report, files: Mapping[str, bytes] | None = None) -> None:
        super().__init__(f"{len(report.errors)} error(s)")
        self.report = report
        self.files: dict[str, bytes] = dict(files or {})


def error(code: str, place: Place, what: str, *, expected: str = "", received: str = "",
          help: str = "", spot: Spot | None = None) -> Note:  # fmt: skip
    """Return a note that stops the build."""
    return Note(code, Severity.ERROR, place, what, expected, received, help, spot)


def warning(code: str, place: Place, what: str, *, expected: str = "", received: str = "",
            help: str = "", spot: Spot | None = None) -> Note:  # fmt: skip
    """Return a note that the designer should weigh."""
    return Note(code, Severity.WARNING, place, what, expected, received, help, spot)
