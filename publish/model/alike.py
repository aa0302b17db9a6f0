"""Which sizes have the same template or the same foundation, so that it is printed once.

In: plans or drafts by size. Out: keys of sizes, in their order.
Invariant: what is alike has the same letter, the same fabrics and the same lines.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.model.cutplan import CutPlan, PieceTemplate
from publish.model.draft import Draft, FoundationSection

_CLOSE = 1e-6
"""Inches by which the corners of two like templates may differ."""


def with_template(plans: Mapping[str, CutPlan], wanted: PieceTemplate) -> dict[str, PieceTemplate]:
    """Return the same template at each size that has it."""
    return {
        key: template
        for key, plan in plans.items()
        for template in plan.templates
        if (template.letter, template.fabric) == (wanted.letter, wanted.fabric)
        and template.cut.equals_exact(wanted.cut, _CLOSE)
        and template.finished.equals_exact(wanted.finished, _CLOSE)
    }


def with_foundation(
    drafts: Mapping[str, Draft], wanted: FoundationSection
) -> dict[str, FoundationSection]:
    """Return the same foundation at each size that has it."""
    return {
        key: section
        for key, draft in drafts.items()
        for section in draft.foundations
        if _lines(section) == _lines(wanted)
    }


def _lines(section: FoundationSection) -> tuple[object, ...]:
    sewn = tuple((p.fabric, p.ring) for p in section.patches)
    return section.key, section.letter, section.ring, section.seams, sewn
