"""Stitches over the edge of appliqué that is fused: a zigzag as the steps tell it.

In: a motif's shape in inches. Out: the thread's way.
Invariant: each stitch is `LENGTH` along the edge and swings `WIDTH`, one end just off the
motif; a ring's last stitch meets its first, so that the length may differ by what evens out.
"""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import LinearRing, MultiLineString, MultiPolygon

from publish.units import INCH_IN_MM

LENGTH = 1.5 / float(INCH_IN_MM)
WIDTH = 2.5 / float(INCH_IN_MM)
"""Inches, as the steps say."""
OFF = 0.012
"""Inches by which the outer end lies beside the edge, in the ground."""


def zigzag(shape: MultiPolygon) -> MultiLineString:
    """Return the thread along every edge of a motif."""
    found = []
    for part in shape.geoms:
        found.append(_round(part.exterior, 1.0 if part.exterior.is_ccw else -1.0))
        found += [_round(hole, -1.0 if hole.is_ccw else 1.0) for hole in part.interiors]
    return MultiLineString(found)


def _round(ring: LinearRing, left: float) -> LinearRing:
    """Return the thread along one ring, half a stitch from swing to swing.

    `left` is 1 where the motif lies to the left of the ring's way, else -1.
    """
    swings = 2 * max(3, round(ring.length / LENGTH))
    at = np.arange(swings) / swings
    points = shapely.line_interpolate_point(ring, at, normalized=True)
    step = 0.25 / swings
    before, after = (
        shapely.get_coordinates(
            shapely.line_interpolate_point(ring, (at + move) % 1.0, normalized=True)
        )
        for move in (-step, step)
    )
    along = after - before
    along /= np.maximum(np.hypot(along[:, 0], along[:, 1]), 1e-12)[:, None]
    side = np.stack([-along[:, 1], along[:, 0]], axis=1)
    ends = np.where(np.arange(swings) % 2 == 0, -OFF, WIDTH - OFF)
    return LinearRing(shapely.get_coordinates(points) + left * side * ends[:, None])
