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
    assembling,
    binding,
    borders,
    cutting,
    folding,
    fusing,
    piecing,
    pillow,
    quilting,
    sleeve,
)
from publish.sew.bench import Bench, counted
from publish.sew.findings import CODES as CODES
from publish.sew.findings import notes_on
from publish.sew.goals import goals_of

CHAPTERS = (
    cutting.plan,
    piecing.plan,
    folding.plan,
    applique.plan,
    fusing.plan,
    assembling.plan,
    borders.plan,
    quilting.plan,
    binding.plan,
    sleeve.plan,
    pillow.plan,
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
    shown = [k for k in pattern.sizes if k in sizes and k in drafts and k in plans]
    blocks = tuple(dict.fromkeys(b for k in shown for b in counted(sizes[k])))
    notes: list[Note] = []
    for key in shown:
        bench = Bench(pattern, sizes[key], drafts[key], plans[key], blocks)
        made[key], found = _made(bench)
        notes += found
    return Making(made), tuple(notes)


def _made(bench: Bench) -> tuple[SizeMaking, tuple[Note, ...]]:
    for chapter in CHAPTERS:
        chapter(bench)
    goals = goals_of(bench.size, bench.draft, bench.plan)
    for goal in goals:
        goal(bench.table)
    key = bench.size.key
    made = SizeMaking(key, tuple(bench.operations), goals, tuple(bench.moments))
    return made, notes_on(bench.pattern, key, bench.table.failings)
