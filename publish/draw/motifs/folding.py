"""Folding the cloth: one figure for each number of folds made, and the cloth unfolded.

In: a motif's number of wedges and how many folds have been made.
Out: the cloth at that stage, its folded and its open edges, and the fold to come.
Invariant: the layers are those of `folding_steps`, each drawn a hair short of the one
beneath, so that a folded edge is one line and open edges are several.
"""

from __future__ import annotations

from math import cos, radians, sin

from shapely import affinity
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.colour import contrast
from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import arrow, bend
from publish.draw.canvas.style import (
    CREASE,
    INK,
    LABEL,
    LEADER,
    PAPER,
    STEP_WIDTH,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.cloth import fabric
from publish.draw.context import CannotDrawError, Context
from publish.draw.motifs.folding_steps import (
    Crease,
    Folding,
    Layer,
    crease_line,
    folded,
    folding_of,
    reflection,
)
from publish.draw.sheets.labels import Room, readable_angle, size_of
from publish.draw.sheets.template import UPRIGHT, polar
from publish.model.figure import Figure
from publish.model.words import FigureSpec

WRONG_SIDE_UP = True
"""The cloth is first laid wrong side up, so that it folds with its wrong sides together
and every mark is made on the right side."""
ROOM = 1.7
"""Inches that the cloth may fill in a figure."""
LARGEST = 1.4
"""Inches printed for half the square's side, at most."""
FOLDED = 1.3
"""Points: the weight of a folded edge."""
_STAGES = {"flat": 0, "half": 1, "quarter": 2, "third": 2, "thirds": 3, "eighth": 3}


def fold(context: Context, spec: FigureSpec) -> Figure:
    """Draw the cloth after `stage` folds of the motif's folding."""
    motif, shape = context.motif(spec)
    way = folding_of(shape.folds)
    made = _stage(spec, way)
    layers = folded(way, made)
    colour = context.colour(motif.fabric)
    canvas = context.canvas(STEP_WIDTH, STEP_WIDTH)
    frame = _frame(canvas, layers)
    lay_cloth(frame, layers, colour)
    last = made == len(way.creases)
    whole = unary_union([layer.place for layer in layers])
    edges = _folded_edges(layers, way, made)
    for angle in edges:
        frame.lines(_along(whole, angle), Stroke(edge_of(colour), FOLDED, (), "round"))
    if last:
        _name_wedge(frame, way, whole)
    else:
        for angle in edges:
            if (angle + 180) % 360 not in edges or angle < 180:
                outside_words(frame, whole, angle, context.labels.text("figure-fold"), "regular")
        _next_fold(frame, layers, way.creases[made], colour)
    name_centre(frame, last)
    return canvas.figure(spec, _alt(context.labels, way, made))


def _stage(spec: FigureSpec, way: Folding) -> int:
    """Return the number of folds made: a number, or the name of a stage."""
    given = spec.get("stage", "0")
    made = _STAGES.get(given)
    if made is None:
        if not given.isdecimal():
            raise CannotDrawError(f"there is no stage {given!r} of folding")
        made = int(given)
    return min(made, len(way.creases))


def _frame(canvas: Canvas, layers: tuple[Layer, ...]) -> Canvas:
    left, top, right, bottom = unary_union([layer.place for layer in layers]).bounds
    scale = min(ROOM / (right - left), ROOM / (bottom - top), LARGEST)
    middle = canvas.width / 2 - scale * (left + right) / 2
    return canvas.frame(middle, 0.2 - scale * top, scale)


def lay_cloth(frame: Canvas, layers: tuple[Layer, ...], colour: str) -> None:
    """Draw what can be seen of every layer, the bottom one first, and the outline."""
    edge = Stroke(_layer_edge(colour), 0.5)
    for index, layer in enumerate(layers):
        above = unary_union([upper.shown for upper in layers[index + 1 :]])
        seen = layer.shown.difference(above)
        if seen.area > 1e-4:
            fabric(frame, seen, colour, "right" if shows_right(layer) else "wrong", edge)
    whole = unary_union([layer.shown for layer in layers])
    frame.shape(whole, None, Stroke(edge_of(colour), 0.7))


def _layer_edge(colour: str) -> str:
    """Return a line that shows between two layers: dark on light cloth, light on dark."""
    dark = edge_of(colour)
    return dark if contrast(dark, colour) >= 3 else mix(colour, PAPER, 0.75)


def shows_right(layer: Layer) -> bool:
    """Return whether a layer shows the right side of the cloth."""
    return layer.flipped == WRONG_SIDE_UP


def _wedge_edges(way: Folding) -> tuple[float, float]:
    return UPRIGHT, UPRIGHT + way.wedge


def _folded_edges(layers: tuple[Layer, ...], way: Folding, made: int) -> tuple[float, ...]:
    """Return the angles of the rays from the centre along which the cloth is folded."""
    if made == len(way.creases):
        return _wedge_edges(way)
    whole = unary_union([layer.place for layer in layers])
    rays = {round(c.angle + turn, 3) % 360 for c in way.creases[:made] for turn in (0, 180)}
    return tuple(sorted(a for a in rays if _along(whole, a).length > 0.2))


def _along(whole: BaseGeometry, angle: float) -> BaseGeometry:
    """Return the part of the outline that lies on a ray from the centre."""
    reach = max(abs(bound) for bound in whole.bounds) * 2
    ray = LineString([(0, 0), polar(reach, angle)])
    near = whole.boundary.intersection(ray.buffer(1e-6))
    ends = [p for part in getattr(near, "geoms", [near]) for p in part.coords]
    far = max((x * cos(radians(angle)) + y * sin(radians(angle)) for x, y in ends), default=0.0)
    return LineString([(0, 0), polar(far, angle)]) if far > 1e-3 else LineString()


def outside_words(
    frame: Canvas, whole: BaseGeometry, angle: float, words: str, face: str = "regular"
) -> None:
    """Set words along a folded edge, outside the cloth, never upside down."""
    edge = frame.to_page(_along(whole, angle))
    page = frame.to_page(whole)
    middle = edge.interpolate(0.5, normalized=True)
    for side in (90, -90):
        dx, dy = polar(8.5, angle + side)
        at = (middle.x + dx, middle.y + dy)
        if not page.contains(Point(at)):
            level = readable_angle(angle)
            frame.page.text(at, words, LABEL, face, "middle", "middle", INK, level)
            return


def _name_wedge(frame: Canvas, way: Folding, whole: BaseGeometry) -> None:
    multiple, single = _wedge_edges(way)
    outside_words(frame, whole, multiple, frame.labels.text("figure-multiple-folds"), "semibold")
    outside_words(frame, whole, single, frame.labels.text("figure-single-fold"), "semibold")
    left, top, right, _ = frame.to_page(whole).bounds
    at = ((left + right) / 2, top - 6)
    frame.page.text(at, frame.labels.text("figure-open-edges"), LABEL, "semibold", "middle")


def name_centre(frame: Canvas, words: bool) -> None:
    """Mark the centre of the cloth, with its name below on the left."""
    x, y = frame.point((0, 0))
    page = frame.page
    if words:
        page.line((x, y), (x - 11, y + 9), LEADER)
        page.text(
            (x - 12, y + 10), frame.labels.text("figure-centre"), LABEL, "semibold", "middle", "top"
        )
    page.circle((x, y), 1.8, INK, Stroke(PAPER, 0.5))


def _next_fold(frame: Canvas, layers: tuple[Layer, ...], crease: Crease, colour: str) -> None:
    """Draw the crease to come, the arrow of the side that goes over, and which side shows."""
    top = layers[-1]
    ink = readable_on(colour) if shows_right(top) else INK
    line = crease_line(layers, crease)
    frame.lines(line, CREASE.but(colour=ink, weight=0.8))
    moving, staying = _sides(layers, crease)
    # The arrow runs beyond the middle, so that the middle is left for words.
    start = affinity.translate(moving, *polar(0.2, crease.angle)).centroid
    a, b, d, e = reflection(crease.angle)
    end = (a * start.x + b * start.y, d * start.x + e * start.y)
    track = bend((start.x, start.y), end, 0.2 * crease.over)
    arrow(frame, track, Stroke(ink, 1.1), "open", size=6.0)
    words = (
        frame.labels.text("figure-right-side")
        if shows_right(top)
        else frame.labels.text("figure-wrong-side")
    )
    lines = frame.to_page(unary_union([line, LineString(track)]))
    room = Room(frame.to_page(unary_union([moving, staying])), lines, 3.0)
    spot = room.spot(*size_of(words, LABEL, "italic"), within=frame.to_page(top.shown))
    if spot is not None:
        frame.page.text(spot, words, LABEL, "italic", "middle", "middle", ink)


def _sides(layers: tuple[Layer, ...], crease: Crease) -> tuple[Polygon, Polygon]:
    whole = unary_union([layer.place for layer in layers])
    far = polar(4, crease.angle + 90 * crease.over)
    along = polar(4, crease.angle)
    half = Polygon(
        [
            along,
            (along[0] + far[0], along[1] + far[1]),
            (far[0] - along[0], far[1] - along[1]),
            (-along[0], -along[1]),
        ]
    )
    return whole.intersection(half), whole.difference(half)


def _alt(say: Labels, way: Folding, made: int) -> str:
    count = way.folds if made == len(way.creases) else len(folded(way, made))
    side = (
        say.text("figure-right-side-out")
        if WRONG_SIDE_UP
        else say.text("figure-right-sides-together")
    )
    if made == 0:
        up = say.text("figure-wrong-side-up") if WRONG_SIDE_UP else say.text("figure-right-side-up")
        return say.text("figure-folding-alt", up=up)
    if made < len(way.creases):
        return say.text(
            "figure-folding-alt-2", made=made, creases=len(way.creases), side=side, count=count
        )
    return say.text("figure-folding-alt-3", count=count, side=side)
