"""What the cloth at hand has over, or lacks.

In: a fabric with the length already there, its plan. Out: the plan with that said.
Invariant: everything cut from the fabric counts, binding and backing too, with the same
allowances as a purchase; what is left is rounded down to the purchase step, what is
short is rounded up.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from publish.model.cutplan import FabricPlan
from publish.model.pattern import Fabric, Sewing
from publish.units import round_down, round_up, yards_text


def with_stock(fabric: Fabric, plan: FabricPlan, sewing: Sewing) -> FabricPlan:
    """Return a plan that says whether the length at hand suffices."""
    if fabric.owned is None or plan.precut is not None:
        return plan
    spare = fabric.owned - plan.needed
    stock = words(spare, sewing.purchase_step)
    said = f"{yards_text(fabric.owned)} at hand are {stock}"
    return replace(plan, spare=spare, stock=stock, choices=(*plan.choices, said))


def words(spare: Fraction, step: Fraction) -> str:
    """Return `enough, with 1/4 yd left` or `short by 3/8 yd`."""
    if spare < 0:
        return f"short by {yards_text(round_up(-spare, step))}"
    left = round_down(spare, step)
    if left:
        return f"enough, with {yards_text(left)} left"
    return f"enough, with less than {yards_text(step)} left" if spare else "enough, to the inch"
