"""A plan made shorter a few strips at a time.

In: a `Problem`, a plan, a way to solve small problems. Out: a plan no longer.
Invariant: the pieces of a few strips are laid out anew by themselves and take the place
of those strips only where they come out shorter; the strips tried are drawn with a fixed
seed, so that every machine tries the same.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import replace
from random import Random

from publish.cut.strips.problem import Pattern, Problem, length_of

Plan = dict[Pattern, int]
FEWEST, MOST = 3, 6
"""Strips taken out at a time."""


def shortened(
    problem: Problem, plan: Plan, solved: Callable[[Problem], Plan], rounds: int, least: int
) -> Plan:
    """Return a plan that is no longer; stop at `least` or after `rounds` tries."""
    rng = Random(len(problem.kinds))
    strips = _single(problem, plan)
    for _ in range(rounds):
        if sum(problem.depths[d] for d, _ in strips) <= least or len(strips) <= FEWEST:
            break
        taken = set(rng.sample(range(len(strips)), min(rng.randint(FEWEST, MOST), len(strips))))
        chosen = [strips[i] for i in sorted(taken)]
        part, kinds = _part(problem, chosen)
        made = solved(part)
        if length_of(part, made) < sum(problem.depths[d] for d, _ in chosen):
            kept = [s for i, s in enumerate(strips) if i not in taken]
            strips = kept + _back(problem, part, kinds, _single(part, made))
    return dict(Counter(strips))


def _single(problem: Problem, plan: Plan) -> list[Pattern]:
    """Return the strips one by one, each holding only pieces that are still wanted."""
    left = list(problem.counts)
    found = []
    for (d, counts), times in sorted(plan.items(), reverse=True):
        for _ in range(times):
            held = tuple(min(n, rest) for n, rest in zip(counts, left, strict=True))
            left = [rest - n for rest, n in zip(left, held, strict=True)]
            if any(held):
                found.append((d, held))
    return found


def _part(problem: Problem, strips: Sequence[Pattern]) -> tuple[Problem, list[int]]:
    """Return the problem of these strips' pieces, and which kinds of the whole they are."""
    totals = [sum(column) for column in zip(*(counts for _, counts in strips), strict=True)]
    kinds = [i for i, n in enumerate(totals) if n]
    own = tuple(replace(problem.kinds[i], count=totals[i]) for i in kinds)
    members = tuple(problem.members[i] for i in kinds)
    return Problem(problem.width, own, problem.across_step, problem.along_step, members), kinds


def _back(
    problem: Problem, part: Problem, kinds: Sequence[int], strips: Sequence[Pattern]
) -> list[Pattern]:
    """Return a part's strips in the terms of the whole problem."""
    found = []
    for d, held in strips:
        counts = [0] * len(problem.kinds)
        for i, n in zip(kinds, held, strict=True):
            counts[i] = n
        found.append((problem.depths.index(part.depths[d]), tuple(counts)))
    return found
