"""Making up a pillow, one moment at a time.

In: a size and `detail`: hem, layer, sew, turn or zip. Out: the figure.
Invariant: back pieces, hem, overlap and seam are the plan's own and drawn to scale.
"""

from __future__ import annotations

from collections.abc import Callable

from publish.draw.canvas.style import STEP_WIDTH
from publish.draw.context import CannotDrawError, Context
from publish.draw.finishing.pillow_back import Pillow, draw_hem, draw_layer, draw_sew
from publish.draw.finishing.pillow_cover import draw_turn, draw_zip
from publish.draw.workbench import Workbench
from publish.model.figure import Figure
from publish.model.words import FigureSpec

DETAILS: dict[str, Callable[[Pillow], str]] = {
    "hem": draw_hem,
    "layer": draw_layer,
    "sew": draw_sew,
    "turn": draw_turn,
    "zip": draw_zip,
}


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw one moment of making up the pillow."""
    size, plan = context.size(spec), context.plan(spec).pillow
    detail = spec.get("detail")
    if plan is None or size.pillow is None:
        raise CannotDrawError("this size is not a pillow")
    if detail not in DETAILS:
        raise CannotDrawError(f"there is no pillow figure {detail!r}")
    bench = Workbench.of(context, spec, context.canvas(STEP_WIDTH, 4.0), plan.hem, plan.fabric)
    return bench.canvas.figure(spec, DETAILS[detail](Pillow(context, bench, plan, size.pillow)))
