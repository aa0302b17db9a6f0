"""What the command prints: reports, and which stage runs.

In: reports and stages. Out: lines on a stream.
Invariant: only `cli` calls it; on what is no terminal nothing moves and nothing is coloured.
"""

from __future__ import annotations

from rich.console import Console
from rich.text import Text

from publish.catalogue import STAGES
from publish.notes import Report
from publish.report import marked, summary


def print_report(report: Report, stream: object, always: bool = False) -> None:
    console = Console(file=stream, soft_wrap=True, highlight=False)  # type: ignore[arg-type]
    styles = {"error": "bold red", "warning": "yellow", "info": "cyan"}
    for note in report:
        text = Text(marked(note, report.sources))
        text.highlight_words([f"{note.severity.value} {note.code}"], styles[note.severity.value])
        console.print(text)
    if always or report.notes or report.accepted:
        console.print(summary(report))


class Progress:
    """Says on standard error which stage runs: one moving line on a terminal."""

    def __enter__(self) -> Progress:
        self._console = Console(stderr=True, highlight=False)
        self._status = self._console.status("") if self._console.is_terminal else None
        if self._status is not None:
            self._status.start()
        return self

    def __exit__(self, *_: object) -> None:
        if self._status is not None:
            self._status.stop()

    def show(self, stage: str, doing: str) -> None:
        line = f"{STAGES.index(stage) + 1}/{len(STAGES)} {stage}: {doing}"
        if self._status is not None:
            self._status.update(line)
        else:
            self._console.print(line, markup=False)
