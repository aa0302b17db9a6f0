"""From a patch as written to corners and arcs, checked one patch at a time.

In: the values of one item of `patches`. Out: its edges; notes.
Invariant: what passes is a simple shape with an area, its corners clockwise on the page.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from publish.model.block import GridPoint
from publish.notes import Place
from publish.read.crossing import crossing
from publish.read.curves import Edge, area, cross, edges, leaves
from publish.read.ledger import Ledger
from publish.units import decimal_text, fraction_text

SHAPES = ("square", "rectangle", "triangle", "points")
NO_AREA = 1e-6
"""Grid squares: less than this counts as nothing, where arcs make an area a float."""

Arcs = tuple[tuple[int, GridPoint], ...]
Shape = tuple[tuple[GridPoint, ...], Arcs]


def number_text(value: Fraction | float) -> str:
    """Return a simple fraction as it is written, and anything else to two decimals."""
    exact = Fraction(value)
    near = exact.limit_denominator(100)
    return fraction_text(near) if abs(near - exact) < NO_AREA else decimal_text(exact, 2)


def at_text(x: Fraction | float, y: Fraction | float) -> str:
    """Return a grid point as it is written."""
    return f"[{number_text(x)}, {number_text(y)}]"


def patch_shape(item: Mapping[str, Any], path: tuple[str, ...], ledger: Ledger) -> Shape | None:
    """Return a patch's corners and arcs, clockwise; None when a note was made."""
    name = next((s for s in SHAPES if s in item), None)
    if name is None:
        return None
    place = ledger.place(*path, name)
    if name == "points":
        found = _points(item[name], place, ledger)
    elif name == "triangle":
        found = tuple(item[name]), ()
    else:
        x, y, width, *more = item[name]
        right, bottom = x + width, y + (more[0] if more else width)
        found = ((x, y), (right, y), (right, bottom), (x, bottom)), ()
    return None if found is None else _sound(*found, place, ledger)


def _points(points: list[tuple[Any, ...]], place: Place, ledger: Ledger) -> Shape | None:
    """Tell corners from points that arcs run through."""
    bends = [len(p) > 2 for p in points]
    before = [bends[-1], *bends[:-1]]
    if any(bend and earlier for bend, earlier in zip(bends, before, strict=True)):
        ledger.note(
            "R153",
            place,
            "two arc points stand side by side",
            expected="a corner before and after each point marked `arc`",
            received="two arc points in a row",
            help="mark one point for each curved edge; end the edge at a corner",
        )
        return None
    first = bends.index(False)
    turned = [*points[first:], *points[:first]]
    ring = tuple((p[0], p[1]) for p in turned if len(p) == 2)
    arcs = []
    corner = -1
    for p in turned:
        corner += len(p) == 2
        if len(p) > 2:
            arcs.append((corner, (p[0], p[1])))
    return ring, tuple(arcs)


def _sound(ring: tuple[GridPoint, ...], arcs: Arcs, place: Place, ledger: Ledger) -> Shape | None:
    """Return a shape with its corners clockwise, or None with the note that says why not."""
    around = edges(ring, arcs)
    for edge in around:
        if edge.start == edge.end:
            _no_area(place, ledger, f"the corner {at_text(*edge.start)} twice in a row")
            return None
        if edge.through is not None and cross(edge.start, edge.through, edge.end) == 0:
            ledger.note(
                "R153",
                place,
                "an arc runs through points on one straight line",
                expected="a point to one side of the line between the corners beside it",
                received=f"{at_text(*edge.through)} between {at_text(*edge.start)} and "
                f"{at_text(*edge.end)}",
                help="move the point marked `arc`, or remove it where the edge is straight",
            )
            return None
    if not arcs and all(cross(ring[0], ring[1], corner) == 0 for corner in ring):
        _no_area(place, ledger, "corners on one straight line")
        return None
    met = crossing(around)
    if met is not None:
        ledger.note(
            "R151",
            place,
            "the edges of the patch cross or touch",
            expected="an outline that meets itself at its corners only",
            received=f"a crossing at {at_text(*met)}",
            help="write the corners in their order round the patch",
        )
        return None
    size = area(around)
    if abs(float(size)) < NO_AREA:
        _no_area(place, ledger, f"{number_text(size if size > 0 else -size)} grid squares")
        return None
    return (ring, arcs) if size > 0 else reversed_shape(ring, arcs)


def _no_area(place: Place, ledger: Ledger, received: str) -> None:
    ledger.note(
        "R152",
        place,
        "the patch has no area",
        expected="a patch with a width and a height",
        received=received,
        help="check its corners, or remove the patch",
    )


def reversed_shape(ring: tuple[GridPoint, ...], arcs: Arcs) -> Shape:
    """Return the same shape with its corners the other way round."""
    count = len(ring)
    return ring[::-1], tuple(sorted(((count - 2 - i) % count, p) for i, p in arcs))


def stays_inside(around: list[Edge], grid: tuple[int, int], place: Place, ledger: Ledger) -> bool:
    """Return whether a patch lies on the grid; note it when it does not."""
    out = next((e for e in around if leaves(e, *grid)), None)
    if out is None:
        return True
    outside_note(
        ledger,
        place,
        "the patch",
        grid,
        f"an edge from {at_text(*out.start)} to {at_text(*out.end)}",
    )
    return False


def outside_note(
    ledger: Ledger, place: Place, what: str, grid: tuple[int, int], received: str
) -> None:
    """Note what reaches outside its block's grid."""
    columns, rows = grid
    ledger.note(
        "R150",
        place,
        f"{what} reaches outside the block's grid",
        expected=f"x from 0 to {columns} and y from 0 to {rows}",
        received=received,
        help="move it, or write a larger `grid`",
    )
