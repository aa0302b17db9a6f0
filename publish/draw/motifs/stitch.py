"""Close-ups of turning and sewing the motif's edge: edge, point, inside corner, opening.

In: the motif's fabrics and its turn-under. Out: the figures `stitch`, by `detail`.
Invariant: what is drawn is what the steps say, in the same order.
"""

from __future__ import annotations

from collections.abc import Callable
from math import sin

from shapely.geometry import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import bend, disc
from publish.draw.canvas.style import INK, LABEL, SMALL, STEP_WIDTH, Stroke, readable_on
from publish.draw.cloth import fabric
from publish.draw.context import CannotDrawError, Context
from publish.draw.motifs.close import (
    STITCHING,
    USUAL,
    Close,
    name,
    stitches,
    sweep,
)
from publish.draw.motifs.inward import corner, hole
from publish.model.figure import Figure
from publish.model.trade import STITCH_APART
from publish.model.words import FigureSpec


def stitch(context: Context, spec: FigureSpec) -> Figure:
    """Draw the close-up that `detail` names: edge, tip, corner or hole."""
    detail = spec.get("detail", "edge")
    if detail not in DETAILS:
        raise CannotDrawError(f"there is no close-up of {detail!r}")
    motif, shape = context.motif(spec)
    grounds = [b.patches[0].fabric for b in context.pattern.blocks.values() if b.motif == shape.key]
    if not grounds:
        raise CannotDrawError(f"no block carries the motif {shape.key!r}")
    canvas = context.canvas(STEP_WIDTH, 2.2)
    cloth = context.colour(motif.fabric)
    close = Close(
        canvas,
        canvas.page,
        context.colour(grounds[0]),
        cloth,
        readable_on(cloth),
        motif.turn_under or USUAL,
        context.labels,
    )
    return canvas.figure(spec, DETAILS[detail](close))


def _edge(close: Close) -> str:
    """Sewn on the right, the needle sweeping the turn-under beneath, still raw on the left."""
    page, turn, say = close.page, close.turn, close.labels
    apart = say.length(say.measures.usual(STITCH_APART))
    left, top, right, foot = 3.0, 18.0, 184.0, 112.0
    start, end = 66.0, 104.0

    def finish(x: float) -> float:
        return 62 + 5 * sin(x / 48)

    def share(x: float) -> float:
        t = min(max((x - start) / (end - start), 0.0), 1.0)
        return 1 - t * t * (3 - 2 * t)

    xs = [left + (right - left) * i / 90 for i in range(91)]
    fabric(page, box(left, top, right, foot), close.ground)
    _needle(page, (162.0, 27.0), (80.0, 66.0))
    seen = Polygon([*((x, finish(x) - turn * share(x)) for x in xs), (right, foot), (left, foot)])
    close.motif(seen)
    close.hidden(LineString([(x, finish(x) + turn) for x in xs if x > end - 14]))
    close.finished(LineString([(x, finish(x)) for x in xs if x < end - 8]))
    sewn = LineString([(x, finish(x)) for x in xs if x > end + 2])
    held = stitches(close, sewn, 0.25)
    page.polyline(bend((162.0, 27.0), (held[0][0] + 1, held[0][1] - 3), 0.07), STITCHING)
    sweep(close, (64.0, finish(64) - turn - 8), (90.0, finish(90) + turn * 0.8), 0.42)
    _width(close, 15.0, finish(15), say.length(close.under))
    name(page, (36, finish(36) - turn), 10, say.text("figure-raw-edge"))
    name(page, (48, finish(48)), foot + 10, say.text("figure-finished-line"))
    between = ((held[1][0] + held[2][0]) / 2, finish(held[2][0]))
    name(page, between, foot + 10, say.text("figure-stitches-about-apart", apart=apart))
    return say.text("figure-stitch-edge", under=say.length(close.under), apart=apart)


def _width(close: Close, x: float, y: float, words: str) -> None:
    """Dimension the turn-under above the finished line, its words beside it."""
    stroke, top = Stroke(close.ink, 0.5), y - close.turn
    close.page.line((x, top), (x, y), stroke)
    for end in (top, y):
        close.page.line((x - 2.6, end), (x + 2.6, end), stroke)
    close.page.text((x + 5, (top + y) / 2), words, SMALL, level="middle", fill=close.ink)


def _needle(page: Canvas, eye: tuple[float, float], point: tuple[float, float]) -> None:
    """Draw a needle from its eye to its point."""
    dx, dy = point[0] - eye[0], point[1] - eye[1]
    run = (dx * dx + dy * dy) ** 0.5
    nx, ny = -dy / run, dx / run
    body = [
        (eye[0] + nx * 1.4, eye[1] + ny * 1.4),
        point,
        (eye[0] - nx * 1.4, eye[1] - ny * 1.4),
        (eye[0] - dx / run * 3, eye[1] - dy / run * 3),
    ]
    page.polygon(body, "#d9dadd", Stroke(INK, 0.6))
    hole = (eye[0] + dx / run * 1.5, eye[1] + dy / run * 1.5)
    page.line(hole, (hole[0] + dx / run * 4, hole[1] + dy / run * 4), Stroke(INK, 0.7))


def _tip(close: Close) -> str:
    """Three pictures: one side sewn to the point, the tip turned across, the second side."""
    page = close.page
    high, wide = 92.0, 58.0
    for index, words in enumerate(
        (
            close.labels.text("figure-first-side"),
            close.labels.text("figure-tip-across"),
            close.labels.text("figure-second-side"),
        )
    ):
        x = 3.0 + index * 61.5
        frame = page.frame(x + wide / 2, 38.0)
        _tip_stage(close, frame, index, wide, high)
        disc(page, (x + 7, high + 20), str(index + 1), INK, SMALL)
        page.text((x + 16, high + 20), words, LABEL, level="middle")
    return close.labels.text("figure-stitch-tip")


def _tip_stage(close: Close, frame: Canvas, stage: int, wide: float, high: float) -> None:
    turn = close.turn * 0.62
    ground = box(-wide / 2, -34.0, wide / 2, high - 28)
    fabric(frame, ground, close.ground)
    foot = high - 28
    side = [(22 * (t / 10) ** 0.8, foot * t / 10) for t in range(15)]
    tip = Polygon([(-x, y) for x, y in reversed(side)] + side[1:])
    raw = tip.buffer(turn, join_style="mitre", mitre_limit=6)
    left, above = box(-99, -99, 0, 99), box(-99, -99, 99, 0)
    seen: BaseGeometry = tip
    if stage < 2:
        seen = raw.difference(left.difference(tip))
    if stage == 1:
        seen = seen.difference(above)
    inner = close.on(frame)
    inner.motif(seen.intersection(ground))
    first = LineString([(-x, y) for x, y in reversed(side)])
    second = LineString(side)
    clear = box(-wide / 2, -99, wide / 2, foot - 1)
    beneath = tip.buffer(-turn).boundary.intersection(clear)
    inner.hidden(beneath.intersection(left if stage < 2 else clear))
    stitches(inner, first.intersection(clear), 0.5)
    if stage == 2:
        stitches(inner, second.intersection(clear), 0.7)
        return
    inner.finished(second.intersection(clear))
    if stage == 0:
        sweep(inner, (3, -turn * 1.6), (2, turn * 1.1), -0.5)
    else:
        x, y = 22 * 0.5**0.8, foot * 0.5
        sweep(inner, (x + turn + 1, y - 9), (x - 6, y + 3), 0.4)


DETAILS: dict[str, Callable[[Close], str]] = {
    "edge": _edge,
    "tip": _tip,
    "corner": corner,
    "hole": hole,
}
