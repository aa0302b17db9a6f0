"""One connected area that is searched for narrow places, and how wide a place in it is.

In: an area in inches, how it repeats. Out: `Part`, `Narrow`.
Invariant: a width is the distance between the two edges that face each other at a place,
taken from the outline itself, whichever of a part's copies it was found on.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draft.curves import Points
from publish.draft.fill import polygons
from publish.draft.limits import CHORD
from publish.draft.offset import FIRST, smoothed
from publish.draft.repeat import Repeat

RIPPLE = 2 * CHORD
"""Inches: how much flattened curves may wrongly narrow or widen a place."""

NEAR = 0.005
"""Share of a disc's radius by which a copy may be off that is searched with it."""


@dataclass(frozen=True)
class Narrow:
    """A narrow place: its middle, and its width in inches."""

    x: float
    y: float
    width: float


@dataclass(frozen=True, eq=False)
class Part:
    """One connected area, copies with fewer points to search it by, and its edge, side by
    side. The coarse copy serves for discs larger than what it may be missing. `repeat` is
    how it repeats within itself, if it does."""

    true: Polygon
    fine: Polygon
    coarse: BaseGeometry
    sides: NDArray[np.object_]
    tree: shapely.STRtree
    repeat: Repeat | None

    @classmethod
    def of(cls, part: Polygon, repeat: Repeat | None = None) -> Part:
        rings = [np.asarray(r.coords) for r in (part.exterior, *part.interiors)]
        sides = shapely.linestrings(
            np.concatenate([np.stack([r[:-1], r[1:]], axis=1) for r in rings])
        )
        if repeat is not None and not repeat.repeats(part):
            repeat = None
        fine = part.simplify(CHORD / 2)
        coarse = smoothed(fine) if repeat is None else repeat.smoothed(fine)
        return cls(part, fine, coarse, sides, shapely.STRtree(sides), repeat)

    def copy(self, radius: float) -> BaseGeometry:
        """Return the copy to be searched with a disc; of a dense outline, one that is off by
        a fraction of what the search lets pass."""
        if radius <= FIRST:
            return self.fine
        if self.coarse is self.fine or NEAR * radius <= CHORD:
            return self.coarse
        return self.coarse.simplify(NEAR * radius)

    def grown(self, shape: BaseGeometry, distance: float) -> BaseGeometry:
        """Return a copy grown, or shrunk, with corners about as round as a disc of this size."""
        if self.repeat is None:
            return shape.buffer(distance, quad_segs=8)
        return self.repeat.grown(shape, distance)

    def left_over(self, copy: BaseGeometry, covered: BaseGeometry) -> NDArray[np.object_]:
        """Return the pieces of a copy that are not covered, of one repeat at least."""
        if self.repeat is None:
            left: NDArray[np.object_] = shapely.get_parts(polygons(copy.difference(covered)))
            return left
        return self.repeat.pieces(copy, lambda s: s.difference(covered))

    @cached_property
    def roundest(self) -> Narrow:
        """The widest place of a part that is narrow everywhere."""
        line = shapely.maximum_inscribed_circle(self.fine, tolerance=RIPPLE / 8)
        x, y = line.coords[0]
        return Narrow(x, y, 2 * line.length)

    def edge(self, at: Points, reach: float) -> BaseGeometry:
        """Return the edge near a point, at least as far as `reach` from it."""
        return shapely.multilinestrings(self.sides[self.tree.query(Point(at).buffer(reach))])

    def measured(self, middle: Point, radius: float) -> Narrow:
        """Return the width at a place: the distance between the edges on its two sides.

        The edges are those within reach of the middle, on either side of the strip through it
        that is half as wide as the place; the strip leaves out the end of a finger.
        """
        at = np.array([middle.x, middle.y])
        edge = self.edge(at, 7 * radius)
        for _ in range(2):  # the second time round the middle lies midway
            near = _nearest(edge, at)
            side = near - at
            half = float(np.hypot(*side))
            if half < 1e-9:
                break
            way = side / half
            across = edge.intersection(LineString([at, at - 6 * radius * way]))
            if across.is_empty:
                break
            far = _nearest(across, at)
            at, half = (near + far) / 2, float(np.hypot(*(near - far))) / 2
        else:
            close = edge.intersection(Point(at).buffer(1.1 * half, quad_segs=16))
            one, two = (
                close.intersection(_half_plane(at, way * sign, half)) for sign in (1.0, -1.0)
            )
            if not one.is_empty and not two.is_empty:
                line = shapely.shortest_line(one, two)
                mid = line.interpolate(0.5, normalized=True)
                return Narrow(mid.x, mid.y, line.length)
        return Narrow(middle.x, middle.y, 2 * radius)


def _half_plane(at: Points, way: Points, half: float) -> Polygon:
    """Return what lies more than half of `half` to one side of a place."""
    aside = np.array([-way[1], way[0]])
    near, far = at + 0.5 * half * way, at + 3 * half * way
    return Polygon(
        [
            near - 3 * half * aside,
            near + 3 * half * aside,
            far + 3 * half * aside,
            far - 3 * half * aside,
        ]
    )


def _nearest(edge: BaseGeometry, at: Points) -> Points:
    found = shapely.shortest_line(edge, Point(at))
    return np.asarray(found.coords[0])
