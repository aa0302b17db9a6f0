"""Which rows and strips of a top look alike, without looking at every patch again.

In: homes of blocks, and patches between them. Out: looks of rows.
Invariant: two tokens are equal exactly when two blocks, as they lie, are the same picture;
two looks, when one row can be turned by quarters and shifted to lie on the other.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from dataclasses import dataclass, field
from fractions import Fraction

from publish.arcs import Ring, circle_through, clockwise
from publish.draft.homes import Home, block_shapes
from publish.model.draft import Arcs
from publish.model.pattern import Pattern
from publish.surd import Length, turned

Tokens = tuple[int, int, int, int]
"""What something looks like as it lies, and turned by one, two and three quarters."""

Placed = tuple[Length, Length, Tokens]
"""The middle of something in the frame of its row, and its tokens."""


@dataclass
class Pictures:
    """Numbers for pictures, given as they are met."""

    pattern: Pattern
    numbers: dict[Hashable, int] = field(default_factory=dict)
    homes: dict[tuple[str, Fraction, int], int] = field(default_factory=dict)

    def of_home(self, home: Home) -> Tokens:
        """Return the tokens of a block where it lies."""
        one, two, three, four = (
            self._of_block(home.block, home.side, (home.turn - home.turn % 90 + quarter) % 360)
            for quarter in (0, 90, 180, 270)
        )
        return one, two, three, four

    def of_patch(self, fabric: str, ring: Ring) -> Tokens:
        """Return the tokens of a patch with straight edges, its ring in its row's frame."""
        x, y = middle(ring)
        around = tuple((2 * a - x, 2 * b - y) for a, b in ring)
        one, two, three, four = (
            self._number((fabric, _begun(tuple(turned(p, quarter) for p in around))))
            for quarter in (0, 90, 180, 270)
        )
        return one, two, three, four

    def _of_block(self, key: str, side: Fraction, turn: int) -> int:
        if (key, side, turn) not in self.homes:
            block = self.pattern.blocks[key]
            figures = frozenset(
                (spec.fabric, _figure(ring, arcs))
                for spec, (ring, arcs) in zip(
                    block.patches, block_shapes(block, side, turn), strict=True
                )
            )
            self.homes[key, side, turn] = self._number((block.motif, figures))
        return self.homes[key, side, turn]

    def _number(self, picture: Hashable) -> int:
        return self.numbers.setdefault(picture, len(self.numbers))


def look_of(placed: Iterable[Placed]) -> Hashable:
    """Return the look of a row, the same however it is turned by quarters."""
    items = list(placed)
    looks = []
    for quarter in range(4):
        points = [turned((x, y), 90 * quarter) for x, y, _ in items]
        left, top = min(x for x, _ in points), min(y for _, y in points)
        looks.append(
            tuple(
                sorted(
                    (x - left, y - top, tokens[quarter])
                    for (x, y), (_, _, tokens) in zip(points, items, strict=True)
                )
            )
        )
    return min(looks)


def middle(ring: Ring) -> tuple[Length, Length]:
    """Return twice the middle of a ring's box."""
    xs, ys = zip(*ring, strict=True)
    return min(xs) + max(xs), min(ys) + max(ys)


def _figure(ring: Ring, arcs: Arcs) -> Hashable:
    """Return an outline that is equal for patches that cover the same cloth."""
    bends: dict[int, Hashable] = {}
    for i, through in arcs:
        one, two = ring[i], ring[(i + 1) % len(ring)]
        circle = circle_through(one, through, two)
        bends[i] = (circle[:2], clockwise(one, through, two))
    corners = [(point, bends.get(i)) for i, point in enumerate(ring)]
    first = corners.index(min(corners, key=lambda corner: corner[0]))
    return (*corners[first:], *corners[:first])


def _begun(ring: Ring) -> Ring:
    first = ring.index(min(ring))
    return (*ring[first:], *ring[:first])
