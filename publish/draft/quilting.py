"""Quilting lines of each area, clipped to it.

In: a size, its patches, the motifs where they lie. Out: `QuiltingLines`, with their total
length in inches, and notes.
Invariant: no line leaves its area; echo lines are true offsets, everywhere a multiple of
the spacing from the nearest motif, neighbouring blocks' motifs included.

Areas: `border` is every border, `motif` the appliqué, `ground` all the rest: blocks, those
of rounds among them, sashing and setting triangles. Styles:
- ditch: along the motif's edge; along the seams of the ground; along the border's seams.
- echo: round the motif outwards until the ground is full, inside the motif inwards, in
  borders round and round from the inner seam.
- parallel: lines at `angle` degrees from the horizontal, one through the area's middle; in
  borders from each side's own direction, so that 0 follows the border and 90 crosses it.
- grid: two sets of parallel lines at 45 degrees either way, turned by `angle`.
- as desired: no lines.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

import shapely
from shapely.affinity import rotate, translate
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Polygon, box
from shapely.geometry.base import BaseGeometry

from publish.arcs import outline
from publish.draft.fill import polygons
from publish.draft.homes import Box, layer_boxes, rectangle
from publish.draft.limits import CHORD, MAX_LINES
from publish.draft.offset import DENSE, offset
from publish.draft.repeat import Repeat
from publish.draft.unfold import ray
from publish.model.draft import Patch, Placement, QuiltingLines
from publish.model.pattern import Pattern, QuiltingSpec
from publish.model.size import Size
from publish.notes import Note, Place, error, warning

CLOSEST = Fraction(1, 16)
"""Inches between lines. Closer is thread painting, not quilting. Common practice."""

SHORTEST = 0.1
"""Inches: a shorter line is less than a stitch or two and is left out. Common practice."""

_GRID = 1e-6
"""Inches: seams that two patches draw apart by rounding are drawn once."""

_SPACED = ("echo", "parallel", "grid")


@dataclass(frozen=True)
class Top:
    """The areas of one top that can be quilted."""

    size: Size
    wholes: Mapping[str, MultiPolygon]
    placements: tuple[Placement, ...]
    patches: tuple[Patch, ...]
    repeats: Mapping[str, Repeat] = field(default_factory=dict)
    """How each of the motifs repeats that came of a folded wedge."""

    @property
    def frames(self) -> list[tuple[Box, Box]]:
        """Return the box inside and the box round borders that follow each other."""
        found: list[tuple[Box, Box]] = []
        for layer, inner, outer in layer_boxes(self.size):
            if layer.border is None:
                continue
            if found and found[-1][1] == inner:
                inner = found.pop()[0]
            found.append((inner, outer))
        return found

    @property
    def frame(self) -> BaseGeometry:
        """Return the area of all borders."""
        return shapely.union_all(
            [_box(outer).difference(_box(inner)) for inner, outer in self.frames]
        )

    @property
    def whole(self) -> Polygon:
        return box(0, 0, float(self.size.width), float(self.size.height))

    @property
    def inside(self) -> BaseGeometry:
        """Return the area of everything but the borders."""
        return self.whole.difference(self.frame)

    def placed(self, wholes: Mapping[str, BaseGeometry]) -> BaseGeometry:
        """Return one geometry of each motif's at every place of that motif, together."""
        return shapely.union_all(
            [_at(wholes[p.motif], p) for p in self.placements if p.motif in wholes]
        )

    def offset(
        self, key: str, shape: BaseGeometry, distance: float, tolerance: float = CHORD
    ) -> BaseGeometry:
        """Return an offset of a motif, or of another offset of it."""
        repeat = self.repeats.get(key)
        if repeat is None:
            return offset(shape, distance, tolerance)
        return repeat.offset(shape, distance, tolerance)


def _at(shape: BaseGeometry, place: Placement) -> BaseGeometry:
    """Return a motif's geometry turned with its block and moved to its place."""
    turned = rotate(shape, place.turn, origin=(0, 0)) if place.turn else shape
    return translate(turned, float(place.x), float(place.y))


def _box(sides: Box) -> Polygon:
    return box(*(float(v) for v in sides))


def quilt(pattern: Pattern, top: Top) -> tuple[tuple[QuiltingLines, ...], tuple[Note, ...]]:
    """Return the lines of every area that the size has and the pattern quilts."""
    own = f"sizes.{top.size.key}.quilting" in pattern.places
    where = ("sizes", top.size.key, "quilting") if own else ("quilting",)
    found: list[QuiltingLines] = []
    notes: list[Note] = []
    motifs = top.placed(top.wholes)
    areas = {"motif": motifs, "ground": top.inside.difference(motifs), "border": top.frame}
    for number, spec in enumerate(top.size.quilting):
        place = pattern.place(*where, number)
        area = areas[spec.area]
        if area.is_empty:
            continue
        wrong = _unsound(pattern, spec, area, place)
        if wrong is not None:
            notes.append(wrong)
            continue
        lines = _as_lines(_lines(spec, top, area))
        if lines.is_empty and spec.style != "as desired":
            notes.append(_nowhere(spec, top, place))
            continue
        found.append(QuiltingLines(spec.area, spec.style, spec.spacing, lines, lines.length))
    return tuple(found), tuple(notes)


def _unsound(pattern: Pattern, spec: QuiltingSpec, area: BaseGeometry, place: Place) -> Note | None:
    """Return what keeps lines from being drawn."""
    if spec.style not in _SPACED:
        return None
    if spec.spacing is None:
        return error(
            "D350",
            place,
            f"{spec.style} quilting needs a spacing",
            expected="a length such as 1/2 in",
            help="add `spacing`",
        )
    left, top, right, bottom = area.bounds
    count = math.hypot(right - left, bottom - top) / float(max(spec.spacing, Fraction(1, 1000)))
    if spec.spacing < CLOSEST or count > MAX_LINES:
        return error(
            "D350",
            place,
            "quilting lines are too close together",
            expected=f"at least {pattern.measures.text(CLOSEST)} apart",
            received=pattern.measures.text(spec.spacing),
            help="widen `spacing`",
        )
    return None


def _nowhere(spec: QuiltingSpec, top: Top, place: Place) -> Note:
    """Return a warning that a style has no line in its area, with what would have one."""
    if spec.style == "ditch":
        expected, help_ = f"a {spec.area} with seams", "write `style: grid` with a `spacing`"
    elif spec.style == "echo" and spec.area == "ground" and not top.placements:
        expected, help_ = "a motif for the lines to echo", "write `style: grid` or `style: ditch`"
    else:
        expected = f"a spacing smaller than the {spec.area} is wide"
        help_ = "write a smaller `spacing`, or `style: ditch`"
    return warning(
        "D351",
        place,
        f"no line of the quilting falls into the {spec.area}",
        expected=expected,
        received=spec.style,
        help=help_,
    )


def _lines(spec: QuiltingSpec, top: Top, area: BaseGeometry) -> BaseGeometry:
    """Return the lines of one area before they are tidied."""
    gap = float(spec.spacing or 0)
    if spec.style == "as desired":
        return MultiLineString()
    if spec.style == "ditch":
        return area.boundary if spec.area == "motif" else _seams(top, spec.area, area)
    if spec.style == "grid":
        return shapely.union_all(
            [MultiLineString(_rows(area, gap, turn + spec.angle)) for turn in (45, 135)]
        )
    if spec.area == "border":
        return _round(top, gap, spec.angle if spec.style == "parallel" else 0)
    if spec.style == "parallel":
        return MultiLineString(_rows(area, gap, spec.angle))
    return _inwards(top, gap) if spec.area == "motif" else _echoes(top, area, gap)


def _echoes(top: Top, ground: BaseGeometry, gap: float) -> BaseGeometry:
    """Return offsets of all motifs together at multiples of the gap, until nothing of the
    ground is left outside them."""
    found: list[BaseGeometry] = []
    base, done = dict(top.wholes), 0.0
    if any(shapely.count_coordinates(w) > DENSE for w in base.values()):
        base, done = {k: top.offset(k, w, gap, CHORD / 4) for k, w in base.items()}, gap
    distance, left = gap, ground
    while top.placements and not left.is_empty:
        reached = top.placed({k: top.offset(k, w, distance - done) for k, w in base.items()})
        found.append(reached.boundary.intersection(top.inside))
        left = polygons(ground.difference(reached))
        distance += gap
    return shapely.geometrycollections(found)


def _inwards(top: Top, gap: float) -> BaseGeometry:
    """Return offsets inside each motif."""
    rings: dict[str, list[LineString]] = {}
    for key, whole in top.wholes.items():
        rings[key] = []
        distance = gap
        while not (left := top.offset(key, whole, -distance)).is_empty:
            rings[key] += _as_lines(left.boundary).geoms
            distance += gap
    return shapely.geometrycollections(
        [_at(MultiLineString(rings[p.motif]), p) for p in top.placements]
    )


def _seams(top: Top, area: str, region: BaseGeometry) -> BaseGeometry:
    """Return the seams inside an area; a border's seam with its neighbours is the border's."""
    border = area == "border"
    patches = [p for p in top.patches if (p.role == "border") == border]
    edges = shapely.union_all([shape.boundary for shape in _outlines(patches)], grid_size=_GRID)
    if border:
        return edges.difference(top.whole.boundary)
    inside = edges.difference(top.inside.boundary.buffer(_GRID)).intersection(region)
    return shapely.line_merge(inside)  # the pieces of a curve are no lines of their own


def _round(top: Top, gap: float, angle: float) -> BaseGeometry:
    """Return the lines of the borders, side by side, mitred where the sides meet."""
    found: list[BaseGeometry] = []
    for inside, outside in top.frames:
        inner, outer = ([(float(x), float(y)) for x, y in rectangle(b)] for b in (inside, outside))
        seams = _box(outside).difference(_box(inside)).boundary.buffer(1e-9)
        for i in range(4):
            k = (i + 1) % 4
            side = Polygon([outer[i], outer[k], inner[k], inner[i]])
            anchor = ((inner[i][0] + inner[k][0]) / 2, (inner[i][1] + inner[k][1]) / 2)
            lines = _rows(side, gap, angle + 90 * i, anchor)
            if angle % 180 == 0:
                lines = [line for line in lines if not seams.covers(line)]
            found += lines
    return shapely.line_merge(MultiLineString(found))


def _rows(
    area: BaseGeometry, gap: float, angle: float, anchor: tuple[float, float] | None = None
) -> list[LineString]:
    """Return parallel lines clipped to an area, one of them through the anchor."""
    left, top, right, bottom = area.bounds
    x, y = anchor or ((left + right) / 2, (top + bottom) / 2)
    reach = 2 * math.hypot(right - left, bottom - top)
    (along_x, along_y), (off_x, off_y) = ray(angle), ray(angle + 90)
    count = math.ceil(reach / gap)
    rows = [
        LineString(
            [
                (x + k * gap * off_x - reach * along_x, y + k * gap * off_y - reach * along_y),
                (x + k * gap * off_x + reach * along_x, y + k * gap * off_y + reach * along_y),
            ]
        )
        for k in range(-count, count + 1)
    ]
    return [*_as_lines(shapely.intersection(rows, area)).geoms]


def _as_lines(geometry: object) -> MultiLineString:
    """Return the lines of a geometry or of several, without points and areas."""
    found: list[LineString] = []
    for part in shapely.get_parts(shapely.get_parts(geometry)):
        if part.geom_type in ("LineString", "LinearRing") and part.length >= SHORTEST:
            found.append(LineString(part.coords))
        elif part.geom_type in ("MultiLineString", "GeometryCollection"):
            found += _as_lines(part).geoms
    return MultiLineString(found)


def _outlines(patches: Iterable[Patch]) -> list[Polygon]:
    return [outline(p.ring, p.arcs) for p in patches]
