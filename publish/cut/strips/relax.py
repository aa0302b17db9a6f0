"""The lower bound: the strip problem without whole numbers, by column generation.

In: a `Problem`, the least counts of strips, patterns to start from. Out: `Relaxation`:
a proven lower bound on the length, the prices that prove it, the patterns met.
Invariant: the bound does not rest on floating point. The solver's prices are turned into
whole numbers, the best pattern at those prices is found exactly, the prices are scaled
down until no pattern is worth more than its depth, and the bound is what they add up to.

The model is the cutting-stock one of Gilmore and Gomory (Operations Research 13, 1965;
from memory) with a column for each pattern, plus one row for each depth: at least so
many strips are so deep.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from publish.cut.strips.highs import Column, Linear
from publish.cut.strips.pricing import Run, best_patterns, runs_of
from publish.cut.strips.problem import Pattern, Problem

SCALE = 1 << 26
"""Price units in one grid step."""

ROUNDS = 400
"""Most rounds of column generation; the bound is valid after any number."""


@dataclass(frozen=True)
class Prices:
    """Whole-number prices, `SCALE` to a grid step: no pattern is worth more than its depth.

    `pieces` by kind; `strips[d]` is what a strip of depth `d` earns from the counts.
    """

    pieces: tuple[int, ...]
    strips: tuple[int, ...]
    total: int


@dataclass(frozen=True)
class Relaxation:
    """`bound` in grid steps."""

    bound: Fraction
    prices: Prices
    patterns: tuple[Pattern, ...]


def count_rows(counts: Sequence[int]) -> tuple[int, ...]:
    """Return the depths whose count row is not implied by a deeper one."""
    deeper = [*counts[1:], 0]
    return tuple(d for d, (n, m) in enumerate(zip(counts, deeper, strict=True)) if n > m)


def column_of(problem: Problem, rows: Sequence[int], pattern: Pattern) -> Column:
    """Return the model's column for a pattern."""
    depth, pieces = pattern
    entries = [(i, float(n)) for i, n in enumerate(pieces) if n]
    entries += [(len(pieces) + r, 1.0) for r, d in enumerate(rows) if d <= depth]
    return Column(float(problem.depths[depth]), tuple(entries))


def relax(
    problem: Problem,
    counts: Sequence[int],
    start: Iterable[Pattern],
    enough: Callable[[Fraction], bool],
) -> Relaxation:
    """Return the bound; stop early once `enough` says so."""
    rows, runs = count_rows(counts), runs_of(problem)
    patterns = dict.fromkeys(start)
    lower = [*problem.counts, *(counts[d] for d in rows)]
    model = Linear(lower, [column_of(problem, rows, p) for p in patterns])
    best = Prices((0,) * len(problem.kinds), (0,) * len(problem.depths), 0)
    for _ in range(ROUNDS):
        duals = model.solve().duals
        whole = [max(0, int(d * SCALE)) for d in duals]
        prices, found = _prove(problem, counts, rows, whole, runs)
        if prices.total > best.total:
            best = prices
        fresh = [p for p in found if p not in patterns]
        if not fresh or enough(Fraction(best.total, SCALE)):
            break
        patterns.update(dict.fromkeys(fresh))
        model.add([column_of(problem, rows, p) for p in fresh])
    return Relaxation(Fraction(best.total, SCALE), best, tuple(patterns))


def _prove(
    problem: Problem,
    counts: Sequence[int],
    rows: Sequence[int],
    whole: Sequence[int],
    runs: Sequence[Run],
) -> tuple[Prices, list[Pattern]]:
    """Return prices made safe, and the patterns that were worth more than their depth."""
    kinds = len(problem.kinds)
    pieces, by_row = whole[:kinds], whole[kinds:]
    earned = [
        sum(price for d, price in zip(rows, by_row, strict=True) if d <= depth)
        for depth in range(len(problem.depths))
    ]
    values, patterns = best_patterns(problem, pieces, runs)
    factor, found = Fraction(1), []
    for depth, value, extra, pattern in zip(problem.depths, values, earned, patterns, strict=True):
        if value + extra > depth * SCALE:
            factor = min(factor, Fraction(depth * SCALE, value + extra))
            if (value + extra - depth * SCALE) * 1_000_000 > depth * SCALE:
                found.append(pattern)
    safe = tuple(int(p * factor) for p in pieces)
    safe_rows = [int(p * factor) for p in by_row]
    strips = tuple(
        sum(price for d, price in zip(rows, safe_rows, strict=True) if d <= depth)
        for depth in range(len(problem.depths))
    )
    total = sum(p * n for p, n in zip(safe, problem.counts, strict=True))
    total += sum(price * counts[d] for d, price in zip(rows, safe_rows, strict=True))
    return Prices(safe, strips, total), found
