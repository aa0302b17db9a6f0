"""How a motif's outline meets its folds: square to one it runs on round when it is opened.

In: a drafted motif. Out: notes.
Invariant: the angle is that of the outline at the fold itself, thought on from a stretch
of it; at a clear slant a point is meant, and nothing is said.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np

from publish.draft.curves import Points
from publish.draft.limits import SNAP
from publish.draft.motif import DraftedMotif
from publish.draft.unfold import ray
from publish.notes import Note, Place, Severity, Spot
from publish.trace import SLIP, SQUARE, slips

STRETCH = 0.06
"""Inches of outline beside a fold that tell how it comes to it; twice as much tells how it
bends on the way."""


@dataclass(frozen=True)
class Meeting:
    """Where an outline leaves a fold (0 or 1), and by how many degrees it is off square,
    positive where it leans outwards."""

    fold: int
    x: float
    y: float
    off: float


def meetings(drafted: DraftedMotif) -> Iterator[Meeting]:
    """Yield every place where the outline of a mirrored motif leaves a fold."""
    shape = drafted.shape
    if drafted.motif.symmetry != "mirror":
        return
    rings = [
        np.asarray(ring.coords)[:-1]
        for part in shape.wedge.geoms
        for ring in (part.exterior, *part.interiors)
    ]
    for fold, angle in enumerate((0.0, shape.wedge_angle)):
        along, across = ray(angle), ray(angle + 90 if fold == 0 else angle - 90)
        for ring in rings:
            on = np.abs(ring @ across) <= SNAP
            for line in (ring, ring[::-1]):
                here = on if line is ring else on[::-1]
                for i in np.flatnonzero(here & ~np.roll(here, -1)):
                    off = _off_square(np.roll(line, -int(i), axis=0), along, across)
                    reach = float(line[i] @ along)
                    if off is not None and reach > STRETCH:
                        yield Meeting(fold, float(line[i, 0]), float(line[i, 1]), off)


def _off_square(line: Points, along: Points, across: Points) -> float | None:
    """Return how far a line is off square to a fold where it begins on it, in degrees."""
    way = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    if way[-1] < 4 * STRETCH:
        return None
    angles = []
    for reach in (STRETCH, 2 * STRETCH):
        at = np.array([np.interp(reach, way, line[:, k]) for k in (0, 1)]) - line[0]
        angles.append(math.degrees(math.atan2(float(at @ along), float(at @ across))))
    return 2 * angles[0] - angles[1]


def folds_met(drafted: DraftedMotif, size: str, place: Place) -> Iterator[Note]:
    """Yield a note for each place where an outline is nearly square to a fold."""
    for met in meetings(drafted):
        if SQUARE < abs(met.off) <= SLIP:
            where = f"{math.hypot(met.x, met.y):.2f} in from the centre at size {size}"
            fold = ("first", "second")[met.fold]
            note = slips(
                place,
                f"{abs(met.off):.0f} degrees off, on the {fold} fold, {where}",
                Spot(size, drafted.motif.key, met.x, met.y),
            )
            yield replace(note, severity=Severity.INFO)  # a drawing's angle was not cut
