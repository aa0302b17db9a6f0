"""What is pictured: one size's cloth, thread and edges, gathered from its draft.

In: pattern, size, draft. Out: `Subject`. Geometries in inches of the finished top.
Invariant: nothing is measured or placed here; every shape is the draft's own.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from math import atan2, degrees

import shapely
from shapely.affinity import rotate, translate
from shapely.geometry import MultiLineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from publish.arcs import outline
from publish.model.draft import Draft, Patch, Placement
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.render.edging import zigzag

ROUNDED = 0.22
"""Inches: how round the corners of a stuffed pillow come out. Common practice, no source."""


@dataclass(frozen=True)
class Cloth:
    """One piece of fabric that shows: its shape and the direction of its grain."""

    shape: BaseGeometry
    fabric: str
    grain: float
    """Degrees clockwise from upright."""


@dataclass(frozen=True)
class Applique:
    """A motif where it lies."""

    shape: MultiPolygon
    fabric: str
    method: str
    turn_under: float
    """Inches."""
    grain: float
    within: BaseGeometry
    """What lies inside the turned edge, where there is one layer."""


@dataclass(frozen=True)
class Stitching:
    """Quilting lines of one area, of which those in the ditch show no thread; or an edging."""

    lines: MultiLineString
    fabric: str
    """Whose colour the thread has: the fabric that most of the area is of."""
    hidden: bool
    even: bool = False
    """Whether its thread shows all along, as a zigzag's."""


@dataclass(frozen=True)
class Subject:
    """One size as it will look, before light falls on it."""

    key: str
    pillow: bool
    patches: tuple[Cloth, ...]
    motifs: tuple[Applique, ...]
    stitching: tuple[Stitching, ...]
    outline: Polygon
    """Of the finished top."""
    bound: Polygon
    """With the binding."""
    binding: str
    """Its fabric; empty for a pillow."""
    edge: float
    """Inches: how wide the binding shows."""
    borders: float = 0.0
    """Inches: how wide the borders are together, at the narrowest side."""
    seams: MultiLineString = field(default_factory=MultiLineString)
    edging: tuple[Stitching, ...] = ()
    """Thread over the raw edges of fused motifs."""

    @property
    def threads(self) -> tuple[Stitching, ...]:
        """Return all stitching that may show, quilting first."""
        return (*self.stitching, *self.edging)

    @property
    def width(self) -> float:
        return float(self.bound.bounds[2] - self.bound.bounds[0])

    @property
    def height(self) -> float:
        return float(self.bound.bounds[3] - self.bound.bounds[1])


def subject(pattern: Pattern, size: Size, draft: Draft) -> Subject:
    """Gather what shows of a size."""
    patches = tuple(_patch(p) for p in draft.patches)
    motifs = tuple(_motif(pattern, draft, p) for p in draft.placements)
    pillow = size.finish == "pillow"
    bound = size.binding if not pillow else None
    seam = float(pattern.sewing.seam) if bound is not None else 0.0
    edge = draft.edge_outline
    sewn = edge.buffer(-ROUNDED).buffer(ROUNDED, quad_segs=8) if pillow else edge
    inner = min(float(size.width - size.inner_width), float(size.height - size.inner_height)) / 2
    return Subject(
        key=size.key,
        pillow=pillow,
        patches=patches,
        motifs=motifs,
        stitching=tuple(_stitching(draft, patches, motifs)),
        outline=edge,
        bound=edge.buffer(seam, join_style="mitre") if seam else sewn,
        binding=bound.fabric if bound is not None else "",
        edge=seam,
        borders=inner,
        seams=_seams(patches, edge),
        edging=tuple(_edging(m) for m in motifs if m.method == "fusible"),
    )


def _patch(patch: Patch) -> Cloth:
    return Cloth(outline(patch.ring, patch.arcs), patch.fabric, _grain(patch))


def _grain(patch: Patch) -> float:
    """Return the grain's direction: along the longest edge of a strip or a triangle of the
    setting, else as the block lies."""
    if patch.role == "ground":
        return float(patch.turn)
    points = [(float(x), float(y)) for x, y in patch.ring]
    pairs = zip(points, [*points[1:], points[0]], strict=True)
    a, b = max(pairs, key=lambda e: (e[1][0] - e[0][0]) ** 2 + (e[1][1] - e[0][1]) ** 2)
    return degrees(atan2(b[1] - a[1], b[0] - a[0])) + 90


def _motif(pattern: Pattern, draft: Draft, place: Placement) -> Applique:
    motif = pattern.motifs[place.motif]
    whole = draft.motifs[place.motif].whole
    turned = rotate(whole, place.turn, origin=(0, 0)) if place.turn else whole
    shape = translate(turned, float(place.x), float(place.y))
    turn_under = float(motif.turn_under)
    within = shape.buffer(-0.8 * turn_under, quad_segs=4)
    return Applique(shape, motif.fabric, motif.method, turn_under, float(place.turn), within)


def _edging(motif: Applique) -> Stitching:
    return Stitching(zigzag(motif.shape), motif.fabric, False, even=True)


def _seams(patches: tuple[Cloth, ...], edge: Polygon) -> MultiLineString:
    """Return the seams inside the top, those that two patches share drawn once."""
    edges = shapely.union_all([p.shape.boundary for p in patches], grid_size=1e-4)
    inside = edges.difference(edge.boundary.buffer(0.01))
    lines = [g for g in shapely.get_parts(inside) if g.geom_type == "LineString" and g.length > 0]
    merged = shapely.line_merge(MultiLineString(lines))
    return MultiLineString([g for g in shapely.get_parts(merged) if not g.is_empty])


def _stitching(
    draft: Draft, patches: tuple[Cloth, ...], motifs: tuple[Applique, ...]
) -> list[Stitching]:
    found = []
    for lines in draft.quilting:
        if lines.area == "motif" and motifs:
            fabric = motifs[0].fabric
        else:
            fabric = _commonest(draft, lines.area, patches)
        found.append(Stitching(lines.lines, fabric, lines.style == "ditch"))
    return found


def _commonest(draft: Draft, area: str, patches: tuple[Cloth, ...]) -> str:
    """Return the fabric that most of an area is of."""
    shares: dict[str, float] = {}
    for patch, cloth in zip(draft.patches, patches, strict=True):
        if (patch.role == "border") == (area == "border"):
            shares[cloth.fabric] = shares.get(cloth.fabric, 0.0) + cloth.shape.area
    return max(shares, key=lambda key: shares[key]) if shares else patches[0].fabric
