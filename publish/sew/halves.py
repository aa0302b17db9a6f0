"""How the seam of a half-square triangle lies in its unit once that is trimmed.

In: a unit of two triangles as they are drafted. Out: `HalfTrim`.
Invariant: the seam runs through the finished corners. Where every edge has the same allowance,
or each triangle as much as the other, it ends in the cut corners too; where an outer edge has
more, as on a pillow, it ends beside them, and the less wide triangle says where.
"""

from __future__ import annotations

from dataclasses import dataclass

from publish.model.draft import Unit
from publish.surd import Length


@dataclass(frozen=True)
class HalfTrim:
    """How a unit is trimmed: `half`, `leg` or `offset`, as `TrimUnit.how` says them."""

    how: str
    by: Length | None = None
    """Inches: the short sides of `part`, or how far from the corners the seam ends."""
    part: Unit | None = None


def half_trim(unit: Unit) -> HalfTrim:
    """Return how a unit of two triangles is trimmed."""
    assert unit.sewn is not None
    width, height = unit.sewn.exact
    legs = {n: _leg(part) for n, part in enumerate(unit.parts)}
    least = min(legs, key=lambda n: legs[n])
    if all(leg == width == height for leg in legs.values()):
        return HalfTrim("half")
    if legs[least] > min(width, height):
        return HalfTrim("offset", (max(width, height) - min(width, height)) / 2)
    return HalfTrim("leg", legs[least], unit.parts[least])


def _leg(part: Unit) -> Length:
    """Return how long a short side of a triangle is, with what lies beyond both of its ends."""
    assert part.place is not None
    recipe = part.place.recipe
    ends = [*recipe.ring[1:], recipe.ring[0]]
    level = [n for n, (a, b) in enumerate(zip(recipe.ring, ends, strict=True)) if _is_level(a, b)]
    xs = [x for x, _ in recipe.ring]
    finished: Length = max(xs) - min(xs)
    return finished + sum(recipe.allow[n] for n in level)


def _is_level(one: tuple[Length, Length], other: tuple[Length, Length]) -> bool:
    return one[0] == other[0] or one[1] == other[1]
