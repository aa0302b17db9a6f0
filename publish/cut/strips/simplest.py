"""Fewest distinct strips among the plans that buy the same length.

In: a `Problem`, the patterns met, a plan, and the length that is paid for anyway. Out: a
plan no longer than that, with as few distinct patterns as were found.
Invariant: the plan that is returned covers every piece and is within the length; the one
that was given stands unless the other is simpler.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, islice

from publish.cut.strips.highs import INFINITY, Column, integer
from publish.cut.strips.problem import Pattern, Problem, length_of

POOL = 160
"""Patterns looked at."""
NODES = 10


def simplest(
    problem: Problem, patterns: Sequence[Pattern], plan: dict[Pattern, int], room: int
) -> dict[Pattern, int]:
    """Return the plan with the fewest distinct patterns, then the shortest, within `room`.

    `room` is in grid steps.
    """
    if len(plan) == 1:
        return plan
    pool = list(dict.fromkeys([*plan, *_simple(problem), *patterns]))
    pool = pool[: max(POOL, len(plan))]
    columns, lower, upper = _model(problem, pool, room)
    start = [float(plan.get(p, 0)) for p in pool] + [float(p in plan) for p in pool]
    answer = integer(columns, lower, upper, NODES, start)
    if answer.values is None:
        return plan
    times = {p: round(v) for p, v in zip(pool, answer.values, strict=False)}
    found = {p: n for p, n in times.items() if n}
    return min(plan, found, key=lambda p: (len(p), length_of(problem, p)))


def _model(
    problem: Problem, pool: Sequence[Pattern], room: int
) -> tuple[list[Column], list[float], list[float]]:
    """Return columns and row limits: how often each pattern is cut, and whether it is."""
    kinds = len(problem.kinds)
    times, chosen = [], []
    for j, (depth, counts) in enumerate(pool):
        most = max(-(-c // n) for c, n in zip(problem.counts, counts, strict=True) if n)
        most = min(most, room // problem.depths[depth])
        entries = [(i, float(n)) for i, n in enumerate(counts) if n]
        entries += [(kinds, float(problem.depths[depth])), (kinds + 1 + j, -1.0)]
        # the length only breaks ties: all of it weighs less than one pattern more
        cost = problem.depths[depth] / (room + 1)
        times.append(Column(cost, tuple(entries), float(most)))
        chosen.append(Column(1.0, ((kinds + 1 + j, float(most)),), 1.0))
    lower = [*problem.counts, 0, *([0] * len(pool))]
    upper = [*([INFINITY] * kinds), room, *([INFINITY] * len(pool))]
    return [*times, *chosen], [float(v) for v in lower], [float(v) for v in upper]


def _simple(problem: Problem) -> Iterator[Pattern]:
    """Yield strips of one kind, then strips of two kinds filled as far as they go."""
    yield from (p for d in range(len(problem.depths)) for p in _filled(problem, d, 1))
    pairs = (p for d in range(len(problem.depths)) for p in _filled(problem, d, 2))
    yield from islice(pairs, POOL // 2)


def _filled(problem: Problem, depth: int, kinds: int) -> Iterator[Pattern]:
    """Yield strips of one depth filled with one kind, or with one kind and then another."""
    widths = problem.across[depth]
    here = [i for i, w in enumerate(widths) if w is not None]
    for chosen in combinations(here, kinds):
        for order in {chosen, chosen[::-1]}:
            counts, room = [0] * len(widths), problem.width
            for i in order:
                width = widths[i] or 1
                counts[i] = min(problem.counts[i], room // width)
                room -= counts[i] * width
            deep = any(
                n and problem.along[depth][i] == problem.depths[depth] for i, n in enumerate(counts)
            )
            if deep and all(counts[i] for i in chosen):
                yield depth, tuple(counts)
