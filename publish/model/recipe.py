"""How a part of the top is made, however it lies: what may go on one heap.

In: a part, the pieces it is cut from, what is beyond its edges. Out: `Recipe`, `Place` and
`Sewn`.
Invariant: two parts have one recipe exactly when a maker can make them as one heap and then
take any of it for either, turned by quarters or not: the same cloth cut to the same letters,
the same allowance on every edge, the same parts joined by the same seams, by the same method,
on the same paper. Mirror images differ. A recipe has a key of its content and no name.

A recipe lies as the first part made by it lies on the table; `Place.turn` says how another
lies in the top, clockwise from there.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from publish.arcs import Arcs, Point
from publish.model.homes import BlockHome
from publish.surd import Length

Pair = tuple[Length, Length]
"""Width and height."""

TOLERANCE = Fraction(1, 16)
"""Inches by which edges that are sewn together may differ and are eased: the least that an
inch ruler shows. Common practice, no source."""


@dataclass(frozen=True, eq=False)
class Recipe:
    """How a part is made. Lengths are inches; it lies on the table, its box at 0, 0."""

    key: str
    """Of its content: equal for equal recipes, the same in every run."""
    join: str | None
    """As `Unit.join`; None for what is not sewn from parts."""
    ring: tuple[Point, ...]
    """Its finished outline, clockwise on the page."""
    arcs: Arcs
    allow: tuple[Length, ...]
    """What lies beyond each edge of `ring`, by the corner that the edge begins at."""
    letter: str = ""
    """Of a single patch: the piece that it is cut as, which is of `fabric`."""
    fabric: str = ""
    method: str = ""
    """As `Unit.made`."""
    section: str = ""
    """Key of the `FoundationSection` that it is sewn on."""
    symmetry: tuple[int, ...] = (0,)
    """Turns in degrees, from 0, after which it looks and measures as before."""
    parts: tuple[Place, ...] = field(default=(), repr=False)
    """In sewing order, as they lie in it."""

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Recipe) and self.key == other.key

    def __hash__(self) -> int:
        return hash(self.key)


@dataclass(frozen=True)
class Place:
    """Where one part made by a recipe lies, and how far it is turned there.

    `turn` is in degrees clockwise from how the recipe lies, the least of those that come to
    the same; `home` is that of the block that it is in, None outside blocks.
    """

    recipe: Recipe
    turn: int
    home: BlockHome | None = None


@dataclass(frozen=True)
class Sewn:
    """How large a part comes out, as it lies on the table: width and height in inches.

    `exact` is its finished size with what lies beyond its edges; `told` what a ruler shows,
    sewn from pieces as they are cut, which are rounded up, and trimmed where it is trimmed.
    """

    exact: Pair
    told: Pair
    trim: bool = False
    """Whether it is cut down to `told`: sewn, it is larger than what it is sewn to."""
    joined: Pair | None = None
    """What it measures before that; None where it is not trimmed, or not known."""
