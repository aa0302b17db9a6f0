"""What close-up figures share: a canvas, the size's colours, the lengths they show.

In: the context and a figure. Out: `Workbench`.
Invariant: colours are the size's own fabrics, so that a close-up and the finished quilt
match.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.context import Context
from publish.model.cutplan import CutPlan
from publish.model.size import Size
from publish.model.words import FigureSpec


@dataclass(frozen=True)
class Workbench:
    """A canvas with what a close-up needs; `width` is that of the strip it is about."""

    canvas: Canvas
    size: Size
    plan: CutPlan
    seam: Fraction
    width: Fraction
    strip: str
    """Colours: the strip, the front at its edge, the back."""
    front: str
    back: str
    edging: str
    """The binding, or the strip where there is none."""
    accent: str
    labels: Labels

    @classmethod
    def of(
        cls, context: Context, spec: FigureSpec, canvas: Canvas, width: Fraction, fabric: str
    ) -> Workbench:
        """Return the bench for a figure's size."""
        size, draft = context.size(spec), context.draft(spec)
        front = size.borders[-1].fabric if size.borders else draft.patches[0].fabric
        backing = size.backing.fabric if size.backing is not None else front
        return cls(
            canvas,
            size,
            context.plan(spec),
            context.pattern.sewing.seam,
            width,
            context.colour(fabric),
            context.colour(front),
            context.colour(backing),
            context.colour(size.binding.fabric if size.binding is not None else fabric),
            context.palette.accent,
            context.labels,
        )
