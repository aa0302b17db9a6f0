"""Fat quarters, squares and strips as they are cut: one picture for each way of cutting.

In: a fabric that is sold ready cut, and its plan. Out: the figure.
Invariant: every sheet is drawn to one scale with all of its pieces; how many are cut
alike stands beside it.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import disc
from publish.draw.canvas.style import HAIR, HEAD, INK, LABEL, SOFT, STEP_WIDTH, TINT, Stroke
from publish.draw.cloth import hatch, sheet
from publish.draw.context import Context
from publish.draw.cutting.bench import Bench, draw_piece, firsts
from publish.draw.cutting.layout import Laid
from publish.model.cutplan import FabricPlan, PrecutPlan, Sheet
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import fraction_text

LEFT = 0.2
SIDE = 2.1
"""Inches: the printed width of a sheet."""
TITLE, GAP = 0.24, 0.16
"""Inches above a sheet for its number, and between sheets."""
LINE = Stroke(INK, 0.7, (3.0, 1.6))


def draw_sheets(context: Context, spec: FigureSpec, plan: FabricPlan, precut: PrecutPlan) -> Figure:
    """Draw every kind of sheet, one below the other."""
    say = context.labels
    sold = precut.sold_as
    scale = SIDE / float(sold.width)
    canvas = context.canvas(STEP_WIDTH, 9.0)
    colour = context.colour(plan.fabric)
    templates = {t.key: t for t in context.plan(spec).templates}
    top = TITLE
    for number, kind in enumerate(precut.sheets, start=1):
        disc(canvas, (LEFT + 0.06, top - 0.1), str(number))
        words = f"{say.counted(kind.count, sold.kind)}, {say.length(sold.length)} × "
        words += say.length(sold.width)
        canvas.text((LEFT + 0.2, top - 0.1), words, LABEL, level="middle")
        frame = canvas.frame(LEFT, top, scale)
        _one(Bench(frame, True, plan, colour, context.labels, templates), precut, kind)
        top += float(sold.length) * scale + TITLE + GAP
    name = context.pattern.fabrics[plan.fabric].name
    return canvas.figure(spec, _alt(context.labels, name, context.size(spec).title, precut))


def _one(bench: Bench, precut: PrecutPlan, kind: Sheet) -> None:
    frame, sold = bench.frame, precut.sold_as
    whole = sheet(0, 0, sold.width, sold.length)
    frame.shape(whole, TINT, None)
    hatch(frame, whole, Stroke(HAIR, 0.25), 3.2)
    frame.shape(whole, None, Stroke(SOFT, 0.5))
    unnamed = [draw_piece(bench, laid, first) for laid, first in firsts(tuple(_laid(kind)))]
    start = Fraction(0)
    for strip in kind.strips:
        for _ in range(strip.count):
            start += strip.depth
            if kind.lengthwise:
                frame.line((start, 0), (start, sold.length), LINE)
            else:
                frame.line((0, start), (sold.width, start), LINE)
    letters = ", ".join(dict.fromkeys(laid.letter for laid in unnamed if laid is not None))
    if letters:
        frame.text(
            (sold.width, sold.length / 2),
            letters,
            HEAD,
            "semibold",
            level="middle",
            shift=(4.0, 0.0),
        )


def _laid(kind: Sheet) -> Iterator[Laid]:
    """Yield every piece of a sheet as it lies: strips across it, or along its length."""
    start = Fraction(0)
    for number, strip in enumerate(kind.strips):
        for _ in range(strip.count):
            at = Fraction(0)
            for cut in strip.cuts:
                for _ in range(cut.count):
                    if kind.lengthwise:
                        yield Laid(cut.letter, at, start, cut.across, cut.along, number)
                    else:
                        yield Laid(cut.letter, start, at, cut.along, cut.across, number)
                    at += cut.across
            start += strip.depth


def _alt(say: Labels, name: str, title: str, precut: PrecutPlan) -> str:
    """Return every sheet in words."""
    sold, parts = precut.sold_as, []
    for number, kind in enumerate(precut.sheets, start=1):
        cuts = [
            say.text(
                "figure-of-in",
                count=c.count * s.count,
                letter=c.letter,
                across=fraction_text(c.across),
                along=fraction_text(c.along),
            )
            for s in kind.strips
            for c in s.cuts
        ]
        parts.append(
            say.text(
                "figure-giving",
                number=number,
                count=say.counted(kind.count, sold.kind),
                cuts=say.listed(cuts),
                more=say.text("figure-each-2") if kind.count > 1 else "",
            )
        )
    return say.text(
        "figure-precut-alt",
        name=name,
        title=title,
        used=say.counted(precut.used, sold.kind),
        length=say.plain(sold.length),
        width=say.plain(sold.width),
        parts="; ".join(parts),
    )
