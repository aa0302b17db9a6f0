"""The cutting problem on an integer grid.

In: rectangles to cut (`Part`) and the usable width, as exact `Fraction` inches.
Out: `Problem`, whose sizes are whole numbers of one grid step across and one along, and
`strips_of`, which turns counts of patterns back into strips in inches.
Invariant: nothing is rounded. The grid steps are the greatest common divisors of the
sizes, so a set of pieces fits the usable width exactly when it fits on the grid.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from math import gcd, lcm


@dataclass(frozen=True)
class Part:
    """Rectangles of one size to cut: `across` the fabric by `along` it, in inches."""

    letter: str
    across: Fraction
    along: Fraction
    count: int
    may_turn: bool = False


@dataclass(frozen=True)
class Kind:
    """Parts of one size on the grid. `options` are the (across, along) ways it may lie."""

    options: tuple[tuple[int, int], ...]
    count: int
    area: int


@dataclass(frozen=True)
class Problem:
    """Cut every kind from strips across `width`; the depths add up to the length.

    `across_step` and `along_step` are inches in one grid unit. `members` lists, for each
    kind, the parts merged into it. `squaring`, in inches, is in the second number of every
    option: each strip costs its depth and that.
    """

    width: int
    kinds: tuple[Kind, ...]
    across_step: Fraction
    along_step: Fraction
    members: tuple[tuple[Part, ...], ...]
    squaring: Fraction = Fraction(0)

    @cached_property
    def depths(self) -> tuple[int, ...]:
        """Every depth that a strip can usefully have, shallowest first."""
        return tuple(sorted({along for kind in self.kinds for _, along in kind.options}))

    @cached_property
    def across(self) -> tuple[tuple[int | None, ...], ...]:
        """Width that kind `i` takes in a strip of depth `d`: `across[d][i]`.

        Where both ways fit the depth, the narrower one is never worse, so each kind has
        one width in each depth; None where it does not fit.
        """
        return tuple(
            tuple(min((a for a, b in k.options if b <= depth), default=None) for k in self.kinds)
            for depth in self.depths
        )

    @cached_property
    def along(self) -> tuple[tuple[int, ...], ...]:
        """Depth that kind `i` really needs, lying as in `across[d][i]`; 0 if it does not fit."""
        return tuple(
            tuple(
                min((b for a, b in k.options if b <= depth and a == width), default=0)
                for k, width in zip(self.kinds, widths, strict=True)
            )
            for depth, widths in zip(self.depths, self.across, strict=True)
        )

    @cached_property
    def counts(self) -> tuple[int, ...]:
        return tuple(kind.count for kind in self.kinds)

    @cached_property
    def area_bound(self) -> Fraction:
        """Total area over the usable width: no layout is shorter."""
        return Fraction(sum(k.area * k.count for k in self.kinds), self.width)


Pattern = tuple[int, tuple[int, ...]]
"""A strip on the grid: index of its depth, and how many of each kind it holds."""


def common_step(values: Iterable[Fraction]) -> Fraction:
    """Return the greatest length that measures every value a whole number of times."""
    items = [v for v in values if v]
    bottom = lcm(*(v.denominator for v in items))
    return Fraction(gcd(*(int(v * bottom) for v in items)), bottom)


def on_grid(parts: Sequence[Part], width: Fraction, squaring: Fraction = Fraction(0)) -> Problem:
    """Put parts on the grid, parts of one size and freedom merged.

    `squaring` is what every strip takes of the cloth beyond its depth. With it in the depth
    of every part, the least sum of depths is the least length with squaring.

    Raises ValueError for a part that is wider than the usable width in every way it may
    lie: such a part must be joined or refused before.
    """
    across_step = common_step([p.across for p in parts] + [p.along for p in parts if p.may_turn])
    along_step = common_step(
        [squaring, *(p.along for p in parts), *(p.across for p in parts if p.may_turn)]
    )
    capacity = int(width // across_step)
    merged: dict[tuple[tuple[int, int], ...], list[Part]] = {}
    for part in parts:
        lying = {(part.across, part.along)}
        lying |= {(part.along, part.across)} if part.may_turn else set()
        ways = [(int(a / across_step), int((b + squaring) / along_step)) for a, b in lying]
        options = tuple(sorted(way for way in ways if way[0] <= capacity))
        if not options:
            raise ValueError(f"part {part.letter} is wider than the usable width")
        merged.setdefault(options, []).append(part)
    order = sorted(merged, key=lambda o: (-max(b for _, b in o), -max(a for a, _ in o)))
    kinds = tuple(Kind(o, sum(p.count for p in merged[o]), min(a * b for a, b in o)) for o in order)
    members = tuple(tuple(merged[o]) for o in order)
    return Problem(capacity, kinds, across_step, along_step, members, squaring)


def length_of(problem: Problem, plan: dict[Pattern, int]) -> int:
    """Return the summed depths of a plan, in grid steps."""
    return sum(problem.depths[d] * times for (d, _), times in plan.items())
