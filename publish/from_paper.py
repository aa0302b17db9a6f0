"""What `foldwork new --from` writes: a pattern whose motif is the cut paper of a photo.

In: the folder to make, a photo or scan. Out: the pattern's files, the photo among them.
Invariant: the pattern builds, by the method of appliqué that its motif allows.
"""

from __future__ import annotations

from pathlib import Path

from publish import pipeline, trace
from publish.draft.unfold import unfold
from publish.notes import Place, PublishError, Report
from publish.starting import key_of, must_be_empty, start_studio, starter_files, written
from publish.trace import Traced


def start_from(
    folder: Path, photo: Path, folds: int | None = None, paper: str | None = None
) -> tuple[list[Path], Report]:
    """Write a pattern whose motif is the cut paper of a photo, which is kept beside it.

    `folds` and `paper` are as for `trace.traced`. Returns the paths, and what tracing found.
    Raises PublishError when no motif can be traced, FileExistsError when the folder exists
    and is not empty.
    """
    must_be_empty(folder)
    data = photo.read_bytes()
    found, notes = trace.traced(data, Place(str(photo)), folds, paper)
    report = Report().plus(notes)
    if found is None:
        raise PublishError(report)
    kept = {
        f"{key_of(folder)}.svg": trace.drawing(found, photo.name).encode(),
        f"paper{photo.suffix.lower()}": data,
        "paper-traced.png": trace.overlay(found),
    }
    pieces = _pieces(found)
    begun = start_studio(folder)
    paths: list[Path] = []
    for method in ("needle-turn", "fusible"):
        more = f"    pieces: {pieces}\n" if pieces > 1 else ""
        more += f"    method: {method}\n" if method != "needle-turn" else ""
        text = starter_files(folder, found.folds, more)["pattern.yaml"]
        paths = written(folder, {"pattern.yaml": text.encode(), **kept})
        if not pipeline.examine(folder).report.errors:
            break
    return [*begun, *paths], report


def _pieces(found: Traced) -> int:
    """Return how many pieces a motif falls into when it is opened."""
    return len(unfold(found.outline.area, found.folds, "mirror").geoms)
