"""From a plan's length to what is bought, and back.

In: the length of a plan, a fabric's shrinkage, the pattern's allowances and steps. Out:
the length needed, the lengths to buy.
Invariant: exact throughout; both purchases hold the length needed, and less than one step
more. Shrinkage: needed = length / (1 - rate), common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.measures import INCHES, Measures
from publish.model.cutplan import FabricPlan
from publish.model.pattern import Fabric, Sewing
from publish.units import round_up


@dataclass(frozen=True)
class Purchase:
    """How a length of one fabric is bought. `step` in yards and `metric_step` are inches."""

    straightening: Fraction
    """With what a mis-cut may take: once for each length that is bought."""
    squaring: Fraction
    """For each strip."""
    shrinkage: Fraction
    step: Fraction
    metric_step: Fraction
    measures: Measures = INCHES

    @property
    def metric(self) -> bool:
        """Return whether lengths are bought by the metre first."""
        return self.measures.metric

    def needed(self, length: Fraction) -> Fraction:
        """Return the length to have, with straightening the end and shrinking allowed for.

        `length` holds the strips and the squaring of each.
        """
        return (length + self.straightening) / (1 - self.shrinkage)

    def shrunk(self, length: Fraction) -> Fraction:
        """Return what shrinking takes of the length to have."""
        return self.needed(length) * self.shrinkage

    def buy(self, length: Fraction) -> Fraction:
        return round_up(self.needed(length), self.step)

    def buy_metric(self, length: Fraction) -> Fraction:
        return round_up(self.needed(length), self.metric_step)

    def first(self, length: Fraction) -> Fraction:
        """Return what is bought in the units that lead."""
        return self.buy_metric(length) if self.metric else self.buy(length)

    def leads(self, plan: FabricPlan) -> Fraction:
        """Return what a plan buys in the units that lead."""
        return plan.buy_metric if self.metric else plan.buy

    def room(self, length: Fraction) -> Fraction:
        """Return the greatest length that is bought with the same two purchases."""
        return self._length(min(self.buy(length), self.buy_metric(length)))

    def below(self, length: Fraction) -> Fraction:
        """Return the greatest length that buys less by the yard or by the metre."""
        by_yard, by_metre = self.buy(length) - self.step, self.buy_metric(length) - self.metric_step
        return self._length(max(by_yard, by_metre))

    def _length(self, bought: Fraction) -> Fraction:
        return bought * (1 - self.shrinkage) - self.straightening


def purchase_of(fabric: Fabric, sewing: Sewing) -> Purchase:
    """Return how a pattern's fabric is bought."""
    return Purchase(
        sewing.straightening + sewing.mis_cut,
        sewing.squaring,
        fabric.shrinkage,
        sewing.yard_step,
        sewing.metric_step,
        sewing.measures,
    )
