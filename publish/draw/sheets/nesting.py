"""Which templates share sheets, and where each lies.

In: the templates that are asked for and the paper. Out: `Spread`s.
Invariant: templates share a sheet only if the same sizes use them; foundations, of which
every copy is sewn into, only with foundations that are printed as often; on paper of a copy
shop all templates share. A template that is by itself on its sheets lies as `tile` lays it.
Templates are turned by quarters from there, so that a grain line runs along the paper, and
never turned over; a motif stands as it stands by itself.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from math import atan2, degrees

from shapely.affinity import translate
from shapely.geometry import box
from shapely.ops import unary_union

from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import LABEL
from publish.draw.context import CannotDrawError, Context
from publish.draw.sheets.counts import piece_of, section_of
from publish.draw.sheets.heading import caption_lines
from publish.draw.sheets.packing import (
    Nest,
    Outline,
    Piece,
    Place,
    pack,
    repeated,
    windows_of,
)
from publish.draw.sheets.page import window_size
from publish.draw.sheets.piece import foundation_template, halved, piece_template
from publish.draw.sheets.spread import LEAD, Caption, Lying, Spread
from publish.draw.sheets.template import Template, template_of
from publish.draw.sheets.tiling import Tiling, gridded, tile
from publish.draw.sheets.windows import Window, along_joins
from publish.model.alike import with_foundation, with_template
from publish.model.book import PAPERS, Paper
from publish.model.figure import Asked
from publish.model.halves import fold_of

WEDGE_TURNS = (0.0, 15.0, -15.0, 30.0, -30.0, 45.0, -45.0, 60.0, -60.0, 75.0, -75.0, 90.0, -90.0)
"""Turns tried for a wedge, in degrees; upright as in the figures wins among equals."""
WHOLE_TURNS = (0.0, 90.0, 45.0)
SMALL_PARTS = {
    "piece": (0.0, 90.0, 45.0, -45.0, 30.0, -30.0, 60.0, -60.0),
    "foundation": (0.0, 90.0),
}
"""The turns tried for templates of pieced patches and for foundations by themselves."""
QUARTERS = (0.0, 90.0, 180.0, 270.0)
BESIDE = 0.08
"""Inches from a template to the words beside it."""
ALONG = 0.6
"""Inches of a template's lines that may run along the joins of its sheets."""


@dataclass(frozen=True)
class _Item:
    """A template to be laid: as it lies by itself, and the ways in which it may lie."""

    alone: Lying
    tiling: Tiling
    ways: tuple[Lying, ...]


@dataclass(frozen=True)
class _Use:
    """Who uses a template: what has the same may share a sheet."""

    sizes: tuple[str, ...]
    copies: tuple[int, ...]
    """Of a foundation, for each size."""


def spreads(
    context: Context, asked: Sequence[Asked], paper: Paper
) -> tuple[tuple[Spread, ...], dict[Asked, Exception]]:
    """Return the sheets of templates, and what could not be drawn."""
    groups: dict[_Use, list[Lying]] = {}
    failed: dict[Asked, Exception] = {}
    for one in asked:
        try:
            lying = lying_of(context, one)
            use = _use(context, one) if paper.key in PAPERS else _Use((), ())
        except (CannotDrawError, KeyError) as reason:
            failed[one] = reason
            continue
        groups.setdefault(use, []).append(lying)
    made = [s for use, held in groups.items() for s in _shared(context, use, held, paper)]
    return tuple(made), failed


def lying_of(context: Context, asked: Asked) -> Lying:
    """Return a template at its own origin, neither turned nor joined.

    Raises `CannotDrawError` where the size has no such template.
    """
    key, size, part = asked
    if part == "piece":
        piece = piece_of(context, key, size)
        shared = len(with_template(context.plans, piece)) > 1
        template, fold = piece_template(context.pattern, piece, shared), fold_of(piece)
        return Lying(asked, halved(template, fold) if fold else template, fold=fold)
    if part == "foundation":
        return Lying(asked, foundation_template(context.pattern, section_of(context, key, size)))
    shape = context.drafts[size].motifs.get(key)
    if shape is None:
        raise CannotDrawError(f"there is no motif {key!r} at this size")
    return Lying(asked, template_of(shape, part))


def _use(context: Context, asked: Asked) -> _Use:
    key, size, part = asked
    if part == "piece":
        return _Use(tuple(with_template(context.plans, piece_of(context, key, size))), ())
    if part == "foundation":
        alike = with_foundation(context.drafts, section_of(context, key, size))
        return _Use(tuple(alike), tuple(f.count for f in alike.values()))
    return _Use((size,), ())


def _shared(context: Context, use: _Use, held: Sequence[Lying], paper: Paper) -> tuple[Spread, ...]:
    """Return the sheets of templates that may share them."""
    window = window_size(paper)
    items = [_item(context, lying, window) for lying in held]
    pieces = [_piece(number, item) for number, item in enumerate(items)]

    def suits(place: Place, windows: Sequence[Window]) -> bool:
        lines = items[place.name].ways[place.way].template.lines
        return along_joins(translate(lines, place.x, place.y), windows) <= ALONG

    return tuple(
        _spread(items, _filled(nest, pieces, window, use), use, window)
        for nest in sorted(pack(pieces, window, suits), key=lambda n: min(p.name for p in n.places))
    )


def _filled(nest: Nest, pieces: Sequence[Piece], window: tuple[float, float], use: _Use) -> Nest:
    """Return a sheet of foundations with as many copies as it holds and some size needs."""
    if max(use.copies, default=1) == 1 or nest.rows * nest.columns > 1:
        return nest
    return repeated(nest, pieces, window, max(use.copies))


def _item(context: Context, lying: Lying, window: tuple[float, float]) -> _Item:
    template, part = lying.template, lying.asked[2]
    turns = SMALL_PARTS.get(part, WEDGE_TURNS if template.part == "wedge" else WHOLE_TURNS)
    if lying.fold is not None:
        turns = (_upright(template), *turns)
    tiling = tile(template.cover, window, turns, lines=template.lines)
    alone = replace(lying, template=template.turned(tiling.turn))
    lines = caption_lines(context, lying.asked, template)
    quarters = QUARTERS if part in SMALL_PARTS else (0.0,)
    ways = []
    for quarter in quarters:
        turned = replace(alone, template=alone.template.turned(quarter))
        ways += _captioned(turned, lines) if lines else [turned]
    return _Item(alone, tiling, tuple(ways))


def _upright(template: Template) -> float:
    """Return the turn that stands a half template's fold upright."""
    (ax, ay), (bx, by) = template.half.coords[0], template.half.coords[-1]
    return degrees(atan2(bx - ax, by - ay))


def _captioned(lying: Lying, lines: tuple[str, ...]) -> list[Lying]:
    """Return a template with its words below it, at its right and above it."""
    wide = max(
        text_width(t, LABEL, "semibold" if n == 0 else "regular") for n, t in enumerate(lines)
    )
    w, h = wide / 72 + 0.03, len(lines) * LEAD / 72
    left, top, right, bottom = lying.template.cover.bounds
    corners = ((left, bottom + BESIDE), (right + BESIDE, top), (left, top - BESIDE - h))
    return [replace(lying, caption=Caption(lines, box(x, y, x + w, y + h))) for x, y in corners]


def _piece(number: int, item: _Item) -> Piece:
    ways = tuple(
        Outline(
            unary_union([w.template.cover, *([w.caption.area] if w.caption else [])]),
            w.caption.area if w.caption else None,
        )
        for w in item.ways
    )
    return Piece(number, ways, item.tiling.rows, item.tiling.columns)


def _spread(items: Sequence[_Item], nest: Nest, use: _Use, window: tuple[float, float]) -> Spread:
    prints = _prints(nest, use)
    if len(nest.places) == 1:
        item = items[nest.places[0].name]
        return Spread(item.tiling, (item.alone,), prints)
    lying = [replace(items[p.name].ways[p.way], x=p.x, y=p.y) for p in nest.places]
    if len({p.name for p in nest.places}) == 1:  # copies of one: its words are in the head
        lying = [replace(one, caption=None) for one in lying]
    order = sorted(range(len(lying)), key=lambda n: nest.places[n].name)
    ordered = [lying[n] for n in order]
    shape = unary_union([one.cover for one in ordered])
    cells = windows_of(nest.rows, nest.columns, window)
    return Spread(gridded(shape, cells), tuple(ordered), prints)


def _prints(nest: Nest, use: _Use) -> Mapping[str, int]:
    """Return how often each size prints a sheet of foundations that holds some copies."""
    if not use.copies:
        return {}
    held = len(nest.places) // len({p.name for p in nest.places})
    needed = {size: -(-count // held) for size, count in zip(use.sizes, use.copies, strict=True)}
    return needed if set(needed.values()) != {1} else {}
