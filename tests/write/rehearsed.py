"""The words of a pattern that is drafted and planned: sewn first, then written.

In: pattern, sizes, drafts, plans. Out: what `write` and `generated` return.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish import write as stage
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual, Section
from publish.notes import Note
from publish.sew import sew


def write(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
) -> tuple[Manual, tuple[Note, ...]]:
    making, _ = sew(pattern, sizes, drafts, plans)
    return stage.write(pattern, sizes, drafts, plans, making)


def generated(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
) -> tuple[Section, ...]:
    making, _ = sew(pattern, sizes, drafts, plans)
    return stage.generated(pattern, sizes, drafts, plans, making)
