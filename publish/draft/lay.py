"""An ornament laid into the wedge: a leaf or a letter that was drawn for no folds.

In: its cloth as drawn, a motif, how it is to lie. Out: a `Frame`, as of a drawn wedge.
Invariant: the ornament is moved and turned, never stretched; its top points away from the
centre. Where nothing is said it lies as far out as both folds still hold it.

Larger or farther out are one choice, since a motif is always made to its finished size:
here the ornament's length along its line is 1, and its distance from the centre is sought.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon

from publish.draft.curves import Points
from publish.draft.fill import polygons
from publish.draft.unfold import contact, ray, sector, unfold, wedge_angle
from publish.draft.wedge import Frame
from publish.model.pattern import Lay, Motif

HELD = 0.12
"""Share of the ornament's length that its cloth runs along each fold, so that the motif does
not hang by a thread."""

LEFT = 0.5
"""Share of the ornament that the folds leave at least, so that it is still seen as one."""

CRUMB = 2e-3
"""Area, in the square of the ornament's length, of the smallest opening that is cut: 3 mm
across beside an ornament of 70 mm."""

NEAR, STEP = -0.9, 0.05
"""In the ornament's lengths: the nearest distance that is tried, and from one to the next."""

FINE = 1e-3
"""Of its length: how finely an ornament is looked at while its place is sought."""

LINES = {"halving line": 0.5, "first fold": 0.0, "second fold": 1.0}
"""Share of the wedge's angle at which each line lies."""

LEAST = 1e-6
"""Share of its length that is a touch, not a contact."""


def frame_of(cloth: MultiPolygon, motif: Motif, lay: Lay) -> Frame | None:
    """Return the frame that lays an ornament; None where no place for it cuts both folds."""
    angle = LINES[lay.along] * wedge_angle(motif.folds)
    along = ray(angle)
    # The top of a drawing is where y is least: a quarter turn takes it to the x axis.
    turn = ray(angle + 90 + lay.turn)
    matrix = np.array([[turn[0], -turn[1]], [turn[1], turn[0]]])
    points = shapely.get_coordinates(cloth) @ matrix.T
    low, high = (points @ along).min(), (points @ along).max()
    across = np.array([-along[1], along[0]])
    middle = ((points @ across).min() + (points @ across).max()) / 2
    long = float(high - low)
    unit = matrix / long
    begun = (low * along + middle * across) / long
    there = shapely.transform(cloth, lambda p: p @ unit.T - begun)
    distance = _said(lay)
    if distance is None:
        distance = _sought(there, lay, along, motif)
    if distance is None:
        return None
    return Frame(np.linalg.solve(unit, begun - distance * along), unit)


def _said(lay: Lay) -> float | None:
    """Return the distance that is written, in the ornament's lengths."""
    if lay.size is not None:
        distance = 100 - lay.size if lay.distance is None else lay.distance
        return float(distance / lay.size)
    if lay.distance is not None:
        return float(lay.distance / (100 - lay.distance))
    return None


def _sought(there: MultiPolygon, lay: Lay, along: Points, motif: Motif) -> float | None:
    """Return how far out an ornament of length 1, its near end at the centre, is laid best."""
    there = polygons(shapely.make_valid(shapely.simplify(there, FINE)))
    parts = max(len(there.geoms), motif.pieces)
    least = LEFT * there.area * (1.0 if LINES[lay.along] == 0.5 else 0.5)
    points = shapely.get_coordinates(there)
    wide = float(np.ptp(points @ np.array([-along[1], along[0]])))
    far = NEAR + 2 + wide / 2 / math.tan(math.radians(wedge_angle(motif.folds) / 2))
    for distance in np.arange(far, NEAR, -STEP):
        moved = shapely.transform(there, lambda p, d=distance: p + d * along)
        if motif.symmetry == "turning":
            opened = unfold(moved, motif.folds, "turning")
        else:
            wedge = polygons(moved.intersection(sector(motif.folds, far + 2)))
            if wedge.area < least or not _held(wedge, motif.folds):
                continue
            opened = unfold(wedge, motif.folds, "mirror")
        if len(opened.geoms) <= parts and not _pinholes(opened):
            return float(distance)
    return None


def _pinholes(opened: MultiPolygon) -> bool:
    """Say whether openings are left that no scissors would cut."""
    return any(Polygon(hole).area < CRUMB for part in opened.geoms for hole in part.interiors)


def _held(wedge: MultiPolygon, folds: int) -> bool:
    """Say whether the cloth of a wedge runs far enough along both folds."""
    return all(
        max((b - a for a, b in contact(wedge, angle, LEAST)), default=0.0) >= HELD
        for angle in (0.0, wedge_angle(folds))
    )
