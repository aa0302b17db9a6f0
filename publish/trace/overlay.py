"""The picture with what was traced laid over it, to judge it by.

In: a `Traced`. Out: a PNG picture.
Invariant: what is drawn is the drawing itself, carried back into the picture; folds, the
centre and the places where a copy strays most are marked.
"""

from __future__ import annotations

import math

import cv2
import numpy as np

from publish.trace.cubics import flat
from publish.trace.drawn import on_fold
from publish.trace.image import Pixels, Points
from publish.trace.plane import copies, project
from publish.trace.tracing import STRAY, Traced

OUTLINE = (230, 30, 160)
FOLD = (30, 150, 230)
STRAYED = (250, 140, 0)
"""Red, green, blue."""


def overlay(found: Traced) -> bytes:
    """Return the picture as PNG, faded, with outline, folds and straying places."""
    pixels = found.picture.pixels
    shown: Pixels = (pixels * 0.75 + 63).astype(np.uint8)
    thick = max(2, round(max(pixels.shape) / 900))
    matrix = found.pose.matrix
    ways = copies(found.folds // 2, 0.0) if found.opened else [np.eye(2)]
    for k in range(found.folds if found.opened else 2):
        angle = 2 * math.pi * k / found.folds
        far = np.array([[0, 0], [math.cos(angle), math.sin(angle)]]) * 1.12
        _line(shown, project(matrix, far), FOLD, max(1, thick // 2), closed=False)
    for way in ways:
        for part in found.drawn.parts:
            for path in part:
                for curve in path.curves:
                    if not on_fold(curve, found.wedge.angle):
                        points = flat([curve], 24) @ way.T
                        _line(shown, project(matrix, points), OUTLINE, thick, closed=False)
    strayed = [
        project(matrix, np.array([stray.where]))[0]
        for stray in found.strays
        if stray.greatest > 2 * found.half * STRAY
    ]
    for at in (*strayed, *found.missed):
        centre = (round(float(at[0]) * 16), round(float(at[1]) * 16))
        cv2.circle(shown, centre, 14 * thick * 16, STRAYED, thick, cv2.LINE_AA, 4)
    done, png = cv2.imencode(".png", shown[..., ::-1])
    assert done
    return png.tobytes()


def _line(
    shown: Pixels, points: Points, colour: tuple[int, int, int], thick: int, closed: bool
) -> None:
    fixed = np.round((points + 0.0) * 16).astype(np.int32)
    cv2.polylines(shown, [fixed], closed, colour, thick, cv2.LINE_AA, 4)
