"""The fewest sheets of one size that hold every piece: two stages of cuts in each.

In: sizes and counts on a grid of whole numbers, and the sheet. Out: `Fewest`: patterns
of sheets, and a proven lower bound on their number.
Invariant: the patterns hold every piece; the bound is never above the least number that
any plan with two stages of cuts in each sheet needs.

Method: patterns as columns (Gilmore and Gomory, Operations Research 13, 1965; from
memory). The relaxed model prices the pieces; the best sheet at those prices is found
exactly, in whole numbers, and gives the bound (prices over the best sheet's worth). A
whole-number model over the patterns met on the way gives the plan.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from publish.cut.strips.highs import Column, Linear, integer

SCALE = 10**7
ROUNDS = 60
NODES = 200

Strip = tuple[int, tuple[int, ...]]
"""A strip's depth, and how many of each kind it holds."""
Pattern = tuple[bool, tuple[Strip, ...]]
"""A sheet: whether its strips run along its length, and the strips."""


@dataclass(frozen=True)
class Kind:
    """Pieces of one size: the (across, along) ways in which they may lie."""

    options: tuple[tuple[int, int], ...]
    count: int

    @property
    def area(self) -> int:
        return self.options[0][0] * self.options[0][1]


@dataclass(frozen=True)
class Side:
    """Strips of one direction: their length, and what their depths may add up to.

    `run[d][i]` is what kind `i` takes along a strip of depth `depths[d]`, 0 where it does
    not fit.
    """

    lengthwise: bool
    long: int
    room: int
    depths: tuple[int, ...]
    run: tuple[tuple[int, ...], ...]


@dataclass(frozen=True)
class Problem:
    """Kinds to cut from sheets `width` across and `length` along."""

    width: int
    length: int
    kinds: tuple[Kind, ...]

    @cached_property
    def sides(self) -> tuple[Side, ...]:
        """Strips across the sheet and along it; one of them where they come to the same."""
        across = self._side(False)
        along = self._side(True)
        same = (along.long, along.room, along.run) == (across.long, across.room, across.run)
        return (across,) if same else (across, along)

    def _side(self, lengthwise: bool) -> Side:
        long, room = (self.length, self.width) if lengthwise else (self.width, self.length)
        ways = [[(b, a) if lengthwise else (a, b) for a, b in k.options] for k in self.kinds]
        ways = [[(run, deep) for run, deep in w if run <= long and deep <= room] for w in ways]
        depths = tuple(sorted({deep for w in ways for _, deep in w}))
        run = tuple(
            tuple(min((r for r, deep in w if deep <= depth), default=0) for w in ways)
            for depth in depths
        )
        return Side(lengthwise, long, room, depths, run)

    @property
    def possible(self) -> bool:
        """Return whether every kind fits a sheet in some way."""
        return all(
            any(any(r[i] for r in side.run) for side in self.sides) for i in range(len(self.kinds))
        )


@dataclass(frozen=True)
class Fewest:
    """Patterns with how many sheets are cut by each, and the bound."""

    patterns: tuple[tuple[Pattern, int], ...]
    bound: int

    @property
    def count(self) -> int:
        return sum(times for _, times in self.patterns)


def fewest(problem: Problem) -> Fewest:
    """Return a plan with as few sheets as are found, and how few there could be."""
    first = min((_first_fit(problem, side) for side in problem.sides), key=_number)
    area = sum(kind.area * kind.count for kind in problem.kinds)
    bound = -(-area // (problem.width * problem.length))
    if _number(first) == bound:
        return Fewest(tuple(first.items()), bound)
    patterns, proven = _generate(problem, [*first, *_plain(problem)])
    bound = max(bound, proven)
    if _number(first) == bound:
        return Fewest(tuple(first.items()), bound)
    start = [float(first.get(p, 0)) for p in patterns]
    wanted = [float(kind.count) for kind in problem.kinds]
    answer = integer(
        [_column(p) for p in patterns], wanted, [float("inf")] * len(wanted), NODES, start
    )
    if answer.values is not None:
        chosen = {p: round(v) for p, v in zip(patterns, answer.values, strict=True) if v > 0.5}
        if _number(chosen) < _number(first) and _holds(problem, chosen):
            first = Counter(chosen)
    return Fewest(tuple(first.items()), bound)


def _number(plan: Counter[Pattern] | dict[Pattern, int]) -> int:
    return sum(plan.values())


def _holds(problem: Problem, plan: dict[Pattern, int]) -> bool:
    """Return whether a plan has at least as many of each kind as are wanted."""
    held = [0] * len(problem.kinds)
    for pattern, times in plan.items():
        for i, n in enumerate(totals(pattern)):
            held[i] += n * times
    return all(h >= k.count for h, k in zip(held, problem.kinds, strict=True))


def totals(pattern: Pattern) -> list[int]:
    """Return how many of each kind a sheet holds."""
    return [sum(column) for column in zip(*(counts for _, counts in pattern[1]), strict=True)]


def _column(pattern: Pattern) -> Column:
    return Column(1.0, tuple((i, float(n)) for i, n in enumerate(totals(pattern)) if n))


def _plain(problem: Problem) -> Iterator[Pattern]:
    """Yield sheets full of one kind."""
    for side in problem.sides:
        for d, depth in enumerate(side.depths):
            for i, run in enumerate(side.run[d]):
                if run:
                    counts = [0] * len(problem.kinds)
                    counts[i] = side.long // run
                    yield side.lengthwise, ((depth, tuple(counts)),) * (side.room // depth)


def _generate(problem: Problem, start: list[Pattern]) -> tuple[list[Pattern], int]:
    """Return patterns that solve the relaxed model, and the best bound met on the way."""
    patterns = list(dict.fromkeys(start))
    wanted = [kind.count for kind in problem.kinds]
    master = Linear([float(n) for n in wanted], [_column(p) for p in patterns])
    bound = 0
    for _ in range(ROUNDS):
        prices = [max(0, int(dual * SCALE)) for dual in master.solve().duals]
        worth, best = max(
            (_best(problem, side, prices) for side in problem.sides), key=lambda found: found[0]
        )
        total = sum(price * n for price, n in zip(prices, wanted, strict=True))
        bound = max(bound, -(-total // worth) if worth else 0)
        if worth <= SCALE or best in patterns:
            break
        patterns.append(best)
        master.add([_column(best)])
    return patterns, bound


def _best(problem: Problem, side: Side, prices: Sequence[int]) -> tuple[int, Pattern]:
    """Return the sheet worth most at these prices, strips running one way."""
    strips = [_best_strip(problem, side, d, prices) for d in range(len(side.depths))]
    worth = [0] * (side.room + 1)
    last: list[int | None] = [None] * (side.room + 1)
    for room in range(1, side.room + 1):
        worth[room], last[room] = worth[room - 1], None
        for d, depth in enumerate(side.depths):
            if depth <= room and worth[room - depth] + strips[d][0] > worth[room]:
                worth[room], last[room] = worth[room - depth] + strips[d][0], d
    found, room = [], side.room
    while room > 0:
        taken = last[room]
        if taken is None:
            room -= 1
            continue
        found.append((side.depths[taken], strips[taken][1]))
        room -= side.depths[taken]
    return worth[side.room], (side.lengthwise, tuple(sorted(found, reverse=True)))


def _best_strip(
    problem: Problem, side: Side, d: int, prices: Sequence[int]
) -> tuple[int, tuple[int, ...]]:
    """Return the most that a strip of depth `d` can be worth, and what it then holds."""
    worth = [0] * (side.long + 1)
    chosen: list[tuple[int, list[int]]] = []
    for i, kind in enumerate(problem.kinds):
        run = side.run[d][i]
        if not run or not prices[i]:
            continue
        most = min(kind.count, side.long // run)
        taken, better = [0] * (side.long + 1), worth[:]
        for room in range(run, side.long + 1):
            for n in range(1, min(most, room // run) + 1):
                value = worth[room - n * run] + n * prices[i]
                if value > better[room]:
                    better[room], taken[room] = value, n
        worth = better
        chosen.append((i, taken))
    counts, room = [0] * len(problem.kinds), side.long
    for i, taken in reversed(chosen):
        counts[i] = taken[room]
        room -= taken[room] * side.run[d][i]
    return worth[side.long], tuple(counts)


@dataclass
class _Row:
    """A strip being filled: the index of its depth, the length left, what it holds."""

    d: int
    left: int
    counts: list[int]


@dataclass
class _Open:
    """A sheet being filled."""

    side: Side
    left: int
    rows: list[_Row]

    @property
    def pattern(self) -> Pattern:
        rows = [(self.side.depths[row.d], tuple(row.counts)) for row in self.rows]
        return self.side.lengthwise, tuple(sorted(rows, reverse=True))


def _first_fit(problem: Problem, side: Side) -> Counter[Pattern]:
    """Return a plan by first fit, the deepest kinds first; kinds that this direction
    cannot hold go into sheets cut the other way."""
    sheets: list[_Open] = []
    home = {}
    for i in range(len(problem.kinds)):
        own = next(s for s in (side, *problem.sides) if any(run[i] for run in s.run))
        home[i] = own, next(d for d, run in enumerate(own.run) if run[i])
    for i in sorted(home, key=lambda i: (-home[i][0].depths[home[i][1]], i)):
        own, d = home[i]
        for _ in range(problem.kinds[i].count):
            row = _row_for(sheets, own, d, i, len(problem.kinds))
            row.left -= own.run[row.d][i]
            row.counts[i] += 1
    return Counter(sheet.pattern for sheet in sheets)


def _row_for(sheets: list[_Open], own: Side, d: int, i: int, kinds: int) -> _Row:
    """Return the first strip with room for a piece: one begun, or a new one, which begins
    a new sheet where it has to."""
    mine = [sheet for sheet in sheets if sheet.side is own]
    for sheet in mine:
        for row in sheet.rows:
            if 0 < own.run[row.d][i] <= row.left:
                return row
    depth = own.depths[d]
    begun = next((sheet for sheet in mine if depth <= sheet.left), None)
    if begun is None:
        begun = _Open(own, own.room, [])
        sheets.append(begun)
    begun.left -= depth
    begun.rows.append(_Row(d, own.long, [0] * kinds))
    return begun.rows[-1]
