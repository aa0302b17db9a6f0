"""Words that labels and alternative texts share.

In: values of the model. Out: short phrases without Markdown.
Invariant: a number in a phrase is the model's own, set by one of the functions of
`publish.draw.canvas.letters` or `publish.units`.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from publish.draw.canvas.letters import Labels
from publish.draw.context import Context
from publish.model.draft import QuiltingLines
from publish.model.size import Size


def quilting_words(say: Labels, lines: QuiltingLines, length: Callable[[Fraction], str]) -> str:
    """Return how an area is quilted: `echo lines, 1/2 in apart`, set by `length`."""
    style = say.text(f"figure-style-{lines.style.replace(' ', '-')}")
    if lines.spacing is None:
        return style
    return say.text("figure-style-apart", style=style, spacing=length(lines.spacing))


def top_words(context: Context, size: Size) -> str:
    """Return what the top is made of, for alternative text."""
    fabric, say = context.pattern.fabrics, context.labels
    draft = context.drafts[size.key]
    grounds = dict.fromkeys(p.fabric for p in draft.patches if p.role == "ground")
    blocks, side = say.counted(size.block_count, "block"), say.plain(size.block_side)
    parts = [say.text("figure-of-7", block_count=blocks, block_side=side)]
    parts[0] += say.text("figure-set-on-point") if size.on_point else ""
    parts[0] += say.text("figure-in-3", value=say.listed([fabric[f].name for f in grounds]))
    if size.setting_fabric:
        parts.append(say.text("figure-setting-triangles-in", name=fabric[size.setting_fabric].name))
    if size.sashing is not None:
        width, name = say.plain(size.sashing.width), fabric[size.sashing.fabric].name
        parts.append(say.text("figure-sashing-of-in", width=width, name=name))
    for key in dict.fromkeys(p.motif for p in draft.placements):
        motif = context.pattern.motifs[key]
        number = sum(p.motif == key for p in draft.placements)
        named = say.text("figure-count-motif-of-folds", count=number, folds=motif.folds)
        parts.append(say.text("figure-in-4", named=named, name=fabric[motif.fabric].name))
    for layer in size.layers:
        if layer.border is not None:
            width, name = say.plain(layer.border.width), fabric[layer.border.fabric].name
            parts.append(say.text("figure-a-border-of-in", width=width, name=name))
        elif layer.block_side is not None:
            blocks = say.counted(len(layer.blocks), "block")
            parts.append(
                say.text(
                    "figure-a-round-of-of", blocks=blocks, block_side=say.plain(layer.block_side)
                )
            )
    return say.listed(parts)
