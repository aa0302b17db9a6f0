"""Words that labels and alternative texts share.

In: values of the model. Out: short phrases without Markdown.
Invariant: a number in a phrase is the model's own, set by one of the functions of
`publish.draw.canvas.letters` or `publish.units`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction

from publish.draw.context import Context
from publish.model.draft import QuiltingLines
from publish.model.size import Size


def listed(items: Sequence[str]) -> str:
    """Return `a`, `a and b`, `a, b and c`."""
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} and {items[-1]}"


def counted(count: int, noun: str, plural: str = "") -> str:
    """Return `1 row`, `3 rows`."""
    return f"{count} {noun if count == 1 else plural or noun + 's'}"


STYLES = {
    "ditch": "in the ditch, beside the edge",
    "echo": "echo lines",
    "parallel": "parallel lines",
    "grid": "a grid",
    "as desired": "as you like",
}
"""What each style of quilting is called."""


def quilting_words(lines: QuiltingLines, length: Callable[[Fraction], str]) -> str:
    """Return how an area is quilted: `echo lines, 1/2 in apart`, set by `length`."""
    style = STYLES.get(lines.style, lines.style)
    return style + (f", {length(lines.spacing)} apart" if lines.spacing is not None else "")


def top_words(context: Context, size: Size) -> str:
    """Return what the top is made of, for alternative text."""
    fabric, say = context.pattern.fabrics, context.labels
    draft = context.drafts[size.key]
    grounds = dict.fromkeys(p.fabric for p in draft.patches if p.role == "ground")
    parts = [f"{counted(size.block_count, 'block')} of {say.plain(size.block_side)}"]
    parts[0] += " set on point" if size.on_point else ""
    parts[0] += f" in {listed([fabric[f].name for f in grounds])}"
    if size.setting_fabric:
        parts.append(f"setting triangles in {fabric[size.setting_fabric].name}")
    if size.sashing is not None:
        sashing = size.sashing
        parts.append(f"sashing of {say.plain(sashing.width)} in {fabric[sashing.fabric].name}")
    for key in dict.fromkeys(p.motif for p in draft.placements):
        motif = context.pattern.motifs[key]
        number = sum(p.motif == key for p in draft.placements)
        named = counted(number, f"{motif.folds}-fold motif")
        parts.append(f"{named} in {fabric[motif.fabric].name}")
    for layer in size.layers:
        if layer.border is not None:
            border = layer.border
            parts.append(f"a border of {say.plain(border.width)} in {fabric[border.fabric].name}")
        elif layer.block_side is not None:
            blocks = counted(len(layer.blocks), "block")
            parts.append(f"a round of {blocks} of {say.plain(layer.block_side)}")
    return listed(parts)
