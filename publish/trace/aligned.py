"""The copies of a wedge laid on one another, each moved as its scissors strayed.

In: how far each copy's edge lies from an outline that they agree on. Out: `Move`s.
Invariant: the copies move against one another alone, not together; a slip of the scissors,
which is short, is not followed.

Scissors, and paper that lies in a slight curl, stray slowly over the paper: each copy's
move is the likeliest smooth one (a Gaussian process, whose ways across and along are
alike). Laid on one another so, copies agree on their tips as well, which a vote among
copies that stray would have blunted.
"""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np

from publish.trace.image import Floats, Points

SMOOTH = 0.25
"""Distance over which moves are alike, where the motif reaches 1 from its centre."""

USUAL = 0.003
"""Spread of a move; `NOISE` that of one measured gap."""

NOISE = 0.0006
SLIP = 0.004
"""How far a gap is from its move when it counts for half."""

ROUNDS = 3
MOST = 140
"""Points that a move is worked out from."""

GRID = 28
"""Points to a unit at which a move is worked out; it is smooth between."""

LEAST, REACH = -0.1, 1.2


@dataclass(frozen=True)
class Move:
    """A smooth move of the plane, on a grid of points from `LEAST` to `REACH` both ways."""

    grid: Floats

    def __call__(self, points: Points) -> Points:
        """Return points moved, shape (n, 2)."""
        place = ((points - LEAST) * GRID).astype(np.float32)
        wide = 1 << 14
        rows = -(-len(place) // wide)
        maps = np.zeros((2, rows * wide), np.float32)
        maps[:, : len(place)] = place.T
        x, y = maps.reshape(2, rows, wide)
        found = cv2.remap(self.grid, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
        moved: Points = points + found.reshape(-1, 2)[: len(points)]
        return moved


def moves(gaps: Points, edge: Points, inward: Points) -> list[Move]:
    """Return a move for each copy, from the gaps between an outline and its edges.

    `gaps` has the shape (copies, n), along `inward`, at points `edge`, both (n, 2); a gap
    that was not found is not finite.
    """
    step = -(-len(edge) // MOST)
    edge, inward = edge[::step], inward[::step]
    known = np.where(np.isfinite(gaps[:, ::step]), gaps[:, ::step], np.nan)
    away = known - np.nanmedian(known, axis=0)
    alike = _alike(edge, edge) * (inward @ inward.T)
    place = np.linspace(LEAST, REACH, round((REACH - LEAST) * GRID) + 1)
    grid = np.stack(np.meshgrid(place, place), axis=-1).reshape(-1, 2)
    carried = _alike(grid, edge)
    found = []
    for row in away:
        pull = _pulls(alike, row)
        found.append(np.stack([carried @ (pull * inward[:, k]) for k in (0, 1)], axis=-1))
    every = np.stack(found).reshape(len(found), len(place), len(place), 2)
    every -= every.mean(axis=0)
    return [Move(row.astype(np.float32)) for row in every]


def _alike(one: Points, two: Points) -> Points:
    """Return how alike the moves at points are, shape (n, m)."""
    away = ((one[:, None] - two[None]) ** 2).sum(axis=2)
    found: Points = USUAL**2 * np.exp(-away / (2 * SMOOTH**2))
    return found


def _pulls(alike: Points, away: Points) -> Points:
    """Return what each gap adds to the move near it; those far off the move add little."""
    known = np.flatnonzero(np.isfinite(away))
    pull = np.zeros(len(away))
    if len(known) == 0:
        return pull
    near, want = alike[np.ix_(known, known)], away[known]
    weight = np.ones(len(known))
    for _ in range(ROUNDS):
        pull[known] = np.linalg.solve(near + np.diag(NOISE**2 / weight), want)
        weight = 1 / (1 + ((want - near @ pull[known]) / SLIP) ** 2)
    return pull
