"""Template sheets at full size, and the figure that shows how they join.

In: a motif at one size, the part to print (`wedge`, `whole`) and the paper.
Out: `Sheet`s, one for each page, and the `tile-map` figure.
Invariant: a sheet's SVG is the whole page, its width and height in inches; its user unit
is one point, 1/72 in exactly; nothing is scaled on the way to the paper.
"""

from __future__ import annotations

from publish.draw.canvas import Canvas
from publish.draw.context import CannotDrawError, Context
from publish.draw.letters import set_inches
from publish.draw.sheet_marks import FOLD_NAMES, draw_window, grain_words
from publish.draw.sheet_page import (
    Heading,
    extent,
    key,
    key_map,
    square_of,
    strip,
    window_corner,
    window_size,
)
from publish.draw.sheet_template import Template, template_of
from publish.draw.style import INK, LABEL, PAPER, STEP_WIDTH, Stroke
from publish.draw.tiling import SIDES, Tiling, Window, tile
from publish.model.book import Paper
from publish.model.draft import MotifShape
from publish.model.figure import Figure, Sheet
from publish.model.words import FigureSpec

WEDGE_TURNS = (0.0, 15.0, -15.0, 30.0, -30.0, 45.0, -45.0, 60.0, -60.0, 75.0, -75.0, 90.0, -90.0)
"""Turns tried for a wedge, in degrees; upright as in the figures wins among equals."""
PARTS = {"wedge": "wedge", "whole": "whole motif"}
WHOLE_TURNS = (0.0, 90.0, 45.0)


def template_sheets(
    context: Context, motif: str, size: str, part: str, paper: Paper
) -> tuple[Sheet, ...]:
    """Return the sheets of one template, in the order in which they are joined."""
    shape = context.drafts[size].motifs.get(motif)
    if shape is None:
        raise CannotDrawError(f"there is no motif {motif!r} at this size")
    template, tiling = laid_out(shape, part, paper)
    return tuple(
        _sheet(context, shape, size, template, tiling, window, paper) for window in tiling.windows
    )


def laid_out(shape: MotifShape, part: str, paper: Paper) -> tuple[Template, Tiling]:
    """Return a motif's template as it lies on its sheets, and the sheets."""
    template = template_of(shape, part)
    turns = WEDGE_TURNS if template.part == "wedge" else WHOLE_TURNS
    tiling = tile(template.cover, window_size(paper), turns)
    return template.turned(tiling.turn), tiling


def _sheet(
    context: Context, shape: MotifShape, size: str, template: Template, tiling: Tiling,
    window: Window, paper: Paper,
) -> Sheet:  # fmt: skip
    heading = _heading(context, shape, size, template, tiling, window)
    canvas = Canvas(paper.width, paper.height)
    corner = window_corner()
    squared = draw_window(canvas, corner, template, tiling, window)
    strip(canvas, paper, heading, bar=not squared)
    if len(tiling.windows) > 1:
        key(canvas, paper, template, tiling, window)
    alt = _alt(heading, template, tiling, window)
    left, top, right, bottom = window.box
    return Sheet(
        key=f"{shape.key}-{size}-{template.part}-{window.label.lower()}",
        svg=canvas.svg(alt),
        title=f"{heading.name}, sheet {window.label}",
        motif=shape.key,
        size=size,
        part=template.part,
        row=window.row,
        column=window.column,
        rows=tiling.rows,
        columns=tiling.columns,
        x=left,
        y=top,
        window=(right - left, bottom - top),
        square=square_of(paper),
        alt=alt,
        at=corner,
        turn=template.turn,
        mirrored=template.mirrored,
    )


def _heading(
    context: Context, shape: MotifShape, size: str, template: Template, tiling: Tiling,
    window: Window,
) -> Heading:  # fmt: skip
    pattern = context.pattern
    motif = pattern.motifs[shape.key]
    count = sum(p.motif == shape.key for p in context.drafts[size].placements)
    name = f"{motif_name(shape.key)} {PARTS[template.part]}, {context.sizes[size].title}"
    at = list(tiling.windows).index(window) + 1
    turned = not template.cut.is_empty
    lines = [
        f"Cut {count} from {pattern.fabrics[motif.fabric].name}",
        f"Finished motif {set_inches(shape.span)} across",
        f"Sheet {window.label}, {at} of {len(tiling.windows)}",
    ]
    if turned:
        lines.insert(2, f"Turn-under {set_inches(motif.turn_under)}")
    return Heading(pattern.title, name, tuple(lines), turned, bool(template.folds))


def motif_name(key: str) -> str:
    """Return a motif's key as words: `Sea lavender`."""
    words = key.replace("_", " ").replace("-", " ")
    return words[:1].upper() + words[1:]


def _alt(heading: Heading, template: Template, tiling: Tiling, window: Window) -> str:
    lines = "Finished line solid, cut line dashed" if heading.turned else "Finished line solid"
    folds = " and ".join(f"{FOLD_NAMES[f.kind]} ({grain_words(f)})" for f in template.folds)
    edges = f" Fold edges dash-dot: {folds}." if folds else ""
    if folds and not heading.turned:
        edges = " Wedge edges dash-dot, along which the paper is turned over."
    joins = [
        f"{side} to {other.label}"
        for side in SIDES
        if (other := tiling.neighbour(window, side)) is not None
    ]
    joined = f" Joins {', '.join(joins)}." if joins else ""
    return (
        f"Template sheet {window.label} of {heading.name} at full size. {lines}.{edges}{joined} "
        f"Check squares of 1 in and 5 cm show whether it is printed true."
    )


def tile_map(context: Context, spec: FigureSpec) -> Figure:
    """Draw how the sheets of one template join."""
    _, shape = context.motif(spec)
    template, tiling = laid_out(shape, spec.get("part", "wedge"), context.paper)
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
        return "The whole template is on one sheet, A1."
    return (
        f"The template is on {len(order)} sheets, {tiling.rows} down and {tiling.columns} "
        f"across. Join them in this order: {', '.join(order)}. Neighbours share an overlap and "
        f"are matched by numbered diamonds."
    )
