"""What of the paper in a picture may be the motif.

In: where paper is. Out: covers with all else taken out, the likeliest first.
Invariant: a motif lies whole inside the picture, with ground round it.
"""

from __future__ import annotations

from collections.abc import Iterator

import cv2
import numpy as np
from numpy.typing import NDArray

from publish.trace.image import Floats
from publish.trace.paper import Cover

CRUMB = 5e-5
"""Share of the largest piece below which one is dust or the table's grain."""


def candidates(cover: Cover) -> Iterator[Floats | str]:
    """Yield the cover of what may be the motif; the side where its paper is cut off."""
    smooth = cv2.GaussianBlur(cover.share, (0, 0), 1.0)
    count, labels, stats, _ = cv2.connectedComponentsWithStats((smooth > 0.5).astype(np.uint8))
    if count < 2:
        return
    part = np.asarray(labels, np.int32)
    rows, columns = cover.share.shape
    area = stats[1:, cv2.CC_STAT_AREA]
    left, top = stats[1:, cv2.CC_STAT_LEFT], stats[1:, cv2.CC_STAT_TOP]
    right, low = left + stats[1:, cv2.CC_STAT_WIDTH], top + stats[1:, cv2.CC_STAT_HEIGHT]
    edges = {
        "left": left <= 1,
        "upper": top <= 1,
        "right": right >= columns - 1,
        "lower": low >= rows - 1,
    }
    largest = int(area.argmax())
    if area[largest] < 2e-3 * rows * columns:
        return
    side = next((name for name, touched in edges.items() if touched[largest]), None)
    if side is not None:
        yield side
        return
    whole = ~np.any(list(edges.values()), axis=0)
    large = whole & (area >= 0.02 * area[largest])
    yield _only(cover.share, part, whole & (area >= CRUMB * area[largest]))
    if large.sum() > 1:
        yield _only(cover.share, part, np.arange(len(area)) == largest)


def _only(share: Floats, labels: NDArray[np.int32], kept: NDArray[np.bool_]) -> Floats:
    """Return the cover of some components alone, and what is close round them."""
    mask = np.concatenate([[False], kept])[labels].astype(np.uint8)
    near = cv2.dilate(mask, np.ones((9, 9), np.uint8))
    other = cv2.dilate(((labels > 0) & (mask == 0)).astype(np.uint8), np.ones((5, 5), np.uint8))
    clear = (near == 0) | ((other > 0) & (mask == 0))
    return np.where(clear, np.minimum(share, 0), share).astype(np.float32)
