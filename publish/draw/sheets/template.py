"""A motif's template as lines: what is printed, before it is split into sheets.

In: a `MotifShape` and the part wanted (`wedge` or `whole`).
Out: `Template`: finished line, cut line, fold edges, grain, openings.
Invariant: a wedge stands as every figure of the folded cloth shows it: the centre at the
bottom left, the multiple folds upright on the left, the single fold leaning to the right.
A mirrored wedge gives the same motif, since the motif is its own mirror image across
every fold.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field, replace

import shapely
from shapely import affinity
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import linemerge, polylabel, unary_union

from publish.model.draft import FoldEdge, MotifShape

ON_FOLD = 1e-4
"""Inches: an outline this near to a fold lies on it."""
UPRIGHT = -90.0
"""Degrees: where the multiple folds stand in every figure."""

XY = tuple[float, float]


@dataclass(frozen=True)
class Fold:
    """A fold edge of the template, `line` from the centre outwards.

    `contact` are the stretches, in inches from the centre, where cloth runs over the
    fold and nothing is cut.
    """

    kind: str
    grain: str
    angle: float
    line: LineString
    contact: tuple[tuple[float, float], ...]

    def at(self, distance: float) -> XY:
        """Return the point at a distance from the centre."""
        return polar(distance, self.angle)


@dataclass(frozen=True)
class Name:
    """Words that stand inside a shape of the template: the first line large, if it fits."""

    shape: Polygon
    lines: tuple[str, ...]


@dataclass(frozen=True)
class Template:
    """The lines of one template, in inches with the motif's centre at the origin.

    `turn` (degrees clockwise) after `mirrored` (left for right) takes the motif's own
    coordinates to these; `grain` is the angle of the straight grain; `body` is the
    finished shape and `cut_body` the shape with its turn-under; `guides` are the centre
    lines of a template that is not laid on folds. `ticks` are notches, and `names` what
    stands inside the patches of a foundation or on a piece.
    """

    part: str
    body: MultiPolygon
    cut_body: MultiPolygon
    finished: MultiLineString
    cut: MultiLineString
    folds: tuple[Fold, ...]
    guides: MultiLineString
    openings: tuple[XY, ...]
    grain: float
    turn: float
    mirrored: bool
    ticks: MultiLineString = field(default_factory=MultiLineString)
    names: tuple[Name, ...] = ()
    half: LineString = field(default_factory=LineString)
    """Of a template that is printed as its half: the line on which paper is folded."""

    @property
    def cover(self) -> BaseGeometry:
        """Return everything that the sheets must hold."""
        return unary_union([self.body, self.cut_body, self.half, *(f.line for f in self.folds)])

    @property
    def lines(self) -> BaseGeometry:
        folds = [f.line for f in self.folds]
        ticks = [] if self.ticks.is_empty else [self.ticks]
        return unary_union([self.finished, self.cut, self.guides, self.half, *folds, *ticks])

    @property
    def of_motif(self) -> bool:
        """Return whether it is a motif's, and not a pieced patch's or a foundation's."""
        return self.part in ("wedge", "whole")

    def turned(self, degrees: float) -> Template:
        """Return the template turned clockwise about the centre."""
        if not degrees:
            return self

        def spin(shape: BaseGeometry) -> BaseGeometry:
            return affinity.rotate(shape, degrees, origin=(0, 0))

        return replace(
            self,
            body=spin(self.body),
            cut_body=spin(self.cut_body),
            finished=spin(self.finished),
            cut=spin(self.cut),
            folds=tuple(replace(f, line=spin(f.line), angle=f.angle + degrees) for f in self.folds),
            guides=spin(self.guides),
            openings=tuple(_spun(p, degrees) for p in self.openings),
            grain=self.grain + degrees,
            turn=self.turn + degrees,
            ticks=spin(self.ticks),
            names=tuple(replace(n, shape=spin(n.shape)) for n in self.names),
            half=spin(self.half),
        )


def polar(distance: float, degrees: float) -> XY:
    """Return the point at a distance from the origin, the angle clockwise on the page."""
    angle = math.radians(degrees)
    return distance * math.cos(angle), distance * math.sin(angle)


def template_of(motif: MotifShape, part: str = "wedge") -> Template:
    """Return the template of a motif; a motif without fold edges has only the whole."""
    if part == "whole" or motif.edges is None:
        return _whole(motif)
    return _wedge(motif, motif.edges)


def straight_grain(edges: Iterable[FoldEdge]) -> float:
    """Return the angle of the straight grain; along the x axis when no edge has it."""
    return next((e.angle for e in edges if e.grain == "straight"), 0.0)


def standing(edges: tuple[FoldEdge, FoldEdge]) -> tuple[float, bool]:
    """Return the turn that stands a wedge up, and whether it is mirrored first."""
    multiple, single = _ordered(edges)
    opening = (single.angle - multiple.angle + 180) % 360 - 180
    if opening >= 0:
        return _short(UPRIGHT - multiple.angle), False
    return _short(UPRIGHT - (180 - multiple.angle)), True


def stood(shape: BaseGeometry, turn: float, mirrored: bool) -> BaseGeometry:
    """Return a shape in the motif's coordinates as the template shows it."""
    if mirrored:
        shape = affinity.scale(shape, -1, 1, origin=(0, 0))
    return affinity.rotate(shape, turn, origin=(0, 0)) if turn else shape


def _short(degrees: float) -> float:
    return (degrees + 180) % 360 - 180


def _ordered(edges: tuple[FoldEdge, FoldEdge]) -> tuple[FoldEdge, FoldEdge]:
    """Return the multiple folds first, then the single fold."""
    first, second = edges
    return (first, second) if first.kind == "multiple" else (second, first)


def _wedge(motif: MotifShape, edges: tuple[FoldEdge, FoldEdge]) -> Template:
    turn, mirrored = standing(edges)
    body = stood(motif.wedge, turn, mirrored)
    cut_body = stood(motif.wedge_cut_line, turn, mirrored)
    multiple, single = _ordered(edges)
    opening = abs((single.angle - multiple.angle + 180) % 360 - 180)
    folds = (
        _fold(multiple, UPRIGHT, unary_union([body, cut_body])),
        _fold(single, UPRIGHT + opening, unary_union([body, cut_body])),
    )
    rays = [f.line for f in folds]
    finished = open_outline(body, rays)
    raw = motif.wedge.equals(motif.wedge_cut_line)
    grain = straight_grain(edges)
    return Template(
        part="wedge",
        body=body,
        cut_body=cut_body,
        finished=finished,
        cut=MultiLineString() if raw else open_outline(cut_body, rays),
        folds=folds,
        guides=MultiLineString(),
        openings=_openings(cut_body),
        grain=_short((180 - grain if mirrored else grain) + turn),
        turn=turn,
        mirrored=mirrored,
    )


def _whole(motif: MotifShape) -> Template:
    raw = motif.whole.equals(motif.cut_line)
    return Template(
        part="whole",
        body=motif.whole,
        cut_body=motif.cut_line,
        finished=open_outline(motif.whole, []),
        cut=MultiLineString() if raw else open_outline(motif.cut_line, []),
        folds=(),
        guides=_centre_lines(motif.cut_line),
        openings=_openings(motif.cut_line),
        grain=straight_grain(motif.edges or ()),
        turn=0.0,
        mirrored=False,
    )


def _centre_lines(shape: MultiPolygon) -> MultiLineString:
    """Return the level and the upright line through the centre, as long as the motif."""
    left, top, right, bottom = shape.bounds
    return MultiLineString([[(left, 0), (right, 0)], [(0, top), (0, bottom)]])


def _fold(edge: FoldEdge, angle: float, shape: BaseGeometry) -> Fold:
    """Return a fold edge, long enough for everything that lies along it."""
    far = math.hypot(*(max(abs(a), abs(b)) for a, b in _pairs(shape.bounds))) + 1
    along = shape.intersection(LineString([(0, 0), polar(far, angle)]).buffer(ON_FOLD))
    ends = [Point(0, 0).hausdorff_distance(along)] if not along.is_empty else []
    reach = max([*ends, *(end for _, end in edge.contact)], default=far - 1)
    line = LineString([(0, 0), polar(reach, angle)])
    return Fold(edge.kind, edge.grain, angle, line, edge.contact)


def _pairs(bounds: tuple[float, float, float, float]) -> tuple[XY, XY]:
    left, top, right, bottom = bounds
    return (left, right), (top, bottom)


def open_outline(shape: MultiPolygon, folds: list[LineString]) -> MultiLineString:
    """Return the outline without the stretches that lie on a fold."""
    parts: list[LineString] = []
    for ring in rings(shape):
        corners = list(ring.coords)
        dots = shapely.points(corners)
        near = [shapely.distance(dots, fold) < ON_FOLD for fold in folds]
        held = [any(n[i] and n[i + 1] for n in near) for i in range(len(corners) - 1)]
        if not any(held):
            parts.append(LineString(corners))
            continue
        free = [LineString(corners[i : i + 2]) for i, on in enumerate(held) if not on]
        if free:
            merged = linemerge(free)
            parts += getattr(merged, "geoms", [merged])
    return MultiLineString(parts)


def rings(shape: BaseGeometry) -> list[LineString]:
    """Return every ring of a polygon or of several."""
    polygons: list[Polygon] = list(getattr(shape, "geoms", [shape]))
    return [ring for p in polygons for ring in (p.exterior, *p.interiors)]


def _openings(cut_body: MultiPolygon) -> tuple[XY, ...]:
    """Return a point inside each hole that is large enough to be lettered."""
    found = []
    for polygon in cut_body.geoms:
        for ring in polygon.interiors:
            point = polylabel(Polygon(ring), 0.02)
            if point.distance(ring) > 0.12:
                found.append((point.x, point.y))
    return tuple(sorted(found))


def _spun(point: XY, degrees: float) -> XY:
    distance = math.hypot(*point)
    return polar(distance, math.degrees(math.atan2(point[1], point[0])) + degrees)
