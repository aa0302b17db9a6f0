"""What the command prints: reports, and which stage runs.

In: reports, stages, outcomes. Out: lines on a stream.
Invariant: only `cli` calls it; on what is no terminal nothing moves and nothing is coloured.
"""

from __future__ import annotations

import threading
from collections.abc import Mapping, Sequence
from pathlib import Path

from rich.console import Console
from rich.live import Live
from rich.text import Text

from publish.catalogue import STAGES
from publish.notes import Note, Report, shown_path
from publish.report import marked, summary, visible, visible_lines
from publish.studio.outcome import Outcome
from publish.workers import fresh_context


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


class Together:
    """Says on standard error how each of several patterns gets on: a line when one is done,
    and on a terminal a moving line for each that runs."""

    def __init__(self, count: int) -> None:
        self._count, self._done = count, 0
        self._console = Console(stderr=True, highlight=False)
        self._running: dict[Path, str] = {}
        self._over: set[Path] = set()
        self._turn = threading.Lock()
        self._live = Live(console=self._console) if self._console.is_terminal else None
        self.heard = fresh_context().SimpleQueue() if self._live is not None else None
        """The queue in which stages are told; None where nobody would see them."""

    def __enter__(self) -> Together:
        if self._live is not None:
            self._live.start()
            threading.Thread(target=self._listen, daemon=True).start()
        return self

    def __exit__(self, *_: object) -> None:
        if self._live is not None:
            with self._turn:
                self._running.clear()
                self._show()
            self._live.stop()

    def _listen(self) -> None:
        while self.heard is not None:
            path, stage, doing = self.heard.get()
            number = STAGES.index(stage) + 1
            with self._turn:
                if path not in self._over:  # the last word of a process may come late
                    said = f"{called(path)}: {number}/{len(STAGES)} {stage}: {doing}"
                    self._running[path] = said
                self._show()

    def _show(self) -> None:
        if self._live is not None:
            self._live.update(Text("\n".join(self._running.values())))

    def ended(self, outcome: Outcome) -> None:
        """Say that one is done."""
        self._done += 1
        width = len(str(self._count))
        said = f"{self._done:>{width}}/{self._count} {called(outcome.path)}: {_end(outcome)}"
        with self._turn:
            self._over.add(outcome.path)
            self._running.pop(outcome.path, None)
            self._console.print(visible(said), markup=False, soft_wrap=True)
            self._show()


def called(path: Path) -> str:
    """Return what lines call a pattern: its folder, or the file without its ending."""
    return path.resolve().name if path.is_dir() else path.stem


def _end(outcome: Outcome) -> str:
    pages = f", {outcome.pages} pages in {outcome.pdfs} PDFs" if outcome.pdfs else ""
    took = f" ({outcome.seconds:.1f} s)" if outcome.seconds else ""
    return f"{outcome.state.value}{pages}, {summary(outcome.report)}{took}"


def print_outcomes(outcomes: Sequence[Outcome], stream: object) -> None:
    """Print what was found in each pattern, each finding once, and what failed."""
    console = Console(file=stream, soft_wrap=True, highlight=False)  # type: ignore[arg-type]
    shown: set[Note] = set()
    for outcome in outcomes:
        notes = tuple(n for n in outcome.report if n not in shown)
        shown |= set(notes)
        if notes:
            print_report(Report(notes, outcome.report.sources), stream)
        if outcome.failure:
            console.print(visible(f"{called(outcome.path)}: Foldwork itself failed:"), markup=False)
            console.print(visible_lines(outcome.failure), markup=False)


def table(outcomes: Sequence[Outcome]) -> str:
    """Return what became of each pattern as lines of a table."""
    rows: list[tuple[str, ...]] = [
        ("pattern", "result", "PDFs", "pages", "errors", "warnings", "seconds", "where")
    ]
    for o in outcomes:
        counts = (o.pdfs, o.pages, len(o.report.errors), len(o.report.warnings))
        took = f"{o.seconds:.1f}" if o.seconds else ""
        where = shown_path(o.target) if o.target is not None else ""
        rows.append((called(o.path), o.state.value, *(str(n or "") for n in counts), took, where))
    widths = [max(len(row[n]) for row in rows) for n in range(len(rows[0]))]
    left = (0, 1, 7)
    lines = (
        "  ".join(
            c.ljust(w) if n in left else c.rjust(w)
            for n, (c, w) in enumerate(zip(row, widths, strict=True))
        )
        for row in rows
    )
    return "\n".join(visible(line.rstrip()) for line in lines)


def write(folder: Path, files: Mapping[str, bytes], among: str = "") -> None:
    """Write the files whose names begin with `among`, which they lose."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, content in files.items():
        if name.startswith(among):
            (folder / name.removeprefix(among)).write_bytes(content)
