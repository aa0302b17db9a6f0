"""A drawing of the whole motif: where its folds are, and whether it repeats on them.

In: the cloth as drawn, its marks. Out: a `Frame` as for a wedge, and notes.
Invariant: the motif that is made is the wedge unfolded; how far the drawing differs from
that is measured and said.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np
import shapely
from shapely.geometry import MultiPolygon

from publish.draft.curves import Points
from publish.draft.drawing import Drawing
from publish.draft.unfold import ray
from publish.draft.wedge import Frame
from publish.model.pattern import Motif
from publish.notes import Note, Place, Spot, error, warning

UNEVEN = 1 / 64
"""Inches between the drawing and the unfolded motif that pass without a word."""

UNLIKE = 1 / 8
"""Inches from which the drawing is not the motif that the folds would give."""


def whole_frame(area: MultiPolygon, drawing: Drawing) -> Frame:
    """Return the frame of a whole drawing: its marked centre, or the middle of its bounds,
    and its marked first fold, or the x axis."""
    left, top, right, bottom = area.bounds
    centre = np.array(drawing.centre or ((left + right) / 2, (top + bottom) / 2))
    c, s = ray(drawing.start or 0.0)
    return Frame(centre, np.array([[c, s], [-s, c]]))


def symmetry_notes(
    drawn: MultiPolygon, whole: MultiPolygon, motif: Motif, place: Place, size: str
) -> tuple[Note, ...]:
    """Say how far a whole drawing is from the motif that its folds give."""
    off, at = _deviation(drawn, whole)
    if off <= UNEVEN:
        return ()
    say = error if off > UNLIKE else warning
    return (
        say(
            "D322",
            place,
            f"the drawing does not repeat on {motif.folds} folds",
            expected=f"at most {UNEVEN:.3f} in off at size {size}",
            received=f"{off:.3f} in off",
            help='draw one wedge and set `covers: wedge`; or mark the centre (id "centre") and '
            "the first fold (data-start)",
            spot=Spot(size, motif.key, float(at[0]), float(at[1]), off, UNEVEN),
        ),
    )


def _deviation(one: MultiPolygon, two: MultiPolygon) -> tuple[float, Points]:
    """Return the greatest distance from a point of either outline to the other outline."""
    worst, at = 0.0, np.zeros(2)
    for a, b in ((one, two), (two, one)):
        points = shapely.get_coordinates(shapely.segmentize(a, 0.25))
        pieces = shapely.STRtree(list(_pieces(b)))
        found, gaps = pieces.query_nearest(
            shapely.points(points), return_distance=True, all_matches=False
        )
        if len(gaps) and gaps.max() > worst:
            worst, at = float(gaps.max()), points[found[0][int(gaps.argmax())]]
    return (worst if math.isfinite(worst) else 0.0), at


def _pieces(area: MultiPolygon) -> Iterable[shapely.LineString]:
    for part in area.geoms:
        for ring in (part.exterior, *part.interiors):
            points = np.asarray(ring.coords)
            yield from shapely.linestrings(np.stack([points[:-1], points[1:]], axis=1))
