"""What a finished quilt or pillow must be, by its size and not by what was planned.

In: a size, what is cut for it. Out: goals.
Invariant: nothing here asks how it was made.
"""

from __future__ import annotations

from dataclasses import dataclass

from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.size import Size
from publish.operations.parts import Part
from publish.operations.pillow import FILLED, TURNED
from publish.operations.rehearsal import Goal, NothingLeft
from publish.operations.sleeve import LABEL, SLEEVE
from publish.operations.table import Table

PRODUCT = "quilt"


@dataclass(frozen=True)
class Finished:
    """The goal of a size: every edge done, nothing left in it, what was asked for on it."""

    size: Size
    plan: CutPlan
    areas: tuple[str, ...]
    """What is quilted."""

    def __call__(self, table: Table) -> None:
        size, plan = self.size, self.plan
        found = next(iter(table.there(PRODUCT)), None)
        table.goal(found is not None, f"a finished {size.finish}", part=PRODUCT)
        if found is None or not found[0].known:
            return
        part = found[0]
        _edges(table, size, part)
        table.goal(not part.basting, "its basting out", part=PRODUCT)
        table.goal(not part.paper, "its paper out", part=PRODUCT)
        filled = size.pillow is None or {TURNED, FILLED} <= part.state
        table.goal(filled, "its cover turned and filled", part=PRODUCT)
        table.goal(LABEL in part.state, "a label", part=PRODUCT)
        if size.sleeve is not None and plan.sleeve is not None:
            table.goal(SLEEVE in part.state, "a hanging sleeve", part=PRODUCT)
        layered = plan.backing is not None and plan.batting is not None
        for area in self.areas if layered else ():
            done = any(state.startswith(f"{area} ") for state in part.state)
            table.goal(done, f"its {area} quilted", part=PRODUCT)
        for name, asked in (("batting", size.batting), ("backing", size.backing)):
            there = any(layer.name == name for layer in part.layers)
            table.goal(asked is None or there, f"{name} in it", part=PRODUCT)


def goals_of(size: Size, draft: Draft, plan: CutPlan) -> tuple[Goal, ...]:
    """Return the goals of a size."""
    drawn = {q.area for q in draft.quilting}
    areas = tuple(dict.fromkeys(q.area for q in size.quilting if q.area in drawn))
    return Finished(size, plan, areas), NothingLeft((PRODUCT,))


def _edges(table: Table, size: Size, part: Part) -> None:
    done = {"closed"} if size.pillow is not None else {"bound"} if size.binding else {"raw"}
    open_ = sum(edge.state not in done for edge in part.edges)
    ((how),) = done
    table.goal(not open_, f"every edge {how}", part=PRODUCT, received=f"{open_} of 4 edges open")
    if part.finished is None or open_:
        return
    for name, made, asked in zip(
        ("width", "height"), part.finished, (size.width, size.height), strict=True
    ):
        table.goal(
            made == asked,
            f"the finished {name}",
            part=PRODUCT,
            kind="size",
            expected=table.text(asked),
            received=table.text(made),
        )
