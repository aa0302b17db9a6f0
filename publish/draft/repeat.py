"""Work on an opened motif done on one repeat of it, and carried to all the others.

In: areas that the folds repeat. Out: areas.
Invariant: what comes out is what the same work on the whole would give, as far as the work
looks no farther than its reach; it costs what one repeat has in points, and an opening.

An outline with few points is worked on whole, which is as fast and the same to the last
digit.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draft.fill import polygons
from publish.draft.offset import DENSE, FIRST, SHARP, corners, offset, smoothed, stepped
from publish.draft.unfold import images, moved, sector, unfold

_LAP = 1e-6
"""Inches by which repeats reach across their folds, so that no hairline is left there."""

Change = Callable[[BaseGeometry], BaseGeometry]


@dataclass(frozen=True)
class Repeat:
    """How a motif repeats: its folds, its symmetry, and how far from the centre it reaches."""

    folds: int
    symmetry: str
    reach: float

    @property
    def region(self) -> Polygon:
        """The sector that one repeat lies in."""
        return sector(self.folds, self.reach)

    def repeats(self, part: Polygon) -> bool:
        """Say whether a connected part of a motif is its own image in every repeat.

        The image of a part is a part: one that shares a point with it is the same.
        """
        inside = part.representative_point()
        shapely.prepare(part)
        return all(part.contains(moved(inside, m)) for m in images(self.folds, self.symmetry))

    def here(self, found: NDArray[np.object_]) -> NDArray[np.object_]:
        """Return those of many geometries that lie in the region, in part at least.

        What lies on a fold counts, on whichever side of it rounding has put it: it may be its
        own image, and lie in no other repeat.
        """
        if not len(found):
            return found
        region = self.region
        shapely.prepare(region)
        inside: NDArray[np.object_] = found[shapely.dwithin(region, found, 2 * _LAP)]
        return inside

    def pieces(self, shape: BaseGeometry, change: Change) -> NDArray[np.object_]:
        """Return the connected pieces that a change leaves of a shape, those in the region.

        A point of the outcome may depend on nothing but itself.
        """
        if shapely.count_coordinates(shape) <= DENSE:
            return self.here(shapely.get_parts(polygons(change(shape))))
        left = shapely.get_parts(polygons(change(shape.intersection(self._lapped(_LAP)))))
        far = shapely.get_coordinates(self.region)
        folds = shapely.linestrings([[far[0], far[1]], [far[0], far[2]]])
        torn = shapely.dwithin(left, shapely.multilinestrings(folds), 2 * _LAP)
        joined = unfold(MultiPolygon(list(left[torn])), self.folds, self.symmetry)
        return np.concatenate([left[~torn], self.here(shapely.get_parts(joined))])

    def _lapped(self, width: float) -> Polygon:
        return self.region.buffer(width, join_style="mitre")

    def changed(self, shape: BaseGeometry, reach: float, change: Change) -> BaseGeometry:
        """Return what a change makes of a shape that repeats.

        No point of the outcome may depend on anything farther from it than `reach` inches.
        """
        if _plain(shape):
            return change(shape)
        here = change(polygons(shape.intersection(self._lapped(1.05 * reach + 10 * _LAP))))
        lapped = polygons(here.intersection(self._lapped(_LAP)))
        return unfold(lapped, self.folds, self.symmetry)

    def offset(self, shape: BaseGeometry, distance: float, tolerance: float) -> BaseGeometry:
        """Return `offset` of a shape that repeats."""
        share = self._share(shape)
        return self.changed(shape, abs(distance), lambda s: offset(s, distance, tolerance, share))

    def smoothed(self, shape: BaseGeometry) -> BaseGeometry:
        """Return `smoothed` of a shape that repeats."""
        share = self._share(shape)
        return self.changed(shape, 4 * FIRST, lambda s: smoothed(s, share))

    def grown(self, shape: BaseGeometry, distance: float) -> BaseGeometry:
        """Return a shape that repeats grown, or shrunk, corners about as round as a disc of
        this size."""
        dense = shapely.count_coordinates(shape) > DENSE
        if dense or _plain(shape):
            return self.changed(shape, abs(distance), lambda s: s.buffer(distance, quad_segs=8))
        return self.changed(shape, abs(distance), lambda s: stepped(s, distance))

    def _share(self, shape: BaseGeometry) -> int:
        """Return from how many points on one repeat of a shape counts as dense."""
        whole = shapely.count_coordinates(shape) <= DENSE
        return DENSE if whole else DENSE // self.folds


def _plain(shape: BaseGeometry) -> bool:
    """Say whether a shape has few points, and few sharp corners: the arcs round these cross
    one another wherever they lie closer together than a step is wide."""
    return shapely.count_coordinates(shape) <= DENSE and corners(shape) <= SHARP
