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
from publish.words import english
from publish.words.values import Purchase, Said, Word, said


def with_stock(fabric: Fabric, plan: FabricPlan, sewing: Sewing) -> FabricPlan:
    """Return a plan that says whether the length at hand suffices."""
    if fabric.owned is None or plan.precut is not None:
        return plan
    spare = fabric.owned - plan.needed
    stock, tell = stock_of(spare, sewing), sewing.measures
    told = f"{to_buy(fabric.owned, fabric.owned, tell)} at hand are {english(stock, tell)}"
    return replace(plan, spare=spare, stock=stock, choices=(*plan.choices, told))


def stock_of(spare: Fraction, sewing: Sewing) -> Said:
    """Return `enough, with 1/4 yd (0.20 m) left` or `short by 3/8 yd (0.30 m)` as a value."""
    yard, metre = sewing.yard_step, sewing.metric_step
    if spare < 0:
        short = Purchase(round_up(-spare, yard), round_up(-spare, metre))
        return said("stock-short", length=short)
    if spare >= sewing.first_step:
        left = Purchase(round_down(spare, yard), round_down(spare, metre))
        return said("stock-left", length=left)
    if spare:
        return said("stock-little-left", length=Purchase(yard, metre))
    return said("stock-even", unit=Word("centimetre" if sewing.measures.metric else "inch"))
