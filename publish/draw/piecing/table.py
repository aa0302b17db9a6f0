"""Units of the top as they lie on the table: raw edges, letters, seams, pressing.

In: a frame, units of a draft, a plan. Out: parts and joined units recorded on the frame.
Invariant: a part is drawn at its size before sewing, finished size and what lies beyond
it at every raw edge, so that a joined picture is narrower than its parts by what the
seams took up.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from fractions import Fraction

from shapely.geometry import Polygon
from shapely.ops import polylabel, unary_union

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import CAP_HEIGHT, text_width
from publish.draw.canvas.shapes import NEAR, grown, laid, outline_of, polygon_of
from publish.draw.canvas.style import (
    HEAD,
    INK,
    SMALL,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.context import Context
from publish.draw.top import paint_motifs, placed
from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft, Patch, Placement, Point, Unit
from publish.surd import Length, turned

Margins = tuple[Fraction, Fraction, Fraction, Fraction]
"""Left, top, right, bottom."""


def holds(draft: Draft, holders: Iterable[Unit]) -> tuple[Placement, ...]:
    """Return the motifs that lie whole on one of the units.

    A motif is applied once the ground under it is whole, so a unit whose own seams run
    under a motif does not carry it until it has been joined.
    """
    holders = list(holders)
    found = []
    for place in draft.placements:
        shape = placed(draft, place)
        if any(_inside(laid(shape, h.turn).bounds, h) for h in holders):
            found.append(place)
    return tuple(found)


def _inside(bounds: tuple[float, float, float, float], unit: Unit) -> bool:
    left, top, right, bottom = (float(v) for v in unit.box)
    slack = 1e-6
    across = left - slack <= bounds[0] and bounds[2] <= right + slack
    return across and top - slack <= bounds[1] and bounds[3] <= bottom + slack


def margins(context: Context, draft: Draft, unit: Unit, trimmed: bool) -> Margins:
    """Return how far a unit's raw edges lie beyond its finished ones.

    A seam allowance, the pillow's own on the edge of its cover, and on the outer edges of
    a ground that is still to be trimmed half the ground's margin as well.
    """
    seams = _seams(context, draft, unit)
    patches = unit.patches
    blocks = {p.block for p in patches if p.block is not None}
    carries = any(context.pattern.blocks[b].motif for b in blocks)
    if trimmed or not carries:
        return seams
    first = patches[0]
    mates = [q for q in draft.patches if (q.place, q.role) == (first.place, first.role)]
    outer = box_of(mates, unit.turn)
    extra = context.pattern.sewing.ground_margin / 2
    left, top, right, bottom = (
        seam + (extra if mine == its else 0)
        for seam, mine, its in zip(seams, unit.box, outer, strict=True)
    )
    return left, top, right, bottom


def _seams(context: Context, draft: Draft, unit: Unit) -> Margins:
    """Return the seam allowance at each side of a unit."""
    seam, pillow = context.pattern.sewing.seam, context.sizes[draft.size].pillow
    if pillow is None or unit.turn:
        return seam, seam, seam, seam
    edges = Fraction(0), Fraction(0), draft.width, draft.height
    left, top, right, bottom = (
        pillow.seam if side == edge else seam for side, edge in zip(unit.box, edges, strict=True)
    )
    return left, top, right, bottom


def laid_size(unit: Unit, margin: Margins) -> tuple[Fraction, Fraction]:
    """Return a unit's width and height as it lies on the table."""
    left, top, right, bottom = margin
    return unit.width + left + right, unit.height + top + bottom


def told_size(unit: Unit, margin: Margins, trimmed: bool) -> tuple[Length, Length]:
    """Return the width and height that a figure tells: what the words say it measures."""
    if unit.sewn is None or trimmed:
        return laid_size(unit, margin)
    return unit.sewn.told


def raw_patch(unit: Unit, patch: Patch, margin: Margins) -> Polygon:
    """Return a patch as it lies in a unit: grown at the unit's raw edges."""
    if _squared(unit, (patch,)):
        return _raw_rectangle(unit, patch, margin)
    return _raw_shape(unit, patch, margin, laid(outline_of(unit), unit.turn))


def raw_patches(unit: Unit, margin: Margins) -> list[tuple[Patch, Polygon]]:
    """Return every patch of a unit as it lies in it, in the unit's own frame."""
    if _squared(unit, unit.patches):
        return [(p, _raw_rectangle(unit, p, margin)) for p in unit.patches]
    outline = laid(outline_of(unit), unit.turn)
    return [(p, _raw_shape(unit, p, margin, outline)) for p in unit.patches]


def _squared(unit: Unit, patches: Iterable[Patch]) -> bool:
    """Return whether a unit fills its box and the patches are rectangles along its sides."""
    if unit.turn or unit.arcs or len(unit.ring or unit.box) != 4:
        return False
    return all(upright(p.ring) and not p.arcs for p in patches)


def upright(ring: Sequence[Point]) -> bool:
    """Return whether a ring is a rectangle whose sides run across and down."""
    xs, ys = ({p[axis] for p in ring} for axis in (0, 1))
    return len(ring) == 4 and len(set(ring)) == 4 and len(xs) == 2 and len(ys) == 2


def _raw_rectangle(unit: Unit, patch: Patch, margin: Margins) -> Polygon:
    (left, top, right, bottom), (west, north, east, south) = unit.box, margin
    across, down = {left: -west, right: east}, {top: -north, bottom: south}
    ring = [(x + across.get(x, 0), y + down.get(y, 0)) for x, y in patch.ring]
    return Polygon([(float(x), float(y)) for x, y in ring])


def _raw_shape(unit: Unit, patch: Patch, margin: Margins, outline: Polygon) -> Polygon:
    sides = [float(v) for v in unit.box]
    amounts = [float(v) for v in margin]

    def by(a: tuple[float, float], b: tuple[float, float]) -> float:
        for side, amount in zip(range(4), amounts, strict=True):
            axis = side % 2
            if max(abs(a[axis] - sides[side]), abs(b[axis] - sides[side])) < NEAR:
                return amount
        return min(amounts)

    return grown(laid(polygon_of(patch), unit.turn), outline, by)


def paint_raw(
    frame: Canvas,
    context: Context,
    draft: Draft,
    unit: Unit,
    margin: Margins,
    places: Iterable[Placement] = (),
) -> None:
    """Draw a unit with its raw edges; the patches inside meet at their finished seams."""
    shapes = []
    for patch, shape in raw_patches(unit, margin):
        colour = context.colour(patch.fabric)
        frame.shape(shape, colour, Stroke(mix(colour, INK, 0.38), 0.35))
        shapes.append(shape)
    paint_motifs(top_frame(frame, unit), context, draft, places)
    darkest = edge_of(context.colour(unit.patches[0].fabric))
    if not _squared(unit, unit.patches):  # turned corners miss each other by a hair
        shapes = [s.buffer(1e-5, join_style="mitre") for s in shapes]
    frame.shape(unary_union(shapes), None, Stroke(darkest, 0.55))


def top_frame(frame: Canvas, unit: Unit) -> Canvas:
    """Return a frame for shapes in inches of the top, on one in the unit's own frame."""
    return frame.frame(0, 0, 1.0, -unit.turn) if unit.turn else frame


def piece_for(plan: CutPlan, patch: Patch) -> Piece | None:
    """Return the cut piece that a patch is made from.

    The plan says which; where it does not, by fabric, role and finished size.
    """
    letter = plan.sources.get(patch.key)
    if letter is not None:
        return next((p for p in plan.pieces if p.letter == letter), None)
    left, top, right, bottom = patch.box
    sides = sorted((right - left, bottom - top))
    role = [p for p in plan.pieces if p.fabric == patch.fabric and p.purpose.startswith(patch.role)]
    for piece in role:
        if piece.finished_width is None or piece.finished_length is None:
            continue
        if sorted((piece.finished_width, piece.finished_length)) == sides:
            return piece
    return role[0] if len(role) == 1 else None


def letter_part(
    frame: Canvas, context: Context, plan: CutPlan, unit: Unit, margin: Margins
) -> None:
    """Set the letter and cut size of a unit's patches in their middles, where they fit."""
    say = context.labels
    for patch, shape in raw_patches(unit, margin):
        piece = piece_for(plan, patch)
        if piece is None:
            continue
        ink = readable_on(context.colour(patch.fabric))
        left, top, right, bottom = shape.bounds
        if not patch.arcs and shape.area > 0.999 * (right - left) * (bottom - top):
            words = ""
            if piece.shape == "rectangle" and _as_cut(piece, right - left, bottom - top):
                words = f"{say.number(piece.width)} × {say.number(piece.length)}"
            _rectangle_label(frame, shape.bounds, piece.letter, words, ink)
        else:
            letter_inside(frame, shape, piece.letter, ink)


def _as_cut(piece: Piece, wide: float, high: float) -> bool:
    """Return whether a patch is a piece as it is cut, and not one of many from it.

    A patch that has been sewn to others is less by its seams.
    """
    sides = zip(
        sorted((float(piece.width), float(piece.length))), sorted((wide, high)), strict=True
    )
    return all(abs(cut - drawn) <= 0.7 for cut, drawn in sides)


def _rectangle_label(
    frame: Canvas, bounds: tuple[float, float, float, float], letter: str, words: str, ink: str
) -> None:
    left, top, right, bottom = bounds
    centre = ((left + right) / 2, (top + bottom) / 2)
    wide, high = (right - left) * frame.unit, (bottom - top) * frame.unit
    roomy = bool(words) and wide > text_width(words, SMALL) + 3 and high > 24
    up = -5.0 if roomy else 0.0
    if min(wide, high) >= 9:
        frame.text(centre, letter, HEAD, "semibold", "middle", "middle", ink, shift=(0, up))
    if roomy:
        frame.text(centre, words, SMALL, "regular", "middle", "middle", ink, shift=(0, up + 10.5))


def letter_inside(frame: Canvas, shape: Polygon, letter: str, ink: str) -> bool:
    """Set a letter where a shape is widest; return False where it has no room."""
    spot, middle = polylabel(shape, 0.02 * math.sqrt(shape.area)), shape.centroid
    room = spot.distance(shape.boundary) * frame.unit
    if shape.contains(middle) and middle.distance(shape.boundary) * frame.unit > 0.9 * room:
        spot, room = middle, 0.9 * room
    for size in (HEAD, SMALL):
        if math.hypot(text_width(letter, size, "semibold"), size * CAP_HEIGHT) / 2 <= room:
            frame.text((spot.x, spot.y), letter, size, "semibold", "middle", "middle", ink)
            return True
    return False


def box_of(patches: Iterable[Patch], turn: int = 0) -> tuple[Length, Length, Length, Length]:
    """Return left, top, right, bottom of patches in a frame turned by `turn` degrees."""
    corners = [turned(c, -turn) if turn else c for p in patches for c in p.ring]
    xs, ys = zip(*corners, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def single(patch: Patch) -> Unit:
    """Return a patch as a unit of its own."""
    turn = patch.turn % 90
    return Unit(patch.key, patch.role, box_of([patch], turn), patch=patch, turn=turn)


def together(patches: Iterable[Patch], name: str, askew: bool = True) -> Unit:
    """Return patches as one unit, however they are sewn; `askew` where all of them are."""
    patches = tuple(patches)
    turns = {p.turn % 90 for p in patches}
    turn = turns.pop() if askew and len(turns) == 1 else 0
    return Unit(
        name, name, box_of(patches, turn), None, tuple(single(p) for p in patches), turn=turn
    )


def ground_of(draft: Draft, block: str) -> Unit:
    """Return the ground of the first block of a kind on the top, or of any block."""
    grounds = [p for p in draft.patches if p.role == "ground"]
    of_kind = [p for p in grounds if p.block == block] or grounds
    first = of_kind[0].place
    return together([p for p in grounds if p.place == first], "block")
