"""The top as a planar map: every patch of the blocks and the borders, and the motifs' places.

In: a pattern and a size. Out: `Patch`es and `Placement`s in inches from the top left
corner of the finished top; rows and columns count from 0.
Invariant: corners are exact; the patches cover the top once, so their areas add up to it.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from itertools import pairwise
from math import isqrt

from publish.model.draft import Patch, Placement, Point
from publish.model.pattern import Block, BorderSpec, Pattern
from publish.model.size import Size
from publish.notes import Note, error
from publish.surd import Length

Ring = tuple[Point, ...]
Box = tuple[Fraction, Fraction, Fraction, Fraction]
"""Left, top, right, bottom."""

_FINE = 10**9


def top_patches(pattern: Pattern, size: Size) -> tuple[tuple[Patch, ...], tuple[Note, ...]]:
    """Return the patches of the blocks, row by row, then of the borders, innermost first."""
    found: list[Patch] = []
    for row, line in enumerate(size.arrangement):
        for column, key in enumerate(line):
            found += _block_patches(pattern.blocks[key], size, row, column)
    inner = inner_box(size)
    for number, border in enumerate(size.borders, start=1):
        found += _border_patches(border, number, inner)
        inner = grown(inner, border.width)
    used = {key: pattern.blocks[key] for line in size.arrangement for key in line}
    return tuple(found), tuple(_unfilled(pattern, used.values()))


def placements(pattern: Pattern, size: Size) -> tuple[Placement, ...]:
    """Return the centre of every motif: the middle of its block."""
    left, top, _, _ = inner_box(size)
    side = size.block_side
    return tuple(
        Placement(motif, left + column * side + side / 2, top + row * side + side / 2, row, column)
        for row, line in enumerate(size.arrangement)
        for column, key in enumerate(line)
        if (motif := pattern.blocks[key].motif) is not None
    )


def inner_box(size: Size) -> Box:
    """Return the box of the blocks, without borders."""
    edge = sum((b.width for b in size.borders), Fraction(0))
    return edge, edge, edge + size.inner_width, edge + size.inner_height


def grown(box: Box, width: Fraction) -> Box:
    """Return a box with a border of one width added all round."""
    return box[0] - width, box[1] - width, box[2] + width, box[3] + width


def rectangle(box: Box) -> Ring:
    """Return a box's corners, clockwise on the page from the top left."""
    left, top, right, bottom = box
    return (left, top), (right, top), (right, bottom), (left, bottom)


def doubled_area(ring: Iterable[Point]) -> Length:
    """Return twice the area of a ring: positive when it runs clockwise on the page."""
    points = [*ring]
    pairs = pairwise([*points, points[0]])
    return sum((x * v - u * y for (x, y), (u, v) in pairs), Fraction(0))


def edge_length(one: Point, two: Point) -> Length:
    """Return the length of an edge: exact when upright or level, else to a billionth."""
    across, down = abs(two[0] - one[0]), abs(two[1] - one[1])
    if not across or not down:
        return across + down
    square = across * across + down * down
    return Fraction(isqrt(square.numerator * _FINE**2 // square.denominator), _FINE)


def seam_length(patches: Iterable[Patch], size: Size) -> Fraction:
    """Return the length of all seams inside the top: each is the edge of two patches."""
    edges = sum(
        (edge_length(a, b) for p in patches for a, b in pairwise([*p.ring, p.ring[0]])),
        Fraction(0),
    )
    return (edges - size.perimeter) / 2


def _block_patches(block: Block, size: Size, row: int, column: int) -> list[Patch]:
    left, top, _, _ = inner_box(size)
    side = size.block_side
    across, down = side / block.columns, side / block.rows
    left, top = left + column * side, top + row * side
    found = []
    for number, spec in enumerate(block.patches, start=1):
        ring = tuple((left + x * across, top + y * down) for x, y in spec.ring)
        if doubled_area(ring) < 0:
            ring = ring[::-1]
        key = f"r{row + 1}c{column + 1}p{number}"
        found.append(Patch(key, ring, spec.fabric, "ground", block.key, row, column))
    return found


def _border_patches(border: BorderSpec, number: int, inner: Box) -> list[Patch]:
    """Return a border's four patches: left, right, top, bottom, in sewing order."""
    outer = grown(inner, border.width)
    (a, b, c, d), (e, f, g, h) = rectangle(inner), rectangle(outer)
    if border.corners == "mitred":
        rings: dict[str, Ring] = {
            "left": (e, a, d, h), "right": (b, f, g, c),
            "top": (e, f, b, a), "bottom": (d, c, g, h),
        }  # fmt: skip
    else:
        rings = {
            "left": rectangle((outer[0], inner[1], inner[0], inner[3])),
            "right": rectangle((inner[2], inner[1], outer[2], inner[3])),
            "top": rectangle((outer[0], outer[1], outer[2], inner[1])),
            "bottom": rectangle((outer[0], inner[3], outer[2], outer[3])),
        }
    return [
        Patch(f"border {number} {side}", ring, border.fabric, "border")
        for side, ring in rings.items()
    ]


def _unfilled(pattern: Pattern, blocks: Iterable[Block]) -> Iterable[Note]:
    """Say which blocks their patches do not fill exactly once."""
    for block in blocks:
        whole = Fraction(block.columns * block.rows)
        total = sum((abs(doubled_area(p.ring)) / 2 for p in block.patches), Fraction(0))
        corners = [c for p in block.patches for c in p.ring]
        inside = all(0 <= x <= block.columns and 0 <= y <= block.rows for x, y in corners)
        if total != whole or not inside:
            yield error(
                "D341", pattern.place("blocks", block.key, "ground"),
                "the patches do not fill their block",
                expected=f"{whole} squares of the block's grid", received=f"{total} squares",
                help="let the patches meet edge to edge from side to side",
            )  # fmt: skip
