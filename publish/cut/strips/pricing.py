"""The best pattern for given prices of the pieces: a bounded knapsack, exactly.

In: a `Problem` and whole-number prices. Out: for every depth the greatest total price a
strip can hold, and a pattern that reaches it; or every pattern near the best.
Invariant: integer arithmetic throughout, so "no pattern is worth more" is a proof.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from publish.cut.strips.problem import Pattern, Problem

Table = npt.NDArray[np.int64]


@dataclass(frozen=True)
class Run:
    """Depths `first` up to `last` (excluded), in which a kind takes one same width."""

    kind: int
    width: int
    first: int
    last: int


def runs_of(problem: Problem) -> tuple[Run, ...]:
    """Return, kind by kind, the stretches of depths with one width."""
    runs = []
    for i in range(len(problem.kinds)):
        start = 0
        widths = [row[i] for row in problem.across]
        for d in range(1, len(widths) + 1):
            if d == len(widths) or widths[d] != widths[start]:
                width = widths[start]
                if width is not None:
                    runs.append(Run(i, width, start, d))
                start = d
    return tuple(runs)


def batches(copies: int) -> list[int]:
    """Split a number of copies into batches that reach every number up to it."""
    sizes, size = [], 1
    while copies > 0:
        sizes.append(min(size, copies))
        copies -= sizes[-1]
        size *= 2
    return sizes


def best_patterns(
    problem: Problem, prices: Sequence[int], runs: Sequence[Run]
) -> tuple[list[int], list[Pattern]]:
    """Return, for each depth, the greatest total price and a pattern that has it."""
    table = np.zeros((len(problem.depths), problem.width + 1), dtype=np.int64)
    steps = []
    for run in runs:
        price = prices[run.kind]
        if price <= 0:
            continue
        most = min(problem.kinds[run.kind].count, problem.width // run.width)
        for batch in batches(most):
            width, rows = batch * run.width, table[run.first : run.last]
            gained = rows[:, : problem.width + 1 - width] + batch * price
            taken = gained > rows[:, width:]
            np.copyto(rows[:, width:], gained, where=taken)
            steps.append((run, batch, width, taken))
    room = np.full(len(problem.depths), problem.width)
    counts = np.zeros((len(problem.depths), len(problem.kinds)), dtype=np.int64)
    for run, batch, width, taken in reversed(steps):
        here = room[run.first : run.last] - width
        fits = here >= 0
        took = fits & taken[np.arange(run.last - run.first), np.where(fits, here, 0)]
        counts[run.first : run.last, run.kind] += batch * took
        room[run.first : run.last] -= width * took
    values = [int(v) for v in table[:, problem.width]]
    patterns = [(d, tuple(int(c) for c in counts[d])) for d in range(len(problem.depths))]
    return values, patterns


@dataclass
class Budget:
    """How much a listing may still do; `short` once it could not be finished."""

    patterns: int
    steps: int
    short: bool = False

    def step(self) -> bool:
        """Count one step of the search; return whether it may go on."""
        self.steps -= 1
        self.short = self.short or self.steps < 0
        return not self.short

    def keep(self) -> bool:
        """Count one pattern; return whether it may be kept."""
        self.patterns -= 1
        self.short = self.short or self.patterns < 0
        return not self.short


def patterns_near_best(
    problem: Problem, prices: Sequence[int], depth: int, least: int, budget: Budget
) -> list[Pattern]:
    """Return the full patterns of one depth whose total price is at least `least`.

    Full: no further piece that is still wanted fits beside. Patterns that no piece needs
    at their whole depth are left out; a shallower strip holds the same pieces. When the
    budget runs out, it says so and the list is not complete.
    """
    widths = problem.across[depth]
    fitting = [i for i, w in enumerate(widths) if w is not None]
    fitting.sort(key=lambda i: (-prices[i] * 4096 // (widths[i] or 1), i))
    items = [(i, widths[i] or 0, prices[i]) for i in fitting]
    most = [min(problem.counts[i], problem.width // w) for i, w, _ in items]
    reach = _suffix_tables(problem.width, items, most)
    fill = [
        sum(m * w for m, (_, w, _) in zip(most[j:], items[j:], strict=True))
        for j in range(len(items) + 1)
    ]
    deep = {i for i in fitting if problem.along[depth][i] == problem.depths[depth]}
    counts, found = [0] * len(problem.kinds), []

    def search(j: int, room: int, value: int, spare: int) -> None:
        # `spare` is the width of the narrowest piece left out so far: a full strip must
        # end with less room than that.
        if value + reach[j][room] < least or room - fill[j] >= spare or not budget.step():
            return
        if j == len(items):
            if any(counts[i] for i in deep) and budget.keep():
                found.append((depth, tuple(counts)))
            return
        i, w, price = items[j]
        for n in range(min(most[j], room // w), -1, -1):
            counts[i] = n
            left = min(spare, w) if n < problem.counts[i] else spare
            search(j + 1, room - n * w, value + n * price, left)
        counts[i] = 0

    search(0, problem.width, 0, problem.width + 1)
    return found


def _suffix_tables(
    width: int, items: Sequence[tuple[int, int, int]], most: Sequence[int]
) -> list[list[int]]:
    """Return, for each position, the best price of the items from there on, by room."""
    table = np.zeros(width + 1, dtype=np.int64)
    tables = [table.tolist()]
    for (_, w, price), copies in zip(reversed(items), reversed(most), strict=True):
        for batch in batches(copies):
            gained = table[: width + 1 - batch * w] + batch * price
            table[batch * w :] = np.maximum(table[batch * w :], gained)
        tables.append(table.tolist())
    return tables[::-1]
