"""What patchwork adds to the numbers of one size: setting, templates, methods, foundations.

In: a `Size`, a `CutPlan`, a `Draft`. Out: dictionaries and lists in a fixed order.
Invariant: exact lengths are inches as a maker writes them; areas and boxes of templates
come from their outlines and are decimals.
"""

from __future__ import annotations

from typing import Any

from publish.deliver.cloth import exact
from publish.model.cutplan import CutPlan, Making, PieceTemplate
from publish.model.draft import Draft, FoundationSection
from publish.model.size import Round, Size

PLACES = 2

Json = dict[str, Any]


def patchwork(draft: Draft, plan: CutPlan) -> Json:
    """Return the templates, makings and foundations of a size; empty where it has none."""
    return {
        "templates": [_template(t) for t in plan.templates],
        "makings": [_making(m) for m in plan.makings],
        "foundations": [_section(s) for s in draft.foundations],
    }


def setting(size: Size) -> Json:
    """Return how the blocks of a size are set; a part that it lacks is null or empty."""
    strips = size.sashing
    return {
        "kind": size.setting,
        "turns": [list(row) for row in size.turns],
        "alternates": [list(row) for row in size.alternates],
        "alternate_turns": [list(row) for row in size.alternate_turns],
        "fabric": size.setting_fabric or None,
        "sashing": strips
        and {
            "width": exact(strips.width),
            "fabric": strips.fabric,
            "cornerstones": strips.cornerstones,
            "outer": strips.outer,
        },
        "rounds": [_round(r) for r in size.rounds],
    }


def _round(layer: Round) -> Json:
    return {
        "width": exact(layer.width),
        "height": exact(layer.height),
        "border": layer.border and exact(layer.border.width),
        "block_side": None if layer.block_side is None else exact(layer.block_side),
        "blocks": [[b.block, b.turn] for b in layer.blocks],
    }


def _template(template: PieceTemplate) -> Json:
    left, top, right, bottom = template.finished.bounds
    return {
        "key": template.key,
        "letter": template.letter,
        "fabric": template.fabric,
        "count": template.count,
        "mirrored": template.mirrored,
        "width": f"{right - left:.{PLACES}f}",
        "height": f"{bottom - top:.{PLACES}f}",
        "area": f"{template.finished.area:.{PLACES}f}",
        "cut_area": f"{template.cut.area:.{PLACES}f}",
        "notches": len(template.notches),
    }


def _making(making: Making) -> Json:
    made = making.batches * making.each_batch
    return {
        "method": making.method,
        "unit": making.kind,
        "pieces": dict(zip(making.letters, making.each, strict=True)),
        "batches": making.batches,
        "each_batch": making.each_batch,
        "count": making.count,
        "over": made - making.count,
        "trim": {"width": exact(making.trim[0]), "height": exact(making.trim[1])},
        "segment": None if making.segment is None else exact(making.segment),
    }


def _section(section: FoundationSection) -> Json:
    return {
        "key": section.key,
        "block": section.block,
        "letter": section.letter,
        "count": section.count,
        "patches": [
            {"number": f"{section.letter}{number}", "fabric": patch.fabric}
            for number, patch in enumerate(section.patches, start=1)
        ],
    }
