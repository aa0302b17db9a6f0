"""What the cloth at hand has over, or lacks.

In: a fabric with the length already there, its plan. Out: the plan with that said.
Invariant: everything cut from the fabric counts, binding and backing too, with the same
allowances as a purchase; what is left is rounded down to the purchase step, what is
short is rounded up.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from publish.cut.words import to_buy
from publish.model.cutplan import FabricPlan
from publish.model.pattern import Fabric, Sewing
from publish.units import round_down, round_up


def with_stock(fabric: Fabric, plan: FabricPlan, sewing: Sewing) -> FabricPlan:
    """Return a plan that says whether the length at hand suffices."""
    if fabric.owned is None or plan.precut is not None:
        return plan
    spare = fabric.owned - plan.needed
    stock = words(spare, sewing)
    said = f"{to_buy(fabric.owned, fabric.owned, sewing.measures)} at hand are {stock}"
    return replace(plan, spare=spare, stock=stock, choices=(*plan.choices, said))


def words(spare: Fraction, sewing: Sewing) -> str:
    """Return `enough, with 1/4 yd (0.20 m) left` or `short by 3/8 yd (0.30 m)`."""
    yard, metre, tell = sewing.yard_step, sewing.metric_step, sewing.measures
    if spare < 0:
        return f"short by {to_buy(round_up(-spare, yard), round_up(-spare, metre), tell)}"
    if spare >= sewing.first_step:
        return (
            f"enough, with {to_buy(round_down(spare, yard), round_down(spare, metre), tell)} left"
        )
    if spare:
        return f"enough, with less than {to_buy(yard, metre, tell)} left"
    return f"enough, to the {'centimetre' if tell.metric else 'inch'}"
