"""Units of the top as they lie on the table: raw edges, letters, seams, pressing.

In: a frame, units of a draft, a plan. Out: parts and joined units recorded on the frame.
Invariant: a part is drawn at its size before sewing, finished size and what lies beyond
it at every raw edge, so that a joined picture is narrower than its parts by what the
seams took up.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from shapely.geometry import Polygon
from shapely.ops import unary_union

from publish.draw.canvas import Canvas
from publish.draw.context import Context
from publish.draw.letters import set_number, text_width
from publish.draw.marks import block_arrow
from publish.draw.style import (
    HEAD,
    INK,
    PAPER,
    SMALL,
    Stroke,
    edge_of,
    mix,
    readable_on,
)
from publish.draw.top import paint_motifs, patches_of
from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft, Patch, Placement, Unit

Margins = tuple[Fraction, Fraction, Fraction, Fraction]
"""Left, top, right, bottom."""
WAYS = {"left": (-1, 0), "right": (1, 0), "up": (0, -1), "down": (0, 1)}


def raw_size(unit: Unit, seam: Fraction) -> tuple[Fraction, Fraction]:
    """Return a unit's width and height with a seam allowance all round."""
    return unit.width + 2 * seam, unit.height + 2 * seam


def holds(draft: Draft, holders: Iterable[Unit]) -> tuple[Placement, ...]:
    """Return the motifs that lie whole on one of the units.

    A motif is applied once the ground under it is whole, so a unit whose own seams run
    under a motif does not carry it until it has been joined.
    """
    boxes = [tuple(float(v) for v in h.box) for h in holders]
    found = []
    for place in draft.placements:
        left, top, right, bottom = (float(v) for v in draft.motifs[place.motif].whole.bounds)
        x, y = float(place.x), float(place.y)
        for near_x, near_y, far_x, far_y in boxes:
            across = near_x <= x + left and x + right <= far_x
            if across and near_y <= y + top and y + bottom <= far_y:
                found.append(place)
                break
    return tuple(found)


def margins(context: Context, draft: Draft, unit: Unit, trimmed: bool) -> Margins:
    """Return how far a unit's raw edges lie beyond its finished ones.

    A seam allowance, and on the outer edges of a ground that is still to be trimmed half
    the ground's margin as well.
    """
    seam = context.pattern.sewing.seam
    patches = patches_of(unit)
    blocks = {p.block for p in patches if p.block is not None}
    carries = any(context.pattern.blocks[b].motif for b in blocks)
    if trimmed or not carries:
        return seam, seam, seam, seam
    mates = [q for q in draft.patches for p in patches[:1]
             if (q.row, q.column, q.role) == (p.row, p.column, p.role)]  # fmt: skip
    lefts, tops, rights, bottoms = zip(*(q.box for q in mates), strict=True)
    outer = (min(lefts), min(tops), max(rights), max(bottoms))
    extra = context.pattern.sewing.ground_margin / 2
    left, top, right, bottom = (
        seam + (extra if mine == its else 0) for mine, its in zip(unit.box, outer, strict=True)
    )
    return left, top, right, bottom


def laid_size(unit: Unit, margin: Margins) -> tuple[Fraction, Fraction]:
    """Return a unit's width and height as it lies on the table."""
    left, top, right, bottom = margin
    return unit.width + left + right, unit.height + top + bottom


def raw_patch(unit: Unit, patch: Patch, margin: Margins) -> Polygon:
    """Return a patch as it lies in a unit: grown at the unit's raw edges."""
    (left, top, right, bottom), (west, north, east, south) = unit.box, margin
    across, down = {left: -west, right: east}, {top: -north, bottom: south}
    ring = [(x + across.get(x, 0), y + down.get(y, 0)) for x, y in patch.ring]
    return Polygon([(float(x), float(y)) for x, y in ring])


def paint_raw(frame: Canvas, context: Context, draft: Draft, unit: Unit, margin: Margins,
              places: Iterable[Placement] = ()) -> None:  # fmt: skip
    """Draw a unit with its raw edges; the patches inside meet at their finished seams."""
    shapes = []
    for patch in patches_of(unit):
        shape = raw_patch(unit, patch, margin)
        colour = context.colour(patch.fabric)
        frame.shape(shape, colour, Stroke(mix(colour, INK, 0.38), 0.35))
        shapes.append(shape)
    paint_motifs(frame, context, draft, places)
    darkest = edge_of(context.colour(patches_of(unit)[0].fabric))
    frame.shape(unary_union(shapes), None, Stroke(darkest, 0.55))


def piece_for(plan: CutPlan, patch: Patch) -> Piece | None:
    """Return the cut piece that a patch is made from: by fabric, role and finished size."""
    left, top, right, bottom = patch.box
    sides = sorted((right - left, bottom - top))
    role = [p for p in plan.pieces if p.fabric == patch.fabric and p.purpose.startswith(patch.role)]
    for piece in role:
        if piece.finished_width is None or piece.finished_length is None:
            continue
        if sorted((piece.finished_width, piece.finished_length)) == sides:
            return piece
    return role[0] if len(role) == 1 else None


def letter_part(frame: Canvas, context: Context, plan: CutPlan, unit: Unit,
                margin: Margins) -> None:  # fmt: skip
    """Set the letter and cut size of a unit's patches in their middles, where they fit."""
    for patch in patches_of(unit):
        piece = piece_for(plan, patch)
        if piece is None:
            continue
        left, top, right, bottom = raw_patch(unit, patch, margin).bounds
        centre = ((left + right) / 2, (top + bottom) / 2)
        wide, high = (right - left) * frame.unit, (bottom - top) * frame.unit
        ink = readable_on(context.colour(patch.fabric))
        words = f"{set_number(piece.width)} × {set_number(piece.length)}"
        roomy = wide > text_width(words, SMALL) + 3 and high > 24
        up = -5.0 if roomy else 0.0
        if min(wide, high) >= 9:
            frame.text(centre, piece.letter, HEAD, "semibold", "middle", "middle", ink,
                       shift=(0, up))  # fmt: skip
        if roomy:
            frame.text(centre, words, SMALL, "regular", "middle", "middle", ink,
                       shift=(0, up + 10.5))  # fmt: skip


def seam_middles(unit: Unit) -> list[tuple[float, float]]:
    """Return the middle of each seam that joins a unit's own parts."""
    left, top, right, bottom = (float(v) for v in unit.box)
    if unit.join == "across":
        return [(float(p.box[2]), (top + bottom) / 2) for p in unit.parts[:-1]]
    return [((left + right) / 2, float(p.box[3])) for p in unit.parts[:-1]]


def press_arrows(frame: Canvas, unit: Unit, colour: str, at: list[tuple[float, float]],
                 length: float = 15.0) -> None:  # fmt: skip
    """Draw an arrow at each place, the way the allowances of that seam are pressed."""
    for number, (x, y) in enumerate(at):
        for dx, dy in _ways(unit, number, len(at)):
            half = frame.inches(length / 2)
            begin = (x, y) if unit.press == "open" else (x - dx * half, y - dy * half)
            finish = (x + dx * half, y + dy * half)
            block_arrow(frame, begin, finish, colour, 7.0, rim=PAPER)


def _ways(unit: Unit, number: int, count: int) -> list[tuple[int, int]]:
    across = unit.join == "across"
    if unit.press == "open":
        return [(-1, 0), (1, 0)] if across else [(0, -1), (0, 1)]
    if unit.press == "out":  # borders: away from the middle
        sign = -1 if number < count / 2 else 1
        return [(sign, 0)] if across else [(0, sign)]
    return [WAYS[unit.press]] if unit.press in WAYS else []


def single(patch: Patch) -> Unit:
    """Return a patch as a unit of its own."""
    return Unit(patch.key, patch.role, patch.box, patch=patch)


def together(patches: Iterable[Patch], name: str) -> Unit:
    """Return patches as one unit, however they are sewn."""
    parts = tuple(single(p) for p in patches)
    lefts, tops, rights, bottoms = zip(*(p.box for p in parts), strict=True)
    return Unit(name, name, (min(lefts), min(tops), max(rights), max(bottoms)), None, parts)


def ground_of(draft: Draft, block: str) -> Unit:
    """Return the ground of the first block of a kind on the top, or of any block."""
    grounds = [p for p in draft.patches if p.role == "ground"]
    of_kind = [p for p in grounds if p.block == block] or grounds
    first = of_kind[0]
    return together([p for p in grounds if (p.row, p.column) == (first.row, first.column)], "block")
