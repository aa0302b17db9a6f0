"""One fabric's plan: the ways that buy least, the strips, the length to buy.

In: the lettered needs of one fabric and size. Out: `FabricPlan` and its pieces.
Invariant: every combination of ways is weighed by what it makes the maker buy; the plan
that is returned has been laid out and checked piece by piece.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from math import floor

from publish.cut.needs import Need, Way
from publish.cut.strips.exact import Solved, solve
from publish.cut.strips.problem import Part, Problem, length_of, on_grid
from publish.model.cutplan import Cut, FabricPlan, Piece, Strip
from publish.model.pattern import Fabric, Sewing
from publish.units import inches_text, round_up, yards_text

MOST_COMBINATIONS = 32


Rest = tuple[Part, int]
"""A part and how many of it are still to be cut."""


@dataclass(frozen=True)
class Lettered:
    letter: str
    need: Need


def plan_fabric(fabric: Fabric, needs: Sequence[Lettered], sewing: Sewing) -> FabricPlan:
    """Return the plan that buys least over all ways to cut the needs.

    Every need must have a way that fits the usable width.
    """
    best: FabricPlan | None = None
    tried: list[tuple[tuple[Way, ...], FabricPlan]] = []
    usable = fabric.usable_width
    open_ways = [
        [w for w in n.need.ways if w.across <= usable or (w.may_turn and w.along <= usable)]
        for n in needs
    ]
    choices = list(product(*open_ways))[:MOST_COMBINATIONS]
    for ways in choices:
        plan = _plan(fabric, needs, ways, sewing)
        tried.append((ways, plan))
        if best is None or (plan.buy, plan.length) < (best.buy, best.length):
            best = plan
    assert best is not None
    chosen = next(ways for ways, plan in tried if plan is best)
    words = _choices(needs, chosen, tried, best)
    return FabricPlan(**{**vars(best), "choices": words})


def _plan(fabric: Fabric, needs: Sequence[Lettered], ways: Sequence[Way],
          sewing: Sewing) -> FabricPlan:  # fmt: skip
    parts = [
        Part(n.letter, w.across, w.along, w.count, w.may_turn)
        for n, w in zip(needs, ways, strict=True)
    ]
    problem = on_grid(parts, fabric.usable_width)

    def below(length: int) -> int:
        """Return the greatest grid length that buys one step less than `length`."""
        buy = round_up(_needed(length * problem.along_step, fabric, sewing), sewing.purchase_step)
        most = (buy - sewing.purchase_step) * (1 - fabric.shrinkage) - sewing.straightening
        return floor(most / problem.along_step)

    solved = solve(problem, below)
    length = length_of(problem, solved.plan) * problem.along_step
    needed = _needed(length, fabric, sewing)
    area = sum((p.across * p.along * p.count for p in parts), Fraction(0))
    return FabricPlan(
        fabric=fabric.key,
        usable_width=fabric.usable_width,
        pieces=tuple(_piece(n, w) for n, w in zip(needs, ways, strict=True)),
        strips=strips_of(problem, solved),
        length=length,
        needed=needed,
        buy=round_up(needed, sewing.purchase_step),
        buy_metric=round_up(needed, sewing.metric_step),
        bound=solved.bound * problem.along_step,
        waste=1 - area / (length * fabric.usable_width),
    )


def _needed(length: Fraction, fabric: Fabric, sewing: Sewing) -> Fraction:
    """Return a length with the allowances for squaring the end and for shrinking."""
    return (length + sewing.straightening) / (1 - fabric.shrinkage)


def _piece(lettered: Lettered, way: Way) -> Piece:
    need = lettered.need
    return Piece(
        lettered.letter, need.name, need.purpose, need.fabric, need.width, need.length,
        need.count, need.finished_width, need.finished_length, need.exact_width,
        need.exact_length, way.may_turn, way.joined, need.note,
    )  # fmt: skip


def strips_of(problem: Problem, solved: Solved) -> tuple[Strip, ...]:
    """Return a plan's strips in inches, the deepest first, each part in its own letter."""
    left: list[list[Rest]] = [[(p, p.count) for p in parts] for parts in problem.members]
    found: Counter[tuple[Fraction, tuple[Cut, ...]]] = Counter()
    order = sorted(solved.plan, key=lambda p: (-problem.depths[p[0]], [-n for n in p[1]]))
    for d, counts in order:
        depth = problem.depths[d] * problem.along_step
        for _ in range(solved.plan[d, counts]):
            cuts = _take(problem, d, counts, left)
            if cuts:
                found[depth, cuts] += 1
    return tuple(Strip(depth, cuts, n) for (depth, cuts), n in found.items())


def _take(problem: Problem, d: int, counts: Sequence[int],
          left: list[list[Rest]]) -> tuple[Cut, ...]:  # fmt: skip
    """Fill one strip with parts still to be cut; patterns may hold more than are left."""
    cuts = []
    for i, wanted in enumerate(counts):
        across, along = problem.across[d][i], problem.along[d][i]
        if across is None:
            continue
        size = across * problem.across_step, along * problem.along_step
        for j, (part, rest) in enumerate(left[i]):
            taken = min(wanted, rest)
            if taken:
                left[i][j] = part, rest - taken
                wanted -= taken
                turned = size != (part.across, part.along)
                cuts.append(Cut(part.letter, *size, taken, turned))
    return tuple(sorted(cuts, key=lambda c: (-c.along, -c.across, c.letter)))


def _choices(needs: Sequence[Lettered], chosen: Sequence[Way],
             tried: Sequence[tuple[tuple[Way, ...], FabricPlan]],
             best: FabricPlan) -> tuple[str, ...]:  # fmt: skip
    """Say each decision that was made, and what the other way would have cost."""
    said = []
    for i, lettered in enumerate(needs):
        if len(lettered.need.ways) < 2:
            continue
        others = [(plan.buy, ways[i].words) for ways, plan in tried if ways[i] != chosen[i]]
        if not others:
            continue
        buy, words = min(others)
        text = f"{lettered.letter} ({lettered.need.name}) cut {chosen[i].words}"
        if buy > best.buy:
            text += f": buys {yards_text(buy - best.buy)} less than {words}"
        said.append(text)
    return tuple(said)


def checked(plan: FabricPlan) -> FabricPlan:
    """Return a plan after laying it out: raises AssertionError where it does not fit."""
    held: Counter[str] = Counter()
    for strip in plan.strips:
        assert strip.used <= plan.usable_width, inches_text(strip.used)
        for cut in strip.cuts:
            assert cut.along <= strip.depth, inches_text(cut.along)
            held[cut.letter] += cut.count * strip.count
    wanted = {p.letter: p.count * p.joined_from for p in plan.pieces}
    assert held == wanted, (held, wanted)
    assert plan.bound <= plan.length <= plan.needed
    return plan
