"""Templates of pieced patches and of foundations, as lines to be printed at full size.

In: a `PieceTemplate` or a `FoundationSection`. Out: `Template`.
Invariant: a foundation is printed as its mirror image, left for right, because the fabric
lies on the side of the paper that is not printed; a piece is printed as it is cut, right
side up.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from typing import TypeVar

from shapely.affinity import scale
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import linemerge

from publish.draw.canvas.letters import Labels
from publish.draw.canvas.shapes import XY, polygon_of
from publish.draw.sheets.template import ON_FOLD, Name, Template
from publish.model.cutplan import PieceTemplate
from publish.model.draft import FoundationSection
from publish.model.halves import beside
from publish.model.pattern import Pattern

T = TypeVar("T", bound=BaseGeometry)
TICK = 0.125
"""Inches: half the length of a notch, which crosses the finished line."""


def piece_template(pattern: Pattern, piece: PieceTemplate, shared: bool = False) -> Template:
    """Return a pieced patch's template, with its letter, its fabric and its notches, and how
    often it is cut, where sizes that share it may not differ in that."""
    say = Labels(pattern.words)
    lines: tuple[str, ...] = (piece.letter, pattern.fabrics[piece.fabric].name)
    if not shared:
        lines += (say.text("figure-cut-2", count=piece.count),)
        lines += (
            (say.text("figure-and-turned-over", mirrored=piece.mirrored),) if piece.mirrored else ()
        )
    return Template(
        part="piece",
        body=MultiPolygon([piece.finished]),
        cut_body=MultiPolygon([piece.cut]),
        finished=MultiLineString([piece.finished.exterior.coords]),
        cut=MultiLineString([piece.cut.exterior.coords]),
        folds=(),
        guides=MultiLineString(),
        openings=(),
        grain=piece.grain - 90.0,
        turn=0.0,
        mirrored=False,
        ticks=MultiLineString([_notch(piece.finished, piece.cut, at) for at in piece.notches]),
        names=(Name(piece.finished, lines),),
    )


def halved(template: Template, fold: tuple[XY, XY]) -> Template:
    """Return the half of a piece's template that lies beside its fold."""
    near = beside(fold)
    cut_body = template.cut_body.intersection(near)
    axis = LineString(fold).intersection(cut_body.buffer(ON_FOLD))
    # The two straight ends of the outline that the fold takes away must not be printed.
    off = axis.buffer(ON_FOLD)

    def part(shape: BaseGeometry) -> BaseGeometry:
        return shape.intersection(near).difference(off)

    return replace(
        template,
        body=_many(template.body.intersection(near)),
        cut_body=_many(cut_body),
        finished=_lines(part(template.finished)),
        cut=_lines(part(template.cut)),
        ticks=_lines(part(template.ticks)),
        names=tuple(replace(n, shape=_largest(n.shape.intersection(near))) for n in template.names),
        half=max(_lines(axis).geoms, key=lambda g: float(g.length)),
    )


def _many(shape: BaseGeometry) -> MultiPolygon:
    return MultiPolygon([g for g in getattr(shape, "geoms", [shape]) if g.area > 0])


def _lines(shape: BaseGeometry) -> MultiLineString:
    parts = getattr(shape, "geoms", [shape])
    merged = linemerge([g for g in parts if g.geom_type == "LineString" and g.length > 0])
    return MultiLineString(list(getattr(merged, "geoms", [merged])))


def _largest(shape: BaseGeometry) -> Polygon:
    return max(_many(shape).geoms, key=lambda g: float(g.area))


def _notch(finished: Polygon, cut: Polygon, at: XY) -> LineString:
    """Return a short line square to the finished line, from it out to the cut line."""
    ring = finished.exterior
    where = ring.project(Point(at))
    a, b = (ring.interpolate((where + step) % ring.length) for step in (-0.02, 0.02))
    run = math.hypot(b.x - a.x, b.y - a.y) or 1.0
    nx, ny = (b.y - a.y) / run, (a.x - b.x) / run
    if finished.contains(Point(at[0] + nx * TICK, at[1] + ny * TICK)):
        nx, ny = -nx, -ny
    out = cut.exterior.distance(Point(at))
    return LineString(
        [(at[0] - nx * TICK, at[1] - ny * TICK), (at[0] + nx * out, at[1] + ny * out)]
    )


def foundation_template(pattern: Pattern, section: FoundationSection) -> Template:
    """Return a section's printed foundation: its mirror image, numbered in sewing order."""
    ring = Polygon([_floats(p) for p in section.ring])
    seam = float(pattern.sewing.seam)
    lines = [LineString([_floats(a), _floats(b)]) for a, b in section.seams]
    printed = _over(ring)
    names = tuple(
        Name(
            _over(polygon_of(patch)),
            (f"{section.letter}{number}", pattern.fabrics[patch.fabric].name),
        )
        for number, patch in enumerate(section.patches, 1)
    )
    grown = _over(ring.buffer(seam, join_style="mitre"))
    return Template(
        part="foundation",
        body=MultiPolygon([printed]),
        cut_body=MultiPolygon([grown]),
        finished=MultiLineString([printed.exterior, *(_over(line) for line in lines)]),
        cut=MultiLineString([grown.exterior.coords]),
        folds=(),
        guides=MultiLineString(),
        openings=(),
        grain=-90.0,
        turn=0.0,
        mirrored=True,
        names=names,
    )


def _over(shape: T) -> T:
    """Return a shape as the printed side of the paper shows it."""
    turned: T = scale(shape, -1, 1, origin=(0, 0))
    return turned


def _floats(point: Sequence[object]) -> XY:
    return float(point[0]), float(point[1])  # type: ignore[arg-type]
