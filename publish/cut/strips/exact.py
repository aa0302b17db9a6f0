"""The shortest plan, or one that is proven to buy no more than the shortest.

In: a `Problem` and `below`, which says for a length the greatest length that would buy
less. Out: `Solved`: a plan, a proven lower bound, the patterns met on the way.
Invariant: the plan is never longer than the first-fit plan, the bound never above the
shortest length. Limits are numbers of patterns and search nodes, so that every machine
finds the same plan.

Method: a first plan; a bound from the relaxation; whole-number plans from the patterns
of the relaxation. Where the plan and the bound still buy different lengths, every
pattern that a plan buying less could contain is listed: its reduced cost must lie in the
window between the bound and that length. The whole-number model over the full list then
finds a better plan or proves that there is none.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from publish.cut.strips.counts import length_from_counts, strip_counts
from publish.cut.strips.first_fit import first_fit
from publish.cut.strips.master import shortest
from publish.cut.strips.neighbours import shortened
from publish.cut.strips.pricing import Budget, patterns_near_best
from publish.cut.strips.problem import Pattern, Problem, length_of
from publish.cut.strips.relax import SCALE, Relaxation, relax

Plan = dict[Pattern, int]


@dataclass(frozen=True)
class Limits:
    """How hard to try: patterns listed, steps of each listing, nodes of each search, how
    many searches over listed patterns, and how often a few strips are laid out anew when
    all of that has ended open."""

    patterns: int = 800
    steps: int = 60_000
    quick_nodes: int = 20
    nodes: int = 40
    searches: int = 1
    rounds: int = 0


@dataclass(frozen=True)
class Solved:
    """A plan and the proven least length, in grid steps."""

    plan: Plan
    bound: int
    patterns: tuple[Pattern, ...]


class Sums:
    """Which lengths are sums of strip depths, up to a limit."""

    def __init__(self, depths: Sequence[int], limit: int) -> None:
        bits, mask = 1, (1 << (limit + 1)) - 1
        for depth in depths:
            step = depth
            while step <= limit:
                bits |= (bits << step) & mask
                step *= 2
        self._bits, self._limit = bits, limit

    def least_from(self, length: int) -> int:
        """Return the least sum that is not below `length`; `length` beyond the limit."""
        rest = self._bits >> max(0, length)
        return max(0, length) + ((rest & -rest).bit_length() - 1 if rest else 0)


def solve(problem: Problem, below: Callable[[int], int], limits: Limits | None = None) -> Solved:
    """Return a plan that buys as little as can be proven within the limits."""
    search = _Search(problem, below, limits or Limits())
    if not search.done:
        search.relax()
    if not search.done:
        search.improve(search.limits.quick_nodes)
    if not search.done:
        search.close()
    if not search.done and search.limits.rounds:
        search.shorten()
    return Solved(search.plan, search.bound, tuple(search.patterns))


class _Search:
    """The state of one solve: the best plan and the best bound so far."""

    def __init__(self, problem: Problem, below: Callable[[int], int], limits: Limits) -> None:
        self.problem, self.below, self.limits = problem, below, limits
        self.plan = first_fit(problem)
        self.patterns = dict.fromkeys(self.plan)
        self.counts = strip_counts(problem)
        self.sums = Sums(problem.depths, self.length)
        self.bound = 0
        self.raise_bound(problem.area_bound)
        self.raise_bound(Fraction(length_from_counts(problem, self.counts)))
        self.relaxation: Relaxation | None = None
        self.settled = False

    @property
    def length(self) -> int:
        return length_of(self.problem, self.plan)

    @property
    def target(self) -> int:
        """The greatest length that buys less than the plan."""
        return self.below(self.length)

    @property
    def done(self) -> bool:
        return self.target < self.bound

    def raise_bound(self, bound: Fraction) -> None:
        self.bound = max(self.bound, self.sums.least_from(ceil(bound)))

    def relax(self) -> None:
        self.counts = strip_counts(self.problem, strong=True)
        self.raise_bound(Fraction(length_from_counts(self.problem, self.counts)))
        if self.done:
            return
        target = self.target
        start = [*self.patterns, *_plain(self.problem)]
        self.relaxation = relax(
            self.problem,
            self.counts,
            start,
            lambda bound: self.sums.least_from(ceil(bound)) > target,
        )
        self.patterns = dict.fromkeys(self.relaxation.patterns)
        self.raise_bound(self.relaxation.bound)

    def improve(self, nodes: int) -> None:
        """Look for a shorter plan over the patterns met; note if the search was complete."""
        found, self.settled = shortest(
            self.problem, list(self.patterns), self.counts, self.length, nodes
        )
        if found is not None and length_of(self.problem, found) < self.length:
            self.plan = found

    def close(self) -> None:
        """Meet plan and bound over every pattern in the window, as far as the limits go.

        The patterns listed suffice for every plan up to `most`: when the best plan over
        them is longer, no plan is that short.
        """
        before = -1, -1
        for _ in range(self.limits.searches):
            if self.done or (self.length, self.bound) == before:
                return
            before = self.length, self.bound
            most, listed = self._window(self.target)
            fresh = [p for p in listed if p not in self.patterns]
            if fresh:
                self.patterns.update(dict.fromkeys(fresh))
                self.improve(self.limits.nodes)
            if self.settled:
                self.raise_bound(Fraction(min(self.length, most + 1)))

    def shorten(self) -> None:
        """Lay out a few strips at a time anew, each time as well as small limits allow."""
        small = Limits(patterns=600, steps=20_000, quick_nodes=10, nodes=30)

        def solved(part: Problem) -> Plan:
            return solve(part, lambda length: length - 1, small).plan

        self.plan = shortened(self.problem, self.plan, solved, self.limits.rounds, self.bound)

    def _window(self, most: int) -> tuple[int, list[Pattern]]:
        """Return every pattern that a plan of length up to `most` can hold.

        Where they are too many, the window over the bound is halved until they are not,
        and the length that it still reaches is returned in place of `most`; the list is
        then filled up with patterns from the wider window, the same number of each depth.
        """
        assert self.relaxation is not None
        total = self.relaxation.prices.total
        gap = most * SCALE - total
        listed = self._within(gap)
        if listed is not None:
            return most, listed
        while listed is None:
            wider, gap = gap, gap // 2
            listed = self._within(gap) if gap else []
        return (total + gap) // SCALE, [*listed, *self._some(wider)]

    def _within(self, gap: int) -> list[Pattern] | None:
        """Return the patterns with a reduced cost up to `gap`, None if they are too many."""
        budget, found = Budget(self.limits.patterns, self.limits.steps), []
        for d in range(len(self.problem.depths)):
            found += self._near(d, gap, budget)
            if budget.short:
                return None
        return found

    def _some(self, gap: int) -> list[Pattern]:
        """Return a few patterns of each depth with a reduced cost up to `gap`."""
        share = len(self.problem.depths)
        found = []
        for d in range(share):
            budget = Budget(self.limits.patterns // share, self.limits.steps // share)
            found += self._near(d, gap, budget)
        return found

    def _near(self, d: int, gap: int, budget: Budget) -> list[Pattern]:
        assert self.relaxation is not None
        prices = self.relaxation.prices
        least = self.problem.depths[d] * SCALE - prices.strips[d] - gap
        return patterns_near_best(self.problem, prices.pieces, d, least, budget)


def _plain(problem: Problem) -> list[Pattern]:
    """Return strips full of one kind, in each depth the kind itself can have."""
    found = []
    for i, kind in enumerate(problem.kinds):
        for across, along in kind.options:
            counts = [0] * len(problem.kinds)
            counts[i] = min(kind.count, problem.width // across)
            found.append((problem.depths.index(along), tuple(counts)))
    return found
