"""How long pictures take and what they need: `python tests/benchmarks/render.py [PIXELS]`.

Prints, for each size of each demo, processor seconds to compute the relief in its light, to
colour it (what each further colourway costs) and to write the file; at 600, 2000 and 2640
pixels (a preview, a cover on a screen, a cover in print) unless others are given. After each
the most memory that the process has held so far, and how much of it came with the libraries
and the patterns. At last, a booklet's pictures made, and taken from where they are kept.
Drafting is not counted. Nothing here passes or fails.
"""

from __future__ import annotations

import io
import resource
import sys
import time
from pathlib import Path
from tempfile import TemporaryDirectory

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT)]

from PIL import Image

from publish import draft, grade, read
from publish.kept import Store
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.render import Shown, for_booklet, own_colours
from publish.render.faces import face_of, picture, scene_of
from publish.render.subject import subject

Made = tuple[Pattern, dict[str, Size], dict[str, Draft]]


def main(pixels: list[int]) -> None:
    demos = [made(path) for path in sorted((ROOT / "projects").glob("*/pattern.yaml"))]
    print(f"libraries and patterns: {held():.0f} MB")
    print(f"{'size':22} {'pixels':>6} {'relief':>7} {'colour':>7} {'file':>7} {'all':>7}")
    for side in sorted(pixels):
        for pattern, sizes, drafts in demos:
            for key, size in sizes.items():
                times = timed(pattern, size, drafts[key], side)
                said = " ".join(f"{t:7.2f}" for t in (*times, sum(times)))
                print(f"{pattern.key + ' ' + key:22} {side:6} {said}", flush=True)
        print(f"most memory up to {side} pixels: {held():.0f} MB", flush=True)
    for demo in demos:
        keep(demo)


def made(path: Path) -> Made:
    """Return a demo with all its sizes drafted."""
    pattern, _, _ = read.load(path)
    assert pattern is not None
    sizes, drafts = {}, {}
    for key in pattern.sizes:
        size, _ = grade.grade(pattern, key)
        assert size is not None
        shapes, _ = draft.draft(pattern, size)
        assert shapes is not None
        sizes[key], drafts[key] = size, shapes
    return pattern, sizes, drafts


def timed(pattern: Pattern, size: Size, shapes: Draft, side: int) -> tuple[float, float, float]:
    """Return processor seconds for the relief, the colours and the file of one picture."""
    started = time.process_time()
    shown = subject(pattern, size, shapes)
    face = face_of(shown, scene_of(shown), (side, side))
    lit = time.process_time()
    found = picture(face, own_colours(pattern), scene_of(shown), (side, side))
    coloured = time.process_time()
    Image.fromarray(found).save(io.BytesIO(), "JPEG", quality=88, subsampling=0)
    return lit - started, coloured - lit, time.process_time() - coloured


def keep(demo: Made) -> None:
    """Print what a booklet's pictures take when they are made and when they are kept."""
    pattern, sizes, _ = demo
    first = next(iter(sizes))
    seconds = []
    with TemporaryDirectory() as folder:
        for _ in range(2):
            started = time.process_time()
            found = for_booklet(*demo, Shown(list(sizes)[-1], first), Store(Path(folder)))
            seconds.append(time.process_time() - started)
    size = sum(len(p.data) for p in found.values()) / 2**20
    print(
        f"{pattern.key:22} {len(found)} pictures of a booklet, {size:.1f} MB: "
        f"{seconds[0]:.2f} s made, {seconds[1]:.2f} s kept",
        flush=True,
    )


def held() -> float:
    """Return the most memory that this process has held, in MB."""
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return most * (1024 if sys.platform != "darwin" else 1) / 2**20


if __name__ == "__main__":
    main([int(n) for n in sys.argv[1:]] or [600, 2000, 2640])
