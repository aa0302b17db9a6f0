"""The seam tree of a top, with the names that the steps use.

In: a pattern, a size, its patches, foundation sections. Out: the `Unit` that is the whole
top, and notes.
Invariant: blocks are sewn before rows, rows before what goes round them, from the inside
out; every patch is in the tree once; units that look alike when turned share a kind.

Names: `block`, or `ground` where a motif goes on a pieced block, and in them what
`blockparts` says; `row 1` and `sashing row 1`, on point along the diagonal, with `corner`
and `setting triangle`; `centre`, all of that joined, when something goes round it;
`border 1 sides` and `border 1`; `round 2 left`, `round 2 sides` and `round 2`; `top`. A top
of one block without anything round it is that block.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.colour import lightness
from publish.draft.around import whole_top
from publish.draft.blocktree import Sections
from publish.draft.homes import homes
from publish.draft.made import methods, with_methods
from publish.draft.order import MOST_CORNERS
from publish.draft.parts import unit_of
from publish.draft.press import Cloth, pressing
from publish.draft.rows import Rows
from publish.model.draft import Patch, Unit
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note, error


def assemble(
    pattern: Pattern,
    size: Size,
    patches: tuple[Patch, ...],
    sections: Sections | None = None,
) -> tuple[Unit, tuple[Note, ...]]:
    """Return the seam tree of a top; `sections` are the foundation sections."""
    rows = Rows(pattern, size, homes(size), patches, sections or {})
    top = whole_top(rows, patches)
    notes = tuple(_closed_in(pattern, rows))
    made = methods(unit_of(top, {}), pattern.blocks)
    light = {key: lightness(fabric.colour) for key, fabric in pattern.fabrics.items()}
    cloth = Cloth(light, {kind for kind, method in made.items() if method == "strips"})
    return with_methods(unit_of(top, pressing(top, cloth)), made), notes


def _closed_in(pattern: Pattern, rows: Rows) -> Iterator[Note]:
    """Say in which blocks no seam reaches some patch."""
    for key in dict.fromkeys(key for (key, _), found in rows.orders.items() if found.closed_in):
        yield error(
            "D340",
            pattern.place("blocks", key, "patches"),
            "patches are closed in by others, so that no order of seams joins them",
            expected=f"seams from edge to edge, with {MOST_CORNERS} corners at most",
            received="a seam that runs round a patch",
            help="part one of the patches around it, or appliqué it as a motif",
        )
