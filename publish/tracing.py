"""What `foldwork trace` makes of a photo: a drawing, an overlay, the report.

In: the path of a picture. Out: files by name, findings, lines to print.
Invariant: nothing is written until `write`; a file that is there already is only replaced
when it was written by this command, or not at all.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from publish import trace
from publish.model.book import PAPERS
from publish.notes import Place, Report

MARK = "traced from"
"""Words in the drawing that this command wrote."""


@dataclass(frozen=True)
class TracedPhoto:
    """The files made from a photo, by name, and what is told of it."""

    report: Report
    files: dict[str, bytes]
    lines: list[str]

    def write(self, folder: Path) -> list[Path]:
        """Write the files and return their paths; FileExistsError for a drawing by hand."""
        paths = [folder / name for name in self.files]
        for path in paths:
            if path.suffix == ".svg" and path.exists() and MARK not in _text(path):
                raise FileExistsError(f"{path} exists already and was not traced; use --out")
        if paths:
            folder.mkdir(parents=True, exist_ok=True)
        for path in paths:
            path.write_bytes(self.files[path.name])
        return paths


def trace_photo(
    path: Path, folds: int | None, paper: str | None = None, width: Fraction | None = None
) -> TracedPhoto:
    """Return what a photo gives; OSError when it cannot be opened.

    `paper` is the key of the sheet that lies beside the cut, `width` the opened motif's in
    inches as it was measured with a ruler.
    """
    place = Place(str(path))
    found, notes = trace.traced(path.read_bytes(), place, folds, paper)
    report = Report().plus(notes)
    if found is None:
        return TracedPhoto(report, {}, [])
    if width is not None:
        found, more = trace.measured(found, width, place)
        kept = [n for n in notes if n.code != trace.UNREAD]
        report = Report().plus([*kept, *more])
    files = {
        f"{path.stem}.svg": trace.drawing(found, path.name).encode(),
        f"{path.stem}-traced.png": trace.overlay(found),
    }
    return TracedPhoto(report, files, trace.told(found))


def write_target(folder: Path, paper: str) -> Path:
    """Write the page of markers for a paper and return its path."""
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / f"target-{paper}.pdf"
    path.write_bytes(trace.target(PAPERS[paper]))
    return path


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8", errors="replace")
