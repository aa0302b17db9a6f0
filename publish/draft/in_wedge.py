"""Where a place of the opened motif lies on the wedge that was drawn, and how it is told.

In: points and widths in inches. Out: the same point folded back onto the wedge; words.
Invariant: images of one point under folding are the same point.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from fractions import Fraction

from publish.draft.narrowpart import Narrow
from publish.draft.unfold import wedge_angle
from publish.units import SIXTEENTH, round_near


def in_wedge(x: float, y: float, folds: int, symmetry: str) -> tuple[float, float]:
    """Return the point of the drawn wedge that a point of the opened motif comes from."""
    step = math.radians(wedge_angle(folds))
    reach, turn = math.hypot(x, y), math.atan2(y, x)
    if symmetry == "turning":
        turn %= step
    else:
        turn %= 2 * step
        turn = min(turn, 2 * step - turn)
    return reach * math.cos(turn), reach * math.sin(turn)


def width(place: Narrow, text: Callable[[Fraction], str]) -> str:
    """Return a width as a decimal in inches, and as it is told to the nearest sixteenth."""
    near = round_near(Fraction(place.width), SIXTEENTH)
    return f"{place.width:.3f} in (about {text(near)})"


def count(pieces: int) -> str:
    return "1 piece" if pieces == 1 else f"{pieces} pieces"
