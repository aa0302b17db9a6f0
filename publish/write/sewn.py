"""How large things come out: the piece a patch is cut as, a unit as sewn.

In: a draft, its plan. Out: pieces, widths and heights in inches.
Invariant: a size is the sum of cut sizes less the seams, or, where a unit is trimmed or
its seams slant or curve, its finished size with what lies beyond its edges.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import Piece
from publish.model.draft import Patch, Unit
from publish.model.homes import BlockHome
from publish.surd import Length, turned
from publish.write.context import Book

Box = tuple[Length, Length, Length, Length]
"""Left, top, right, bottom."""


def piece_of(book: Book, key: str, patch: Patch) -> Piece | None:
    """Return the piece that a patch is cut as, or None when the plan has none like it.

    The plan says which piece a patch comes from. Where it does not, patches of one fabric
    and finished size may still be cut differently, by the edges that lie on the outside of
    a ground or of a pillow; the allowances tell them apart.
    """
    letter = book.plans[key].sources.get(patch.key)
    if letter is not None:
        own = [p for p in book.plans[key].pieces if p.letter == letter]
        return next(iter([*(p for p in own if p.fabric == patch.fabric), *own]), None)
    left, top, right, bottom = patch.box
    finished = (right - left, bottom - top)
    like = [
        p
        for p in book.pieces(key, patch.role, patch.fabric)
        if (p.finished_width, p.finished_length) in (finished, finished[::-1])
    ]
    before, above, after, below = around(book, key, patch.box, patch.block, patch.place)
    exact = (finished[0] + before + after, finished[1] + above + below)
    best = [p for p in like if exact == (p.exact_width or p.width, p.exact_length or p.length)]
    return next(iter([*best, *like]), None)


def around(
    book: Book,
    key: str,
    box: Box,
    block: str | None = None,
    home: BlockHome | None = None,
    turn: int = 0,
) -> Box:
    """Return what lies beyond each finished edge of a box: left, top, right, bottom.

    A seam; the pillow's own seam on the outside of a pillow; and, for a patch of a block
    that carries a motif, half the trimming margin on the outside of its ground. The box is
    in the frame that is turned with it.
    """
    size = book.sizes[key]
    ends = (Fraction(0), Fraction(0), size.width, size.height)
    seam = book.pattern.sewing.seam
    pillow = size.pillow.seam if size.pillow is not None and not turn else seam
    edges = [pillow if box[i] == ends[i] else seam for i in range(4)]
    if block is not None and book.block(block).motif is not None:
        outer = _outer(book, key, home, turn)
        margin = book.pattern.sewing.ground_margin / 2
        edges = [e + margin if box[i] == outer[i] else e for i, e in enumerate(edges)]
    return edges[0], edges[1], edges[2], edges[3]


def _outer(book: Book, key: str, home: BlockHome | None, turn: int) -> Box:
    """Return the box of a whole block of the top, in the frame turned with it."""
    mates = [p for p in book.drafts[key].patches if p.place == home]
    points = [turned(point, -turn) for p in mates for point in p.ring]
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def sewn_size(unit: Unit) -> tuple[Length, Length]:
    """Return a unit's width and height as a ruler shows it once it is sewn, or trimmed."""
    assert unit.sewn is not None
    return unit.sewn.told
