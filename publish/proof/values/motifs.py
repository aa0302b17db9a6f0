"""Whether each motif is drafted true, lies where it belongs, and has cloth enough.

In: a case. Out: notes.
Invariant: the motif is as wide as its size says; its wedge, opened, is the whole; the cut
line stands off by the turn-under; it is in as many pieces as the pattern says; it lies in
the middle of its block; square and ground are cut with the margins that the pattern asks.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from shapely.geometry.base import BaseGeometry

from publish.model.draft import MotifShape
from publish.model.pattern import Motif
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.proof.values.sewn_sizes import beyond

CODES = {
    "P816": Code(
        "A motif's square or ground is cut without its margin",
        "the folded cloth is too small",
        "a 15 1/2 in motif from a 15 3/4 in square",
        "a 15 1/2 in motif from a 17 in square",
    ),
    "P817": Code(
        "A motif is not drafted at its size",
        "the template does not fit the block",
        "a wedge that opens to 14 in for a motif of 14 1/2 in",
        "a wedge that opens to the size's own `motif_size`",
    ),
    "P818": Code(
        "A motif does not lie in the middle of its block",
        "the design leans to one side",
        "a motif an inch to the right of the centre",
        "a motif on the block's centre",
    ),
}

_EIGHT = 8
"""Folds of which the first two follow the threads and the last lies across them."""
_PIECED = 2
"""Patches of a ground that is pieced; whole cloth is judged by its square."""
_SHARE = 0.002
"""Share by which lengths and areas of drafted curves may differ."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each motif that is untrue, out of place or short of cloth."""
    for key in case.keys:
        for name, shape in case.drafts[key].motifs.items():
            for what, expected, received in _untrue(case, key, shape, case.pattern.motifs[name]):
                yield error(
                    "P817",
                    case.size_place(key, "motif_size"),
                    f"the motif {name} of the {key} is not true: {what}",
                    expected=expected,
                    received=received,
                )
        yield from _cloth(case, key)
        yield from _places(case, key)
        yield from _pieced(case, key)


def _wide(shape: BaseGeometry) -> float:
    left, top, right, bottom = shape.bounds
    return float(max(right - left, bottom - top))


def _untrue(
    case: Case, key: str, shape: MotifShape, motif: Motif
) -> Iterator[tuple[str, str, str]]:
    span, wide = float(shape.span), _wide(shape.whole)
    graded = case.sizes[key].motif_span
    if graded is not None and shape.span != graded:
        yield "its width", case.text(graded), case.text(shape.span)
    reach = _reach(shape.whole)
    if not _near(wide, span) and not _near(2 * reach, span):
        yield "the whole motif", case.text(shape.span), f"{wide:.3f} in"
    area = shape.wedge.area * shape.folds
    if not _near(area, shape.whole.area):
        yield "its wedge, opened", f"{shape.whole.area:.2f} sq in", f"{area:.2f} sq in"
    beside = shape.wedge.difference(shape.whole)
    if beside.area > _SHARE * shape.wedge.area:  # growing the whole is the slow part
        beside = beside.difference(shape.whole.buffer(_SHARE * span))
    outside = beside.area
    if outside > _SHARE * shape.wedge.area:
        yield "its wedge", "inside the whole", f"{outside:.3f} sq in beside it"
    turn = float(motif.turn_under) if motif.method != "fusible" else 0.0
    grown = shape.cut_line.area - shape.whole.area
    if abs(grown - turn * shape.perimeter) > 0.2 * turn * shape.perimeter + _SHARE:
        yield "its cut line", f"{case.text(motif.turn_under)} outside", f"{grown:.2f} sq in more"
    if not _near(shape.wedge_angle, 360 / shape.folds):
        yield "its wedge's angle", f"{360 / shape.folds:g} degrees", f"{shape.wedge_angle:g}"
    grains = {"multiple": "straight", "single": "bias"}
    for edge in shape.edges or () if shape.folds == _EIGHT else ():
        if edge.grain != grains[edge.kind]:
            yield f"its {edge.kind} fold", f"on the {grains[edge.kind]} grain", edge.grain
    if shape.pieces != len(shape.whole.geoms):
        yield "its pieces", str(len(shape.whole.geoms)), str(shape.pieces)


def _reach(shape: BaseGeometry) -> float:
    return max(abs(float(v)) for v in shape.bounds)


def _near(one: float, other: float) -> bool:
    return abs(one - other) <= _SHARE * max(abs(other), 1.0)


def _cloth(case: Case, key: str) -> Iterator[Note]:
    """The square to fold, and a whole ground that is trimmed later."""
    plan, size, sewing = case.plans[key], case.sizes[key], case.pattern.sewing
    laid = {p.motif for p in case.drafts[key].placements}
    folded = {
        case.pattern.motifs[m].fabric for m in laid if case.pattern.motifs[m].method != "fusible"
    }
    # The one patch of a block that carries a motif: that of a plain block has no margin.
    whole = {
        plan.sources.get(patch.key)
        for patch in case.drafts[key].patches
        if patch.block is not None
        and case.pattern.blocks[patch.block].motif in laid
        and len(case.pattern.blocks[patch.block].patches) == 1
    }
    for piece in plan.pieces:
        kind = piece.purpose.split()[0]
        least = Fraction(0)
        if kind == "motif" and piece.fabric in folded and size.motif_span is not None:
            least = size.motif_span + sewing.motif_margin
            if plan.motif_square is not None and piece.width != plan.motif_square:
                yield _short(case, key, f"piece {piece.letter}", plan.motif_square, piece.width)
        elif piece.letter in whole:
            least = size.block_side + 2 * case.seam + sewing.ground_margin
        if min(piece.width, piece.length) < least:
            yield _short(case, key, f"piece {piece.letter}", least, piece.width)


def _pieced(case: Case, key: str) -> Iterator[Note]:
    """The pieces of a pieced ground: those at its edge have half the margin on each side."""
    letters = {p.letter: p for p in case.plans[key].pieces if p.shape in ("rectangle", "template")}
    told: set[str] = set()
    for unit in case.drafts[key].assembly.outermost_first():
        patch = unit.patch
        block = case.pattern.blocks.get(patch.block or "") if patch is not None else None
        if patch is None or block is None or block.motif is None or len(block.patches) < _PIECED:
            continue
        piece = letters.get(case.plans[key].sources.get(patch.key, ""))
        if piece is None or piece.finished_width is None or piece.letter in told:
            continue
        needed, cut = sorted(beyond(case, key, unit)), sorted((piece.width, piece.length))
        for least, received in zip(needed, cut, strict=True):
            if received < least and piece.letter not in told:
                told.add(piece.letter)
                yield _short(case, key, f"piece {piece.letter}", case.near(least), received)


def _short(case: Case, key: str, what: str, least: Fraction, received: Fraction) -> Note:
    return error(
        "P816",
        case.size_place(key),
        f"{what} of the {key} is cut without its margin",
        expected=case.text(least),
        received=case.text(received),
    )


def _places(case: Case, key: str) -> Iterator[Note]:
    """A motif's centre is the middle of the ground patches of its own block."""
    draft = case.drafts[key]
    placed = any(p.place is not None for p in draft.patches)
    for one in draft.placements:
        mine = [p.box for p in draft.patches if p.role == "ground" and p.place == one.place]
        if not mine and placed:
            yield error(
                "P818",
                case.size_place(key),
                f"a motif of the {key} belongs to a block that is not there",
                expected="the row and column of the block that it lies on",
                received=f"row {one.row + 1}, column {one.column + 1}",
            )
        if not mine:
            continue
        lefts, tops, rights, bottoms = zip(*mine, strict=True)
        middle = (min(lefts) + max(rights)) / 2, (min(tops) + max(bottoms)) / 2
        if middle != (one.x, one.y):
            yield error(
                "P818",
                case.size_place(key),
                f"a motif of the {key} does not lie in the middle of its block",
                expected=" and ".join(map(case.text, middle)),
                received=f"{case.text(one.x)} and {case.text(one.y)}",
            )
