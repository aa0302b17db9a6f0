"""Shapes nested by their outlines, on a stretch of cloth and on a roll of web.

In: placements in inches, across and along. Out: the outlines drawn to scale.
Invariant: a shape is drawn as it was placed, seen from the wrong side of the cloth and
the paper side of the web; where cloth runs across the page it is turned, never mirrored.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from fractions import Fraction

from shapely.affinity import affine_transform, translate
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import dimension
from publish.draw.canvas.style import (
    CREASE,
    HAIR,
    HEAD,
    INK,
    PAPER,
    SMALL,
    SOFT,
    STEP_WIDTH,
    TINT,
    Stroke,
    edge_of,
    readable_on,
)
from publish.draw.cloth import hatch, sheet
from publish.draw.context import CannotDrawError, Context
from publish.draw.cutting.bench import Bench
from publish.draw.cutting.layout import groups
from publish.draw.top import fit
from publish.model.cutplan import Placed, Strip
from publish.model.figure import Figure
from publish.model.words import FigureSpec

BESIDE = 0.6
"""Inches beside the web for its width."""
ROOM_DOWN = (STEP_WIDTH - BESIDE, 2.6)
"""Inches for a length of web that runs down the page."""
DEPTH_ACROSS = 2.0
"""Inches for the roll's width where it runs across."""
CROSS = 4.0
"""Points: half the length of a centre mark's arms."""


def draw_stretches(bench: Bench) -> None:
    """Draw the shapes of every stretch of cloth that holds nested ones."""
    for group in groups(bench.plan):
        for placed in group.strip.placements:
            on_cloth = translate(placed.outline, 0.0, float(group.start))
            shown = on_cloth if bench.down else _along_the_page(on_cloth, bench.plan.usable_width)
            bench.frame.shape(shown, bench.colour, Stroke(edge_of(bench.colour), 0.5))
            bench.frame.text(
                _middle(shown),
                placed.letter,
                HEAD,
                "semibold",
                "middle",
                "middle",
                readable_on(bench.colour),
                halo=bench.colour,
            )


def _along_the_page(geometry: BaseGeometry, width: Fraction) -> BaseGeometry:
    """Return what lies on cloth or web turned a quarter, its length running to the right."""
    return affine_transform(geometry, [0, 1, -1, 0, 0, float(width)])


def _middle(geometry: BaseGeometry) -> tuple[float, float]:
    left, top, right, bottom = geometry.bounds
    return (left + right) / 2, (top + bottom) / 2


def nested_words(say: Labels, strip: Strip) -> str:
    """Return a stretch of cloth in words, for alternative text."""
    held = [
        say.text(
            "figure-of-2",
            count=c.count,
            letter=c.letter,
            across=say.measures.sides(c.across, c.along),
        )
        for c in strip.cuts
    ]
    return say.text(
        "figure-a-stretch-deep-holding-nested", depth=say.plain(strip.depth), held=say.listed(held)
    )


def web(context: Context, spec: FigureSpec) -> Figure:
    """Draw a length of web with the motifs nested on it, each with its centre."""
    say = context.labels
    plan = context.plan(spec).web
    if plan is None or not plan.placements:
        raise CannotDrawError("no motifs are nested on web at this size")
    down = plan.length <= plan.width * Fraction(13, 10)
    sides = (plan.width, plan.length) if down else (plan.length, plan.width)
    scale = fit(*sides, ROOM_DOWN if down else (context.column - BESIDE, DEPTH_ACROSS))
    canvas = context.canvas(float(sides[0]) * scale + BESIDE, 9.0)
    frame = canvas.frame(0.3, 0.5, scale)
    roll = sheet(0, 0, *sides)
    frame.shape(roll, TINT, None)
    hatch(frame, roll, Stroke(HAIR, 0.25), 3.2)
    frame.shape(roll, None, Stroke(SOFT, 0.5))
    for placed in plan.placements:
        outline = placed.outline if down else _along_the_page(placed.outline, plan.width)
        frame.shape(outline, PAPER, Stroke(INK, 0.5))
        _centre(frame, _middle(outline), placed.letter)
    dimension(frame, (0, 0), (sides[0], 0), say.length(sides[0]), 12)
    dimension(frame, (sides[0], 0), sides, say.length(sides[1]), 14)
    return canvas.figure(
        spec,
        say.text(
            "figure-outlines-web",
            value=_roll_words(say, plan.placements),
            length=say.plain(plan.length),
            width=say.plain(plan.width),
        ),
    )


def _centre(frame: Canvas, middle: tuple[float, float], letter: str) -> None:
    """Draw a cross on a motif's centre and its letter beside it."""
    (x, y), arm = middle, frame.inches(CROSS)
    frame.line((x - arm, y), (x + arm, y), CREASE)
    frame.line((x, y - arm), (x, y + arm), CREASE)
    frame.text(
        (x, y), letter, SMALL, "semibold", "start", "base", INK, halo=PAPER, shift=(2.5, -2.5)
    )


def _roll_words(say: Labels, placements: Iterable[Placed]) -> str:
    counts = Counter(p.letter for p in placements)
    return say.listed(
        [f"{say.counted(n, 'motif')} {letter}" for letter, n in counts.items()]
    ) + say.text("figure-nested")
