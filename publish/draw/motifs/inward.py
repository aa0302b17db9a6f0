"""Close-ups of edges that turn inward: an inside corner, and an opening.

In: a close-up's fabrics and turn-under. Out: two pictures side by side, clipped and sewn.
Invariant: a clip never reaches the finished line.
"""

from __future__ import annotations

from math import cos, radians, sin

from shapely.geometry import LineString, Point, Polygon, box

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import block_arrow, disc
from publish.draw.canvas.style import INK, LABEL, PAPER, SMALL
from publish.draw.cloth import fabric
from publish.draw.motifs.close import CLIP, Close, name, stitches, sweep

WIDE, HIGH = 84.0, 88.0
"""Points: each of the two pictures."""
TOP = 16.0
LEFTS = (3.0, 100.0)
REACH = 40.0
"""Points: half the width of the corner where it opens."""
SHORT = 2.5
"""Points that a clip into a corner stops short of the finished line."""


def corner(close: Close) -> str:
    """Draw an inside corner clipped, then turned and sewn."""
    first, second = _panels(
        close, (close.labels.text("figure-clip"), close.labels.text("figure-turn-and-sew"))
    )
    outer = box(0, 0, WIDE, HIGH)
    middle, deep = WIDE / 2, HIGH - 26
    finish = LineString([(middle - REACH, -20), (middle, deep), (middle + REACH, -20)])
    notch, turn = Polygon(finish.coords), close.turn * 0.62
    body = outer.difference(notch)
    raw = outer.difference(notch.buffer(-turn, join_style="mitre"))
    inside = finish.intersection(outer)
    before = close.on(first)
    before.motif(raw)
    before.finished(inside)
    bottom = notch.buffer(-turn, join_style="mitre").bounds[3]
    _clip(first, (middle, bottom), (middle, deep - SHORT))
    name(
        first,
        (middle, (bottom + deep) / 2),
        -8,
        close.labels.text("figure-clip-not-across-the-line"),
    )
    after = close.on(second)
    after.motif(body)
    after.hidden(notch.buffer(turn).boundary.intersection(outer.buffer(-1)))
    for side in (1, -1):
        arm = LineString([(middle + side * REACH, -20), (middle, deep)])
        sewn = arm.intersection(box(0, 3, WIDE, deep - 9))
        stitches(after, sewn if side < 0 else LineString(sewn.coords[::-1]), 0.4)
    _close_stitches(after, (middle, deep))
    return close.labels.text("figure-inward-corner")


def _close_stitches(close: Close, at: tuple[float, float]) -> None:
    """Draw three close stitches that fan out of a corner."""
    for lean in (-45, 0, 45):
        angle = radians(90 + lean)
        above = at[1] - 1.5
        end = (at[0] + 7 * cos(angle), above + 7 * sin(angle))
        close.stitch((at[0] + 1.5 * cos(angle), above + 1.5 * sin(angle)), end)


def _clip(page: Canvas, start: tuple[float, float], end: tuple[float, float]) -> None:
    page.line(start, end, CLIP.but(colour=PAPER, weight=2.6))
    page.line(start, end, CLIP)


def hole(close: Close) -> str:
    """Draw an opening clipped lightly, its edge turned outward, then sewn all round."""
    first, second = _panels(
        close,
        (close.labels.text("figure-clip-turn-outward"), close.labels.text("figure-sew-all-round")),
    )
    outer = box(0, 0, WIDE, HIGH)
    centre = Point(WIDE / 2, HIGH / 2)
    radius = 15.0 + close.turn * 0.75
    finish = centre.buffer(radius, 32)
    inner = radius - close.turn * 0.75
    before = close.on(first)
    before.motif(outer.difference(centre.buffer(inner, 32)))
    before.finished(finish.boundary)
    for step in range(12):
        angle = radians(30 * step + 15)
        ray = [
            (centre.x + r * cos(angle), centre.y + r * sin(angle))
            for r in (inner, (inner + radius) / 2)
        ]
        _clip(first, ray[0], ray[1])
    for step in range(4):
        angle = radians(90 * step)
        start = (centre.x + (inner - 9) * cos(angle), centre.y + (inner - 9) * sin(angle))
        end = (centre.x + (radius + 8) * cos(angle), centre.y + (radius + 8) * sin(angle))
        sweep(before, start, end, 0.0)
    after = close.on(second)
    after.motif(outer.difference(finish))
    beneath = centre.buffer(radius + close.turn * 0.75).boundary
    after.hidden(beneath.intersection(outer.buffer(-1)))
    stitches(after, LineString(list(finish.exterior.coords)[::-1]), 0.3)
    return close.labels.text("figure-inward-hole")


def _panels(close: Close, names: tuple[str, str]) -> tuple[Canvas, Canvas]:
    """Draw the ground of two pictures, their numbers and names; return their frames."""
    frames = []
    for number, (left, words) in enumerate(zip(LEFTS, names, strict=True), start=1):
        frame = close.page.frame(left, TOP)
        fabric(frame, box(0, 0, WIDE, HIGH), close.ground)
        disc(frame, (7, HIGH + 12), str(number), INK, SMALL)
        frame.text((16, HIGH + 12), words, LABEL, level="middle")
        frames.append(frame)
    block_arrow(
        close.page,
        (LEFTS[0] + WIDE + 2.5, TOP + HIGH / 2),
        (LEFTS[1] - 2.5, TOP + HIGH / 2),
        INK,
        7,
    )
    return frames[0], frames[1]
