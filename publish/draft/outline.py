"""Outlines written in the pattern: points in hundredths of the half span.

In: the points of one wedge, the centre at 0, 0, the first fold along x. Out: its area.
Invariant: the curve passes through every point, smoothly unless the point is a corner,
and straight between two corners.

An outline that begins and ends on folds is closed along them: straight along one fold, or
through the centre when it goes from one to the other. At a fold that is no corner the
curve meets the fold squarely, so that it runs on smoothly when the motif is opened. An
outline whose last point repeats the first is a closed loop.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from shapely.geometry import MultiPolygon, Polygon

from publish.draft.curves import Points, bezier
from publish.draft.fill import painted, polygons
from publish.draft.unfold import ray, wedge_angle
from publish.model.pattern import OutlinePoint
from publish.notes import Note, Place, error, warning

ON_FOLD = 1.0
"""Hundredths of the half span: an end this close to a fold is on it."""


def outline_cloth(
    points: Sequence[OutlinePoint], folds: int, tolerance: float, place: Place
) -> tuple[MultiPolygon, tuple[Note, ...]]:
    """Return the area of an outline; the tolerance is in hundredths too."""
    at = np.array([[float(p.x), float(p.y)] for p in points]).reshape(-1, 2)
    corner = [p.corner for p in points]
    side = -1.0 if len(at) and at[:, 1].mean() < 0 else 1.0
    at = at * [1.0, side]
    if len(at) > 2 and (at[0] == at[-1]).all():
        at, corner = at[:-1], [corner[0] or corner[-1], *corner[1:-1]]
        ring = _loop(at, corner, tolerance)
    else:
        ring = _between_folds(at, corner, folds, tolerance)
    if len(ring) < 3 or polygons(painted([ring], "nonzero")).is_empty:
        return MultiPolygon(), (
            error(
                "D314",
                place,
                "the outline encloses no cloth",
                received=f"{len(points)} points",
                help="give at least three points that go round the cloth of one wedge",
            ),
        )
    ring = ring * [1.0, side]
    notes: tuple[Note, ...] = ()
    if not Polygon(ring).is_valid:
        notes = (
            warning(
                "D311",
                place,
                "the outline crosses or touches itself",
                help="move the points near the crossing apart",
            ),
        )
    return polygons(painted([ring], "nonzero")), notes


def _between_folds(at: Points, corner: list[bool], folds: int, tolerance: float) -> Points:
    """Return the ring of an outline that runs from fold to fold, or of a loop."""
    if len(at) < 2:
        return at
    ends = [_fold(at[0], folds), _fold(at[-1], folds)]
    if None in ends or len(at) < 3:
        return _loop(at, corner, tolerance)
    first, last = (float(e) for e in ends if e is not None)
    at = at.copy()
    at[0], at[-1] = _onto(at[0], first), _onto(at[-1], last)
    before = at[1] if corner[0] else _mirrored(at[1], first)
    after = at[-2] if corner[-1] else _mirrored(at[-2], last)
    line = np.concatenate([[before], at, [after]])
    flags = [True, *corner, True]
    made = [at[:1]]
    made += [
        _stretch(line[i - 1 : i + 3], flags[i], flags[i + 1], tolerance) for i in range(1, len(at))
    ]
    if first != last:
        made.append(np.zeros((1, 2)))
    return np.concatenate(made)


def _loop(at: Points, corner: list[bool], tolerance: float) -> Points:
    count = len(at)
    made = []
    for i in range(count):
        four = np.stack([at[(i + k) % count] for k in (-1, 0, 1, 2)])
        made.append(_stretch(four, corner[i], corner[(i + 1) % count], tolerance))
    return np.concatenate(made) if made else at


def _stretch(four: Points, first: bool, second: bool, tolerance: float) -> Points:
    """Return the curve from the second to the third of four points.

    A centripetal Catmull-Rom curve as a cubic Bezier: it neither loops nor overshoots at
    unevenly spaced points (Yuksel, Schaefer and Keyser 2011; from memory).
    """
    p0, p1, p2, p3 = four
    if first and second:
        return np.stack([p2])
    a, b, c = (
        max(float(np.hypot(*(q - p))), 1e-9) ** 0.5 for p, q in ((p0, p1), (p1, p2), (p2, p3))
    )
    one = (a * a * p2 - b * b * p0 + (2 * a * a + 3 * a * b + b * b) * p1) / (3 * a * (a + b))
    two = (c * c * p1 - b * b * p3 + (2 * c * c + 3 * c * b + b * b) * p2) / (3 * c * (c + b))
    if first:
        one = (p1 + two) / 2
    if second:
        two = (p2 + one) / 2
    return bezier(np.stack([p1, one, two, p2]), tolerance)


def _fold(point: Points, folds: int) -> float | None:
    """Return the angle of the fold that a point is on."""
    for angle in (0.0, wedge_angle(folds)):
        on = abs(float(point @ ray(angle + 90))) <= ON_FOLD
        if on and float(point @ ray(angle)) >= -ON_FOLD:
            return angle
    return None


def _onto(point: Points, angle: float) -> Points:
    return ray(angle) * max(0.0, float(point @ ray(angle)))


def _mirrored(point: Points, angle: float) -> Points:
    across = ray(angle + 90)
    return point - 2 * float(point @ across) * across
