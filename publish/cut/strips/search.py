"""A shorter plan with sections: strips, sections within a strip, strips within a section.

In: a `Problem` without squaring, what a strip costs beyond its depth, a plan to better.
Out: the shortest plan that was found.
Invariant: the plan holds every piece exactly as often as it is wanted, and is never longer
than the one to better. Limits are counts, so that every machine finds the same plan.

Method: the cutting-stock model with strips of sections as columns, priced by `stacks`.
Strips are settled one at a time, those that the relaxed model uses whole first, and what
is left is priced anew; every strip met on the way is then offered to the whole-number
model.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from publish.cut.strips.highs import INFINITY, Column, Linear, integer
from publish.cut.strips.parted import Parted, trimmed, width_of
from publish.cut.strips.problem import Problem
from publish.cut.strips.stacks import Stacks

SCALE = 1 << 20
WORTH_IT = Fraction(1, 1000)
"""Steps along by which a new strip must better the prices."""


@dataclass(frozen=True)
class Effort:
    """Rounds of pricing at first and after each strip settled, in all; nodes of the
    whole-number model."""

    first: int = 12
    each: int = 2
    most: int = 24
    nodes: int = 15


LARGE = 2_000_000
"""Numbers in the tables of one pricing from which fewer rounds are tried: sums of depths by
steps across by depths. Pieces of six inches among borders of ten feet, on a grid of an
eighth, come to a half of it."""

LIGHT = Effort(3, 1, 5, 5)
"""What is tried then, so that the time stays bounded too."""

Plan = list[Parted]


def with_sections(
    problem: Problem,
    squaring: Fraction,
    start: Iterable[Parted],
    enough: Callable[[Fraction], bool],
    effort: Effort | None = None,
) -> Plan | None:
    """Return a plan, or None where none was found that is shorter than `start`.

    `squaring` is in steps along, as is the length that `enough` is asked about: whether
    a plan so long need not be bettered.
    """
    return _Search(problem, squaring, list(start), enough, effort).run()


class _Search:
    def __init__(
        self,
        problem: Problem,
        squaring: Fraction,
        start: Plan,
        enough: Callable[[Fraction], bool],
        effort: Effort | None,
    ) -> None:
        self.problem, self.squaring = problem, squaring
        self.enough = enough
        self.kinds = len(problem.kinds)
        self.stacks = Stacks(problem)
        self.effort = effort or (LIGHT if self.stacks.size > LARGE else Effort())
        self.pool: dict[tuple[int, ...], Parted] = {}
        self.start = self.exact(start)
        self.rounds = 0
        for parted in self.start:
            self.keep(parted)

    def run(self) -> Plan | None:
        best = self.start
        settled = self.settle()
        if self.cost(settled) < self.cost(best):
            best = settled
        if not self.enough(self.cost(best)):
            whole = self.whole(best)
            best = whole if self.cost(whole) < self.cost(best) else best
        return best if self.cost(best) < self.cost(self.start) else None

    def cost(self, plan: Plan) -> Fraction:
        return sum((p.depth + self.squaring for p in plan), Fraction(0))

    def keep(self, parted: Parted) -> bool:
        """Keep a strip unless one as shallow that holds the same is known."""
        counts = parted.counts(self.kinds)
        known = self.pool.get(counts)
        if known is not None and known.depth <= parted.depth:
            return False
        self.pool[counts] = parted
        return True

    def exact(self, plan: Iterable[Parted], left: Sequence[int] | None = None) -> Plan:
        """Return strips that hold every kind no more often than it is left."""
        rest, found = list(self.problem.counts if left is None else left), Plan()
        for parted in plan:
            for part in trimmed(self.problem, parted, rest):
                found.append(part)
                rest = [n - m for n, m in zip(rest, part.counts(self.kinds), strict=True)]
        return found

    def settle(self) -> Plan:
        """Return a plan made by settling strips one at a time."""
        left, plan = list(self.problem.counts), Plan()
        rounds = self.effort.first
        while any(left):
            settled = self.exact(self.relaxed(left, rounds), left)
            for parted in settled:
                self.keep(parted)
                left = [n - m for n, m in zip(left, parted.counts(self.kinds), strict=True)]
            plan += settled
            rounds = self.effort.each
        return plan

    def relaxed(self, left: Sequence[int], rounds: int) -> Plan:
        """Return strips to settle: those that the relaxed model of what is `left` uses
        whole, or the one that it uses most."""
        columns = self.fitting(left)
        model = Linear([float(n) for n in left], [self.column(p) for p in columns])
        answer = model.solve()
        for _ in range(rounds):
            if self.rounds >= self.effort.most:
                break
            self.rounds += 1
            fresh = self.priced(answer.duals, left)
            if not fresh:
                break
            columns += fresh
            model.add([self.column(p) for p in fresh])
            answer = model.solve()
        used = sorted(zip(answer.values or (), columns, strict=True), key=lambda u: -u[0])
        whole = [p for x, p in used for _ in range(int(x + 1e-6))]
        return whole or [used[0][1]]

    def fitting(self, left: Sequence[int]) -> Plan:
        """Return the strips met so far, none with more of a kind than is left."""
        found: dict[tuple[int, ...], Parted] = {}
        for held, parted in self.pool.items():
            fits = all(n <= m for n, m in zip(held, left, strict=True))
            for part in [parted] if fits else trimmed(self.problem, parted, left):
                counts = held if fits else part.counts(self.kinds)
                if counts not in found or part.depth < found[counts].depth:
                    found[counts] = part
        for part in found.values():
            self.keep(part)
        return list(found.values())

    def priced(self, duals: Sequence[float], left: Sequence[int]) -> Plan:
        """Return strips that are worth more than their depth and that were not known."""
        prices = [max(0, int(d * SCALE)) for d in duals]
        found, over = Plan(), dict[int, Parted]()
        many: set[int] = set()
        table = self.stacks.priced(prices, left)
        for parted in table.better(lambda depth: (depth + self.squaring + WORTH_IT) * SCALE):
            parts = trimmed(self.problem, parted, left)
            found += [part for part in parts if self.keep(part)]
            counts = parted.counts(self.kinds)
            more = {i for i, n in enumerate(counts) if n > left[i]}
            if more and len(parts) == 1:
                over[parted.depth] = parts[0]
                many |= more
        others = [0 if i in many else price for i, price in enumerate(prices)]
        return found + self.filled(over, others, left)

    def filled(self, over: dict[int, Parted], prices: Sequence[int], left: Sequence[int]) -> Plan:
        """Return strips that lost pieces in excess, with others in their place."""
        if not over:
            return []
        table, found = self.stacks.priced(prices, left), Plan()
        for depth, part in over.items():
            room = self.problem.width - sum(width_of(self.problem, r) for r in part.sections)
            more = Parted(depth, (*part.sections, *table.sections(depth, room)))
            found += [full for full in trimmed(self.problem, more, left) if self.keep(full)]
        return found

    def column(self, parted: Parted, most: float = INFINITY) -> Column:
        counts = parted.counts(self.kinds)
        entries = tuple((i, float(n)) for i, n in enumerate(counts) if n)
        return Column(float(parted.depth + self.squaring), entries, most)

    def whole(self, best: Plan) -> Plan:
        """Return the shortest plan of the strips met, as far as the search goes."""
        strips = list(self.pool.values())
        index = {id(p): j for j, p in enumerate(strips)}
        start = [0.0] * len(strips)
        for parted in best:
            known = self.pool[parted.counts(self.kinds)]
            start[index[id(known)]] += 1
        columns = [self.column(p, float(max(self.problem.counts))) for p in strips]
        answer = integer(
            columns,
            [float(n) for n in self.problem.counts],
            [INFINITY] * self.kinds,
            self.effort.nodes,
            start,
        )
        if answer.values is None:
            return best
        return self.exact(
            parted
            for times, parted in zip(answer.values, strips, strict=True)
            for _ in range(round(times))
        )
