"""Trimming a block to size once its motif is sewn.

In: blocks with motifs, sizes. Out: steps added to the section on a motif's method.
Invariant: a block that goes on into a seam is trimmed to its finished size plus seams; a
block that is a pillow's whole front is left large, since the quilted front is trimmed;
blocks at the edge of a pillow keep the pillow's own seam there.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.model.size import Size
from publish.words.en.phrase import measure, rectangle
from publish.write.context import Book
from publish.write.steps import StepList, figure


def left_large(book: Book, key: str) -> bool:
    """Return whether a size's only block is the whole front of a pillow."""
    size = book.sizes[key]
    return size.pillow is not None and size.block_count == 1 and _bare(size)


def reaches_edge(book: Book, key: str) -> bool:
    """Return whether some of a pillow's blocks end in its closing seam."""
    size = book.sizes[key]
    return size.pillow is not None and size.block_count > 1 and _bare(size)


def _bare(size: Size) -> bool:
    """Return whether blocks lie at the edge of a top, with nothing round them."""
    outer = size.sashing is not None and size.sashing.outer
    return not size.layers and not outer and not size.on_point


def trim_note(book: Book, key: str) -> str:
    """Return what the cutting table says of a ground that is trimmed later."""
    if left_large(book, key):
        return f"trim to {rectangle(*book.front(key))} after quilting"
    if reaches_edge(book, key):
        return "trim after appliqué"
    return f"trim to {measure(book.raw(book.sizes[key].block_side))} square after appliqué"


def add_trim(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    """Add the steps that trim the blocks carrying these motifs, or leave them large."""
    keys = book.with_motif(*(m.key for m in motifs))
    trimmed = [k for k in keys if not left_large(book, k) and not reaches_edge(book, k)]
    if trimmed:
        _trim(book, steps, trimmed, motifs)
    for key in keys:
        if reaches_edge(book, key):
            _trim_at_edge(book, steps, key, motifs)
        elif left_large(book, key):
            steps.add(
                f"leave-{key}",
                "Do not trim the block. It is trimmed after quilting, once it cannot shrink.",
                sizes=[key],
            )


def _trim_at_edge(book: Book, steps: StepList, key: str, motifs: tuple[Motif, ...]) -> None:
    """Trim blocks of a pillow, whose outer edges end in the closing seam."""
    size = book.sizes[key]
    assert size.pillow is not None
    blocks = [b for b in book.motif_blocks(key) if book.motif_of(b) in motifs]
    steps.add(
        f"trim-{key}",
        "Lay the blocks out as they will be sewn. On each one draw the finished square about its "
        f"centre with a removable marker, {measure(size.block_side)} on every side. Cut "
        f"{measure(book.pattern.sewing.seam)} outside the line where a side meets another block, "
        f"and {measure(size.pillow.seam)} outside it where a side is at the edge of the cover.",
        sizes=[key],
        right="The motif is in the middle of each finished block, and the outer edges have the "
        "wider allowance that closes the cover.",
        figure=figure("trim", key, "Trimming the block about its centre.", block=blocks[0]),
    )


def _trim(book: Book, steps: StepList, keys: list[str], motifs: tuple[Motif, ...]) -> None:
    def value(key: str) -> str:
        return f"{measure(book.raw(book.sizes[key].block_side))} square"

    blocks = [b for b in book.motif_blocks(keys[0]) if book.motif_of(b) in motifs]
    many = any(sum(book.motif_count(k, m.key) for m in motifs) > 1 for k in keys)
    which = "each block" if many else "the block"
    pieced = any(book.pieced(b) for k in keys for b in book.motif_blocks(k))
    seams = (
        " On a pieced ground, line the ruler up with the seams through the centre as well."
        if pieced
        else ""
    )
    steps.add(
        "trim",
        f"Trim {which} to {book.each(keys, value)}. Centre the motif: measure half of that size "
        f"from the centre to each side.{seams}",
        sizes=keys,
        right="All four corners are square, and the ground outside the motif is the same on every "
        "side.",
        tip="Lay the diagonal of a square ruler on a diagonal crease.",
        figure=figure("trim", keys[0], "Trimming the block about its centre.", block=blocks[0]),
    )
