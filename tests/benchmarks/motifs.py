"""How many drawings of a folder become motifs, and how long each takes.

In: a folder of SVG drawings. Out: counts and times, on standard output.
Invariant: every drawing takes the whole way of a pattern (read, grade, draft); what is
counted as refused must name its place, and a traceback makes the run fail.

Run: `python tests/benchmarks/motifs.py FOLDER [--folds 8] [--size 14]
[--method fusible]`.

A drawing that was made for nothing of the kind is laid into one wedge as an artist would
lay a leaf along the fold: upright along the line that halves the wedge, and pushed towards
the centre until both folds cut through it. The pattern's own marks (`data-centre`,
`data-start`) say where the folds then lie.
"""

from __future__ import annotations

import argparse
import math
import re
import statistics
import sys
import tempfile
import time
import traceback
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import shapely

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from publish.draft import draft
from publish.draft.drawing import read_drawing
from publish.draft.fill import cloth
from publish.grade import grade
from publish.notes import Note, Severity
from publish.read import load

PUSHED = 0.15
"""Share of the drawing's diagonal by which it is pushed in beyond merely touching the folds."""

RAGGED = 5_000
"""Points of the one outline that is timed by itself."""

PATTERN = """\
title: Bulrush
fabrics:
  linen: {{name: Pale linen, colour: "#f4efe6"}}
  moss: {{name: Deep moss, colour: "#4f6b4a"}}
motifs:
  bulrush:
    drawing: bulrush.svg
    folds: {folds}
    fabric: moss
    method: {method}
    pieces: {pieces}
blocks:
  bulrush: {{ground: linen, motif: bulrush}}
sizes:
  mini: {{block_size: {block:g} in, motif_size: {span:g} in}}
"""


@dataclass(frozen=True)
class Trial:
    """What became of one drawing."""

    name: str
    drafted: bool
    notes: tuple[Note, ...]
    seconds: float
    broke: str = ""

    @property
    def positioned(self) -> bool:
        """Say whether an error names its place in a file, or its place on the motif."""
        errors = [n for n in self.notes if n.severity is Severity.ERROR]
        return bool(errors) and all(n.place.file and n.place.line > 0 for n in errors)


def apex(points: np.ndarray, folds: int) -> tuple[float, float]:
    """Return the centre, below upright points of shape (n, 2), whose folds cut into them."""
    half = math.pi / folds
    across, along = math.cos(half), math.sin(half)
    left = float((-points[:, 0] * across + points[:, 1] * along).max())
    right = float((points[:, 0] * across + points[:, 1] * along).max())
    diagonal = float(np.hypot(*np.ptp(points, axis=0)))
    return (right - left) / (2 * across), (right + left) / (2 * along) - PUSHED * diagonal


def marked(path: Path, folds: int) -> str:
    """Return a drawing's text with the marks of its wedge; unchanged when it shows nothing."""
    text = path.read_text(encoding="utf-8", errors="replace")
    drawing, _ = read_drawing(path, path.name, None, "")
    area = None if drawing is None else cloth(drawing, 0.02)[0]
    if area is None or area.is_empty:
        return text
    x, y = apex(shapely.get_coordinates(area), folds)
    start = -90 - 180 / folds
    marks = f'<svg data-centre="{x!r} {y!r}" data-start="{start!r}" '
    return re.sub(r"<svg\s", lambda _: marks, text, count=1)


@dataclass(frozen=True)
class Setting:
    """How every drawing of a run is made up."""

    folds: int
    span: float
    method: str


def made_up(name: str, text: str, folder: Path, setting: Setting) -> Trial:
    """Try a drawing, and once more with the number of pieces that a finding tells.

    A drawing of loose parts opens into loose pieces; the designer who means them says
    how many they are.
    """
    first = tried(name, text, folder, setting, 1)
    loose = [n for n in first.notes if n.code == "D330"]
    found = re.match(r"\d+", loose[0].received) if loose else None
    if found is None or int(found[0]) > 100:
        return first
    again = tried(name, text, folder, setting, int(found[0]))
    return max(first, again, key=lambda t: t.seconds) if again.broke else again


def tried(name: str, text: str, folder: Path, setting: Setting, pieces: int) -> Trial:
    """Take one marked drawing the whole way to a draft."""
    (folder / "bulrush.svg").write_text(text, encoding="utf-8")
    pattern_file = folder / "pattern.yaml"
    pattern_file.write_text(
        PATTERN.format(
            folds=setting.folds,
            span=setting.span,
            block=setting.span + 2,
            method=setting.method,
            pieces=pieces,
        )
    )
    started = time.process_time()
    notes: tuple[Note, ...] = ()
    made = None
    try:
        pattern, notes, _ = load(pattern_file)
        if pattern is not None:
            size, more = grade(pattern, "mini")
            notes += more
            if size is not None:
                made, more = draft(pattern, size)
                notes += more
    except Exception:  # the very thing that is counted here
        return Trial(name, False, notes, time.process_time() - started, traceback.format_exc())
    return Trial(name, made is not None, notes, time.process_time() - started)


def ragged(folds: int, count: int = RAGGED) -> str:
    """Return a wedge with an outline of many points, each a little off a smooth curve."""
    step = 2 * math.pi / folds
    turns = np.linspace(0, step, count - 1)
    rough = np.random.default_rng(5).uniform(-0.4, 0.4, count - 1)
    reach = 70 + 25 * np.cos(3 * np.pi * turns / step) + rough
    points = np.stack([reach * np.cos(turns), reach * np.sin(turns)], axis=1)
    text = " ".join(f"{x:.4f},{y:.4f}" for x, y in [(0.0, 0.0), *points])
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" data-centre="0 0" '
        f'data-start="0"><polygon points="{text}"/></svg>'
    )


def told(trials: list[Trial]) -> Iterable[str]:
    """Return the figures of a run, a line each."""
    total = len(trials)
    drafted = [t for t in trials if t.drafted]
    clean = [t for t in drafted if not any(n.severity is Severity.ERROR for n in t.notes)]
    refused = [t for t in trials if not t.drafted and not t.broke]
    seconds = [t.seconds for t in trials]
    slowest = max(trials, key=lambda t: t.seconds)
    errors = Counter(
        code for t in trials for code in {n.code for n in t.notes if n.severity is Severity.ERROR}
    )
    yield f"drawings              {total}"
    yield f"import and draft      {len(drafted)} ({100 * len(drafted) / total:.1f} %)"
    yield f"  and build           {len(clean)} ({100 * len(clean) / total:.1f} %)"
    yield f"  with a positioned error on the motif    {len(drafted) - len(clean)}"
    yield f"refused, with a place {sum(t.positioned for t in refused)} of {len(refused)}"
    yield f"tracebacks            {sum(bool(t.broke) for t in trials)}"
    yield (
        f"processor seconds     {statistics.median(seconds):.2f} median, "
        f"{slowest.seconds:.2f} worst ({slowest.name})"
    )
    yield "errors by code        " + (", ".join(f"{c} {n}" for c, n in errors.most_common()) or "-")


def main() -> int:
    """Run the benchmark; exit code 1 for a traceback or an error without a place."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--folds", type=int, choices=(4, 6, 8, 12, 16), default=8)
    parser.add_argument(
        "--method", choices=("needle-turn", "prepared edge", "fusible"), default="fusible"
    )
    parser.add_argument("--size", type=float, default=14.0, help="inches across the motif")
    asked = parser.parse_args()
    paths = sorted(asked.folder.rglob("*.svg"))
    if not paths:
        parser.error(f"no drawing in {asked.folder}")
    setting = Setting(asked.folds, asked.size, asked.method)
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch)
        trials = [made_up(p.name, marked(p, asked.folds), folder, setting) for p in paths]
        rough = tried("ragged", ragged(asked.folds), folder, setting, 1)
    print("\n".join(told(trials)))
    spent = f"{rough.seconds:.2f} processor seconds"
    print(f"{RAGGED} ragged points  {spent}, drafted: {rough.drafted}")
    bad = [t for t in (*trials, rough) if t.broke or not (t.drafted or t.positioned)]
    for trial in bad:
        print(f"{trial.name}: {trial.broke or [str(n.place) for n in trial.notes]}")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
