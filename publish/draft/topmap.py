"""The top as a planar map: every patch of it, and the motifs' places.

In: a pattern and a size. Out: `Patch`es and `Placement`s in inches from the top left
corner of the finished top; rows and columns count from 0.
Invariant: corners are exact; the patches cover the top once, so their areas add up to it.
An arc is the edge of two patches and adds to one what it takes from the other, so areas
between straight lines from corner to corner add up exactly too, once every arc has been
cut at the corners that lie on it.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from itertools import pairwise

from publish.arcs import Edge, Ring, arc_length, circle_through, clockwise, edges_of
from publish.draft.homes import Box, Home, home_patches, homes, layer_boxes, rectangle
from publish.draft.lattice import bands
from publish.model.draft import Arcs, Patch, Placement, Point
from publish.model.pattern import Block, BorderSpec, Pattern
from publish.model.size import Size
from publish.notes import Note, error
from publish.surd import Exact, Length, Surd, exact, parts, root

_FINE = 10**9


def top_patches(pattern: Pattern, size: Size) -> tuple[tuple[Patch, ...], tuple[Note, ...]]:
    """Return the patches of the blocks, of what lies between them, then of the borders,
    innermost first."""
    places = homes(size)
    found = home_patches(pattern, places)
    found += [c.patch for band in bands(size, _inside(places)) for c in band.cells if c.patch]
    number = 0
    for layer, inner, outer in layer_boxes(size):
        if layer.border is not None:
            number += 1
            found += _border_patches(layer.border, number, inner, outer)
    used = [pattern.blocks[key] for key in dict.fromkeys(h.block for h in places)]
    return tuple(found), tuple(_unfilled(pattern, used))


def placements(pattern: Pattern, size: Size) -> tuple[Placement, ...]:
    """Return the centre of every motif: the middle of its block, turned with it."""
    return tuple(
        Placement(motif, home.x, home.y, home.row, home.column, home.name, home.turn)
        for home in homes(size)
        if (motif := pattern.blocks[home.block].motif) is not None
    )


def _inside(places: Iterable[Home]) -> list[Home]:
    """Return the places inside the borders and rounds."""
    return [home for home in places if not home.name.in_round]


def doubled_area(ring: Iterable[Point]) -> Length:
    """Return twice the area of a ring: positive when it runs clockwise on the page."""
    points = [*ring]
    pairs = pairwise([*points, points[0]])
    return sum((x * v - u * y for (x, y), (u, v) in pairs), Fraction(0))


def covered_area(shapes: Iterable[tuple[Ring, Arcs]]) -> Length:
    """Return the area that shapes cover together, exactly.

    Only for shapes that meet edge to edge and fill a region with straight sides: then
    what an arc adds to one of them it takes from another.
    """
    shapes = [*shapes]
    corners = list(dict.fromkeys(p for ring, _ in shapes for p in ring))
    total: Length = Fraction(0)
    for ring, arcs in shapes:
        edges = list(edges_of(ring, arcs))
        total += doubled_area([p for edge in edges for p in _cut_at(edge, corners)])
    return total / 2


def _cut_at(edge: Edge, corners: list[Point]) -> list[Point]:
    """Return the start of an edge and, of an arc, the corners on it, in order."""
    one, two, through = edge
    if through is None:
        return [one]
    circle = circle_through(one, through, two)
    turn = clockwise(one, through, two)
    found = [p for p in corners if p not in (one, two) and _on(circle, edge, p)]
    start = one
    ordered = [one]
    while found:  # the next corner is the one that leaves all others on the far side
        start = next(
            p for p in found if all(q == p or clockwise(start, p, q) == turn for q in found)
        )
        found.remove(start)
        ordered.append(start)
    return ordered


def _on(circle: tuple[Length, Length, Length], edge: Edge, point: Point) -> bool:
    """Return whether a corner lies on an arc."""
    one, two, through = edge
    assert through is not None
    across, down = point[0] - circle[0], point[1] - circle[1]
    if across * across + down * down != circle[2]:
        return False
    return clockwise(one, through, two) == clockwise(one, point, two)


def edge_length(one: Point, two: Point, through: Point | None = None) -> Exact:
    """Return the length of an edge: exact where it is a + b√2, else to a billionth."""
    if through is not None:
        return Fraction(round(arc_length(one, through, two) * _FINE), _FINE)
    across, down = abs(two[0] - one[0]), abs(two[1] - one[1])
    if not across or not down:
        straight: Exact = across + down
        return straight
    square = across * across + down * down
    found = None if isinstance(square, Surd) else root(square)
    if found is not None:
        return found
    return _fine(square)


def _fine(square: Exact) -> Fraction:
    """Return the square root of a number to a billionth."""
    whole = square * _FINE**2 // 1
    low = int(float(square) ** 0.5 * _FINE)
    while low * low > whole:
        low -= 1
    while (low + 1) * (low + 1) <= whole:
        low += 1
    return Fraction(low, _FINE)


def seam_length(patches: Iterable[Patch], size: Size) -> Fraction:
    """Return the length of all seams inside the top: each is the edge of two patches.

    Exact where it is rational, else rounded down to a billionth of an inch.
    """
    whole, roots = Fraction(0), Fraction(0)
    for patch in patches:
        for one, two, through in edges_of(patch.ring, patch.arcs):
            a, b = parts(edge_length(one, two, through))
            whole, roots = whole + a, roots + b
    total = (exact(whole, roots) - size.perimeter) / 2
    return total if isinstance(total, Fraction) else Fraction(total * _FINE // 1, _FINE)


def _border_patches(border: BorderSpec, number: int, inner: Box, outer: Box) -> list[Patch]:
    """Return a border's four patches: left, right, top, bottom, in sewing order."""
    (a, b, c, d), (e, f, g, h) = rectangle(inner), rectangle(outer)
    if border.corners == "mitred":
        rings: dict[str, Ring] = {
            "left": (e, a, d, h),
            "right": (b, f, g, c),
            "top": (e, f, b, a),
            "bottom": (d, c, g, h),
        }
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
        total = covered_area((p.ring, p.arcs) for p in block.patches)
        corners = [c for p in block.patches for c in p.ring]
        inside = all(0 <= x <= block.columns and 0 <= y <= block.rows for x, y in corners)
        if total != whole or not inside:
            yield error(
                "D341",
                pattern.place("blocks", block.key),
                "the patches do not fill their block",
                expected=f"{whole} squares of the block's grid",
                received=f"{total} squares",
                help="let the patches meet edge to edge from side to side",
            )
