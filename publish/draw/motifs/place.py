"""The motif opened, and laid on its ground.

In: a motif at one size, and for placing a block. Out: the figures `unfold` and
`place-motif`.
Invariant: what is opened is the cloth as it was cut, turn-under included; on the ground
the motif lies as it does on the finished block.
"""

from __future__ import annotations

from shapely import affinity
from shapely.geometry import LineString, MultiLineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from publish.arcs import corners
from publish.colour import contrast
from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import arrow, bend, block_arrow, leader
from publish.draw.canvas.style import (
    BASTE,
    CREASE,
    INK,
    LABEL,
    PAPER,
    RED_BROWN,
    STEP_WIDTH,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.cloth import fabric
from publish.draw.context import CannotDrawError, Context
from publish.draw.motifs.folding_steps import SHY, folding_of, reflection
from publish.draw.sheets.template import polar, standing, stood
from publish.model.basting import on_ground
from publish.model.draft import MotifShape
from publish.model.figure import Figure
from publish.model.pattern import Block
from publish.model.words import FigureSpec

SMALL_SIDE = 1.08
"""Inches: each of the two pictures of the motif opening."""
GROUND = 2.2
"""Inches: the side of the ground."""


def unfold(context: Context, spec: FigureSpec) -> Figure:
    """Draw the cut motif half opened, then open with its creases."""
    motif, shape = context.motif(spec)
    if shape.edges is None:
        raise CannotDrawError("a motif without folds has nothing to unfold")
    way = folding_of(shape.folds)
    colour = context.colour(motif.fabric)
    turn, mirrored = standing(shape.edges)
    # The cloth lies as it did when it was folded, so that the first fold opens last.
    whole = affinity.rotate(stood(shape.cut_line, turn, mirrored), -way.turn, origin=(0, 0))
    left, top, right, bottom = whole.bounds
    scale = SMALL_SIDE / max(right - left, bottom - top)
    canvas = context.canvas(STEP_WIDTH, 1.6)
    first = canvas.frame(0.06 + SMALL_SIDE / 2, 0.7, scale)
    second = canvas.frame(STEP_WIDTH - 0.06 - SMALL_SIDE / 2, 0.7, scale)
    angle, over = way.creases[0].angle, way.creases[0].over
    _half_open(first, whole, angle, over, colour)
    y = 0.7
    block_arrow(canvas, (STEP_WIDTH / 2 - 0.1, y), (STEP_WIDTH / 2 + 0.1, y), INK, 8)
    fabric(second, whole, colour)
    _creases(second, whole, [angle + 360 / shape.folds * i for i in range(shape.folds)], colour)
    page = canvas.page
    under = first.to_page(whole).bounds[3] + 11
    page.text(
        (first.point((0, 0))[0], under),
        context.labels.text("figure-the-last-fold-opens"),
        LABEL,
        "regular",
        "middle",
    )
    page.text(
        (second.point((0, 0))[0], under),
        context.labels.text("figure-open-creases-showing"),
        LABEL,
        "regular",
        "middle",
    )
    alt = context.labels.text("figure-place-unfold", folds=shape.folds)
    return canvas.figure(spec, alt)


def _half_open(frame: Canvas, whole: BaseGeometry, angle: float, over: int, colour: str) -> None:
    """Draw the motif folded in half, the lower layer a hair beyond the upper."""
    along, away = polar(99, angle), polar(99, angle - 90 * over)
    half = Polygon(
        [
            along,
            (along[0] + away[0], along[1] + away[1]),
            (away[0] - along[0], away[1] - along[1]),
            (-along[0], -along[1]),
        ]
    )
    seen = whole.intersection(half)
    fabric(frame, seen, colour, "wrong")
    short = affinity.rotate(
        affinity.scale(affinity.rotate(seen, -angle, origin=(0, 0)), 1, 1 - 2 * SHY, origin=(0, 0)),
        angle,
        origin=(0, 0),
    )
    fabric(frame, short, colour)
    fold = LineString([polar(-99, angle), polar(99, angle)]).intersection(whole)
    frame.lines(fold, Stroke(edge_of(colour), 1.2))
    reach = max(abs(bound) for bound in whole.bounds) * 0.62
    tip = polar(reach, angle - 90 * over)
    sideways = polar(reach * 0.9, angle)
    a, b, d, e = reflection(angle)
    begin = (tip[0] + sideways[0] * 0.9, tip[1] + sideways[1] * 0.9)
    end = (a * begin[0] + b * begin[1], d * begin[0] + e * begin[1])
    track = bend(begin, end, -0.25 * over)
    frame.polyline(track, Stroke(PAPER, 2.6))  # the arrow shows on dark cloth too
    arrow(frame, track, Stroke(INK, 1.0), "open", size=6.0)


def _parts(shape: BaseGeometry) -> list[Polygon]:
    return [g for g in getattr(shape, "geoms", [shape]) if g.geom_type == "Polygon"]


def _creases(frame: Canvas, whole: BaseGeometry, angles: list[float], colour: str) -> None:
    rays = MultiLineString([[(0, 0), polar(99, angle)] for angle in angles])
    shade = mix(colour, readable_on(colour), 0.6)
    frame.lines(rays.intersection(whole), CREASE.but(colour=shade, weight=0.5))


def place_motif(context: Context, spec: FigureSpec) -> Figure:
    """Draw the motif centred on its ground, creases on creases, basted inside its edges."""
    motif, shape = context.motif(spec)
    block = _block(context, spec, shape.key)
    side = float(context.size(spec).block_side)
    canvas = context.canvas(STEP_WIDTH, STEP_WIDTH)
    frame = canvas.frame(STEP_WIDTH / 2, 0.08 + GROUND / 2, GROUND / side)
    _ground(frame, context, block, side)
    ground = box(-side / 2, -side / 2, side / 2, side / 2)
    frame.lines(_guides(side).intersection(ground), CREASE.but(weight=0.55))
    colour = context.colour(motif.fabric)
    fabric(frame, shape.cut_line, colour)
    _creases(frame, shape.cut_line, _rays(shape), colour)
    thread = BASTE if contrast(RED_BROWN, colour) >= 2.5 else BASTE.but(colour=PAPER)
    rows = MultiLineString() if motif.method == "fusible" else on_ground(shape)
    frame.lines(rows, thread, smooth=0)
    _names(frame, shape, rows, side)
    held = "" if rows.is_empty else context.labels.text("figure-place-place-motif")
    alt = context.labels.text(
        "figure-place-place-motif-2", labels=_lined_up(context.labels, shape), held=held
    )
    return canvas.figure(spec, alt)


def _block(context: Context, spec: FigureSpec, motif: str) -> Block:
    key = spec.get("block")
    blocks = context.pattern.blocks
    if key:
        if key not in blocks:
            raise CannotDrawError(f"there is no block {key!r}")
        return blocks[key]
    for block in blocks.values():
        if block.motif == motif:
            return block
    raise CannotDrawError(f"no block carries the motif {motif!r}")


def _ground(frame: Canvas, context: Context, block: Block, side: float) -> None:
    for patch in block.patches:
        colour = context.colour(patch.fabric)
        ring = [
            (x / block.columns * side - side / 2, y / block.rows * side - side / 2)
            for x, y in corners(patch.ring, patch.arcs)
        ]
        fabric(frame, Polygon(ring), colour)


def _guides(side: float) -> MultiLineString:
    h = side / 2
    return MultiLineString(
        [
            [(-h, 0), (h, 0)],
            [(0, -h), (0, h)],
            [(-h, -h), (h, h)],
            [(-h, h), (h, -h)],
        ]
    )


def _rays(shape: MotifShape) -> list[float]:
    """Return the angles of a motif's creases on its ground."""
    first = shape.edges[0].angle if shape.edges else 0.0
    return [first + 360 / shape.folds * i for i in range(shape.folds)]


def _shared(shape: MotifShape) -> list[float]:
    """Return the angles at which a crease of the motif lies on one of the ground."""
    return [a for a in _rays(shape) if abs((a + 22.5) % 45 - 22.5) < 0.01]


def _lined_up(say: Labels, shape: MotifShape) -> str:
    """Say which of the ground's creases the motif's lie on."""
    diagonal = [abs(a % 90 - 45) < 0.01 for a in _shared(shape)]
    found = [
        words
        for words, there in (
            (say.text("figure-in-half-2"), not all(diagonal)),
            (say.text("figure-on-the-diagonals"), any(diagonal)),
        )
        if there
    ]
    if not found:
        return say.text("figure-place-lined-up")
    return say.text("figure-place-lined-up-2", found=say.text("figure-and").join(found))


def _names(frame: Canvas, shape: MotifShape, rows: MultiLineString, side: float) -> None:
    """Name the basting and, where creases of motif and ground lie together, one of these."""
    page = frame.page
    left, foot = frame.point((-side / 2, side / 2))
    right = frame.point((side / 2, 0))[0]
    if not rows.is_empty:
        low = max(rows.geoms, key=lambda r: round(float(r.centroid.y - r.centroid.x * 0.4), 6))
        end = low.interpolate(0.8, normalized=True)
        leader(
            page,
            frame.point((end.x, end.y)),
            (left + 24, foot + 12),
            frame.labels.text("figure-basting"),
            "end",
        )
    shared = [a % 360 for a in _shared(shape)]
    if not shared:
        return
    # the lowest and rightmost of them, at the edge of the ground
    angle = max(shared, key=lambda a: round(polar(1, a)[1] + 0.5 * polar(1, a)[0], 6))
    x, y = polar(1, angle)
    reach = side * 0.48 / max(abs(x), abs(y))
    leader(
        page,
        frame.point((x * reach, y * reach)),
        (right - 22, foot + 12),
        frame.labels.text("figure-creases-together"),
        "end",
    )
