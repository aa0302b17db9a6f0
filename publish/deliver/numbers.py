"""Every computed value of a pattern as plain data, for `numbers.json`.

In: pattern, sizes, drafts, plans. Out: a dictionary of strings, integers, lists and
dictionaries, the same keys in the same order every time.
Invariant: nothing is computed here that the stages have not settled: a value is written
down, or is a finished size plus its seams. Exact lengths are inches as a maker writes
them (`2 1/2`), or `3 + 4√2` on the diagonal of a block; lengths that come from curves are
decimals with `PLACES` places.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from typing import Any

from publish.deliver.beyond import Beyond
from publish.deliver.cloth import cloth, exact
from publish.deliver.patchwork import patchwork, setting
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, MotifShape, Unit
from publish.model.pattern import BorderSpec, Pattern
from publish.model.size import Size
from publish.surd import Exact

PLACES = 2
"""Decimal places of lengths (in), areas (sq in) and angles (degrees) from curves."""

Json = dict[str, Any]


def numbers(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
) -> Json:
    """Return every computed value by size; DEVELOPERS.md documents the shape.

    Sizes stand in the pattern's order. A size that a stage could not finish is left out.
    """
    whole = [k for k in pattern.sizes if k in sizes and k in drafts and k in plans]
    sewing = pattern.sewing
    return {
        "pattern": pattern.key,
        "title": pattern.title,
        "edition": pattern.publication.edition,
        "unit": "in",
        "units": pattern.measures.units,
        "decimal_places": PLACES,
        "seam": exact(sewing.seam),
        "straightening": exact(sewing.straightening),
        "squaring": exact(sewing.squaring),
        "mis_cut": exact(sewing.mis_cut),
        "purchase_step": exact(sewing.yard_step),
        "metric_step": exact(sewing.metric_step),
        "sizes": {key: _size(pattern, sizes[key], drafts[key], plans[key]) for key in whole},
    }


def _size(pattern: Pattern, size: Size, draft: Draft, plan: CutPlan) -> Json:
    return {
        "title": size.title,
        "finish": size.finish,
        "finished": {"width": exact(size.width), "height": exact(size.height)},
        "inner": {"width": exact(size.inner_width), "height": exact(size.inner_height)},
        "perimeter": exact(size.perimeter),
        "blocks": {
            "columns": size.columns,
            "rows": size.rows,
            "count": size.block_count,
            "side": exact(size.block_side),
            "arrangement": [list(row) for row in size.arrangement],
        },
        "borders": [_border(b) for b in size.borders],
        "setting": setting(size),
        "motif_span": maybe(size.motif_span),
        "motif_square": maybe(plan.motif_square),
        **cloth(plan, pattern.measures),
        **patchwork(draft, plan),
        "motifs": {k: _motif(s, draft, plan) for k, s in draft.motifs.items()},
        "units": _units(Beyond(pattern, size, draft), draft.assembly),
        "seam_length": exact(draft.seam_length),
        "quilting": [
            {
                "area": q.area,
                "style": q.style,
                "spacing": maybe(q.spacing),
                "length": decimal(q.length),
            }
            for q in draft.quilting
        ],
    }


def _border(border: BorderSpec) -> Json:
    return {
        "width": exact(border.width),
        "fabric": border.fabric,
        "corners": border.corners,
    }


def _motif(shape: MotifShape, draft: Draft, plan: CutPlan) -> Json:
    return {
        "count": sum(p.motif == shape.key for p in draft.placements),
        "span": exact(shape.span),
        "folds": shape.folds,
        "wedge_angle": decimal(shape.wedge_angle),
        "area": decimal(shape.area),
        "perimeter": decimal(shape.perimeter),
        "pieces": shape.pieces,
        "holes": shape.holes,
        "tips": shape.tips,
        "inside_corners": shape.inside_corners,
        "narrowest_neck": decimal(shape.narrowest_neck),
        "narrowest_slit": decimal(shape.narrowest_slit),
        "sharpest_tip": decimal(shape.sharpest_tip),
        "contact": {
            edge.kind: [[decimal(start), decimal(end)] for start, end in edge.contact]
            for edge in shape.edges or ()
        },
        "meetings": [
            {"edge": m.edge, "reach": decimal(m.reach), "angle": decimal(m.angle)}
            for m in shape.meetings
        ],
    }


def _units(beyond: Beyond, root: Unit) -> list[Json]:
    """Return each kind of unit once, in sewing order, the top last.

    `before` is its size on the table, seams still to be taken on every side (a pillow's
    own seam at the edge of its cover, and the margin round a ground that waits for its
    motif); `after` its size once it is sewn in.
    """
    every = list(root.innermost_first())
    counts = Counter(u.kind for u in every)
    first = {u.kind: u for u in reversed(every)}
    return [
        {
            "kind": kind,
            "name": first[kind].name,
            "count": count,
            "join": first[kind].join,
            "parts": len(first[kind].parts),
            "press": first[kind].press,
            "turn": first[kind].turn,
            "made": first[kind].made or None,
            "section": first[kind].section or None,
            "recipe": recipe_key(first[kind]),
            "before": beyond.before(first[kind]),
            "after": {"width": exact(first[kind].width), "height": exact(first[kind].height)},
        }
        for kind, count in counts.items()
    ]


def recipe_key(unit: Unit) -> str | None:
    """Return what two units share exactly when they are put together alike."""
    return None if unit.place is None else unit.place.recipe.key


def maybe(length: Exact | None) -> str | None:
    """Return a length as text, or None where there is none."""
    return None if length is None else exact(length)


def decimal(value: float | None) -> str | None:
    """Return a value from a curve with `PLACES` decimals."""
    return None if value is None else f"{value:.{PLACES}f}"
