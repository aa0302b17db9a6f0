"""What the page shows: pages, findings, what is being done.

In: messages of a build. Out: the state as plain values, and pictures by their keys.
Invariant: pages change only when a build has ended well up to its pages; findings are
those of the newest try that ended; nothing is called up to date before something was built.
"""

from __future__ import annotations

import threading
import time
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import Any

from publish.notes import Note, Report
from publish.preview.building import Choice, Doing, Ended, Leaf, Leaves, Message, Offer, Picture
from publish.report import concise, summary, visible

FIRST = "Building for the first time ..."


@dataclass
class Shown:
    """The state of the page. Everything goes through `begin`, `take` and `plain`."""

    path: Path
    choice: Choice = field(default_factory=Choice)
    version: int = 0
    """Rises with every change, so that the page can ask for what is newer."""
    built: int = 0
    pages: tuple[Leaf, ...] = ()
    _changed: tuple[int, ...] = ()
    _pictures: dict[str, bytes] = field(default_factory=dict)
    _report: Report | None = None
    _state: str = FIRST
    _doing: str = ""
    _offer: Offer | None = None
    _begun: float = 0.0
    _lock: threading.Lock = field(default_factory=threading.Lock)

    def begin(self) -> None:
        """A build begins."""
        with self._lock:
            self._begun = time.monotonic()
            self._doing = "begin"
            self._state = "Building ..." if self.built or self._report else FIRST
            self.version += 1

    def take(self, message: Message) -> None:
        """Take in what a build tells."""
        with self._lock:
            if isinstance(message, Doing):
                self._doing = message.said
                self._offer = message.offer or self._offer
            elif isinstance(message, Leaves):
                self.pages, self._changed = message.pages, message.changed
                kept = {page.key for page in self.pages}
                self._pictures = {k: p for k, p in self._pictures.items() if k in kept}
            elif isinstance(message, Picture):
                self._pictures[message.key] = message.png
            else:
                self._end(message)
            self.version += 1

    def _end(self, ended: Ended) -> None:
        self._doing = ""
        took = f"{time.monotonic() - self._begun:.1f} s"
        if ended.fault:
            self._report = Report()
            self._state = f"Not built: Foldwork itself failed, which it should not ({ended.fault})."
            return
        self._report = ended.report
        self.built += ended.good
        said = "Up to date." if ended.good else "Not built: mend the findings below."
        self._state = f"{said} {summary(ended.report)}, {took}."

    def known(self) -> tuple[str, ...]:
        """Return the keys of the pages that have pictures."""
        with self._lock:
            return tuple(self._pictures)

    def picture(self, key: str) -> bytes | None:
        """Return the picture of a page."""
        return self._pictures.get(key)

    def plain(self) -> dict[str, Any]:
        """Return the state as JSON can hold it."""
        with self._lock:
            offer = self._offer
            return {
                "version": self.version,
                "name": self.path.name,
                "state": visible(self._state),
                "doing": visible(self._doing),
                "choice": asdict(self.choice),
                "offer": asdict(offer) if offer else None,
                "changed": [at + 1 for at in self._changed],
                "pages": [
                    {**asdict(page), "ready": page.key in self._pictures} for page in self.pages
                ],
                "findings": [self._finding(note) for note in self._report or ()],
            }

    def _finding(self, note: Note) -> dict[str, Any]:
        report = self._report
        lines = (report.sources if report else {}).get(note.place.file, "").splitlines()
        line = note.place.line
        return {
            "severity": note.severity.value,
            "code": note.code,
            "said": concise(note),
            "page": note.page,
            "line": line,
            "source": visible(lines[line - 1].rstrip()) if 1 <= line <= len(lines) else "",
        }
