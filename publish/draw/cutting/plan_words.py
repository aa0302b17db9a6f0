"""A cutting layout in words, for who cannot see it.

In: a size's plan of one fabric. Out: a sentence: what is bought, then every strip.
Invariant: strips and cuts are told in the order in which they are made.
"""

from __future__ import annotations

from publish.draw.canvas.letters import Labels
from publish.draw.context import Context
from publish.draw.cutting.layout import groups, piece_of, size_of
from publish.draw.cutting.outlines import nested_words
from publish.model.cutplan import FabricPlan, Piece, Strip
from publish.model.words import FigureSpec


def shape_words(say: Labels, piece: Piece | None) -> str:
    """Return what a rectangle is cut into: `, cut once into 2 triangles`."""
    if piece is None or piece.shape in ("rectangle", "oversize"):
        return ""
    if piece.shape == "template":
        return say.text("figure-round-the-template")
    return say.text(f"figure-cut-into-{piece.shape.replace(' ', '-')}", count=piece.yields)


def plan_words(context: Context, spec: FigureSpec, plan: FabricPlan, bought: str) -> str:
    """Return the plan in words: what is bought, then every strip in cutting order."""
    say = context.labels
    parts = []
    for number, group in enumerate(groups(plan), 1):
        strip = group.strip
        if strip.placements:
            parts.append(
                say.text("figure-cut", number=number, labels=nested_words(context.labels, strip))
            )
            continue
        parts.append(
            say.text("figure-cut", number=number, labels=_strip_alt(context.labels, plan, strip))
        )
    return say.text(
        "figure-fabric-alt",
        name=context.pattern.fabrics[plan.fabric].name,
        title=context.size(spec).title,
        context=bought,
        usable_width=say.plain(plan.usable_width),
        parts="; ".join(parts),
    )


def _strip_alt(say: Labels, plan: FabricPlan, strip: Strip) -> str:
    """Return what a strip gives, its sections last."""
    gives = []
    for cut in strip.cuts:
        a, b = size_of(plan, cut)
        becomes = shape_words(say, piece_of(plan, cut.letter))
        gives.append(
            say.text(
                "figure-of",
                count=cut.count,
                letter=cut.letter,
                a=say.measures.sides(a, b),
                becomes=becomes,
            )
        )
    for section in strip.sections:
        inner = say.listed([_strip_alt(say, plan, s) for s in section.strips])
        gives.append(
            say.text("figure-a-section-wide-cut-into", width=say.plain(section.width), inner=inner)
        )
    return say.text(
        "figure-deep-giving",
        count=say.counted(strip.count, "strip"),
        depth=say.plain(strip.depth),
        more=say.text("figure-each") if strip.count > 1 else "",
        gives=say.listed(gives),
    )
