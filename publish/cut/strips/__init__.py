"""Strips across the fabric and pieces from strips: the shortest plan, and its proof.

In: parts, the usable width, how the fabric is bought. Out: `Layout`.
Invariant: every layout has been looked at again by `check.faults`; its bound is proven.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import floor
from typing import Protocol

from publish.cut.strips.check import faults
from publish.cut.strips.counts import length_from_counts, strip_counts
from publish.cut.strips.exact import Limits, solve
from publish.cut.strips.layout import strips_of
from publish.cut.strips.problem import Part, on_grid
from publish.cut.strips.simplest import simplest
from publish.model.cutplan import Strip

__all__ = ["Layout", "Limits", "Part", "Steps", "bound_of", "lay_out"]


class Steps(Protocol):
    """How lengths are bought: what one buys decides when a plan is short enough."""

    def below(self, length: Fraction) -> Fraction:
        """Return the greatest length that buys less than `length`."""

    def room(self, length: Fraction) -> Fraction:
        """Return the greatest length that buys the same as `length`."""


@dataclass(frozen=True)
class Layout:
    """Strips that hold every part.

    No two-stage layout takes less than `bound` of the cloth, squaring of its strips included.
    """

    strips: tuple[Strip, ...]
    bound: Fraction
    squaring: Fraction = Fraction(0)
    """Of one strip."""

    @property
    def length(self) -> Fraction:
        return sum((s.depth * s.count for s in self.strips), Fraction(0))

    @property
    def squared(self) -> Fraction:
        """Return what all strips together lose by being squared up."""
        return self.squaring * sum(s.count for s in self.strips)


def lay_out(
    parts: Sequence[Part],
    width: Fraction,
    steps: Steps,
    simple: bool = True,
    limits: Limits | None = None,
    squaring: Fraction = Fraction(0),
) -> Layout:
    """Return strips that buy as little as can be proven within the limits.

    Each strip takes `squaring` of the cloth beyond its depth, for squaring up its edge.

    With `simple`, the fewest distinct strips that buy the same. Raises ValueError for a
    part wider than `width` in every way it may lie, AssertionError if the layout fails
    its own check.
    """
    problem = on_grid(parts, width, squaring)
    unit = problem.along_step
    solved = solve(problem, lambda length: floor(steps.below(length * unit) / unit), limits)
    strips = strips_of(problem, solved.plan)
    if simple:
        length = sum(((s.depth + squaring) * s.count for s in strips), Fraction(0))
        room = floor(steps.room(length) / unit)
        other = strips_of(problem, simplest(problem, solved.patterns, solved.plan, room))
        strips = min(strips, other, key=_handling)
    wrong = faults(parts, width, strips)
    assert not wrong, wrong
    return Layout(strips, solved.bound * unit, squaring)


def bound_of(parts: Sequence[Part], width: Fraction, squaring: Fraction = Fraction(0)) -> Fraction:
    """Return a lower bound on the length with squaring at once: by area, and by counting
    strips."""
    problem = on_grid(parts, width, squaring)
    by_count = length_from_counts(problem, strip_counts(problem))
    return max(problem.area_bound, Fraction(by_count)) * problem.along_step


def _handling(strips: Sequence[Strip]) -> tuple[int, int, Fraction]:
    """Return what makes strips tedious to cut: different ones, many, much length."""
    many = sum(s.count for s in strips)
    return len(strips), many, sum((s.depth * s.count for s in strips), Fraction(0))
