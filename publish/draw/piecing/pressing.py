"""The seams of a unit, and the arrows that say which way they are pressed.

In: a unit of the seam tree. Out: its seams as lines in its own frame; arrows on a frame.
Invariant: a seam's `normal` points from what is there already to the part that is added;
every seam gets an arrow for each way its allowances go.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import block_arrow
from publish.draw.canvas.shapes import XY, laid, outline_of, shared
from publish.draw.canvas.style import PAPER
from publish.model.draft import Unit

WAYS = {"left": (-1.0, 0.0), "right": (1.0, 0.0), "up": (0.0, -1.0), "down": (0.0, 1.0)}


@dataclass(frozen=True)
class Seam:
    """Where part `last` of a unit is sewn to the earlier part `first`."""

    first: int
    last: int
    line: LineString
    normal: XY

    @property
    def middle(self) -> XY:
        point = self.line.interpolate(0.5, normalized=True)
        return point.x, point.y


def seams_of(unit: Unit) -> tuple[Seam, ...]:
    """Return every seam between two of a unit's own parts, in sewing order."""
    return seams_between([laid(outline_of(part), unit.turn) for part in unit.parts])


def seams_between(shapes: Sequence[Polygon]) -> tuple[Seam, ...]:
    """Return every seam between two finished shapes, by the later of the two."""
    found = []
    for last in range(1, len(shapes)):
        for first in range(last):
            line = shared(shapes[first], shapes[last])
            if not line.is_empty:
                normal = _normal(line, shapes[first], shapes[last])
                found.append(Seam(first, last, line, normal))
    return tuple(found)


def main_seams(unit: Unit) -> tuple[Seam, ...]:
    """Return for each added part its longest seam, in sewing order."""
    return longest(seams_of(unit))


def longest(seams: Iterable[Seam]) -> tuple[Seam, ...]:
    """Return the longest of the seams of each part."""
    best: dict[int, Seam] = {}
    for seam in seams:
        if seam.last not in best or seam.line.length > best[seam.last].line.length + 1e-6:
            best[seam.last] = seam
    return tuple(best[last] for last in sorted(best))


def _normal(line: LineString, first: BaseGeometry, last: BaseGeometry) -> XY:
    (x0, y0), (x1, y1) = line.coords[0], line.coords[-1]
    run = math.hypot(x1 - x0, y1 - y0) or 1.0
    nx, ny = (y1 - y0) / run, (x0 - x1) / run
    a, b = first.centroid, last.centroid
    sign = 1.0 if (b.x - a.x) * nx + (b.y - a.y) * ny >= 0 else -1.0
    return nx * sign, ny * sign


def seam_middles(unit: Unit) -> list[XY]:
    """Return the middle of each seam that joins a unit's own parts."""
    left, top, right, bottom = (float(v) for v in unit.box)
    if unit.join == "across":
        return [(float(p.box[2]), (top + bottom) / 2) for p in unit.parts[:-1]]
    return [((left + right) / 2, float(p.box[3])) for p in unit.parts[:-1]]


def press_arrows(
    frame: Canvas, unit: Unit, colour: str, at: list[XY], length: float = 15.0
) -> None:
    """Draw an arrow at each place, the way the allowances of that seam are pressed."""
    for number, (x, y) in enumerate(at):
        for way in _ways(unit, number, len(at)):
            _arrow(frame, (x, y), way, colour, length, both=unit.press == "open")


def seam_arrows(frame: Canvas, unit: Unit, colour: str, length: float = 15.0) -> None:
    """Draw the pressing arrows of a unit whose seams may run at any angle."""
    for seam in main_seams(unit):
        for way in ways_of(unit, seam):
            _arrow(frame, seam.middle, way, colour, length, both=unit.press == "open")


def ways_of(unit: Unit, seam: Seam) -> list[XY]:
    """Return which way a seam's allowances are pressed, as unit vectors on the table."""
    nx, ny = seam.normal
    if unit.press in WAYS:
        return [WAYS[unit.press]]
    if unit.press == "sashing":
        toward = _sashing(unit.parts[seam.last]) - _sashing(unit.parts[seam.first])
        return [(nx, ny)] if toward > 0 else [(-nx, -ny)] if toward < 0 else []
    if unit.press == "out":
        middle = _middle(unit)
        return [(-nx, -ny)] if seam.last == middle else [(nx, ny)] if seam.first == middle else []
    ways = {"first": [(-nx, -ny)], "last": [(nx, ny)], "open": [(-nx, -ny), (nx, ny)]}
    return ways.get(unit.press, [])


def _middle(unit: Unit) -> int:
    """Return the part that the others lie round: the one with the most seams."""
    seams = seams_of(unit)
    counts = [sum(i in (s.first, s.last) for s in seams) for i in range(len(unit.parts))]
    return counts.index(max(counts))


def _sashing(unit: Unit) -> int:
    """Return how much a part is sashing: a strip of it before a row with cornerstones."""
    roles = {p.role for p in unit.patches}
    return 2 if roles == {"sashing"} else 1 if roles <= {"sashing", "cornerstone"} else 0


def press_words(say: Labels, unit: Unit) -> str:
    """Return `pressed left`, for alternative text."""
    return say.text(f"figure-pressed-{unit.press or 'not'}")


def _arrow(frame: Canvas, at: XY, way: XY, colour: str, length: float, both: bool) -> None:
    half = frame.inches(length / 2)
    (x, y), (dx, dy) = at, way
    begin = at if both else (x - dx * half, y - dy * half)
    block_arrow(frame, begin, (x + dx * half, y + dy * half), colour, 7.0, rim=PAPER)


def _ways(unit: Unit, number: int, count: int) -> list[XY]:
    across = unit.join == "across"
    if unit.press == "open":
        return [(-1.0, 0.0), (1.0, 0.0)] if across else [(0.0, -1.0), (0.0, 1.0)]
    if unit.press == "out":  # borders: away from the middle
        sign = -1.0 if number < count / 2 else 1.0
        return [(sign, 0.0)] if across else [(0.0, sign)]
    return [WAYS[unit.press]] if unit.press in WAYS else []
