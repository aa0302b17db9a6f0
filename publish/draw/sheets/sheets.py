"""Template sheets at full size.

In: the templates that are asked for, and the paper. Out: `Sheet`s, one for each page, by the
templates that they show.
Invariant: a sheet's SVG is the whole page, its width and height in inches; its user unit
is one point, 1/72 in exactly; nothing is scaled on the way to the paper.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.draw.context import Context
from publish.draw.sheets.heading import alt_words, heading
from publish.draw.sheets.marks import draw_window
from publish.draw.sheets.nesting import spreads
from publish.draw.sheets.own_words import grain_words
from publish.draw.sheets.page import (
    Heading,
    check_words,
    key,
    square_of,
    strip,
    window_corner,
)
from publish.draw.sheets.spread import Lying, Spread
from publish.draw.sheets.tiling import SIDES
from publish.draw.sheets.windows import Window
from publish.model.book import Paper
from publish.model.figure import Asked, Sheet, Shown


def template_sheets(
    context: Context, asked: Sequence[Asked], paper: Paper
) -> tuple[dict[Asked, tuple[Sheet, ...]], dict[Asked, Exception]]:
    """Return by template the sheets that show it, in the order in which they are joined, and
    why others could not be drawn."""
    made, failed = spreads(context, asked, paper)
    found: dict[Asked, list[Sheet]] = {one: [] for one in asked if one not in failed}
    for spread in made:
        for window in spread.tiling.windows:
            sheet = _sheet(context, spread, window, paper)
            for one in dict.fromkeys(shown.asked for shown in sheet.shown):
                found[one].append(sheet)
    return {one: tuple(group) for one, group in found.items()}, failed


def _sheet(context: Context, spread: Spread, window: Window, paper: Paper) -> Sheet:
    said = heading(context, spread, window)
    canvas = context.canvas(paper.width, paper.height)
    corner = window_corner()
    squared = draw_window(canvas, corner, spread, window)
    strip(canvas, paper, said, bar=not squared)
    joined = len(spread.tiling.windows) > 1
    if joined:
        key(canvas, paper, spread, window)
    alt = _alt(said, spread, window)
    leads = spread.lying[0].asked
    name, size, _ = leads
    return Sheet(
        key=f"{name.replace(' ', '-')}-{size}-{spread.lying[0].template.part}-{window.label}",
        svg=canvas.svg(alt),
        title=context.labels.text("figure-sheet", name=said.name, label=window.label)
        if joined
        else said.name,
        leads=leads,
        shown=tuple(_shown(g, window, corner) for g in spread.lying if g.on(window)),
        square=square_of(paper, context.pattern.measures),
        alt=alt,
        prints=spread.prints,
        drawing=canvas.drawing(),
    )


def _shown(lying: Lying, window: Window, corner: tuple[float, float]) -> Shown:
    left, top, right, bottom = lying.window(window).box
    template = lying.template
    return Shown(
        *lying.asked,
        x=left,
        y=top,
        window=(right - left, bottom - top),
        at=corner,
        turn=template.turn,
        mirrored=template.mirrored,
        fold=lying.fold,
    )


def _alt(said: Heading, spread: Spread, window: Window) -> str:
    say = said.labels
    lines = say.text("figure-sheets-alt") if said.turned else say.text("figure-finished-line-solid")
    here = [g for g in spread.lying if g.on(window)]
    told = dict.fromkeys(_held(g, said, spread.alone) for g in here)
    joins = [
        say.text(f"sheet-joins-{side}", label=other.label)
        for side in SIDES
        if (other := spread.tiling.neighbour(window, side)) is not None
    ]
    joined = say.text("figure-joins", joins=", ".join(joins)) if joins else ""
    number = f" {window.label}" if len(spread.tiling.windows) > 1 else ""
    return (
        say.text(
            "figure-sheets-alt-2",
            number=number,
            name=said.name,
            lines=lines,
            value=" ".join(t for t in told if t),
            joined=joined,
            labels=check_words(said.labels),
        )
    ).replace("  ", " ")


def _held(lying: Lying, said: Heading, alone: bool) -> str:
    """Return what a sheet shows of one template, for who cannot see it."""
    template, say = lying.template, said.labels
    if not template.of_motif:
        half = say.text("figure-sheets-held") if lying.fold else ""
        return f"{alt_words(said.labels, template, said if alone else None)}{half}"
    if not template.folds:
        return ""
    if not said.turned:
        return say.text("figure-sheets-held-2")
    folds = [say.text(f"sheet-fold-{f.kind}", grain=grain_words(say, f)) for f in template.folds]
    return say.text("sheet-folds", folds=say.listed(folds))
