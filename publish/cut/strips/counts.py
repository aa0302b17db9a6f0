"""How many strips at least, for every depth.

In: a `Problem`. Out: for each depth, the least number of strips that are at least so deep
in any plan, and the least length that follows.
Invariant: whole numbers; every figure holds for every two-stage plan. The counting bound
is the one for bin packing by Martello and Toth (Discrete Applied Mathematics 28, 1990;
from memory), applied to the pieces that no shallower strip can hold.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from fractions import Fraction
from math import ceil

from publish.cut.strips.problem import Kind, Problem
from publish.cut.strips.relax import relax


def strip_counts(problem: Problem, strong: bool = False) -> tuple[int, ...]:
    """Return, for each depth of the problem, the least number of strips so deep or deeper.

    `strong` uses the relaxed cutting-stock bound as well, which is never weaker.
    """
    counts: list[int] = []
    known: dict[tuple[tuple[int, int], ...], int] = {(): 0}
    for depth in problem.depths:
        widths: Counter[int] = Counter()
        for kind in problem.kinds:
            if min(b for _, b in kind.options) >= depth:
                widths[min(a for a, _ in kind.options)] += kind.count
        held = tuple(sorted(widths.items()))
        if held not in known:
            least = least_bins(held, problem.width)
            known[held] = max(least, _relaxed_bins(held, problem.width)) if strong else least
        counts.append(known[held])
    return tuple(counts)


def _relaxed_bins(items: Sequence[tuple[int, int]], room: int) -> int:
    kinds = tuple(Kind(((w, 1),), n, w) for w, n in items)
    bins = Problem(room, kinds, Fraction(1), Fraction(1), ())
    start = [
        (0, tuple(min(k.count, room // w) if k is kind else 0 for k in kinds))
        for kind, (w, _) in zip(kinds, items, strict=True)
    ]
    return ceil(relax(bins, (0,), start, lambda bound: False).bound)


def least_bins(items: Sequence[tuple[int, int]], room: int) -> int:
    """Return how many bins of `room` the (width, count) items need at least."""
    best = 0
    for small in sorted({0, *(w for w, _ in items if 2 * w <= room)}):
        alone = sum(n for w, n in items if w > room - small)
        halves = [(w, n) for w, n in items if room - small >= w and 2 * w > room]
        rest = sum(w * n for w, n in items if small <= w and 2 * w <= room)
        shared = sum(n for _, n in halves)
        spare = sum((room - w) * n for w, n in halves)
        best = max(best, alone + shared + max(0, -((spare - rest) // room)))
    return best


def length_from_counts(problem: Problem, counts: Sequence[int]) -> int:
    """Return the least length of strips that meet every count."""
    total, before = 0, 0
    for depth, count in zip(problem.depths, counts, strict=True):
        total += (depth - before) * count
        before = depth
    return total
