"""How well photos of cut paper are traced, measured against motifs that are known.

In: a folder of SVG icons, such as a permissively licensed icon package. Out: shares and
distances, on standard output.
Invariant: every photo is made from its number alone; the truth is the motif before
scissors, camera and light; what is wrong and was not refused is counted by itself.

Run: `python tests/benchmarks/trace.py FOLDER [--count 200] [--first 81] [--width 2400]`.

The tracer's constants were settled on the first 110 motifs of Bootstrap Icons: later ones, and
those of other packages, are the test.

Distances are between the outlines, both ways, in percent of the motif's width, after the
traced motif is laid on the true one by scale and turn alone. Wrong in silence means: other
folds, or farther off than 1 % somewhere, without an error or a warning that says so. The
curves are counted beside those that a general-purpose tracer draws round the same paper.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import time
from collections import Counter
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
import potrace
import shapely

sys.path[:0] = [str(Path(__file__).resolve().parents[2]), str(Path(__file__).resolve().parents[1])]

from trace_photos import Cut, Taking, icon_cut, outlines_apart, photo, traced_whole

from publish import trace
from publish.notes import Place

ROOT = Path(__file__).resolve().parents[2]
FOLDS = (8, 6, 12, 8, 16, 8, 6, 4)
MOST, MEAN = 0.25, 0.08
"""Percent of the width: what the greatest and the mean distance should not pass."""


ALONE = """
import sys, time
from pathlib import Path
import cv2
from publish import trace
from publish.notes import Place
cv2.setNumThreads(1)
data = sys.stdin.buffer.read()
started = time.process_time()
found, _ = trace.traced(data, Place("large.jpg"))
seconds = time.process_time() - started
status = dict(line.split(":") for line in Path("/proc/self/status").read_text().splitlines())
most = int(status["VmHWM"].split()[0]) / 1e3
print(f"{seconds:.1f} s, {most:.0f} MB, traced: {found is not None}")
"""
"""What one photo needs, where nothing else was done before. The most memory is the kernel's
VmHWM: what getrusage tells counts the process that started this one."""

EACH = 12
"""One motif in so many is traced by the other tracer as well, which is slow."""


@dataclass(frozen=True)
class Trial:
    """What became of one photo; distances in percent of the motif's width."""

    name: str
    folds: int
    found: int | None
    codes: tuple[str, ...]
    greatest: float
    mean: float
    seconds: float
    nodes: int
    other_nodes: int
    other_mean: float


def taking(number: int, width: int) -> Taking:
    """Return how the photo of a number is taken."""
    random = np.random.default_rng(1000 + number)
    return Taking(
        tilt=float(random.uniform(0, 25)),
        jitter=float(random.uniform(0, 0.002)),
        blur=float(random.uniform(0.5, 2.0)),
        noise=float(random.uniform(1, 8)),
        width=width,
    )


def general(cut: Cut, unit: float) -> tuple[int, float]:
    """Return the nodes that a general-purpose tracer gives one wedge, at the same scale,
    and its mean distance, from a picture without fault."""
    side = round(2.2 * unit)
    mask = np.zeros((side, side), np.uint8)
    rings = [
        np.round((shapely.get_coordinates(r) + 1.1) * unit * 16).astype(np.int32)
        for part in cut.whole.geoms
        for r in (part.exterior, *part.interiors)
    ]
    cv2.fillPoly(mask, rings, 1, shift=4)
    curves = list(potrace.Bitmap(mask.astype(bool)).trace())
    nodes = sum(2 if s.is_corner else 1 for c in curves for s in c.segments)
    points = []
    for curve in curves:
        at = curve.start_point
        for s in curve.segments:
            t = np.linspace(0, 1, 12)[:, None]
            ends = [
                (p.x, p.y)
                for p in ((at, s.c, s.end_point) if s.is_corner else (at, s.c1, s.c2, s.end_point))
            ]
            p = np.array(ends)
            if s.is_corner:
                points.append(
                    np.where(
                        t < 0.5, p[0] + 2 * t * (p[1] - p[0]), p[1] + (2 * t - 1) * (p[2] - p[1])
                    )
                )
            else:
                u = 1 - t
                points.append(
                    u**3 * p[0] + 3 * u * u * t * p[1] + 3 * u * t * t * p[2] + t**3 * p[3]
                )
            at = s.end_point
    plane = (np.concatenate(points) - 0.5) / unit - 1.1
    gaps = shapely.distance(shapely.points(plane), cut.whole.boundary)
    return round(nodes / cut.folds), float(gaps.mean()) * 50


def tried(path: Path, cut: Cut, number: int, width: int, counted: bool) -> Trial:
    """Trace the photo of one motif; `counted` has the other tracer's nodes counted too."""
    data = photo(cut, number, taking(number, width))
    started = time.process_time()
    found, notes = trace.traced(data, Place(path.name))
    seconds = time.process_time() - started
    codes = tuple(n.code for n in notes)
    if found is None:
        return Trial(path.name, cut.folds, None, codes, 0, 0, seconds, 0, 0, 0)
    greatest, mean = outlines_apart(traced_whole(found), cut)
    other, off = general(cut, found.wedge.unit) if counted else (0, 0.0)
    return Trial(
        path.name,
        cut.folds,
        found.folds,
        codes,
        greatest,
        mean,
        seconds,
        found.drawn.nodes,
        other,
        off,
    )


def told(trials: list[Trial]) -> list[str]:
    """Return the figures of a run."""
    total = len(trials)
    done = [t for t in trials if t.found is not None]
    right = [t for t in done if t.found == t.folds]
    good = [t for t in right if t.greatest <= MOST]
    silent = [
        t
        for t in done
        if (t.found != t.folds or t.greatest > 1) and not {"D377", "D378"} & set(t.codes)
    ]
    refused = Counter(t.codes[0] for t in trials if t.found is None)
    both = [t for t in done if t.other_nodes]
    greatest = np.array([t.greatest for t in right])
    mean = np.array([t.mean for t in right])
    return [
        f"photos               {total}",
        f"traced               {len(done)} ({len(done) / total:.1%})",
        f"folds right          {len(right)} ({len(right) / total:.1%} of all)",
        f"within {MOST} %        {len(good)} ({len(good) / total:.1%} of all)",
        f"mean within {MEAN} %   {int((mean <= MEAN).sum())} ({(mean <= MEAN).sum() / total:.1%})",
        f"greatest distance    {np.median(greatest):.3f} % median, "
        f"{np.percentile(greatest, 95):.3f} % at 95 %, {greatest.max():.3f} % worst",
        f"mean distance        {mean.mean():.3f} % on average, {mean.max():.3f} % worst",
        f"refused              {total - len(done)} {dict(refused)}",
        f"wrong in silence     {len(silent)}",
        f"nodes a wedge        {sum(t.nodes for t in both) / len(both):.1f}; a general-purpose "
        f"tracer {sum(t.other_nodes for t in both) / len(both):.1f}, from a faultless picture, "
        f"{np.mean([t.other_mean for t in both]):.3f} % off on average ({len(both)} motifs)",
        f"processor seconds    {np.median([t.seconds for t in trials]):.2f} median, "
        f"{max(t.seconds for t in trials):.2f} worst",
    ]


def large(cut: Cut) -> str:
    """Return seconds and memory for a photo of 12 megapixels, in a process of its own."""
    data = photo(cut, 1, Taking(width=4000, blur=3))
    run = subprocess.run(
        [sys.executable, "-c", ALONE], input=data, capture_output=True, cwd=ROOT, check=True
    )
    return f"12 megapixels        {run.stdout.decode().strip()}"


def main() -> int:
    """Run the benchmark."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--count", type=int, default=200)
    parser.add_argument("--first", type=int, default=1, help="motif to begin at, from 1")
    parser.add_argument("--width", type=int, default=2400)
    parser.add_argument("--every", action="store_true", help="a line for each photo")
    asked = parser.parse_args()
    paths = sorted(asked.folder.rglob("*-fill.svg")) or sorted(asked.folder.rglob("*.svg"))
    order = np.random.default_rng(3).permutation(len(paths))
    trials: list[Trial] = []
    usable = 0
    for number in order:
        if len(trials) == asked.count:
            break
        cut = icon_cut(paths[number], FOLDS[usable % len(FOLDS)], int(number))
        if cut is None:
            continue
        usable += 1
        if usable < asked.first:
            continue
        cv2.setNumThreads(1)
        trials.append(tried(paths[number], cut, int(number), asked.width, len(trials) % EACH == 0))
        t = trials[-1]
        bad = t.found != t.folds or t.greatest > MOST
        if asked.every or bad:
            print(
                f"{t.name:32} {t.folds:2} {t.found} {t.greatest:.3f} {t.mean:.3f} "
                f"{','.join(t.codes)} {t.seconds:.1f} s",
                flush=True,
            )
    print("\n".join(told(trials)))
    gear = icon_cut(ROOT / "tests" / "data" / "icons" / "gear-fill.svg", 8, 12)
    assert gear is not None
    print(large(gear))
    return 0


if __name__ == "__main__":
    sys.exit(main())
