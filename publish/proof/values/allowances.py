"""Whether sizes are rounded the right way and plans are made for the pattern's cloth.

In: a case. Out: notes.
Invariant: a cut size is never below its exact size; a plan's usable width is its fabric's.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, error
from publish.proof.case import Case, Code

CODES = {
    "P819": Code(
        "A cut size is rounded down",
        "the unit comes out small and nothing mends it",
        "6 7/16 in cut as 6 3/8 in",
        "6 7/16 in cut as 6 1/2 in",
    ),
    "P839": Code(
        "A plan is made for cloth of another width",
        "its strips do not fit what is bought",
        "a plan across 44 in for a fabric with `usable_width: 40 in`",
        "a plan across 40 in",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each size rounded down and each plan of another width."""
    for key in case.keys:
        for piece in case.plans[key].pieces:
            for cut, exact in (
                (piece.width, piece.exact_width),
                (piece.length, piece.exact_length),
            ):
                if exact is not None and cut < exact:
                    yield error(
                        "P819",
                        case.size_place(key),
                        f"piece {piece.letter} of the {key} is cut smaller than it must be",
                        expected=f"at least {case.text(exact)}",
                        received=case.text(cut),
                    )
    for key, fabric, plan in case.fabric_plans():
        cloth = case.pattern.fabrics.get(fabric)
        if cloth is not None and plan.usable_width not in (
            cloth.usable_width,
            cloth.sold_as.width if cloth.sold_as else cloth.usable_width,
        ):
            yield error(
                "P839",
                case.pattern.place("fabrics", fabric, "usable_width"),
                f"the {case.name(fabric)} plan of the {key} is made for another width",
                expected=case.text(cloth.usable_width),
                received=case.text(plan.usable_width),
            )
