"""A lower bound for every way of laying the pieces, whatever the cuts.

In: a `Problem` without squaring. Out: a length in grid steps.
Invariant: no layout of the pieces, straight or turned by right angles, is shorter. The
bound does not rest on floating point: the solver's prices are turned into whole numbers,
the best bar at those prices is found exactly, and the prices are divided by its worth.

A line across the cloth meets pieces that lie side by side: a bar. The bars of a layout
are as long together as the layout, and meet each piece along all of it. Relaxed, that
is the cutting-stock model with the pieces' lengths along the cloth as what is wanted
(the bar relaxation; Scheithauer, Operations Research Proceedings 1998, from memory).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

import numpy as np

from publish.cut.strips.highs import Column, Linear
from publish.cut.strips.pricing import batches
from publish.cut.strips.problem import Problem

SCALE = 1 << 26
ROUNDS = 60
"""Most rounds of column generation; the bound is valid after any number."""

Bar = tuple[tuple[int, int], ...]
"""Which of the ways to lie it meets, and how many pieces of each."""


@dataclass(frozen=True)
class _Way:
    """One way in which a kind may lie."""

    kind: int
    across: int
    along: int
    most: int
    """Side by side."""


def every_plan(problem: Problem) -> Fraction:
    """Return a length that no layout of the pieces is below, in steps along."""
    ways = [
        _Way(i, a, b, min(kind.count, problem.width // a))
        for i, kind in enumerate(problem.kinds)
        for a, b in kind.options
    ]
    bars: dict[Bar, None] = {((j, way.most),): None for j, way in enumerate(ways)}
    model = Linear(_wanted(problem, ways), [*_lying(ways), *map(_column, bars)])
    best = Fraction(0)
    for _ in range(ROUNDS):
        duals = model.solve().duals
        prices = [max(0, int(d * SCALE)) for d in duals[: len(ways)]]
        worth, bar = _best_bar(problem.width, ways, prices)
        if worth:
            best = max(best, Fraction(_total(problem, ways, prices), worth))
        if bar in bars or worth <= SCALE:
            break
        bars[bar] = None
        model.add([_column(bar)])
    return best


def reckoned(problem: Problem) -> Fraction:
    """Return such a length without a model: pieces too wide to lie beside one of at least
    `narrow` count as the whole width, and those below `narrow` not at all.

    The best of these over all `narrow` is the bound by dual feasible functions of
    Martello and Toth (Fekete and Schepers, Mathematical Programming 91, 2001; from memory).
    """
    width = problem.width
    narrow = {0, *(a for k in problem.kinds for a, _ in k.options if 2 * a <= width)}
    return max(
        Fraction(
            sum(
                kind.count * min(_counted(a, least, width) * b for a, b in kind.options)
                for kind in problem.kinds
            ),
            width,
        )
        for least in narrow
    )


def _counted(across: int, narrow: int, width: int) -> int:
    if across > width - narrow:
        return width
    return across if across >= narrow else 0


def _wanted(problem: Problem, ways: Sequence[_Way]) -> list[float]:
    """Return what each row needs: bars as long as the pieces that lie so, then all pieces."""
    return [*(0.0 for _ in ways), *(float(kind.count) for kind in problem.kinds)]


def _lying(ways: Sequence[_Way]) -> list[Column]:
    """Return the columns that say how many pieces of a kind lie in each way."""
    return [
        Column(0.0, ((j, -float(way.along)), (len(ways) + way.kind, 1.0)))
        for j, way in enumerate(ways)
    ]


def _column(bar: Bar) -> Column:
    return Column(1.0, tuple((j, float(n)) for j, n in bar))


def _total(problem: Problem, ways: Sequence[_Way], prices: Sequence[int]) -> int:
    """Return what all pieces are worth, each lying in the way that is worth least."""
    return sum(
        kind.count * min(prices[j] * w.along for j, w in enumerate(ways) if w.kind == i)
        for i, kind in enumerate(problem.kinds)
    )


def _best_bar(width: int, ways: Sequence[_Way], prices: Sequence[int]) -> tuple[int, Bar]:
    """Return the greatest price of pieces side by side, and a bar that has it."""
    table, steps = np.zeros(width + 1, dtype=np.int64), []
    for j, way in enumerate(ways):
        for batch in batches(way.most) if prices[j] > 0 else ():
            wide = batch * way.across
            gained = table[: width + 1 - wide] + batch * prices[j]
            taken = gained > table[wide:]
            np.copyto(table[wide:], gained, where=taken)
            steps.append((j, batch, wide, taken))
    room, held = width, dict[int, int]()
    for j, batch, wide, taken in reversed(steps):
        if room >= wide and taken[room - wide]:
            held[j] = held.get(j, 0) + batch
            room -= wide
    return int(table[width]), tuple(sorted(held.items()))
