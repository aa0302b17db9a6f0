"""Template sheets at full size, and the figure that shows how they join.

In: a motif at one size, the part to print (`wedge`, `whole`) and the paper.
Out: `Sheet`s, one for each page, and the `tile-map` figure.
Invariant: a sheet's SVG is the whole page, its width and height in inches; its user unit
is one point, 1/72 in exactly; nothing is scaled on the way to the paper.
"""

from __future__ import annotations

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import INK, LABEL, PAPER, STEP_WIDTH, Stroke
from publish.draw.context import CannotDrawError, Context
from publish.draw.sheets.heading import Asked, alt_words, heading, piece_of, section_of
from publish.draw.sheets.marks import FOLD_NAMES, draw_window, grain_words
from publish.draw.sheets.page import (
    Heading,
    check_words,
    extent,
    key,
    key_map,
    square_of,
    strip,
    window_corner,
    window_size,
)
from publish.draw.sheets.piece import foundation_template, piece_template
from publish.draw.sheets.template import Template, template_of
from publish.draw.sheets.tiling import SIDES, Tiling, Window, tile
from publish.model.alike import with_template
from publish.model.book import Paper, full_size
from publish.model.draft import MotifShape
from publish.model.figure import Figure, Sheet
from publish.model.words import FigureSpec

WEDGE_TURNS = (0.0, 15.0, -15.0, 30.0, -30.0, 45.0, -45.0, 60.0, -60.0, 75.0, -75.0, 90.0, -90.0)
"""Turns tried for a wedge, in degrees; upright as in the figures wins among equals."""
WHOLE_TURNS = (0.0, 90.0, 45.0)
SMALL_PARTS = {
    "piece": (0.0, 90.0, 45.0, -45.0, 30.0, -30.0, 60.0, -60.0),
    "foundation": (0.0, 90.0),
}
"""The turns tried for templates of pieced patches and for foundations."""


def template_sheets(
    context: Context, motif: str, size: str, part: str, paper: Paper
) -> tuple[Sheet, ...]:
    """Return the sheets of one template, in the order in which they are joined."""
    asked = (motif, size, part)
    template, tiling = spread(context, asked, paper)
    return tuple(_sheet(context, asked, template, tiling, w, paper) for w in tiling.windows)


def spread(context: Context, asked: Asked, paper: Paper) -> tuple[Template, Tiling]:
    """Return any template as it lies on its sheets, and the sheets."""
    key, size, part = asked
    if part not in SMALL_PARTS:
        shape = context.drafts[size].motifs.get(key)
        if shape is None:
            raise CannotDrawError(f"there is no motif {key!r} at this size")
        return laid_out(shape, part, paper)
    if part == "piece":
        piece = piece_of(context, key, size)
        shared = len(with_template(context.plans, piece)) > 1
        template = piece_template(context.pattern, piece, shared)
    else:
        template = foundation_template(context.pattern, section_of(context, key, size))
    tiling = tile(template.cover, window_size(paper), SMALL_PARTS[part])
    return template.turned(tiling.turn), tiling


def laid_out(shape: MotifShape, part: str, paper: Paper) -> tuple[Template, Tiling]:
    """Return a motif's template as it lies on its sheets, and the sheets."""
    template = template_of(shape, part)
    turns = WEDGE_TURNS if template.part == "wedge" else WHOLE_TURNS
    tiling = tile(template.cover, window_size(paper), turns)
    return template.turned(tiling.turn), tiling


def _sheet(
    context: Context,
    asked: Asked,
    template: Template,
    tiling: Tiling,
    window: Window,
    paper: Paper,
) -> Sheet:
    key_, size, _ = asked
    said = heading(context, asked, template, tiling, window)
    canvas = Canvas(paper.width, paper.height)
    corner = window_corner()
    squared = draw_window(canvas, corner, template, tiling, window)
    strip(canvas, paper, said, bar=not squared)
    if len(tiling.windows) > 1:
        key(canvas, paper, template, tiling, window)
    alt = _alt(said, template, tiling, window)
    left, top, right, bottom = window.box
    return Sheet(
        key=f"{key_.replace(' ', '-')}-{size}-{template.part}-{window.label}",
        svg=canvas.svg(alt),
        title=f"{said.name}, sheet {window.label}",
        motif=key_,
        size=size,
        part=template.part,
        row=window.row,
        column=window.column,
        rows=tiling.rows,
        columns=tiling.columns,
        x=left,
        y=top,
        window=(right - left, bottom - top),
        square=square_of(paper, context.pattern.measures),
        alt=alt,
        at=corner,
        turn=template.turn,
        mirrored=template.mirrored,
        drawing=canvas.drawing(),
    )


def _alt(heading: Heading, template: Template, tiling: Tiling, window: Window) -> str:
    lines = "Finished line solid, cut line dashed" if heading.turned else "Finished line solid"
    if not template.of_motif:
        lines = f"{alt_words(template, heading)} {lines}"
    folds = " and ".join(f"{FOLD_NAMES[f.kind]} ({grain_words(f)})" for f in template.folds)
    edges = f" Fold edges dash-dot: {folds}." if folds else ""
    if folds and not heading.turned:
        edges = " Wedge edges dash-dot, along which the paper is turned over."
    joins = [
        f"{side} to sheet {other.label}"
        for side in SIDES
        if (other := tiling.neighbour(window, side)) is not None
    ]
    joined = f" Joins {', '.join(joins)}." if joins else ""
    return (
        f"Template sheet {window.label} of {heading.name} at full size. {lines}.{edges}{joined} "
        f"Check squares of {check_words(heading.measures)} and 5 cm show whether it is printed "
        "true."
    )


def tile_map(context: Context, spec: FigureSpec) -> Figure:
    """Draw how the sheets of one template join."""
    paper = full_size(context.paper)
    part = spec.get("part", "wedge")
    if part in SMALL_PARTS:
        size = context.size(spec).key
        template, tiling = spread(context, (spec.get("motif"), size, part), paper)
    else:
        _, shape = context.motif(spec)
        template, tiling = laid_out(shape, part, paper)
    left, top, right, bottom = extent(tiling)
    room = min(STEP_WIDTH - 0.9, 1.15)
    scale = room / max(right - left, bottom - top)
    canvas = Canvas(STEP_WIDTH, 1.7)
    at = ((STEP_WIDTH - (right - left) * scale) / 2, 0.1)
    key_map(canvas, at, room, template, tiling, label=LABEL + 1)
    frame = canvas.frame(at[0] - left * scale, at[1] - top * scale, scale)
    for mark in tiling.marks:
        x, y = frame.point((mark.x, mark.y))
        diamond = [(x - 2.6, y), (x, y - 2.6), (x + 2.6, y), (x, y + 2.6)]
        frame.page.polygon(diamond, INK, Stroke(PAPER, 0.6))
    order = [w.label for w in tiling.windows]
    return canvas.figure(spec, _map_alt(order, tiling))


def _map_alt(order: list[str], tiling: Tiling) -> str:
    if len(order) == 1:
        return "The whole template is on one sheet."
    return (
        f"The template is on {len(order)} sheets, {tiling.rows} down and {tiling.columns} "
        f"across. Join them in this order: {', '.join(order)}. Neighbours share an overlap and "
        f"are matched by numbered diamonds."
    )
