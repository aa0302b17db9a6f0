"""What a block is made of: patches on its grid, and how its maker is to piece them.

In: nothing. Out: frozen types, part of stage 1's output.
Invariant: coordinates are exact and count grid squares, columns from the left and rows
from the top; blocks within blocks are resolved, so that a block is one flat list of
patches, which cover its grid once.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

GridPoint = tuple[Fraction, Fraction]
"""A point on a block's grid: columns from the left, rows from the top."""


@dataclass(frozen=True)
class PatchSpec:
    """A patch of a block: a simple polygon on the block's grid, clockwise on the page.

    An item `(i, through)` of `arcs` means that the edge from `ring[i]` to the corner
    after it is no straight line but the circular arc through the point `through`. A
    patch with arcs may have two corners only. Patches that share an arc lie on the same
    circle exactly, but may name different points on it. A block with arcs has as many
    columns as rows, so that a circle of the grid is a circle of the block.
    """

    ring: tuple[GridPoint, ...]
    fabric: str
    arcs: tuple[tuple[int, GridPoint], ...] = ()
    name: str = ""
    """The designer's name for the patch, unique in its block; empty for most."""
    item: int | None = None
    """Which item of the block's `patches` it is written in, from 0: the place of patch p
    is `pattern.place("blocks", key, "patches", p.item)`."""


@dataclass(frozen=True)
class Foundation:
    """Patches that are sewn onto one printed foundation.

    `patches` are positions in the block's `patches`. When `in_order` they are in the
    order of sewing and make one section; otherwise sections and order are to be found
    from the shapes, and there may be several sections.
    """

    patches: tuple[int, ...]
    in_order: bool


SINGLY = "singly"


@dataclass(frozen=True)
class Piecing:
    """How units that repeat are made: `singly`, from patches cut to size, or quicker.

    `triangles`: a square of two triangles; `two at once` from two squares.
    `hourglasses`: a square of four quarter triangles; `two at once` from two squares.
    `geese`: a triangle between two corners in a rectangle twice as long as wide; `four
    at once` from one large and four small squares.
    `corners`: a small triangle on the corner of a larger patch; `flipped` from a square
    sewn across that corner.
    `strips`: rectangles that repeat side by side; `strip sets` joined as long strips and
    cut across.
    """

    triangles: str = SINGLY
    hourglasses: str = SINGLY
    geese: str = SINGLY
    corners: str = SINGLY
    strips: str = SINGLY


@dataclass(frozen=True)
class Block:
    """A block: patches on a grid, and the motif laid over them, if any."""

    key: str
    columns: int
    rows: int
    patches: tuple[PatchSpec, ...]
    motif: str | None = None
    traditional: str = ""
    """The trade name of the construction, where the designer asked for it by name."""
    foundations: tuple[Foundation, ...] = ()
    """What is foundation pieced; patches in none of them are pieced as usual."""
    piecing: Piecing = Piecing()
