"""The whole-number model over a list of patterns.

In: a `Problem`, patterns, the least strip counts, a length that is already reached.
Out: the shortest plan that the patterns allow, and whether that is proven.
Invariant: beside the pattern counts, the model holds one whole-number variable for each
depth: how many strips are at least so deep. They are nested, the length is a sum over
them alone, and branching on them settles in a few nodes what the pattern counts would not.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.cut.strips.highs import INFINITY, Column, integer
from publish.cut.strips.problem import Pattern, Problem


def shortest(
    problem: Problem,
    patterns: Sequence[Pattern],
    counts: Sequence[int],
    reached: int,
    nodes: int,
) -> tuple[dict[Pattern, int] | None, bool]:
    """Return the shortest plan found, or None, and whether it is proven the shortest.

    The second value is False when the node limit ended the search first. The length has
    no row of its own: bounds on it would be carried from variable to variable one step
    at a time, for minutes.
    """
    kinds, depths = len(problem.kinds), len(problem.depths)
    columns = [_pattern_column(problem, p) for p in patterns] + _depth_columns(problem, reached)
    lower = [*problem.counts, *([0] * depths), *counts]
    upper = [*([INFINITY] * kinds), *([0] * depths), *([INFINITY] * depths)]
    answer = integer(columns, lower, upper, nodes)
    if answer.values is None:
        return None, answer.proven
    times = {p: round(v) for p, v in zip(patterns, answer.values, strict=False)}
    return {p: n for p, n in times.items() if n}, answer.proven


def _pattern_column(problem: Problem, pattern: Pattern) -> Column:
    depth, pieces = pattern
    most = max(-(-c // n) for c, n in zip(problem.counts, pieces, strict=True) if n)
    entries = tuple((i, float(n)) for i, n in enumerate(pieces) if n)
    return Column(0.0, (*entries, (len(pieces) + depth, 1.0)), float(most))


def _depth_columns(problem: Problem, reached: int) -> list[Column]:
    """Return the nested counts: strips of depth `d` + count of the deeper = count at `d`."""
    kinds, depths = len(problem.kinds), len(problem.depths)
    columns, before = [], 0
    for d, depth in enumerate(problem.depths):
        rows = [(kinds + d, -1.0), (kinds + depths + d, 1.0)]
        if d:
            rows.append((kinds + d - 1, 1.0))
        columns.append(Column(float(depth - before), tuple(rows), float(reached // depth)))
        before = depth
    return columns
