"""What has become of each of several patterns, as one process tells another.

In: nothing. Out: frozen types that can be pickled.
Invariant: only what is shown or compared; no page and no drawing goes between processes.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import Enum
from pathlib import Path

from publish.notes import Acceptance, Note, Place, Report


class State(Enum):
    """How far a pattern got."""

    BUILT = "built"
    CHECKED = "checked"
    UNCHANGED = "unchanged"
    ERRORS = "not built"
    FAILED = "failed"
    """Foldwork itself failed."""


class ClusterError(ValueError):
    """Other machines cannot do the work; the message says why."""


@dataclass(frozen=True)
class Named:
    """A text of a pattern's, where it stands, and what goes with it, such as a colour."""

    text: str
    place: Place
    more: str = ""


@dataclass(frozen=True)
class Glance:
    """What reading alone says of a pattern: enough to compare it with others."""

    path: Path
    key: str = ""
    """Of its folder of results."""
    studio: str = ""
    house: str = ""
    """The studio's file, as places name it."""
    title: Named | None = None
    stock_number: Named | None = None
    barcode: Named | None = None
    fabrics: tuple[Named, ...] = ()
    """Names and colours, those of colourways included."""
    accepts: tuple[Acceptance, ...] = ()
    sources: Mapping[str, str] = field(default_factory=dict)
    changed: tuple[str, ...] = ("a build",)
    """What its finished set was not made from; empty where it is up to date."""
    readable: bool = False


@dataclass(frozen=True)
class Outcome:
    """One pattern's end."""

    path: Path
    state: State
    report: Report
    key: str = ""
    target: Path | None = None
    pdfs: int = 0
    pages: int = 0
    seconds: float = 0.0
    failure: str = ""
    """The traceback, where Foldwork itself failed."""
    files: Mapping[str, bytes] = field(default_factory=dict)
    """Of a check: the pages and figures that were asked for."""

    def plus(self, notes: tuple[Note, ...], sources: Mapping[str, str]) -> Outcome:
        """Return the outcome with findings that comparing patterns has brought."""
        return replace(self, report=self.report.plus(notes, dict(sources)))

    def bad(self, strict: bool = False) -> bool:
        """Return whether the command has to say that something is wrong."""
        stopped = self.state in (State.ERRORS, State.FAILED)
        return stopped or bool(self.report.errors or (strict and self.report.warnings))
