"""A first plan: first fit in order of falling depth.

In: a `Problem`. Out: a plan (how often each pattern is cut) that holds every piece.
Invariant: the same problem always gives the same plan. Its length is an upper bound that
the exact method starts from; the rule is FFDH (Coffman, Garey, Johnson and Tarjan, SIAM
J. Computing 9, 1980; from memory).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable

from publish.cut.strips.problem import Kind, Pattern, Problem, length_of

Way = tuple[int, int]

RULES: tuple[Callable[[Kind], Way], ...] = (
    lambda kind: min(kind.options, key=lambda way: way[1]),  # lying: as shallow as it goes
    lambda kind: max(kind.options, key=lambda way: way[1]),  # standing: as deep as it goes
)


def first_fit(problem: Problem) -> dict[Pattern, int]:
    """Return the shortest of the first-fit plans with pieces lying or standing."""
    plans = [_first_fit(problem, rule, turn) for rule in RULES for turn in (False, True)]
    return min(plans, key=lambda plan: length_of(problem, plan))


def _first_fit(problem: Problem, rule: Callable[[Kind], Way], adapt: bool) -> dict[Pattern, int]:
    """Place pieces one by one in the first strip with room.

    With `adapt`, a piece takes the narrowest way that the strip's depth allows instead
    of the way that set its turn in the order.
    """
    ways = [rule(kind) for kind in problem.kinds]
    order = sorted(range(len(ways)), key=lambda i: (-ways[i][1], -ways[i][0], i))
    strips: list[tuple[int, list[int], list[int]]] = []  # depth index, [room], counts
    for i in order:
        for _ in range(problem.kinds[i].count):
            for depth, room, counts in strips:
                width = problem.across[depth][i] if adapt else ways[i][0]
                if width is not None and width <= room[0]:
                    room[0] -= width
                    counts[i] += 1
                    break
            else:
                counts = [0] * len(ways)
                counts[i] = 1
                depth = problem.depths.index(ways[i][1])
                strips.append((depth, [problem.width - ways[i][0]], counts))
    return dict(Counter((depth, tuple(counts)) for depth, _, counts in strips))
