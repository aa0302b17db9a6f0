"""Binding, one moment at a time.

In: a size and `detail`: a key of `DETAILS`. Out: the figure.
Invariant: strip width, seam and bias square are the plan's own; shapes keep their angles
and proportions, lengths that would not fit are broken off.
"""

from __future__ import annotations

from collections.abc import Callable

from publish.draw.canvas.style import STEP_WIDTH
from publish.draw.context import CannotDrawError, Context
from publish.draw.finishing.binding_edge import (
    draw_close,
    draw_corner,
    draw_finish,
    draw_start,
    draw_tuck,
)
from publish.draw.finishing.binding_strips import draw_bias, draw_join, draw_press
from publish.draw.workbench import Workbench
from publish.model.figure import Figure
from publish.model.words import FigureSpec

DETAILS: dict[str, Callable[[Workbench], str]] = {
    "join": draw_join,
    "press": draw_press,
    "bias": draw_bias,
    "start": draw_start,
    "tuck": draw_tuck,
    "close": draw_close,
    "corner": draw_corner,
    "finish": draw_finish,
}


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw one moment of the binding."""
    size, plan = context.size(spec), context.plan(spec).binding
    detail = spec.get("detail")
    if plan is None or size.binding is None:
        raise CannotDrawError("this size has no binding")
    if detail not in DETAILS:
        raise CannotDrawError(f"there is no binding figure {detail!r}")
    bench = Workbench.of(
        context, spec, context.canvas(STEP_WIDTH, 4.0), plan.strip_width, plan.fabric
    )
    return bench.canvas.figure(spec, DETAILS[detail](bench))
