"""A ruler in a picture, by its ticks.

In: a picture. Out: `Ruler`s: where their ticks are, and what lies between two of them.
Invariant: what a tick is worth is read from how long the ticks are, over several inches or
centimetres; where that fits more than one division, none is taken.

Millimetres stand in tens, the fifth longer and the tenth longest; parts of an inch are
halved again and again. A ruler of tenths of an inch cannot be told from one of millimetres,
which is why what it was read as is told with the size.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

import cv2
import numpy as np

from publish.trace.image import Floats, Pixels, Points
from publish.trace.plane import project
from publish.trace.ticks import LEAST, Row, row_of

LINES = 40
"""Straight edges of a picture that are looked along, the longest first."""

LONG = 0.12
"""Share of the picture's longer side that a ruler's edge is seen over at least."""

PIECE = 40
"""Pixels of a piece of a straight edge at least."""

ASIDE = 96
"""Pixels beside such an edge over which ticks are followed."""

BODY = 2.6
"""Inches across up to which a ruler is taken for one; quilters' are wider."""

OVER = 0.4
"""Inches by which a ruler is longer than its ticks at either end."""

CLEAR = 0.7
"""Share of the ticks' lengths, as they vary, that a division explains."""

AHEAD = 0.12
"""By how much more than any other it explains."""


LONGER = 1.1
"""How many times longer ticks of a higher rank are at least."""


@dataclass(frozen=True)
class Division:
    """How a ruler is divided: its name, inches from tick to tick, the rank of each tick of a
    period, longer ones higher."""

    name: str
    step: Fraction
    ranks: tuple[int, ...]


def _halved(parts: int) -> tuple[int, ...]:
    """Return the ranks of the ticks of an inch in 8, 16 or 32 parts."""
    return tuple(parts.bit_length() if k == 0 else (k & -k).bit_length() - 1 for k in range(parts))


DIVISIONS = (
    Division("millimetres", Fraction(5, 127), (2, 0, 0, 0, 0, 1, 0, 0, 0, 0)),
    Division("eighths of an inch", Fraction(1, 8), _halved(8)),
    Division("sixteenths of an inch", Fraction(1, 16), _halved(16)),
    Division("thirty-seconds of an inch", Fraction(1, 32), _halved(32)),
)


@dataclass(frozen=True)
class Ruler:
    """Ticks in the picture, shape (n, 2), the number of each along the ruler, the division
    that they are of (None where it cannot be told), and the ruler's outline, shape (4, 2)."""

    ticks: Points
    numbers: Points
    division: Division | None
    outline: Points

    def ratios(self, matrix: Points) -> Points:
        """Return inches to a unit of the plane that `matrix` carries to the picture, as
        several stretches of the ruler tell it; none where its division is not known."""
        if self.division is None:
            return np.zeros(0)
        plane = project(np.asarray(np.linalg.inv(matrix)), self.ticks)
        middle = plane - plane.mean(axis=0)
        _, _, axes = np.linalg.svd(middle, full_matrices=False)
        along = middle @ axes[0]
        slopes = [
            np.polyfit(numbers, part, 1)[0]
            for numbers, part in zip(
                np.array_split(self.numbers, 3), np.array_split(along, 3), strict=True
            )
        ]
        slopes.append(np.polyfit(self.numbers, along, 1)[0])
        found: Points = float(self.division.step) / np.abs(np.array(slopes))
        return found


def rulers(pixels: Pixels) -> list[Ruler]:
    """Return the rows of ticks in a picture, a ruler of two scales having two."""
    grey = cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY).astype(np.float32)
    lines = _lines(grey)
    found: list[Ruler] = []
    for one, two in lines:
        row = _along(grey, one, two)
        if row is not None:
            found.append(_ruler(row, lines))
    return _best(found)


def _told(ruler: Ruler) -> bool:
    return ruler.division is not None


def _best(found: list[Ruler]) -> list[Ruler]:
    """Return rulers without those of fewer ticks that lie in another."""
    kept: list[Ruler] = []
    for one in sorted(found, key=lambda r: (not _told(r), -len(r.ticks))):
        same = [k for k in kept if _lies_in(k, one.ticks.mean(axis=0))]
        if not same or (_told(one) and all(k.division != one.division for k in same)):
            kept.append(one)
    return kept


def _lies_in(ruler: Ruler, point: Points) -> bool:
    at = (float(point[0]), float(point[1]))
    return cv2.pointPolygonTest(ruler.outline.astype(np.float32), at, False) >= 0


def _lines(grey: Floats) -> list[tuple[Points, Points]]:
    """Return the ends of straight edges, those seen over most first, each once: its pieces
    are put together, since ticks break it."""
    few = cv2.resize(grey, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)
    detector = cv2.createLineSegmentDetector(cv2.LSD_REFINE_STD)
    raw = detector.detect(np.clip(few, 0, 255).astype(np.uint8))[0]
    ends = np.zeros((0, 2, 2)) if raw is None else raw.reshape(-1, 2, 2).astype(np.float64)
    ends = (ends + 0.5) * 2 - 0.5
    long = np.hypot(*(ends[:, 1] - ends[:, 0]).T)
    order = np.argsort(-long, kind="stable")
    left = [int(k) for k in order if long[k] >= PIECE]
    found: list[tuple[float, Points, Points]] = []
    while left:
        one, two = ends[left[0]]
        way = (two - one) / long[left[0]]
        offs = np.abs(way[0] * (ends - one)[..., 1] - way[1] * (ends - one)[..., 0]).max(axis=1)
        same = [k for k in left if offs[k] < 3]
        along = (ends[same] - one) @ way
        found.append((float(long[same].sum()), one + along.min() * way, one + along.max() * way))
        left = [k for k in left if offs[k] >= 3]
    least = LONG * max(grey.shape)
    found = sorted((f for f in found if f[0] >= least), key=lambda f: -f[0])
    return [(one, two) for _, one, two in found[:LINES]]


@dataclass(frozen=True)
class _Found:
    """A row of ticks with the frame of its strip: where it begins, along and across."""

    row: Row
    origin: Points
    along: Points
    across: Points

    def at(self, x: Points, y: float | Points) -> Points:
        """Return the places in the picture of columns and rows of the strip."""
        found: Points = (
            self.origin
            + np.asarray(x)[..., None] * self.along
            + (np.asarray(y) - ASIDE)[..., None] * self.across
        )
        return found


def _along(grey: Floats, one: Points, two: Points) -> _Found | None:
    """Return the ticks beside an edge, looked for as far as the picture goes."""
    along = (two - one) / np.hypot(*(two - one))
    across = np.array([-along[1], along[0]])
    first, last = _clipped(grey.shape, one, along)
    origin = one + first * along
    columns, rows = math.floor(last - first), 2 * ASIDE + 1
    if columns < 2 * LEAST:
        return None
    frame = _Found(Row.nothing(), origin, along, across)
    place = np.column_stack([along, across, frame.at(np.zeros(1), 0.0)[0]])
    how = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    strip = cv2.warpAffine(grey, place, (columns, rows), flags=how, borderMode=cv2.BORDER_REPLICATE)
    row = row_of(np.asarray(strip, np.float32))
    return None if row is None else _Found(row, origin, along, across)


def _clipped(shape: tuple[int, ...], at: Points, along: Points) -> tuple[float, float]:
    """Return how far a line goes back and on from a point before it leaves the picture."""
    low, high = -math.inf, math.inf
    for size, begin, step in zip(shape[1::-1], at, along, strict=True):
        if abs(step) > 1e-9:
            ends = sorted(((0 - begin) / step, (size - 1 - begin) / step))
            low, high = max(low, ends[0]), min(high, ends[1])
    return low, high


def _ruler(found: _Found, lines: list[tuple[Points, Points]]) -> Ruler:
    """Return the ruler of a row of ticks, its outline by the edge that lies farthest across
    it and runs beside it."""
    row = found.row
    division = _division(row.numbers, row.lengths)
    step = 1 / 25.4 if division is None else float(division.step)
    inch = row.gap / step
    begin, end = float(row.places[0]) - OVER * inch, float(row.places[-1]) + OVER * inch
    near: list[float] = []
    far: list[float] = []
    for line in lines:
        offs = [float((p - found.origin) @ found.across) for p in line]
        alongs = [float((p - found.origin) @ found.along) for p in line]
        beside = max(alongs) > begin and min(alongs) < end
        if beside and abs(offs[1] - offs[0]) < 0.1 * abs(alongs[1] - alongs[0]):
            middle = sum(offs) / 2 + ASIDE - row.base
            if abs(middle) < BODY * inch:
                (near if middle * row.side < 0 else far).append(middle)
    edge = max((n for n in near if abs(n) < 0.25 * inch), key=abs, default=0.0)
    back = max(far, key=abs, default=row.side * 0.5 * inch)
    y = row.base + np.array([edge - row.side * 4, back + row.side * 4])
    corners = found.at(np.array([begin, end, end, begin]), y[[0, 0, 1, 1]])
    return Ruler(found.at(row.places, row.base), row.numbers, division, corners)


def _division(numbers: Points, lengths: Points) -> Division | None:
    """Return the division that the ticks' lengths tell; None where none does, or several.

    Sixteenths look like eighths too, their longest and next not told apart, so that the
    finest division whose every rank is seen is the one.
    """
    told = [_told_by(d, numbers, lengths) for d in DIVISIONS]
    inches = max((k for k in range(1, len(told)) if told[k] >= CLEAR), default=1)
    one, two = (0, inches) if told[0] > told[inches] else (inches, 0)
    return DIVISIONS[one] if told[one] >= max(CLEAR, told[two] + AHEAD) else None


def _told_by(division: Division, numbers: Points, lengths: Points) -> float:
    """Return the share of the lengths' variance that a division's ranks explain, wherever
    its period begins; 0 where it is seen for less than two periods, or where a tick of a
    higher rank is not the longer."""
    period = len(division.ranks)
    if numbers[-1] - numbers[0] < 2 * period:
        return 0.0
    best = 0.0
    spread = float(np.var(lengths))
    for ranks in _phases(division, numbers):
        groups = [lengths[ranks == r] for r in np.unique(ranks)]
        means = [float(np.median(g)) for g in groups]
        rises = all(
            b > LONGER * a and np.percentile(g, 30) > np.percentile(f, 70)
            for a, b, f, g in zip(means, means[1:], groups, groups[1:], strict=False)
        )
        if rises and len(means) == len(set(division.ranks)) and spread > 0:
            fitted = np.array(means)[np.searchsorted(np.unique(ranks), ranks)]
            left = float(np.mean(np.minimum((lengths - fitted) ** 2, spread)))
            best = max(best, 1 - left / spread)
    return best


def _phases(division: Division, numbers: Points) -> Iterator[Points]:
    ranks = np.array(division.ranks)
    for begin in range(len(ranks)):
        yield ranks[(numbers.astype(int) - begin) % len(ranks)]
