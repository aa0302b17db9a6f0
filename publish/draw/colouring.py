"""The top in outline, to colour in and try fabrics on paper.

In: a size. Out: line art as large as the page's text area.
Invariant: every region of the top is closed by its own outline and left white.
"""

from __future__ import annotations

from publish.draw.canvas.shapes import polygon_of
from publish.draw.canvas.style import INK, PAPER, Stroke
from publish.draw.context import Context
from publish.draw.top import fit, placed
from publish.model.figure import Figure
from publish.model.words import FigureSpec

ABOVE_AND_BELOW = 3.2
"""Inches of the page kept for margins, heading and foot."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw patches, appliqué and binding as outlines."""
    say = context.labels
    size, draft = context.size(spec), context.draft(spec)
    seam = float(context.pattern.sewing.seam)
    tall = context.paper.height - ABOVE_AND_BELOW
    scale = fit(
        float(size.width) + 2 * seam, float(size.height) + 2 * seam, (context.column - 0.04, tall)
    )
    wide = (float(size.width) + 2 * seam) * scale + 0.04
    canvas = context.canvas(wide, tall)
    frame = canvas.frame(seam * scale + 0.02, seam * scale + 0.02, scale)
    if size.finish != "pillow" and size.binding is not None:
        edge = draft.edge_outline.buffer(seam, join_style="mitre")
        frame.shape(edge, PAPER, Stroke(INK, 0.6))
    for patch in draft.patches:
        frame.shape(polygon_of(patch), PAPER, Stroke(INK, 0.6))
    for place in draft.placements:
        frame.shape(placed(draft, place), PAPER, Stroke(INK, 0.75))
    regions = len(draft.patches) + len(draft.placements)
    alt = say.text(
        "figure-colouring",
        title=size.title,
        width=say.spoken(size.width, size.height),
        patches=len(draft.patches),
        placements=len(draft.placements),
        regions=regions,
    )
    return canvas.figure(spec, alt)
