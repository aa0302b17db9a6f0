"""Whether what is bought is what is cut.

In: a case. Out: notes.
Invariant: each fabric with a purchase is cut, each fabric that is cut has a purchase, and
the booklet names every purchase.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.cutplan import CutPlan
from publish.model.words import Table
from publish.notes import Note, error, warning
from publish.proof.case import Case, Code

CODES = {
    "P801": Code(
        "A fabric is bought and nothing is cut from it",
        "the maker pays for it",
        "`reed` bought for the throw and cut from nothing",
        "a purchase for each fabric with pieces, and no other",
    ),
    "P802": Code(
        "A fabric is cut that is not bought",
        "the maker runs short at the table",
        "sandbar borders in the cutting table and no sandbar in the materials",
        "`Sandbar | 1/4 yd (0.20 m)`",
    ),
    "P803": Code(
        "A fabric that is bought stands in no table of the booklet",
        "nobody knows to buy it",
        "no row for Creek mist, which backs the quilt",
        "`Creek mist: backing | 7/8 yd (0.80 m)`",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each fabric that is bought in vain, or missing."""
    for size, fabric, plan in case.fabric_plans():
        if not any(strip.held and strip.count for strip in plan.strips):
            yield error(
                "P801",
                case.pattern.place("fabrics", fabric),
                f"{case.name(fabric)} is bought for the {size} and nothing is cut from it",
                help="leave the fabric out, or find why its pieces were not planned",
            )
    for size in case.keys:
        plan_of_size = case.plans[size]
        for fabric in _cut_from(plan_of_size):
            if fabric not in plan_of_size.fabrics:
                yield error(
                    "P802",
                    case.pattern.place("fabrics", fabric),
                    f"{case.name(fabric)} is cut for the {size} and is not bought",
                )
    yield from _unlisted(case)


def _cut_from(plan: CutPlan) -> dict[str, None]:
    """Return every fabric that some part of a plan is cut from, in order, once each."""
    parts = [*plan.pieces, plan.backing, plan.binding, plan.pillow, plan.sleeve]
    return dict.fromkeys(part.fabric for part in parts if part is not None)


def _unlisted(case: Case) -> Iterator[Note]:
    tables = [b for s in case.manual.sections for b in s.blocks if isinstance(b, Table)]
    rows = [row for table in tables for row in table.rows]
    shown = {row.fabric for row in rows}
    words = "\n".join(cell for row in rows for cell in row.cells)
    for fabric in dict.fromkeys(fabric for _, fabric, _ in case.fabric_plans()):
        if fabric not in shown and case.name(fabric) not in words:
            yield warning(
                "P803",
                case.pattern.place("fabrics", fabric),
                f"{case.name(fabric)} is bought and stands in no table of the booklet",
                help="add a row for it to the materials table",
            )
