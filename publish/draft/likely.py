"""Why a motif falls apart when it is opened: the likeliest slip of the hand first.

In: a motif at one size, how many pieces it is meant to have. Out: `Likely`.
Invariant: a cause is named only where mending it alone would give the pieces that are meant,
or, of the folds, where the drawing's own wedge ends on another fold.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from math import dist

import numpy as np
import shapely
from shapely.geometry import Polygon

from publish.draft.unfold import wedge_angle
from publish.model.draft import MotifShape
from publish.model.trade import FOLDS
from publish.units import SIXTEENTH, round_up

SPECK = 1 / 8
"""Inches across below which a piece is a stray dot: no cloth is sewn on so small."""
NEAR = 0.5
"""Degrees by which a drawn side may miss a fold."""


@dataclass(frozen=True)
class Likely:
    """What to do, and the place on the opened motif that it is about."""

    help: str
    x: float
    y: float


def why_apart(shape: MotifShape, meant: int, text: Callable[[Fraction], str]) -> Likely:
    """Return the likeliest cause of a motif in more pieces than are meant."""
    pieces = sorted(shape.whole.geoms, key=lambda p: p.area)
    at = pieces[0].representative_point()
    specks = [p for p in pieces if _across(p) < SPECK]
    if specks and len(pieces) - len(specks) == meant:
        across = text(round_up(Fraction(max(map(_across, specks))), SIXTEENTH))
        return Likely(f"delete the stray dot there, less than {across} across", at.x, at.y)
    folds = _drawn_for(shape)
    if folds is not None:
        help_ = (
            f"the drawing's own wedge is {_degrees(folds)}, as {folds} folds make it, and "
            f"`folds: {shape.folds}` makes {_degrees(shape.folds)}: set `folds: {folds}`"
        )
        return Likely(help_, at.x, at.y)
    free = [e.kind for e in shape.edges or () if not e.contact]
    if free:
        which = " or the ".join(free)
        help_ = f"the wedge does not touch the {which} fold: draw it up to that edge"
    else:
        help_ = f"join the parts in the drawing, or set `pieces: {len(pieces)}`"
    return Likely(help_, at.x, at.y)


def _across(piece: Polygon) -> float:
    left, top, right, bottom = piece.bounds
    return dist((left, top), (right, bottom))


def _degrees(folds: int) -> str:
    return f"{wedge_angle(folds):g} degrees"


def _drawn_for(shape: MotifShape) -> int | None:
    """Return for how many folds the wedge is drawn, where its last side lies on another fold
    than the pattern's."""
    points = shapely.get_coordinates(shape.wedge)
    far = points[np.hypot(*points.T) > SPECK]
    angles = np.degrees(np.arctan2(far[:, 1], far[:, 0]))
    last = float(angles.max(initial=0.0))
    at_last = far[angles > last - NEAR / 2]
    reach = float(np.ptp(np.hypot(*at_last.T))) if len(at_last) else 0.0
    found = [n for n in FOLDS if abs(wedge_angle(n) - last) < NEAR]
    return found[0] if found and found[0] != shape.folds and reach > SPECK else None
