"""Counts of patterns, as strips of cloth.

In: a `Problem` and a plan that covers its pieces. Out: `Strip`s in inches.
Invariant: every part is cut as often as it is wanted, no more: where patterns hold more
pieces than are left to cut, the surplus is taken out of as few strips as it takes, and a
strip becomes as shallow as what is left in it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from publish.cut.strips.problem import Part, Pattern, Problem
from publish.model.cutplan import Cut, Strip


@dataclass
class _Laid:
    """One strip on the grid: index of its depth, how many of each kind it holds."""

    depth: int
    counts: list[int]
    changed: bool = False


def strips_of(problem: Problem, plan: dict[Pattern, int]) -> tuple[Strip, ...]:
    """Return a plan's strips, the deepest first, like strips as one with their number."""
    laid = _exact(problem, plan)
    laid.sort(key=lambda s: (-problem.depths[s.depth], [-n for n in s.counts]))
    left = [[(part, part.count) for part in parts] for parts in problem.members]
    found: Counter[tuple[Fraction, tuple[Cut, ...]]] = Counter()
    for strip in laid:
        depth = problem.depths[strip.depth] * problem.along_step - problem.squaring
        found[depth, _cuts(problem, strip, left)] += 1
    return tuple(Strip(depth, cuts, n) for (depth, cuts), n in found.items())


def _exact(problem: Problem, plan: dict[Pattern, int]) -> list[_Laid]:
    """Return single strips that hold every kind exactly as often as it is wanted."""
    order = sorted(plan, key=lambda p: (-plan[p], -problem.depths[p[0]], [-n for n in p[1]]))
    laid = [_Laid(d, list(counts)) for d, counts in order for _ in range(plan[d, counts])]
    for i, wanted in enumerate(problem.counts):
        surplus = sum(strip.counts[i] for strip in laid) - wanted
        while surplus > 0:
            # a strip that is changed already, or the last that can give all of it
            _, _, at = max(
                (strip.changed, min(strip.counts[i], surplus), at)
                for at, strip in enumerate(laid)
                if strip.counts[i]
            )
            strip = laid[at]
            taken = min(strip.counts[i], surplus)
            strip.counts[i] -= taken
            strip.changed, surplus = True, surplus - taken
    full = [strip for strip in laid if any(strip.counts)]
    for strip in full:
        needed = (problem.along[strip.depth][i] for i, n in enumerate(strip.counts) if n)
        strip.depth = problem.depths.index(max(needed))
    return full


def _cuts(
    problem: Problem, strip: _Laid, left: Sequence[list[tuple[Part, int]]]
) -> tuple[Cut, ...]:
    """Give the pieces of one strip the letters of parts that are still to be cut."""
    cuts = []
    for i, count in enumerate(strip.counts):
        across = problem.across[strip.depth][i]
        if not count or across is None:
            continue
        wanted = count
        along = problem.along[strip.depth][i] * problem.along_step - problem.squaring
        size = (across * problem.across_step, along)
        for j, (part, rest) in enumerate(left[i]):
            taken = min(wanted, rest)
            if taken:
                left[i][j], wanted = (part, rest - taken), wanted - taken
                turned = size != (part.across, part.along)
                cuts.append(Cut(part.letter, *size, taken, turned))
    return tuple(sorted(cuts, key=lambda c: (-c.along, -c.across, c.letter)))
