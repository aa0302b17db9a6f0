"""How long pictures of quilts take: `python tests/benchmarks/render.py [PIXELS...]`.

Prints, for each size of each demo, processor seconds to compute the relief in its light and
to colour it (what each further colourway costs), at 2000 and at 600 pixels unless others are
given; then the most memory that the process has held. Drafting is not counted. Nothing here
passes or fails.
"""

from __future__ import annotations

import resource
import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT)]

from publish import draft, grade, read
from publish.render import own_colours
from publish.render.faces import face_of, picture, scene_of
from publish.render.subject import subject


def main(pixels: list[int]) -> None:
    print(f"{'size':22} {'pixels':>6} {'relief':>7} {'colour':>7} {'both':>7}")
    for path in sorted((ROOT / "projects").glob("*/pattern.yaml")):
        pattern, _, _ = read.load(path)
        assert pattern is not None
        for key in pattern.sizes:
            size, _ = grade.grade(pattern, key)
            assert size is not None
            shapes, _ = draft.draft(pattern, size)
            assert shapes is not None
            for side in pixels:
                started = time.process_time()
                shown = subject(pattern, size, shapes)
                face = face_of(shown, scene_of(shown), (side, side))
                lit = time.process_time()
                picture(face, own_colours(pattern), scene_of(shown), (side, side))
                done = time.process_time()
                print(
                    f"{pattern.key + ' ' + key:22} {side:6} {lit - started:7.2f} "
                    f"{done - lit:7.2f} {done - started:7.2f}",
                    flush=True,
                )
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    kilo = 1024 if sys.platform != "darwin" else 1
    print(f"most memory: {most * kilo / 2**20:.0f} MB")


if __name__ == "__main__":
    main([int(n) for n in sys.argv[1:]] or [2000, 600])
