"""Fabrics laid beside and on each other, and the top as different eyes see it.

In: the pattern's fabrics and one size's top. Out: one figure for each kind.
Invariant: every measure comes from `publish.colour`; a pair that is close in lightness
is marked with a sign as well as a number, so that the warning survives a grey printer.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from publish.colour import VISIONS, grey, lightness, lightness_step, seen_by, show_through
from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels, wrap
from publish.draw.canvas.style import HEAD, INK, LABEL, SMALL, Stroke, edge_of
from publish.draw.context import Context
from publish.draw.pictured import Box, with_pictures
from publish.draw.swatches import uses
from publish.draw.top import paint_top
from publish.model.figure import Figure, way_name
from publish.model.pattern import Fabric
from publish.model.words import FigureSpec
from publish.units import POINTS_PER_INCH

SIDE = 0.64
"""Inches: the largest swatch of the grid."""
HEADS = 1.15
"""Inches: the column of names at the left."""
FINE = 0.35
GAP = 0.25
FINE_GAP = 0.12
PICTURES = 3
"""How many computed pictures stand in a row."""


def pairs(context: Context, spec: FigureSpec) -> Figure:
    """Draw every fabric in a row, with each other fabric beside it and on it.

    Lightest first. In each square the row's fabric is the ground; the column's lies
    beside it at the right edge and on it in the middle, as it would look with the ground
    showing through (an estimate).
    """
    used = [f for f in context.pattern.fabrics.values() if uses(context, f.key)]
    order = sorted(used, key=lambda f: (-lightness(f.colour), f.key))
    side = min(SIDE, (context.column - HEADS) / len(order))
    canvas = context.canvas(context.column, side * len(order))
    for column, fabric in enumerate(order):
        x = HEADS + column * side + side / 2
        for i, line in enumerate(reversed(wrap(fabric.name, LABEL, side * 68, "semibold"))):
            canvas.text((x, 0), line, LABEL, "semibold", "middle", shift=(0, -5 - 9 * i))
    for row, under in enumerate(order):
        _name(canvas, under, row * side + side / 2)
        for column, over in enumerate(order):
            at = (HEADS + column * side, row * side)
            _pair(canvas, under, over, at, side)
    close = _close_pairs(context.labels, order)
    alt = context.labels.text("figure-colours-pairs", order=len(order)) + (
        context.labels.text("figure-close-in-lightness", close=context.labels.listed(close))
        if close
        else context.labels.text("figure-colours-pairs-2")
    )
    return canvas.figure(spec, alt)


def _name(canvas: Canvas, fabric: Fabric, y: float) -> None:
    room = (HEADS - 0.15) * POINTS_PER_INCH
    lines = wrap(fabric.name, LABEL, room, "semibold")
    for i, line in enumerate(lines):
        shift = 9.0 * (i - (len(lines) - 1) / 2)
        canvas.text((HEADS - 0.1, y), line, LABEL, "semibold", "end", "middle", shift=(0, shift))


def _pair(
    canvas: Canvas, under: Fabric, over: Fabric, at: tuple[float, float], side: float
) -> None:
    x, y = at
    inner = side - 0.05
    canvas.rect(x, y, inner, inner, under.colour, Stroke(edge_of(under.colour), FINE))
    if under.key == over.key:
        return
    band = inner * 0.26
    canvas.rect(x + inner - band, y, band, inner, over.colour, Stroke(edge_of(over.colour), FINE))
    seen, _ = show_through(over.colour, under.colour)
    middle = (x + (inner - band) / 2, y + inner * 0.4)
    canvas.circle(middle, inner * 0.23 * POINTS_PER_INCH, seen, Stroke(edge_of(seen), FINE))
    step = lightness_step(under.colour, over.colour)
    words = f"{step.value:.0f}" + (" !" if step.close else "")
    canvas.text(
        (middle[0], y + inner),
        words,
        SMALL,
        "bold" if step.close else "regular",
        "middle",
        fill=INK,
        halo="#ffffff",
        shift=(0, -5),
    )


def _close_pairs(say: Labels, order: list[Fabric]) -> list[str]:
    return [
        say.text("figure-with", name=one.name, name_2=other.name)
        for i, one in enumerate(order)
        for other in order[i + 1 :]
        if lightness_step(one.colour, other.colour).close
    ]


def visions(context: Context, spec: FigureSpec) -> Figure:
    """Draw one size as a grey print shows it and as three kinds of eyes see it."""
    looks = {
        context.labels.text("figure-in-grey"): {
            k: grey(f.colour) for k, f in context.pattern.fabrics.items()
        }
    }
    for vision, name in VISIONS.items():
        looks[f"{name} sight"] = {
            k: seen_by(f.colour, vision) for k, f in context.pattern.fabrics.items()
        }
    size = context.size(spec)
    alt = context.labels.text(
        "figure-colours-visions", title=size.title, looks=context.labels.listed(list(looks))
    )
    return _row(context, spec, looks, alt)


def colourways(context: Context, spec: FigureSpec) -> Figure:
    """Draw one size in the pattern's own fabrics and in each further colourway."""
    say = context.labels
    own = {k: f.colour for k, f in context.pattern.fabrics.items()}
    if all(way_name(key) in context.pictures for key in ("own", *context.pattern.colourways)):
        return _pictured(context, spec)
    looks = {say.text("figure-as-shown"): own}
    for way in context.pattern.colourways.values():
        looks[way.title] = {**own, **{k: f.colour for k, f in way.fabrics.items()}}
    size = context.size(spec)
    shown = f"{size.title}, {say.spoken(size.width, size.height)}"
    alt = say.text(
        "figure-in-colourways", shown=shown, looks=len(looks), looks_2=say.listed(list(looks))
    )
    return _row(context, spec, looks, alt)


def _pictured(context: Context, spec: FigureSpec) -> Figure:
    """Show the pictures of one size in each colourway, up to three in a row."""
    say = context.labels
    names = {"own": say.text("figure-as-shown")} | {
        k: w.title for k, w in context.pattern.colourways.items()
    }
    columns = min(len(names), PICTURES)
    side = (context.column - FINE_GAP * (columns - 1)) / columns
    canvas = context.canvas(context.column, side)
    boxes: dict[str, Box] = {}
    for i, (key, name) in enumerate(names.items()):
        x, y = (i % columns) * (side + FINE_GAP), (i // columns) * (side + 0.36)
        boxes[way_name(key)] = (x, y, side, side)
        canvas.rect(x, y, side, side)  # for the figure's extent
        canvas.text((x, y + side), name, HEAD - 1, "semibold", shift=(0, 13))
    size = context.size(spec)
    shown = f"{size.title}, {say.spoken(size.width, size.height)}"
    alt = say.text(
        "figure-in-colourways-2",
        shown=shown,
        names=len(names),
        value=say.listed([*names.values()]),
        computed=context.labels.text("figure-computed"),
    )
    return with_pictures(canvas.figure(spec, alt), boxes)


def _row(
    context: Context, spec: FigureSpec, looks: Mapping[str, Mapping[str, str]], alt: str
) -> Figure:
    """Draw the same top once for each look, up to four in a row, names beneath."""
    size = context.size(spec)
    columns = min(len(looks), 4)
    wide = (context.column - GAP * (columns - 1)) / columns
    scale = min(wide / float(size.width), 2.2 / float(size.height))
    high = float(size.height) * scale
    canvas = context.canvas(context.column, high)
    for i, (name, colours) in enumerate(looks.items()):
        x = (i % columns) * (wide + GAP) + (wide - float(size.width) * scale) / 2
        y = (i // columns) * (high + 0.42)
        frame = canvas.frame(x, y, scale)
        paint_top(frame, _in_colours(context, colours), size.key)
        centre = (x + float(size.width) * scale / 2, y + high)
        canvas.text(centre, name, HEAD - 1, "semibold", "middle", shift=(0, 15))
    return canvas.figure(spec, alt)


def _in_colours(context: Context, colours: Mapping[str, str]) -> Context:
    """Return the context with its fabrics in other colours."""
    fabrics = {k: replace(f, colour=colours[k]) for k, f in context.pattern.fabrics.items()}
    return replace(context, pattern=replace(context.pattern, fabrics=fabrics))
