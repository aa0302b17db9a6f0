"""A block set into another: mirrored, turned, and fitted to the place it is given.

In: patches on one grid, and a place on another. Out: the patches on that other grid.
Invariant: coordinates stay exact, and patches stay clockwise on the page.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction

from publish.model.block import GridPoint, PatchSpec
from publish.notes import Place
from publish.read.ledger import Ledger
from publish.read.patches import reversed_shape


@dataclass(frozen=True)
class Setting:
    """How a block of `columns` and `rows` is set into another: mirrored left for right
    where so asked, then turned clockwise, then fitted to the box at `at` of `size`."""

    columns: int
    rows: int
    turn: int
    mirror: bool
    at: GridPoint
    size: GridPoint | None

    @property
    def extent(self) -> GridPoint:
        """Return width and height of the box."""
        return self.size or self._turned_grid

    @property
    def _turned_grid(self) -> GridPoint:
        across, down = Fraction(self.columns), Fraction(self.rows)
        return (across, down) if self.turn % 180 == 0 else (down, across)

    @property
    def stretched(self) -> bool:
        """Return whether grid squares become oblong, and circles ovals."""
        (width, height), (across, down) = self.extent, self._turned_grid
        return width * down != height * across

    def point(self, x: Fraction, y: Fraction) -> GridPoint:
        """Return where a point of the inner block's grid comes to lie."""
        if self.mirror:
            x = self.columns - x
        turned = {
            0: (x, y),
            90: (self.rows - y, x),
            180: (self.columns - x, self.rows - y),
            270: (y, self.columns - x),
        }[self.turn]
        (left, top), (width, height) = self.at, self.extent
        across, down = self._turned_grid
        return left + turned[0] * width / across, top + turned[1] * height / down


def set_in(patches: tuple[PatchSpec, ...], setting: Setting) -> tuple[PatchSpec, ...]:
    """Return a block's patches where it is set into another."""
    return tuple(_moved(patch, setting.point, setting.mirror) for patch in patches)


def _moved(
    patch: PatchSpec, point: Callable[[Fraction, Fraction], GridPoint], mirror: bool
) -> PatchSpec:
    ring = tuple(point(*corner) for corner in patch.ring)
    arcs = tuple((i, point(*through)) for i, through in patch.arcs)
    if mirror:
        ring, arcs = reversed_shape(ring, arcs)
    return replace(patch, ring=ring, arcs=arcs)


def stretched_note(ledger: Ledger, place: Place, received: str) -> None:
    """Note that circles would become ovals."""
    ledger.note(
        "R161",
        place,
        "curved seams would be stretched",
        expected="square grid squares, so that circles stay circles",
        received=received,
        help="let width and height be in the proportion of the block's own grid",
    )
