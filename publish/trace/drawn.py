"""The wedge drawn: lines and cubic curves with corners kept, and how it meets its folds.

In: an `Outline` and the wedge's scale. Out: `Path`s in the plane, `Meeting`s.
Invariant: a path is closed, its curves run end to end; sides on folds are straight lines
exactly on them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from publish.model.trade import SQUARE
from publish.trace.consensus import Wedge
from publish.trace.corners import SPAN, Blur, spaced, stretches
from publish.trace.cubics import Curve, fitted
from publish.trace.image import Points
from publish.trace.outline import Outline, Ring, Run

TOLERANCE = 0.0008
"""How far a drawn curve may be from the traced points: 0.04 % of the motif's width, about
the width of a pencil line on a motif of 14 in."""


@dataclass(frozen=True)
class Meeting:
    """Where an outline meets a fold (0 is the x axis), how far from the centre, and by how
    many degrees it is off square."""

    fold: int
    reach: float
    off: float


@dataclass(frozen=True)
class Path:
    """One closed outline by its curves, in order."""

    curves: tuple[Curve, ...]
    hole: bool


@dataclass(frozen=True)
class Drawn:
    """The paths of one wedge by part: its outside first, then its holes."""

    parts: tuple[tuple[Path, ...], ...]
    meetings: tuple[Meeting, ...]

    @property
    def nodes(self) -> int:
        """Return the number of points that a drawing program shows."""
        return sum(len(p.curves) for part in self.parts for p in part)


def drawn(outline: Outline, wedge: Wedge, spread: float) -> Drawn:
    """Return the drawing of an outline; `spread` is the blur of its picture in pixels."""
    meetings: list[Meeting] = []
    parts = tuple(
        tuple(_path(ring, wedge, spread, meetings) for ring in rings) for rings in outline.rings
    )
    return Drawn(parts, tuple(sorted(meetings, key=lambda m: (m.fold, m.reach))))


def on_fold(curve: Curve, angle: float) -> bool:
    """Say whether a curve is a side on a fold, along which nothing was cut."""
    off = np.stack([curve[:, 1], curve[:, 0] * math.sin(angle) - curve[:, 1] * math.cos(angle)])
    return len(curve) == 2 and bool((np.abs(off) < 1e-9).all(axis=1).any())


def meets(curve: Curve, end: int, angle: float) -> tuple[int, float] | None:
    """Return the fold that an end of a curve (0 or -1) lies on, and by how many degrees the
    curve is off square to it there; None where it lies on none, on both or along one."""
    node, way = curve[end], curve[1 if end == 0 else -2] - curve[end]
    near = 1e-7 * max(1.0, float(np.hypot(*node)))
    folds = [np.array([math.cos(a), math.sin(a)]) for a in (0.0, angle)]
    on = [abs(float(f[0] * node[1] - f[1] * node[0])) < near for f in folds]
    if on[0] == on[1] or float(np.hypot(*way)) == 0:
        return None
    fold = 0 if on[0] else 1
    across = (1 - 2 * fold) * np.array([-folds[fold][1], folds[fold][0]])
    off = math.degrees(math.atan2(float(way @ folds[fold]), float(way @ across)))
    return None if abs(off) > 89.9 else (fold, off)


def met(
    parts: tuple[tuple[Path, ...], ...], before: tuple[Meeting, ...], wedge: Wedge
) -> tuple[Meeting, ...]:
    """Return the meetings of a drawing whose curves have moved; a line too short to tell its
    direction leaves what was measured `before`."""
    now = []
    for curve in (c for part in parts for path in part for c in path.curves):
        for end in (0, -1):
            found = meets(curve, end, wedge.angle)
            if found is None:
                continue
            reach, off = float(np.hypot(*curve[end])), found[1]
            if float(np.hypot(*(curve[-1] - curve[0]))) * wedge.unit < SPAN:
                near = [m for m in before if m.fold == found[0]]
                off = min(near, key=lambda m: abs(m.reach - reach)).off if near else off
            now.append(Meeting(found[0], reach, off))
    return tuple(sorted(now, key=lambda m: (m.fold, m.reach)))


def _path(ring: Ring, wedge: Wedge, spread: float, meetings: list[Meeting]) -> Path:
    pieces = [_curves(run, wedge, spread, meetings) for run in ring.runs]
    made: list[Curve] = []
    for n, curves in enumerate(pieces):
        made += curves
        if ring.runs[n].closed:
            continue
        at = curves[-1][-1]
        following = pieces[(n + 1) % len(pieces)][0][0]
        for corner in (*ring.between[n], following):
            if float(np.hypot(*(corner - at))) > 1e-9:
                made.append(np.stack([at, corner]))
            at = corner
    return Path(tuple(made), ring.hole)


def _curves(run: Run, wedge: Wedge, spread: float, meetings: list[Meeting]) -> list[Curve]:
    """Return the curves of one run, in the plane."""
    ways = (np.array([1.0, 0.0]), np.array([math.cos(wedge.angle), math.sin(wedge.angle)]))
    mirrors = tuple(None if e is None else ways[e] for e in run.ends)
    points = run.points * wedge.unit
    tolerance = TOLERANCE * wedge.unit
    found: list[Curve] = []
    parts = stretches(points, run.closed, Blur(wedge.field, spread), (mirrors[0], mirrors[1]))
    gap = max(2, math.ceil(1.6 * Blur(wedge.field, spread).seen))
    for n, part in enumerate(parts):
        tangents: list[Points | None] = [None, None]
        for end, at in ((0, 0), (1, len(parts) - 1)):
            way = mirrors[end]
            if way is None or n != at:
                continue
            line = part.points if end == 0 else part.points[::-1]
            off, inward = _off_square(line, way, gap, part.sharp[end])
            place = line[0] / wedge.unit
            meetings.append(Meeting(run.ends[end] or 0, float(np.hypot(*place)), off))
            if abs(off) <= SQUARE:
                tangents[end] = inward if end == 0 else -inward
        loop = run.closed and not part.sharp[0]
        found += fitted(part.points, tolerance, tangents[0], tangents[1], loop)
    return [c / wedge.unit for c in found]


def _off_square(line: Points, way: Points, gap: int, sharp: bool) -> tuple[float, Points]:
    """Return by how many degrees a line that begins on a fold is off square to it (positive
    where it leans outwards), and the direction square to the fold on its side.

    What is near the fold is left out: there a lens has rounded a point.
    """
    skip = 1 if sharp else min(gap, max(1, len(line) // 3))
    side = spaced(line[skip : skip + SPAN + 4], 1.0) if len(line) > skip + 3 else line
    across = np.array([-way[1], way[0]])
    middle = side.mean(axis=0) - line[0]
    inward = across if middle @ across > 0 else -across
    t = np.arange(len(side), dtype=float)
    degree = 2 if len(side) >= 10 else 1
    x, y = (np.polynomial.Polynomial.fit(t, side[:, k], degree) for k in (0, 1))
    begin = 0.0 if sharp else -float(skip)
    slope = np.array([x.deriv()(begin), y.deriv()(begin)])
    return math.degrees(math.atan2(float(slope @ way), float(slope @ inward))), inward
