"""Folding and opening: one wedge of cloth to the whole motif.

In: the wedge between the positive x axis and a second fold 360 / folds degrees clockwise
of it, the centre at the origin. Out: the whole, and what is known of the two folds.
Invariant: the whole is the union of `folds` images of the wedge; nothing is lost or left
open at a fold, so its area is `folds` times the wedge's.

How the cloth is folded, and where the folds end up:

- 4: in half, then in quarters. The half crease folds onto itself along one straight edge
  of the quarter; the quarter crease is the other.
- 8: then diagonally. The fold brings the quarter crease onto the half crease, so that all
  earlier folds lie together along the leg; the diagonal holds the last fold alone.
- 16: then once more, bringing the diagonal onto the leg.
- 6: in half, then in thirds. The first third folded over carries its end of the half
  crease onto the far side of the middle third; there the folded-over edge and that half
  crease lie together. The last third's fold wraps round the other side.
- 12: then in half once more, bringing the edge of the last third onto the other.

So in each case the edge called first here, on the x axis, holds the earlier folds, and the
second the last fold made. The half crease runs with a thread of the fabric and lies on the
first edge: it is on the straight grain; the second edge is on the straight grain for 4, on
the bias for 8, and off the grain for 6, 12 and 16.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draft.curves import Points
from publish.draft.fill import polygons
from publish.draft.limits import GRID
from publish.model.draft import FoldEdge

SPECK = 1e-9
"""Square inches: a piece no larger than this came off a tip when it was laid on the grid."""

_GRIDS = (GRID, 1.7 * GRID, 0.7 * GRID, 5 * GRID)

Contact = tuple[tuple[float, float], ...]


def wedge_angle(folds: int) -> float:
    """Return the wedge's angle in degrees."""
    return 360 / folds


def ray(angle: float) -> Points:
    """Return the unit vector at an angle in degrees, exact where it is 0, 1/2 or 1."""
    found = np.array([math.cos(math.radians(angle)), math.sin(math.radians(angle))])
    halves = np.round(found * 2) / 2
    return np.where(np.abs(found - halves) < 1e-15, halves, found)


def images(folds: int, symmetry: str) -> list[Points]:
    """Return the 2 x 2 matrices that carry the wedge to each of its places."""
    step = wedge_angle(folds)
    found = []
    for i in range(folds):
        if symmetry == "turning" or i % 2 == 0:
            c, s = ray(i * step)
            found.append(np.array([[c, -s], [s, c]]))
        else:
            c, s = ray((i + 1) * step)
            found.append(np.array([[c, s], [s, -c]]))
    return found


def moved(geometry: BaseGeometry, matrix: Points) -> BaseGeometry:
    """Return a geometry moved by a 2 x 2 matrix about the origin."""
    return shapely.transform(geometry, lambda points: points @ matrix.T)


def unfold(wedge: BaseGeometry, folds: int, symmetry: str) -> MultiPolygon:
    """Return the union of all images of a wedge, without hairlines at the folds."""
    every = [moved(wedge, m) for m in images(folds, symmetry)]
    for grid in _GRIDS:
        try:
            whole = polygons(shapely.union_all(every, grid_size=grid))
        except shapely.errors.GEOSException:
            # A hole so thin that the grid closes it in part; another grid rounds it otherwise.
            continue
        if whole.is_valid:  # what touches itself may come out with one part inside another
            return MultiPolygon([part for part in whole.geoms if part.area > SPECK])
    return polygons(shapely.union_all([w.buffer(GRID, join_style="mitre") for w in every]))


def sector(folds: int, reach: float) -> Polygon:
    """Return the wedge-shaped region between the folds, at least as far as `reach`."""
    far = 4 * reach
    return Polygon([(0, 0), far * ray(0), far * ray(wedge_angle(folds))])


def half_span(wedge: BaseGeometry, folds: int, symmetry: str) -> float:
    """Return half the side of the smallest upright square about the centre that holds the
    unfolded motif. Folds of 6 do not reach equally far on every side; the square is still
    about the centre, as the cloth is folded about it."""
    points = shapely.get_coordinates(wedge)
    return max(float(np.abs(points @ m.T).max()) for m in images(folds, symmetry))


def contact(wedge: BaseGeometry, angle: float, near: float) -> Contact:
    """Return the stretches of a fold that a wedge lies along, from the centre outwards.

    A side of the outline lies along the fold when both its ends are within `near` of it.
    Touching at a point is no contact.
    """
    along, across = ray(angle), ray(angle + 90)
    spans: list[tuple[float, float]] = []
    for part in polygons(wedge).geoms:
        for ring in (part.exterior, *part.interiors):
            points = np.asarray(ring.coords)
            off = np.abs(points @ across) <= near
            reach = points @ along
            for i in np.flatnonzero(off[:-1] & off[1:]):
                low, high = sorted((float(reach[i]), float(reach[i + 1])))
                if high > 0 and high - low > near:
                    spans.append((max(low, 0.0), high))
    return _merged(spans, near)


def _merged(spans: list[tuple[float, float]], near: float) -> Contact:
    found: list[tuple[float, float]] = []
    for low, high in sorted(spans):
        if found and low <= found[-1][1] + near:
            found[-1] = (found[-1][0], max(high, found[-1][1]))
        else:
            found.append((low, high))
    return tuple(found)


def fold_edges(wedge: BaseGeometry, folds: int, near: float) -> tuple[FoldEdge, FoldEdge]:
    """Return the two folds of a mirrored wedge: the earlier folds, then the last one."""
    last = wedge_angle(folds)
    grain = {90.0: "straight", 45.0: "bias"}.get(last, "off grain")
    return (
        FoldEdge("multiple", 0.0, "straight", contact(wedge, 0.0, near)),
        FoldEdge("single", last, grain, contact(wedge, last, near)),
    )
