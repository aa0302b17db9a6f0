"""The plane of the paper, and the ways in which a motif lies on itself.

In: nothing. Out: homographies as 3 x 3 matrices, and groups of 2 x 2 matrices.
Invariant: points have the shape (n, 2); y points down, as in a picture.
"""

from __future__ import annotations

import math

import cv2
import numpy as np

from publish.trace.image import Floats, Points


def project(matrix: Points, points: Points) -> Points:
    """Return points carried by a homography."""
    lifted = points @ matrix[:, :2].T + matrix[:, 2]
    found: Points = lifted[:, :2] / lifted[:, 2:]
    return found


def turned(angle: float) -> Points:
    """Return the matrix that turns by an angle in radians."""
    c, s = math.cos(angle), math.sin(angle)
    return np.array([[c, -s], [s, c]])


def copies(turns: int, fold: float) -> list[Points]:
    """Return the isometries of a motif of `turns` turns with a fold at an angle: turns
    first, then mirror images."""
    mirror = turned(2 * fold) @ np.diag([1.0, -1.0])
    around = [turned(2 * math.pi * k / turns) for k in range(turns)]
    return [*around, *(a @ mirror for a in around)]


def straightened(share: Floats, matrix: Points, side: int, reach: float, level: float) -> Floats:
    """Return the plane from -reach to reach in both directions as a square of pixels.

    `matrix` carries the plane to the picture. `level` is the spread of a blur, in pixels
    of the result; the picture is made coarse enough first, so that none of it is missed.
    """
    unit = 2 * reach / side
    grain = math.sqrt(abs(float(np.linalg.det(local(matrix, np.zeros((1, 2)))[0])))) * unit
    while grain > 2 and min(share.shape) > 16:
        share = np.asarray(cv2.pyrDown(share), np.float32)
        half = np.array([[0.5, 0, 0], [0, 0.5, 0], [0, 0, 1]])
        matrix = half @ matrix
        grain /= 2
    place = np.array([[unit, 0, unit / 2 - reach], [0, unit, unit / 2 - reach], [0, 0, 1]])
    found = cv2.warpPerspective(
        share,
        matrix @ place,
        (side, side),
        flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP,
        borderMode=cv2.BORDER_REPLICATE,
    )
    return np.asarray(cv2.GaussianBlur(found, (0, 0), level) if level else found, np.float32)


def local(matrix: Points, points: Points) -> Points:
    """Return the derivative of a homography at points, shape (n, 2, 2)."""
    lifted = points @ matrix[:, :2].T + matrix[:, 2]
    at = lifted[:, :2] / lifted[:, 2:]
    found: Points = (matrix[None, :2, :2] - at[:, :, None] * matrix[None, 2:, :2]) / lifted[
        :, 2, None, None
    ]
    return found


def sampled(field: Floats, points: Points) -> Floats:
    """Return a field of one or more channels at points in its pixels, by bilinear steps;
    shape (n,) or (n, channels)."""
    wide = 1 << 14
    rows = -(-len(points) // wide)
    maps = np.zeros((2, rows * wide), np.float32)
    maps[:, : len(points)] = points.T
    x, y = maps.reshape(2, rows, wide)
    found = cv2.remap(field, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    flat = found.reshape(rows * wide, -1)[: len(points)]
    return np.asarray(flat[:, 0] if field.ndim == 2 else flat, np.float32)
