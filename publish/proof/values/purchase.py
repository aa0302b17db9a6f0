"""Whether enough is bought, and no more than the steps of the shop's rule ask for.

In: a case. Out: notes.
Invariant: area / usable width <= bound <= length <= needed <= buy, in yards and in
metres; a purchase is a whole number of steps and less than one step too much.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from publish.model.cutplan import FabricPlan
from publish.notes import Note, error
from publish.proof.case import Case, Code

CODES = {
    "P837": Code(
        "An allowance is missing from a length",
        "squaring and washing eat into it",
        "86 in needed for a plan of 86 in with 1 in of straightening",
        "87 in",
    ),
    "P834": Code(
        "A length to buy is out of order",
        "the maker buys too little",
        "1 1/4 yd bought where 46 1/2 in are needed",
        "1 3/8 yd",
    ),
    "P835": Code(
        "A length to buy is not the next whole step",
        "the shop cannot cut it",
        "`1.37 yd`, or a whole step more than is needed",
        "the next 1/8 yd",
    ),
    "P836": Code(
        "A plan is shorter than the area of its pieces allows",
        "the plan is impossible",
        "a plan of 10 in for pieces of 480 square inches across 40 in",
        "at least 12 in",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each purchase that is too small, or not what a shop sells."""
    for size, fabric, plan in case.fabric_plans():
        yield from _order(case, size, fabric, plan)
        yield from _steps(case, size, fabric, plan)
        yield from _allowed(case, size, fabric, plan)
        least = area(plan) / plan.usable_width
        if plan.length < least:
            yield error(
                "P836",
                case.size_place(size),
                f"the {case.name(fabric)} plan is shorter than the area of its pieces allows",
                expected=f"at least {case.text(least)}",
                received=case.text(plan.length),
            )


def area(plan: FabricPlan) -> Fraction:
    """Return the area of everything the strips hold, in square inches."""
    return sum((s.area * s.count for s in plan.strips), Fraction(0))


def _allowed(case: Case, size: str, fabric: str, plan: FabricPlan) -> Iterator[Note]:
    """What is left after washing and squaring must be the plan: (needed) (1 - s) - a."""
    cloth = case.pattern.fabrics.get(fabric)
    shrinkage = Fraction(0) if cloth is None else cloth.shrinkage
    sewing = case.pattern.sewing
    strips = sum(s.count for s in plan.strips)
    left = plan.needed * (1 - shrinkage) - sewing.straightening - sewing.mis_cut
    left -= sewing.squaring * strips
    if left != plan.length:
        yield error(
            "P837",
            case.pattern.place("fabrics", fabric, "shrinkage"),
            f"the {case.name(fabric)} needed for the {size} does not hold its allowances",
            expected=f"{case.text(plan.length)} after shrinking, straightening and squaring up",
            received=case.text(left),
        )


def _order(case: Case, size: str, fabric: str, plan: FabricPlan) -> Iterator[Note]:
    steps = (
        ("lower bound", plan.bound, "plan", plan.length + plan.squaring),
        ("plan", plan.length + plan.squaring, "length needed", plan.needed),
        ("length needed", plan.needed, "length to buy", plan.buy),
        ("length needed", plan.needed, "length to buy in metres", plan.buy_metric),
    )
    for lesser, low, greater, high in steps:
        if low > high:
            yield error(
                "P834",
                case.size_place(size),
                f"the {greater} of {case.name(fabric)} is below its {lesser}",
                expected=f"at least {case.text(low)}",
                received=case.text(high),
            )


def _steps(case: Case, size: str, fabric: str, plan: FabricPlan) -> Iterator[Note]:
    sewing = case.pattern.sewing
    for key, bought, step in (
        ("purchase_step", plan.buy, sewing.yard_step),
        ("metric_step", plan.buy_metric, sewing.metric_step),
    ):
        if bought % step or bought - plan.needed >= step:
            yield error(
                "P835",
                case.pattern.place("sewing", key),
                f"the {case.name(fabric)} to buy for the {size} is not the next whole step",
                expected=f"the least multiple of {case.text(step)} from {case.text(plan.needed)}",
                received=case.text(bought),
            )
