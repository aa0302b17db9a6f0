"""How good and how fast cutting plans are: `python tests/benchmarks/strips.py [LISTS]`.

Prints length, bound, gap and seconds for the published instances, for LISTS made-up cut
lists (default 200) and for the demo patterns. Exit code 1 where a goal is missed: proven
or within one purchase step on 95 % of the lists, median under 0.5 s, none over 3 s; no
instance longer than the computed value.
"""

from __future__ import annotations

import statistics
import sys
import time
from dataclasses import replace
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2])]

from cut_instances import SHOP, Whole, cut_list, instances

from publish.cut.strips import Limits, lay_out
from publish.pipeline import prepare

LIMITS = Limits(patterns=1500, nodes=60, searches=2)
ROUNDS = {"fixed": 1500, "rotation": 60}
"""For the published instances, which have up to 60 kinds and count every unit: how often a
few strips are laid out anew where the search ends open. Turning makes a round dear."""
PROJECTS = Path(__file__).parents[2] / "projects"


def main() -> int:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    good = [published(), made_up(count)]
    demos()
    return 0 if all(good) else 1


def published() -> bool:
    """Lay out every instance to the last unit; return whether none is worse."""
    worse = 0
    for one in instances():
        started = time.perf_counter()
        limits = replace(LIMITS, rounds=ROUNDS[one.name.split()[-1]])
        laid = lay_out(one.parts, one.width, Whole(), simple=False, limits=limits)
        spent = time.perf_counter() - started
        worse += laid.length > one.best
        mark = "worse" if laid.length > one.best else "better" if laid.length < one.best else ""
        print(f"{one.name:28} length {float(laid.length):7g}  bound {float(laid.bound):7g}  "
              f"computed {one.best:5} {'proven' if one.proven else 'open':6} "
              f"{spent:6.2f} s {mark}", flush=True)  # fmt: skip
    print(f"{worse} instances longer than the computed value")
    return worse == 0


def made_up(count: int) -> bool:
    """Lay out made-up cut lists by the shop's steps; return whether the goals are met."""
    spent, close = [], 0
    for seed in range(count):
        width, parts = cut_list(seed)
        started = time.perf_counter()
        laid = lay_out(parts, width, SHOP)
        spent.append(time.perf_counter() - started)
        close += SHOP.buy(laid.length) - SHOP.buy(laid.bound) <= SHOP.step
    median, worst = statistics.median(spent), max(spent)
    print(f"{count} cut lists: {close / count:.1%} proven or within one step, "
          f"median {median:.3f} s, worst {worst:.2f} s")  # fmt: skip
    return close >= 0.95 * count and median < 0.5 and worst < 3


def demos() -> None:
    """Print the plans of every demo pattern."""
    for folder in sorted(p.parent for p in PROJECTS.glob("*/pattern.yaml")):
        for size, plan in prepare(folder).plans.items():
            for fabric in plan.fabrics.values():
                print(f"{folder.name} {size} {fabric.fabric}: length {float(fabric.length):g} in, "
                      f"bound {float(fabric.bound):g} in, gap {float(fabric.gap):g} in, "
                      f"waste {float(fabric.waste):.0%}")  # fmt: skip


if __name__ == "__main__":
    sys.exit(main())
