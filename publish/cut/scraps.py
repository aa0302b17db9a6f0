"""What is cut from pieces of cloth that are there, so that the least is left to buy.

In: kinds of pieces and the cloth there is, on one grid; the width of what is bought. Out:
`Spread`: how each piece of cloth is cut, and a lower bound on the length still to buy.
Invariant: no piece of cloth is cut more often than it is there, and each holds its strips;
together they may hold more of a kind than is wanted. The bound holds for two stages of
cuts in each piece of cloth, and however what is bought is laid out, and does not rest on
floating point.

Method: the cutting-stock model with several stock sizes (Gilmore and Gomory, Operations
Research 11, 1963; from memory): patterns of the cloth there is, each as often as it is
there, and strips of what is bought are columns, priced by exact knapsacks.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property

from publish.cut.strips.first_fit import first_fit
from publish.cut.strips.highs import INFINITY, Column, Linear, integer
from publish.cut.strips.pricing import best_patterns, runs_of
from publish.cut.strips.problem import Kind, Pattern, Problem

SCALE = 1 << 20
ROUNDS = 60
NODES = 200
CHEAP = Fraction(1, 1000)
"""What cloth that is there costs, against cloth that is bought: no more of it is cut into
than saves something."""

Rows = tuple[Pattern, ...]
"""Strips of one piece of cloth, the deepest first: index of each depth, and what it holds."""


@dataclass(frozen=True)
class Side:
    """Strips of one direction: the problem across them, and what their depths add up to."""

    lengthwise: bool
    problem: Problem
    room: int

    def best(self, prices: Sequence[int]) -> tuple[int, Rows]:
        """Return the greatest price of strips in the room, and strips that have it."""
        problem = self.problem
        values, patterns = best_patterns(problem, prices, runs_of(problem))
        worth, last = [0] * (self.room + 1), [-1] * (self.room + 1)
        for room in range(1, self.room + 1):
            worth[room] = worth[room - 1]
            for d, depth in enumerate(problem.depths):
                if depth <= room and worth[room - depth] + values[d] > worth[room]:
                    worth[room], last[room] = worth[room - depth] + values[d], d
        found, room = [], self.room
        while room > 0:
            d = last[room]
            found += [patterns[d]] if d >= 0 else []
            room -= problem.depths[d] if d >= 0 else 1
        return worth[self.room], tuple(sorted(found, reverse=True))

    def within(self, prices: Sequence[int]) -> Rows:
        """Return strips that hold no more of a kind than is wanted: the strip that is worth
        most for its depth, and then the same with what is left."""
        _, rows = self.best(prices)
        if not rows:
            return ()
        depths = self.problem.depths
        first = max(rows, key=lambda row: Fraction(_worth(row, prices), depths[row[0]]))
        left = tuple(
            replace(kind, count=kind.count - n)
            for kind, n in zip(self.problem.kinds, first[1], strict=True)
        )
        rest = replace(
            self, problem=replace(self.problem, kinds=left), room=self.room - depths[first[0]]
        )
        return tuple(sorted((first, *rest.within(prices)), reverse=True))


def _worth(row: Pattern, prices: Sequence[int]) -> int:
    return sum(n * price for n, price in zip(row[1], prices, strict=True))


@dataclass(frozen=True)
class Cloth:
    """Pieces of cloth of one size, on the grid: across the fabric, along it, how many."""

    width: int
    length: int
    count: int

    def sides(self, kinds: Sequence[Kind]) -> list[Side]:
        """Return strips across the cloth and along it, where anything fits."""
        found = []
        for lengthwise in (False, True):
            long, room = (self.width, self.length)[:: -1 if lengthwise else 1]
            ways = [[o[::-1] if lengthwise else o for o in k.options] for k in kinds]
            fitting = [tuple(sorted(w for w in o if w[0] <= long and w[1] <= room)) for o in ways]
            held = tuple(Kind(o, k.count, k.area) for o, k in zip(fitting, kinds, strict=True))
            if any(fitting):
                problem = Problem(long, held, Fraction(1), Fraction(1), ())
                found.append(Side(lengthwise, problem, room))
        return found


@dataclass(frozen=True)
class Cutting:
    """One way to cut pieces of cloth number `cloth`, and how many of them."""

    cloth: int
    side: Side
    rows: Rows
    times: int = 1


@dataclass(frozen=True)
class Spread:
    """How the cloth there is is cut, and what no plan buys less than, in grid steps."""

    cuttings: tuple[Cutting, ...]
    bound: Fraction


def spread(bought: Problem, squaring: Fraction, cloths: Sequence[Cloth]) -> Spread:
    """Return how to cut the cloth there is, so that little of `bought` is needed.

    `squaring` is what a strip of what is bought takes beyond its depth, in grid steps.
    """
    return _Model(bought, squaring, cloths).run()


class _Model:
    def __init__(self, bought: Problem, squaring: Fraction, cloths: Sequence[Cloth]) -> None:
        self.bought, self.squaring, self.cloths = bought, squaring, cloths
        self.kinds = len(bought.kinds)
        self.sides = [cloth.sides(bought.kinds) for cloth in cloths]
        self.runs = runs_of(bought)

    @cached_property
    def costs(self) -> list[float]:
        """Return what each piece of cloth costs, as a length of what is bought."""
        return [float(CHEAP * c.width * c.length / self.bought.width) for c in self.cloths]

    @cached_property
    def lower(self) -> list[float]:
        counts = [float(kind.count) for kind in self.bought.kinds]
        return [*counts, *(-float(cloth.count) for cloth in self.cloths)]

    def run(self) -> Spread:
        start = first_fit(self.bought)
        strips = list(start)
        cuttings = self.generate(strips)
        columns = [*map(self.strip, strips), *map(self.column, cuttings)]
        given = [float(start.get(s, 0)) for s in strips] + [0.0] * len(cuttings)
        answer = integer(columns, self.lower, [INFINITY] * len(self.lower), NODES, given)
        values = (answer.values or tuple(given))[len(strips) :]
        used = tuple(
            Cutting(c.cloth, c.side, c.rows, round(n))
            for c, n in zip(cuttings, values, strict=True)
            if n > 0.5
        )
        return Spread(used, self.bound(cuttings))

    def strip(self, pattern: Pattern) -> Column:
        """Return the column of a strip of what is bought."""
        depth = self.bought.depths[pattern[0]] + self.squaring
        return Column(float(depth), tuple((i, float(n)) for i, n in enumerate(pattern[1]) if n))

    def column(self, cutting: Cutting) -> Column:
        held = [sum(some) for some in zip(*(counts for _, counts in cutting.rows), strict=True)]
        entries = [(i, float(n)) for i, n in enumerate(held) if n]
        return Column(self.costs[cutting.cloth], (*entries, (self.kinds + cutting.cloth, -1.0)))

    def generate(self, strips: list[Pattern]) -> list[Cutting]:
        """Return ways to cut the cloth that there is; `strips` grows beside them."""
        model, cuttings = Linear(self.lower, list(map(self.strip, strips))), list[Cutting]()
        for _ in range(ROUNDS):
            duals = model.solve().duals
            prices = [max(0, int(d * SCALE)) for d in duals[: self.kinds]]
            fresh = self.worthwhile(prices, duals[self.kinds :], cuttings)
            worth, patterns = best_patterns(self.bought, prices, self.runs)
            more = [
                p
                for value, p in zip(worth, patterns, strict=True)
                if value > (self.bought.depths[p[0]] + self.squaring) * SCALE and p not in strips
            ]
            if not fresh and not more:
                break
            cuttings += fresh
            strips += more
            model.add([*map(self.column, fresh), *map(self.strip, more)])
        return cuttings

    def worthwhile(
        self, prices: Sequence[int], rents: Sequence[float], known: Sequence[Cutting]
    ) -> list[Cutting]:
        """Return cuttings of each cloth that are worth more than it costs."""
        found = list[Cutting]()
        for at, rent in enumerate(rents):
            costs = (self.costs[at] + max(0.0, rent)) * SCALE
            _, best = self.best(at, prices)
            wanted = [Cutting(at, side, side.within(prices)) for side in self.sides[at]]
            for cutting in (*wanted, *([best] if best else [])):
                worth = sum(_worth(row, prices) for row in cutting.rows)
                if worth > costs + 1 and cutting not in (*known, *found):
                    found.append(cutting)
        return found

    def best(self, at: int, prices: Sequence[int]) -> tuple[int, Cutting | None]:
        """Return the greatest price of a piece of cloth, and a cutting that has it."""
        most, cutting = 0, None
        for side in self.sides[at]:
            worth, rows = side.best(prices)
            if worth > most:
                most, cutting = worth, Cutting(at, side, rows)
        return most, cutting

    def bound(self, cuttings: list[Cutting]) -> Fraction:
        """Return a length that no plan buys less than: what is left over costs its area."""
        width = self.bought.width
        singly = [Column(k.area / width, ((i, 1.0),)) for i, k in enumerate(self.bought.kinds)]
        known = list(cuttings)
        model = Linear(self.lower, [*singly, *map(self.column, known)])
        best = Fraction(0)
        for _ in range(ROUNDS):
            duals = model.solve().duals
            prices = [
                max(0, min(int(d * SCALE), k.area * SCALE // width))
                for d, k in zip(duals, self.bought.kinds, strict=False)
            ]
            all_ = sum(p * k.count for p, k in zip(prices, self.bought.kinds, strict=True))
            there = sum(c.count * self.best(i, prices)[0] for i, c in enumerate(self.cloths))
            best = max(best, Fraction(all_ - there, SCALE))
            fresh = self.worthwhile(prices, duals[self.kinds :], known)
            if not fresh:
                break
            known += fresh
            model.add(list(map(self.column, fresh)))
        return best
