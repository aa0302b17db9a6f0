"""Arrows, dimensions, numbered discs, leaders: what is drawn over a picture.

In: a canvas or frame, points in its units, words. Out: marks recorded on it.
Invariant: marks keep their printed size (points) whatever the frame's scale, and their
words stand upright or read from the right, never over a line without a halo.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import atan2, cos, degrees, hypot, sin
from typing import Any

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import (
    ARROW,
    CUT,
    DIMENSION,
    INK,
    LABEL,
    LEADER,
    PAPER,
    SEEN,
    SMALL,
    SOFT,
    Stroke,
    contrast,
    readable_on,
)

At = tuple[Any, Any]
Spot = tuple[float, float]
TICK = 2.6
"""Points: half the length of a dimension's end tick."""


def bend(start: At, end: At, bulge: float, steps: int = 24) -> list[Spot]:
    """Return points of a curve from `start` to `end` that swells to the left by `bulge`.

    `bulge` is a share of the distance; negative swells to the right (as seen when going
    from start to end on the page).
    """
    x0, y0, x1, y1 = float(start[0]), float(start[1]), float(end[0]), float(end[1])
    cx = (x0 + x1) / 2 + (y1 - y0) * bulge * 2
    cy = (y0 + y1) / 2 - (x1 - x0) * bulge * 2
    found = []
    for i in range(steps + 1):
        t = i / steps
        a, b, c = (1 - t) ** 2, 2 * t * (1 - t), t * t
        found.append((a * x0 + b * cx + c * x1, a * y0 + b * cy + c * y1))
    return found


def arrow(
    canvas: Canvas,
    points: Sequence[At],
    stroke: Stroke = ARROW,
    head: str = "filled",
    both: bool = False,
    size: float = 5.0,
) -> None:
    """Draw an arrow along points; `head` is `filled` (cut, turn) or `open` (fold, slide)."""
    page = canvas.page
    track = [canvas.point(p) for p in points]
    ends = [(track[-1], _before(track, size))]
    if both:
        ends.append((track[0], _before(track[::-1], size)))
    if head == "filled":  # the shaft stops inside the head, so that the point stays sharp
        track[-1] = _toward(track[-1], ends[0][1], size * 0.7)
        if both:
            track[0] = _toward(track[0], ends[1][1], size * 0.7)
    page.polyline(track, stroke)
    for tip, behind in ends:
        _head(page, tip, behind, stroke, head, size)


def _before(track: Sequence[Spot], distance: float) -> Spot:
    """Return the point about `distance` back from the end, for the head's direction."""
    tip = track[-1]
    for point in reversed(track[:-1]):
        if hypot(tip[0] - point[0], tip[1] - point[1]) >= distance:
            return point
    return track[0]


def _toward(start: Spot, goal: Spot, distance: float) -> Spot:
    length = hypot(goal[0] - start[0], goal[1] - start[1]) or 1.0
    share = distance / length
    return start[0] + (goal[0] - start[0]) * share, start[1] + (goal[1] - start[1]) * share


def _head(page: Canvas, tip: Spot, behind: Spot, stroke: Stroke, head: str, size: float) -> None:
    angle = atan2(behind[1] - tip[1], behind[0] - tip[0])
    wings = [
        (tip[0] + size * cos(angle + s * 0.42), tip[1] + size * sin(angle + s * 0.42))
        for s in (1, -1)
    ]
    solid = Stroke(stroke.colour, stroke.weight, (), "round")
    if head == "filled":
        page.polygon([wings[0], tip, wings[1]], stroke.colour)
    else:
        page.polyline([wings[0], tip, wings[1]], solid)


def cut_line(
    canvas: Canvas, start: At, end: At, stroke: Stroke = CUT, ground: str | None = None
) -> None:
    """Draw a line to cut along. Where its `ground` is dark, or cloths of any colour (None),
    light shows between and beside its dashes."""
    if ground is None or contrast(stroke.colour, ground) < SEEN:
        canvas.line(start, end, Stroke(PAPER, stroke.weight + 0.5))
    canvas.line(start, end, stroke)


def block_arrow(
    canvas: Canvas, start: At, end: At, fill: str, width: float = 6.0, rim: str | None = None
) -> None:
    """Draw a broad arrow: which way the allowances are pressed, or the next state.

    `rim` edges it with another colour, so that it shows on any fabric.
    """
    page = canvas.page
    a, b = canvas.point(start), canvas.point(end)
    length = hypot(b[0] - a[0], b[1] - a[1]) or 1.0
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    neck = max(length - width * 0.95, length * 0.35)
    half, barb = width * 0.24, width * 0.62
    outline = [
        (0, half),
        (neck, half),
        (neck, barb),
        (length, 0),
        (neck, -barb),
        (neck, -half),
        (0, -half),
    ]
    points = [(a[0] + ux * t - uy * n, a[1] + uy * t + ux * n) for t, n in outline]
    if rim is not None:
        page.polygon(points, rim, Stroke(rim, 2.2))
    page.polygon(points, fill)


def plus(canvas: Canvas, at: At, size: float = 7.0, colour: str = SOFT) -> None:
    """Draw a plus sign `size` points wide, between parts that are joined."""
    page, (x, y) = canvas.page, canvas.point(at)
    stroke, half = Stroke(colour, 1.1, (), "round"), size / 2
    page.line((x - half, y), (x + half, y), stroke)
    page.line((x, y - half), (x, y + half), stroke)


def disc(
    canvas: Canvas, at: At, text: str, fill: str = INK, size: float = SMALL + 0.5, ring: str = PAPER
) -> None:
    """Draw a number or letter in a disc, with a rim that sets it off from any ground."""
    radius = max(size * 0.72, text_width(text, size, "semibold") / 2 + 2.2)
    canvas.circle(at, radius, fill, Stroke(ring, 0.8))
    canvas.text(at, text, size, "semibold", "middle", "middle", readable_on(fill))


def leader(
    canvas: Canvas,
    target: At,
    label: At,
    text: str,
    anchor: str = "start",
    size: float = LABEL,
    face: str = "regular",
    dot: bool = True,
    halo: str | None = PAPER,
    fill: str = INK,
) -> None:
    """Name a place: a thin line from `target` to the words at `label`, dot on the target."""
    canvas.line(target, label, LEADER)
    if dot:
        canvas.circle(target, 1.3, INK, Stroke(PAPER, 0.4))
    gap = {"start": 2.5, "middle": 0.0, "end": -2.5}[anchor]
    canvas.text(label, text, size, face, anchor, "middle", fill, halo=halo, shift=(gap, 0))


def dimension(
    canvas: Canvas,
    start: At,
    end: At,
    text: str,
    offset: float = 10.0,
    size: float = LABEL,
    extend: bool = True,
    halo: str = PAPER,
    face: str = "regular",
) -> None:
    """Dimension the distance from `start` to `end`.

    The line runs `offset` points to the left of the way from start to end (on the page;
    negative: to the right) with a tick at each end, thin extension lines from the
    measured points, and the words on the line. Words too long for the line stand beyond
    it, on the side away from what is measured.
    """
    page = canvas.page
    a, b = canvas.point(start), canvas.point(end)
    length = hypot(b[0] - a[0], b[1] - a[1]) or 1.0
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    nx, ny = uy, -ux  # to the left on a page whose y points down
    p = (a[0] + nx * offset, a[1] + ny * offset)
    q = (b[0] + nx * offset, b[1] + ny * offset)
    if extend and abs(offset) > 3:
        sign = 1 if offset > 0 else -1
        for near, far in ((a, p), (b, q)):
            gap = (near[0] + nx * 1.5 * sign, near[1] + ny * 1.5 * sign)
            page.line(gap, (far[0] + nx * 2 * sign, far[1] + ny * 2 * sign), DIMENSION)
    page.line(p, q, DIMENSION)
    for x, y in (p, q):
        page.line((x - nx * TICK, y - ny * TICK), (x + nx * TICK, y + ny * TICK), DIMENSION)
    angle = degrees(atan2(uy, ux))
    angle = (angle + 90) % 180 - 90 if abs(abs(angle) - 90) > 1e-6 else -90.0
    middle = ((p[0] + q[0]) / 2, (p[1] + q[1]) / 2)
    if text_width(text, size, face) + 8 > length:
        away = (size * 0.5 + 3) * (1 if offset >= 0 else -1)
        middle = (middle[0] + nx * away, middle[1] + ny * away)
    page.text(middle, text, size, face, "middle", "middle", INK, angle, halo)
