"""Whether a size's dimensions add up, and whether the draft has them.

In: a case. Out: notes.
Invariant: each border or round adds its width on both sides to what it goes round; the
outermost is the top, and the draft is as large; a straight setting is its blocks and the
sashing between them.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from publish.model.size import Size
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.surd import Length

CODES = {
    "P827": Code(
        "A size's dimensions do not add up",
        "the last border is too long or too short",
        "three blocks of 18 in, borders of 1 and 4 in, and a throw of 62 in",
        "3 × 18 + 2 × 1 + 2 × 4 = 64 in",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each width or height that is not the sum of its parts."""
    for key in case.keys:
        size, draft = case.sizes[key], case.drafts[key]
        for what, expected, received in (*_parts(size), *_layers(size)):
            yield from _same(case, key, what, expected, received)
        yield from _same(case, key, "the width drafted", size.width, draft.width)
        yield from _same(case, key, "the height drafted", size.height, draft.height)


def _parts(size: Size) -> Iterator[tuple[str, Length, Length]]:
    """Blocks and sashing across and down, without what goes round them."""
    if size.on_point:
        return
    for name, count, inner in (
        ("across", size.columns, size.inner_width),
        ("down", size.rows, size.inner_height),
    ):
        between = Fraction(0) if size.sashing is None else size.sashing.width
        strips = count - 1 + (2 if size.sashing is not None and size.sashing.outer else 0)
        yield f"the blocks {name}", count * size.block_side + strips * between, inner


def _layers(size: Size) -> Iterator[tuple[str, Length, Length]]:
    inner = size.inner_width, size.inner_height
    for number, layer in enumerate(size.layers, start=1):
        yield f"the width inside border {number}", inner[0], layer.inner_width
        yield f"the height inside border {number}", inner[1], layer.inner_height
        inner = layer.width, layer.height
    yield "the finished width", inner[0], size.width
    yield "the finished height", inner[1], size.height


def _same(case: Case, key: str, what: str, expected: Length, received: Length) -> Iterator[Note]:
    if expected != received:
        yield error(
            "P827",
            case.size_place(key),
            f"{what} of the {key} does not add up",
            expected=case.text(expected),
            received=case.text(received),
        )
