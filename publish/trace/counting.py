"""How many wedges a motif was folded into, and its pose.

In: how much of each pixel is paper. Out: a `Pose` and the number of folds.
Invariant: a motif that repeats on 8 folds also repeats on 4; the greatest number on which
it repeats as well is its own.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import cv2
import numpy as np

from publish.trace.image import Floats, Points
from publish.trace.known import Known, stretched
from publish.trace.plane import local, project, turned
from publish.trace.straighten import COARSE, FINE, Pose, fold_starts, settle

REPEATS = 0.30
"""Unlikeness up to which the copies of a motif are copies of one another."""

HALVED = 0.12
"""The same for two turns, which any wedge repeats on by half once it is stretched round."""

LEANING = 1.12
"""How many times longer one way than another a plane may seem, by a lens that is known no
better than by its focal length."""

ASIDE = 0.02
"""Share of the picture's shorter side by which a lens's axis is usually off its middle. Common
practice, no source."""

MORE = 1.25
"""How many times as unlike the copies on twice the folds may be as those on the folds."""


@dataclass(frozen=True)
class Counted:
    """A pose, the folds, and the folds that fit as well where they cannot be told."""

    pose: Pose
    folds: int
    rivals: tuple[int, ...] = ()
    doubt: float = 0.0
    """Share by which the proportions of four folds may be off."""


@dataclass(frozen=True)
class Lens:
    """What tells the proportions of four folds, which repeat however they are stretched:
    what is known in the picture, else whether a scanner made it, else the camera's focal
    length in pixels."""

    focal: float | None = None
    scanned: bool = False
    known: tuple[Known, ...] = ()

    @property
    def tells(self) -> bool:
        """Return whether the proportions are known well."""
        return bool(self.known) or self.scanned or self.focal is not None


def counted(share: Floats, start: Points, folds: int | None, lens: Lens) -> Counted | None:
    """Return the pose of the motif, from the round start; None when it does not repeat."""
    if folds is not None:
        best = _best(share, start, folds // 2)
        return _ended(share, Counted(best, folds), lens)
    tried = {n: _best(share, start, n) for n in (3, 4)}
    found = min(tried.values(), key=lambda p: p.unlike)
    if found.unlike > REPEATS:
        found = _best(share, start, 2)
        return _ended(share, Counted(found, 4), lens)
    rivals = tuple(
        2 * n
        for n, p in tried.items()
        if n != found.turns and p.unlike < MORE * found.unlike + 0.01
    )
    twice = settle(share, found.matrix, 2 * found.turns, 0.0, COARSE[-1:])
    if twice.unlike < MORE * found.unlike + 0.01:
        found = twice
    if _leaning(found.matrix, share, lens) > LEANING:
        # Four folds, stretched to what repeats on more: no camera takes that from more folds.
        return _ended(share, Counted(_best(share, start, 2), 4), lens)
    return _ended(share, Counted(found, 2 * found.turns, rivals), lens)


def _leaning(matrix: Points, share: Floats, lens: Lens) -> float:
    """Return how many times longer a plane's longest unit is than its shortest in space, as
    the camera has it: 1 where the plane is as it was cut."""
    long, short = np.linalg.svd(_in_space(matrix, share, lens), compute_uv=False)
    return float(long / short)


def _in_space(
    matrix: Points, share: Floats, lens: Lens, beside: tuple[float, float] = (0.0, 0.0)
) -> Points:
    """Return the two axes of the plane in space, as columns, but for their size.

    The lens's axis meets the picture `beside` its middle, in pixels across and down.
    """
    if lens.scanned:
        found: Points = local(matrix, np.zeros((1, 2)))[0]
        return found
    rows, columns = share.shape
    length = lens.focal or 28 / 43.27 * math.hypot(rows, columns)
    x, y = columns / 2 + beside[0], rows / 2 + beside[1]
    inner = np.array([[length, 0, x], [0, length, y], [0, 0, 1]])
    return np.asarray(np.linalg.inv(inner) @ matrix[:, :2], np.float64)


def _best(share: Floats, start: Points, turns: int) -> Pose:
    fold = fold_starts(share, start, turns)
    poses = [settle(share, start, turns, f, COARSE) for f in fold or [0.0]]
    return min(poses, key=lambda p: p.unlike)


def _ended(share: Floats, found: Counted, lens: Lens) -> Counted | None:
    """Return the pose refined, its first fold lying as near as can be to the picture's x."""
    if found.pose.unlike > (HALVED if found.pose.turns == 2 else REPEATS):
        return None
    start = _reaching(share, found.pose.matrix, found.pose.turns)
    pose = settle(share, start, found.pose.turns, 0.0, FINE)
    doubt = 0.0
    if pose.turns == 2:
        doubt = _doubt(pose, share, lens)
        pose = _proportioned(pose, share, lens)
    pose = replace(pose, matrix=_reaching(share, pose.matrix, pose.turns))
    step = 2 * math.pi / found.folds

    def along(k: int) -> float:
        way = local(pose.matrix, np.zeros((1, 2)))[0] @ turned(k * step)[:, 0]
        return abs(math.atan2(way[1], way[0]))

    best = min(range(found.folds), key=along)
    matrix = pose.matrix.copy()
    matrix[:, :2] = matrix[:, :2] @ turned(best * step)
    return replace(found, pose=replace(pose, matrix=matrix), doubt=doubt)


def _reaching(share: Floats, matrix: Points, turns: int) -> Points:
    """Return the matrix scaled so that the paper reaches 1 from the centre.

    Each turn reaches as far as another: the middle one counts, so that a crumb beside the
    paper does not.
    """
    grain = max(1, max(share.shape) // 600)
    few = cv2.resize(share, None, fx=1 / grain, fy=1 / grain, interpolation=cv2.INTER_AREA)
    y, x = np.nonzero(few > 0.5)
    points = (np.column_stack([x, y]) + 0.5) * grain - 0.5
    plane = project(np.asarray(np.linalg.inv(matrix)), points)
    turn = np.floor(np.arctan2(plane[:, 1], plane[:, 0]) / (2 * math.pi) * turns)
    reach = np.zeros(turns)
    np.maximum.at(reach, turn.astype(int) % turns, np.hypot(*plane.T))
    scaled = matrix.copy()
    scaled[:, :2] *= float(np.sort(reach)[(turns - 1) // 2])
    return scaled


def _proportioned(pose: Pose, share: Floats, lens: Lens) -> Pose:
    """Return the pose of a motif of two turns with its folds in proportion.

    Four folds repeat however the paper is stretched along one of them. A scanner does not
    stretch; for a camera the two folds are square to each other in space and equally long
    for equal lengths, which its focal length makes into an equation.
    """
    ratio = _ratio(_in_space(pose.matrix, share, lens))
    if lens.known:
        ratio = stretched(lens.known, pose.matrix, ratio)
    stretch = math.sqrt(ratio)
    matrix = pose.matrix.copy()
    matrix[:, 0] /= stretch
    matrix[:, 1] *= stretch
    return replace(pose, matrix=matrix)


def _ratio(axes: Points) -> float:
    """Return how many times longer the first of two axes, the columns, is than the second."""
    one, two = np.linalg.norm(axes, axis=0)
    return float(one / two)


def _doubt(pose: Pose, share: Floats, lens: Lens) -> float:
    """Return the share by which the proportions of four folds may be off, because no file says
    where the lens's axis meets the picture: the more, the more the camera was tilted."""
    if lens.scanned or lens.known:
        return 0.0
    away = ASIDE * min(share.shape)
    ratio = _ratio(_in_space(pose.matrix, share, lens))
    moved = [
        _ratio(_in_space(pose.matrix, share, lens, way)) / ratio - 1
        for way in ((away, 0.0), (0.0, away))
    ]
    return math.hypot(*moved)
