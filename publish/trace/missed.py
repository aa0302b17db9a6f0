"""Where a picture and what was drawn from it differ by more than a line.

In: how much of each pixel is paper, a drawing, its pose. Out: places in the picture.
Invariant: what most copies do not have, and what they have elsewhere than was thought, is
found alike: as an area, however far from the outline it lies.
"""

from __future__ import annotations

import cv2
import numpy as np

from publish.trace.cubics import flat
from publish.trace.drawn import Drawn
from publish.trace.image import Floats, Points
from publish.trace.plane import copies, project
from publish.trace.straighten import Pose

COARSE = 2
"""How many times fewer pixels than the picture's are compared."""


def missed(share: Floats, made: Drawn, pose: Pose, wide: float) -> list[Points]:
    """Return the middle of each area at least `wide` pixels wide, in pixels, that is paper in
    one of the two and ground in the other."""
    rows, columns = (v // COARSE for v in share.shape)
    few = cv2.resize(share, (columns, rows), interpolation=cv2.INTER_AREA)
    shown = np.zeros((rows, columns), np.uint8)
    rings = [flat(list(path.curves)) for part in made.parts for path in part]
    for way in copies(pose.turns, 0.0) if pose.turns else [np.eye(2)]:
        one = np.zeros_like(shown)
        places = [(project(pose.matrix, ring @ way.T) + 0.5) / COARSE - 0.5 for ring in rings]
        cv2.fillPoly(one, [np.round(p * 16).astype(np.int32) for p in places], 1, shift=4)
        np.maximum(shown, one, out=shown)
    unlike = ((few > 0.5) != (shown > 0)).astype(np.uint8)
    side = max(3, round(wide / COARSE))
    core = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (side, side))
    count, _, _, middles = cv2.connectedComponentsWithStats(cv2.erode(unlike, core))
    return [np.asarray((middles[k] + 0.5) * COARSE - 0.5, np.float64) for k in range(1, count)]
