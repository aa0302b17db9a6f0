"""Strips across the fabric and pieces from strips: the shortest plan, and its proof.

In: parts, the usable width, how the fabric is bought. Out: `Layout`.
Invariant: every layout has been looked at again by `check.faults`; its bounds are proven.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor
from typing import Protocol

from publish.cut.strips.bars import every_plan, reckoned
from publish.cut.strips.check import faults
from publish.cut.strips.counts import length_from_counts, strip_counts
from publish.cut.strips.exact import Limits, Sums, solve
from publish.cut.strips.layout import strips_of
from publish.cut.strips.naming import Naming, on_the_grid
from publish.cut.strips.problem import Part, on_grid
from publish.cut.strips.search import with_sections
from publish.cut.strips.simplest import simplest
from publish.model.cutplan import Strip

__all__ = ["Layout", "Limits", "Part", "Steps", "bound_of", "floor_of", "into_sections", "lay_out"]


class Steps(Protocol):
    """How lengths are bought: what one buys decides when a plan is short enough."""

    def below(self, length: Fraction) -> Fraction:
        """Return the greatest length that buys less than `length`."""

    def room(self, length: Fraction) -> Fraction:
        """Return the greatest length that buys the same as `length`."""


@dataclass(frozen=True)
class Layout:
    """Strips that hold every part.

    No plan of whole strips takes less than `bound` of the cloth, squaring included.
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

    @property
    def gross(self) -> Fraction:
        return self.length + self.squared


def lay_out(
    parts: Sequence[Part],
    width: Fraction,
    steps: Steps,
    simple: bool = True,
    limits: Limits | None = None,
    squaring: Fraction = Fraction(0),
) -> Layout:
    """Return whole strips that buy as little as can be proven within the limits.

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
    return _checked(Layout(strips, solved.bound * unit, squaring), parts, width)


def into_sections(parts: Sequence[Part], width: Fraction, steps: Steps, layout: Layout) -> Layout:
    """Return a layout with strips parted into sections, or the one that is given where
    none was found that buys less."""
    least = floor_of(parts, width, layout.squaring)
    most = steps.below(layout.gross)
    if most < least:
        return layout
    problem = on_grid(parts, width)
    unit = problem.along_step
    plan = with_sections(
        problem,
        layout.squaring / unit,
        on_the_grid(problem, layout.strips),
        lambda length: steps.below(length * unit) < least,
    )
    if plan is None:
        return layout
    found = Layout(Naming(problem).strips(plan), layout.bound, layout.squaring)
    return _checked(found, parts, width) if found.gross <= most else layout


def floor_of(
    parts: Sequence[Part], width: Fraction, squaring: Fraction = Fraction(0), quick: bool = False
) -> Fraction:
    """Return a lower bound on the length, one strip's squaring included, of every layout,
    however it is cut, whose parts lie straight or at right angles.

    Pushed together along the cloth, pieces end where some others' lengths add up to.
    """
    problem = on_grid(parts, width)
    if quick:
        return reckoned(problem) * problem.along_step + squaring
    most = sum(max(b for _, b in kind.options) * kind.count for kind in problem.kinds)
    least = Sums(problem.depths, most).least_from(ceil(every_plan(problem)))
    return least * problem.along_step + squaring


def bound_of(parts: Sequence[Part], width: Fraction, squaring: Fraction = Fraction(0)) -> Fraction:
    """Return a lower bound for plans of whole strips at once: by area, and by counting
    strips."""
    problem = on_grid(parts, width, squaring)
    by_count = length_from_counts(problem, strip_counts(problem))
    return max(problem.area_bound, Fraction(by_count)) * problem.along_step


def _checked(layout: Layout, parts: Sequence[Part], width: Fraction) -> Layout:
    wrong = faults(parts, width, layout.strips)
    assert not wrong, wrong
    return layout


def _handling(strips: Sequence[Strip]) -> tuple[int, int, Fraction]:
    """Return what makes strips tedious to cut: different ones, many, much length."""
    many = sum(s.count for s in strips)
    return len(strips), many, sum((s.depth * s.count for s in strips), Fraction(0))
