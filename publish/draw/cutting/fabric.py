"""A fabric's cutting plan to scale.

In: a size and `fabric`. Out: the cloth as bought, with its strips, pieces and spare.
Invariant: every piece of the plan is drawn, to one scale; short plans run down the page
and long ones across it, and both say which end is cut first by numbering the strips.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels, text_width
from publish.draw.canvas.marks import dimension, disc
from publish.draw.canvas.style import (
    HAIR,
    HEAD,
    INK,
    LABEL,
    PAPER,
    SMALL,
    SOFT,
    STEP_WIDTH,
    TINT,
    Stroke,
)
from publish.draw.cloth import hatch, sheet
from publish.draw.context import CannotDrawError, Context
from publish.draw.cutting.bench import Bench, draw_piece, firsts
from publish.draw.cutting.layout import Group, Laid, bands, groups, lay, spread
from publish.draw.cutting.outlines import draw_stretches, web
from publish.draw.cutting.plan_words import plan_words
from publish.draw.cutting.precut import draw_sheets
from publish.draw.top import fit
from publish.model.cutplan import FabricPlan
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH

LINE = Stroke(INK, 0.7, (3.0, 1.6))
"""A cut across the whole width."""
WITHIN = Stroke(INK, 0.6, (1.6, 1.2))
"""A cut within a strip."""
LEFT, RIGHT = 0.8, 0.46
"""Inches beside the cloth: the strips' numbers and depths, and the length to buy."""
BEYOND = 0.09
"""Inches more where the words are longer than the length and stand beyond its line."""
DOWN_WIDTHS = (STEP_WIDTH - LEFT - RIGHT, 1.9, 2.6, 3.2, 3.9)
"""Inches for the cloth's width when it runs down the page: the least that is legible."""
ACROSS = (0.5, 1.85)
"""Inches: how much less than the column, and how deep, cloth is that runs across the page."""
LEGIBLE = 10.5
"""Points: a strip this deep holds a letter and its size in one line."""


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw one fabric's plan, or the web where `material` says so."""
    if spec.get("material") == "web":
        return web(context, spec)
    plans = context.plan(spec).fabrics
    plan = plans.get(spec.get("fabric"))
    if plan is None:
        raise CannotDrawError(f"nothing is cut from {spec.get('fabric')!r} at this size")
    if plan.precut is not None:
        return draw_sheets(context, spec, plan, plan.precut)
    bought = _bought(context, plan)
    down = bought <= plan.usable_width * Fraction(13, 10)
    room = context.column - ACROSS[0], ACROSS[1]
    down = down or _named(context.labels, plan) > room[0] * POINTS_PER_INCH
    canvas, frame = _set_out(context.labels, room, plan, bought, down)
    templates = {t.key: t for t in context.plan(spec).templates}
    bench = Bench(frame, down, plan, context.colour(plan.fabric), context.labels, templates)
    _cloth(bench, bought)
    outside = [draw_piece(bench, laid, first) for laid, first in firsts(lay(plan))]
    draw_stretches(bench)
    beyond = _order(bench, [o for o in outside if o is not None])
    canvas.width += _measures(bench, bought, beyond) / POINTS_PER_INCH
    return canvas.figure(
        spec, plan_words(context, spec, plan, context.labels.plain_buy(_bought(context, plan)))
    )


def _set_out(
    say: Labels, room: tuple[float, float], plan: FabricPlan, bought: Fraction, down: bool
) -> tuple[Canvas, Canvas]:
    if not down:
        scale = fit(bought, plan.usable_width, room)
        least = min(_named(say, plan) / POINTS_PER_INCH, room[0]) / float(bought)
        scale = max(scale, least)
        canvas = Canvas(0.3 + float(bought) * scale + 0.12, 9.0, say)
        return canvas, canvas.frame(0.3, 0.8, scale)
    thinnest = min((float(s.depth) for s in plan.strips), default=1.0)
    per_inch = thinnest * POINTS_PER_INCH / float(plan.usable_width)
    wide = next((w for w in DOWN_WIDTHS if w * per_inch >= LEGIBLE), DOWN_WIDTHS[-1])
    right = RIGHT
    tall = float(bought) * wide / float(plan.usable_width) * POINTS_PER_INCH
    if text_width(_to_buy(say, bought), LABEL) + 8 > tall:
        right, wide = RIGHT + BEYOND, wide - BEYOND
    canvas = Canvas(LEFT + wide + right, 9.0, say)
    return canvas, canvas.frame(LEFT, 0.8, wide / float(plan.usable_width))


def _named(say: Labels, plan: FabricPlan) -> float:
    """Return the points that the words of all strips need side by side."""
    words = [w for g in groups(plan) for w in _strip_words(say, g)]
    return (max((text_width(w, SMALL) for w in words), default=0.0) + 7) * len(groups(plan))


def _cloth(bench: Bench, bought: Fraction) -> None:
    """Draw the cloth as bought: all of it spare until pieces are laid on it."""
    width = bench.plan.usable_width
    whole = sheet(*bench.at(0, 0), *bench.at(bought, width))
    bench.frame.shape(whole, TINT, None)
    hatch(bench.frame, whole, Stroke(HAIR, 0.25), 3.2)
    bench.frame.shape(whole, None, Stroke(SOFT, 0.5))


def _order(bench: Bench, outside: list[Laid]) -> float:
    """Number the strips in cutting order beside the first edge, and draw their cuts.

    Return how far beyond the far selvage letters stand, in points.
    """
    found = groups(bench.plan)
    width = bench.plan.usable_width
    for group in found:
        for i in range(1, group.strip.count + 1):
            end = group.start + i * group.strip.depth
            over = bench.frame.inches(4)
            bench.frame.line(bench.at(end, -over), bench.at(end, float(width) + over), LINE)
            _sections(bench, group, i - 1)
    middles = [bench.printed(g.start + g.length / 2) for g in found]
    labels = [_strip_words(bench.labels, g) for g in found]
    low, high = -6.0, max(bench.printed(bench.plan.length) + 6, 0)
    widest = max((text_width(w, SMALL) for pair in labels for w in pair), default=0.0)
    gap = 19.0 if bench.down else widest + 7
    places = spread(middles, gap, low, high)
    for number, (group, place, words) in enumerate(zip(found, places, labels, strict=True), 1):
        _number(bench, group, place, words, number)
    return _letters(bench, outside)


def _sections(bench: Bench, group: Group, at: int) -> None:
    """Draw the cuts that part a strip into sections, and a section into strips."""
    start = group.start + at * group.strip.depth
    for band in bands(group, at):
        end, far = band.along + band.strip.depth, band.across + band.width
        for edge in (band.across, far):
            if 0 < edge < bench.plan.usable_width:
                here = start + group.strip.depth
                bench.frame.line(bench.at(start, edge), bench.at(here, edge), WITHIN)
        if end < start + group.strip.depth:
            bench.frame.line(bench.at(end, band.across), bench.at(end, far), WITHIN)


def _number(bench: Bench, group: Group, place: float, words: tuple[str, str], number: int) -> None:
    frame = bench.frame
    at = frame.inches(place)
    middle = group.start + group.length / 2
    edge, near, far = frame.inches(-2), frame.inches(-9), frame.inches(-17)
    frame.polyline(
        [bench.at(middle, edge), bench.at(middle, near), bench.at(at, far)], Stroke(SOFT, 0.4)
    )
    if group.strip.count > 1:  # a bracket holds strips that are cut alike
        first, last = group.start + _hair(frame), group.start + group.length - _hair(frame)
        frame.polyline(
            [
                bench.at(first, edge),
                bench.at(first, near),
                bench.at(last, near),
                bench.at(last, edge),
            ],
            Stroke(SOFT, 0.4),
        )
    disc(frame, bench.at(at, frame.inches(-22)), str(number))
    for line, text in enumerate(words):
        if bench.down:
            shift = (0.0, (line - 0.5) * 8.4)
            frame.text(
                bench.at(at, frame.inches(-30)),
                text,
                SMALL,
                "regular",
                "end",
                "middle",
                shift=shift,
            )
        else:
            frame.text(
                bench.at(at, frame.inches(-31)),
                text,
                SMALL,
                "regular",
                "middle",
                shift=(0.0, (line - 1) * 8.4),
            )


def _hair(frame: Canvas) -> Fraction:
    """Return half a point of the page as a length of cloth: keeps brackets apart."""
    return Fraction(frame.inches(0.5))


def _strip_words(say: Labels, group: Group) -> tuple[str, str]:
    return say.counted(group.strip.count, "strip"), say.length(group.strip.depth)


def _letters(bench: Bench, outside: list[Laid]) -> float:
    """Name, beyond the far selvage, pieces that are too small to hold their letter.

    Return how far their letters reach, in points.
    """
    frame, width = bench.frame, bench.plan.usable_width
    alike: dict[tuple[int, str], list[Laid]] = {}
    for piece in outside:
        alike.setdefault((piece.group, piece.letter), []).append(piece)
    pointed = sorted(
        map(_outermost, alike.values()), key=lambda p: (p.along + p.length / 2, -p.across)
    )
    words = [p.letter for p in pointed]
    middles = [bench.printed(p.along + p.length / 2) for p in pointed]
    widest = max((text_width(w, HEAD, "semibold") for w in words), default=0.0)
    gap = 11.0 if bench.down else widest + 5
    places = spread(middles, gap, -6.0, bench.printed(bench.plan.length) + 6)
    for piece, place, text in zip(pointed, places, words, strict=True):
        middle = piece.along + piece.length / 2
        inside = min(frame.inches(3), float(piece.width) / 2)
        start = bench.at(middle, float(piece.across + piece.width) - inside)
        at, far = frame.inches(place), float(width) + frame.inches(14)
        near = float(width) + frame.inches(6)
        frame.polyline([start, bench.at(middle, near), bench.at(at, far)], Stroke(SOFT, 0.4))
        frame.circle(start, 1.2, SOFT, Stroke(PAPER, 0.5))
        shift = (2.0, 0.0) if bench.down else (0.0, 1.5)
        anchor, level = ("start", "middle") if bench.down else ("middle", "top")
        frame.text(bench.at(at, far), text, HEAD, "semibold", anchor, level, shift=shift)
    return (16 + widest if bench.down else 16 + HEAD) if words else 0.0


def _outermost(pieces: list[Laid]) -> Laid:
    """Return, of pieces alike, the one nearest the far selvage; of several the middle one."""
    far = max(p.across + p.width for p in pieces)
    nearest = [p for p in pieces if p.across + p.width == far]
    return nearest[len(nearest) // 2]


def _to_buy(say: Labels, bought: Fraction) -> str:
    return say.text("figure-buy", bought=say.buy(bought))


def _bought(context: Context, plan: FabricPlan) -> Fraction:
    """Return the cloth that is drawn: what is bought in the units that lead."""
    return max(plan.buy_metric if context.pattern.measures.metric else plan.buy, plan.length)


def _measures(bench: Bench, bought: Fraction, beyond: float) -> float:
    """Dimension the usable width and the length to buy, clear of what stands `beyond`.

    Return how many points wider than planned the figure has become.
    """
    say = bench.labels
    frame, width = bench.frame, bench.plan.usable_width
    wide = say.text("figure-usable-width", width=say.length(width))
    long = _to_buy(say, bought)
    if bench.down:
        dimension(frame, (0, 0), (width, 0), wide, 14)
        off = max(26.0, beyond + 7)
        dimension(frame, (width, 0), (width, bought), long, off)
        return off - 26.0
    dimension(frame, (0, width), (0, 0), wide, 12)
    dimension(frame, (bought, width), (0, width), long, max(24.0, beyond + 9))
    return 0.0
