"""The top pulled apart into its rows, or a medallion into its rounds.

In: a size. Out: the figures `setting` and `rounds`.
Invariant: the parts are the seam tree's own; each is moved square to the seams that join
it, and lies as it does in the top.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from shapely.affinity import rotate, translate
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry
from shapely.ops import nearest_points, unary_union

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import disc
from publish.draw.canvas.shapes import XY, bounds_of, laid
from publish.draw.canvas.style import INK, SMALL, STEP_WIDTH, Stroke, edge_of, mix
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.apart import Apart, finished
from publish.draw.piecing.called import called
from publish.model.draft import ROW, Patch, Unit
from publish.model.figure import Figure
from publish.model.size import Size
from publish.model.words import FigureSpec

TALLEST = 3.6
APART = 0.1
ROUND_APART = 0.075
"""Inches between rows, and between rounds."""
INSIDE = 0.03
"""Inches between the parts of one row."""
NUMBER = 9.0
"""Points from the end of a row to the middle of its number."""


@dataclass(frozen=True)
class Moved:
    """A part of the top where it is drawn."""

    unit: Unit
    patches: tuple[tuple[Patch, BaseGeometry], ...]

    @property
    def shape(self) -> BaseGeometry:
        return unary_union([shape.buffer(1e-5) for _, shape in self.patches])


def setting(context: Context, spec: FigureSpec) -> Figure:
    """Draw the blocks with their sashing or setting triangles in rows, numbered."""
    size = context.size(spec)
    top = context.draft(spec).assembly
    rows = rows_of(top) or (top.parts if size.block_count > 1 else ())
    if len(rows) < 2:
        raise CannotDrawError("this size has no rows of blocks")
    # A single row is shown by its parts.
    lone = not any(row.series == ROW for row in rows)
    canvas, frame, moved = _laid_out(context, rows, INSIDE if lone else APART, inside=not lone)
    for part in moved:
        if part.unit.series == ROW:
            _numbered(frame, part, part.unit.number)
    units = [m.unit for m in moved]
    alt = (
        context.labels.text(
            "figure-the-pulled-apart", title=size.title, labels=_held(context.labels, units)
        )
        if lone
        else _setting_alt(context.labels, size, units)
    )
    return canvas.figure(spec, alt)


def rows_of(top: Unit) -> tuple[Unit, ...]:
    """Return the parts that the blocks are joined from last, before any border."""
    centre = next((u for u in top.outermost_first() if u.name == "centre"), None)
    if centre is None and any(part.series == ROW for part in top.parts):
        centre = top
    return () if centre is None else tuple(_rows(centre))


def _rows(unit: Unit) -> list[Unit]:
    """Return a unit's rows: rows that are joined in halves first are found in them."""
    if unit.patch is not None or unit.number:
        return [unit]
    return [row for part in unit.parts for row in _rows(part)]


def _laid_out(
    context: Context, parts: Sequence[Unit], gap: float, inside: bool
) -> tuple[Canvas, Canvas, list[Moved]]:
    """Draw parts apart, as large as the figure allows; return where each has gone."""
    inner = tuple(finished(p.parts) if inside and len(p.parts) > 1 else None for p in parts)
    taken = _Taken(parts, finished(parts), inner)
    low, high = 0.0, 1.0
    for _ in range(12):
        scale = (low + high) / 2
        left, top, right, bottom = bounds_of(s for m in taken.at(scale, gap) for _, s in m.patches)
        room = STEP_WIDTH - 0.1 - 2 * (NUMBER + 5) / 72
        fits = (right - left) * scale <= room and (bottom - top) * scale <= TALLEST
        low, high = (scale, high) if fits else (low, scale)
    moved = taken.at(low, gap)
    left, top, right, bottom = bounds_of(s for m in moved for _, s in m.patches)
    canvas = context.canvas(STEP_WIDTH, 6.0)
    x = (STEP_WIDTH - (right - left) * low) / 2
    frame = canvas.frame(x - left * low, 0.2 - top * low, low)
    for part in moved:
        for patch, shape in part.patches:
            colour = context.colour(patch.fabric)
            frame.shape(shape, colour, Stroke(mix(edge_of(colour), colour, 0.35), 0.25))
    return canvas, frame, moved


@dataclass(frozen=True)
class _Taken:
    """Parts taken apart once, to be laid out at any scale."""

    parts: Sequence[Unit]
    whole: Apart
    rows: tuple[Apart | None, ...]
    """Of each part, its own parts, where they are shown apart as well."""

    def at(self, scale: float, gap: float) -> list[Moved]:
        """Return the parts moved apart, finished size, by printed distances at a scale."""
        apart, found = self.whole.at(gap / scale), []
        for unit, row, held, by in zip(
            self.parts, self.rows, apart.parts, apart.moves, strict=True
        ):
            shown = [(p, translate(s, *by)) for p, s in held]
            found.append(Moved(unit, tuple(shown if row is None else _opened(row, by, scale))))
        return found


def _opened(row: Apart, by: XY, scale: float) -> list[tuple[Patch, BaseGeometry]]:
    """Return a row's patches with its parts apart, about the middle of the row."""
    inner = row.at(INSIDE / scale)
    middle = tuple((min(axis) + max(axis)) / 2 for axis in zip(*inner.moves, strict=True))
    return [
        (patch, translate(shape, by[0] + dx - middle[0], by[1] + dy - middle[1]))
        for part, (dx, dy) in zip(inner.parts, inner.moves, strict=True)
        for patch, shape in part
    ]


def _numbered(frame: Canvas, part: Moved, number: int) -> None:
    """Set a row's number beyond its first end."""
    turn = part.unit.turn
    own = laid(part.shape, turn)
    left, top, _, bottom = own.bounds
    reach = frame.inches(NUMBER)
    far = Point(left - reach, (top + bottom) / 2)
    near = nearest_points(own, far)[0]
    share = reach / max(near.distance(far), 1e-9)
    x, y = near.x + (far.x - near.x) * share, near.y + (far.y - near.y) * share
    end = rotate(Point(x, y), turn, origin=(0, 0))
    disc(frame, (end.x, end.y), str(number))


def _setting_alt(say: Labels, size: Size, parts: Sequence[Unit]) -> str:
    rows = [
        say.text("figure-of-4", name=called(say, unit), value=_held(say, unit.parts or (unit,)))
        for unit in parts
        if unit.series == ROW
    ]
    corners = sum(u.patch is not None and u.patch.role == "setting" for u in parts)
    more = (
        say.text("figure-apart-3", corners=say.counted(corners, "corner triangle"))
        if corners
        else ""
    )
    how = say.text("figure-diagonal-rows") if size.on_point else "rows"
    return say.text(
        "figure-the-pulled-apart-into", title=size.title, how=how, rows="; ".join(rows), more=more
    )


def _held(say: Labels, parts: Sequence[Unit]) -> str:
    """Return what a row holds: `three blocks and two strips of sashing`."""
    kinds = ["block" if (role := p.patches[0].role) == "ground" else role for p in parts]
    named = ("block", "sashing", "cornerstone", "setting")
    return say.listed([say.counted(kinds.count(k), k) for k in named if k in kinds])


# --- rounds -----------------------------------------------------------------------------


def rounds(context: Context, spec: FigureSpec) -> Figure:
    """Draw a medallion's rounds pulled away from its centre, numbered from the inside.

    With `round`, counted from 1, only that round, round all that is inside it.
    """
    size = context.size(spec)
    if not size.rounds:
        raise CannotDrawError("this size has no rounds")
    only = int(spec.get("round", "0"))
    parts = _strips(context.draft(spec).assembly)
    if only:
        parts = _one_round(context.draft(spec).assembly, only)
    canvas, frame, moved = _laid_out(context, parts, ROUND_APART, inside=False)
    for part in moved:
        if part.unit.side == "top":
            left, top, _, bottom = part.shape.bounds
            frame.text(
                (left, (top + bottom) / 2),
                str(part.unit.layer),
                SMALL,
                "semibold",
                "end",
                "middle",
                INK,
                shift=(-3.0, 0.0),
            )
    return canvas.figure(spec, _rounds_alt(context, size, only))


def _strips(unit: Unit) -> list[Unit]:
    """Return the centre and then every side of every round, from the inside outwards."""
    held = next((p for p in unit.parts if _goes_on(p)), None)
    if held is None:
        centre = [p for p in unit.parts if not p.layer]
        return [*centre, *(p for p in unit.parts if p not in centre)]
    return [*_strips(held), *(p for p in unit.parts if p is not held)]


def _one_round(unit: Unit, number: int) -> list[Unit]:
    """Return the sides of one round, after all that is inside it as a single part."""
    sides = [p for p in unit.parts if p.side]
    inside = [p for p in unit.parts if p not in sides]
    level = max((p.layer for p in sides), default=0)
    if level < number or len(inside) != 1:
        return [unit]
    within = _one_round(inside[0], number)
    return [*within, *sides] if level == number else within


def _goes_on(unit: Unit) -> bool:
    """Return whether a unit is what is inside a round, with rounds of its own."""
    return bool(unit.layer) and not unit.side


def _rounds_alt(context: Context, size: Size, only: int) -> str:
    say = context.labels
    named = []
    for number, layer in enumerate(size.layers, 1):
        if only and number != only:
            continue
        if layer.border is not None:
            what = say.text(
                "figure-a-border-in", name=context.pattern.fabrics[layer.border.fabric].name
            )
        else:
            what = f"{say.counted(len(layer.blocks), 'block')}"
        named.append(
            say.text(
                "figure-to", number=number, what=what, width=say.spoken(layer.width, layer.height)
            )
        )
    if only:
        inner = say.spoken(size.layers[only - 1].inner_width, size.layers[only - 1].inner_height)
        return say.text("figure-exploded-rounds-alt", title=size.title, inner=inner, named=named[0])
    inner = say.spoken(size.inner_width, size.inner_height)
    return say.text(
        "figure-exploded-rounds-alt-2", title=size.title, inner=inner, named="; ".join(named)
    )
