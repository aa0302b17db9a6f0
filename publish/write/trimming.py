"""Trimming a block to size once its motif is sewn.

In: blocks with motifs, sizes. Out: steps added to the section on a motif's method.
Invariant: a block that goes on into a seam is trimmed to its finished size plus seams; a
block that is a pillow's whole front is left large, since the quilted front is trimmed.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.write.context import Book
from publish.write.phrase import measure
from publish.write.steps import StepList, figure


def left_large(book: Book, key: str) -> bool:
    """Return whether a size's only block is the whole front of a pillow."""
    size = book.sizes[key]
    return size.finish == "pillow" and size.block_count == 1 and not size.borders


def add_trim(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    """Add the steps that trim the blocks carrying these motifs, or leave them large."""
    keys = book.with_motif(*(m.key for m in motifs))
    trimmed = [k for k in keys if not left_large(book, k)]
    large = [k for k in keys if left_large(book, k)]
    if trimmed:
        _trim(book, steps, trimmed, motifs)
    for key in large:
        steps.add(
            f"leave-{key}",
            "Leave the block at the size it was cut. It is trimmed after quilting, when it can "
            "no longer draw up.",
            sizes=[key],
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
        f"Trim {which} to {book.each(keys, value)}. Measure half of that size from the centre to "
        "each side, so that the motif stays in the middle; a square ruler with its diagonal on a "
        f"diagonal crease makes this easy.{seams}",
        sizes=keys,
        right="All four corners are square and the ground outside the motif is the same on every "
        "side.",
        figure=figure("trim", keys[0], "Trimming the block about its centre.", block=blocks[0]),
    )
