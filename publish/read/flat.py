"""A block as one flat list of patches, and plain grounds as such lists.

In: the values of a ground. Out: `FlatBlock`.
Invariant: coordinates are exact; patches run clockwise on the page.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from publish.model.block import Foundation, GridPoint, PatchSpec


@dataclass(frozen=True)
class FlatBlock:
    """A block as one list of patches; `depth` counts the blocks within blocks."""

    columns: int
    rows: int
    patches: tuple[PatchSpec, ...]
    foundations: tuple[Foundation, ...] = ()
    depth: int = 1

    @property
    def curved(self) -> bool:
        return any(p.arcs for p in self.patches)


def flat_ground(ground: Any) -> FlatBlock | None:
    """Return a whole or a pieced ground as a block; None when it is not there or uneven."""
    if ground is None:
        return None
    rows = [[ground]] if isinstance(ground, str) else ground.get("rows", [])
    if len({len(row) for row in rows}) != 1:
        return None
    patches = [
        PatchSpec(_square(Fraction(x), Fraction(y)), fabric)
        for y, row in enumerate(rows)
        for x, fabric in enumerate(row)
    ]
    return FlatBlock(len(rows[0]), len(rows), tuple(patches))


def _square(x: Fraction, y: Fraction) -> tuple[GridPoint, ...]:
    """Return one grid square, clockwise on the page from its top left corner."""
    return ((x, y), (x + 1, y), (x + 1, y + 1), (x, y + 1))
