"""Composing pages: which items stand where, in which form and size, before they are set.

In: a layout's grid, the manual, the artwork, what sets an item as HTML. Out: `Leaf`s.
Invariant: the same input gives the same pages; see `packing` for how they are chosen.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from publish.model.figure import Artwork
from publish.model.words import Manual
from publish.typeset.composing.filling import Leaf, leaf, sheets_leaf
from publish.typeset.composing.forms import Form, Placed, forms, placed
from publish.typeset.composing.grid import Grid, grid
from publish.typeset.composing.items import Item, Sheets, flow
from publish.typeset.composing.measuring import Measured
from publish.typeset.composing.packing import pack
from publish.typeset.composing.pieces import Piece, pieces

__all__ = ["Grid", "Leaf", "Measured", "Placed", "compose", "grid"]

Setting = Callable[[Placed], str]
Measuring = Callable[[Sequence[tuple[str, float]]], list[Measured]]


def compose(
    frame: Grid,
    manual: Manual,
    artwork: Artwork,
    photos: Sequence[Any],
    contents: bool,
    set_item: Setting,
    measure: Measuring,
) -> list[Leaf]:
    """Return the pages of a booklet between its covers.

    `set_item` makes the HTML of one item in one form, `measure` says how high each is.
    """
    run = flow(manual, photos, contents)
    asked = [(i, f) for i in run if isinstance(i, Item) for f in forms(i, frame, artwork)]
    found = measure([(set_item(placed(i, f, f.usual)), f.width) for i, f in asked])
    heights: dict[int, list[tuple[Form, Measured]]] = {}
    for (item, form), each in zip(asked, found, strict=True):
        heights.setdefault(item.number, []).append((form, each))
    leaves: list[Leaf] = []
    waiting: list[Piece] = []
    for entry in run:
        if isinstance(entry, Sheets):
            leaves += [*_packed(waiting, frame), sheets_leaf(entry)]
            waiting = []
        else:
            waiting += pieces(entry, heights[entry.number], frame)
    return [*leaves, *_packed(waiting, frame)]


def _packed(run: Sequence[Piece], frame: Grid) -> list[Leaf]:
    return [leaf(page, run, frame) for page in pack(run, frame)]
