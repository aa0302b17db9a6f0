"""The folded wedge that the figures of marking and cutting are drawn on.

In: a motif at one size. Out: `Wedge`, set out on a canvas, and the cloth drawn on it.
Invariant: the wedge stands as it does on the template sheet; the cloth is the square that
is cut for the motif, folded.
"""

from __future__ import annotations

from dataclasses import dataclass

from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import STEP_WIDTH, Stroke, edge_of, readable_on
from publish.draw.context import CannotDrawError, Context
from publish.draw.motifs.folding import lay_cloth, name_centre, outside_words
from publish.draw.motifs.folding_steps import Layer, folded, folding_of
from publish.draw.sheets.template import Template, polar, template_of
from publish.model.draft import MotifShape
from publish.model.pattern import Motif
from publish.model.words import FigureSpec

WIDE, HIGH = 1.95, 2.0
"""Inches that the cloth may fill."""


@dataclass(frozen=True)
class Wedge:
    """A folded wedge on its canvas: `frame` is in inches of the template, `cloth` the
    folded square's outline in the same, `ink` a colour that shows on the fabric."""

    canvas: Canvas
    frame: Canvas
    motif: Motif
    shape: MotifShape
    template: Template
    layers: tuple[Layer, ...]
    cloth: BaseGeometry
    half: float
    colour: str
    ink: str

    @property
    def angles(self) -> tuple[float, float]:
        """Return the angles of the multiple folds and the single fold."""
        first, second = self.template.folds
        return first.angle, second.angle


def set_out(context: Context, spec: FigureSpec) -> Wedge:
    """Set out the wedge, its centre at the bottom left."""
    motif, shape = context.motif(spec)
    if shape.edges is None:
        raise CannotDrawError(f"the motif {shape.key!r} is not cut on folds")
    way = folding_of(shape.folds)
    layers = folded(way, len(way.creases))
    half = _square(context, spec, shape) / 2
    left, top, right, bottom = unary_union([layer.place for layer in layers]).bounds
    scale = min(WIDE / (right - left), HIGH / (bottom - top)) / half
    canvas = context.canvas(STEP_WIDTH, STEP_WIDTH)
    middle = (STEP_WIDTH - scale * half * (right - left)) / 2 - scale * half * left
    frame = canvas.frame(middle, 0.2 - scale * half * top, scale)
    cloth = unary_union([_scaled(layer.place, half) for layer in layers])
    colour = context.colour(motif.fabric)
    return Wedge(
        canvas,
        frame,
        motif,
        shape,
        template_of(shape),
        layers,
        cloth,
        half,
        colour,
        readable_on(colour),
    )


def _square(context: Context, spec: FigureSpec, shape: MotifShape) -> float:
    """Return the side of the square that is folded: the plan's, where there is one."""
    plan = context.plans.get(context.size(spec).key)
    if plan is not None and plan.motif_square is not None:
        return float(plan.motif_square)
    return float(shape.span + context.pattern.sewing.motif_margin)


def _scaled(shape: Polygon, by: float) -> Polygon:
    return Polygon([(x * by, y * by) for x, y in shape.exterior.coords])


def draw_cloth(wedge: Wedge) -> None:
    """Draw the folded cloth and name its edges."""
    inner = wedge.frame.frame(0, 0, wedge.half)
    lay_cloth(inner, wedge.layers, wedge.colour)
    for angle in wedge.angles:
        inner.lines(folded_edge(wedge, angle, 1 / wedge.half), Stroke(edge_of(wedge.colour), 1.3))


def name_edges(wedge: Wedge) -> None:
    for fold, angle in zip(
        (
            wedge.frame.labels.text("figure-multiple-folds"),
            wedge.frame.labels.text("figure-single-fold"),
        ),
        wedge.angles,
        strict=True,
    ):
        outside_words(wedge.frame, wedge.cloth, angle, fold, "semibold")
    name_centre(wedge.frame, True)


def folded_edge(wedge: Wedge, angle: float, by: float = 1.0) -> LineString:
    """Return a folded edge of the cloth from the centre outwards."""
    near = wedge.cloth.intersection(LineString([(0, 0), polar(99, angle)]).buffer(1e-6))
    reach = Point(0, 0).hausdorff_distance(near) * by
    return LineString([(0, 0), polar(reach, angle)])
