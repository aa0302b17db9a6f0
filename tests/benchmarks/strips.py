"""How good and how fast cutting plans are: `python tests/benchmarks/strips.py [LISTS] [PARTS]`.

Prints, for the published instances, for LISTS made-up cut lists (default 200) and for the
demo patterns, or for PARTS of these (`published`, `lists`, `demos`): the length in whole
strips and in sections, the bound that no layout is below, what lies between, and the
processor's seconds; for the demos also what sections save, and how much of what is bought
no allowance counts as its own. Exit code 1 where a goal is missed: whole strips proven or
within one purchase step on 95 % of the lists, median under 0.5 s, none over 2 s; no
instance longer than the computed value.
"""

from __future__ import annotations

import statistics
import sys
import time
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2])]

from cut_instances import SHOP, Whole, cut_list, instances

from publish.cut.fabric import effort
from publish.cut.purchase import purchase_of
from publish.cut.strips import Layout, Limits, Part, Steps, floor_of, into_sections, lay_out
from publish.model.cutplan import FabricPlan
from publish.model.pattern import Fabric, Sewing
from publish.pipeline import prepare
from publish.units import YARD, round_up

LIMITS = Limits(patterns=1500, nodes=60, searches=2)
ROUNDS = {"fixed": 1500, "rotation": 60}
"""For the published instances, which have up to 60 kinds and count every unit: how often a
few strips are laid out anew where the search ends open. Turning makes a round dear."""
PROJECTS = Path(__file__).parents[2] / "projects"
SQUARING = Fraction(1, 10)


@dataclass(frozen=True)
class Run:
    """One list laid out: whole strips, sections, the bound, seconds for each."""

    whole: Layout
    parted: Layout
    floor: Fraction
    spent: tuple[float, float]

    def line(self) -> str:
        whole, parted = float(self.whole.gross), float(self.parted.gross)
        return (
            f"whole {whole:8.2f}  sections {parted:8.2f}  bound {float(self.floor):8.2f}  "
            f"gap {parted - float(self.floor):6.2f}  {self.spent[0]:6.2f} + {self.spent[1]:.2f} s"
        )


def run(
    parts: Sequence[Part],
    width: Fraction,
    steps: Steps,
    squaring: Fraction,
    limits: Limits | None = None,
    simple: bool = True,
) -> Run:
    """Lay a list out, and time it."""
    started = time.process_time()
    whole = lay_out(parts, width, steps, simple, limits, squaring)
    between = time.process_time()
    parted = into_sections(parts, width, steps, whole)
    spent = between - started, time.process_time() - between
    return Run(whole, parted, floor_of(parts, width, squaring), spent)


def main() -> int:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    parts = {"published": published, "lists": lambda: made_up(count), "demos": demos}
    good = [parts[name]() for name in sys.argv[2:] or parts]
    return 0 if all(good) else 1


def published() -> bool:
    """Lay out every instance to the last unit; return whether none is worse."""
    worse = 0
    for one in instances():
        limits = replace(LIMITS, rounds=ROUNDS[one.name.split()[-1]])
        made = run(one.parts, one.width, Whole(), Fraction(0), limits, simple=False)
        length = made.whole.length
        worse += length > one.best
        mark = "worse" if length > one.best else "better" if length < one.best else ""
        print(
            f"{one.name:28} {made.line()}  computed {one.best:5} "
            f"{'proven' if one.proven else 'open':6} {mark}",
            flush=True,
        )
    print(f"{worse} instances longer than the computed value")
    return worse == 0


def made_up(count: int) -> bool:
    """Lay out made-up cut lists by the shop's steps; return whether the goals are met."""
    runs = []
    for seed in range(count):
        width, parts = cut_list(seed)
        runs.append(run(parts, width, SHOP, SQUARING, effort(parts)))
        print(f"list {seed:3}  {runs[-1].line()}", flush=True)
    close = sum(SHOP.buy(r.whole.gross) - SHOP.buy(r.whole.bound) <= SHOP.step for r in runs)
    least = sum(SHOP.buy(r.parted.gross) == SHOP.buy(r.floor) for r in runs)
    bought = [
        sum(SHOP.buy(laid.gross) for laid in some) / YARD
        for some in ([r.whole for r in runs], [r.parted for r in runs])
    ]
    spent = [sum(r.spent) for r in runs]
    median, worst = statistics.median(spent), max(spent)
    print(
        f"{count} cut lists: {close / count:.1%} in whole strips proven or within one step; "
        f"{float(bought[0]):g} yd in whole strips, {float(bought[1]):g} yd in sections; "
        f"{least / count:.1%} buy what the bound for every layout buys; "
        f"median {median:.3f} s, worst {worst:.2f} s"
    )
    return close >= 0.95 * count and median < 0.5 and worst < 2


def parts_of(plan: FabricPlan) -> list[Part]:
    """Return what a fabric's strips hold."""
    turns = {p.letter: p.may_turn for p in plan.pieces}
    held: Counter[tuple[str, Fraction, Fraction]] = Counter()
    for strip in plan.strips:
        for c in strip.held:
            size = (c.along, c.across) if c.turned else (c.across, c.along)
            held[c.letter, *size] += c.count * strip.count
    return [Part(*size, n, turns[size[0]]) for size, n in held.items()]


def demos() -> bool:
    """Print the plans of every demo pattern, and what sections save."""
    saved = Fraction(0)
    for folder in sorted(p.parent for p in PROJECTS.glob("*/pattern.yaml")):
        work = prepare(folder)
        assert work.pattern is not None
        for size, plan in work.plans.items():
            for key, fabric in plan.fabrics.items():
                if fabric.precut is None and not any(s.placements for s in fabric.strips):
                    name = f"{folder.name} {size} {key}"
                    saved += _demo(name, fabric, work.pattern.fabrics[key], work.pattern.sewing)
    print(f"sections save {float(saved / YARD):g} yd over the demos")
    return True


def _demo(name: str, plan: FabricPlan, fabric: Fabric, sewing: Sewing) -> Fraction:
    """Print one plan; return what its sections save against whole strips of the same pieces."""
    purchase = purchase_of(fabric, sewing)
    parts = parts_of(plan)
    made = run(parts, plan.usable_width, purchase, purchase.squaring, effort(parts))
    before = purchase.buy(made.whole.gross)
    fixed = round_up(plan.length + sewing.straightening, sewing.purchase_step)
    print(
        f"{name:26} {made.line()}  buys {float(before / YARD):g} yd whole, "
        f"{float(plan.buy / YARD):g} yd; to spare beyond every allowance "
        f"{float(plan.buy - plan.needed):.2f} in, with straightening alone "
        f"{float(fixed - plan.needed):.2f} in",
        flush=True,
    )
    return before - plan.buy


if __name__ == "__main__":
    sys.exit(main())
