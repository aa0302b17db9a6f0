"""How quickly sewing orders are found: `python tests/benchmarks/order.py`.

Prints seconds for tops of 100, 400 and 1600 patches, of many blocks and of one, straight
and on point, with how many kinds of unit they have; then every traditional block with its
patches, units and set-in seams. Nothing here passes or fails.
"""

from __future__ import annotations

import sys
import time
from itertools import pairwise
from pathlib import Path

TESTS = Path(__file__).parents[1]
sys.path[:0] = [str(TESTS / "draft"), str(TESTS), str(TESTS.parent)]

from draft_builders import grid
from draft_tops import every, library, set_in, top

from publish.draft.assembly import assemble
from publish.draft.sewn import sewn
from publish.draft.topmap import top_patches
from publish.model.block import Block
from publish.model.draft import Unit


def main() -> None:
    print(f"{'top':44} {'patches':>7} {'map':>6} {'order':>6} {'kinds':>6} {'sewn':>6}")
    star = library()["sawtooth star"]
    for side in (3, 5, 10):
        timed(f"sawtooth star, {side} x {side}", star, columns=side, rows=side)
    for side in (2, 4, 8):
        timed(
            f"sawtooth star on point, {side} x {side}",
            star,
            columns=side,
            rows=side,
            setting="on point",
            setting_fabric="moss",
        )
    for side in (10, 20, 40):
        cells = [
            [("linen", "moss", "sand")[(x * x + 3 * y * y + x * y) % 3] for x in range(side)]
            for y in range(side)
        ]
        timed(f"one block of {side} x {side} squares", grid("plain", cells))
    print(f"\n{'block':28} {'patches':>7} {'units':>6} {'set in':>6} {'seconds':>8}")
    for name, block in library().items():
        unit, _, seconds, _ = ordered(block)
        units = len({u.kind for u in every(unit) if u.parts})
        print(f"{name:28} {len(unit.patches):7} {units:6} {set_in(unit):6} {seconds:8.3f}")


def timed(what: str, block: Block, **spec: object) -> None:
    unit, mapped, seconds, again = ordered(block, **spec)
    kinds = len({u.kind for u in every(unit)})
    print(f"{what:44} {len(unit.patches):7} {mapped:6.2f} {seconds:6.2f} {kinds:6} {again:6.2f}")


def ordered(block: Block, **spec: object) -> tuple[Unit, float, float, float]:
    """Return a tree, and the seconds for its map, its order, and sewing it together again."""
    pattern, size = top(block, **spec)
    times = [time.perf_counter()]
    patches, _ = top_patches(pattern, size)
    times.append(time.perf_counter())
    unit, _ = assemble(pattern, size, patches)
    times.append(time.perf_counter())
    sewn(unit)
    times.append(time.perf_counter())
    first, second, third = (b - a for a, b in pairwise(times))
    return unit, first, second, third


if __name__ == "__main__":
    main()
