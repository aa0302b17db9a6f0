"""Stage 5, sew: how every size is made, operation by operation, rehearsed as it is planned.

In: pattern, sizes, drafts, plans. Out: `Making` and notes.
Invariant: what is planned has been carried out on the table, in order, from the pieces that
are cut; a planner chooses and never measures: it reads sizes off the table.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note
from publish.operations.rehearsal import Making, SizeMaking
from publish.sew import (
    applique,
    binding,
    borders,
    finishing,
    folding,
    fusing,
    piecing,
    quilting,
    sleeve,
)
from publish.sew.bench import Bench
from publish.sew.findings import CODES as CODES
from publish.sew.findings import notes_on
from publish.sew.goals import goals_of

CHAPTERS = (
    piecing.plan,
    folding.plan,
    applique.plan,
    fusing.plan,
    piecing.assemble,
    borders.plan,
    quilting.plan,
    binding.plan,
    sleeve.plan,
    finishing.fill,
    sleeve.label,
)
"""The planners, in the order in which a quilt is made."""


def sew(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
) -> tuple[Making, tuple[Note, ...]]:
    """Return the making of every size that is graded, drafted and planned, and what cannot
    be done, does not fit, or is missing when all is done."""
    made: dict[str, SizeMaking] = {}
    notes: list[Note] = []
    for key in pattern.sizes:
        if key in sizes and key in drafts and key in plans:
            made[key], found = _made(pattern, sizes[key], drafts[key], plans[key])
            notes += found
    return Making(made), tuple(notes)


def _made(
    pattern: Pattern, size: Size, draft: Draft, plan: CutPlan
) -> tuple[SizeMaking, tuple[Note, ...]]:
    bench = Bench(pattern, size, draft, plan)
    for chapter in CHAPTERS:
        chapter(bench)
    goals = goals_of(size, draft, plan)
    for goal in goals:
        goal(bench.table)
    made = SizeMaking(size.key, tuple(bench.operations), goals, tuple(bench.moments))
    return made, notes_on(pattern, size.key, bench.table.failings)
