"""Foundation sections that are larger than a sheet: which patches stay off the paper.

In: a section's patches in their order of sewing. Out: the order without some of them.
Invariant: what is left fits one template sheet of any whole paper, can be sewn in its order,
and everything that is left out is a rectangle, cut with a ruler, that is sewn on afterwards
along one full straight line: so that a seam takes the place of tape.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction
from itertools import combinations

from publish.draft.paths import Faces
from publish.draft.planar import Planar, Spot
from publish.model.book import TEMPLATE_SHEET

MOST = 4
"""Patches that may be left out of one section: with more, little of it is left on paper."""

Line = Callable[[Planar, Faces, int], tuple[Spot, Spot] | None]
"""The line along which a patch can be added to others; None where there is none."""


def within_a_sheet(
    planar: Planar, order: tuple[int, ...], seam: Fraction, line: Line
) -> tuple[int, ...]:
    """Return the order without the fewest rectangles that leave it small enough for a sheet.

    The order is returned whole where it fits, and where leaving out rectangles does not make
    it fit: it is printed on sheets that are joined. Of several, the one that leaves the most
    on the paper is taken. `seam` is the allowance round it, in inches.
    """
    if _fits(planar, order, seam):
        return order
    flat = [n for n in order if _rectangle(planar, n)]
    for count in range(1, min(MOST, len(order) - 2, len(flat)) + 1):
        found = []
        for off in combinations(flat, count):
            left = tuple(n for n in order if n not in off)
            if _fits(planar, left, seam) and _sewn(planar, (*left, *off), line):
                found.append(left)
        if found:
            return max(found, key=lambda left: _area(planar, left))
    return order


def _fits(planar: Planar, faces: Iterable[int], seam: Fraction) -> bool:
    (left, top), (right, bottom) = _corners(planar, faces)
    sides = (Fraction(v, planar.scale) + 2 * seam for v in (right - left, bottom - top))
    return all(a <= b for a, b in zip(sorted(sides), sorted(TEMPLATE_SHEET), strict=True))


def _area(planar: Planar, faces: Iterable[int]) -> int:
    (left, top), (right, bottom) = _corners(planar, faces)
    return (right - left) * (bottom - top)


def _corners(planar: Planar, faces: Iterable[int]) -> tuple[Spot, Spot]:
    spots = [way.start for n in faces for way in planar.faces[n]]
    xs, ys = [x for x, _ in spots], [y for _, y in spots]
    return (min(xs), min(ys)), (max(xs), max(ys))


def _rectangle(planar: Planar, face: int) -> bool:
    """Return whether a patch is a rectangle that lies square in its block."""
    ways = planar.faces[face]
    (left, top), (right, bottom) = _corners(planar, [face])
    return all(
        way.bend is None
        and (
            (way.start[0] == way.end[0] and way.start[0] in (left, right))
            or (way.start[1] == way.end[1] and way.start[1] in (top, bottom))
        )
        for way in ways
    )


def _sewn(planar: Planar, order: tuple[int, ...], line: Line) -> bool:
    """Return whether each patch can be added along one straight line to those before it."""
    return all(
        line(planar, frozenset(order[:n]), order[n]) is not None for n in range(1, len(order))
    )
