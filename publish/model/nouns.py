"""What the trade calls a unit: half-square triangle, hourglass, flying geese, four-patch.

In: a unit. Out: its noun, or nothing where the trade has no short name for it.
Invariant: the noun follows from the shapes of the patches alone, however they are sewn.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import Patch, Point, Unit
from publish.surd import Length, turned

HALF_SQUARE = "half-square triangle"
HOURGLASS = "hourglass"
GEESE = "flying geese unit"
SET_SQUARE = "square in a square"
FOUR_PATCH = "four-patch"
NINE_PATCH = "nine-patch"


def noun(unit: Unit) -> str:
    """Return what the trade calls a unit, or an empty string."""
    if unit.made in ("triangles", "hourglasses", "geese"):
        return {"triangles": HALF_SQUARE, "hourglasses": HOURGLASS, "geese": GEESE}[unit.made]
    found = unit.patches
    if any(p.arcs for p in found) or len(found) not in (2, 3, 4, 5, 9):
        return ""
    square = unit.width == unit.height
    corners = [len(p.ring) for p in found]
    if all(n == 3 for n in corners):
        return _of_triangles(unit, square)
    if all(n == 4 for n in corners) and square:
        return _of_squares(unit)
    if square and sorted(corners) == [3, 3, 3, 3, 4]:
        return SET_SQUARE
    return ""


def _of_triangles(unit: Unit, square: bool) -> str:
    count = len(unit.patches)
    if square and count == 2:
        return HALF_SQUARE
    if square and count == 4:
        middle = _frame(unit)
        return HOURGLASS if all(_touches(p, unit.turn, middle) for p in unit.patches) else ""
    long, short = max(unit.width, unit.height), min(unit.width, unit.height)
    return GEESE if count == 3 and long == 2 * short else ""


def _of_squares(unit: Unit) -> str:
    side = {4: unit.width / 2, 9: unit.width / 3}.get(len(unit.patches))
    if side is None:
        return ""
    for patch in unit.patches:
        xs, ys = zip(*(turned(p, -unit.turn) for p in patch.ring), strict=True)
        if (max(xs) - min(xs), max(ys) - min(ys)) != (side, side):
            return ""
    return FOUR_PATCH if len(unit.patches) == 4 else NINE_PATCH


def _frame(unit: Unit) -> Point:
    left, top, right, bottom = unit.box
    half = Fraction(1, 2)
    return (left + right) * half, (top + bottom) * half


def _touches(patch: Patch, turn: int, point: tuple[Length, Length]) -> bool:
    return any(turned(p, -turn) == point for p in patch.ring)
