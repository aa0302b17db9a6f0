"""The height of a quilt's face: batting that swells between stitches, and what lies on it.

In: a subject, a window. Out: `Relief`. Heights in inches.
Invariant: the swelling solves the membrane equation on a springy bed, held where the top
is stitched; everything else (appliqué, seams, binding, thread) is laid on that height.

How thick cloth is and how deep seams and folds are: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

from publish.render.arrays import Grey, blurred, clouds, resized
from publish.render.bends import dome
from publish.render.membrane import height
from publish.render.paint import Window, covered, drawn
from publish.render.subject import Subject

LOFT = 0.15
"""Inches to which the batting would lift the top if nothing held it near."""
REACH = 0.28
"""Inches over which the batting gives way beside a held line."""
PUCKER = 0.009
"""Inches by which the cloth gathers beside a line of stitches."""
GATHER = 0.17
"""Inches from one gather to the next along a line of quilting."""
STITCH = 3 / 25.4
"""Inches: one machine stitch of quilting, 3 mm, as the steps say."""
APART = 1 / 16
"""Inches between stitches by hand along a turned edge, as the steps say."""
DIMPLE = 0.009
THREAD = 0.010
"""Inches: quilting thread as it lies, a quarter of a millimetre. Common practice, no source."""
DRAPE = ((0.45, 8.0, 15.0), (0.11, 3.0, 4.0))
"""Inches: how deep folds of a quilt's whole are, how far apart across and down."""
COARSEST = 48.0
"""Pixels to the inch on which the swelling is solved: finer than cloth can crease."""
CLOTH = 0.012
SEAM = 0.020
BINDING = 0.085
_HELD = {"quilted": 14.0, "seam": 0.5, "edge": 60.0}
"""How firmly a pixel is held that a line covers."""


@dataclass(frozen=True)
class Relief:
    """A quilt's face as heights, with what must be known to colour it."""

    height: Grey
    inside: Grey
    """How much of each pixel the quilt covers."""
    thread: tuple[Grey, ...]
    """How much of each pixel the thread of each stitching covers."""
    holes: Grey
    """How deep in a needle's hole each pixel lies, 0 to 1."""


def relief(subject: Subject, window: Window) -> Relief:
    """Compute the height of a subject's face."""
    inside = covered(window, subject.bound)
    face = swelling(subject, window)
    face += _appliqued(subject, window) - _sewn_down(subject, window)
    if len(subject.seams.geoms):
        groove = drawn(window, subject.seams, 0.03)
        groove *= 1 - np.float32(0.6) * covered(window, *(m.shape for m in subject.motifs))
        face -= SEAM * blurred(groove, max(0.6, 0.018 * window.fine))
    if subject.binding:
        face += _bound(subject, window)
    face += _stuffed(subject, window) if subject.pillow else _draped(window)
    threads, holes = _stitched(subject, window)
    for each in threads:
        face += (THREAD * 0.7) * each
    face -= 0.012 * holes
    return Relief(face, inside, threads, holes)


def swelling(subject: Subject, window: Window, uneven: float = 1.0) -> Grey:
    """Return how the batting lifts the top between what holds it.

    `uneven` is how much stitches pull and batting lifts by chance, 0 for not at all.
    """
    coarse = window.coarser(COARSEST)
    pixel = 1 / coarse.fine
    bed = np.float32((pixel / REACH) ** 2)
    held = np.full(coarse.shape, bed, np.float32)
    width = max(0.03, pixel)
    tight = 1 + 0.35 * uneven * clouds(coarse.shape, 0.3 * coarse.fine, 11)
    for stitching in subject.stitching:
        held += _HELD["quilted"] * drawn(coarse, stitching.lines, width) * np.maximum(tight, 0.3)
    if len(subject.seams.geoms):
        held += _HELD["seam"] * drawn(coarse, subject.seams, width)
    held += _HELD["edge"] * (1 - covered(coarse, subject.outline))
    lift = 1 + 0.12 * uneven * clouds(coarse.shape, 1.1 * coarse.fine, 12)
    found = height((bed * LOFT) * lift, held, cycles=1)
    near = found * np.float32(1 / 0.018)
    found += uneven * PUCKER * near * np.exp(1 - near) * _gathers(found, coarse)
    return resized(found, window.shape)


def _gathers(found: Grey, window: Window) -> Grey:
    """Return noise of unit spread drawn out up and down the slopes of a height.

    Slopes rise square from the stitched lines, so the noise becomes the small folds that
    stitches draw across themselves.
    """
    grain = clouds(window.shape, max(1.6, GATHER / 2 * window.fine), 21)
    down, across = np.gradient(blurred(found, 0.04 * window.fine))
    steep = np.maximum(np.hypot(down, across), np.float32(1e-9))
    down /= steep
    across /= steep
    rows, columns = window.shape
    y, x = np.indices(window.shape, dtype=np.float32)
    total = grain.copy()
    step = 0.05 * window.fine
    times = 3
    for k in range(-times, times + 1):
        if k:
            at_y = np.clip(y + (k * step) * down, 0, rows - 1).astype(np.int32)
            at_x = np.clip(x + (k * step) * across, 0, columns - 1).astype(np.int32)
            total += grain[at_y, at_x]
    total *= np.float32(1 / (2 * times + 1) ** 0.5)
    return np.clip(blurred(total, 0.6), -1.8, 1.8)


def _appliqued(subject: Subject, window: Window) -> Grey:
    """Return the height of appliqué: one layer, and more along an edge that is turned."""
    if not subject.motifs:
        return np.zeros(window.shape, np.float32)
    turned = [m for m in subject.motifs if m.turn_under > 0 and m.method != "fusible"]
    raw = [m.shape for m in subject.motifs if m not in turned]
    found = CLOTH * covered(window, *raw)
    if turned:
        found += (2.4 * CLOTH) * covered(window, *(m.shape for m in turned))
        inner = covered(window, *(m.within for m in turned))
        found -= CLOTH * blurred(inner, 0.02 * window.fine)
    return blurred(found, max(0.55, 0.012 * window.fine))


def _sewn_down(subject: Subject, window: Window) -> Grey:
    """Return the dimples that hand stitches draw into a turned edge: no thread shows there."""
    edges = [m.shape.boundary for m in subject.motifs if m.method != "fusible"]
    if not edges or APART * window.fine < 2:  # finer than pixels
        return np.zeros(window.shape, np.float32)
    dots = (0.001, APART - 0.001)
    return DIMPLE * drawn(window, shapely.GeometryCollection(edges), 0.022, dots)


def _bound(subject: Subject, window: Window) -> Grey:
    """Return the roll of the binding: a half round over the edge."""
    middle = subject.bound.buffer(-subject.edge / 2, join_style="mitre").exterior
    shares = np.linspace(1, 0.15, 7)
    found = np.zeros(window.shape, np.float32)
    below = 0.0
    for share in shares:
        z = BINDING * float(np.sqrt(1 - share * share)) if share < 1 else BINDING * 0.25
        if z > below:
            found += (z - below) * drawn(window, middle, subject.edge * float(share))
            below = z
    return blurred(found, max(0.5, 0.025 * window.fine))


def _stuffed(subject: Subject, window: Window) -> Grey:
    """Return a pillow's fullness, with the folds that its edges pull into the cloth."""
    coarse = window.coarser(COARSEST / 2)
    full = resized(dome(subject, coarse), coarse.shape)
    left, top, right, bottom = subject.bound.bounds
    x, y = coarse.across()
    side = min(right - left, bottom - top)
    folds = np.zeros(coarse.shape, np.float32)
    for seed, (along, off) in enumerate(
        ((x, y - top), (x, bottom - y), (y, x - left), (y, right - x))
    ):
        line = clouds((1, 4096), 0.55 * 4096 / side, 31 + seed)[0]
        at = np.clip((along - float(along.min())) / side * 4095, 0, 4095).astype(np.int32)
        deep = np.clip(off - 0.035 * side, 0, None)
        folds = folds + line[at] * np.exp(-deep / (0.05 * side)) * np.clip(deep * 1.2, 0, 1)
    return resized(full + 0.035 * folds, window.shape)


def _draped(window: Window) -> Grey:
    """Return the slight folds in which a quilt lies or hangs, longer downwards."""
    coarse = window.coarser(COARSEST / 8)
    found = np.zeros(coarse.shape, np.float32)
    for seed, (deep, across, down) in enumerate(DRAPE):
        found += np.float32(deep) * clouds(
            coarse.shape, across * coarse.fine, 41 + seed, down * coarse.fine
        )
    return resized(found, window.shape)


def _stitched(subject: Subject, window: Window) -> tuple[tuple[Grey, ...], Grey]:
    """Return the thread of each stitching, and the holes between its stitches."""
    gap = 0.2 * STITCH
    threads = []
    holes = np.zeros(window.shape, np.float32)
    for stitching in subject.threads:
        if stitching.hidden or not len(stitching.lines.geoms):
            threads.append(np.zeros((1, 1), np.float32))
            continue
        if stitching.even:
            threads.append(drawn(window, stitching.lines, THREAD))
            continue
        dash = (STITCH - gap, gap)
        threads.append(drawn(window, stitching.lines, THREAD, dash))
        holes += drawn(window, stitching.lines, THREAD * 1.3, (0.001, STITCH - 0.001), gap / 2)
    return tuple(threads), holes
