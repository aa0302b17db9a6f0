"""A drawing as the picture would show it, and what moving its outline changes there.

In: a wedge and its blur, curves in its pixels. Out: fields, sparse matrices.
Invariant: a drawing runs on across both folds as its mirror images do, as the field does.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.spatial import cKDTree

from publish.trace.consensus import Wedge
from publish.trace.cubics import Curve, flat
from publish.trace.image import Floats, Points
from publish.trace.tips import PIXEL

GRAIN = 4
"""How many times finer than the field a drawing is filled."""

NOISE = 0.06
"""Spread of the field about a drawing without fault."""


@dataclass(frozen=True)
class View:
    """The field, its pixels to a unit, where its first pixel is, its blur, the mirrors of its
    folds, and the pixels inside the wedge."""

    field: Floats
    unit: float
    origin: Points
    spread: float
    mirrors: tuple[Points, ...]
    inside: NDArray[np.bool_]

    @classmethod
    def of(cls, wedge: Wedge, spread: float) -> View:
        """Return the view of a wedge whose picture is blurred by a spread in pixels."""
        mirrors = []
        for angle in (0.0, wedge.angle):
            c, s = math.cos(2 * angle), math.sin(2 * angle)
            mirrors.append(np.array([[c, s], [s, -c]]))
        origin = wedge.origin * wedge.unit
        y, x = np.mgrid[0 : wedge.field.shape[0], 0 : wedge.field.shape[1]].astype(float)
        x, y = x + origin[0], y + origin[1]
        inside = (y >= 0) & (x * math.sin(wedge.angle) - y * math.cos(wedge.angle) >= 0)
        inside &= np.hypot(x, y) < wedge.unit * 1.05
        field = np.clip(wedge.field, 0, 1)
        return cls(field, wedge.unit, origin, spread, (np.eye(2), *mirrors), inside)

    def rest(self, curves: list[list[Curve]]) -> Floats:
        """Return by pixel what a drawing leaves over of the picture."""
        return self.field - self.drawn(curves)

    def unlike(self, rest: Floats) -> float:
        """Return how unlike the picture a drawing looks that leaves a rest, outliers counting
        for less."""
        return float(np.log1p((rest[self.inside] / (4 * NOISE)) ** 2).sum())

    def bell(self, at: Points, rest: Floats) -> tuple[sparse.csr_matrix, Points]:
        """Return how much each pixel near an outline changes where a piece of it, at points,
        goes outwards by a unit of area, shape (pixels, pieces), and the rest at these pixels.
        """
        radius = 3 * self.spread
        images = np.concatenate([at @ m.T for m in self.mirrors])
        row, column = np.nonzero(self.inside & self._near(images, radius))
        pixels = cKDTree(np.column_stack([column, row]) + self.origin)
        gaps = pixels.sparse_distance_matrix(cKDTree(images), radius, output_type="coo_matrix")
        spread = self.spread**2
        value = np.exp(-(gaps.data**2) / (2 * spread)) / (2 * math.pi * spread)
        shape = (len(row), len(at))
        found = sparse.csr_matrix((value, (gaps.row, gaps.col % len(at))), shape=shape)
        return found, rest[row, column].astype(np.float64)

    def _near(self, images: Points, radius: float) -> NDArray[np.bool_]:
        """Return the pixels near the outline."""
        rows, columns = self.field.shape
        spot = np.ones((rows, columns), np.uint8)
        x, y = np.round(images - self.origin).astype(int).T
        kept = (x >= 0) & (y >= 0) & (x < columns) & (y < rows)
        spot[y[kept], x[kept]] = 0
        found: NDArray[np.bool_] = cv2.distanceTransform(spot, cv2.DIST_L2, 5) <= radius
        return found

    def drawn(self, curves: list[list[Curve]]) -> Floats:
        """Return a drawing as it would be seen."""
        rows, columns = self.field.shape
        fine = np.zeros((rows * GRAIN, columns * GRAIN), np.uint8)
        rings = [flat(path, 24) for path in curves]
        for mirror in self.mirrors:
            one = np.zeros_like(fine)
            places = [
                np.round((((r @ mirror.T - self.origin) + 0.5) * GRAIN - 0.5) * 16).astype(np.int32)
                for r in rings
            ]
            cv2.fillPoly(one, places, 255, shift=4)
            np.maximum(fine, one, out=fine)
        small = cv2.resize(fine, (columns, rows), interpolation=cv2.INTER_AREA)
        blur = math.sqrt(max(self.spread**2 - PIXEL**2, 0.01))
        seen = cv2.GaussianBlur(small.astype(np.float32) / 255, (0, 0), blur)
        return np.asarray(seen, np.float32)
