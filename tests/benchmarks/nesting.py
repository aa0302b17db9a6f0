"""How close nested layouts come, and how fast: `python tests/benchmarks/nesting.py [SETS]`.

Prints, for the published sets of irregular shapes in tests/data/packing or for SETS of them,
how much longer than the best known length the layout is that a fabric would get where every
eighth of an inch counts, and the processor's seconds. The sets' own units stand for inches.
Exit code 1 where fewer than five sets are within 6 %.
"""

from __future__ import annotations

import json
import resource
import sys
from fractions import Fraction
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from shapely.geometry import Polygon

from publish.cut.nest import Nest, Shape, faults, in_rows, nest

DATA = Path(__file__).parents[1] / "data" / "packing"
GOAL = 1.06
ENOUGH = 5


def spent() -> float:
    """Return the processor's seconds so far, those of ended processes included."""
    ways = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return sum(resource.getrusage(way).ru_utime for way in ways)


def solved(path: Path) -> tuple[float, float, float]:
    """Return how many times the best known length rows and the layout are, and the seconds."""
    found = json.loads(path.read_text(encoding="utf-8"))
    shapes = [
        Shape(str(i), Polygon(item["polygon"]), item["n"], tuple(item["orientations_deg"]))
        for i, item in enumerate(found["items"])
    ]
    width, best = Fraction(str(found["strip_height"])), found["best_known_length"]
    rows, started = in_rows(shapes, width), spent()
    made = nest(shapes, width)
    seconds = spent() - started
    assert isinstance(rows, Nest) and isinstance(made, Nest) and not faults(shapes, made)
    return float(rows.length) / best, float(made.length) / best, seconds


def main() -> int:
    paths = sorted(DATA.glob("*.json"))
    wanted = sys.argv[1:] or [path.stem for path in paths]
    ratios = []
    for path in (p for p in paths if p.stem in wanted):
        rows, ratio, seconds = solved(path)
        ratios.append(ratio)
        print(
            f"{path.stem:10} rows {rows - 1:6.1%}  nested {ratio - 1:6.1%}  {seconds:5.1f} s",
            flush=True,
        )
    good = sum(ratio <= GOAL for ratio in ratios)
    print(f"{good} of {len(ratios)} sets within {GOAL - 1:.0%} of the best known length")
    return 0 if good >= min(ENOUGH, len(ratios)) else 1


if __name__ == "__main__":
    sys.exit(main())
