"""The quilt top, painted the same way wherever a figure shows it.

In: a frame in inches of the top, the context, a size. Out: patches, appliqué, quilting
and binding recorded on the frame.
Invariant: every patch and every placed motif of the draft is drawn once, in the draft's
order, in its own fabric's colour.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from shapely.affinity import rotate, translate
from shapely.geometry import MultiLineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.shapes import polygon_of
from publish.draw.canvas.style import INK, PAPER, Stroke, edge_of, mix, readable_on
from publish.draw.context import Context
from publish.model.draft import Draft, Patch, Placement

CRISP = 0.25
"""Points: the fine edge round appliqué."""


def fit(width: Fraction | float, height: Fraction | float, room: tuple[float, float]) -> float:
    """Return the scale that fits a width and height into a room, printed inches per inch."""
    return min(room[0] / float(width), room[1] / float(height))


def placed(draft: Draft, place: Placement) -> MultiPolygon:
    """Return a motif where it lies on the top."""
    whole = draft.motifs[place.motif].whole
    if place.turn:
        whole = rotate(whole, place.turn, origin=(0, 0))
    return translate(whole, float(place.x), float(place.y))


def paint_patches(
    frame: Canvas, context: Context, patches: Iterable[Patch], pale: float = 0.0
) -> None:
    """Draw patches with their seams; `pale` (0 to 1) fades them toward the page."""
    for patch in patches:
        colour = mix(context.colour(patch.fabric), PAPER, pale)
        frame.shape(polygon_of(patch), colour, Stroke(mix(colour, INK, 0.38), 0.35))


def paint_motifs(
    frame: Canvas, context: Context, draft: Draft, places: Iterable[Placement], pale: float = 0.0
) -> None:
    """Draw motifs where they lie, with a crisp fine edge."""
    for place in places:
        fabric = context.pattern.motifs[place.motif].fabric
        colour = mix(context.colour(fabric), PAPER, pale)
        frame.shape(placed(draft, place), colour, Stroke(edge_of(colour), CRISP))


def paint_top(
    frame: Canvas,
    context: Context,
    key: str,
    quilting: bool = False,
    finished: bool = True,
    pale: float = 0.0,
) -> None:
    """Draw a size's whole top; `finished` adds the binding (or a pillow's edge)."""
    draft = context.drafts[key]
    if finished:
        paint_binding(frame, context, key)
    paint_patches(frame, context, draft.patches, pale)
    paint_motifs(frame, context, draft, draft.placements, pale)
    if quilting:
        paint_quilting(frame, context, draft)
    if finished:
        frame.shape(draft.edge_outline, None, Stroke(INK, 0.45))


def paint_binding(frame: Canvas, context: Context, key: str) -> None:
    """Draw the binding: it covers the seam allowance outside the finished top."""
    binding = context.sizes[key].binding
    if context.sizes[key].finish == "pillow" or binding is None:
        return
    colour = context.colour(binding.fabric)
    outline = context.drafts[key].edge_outline
    seam = float(context.pattern.sewing.seam)
    frame.shape(outline.buffer(seam, join_style="mitre"), colour, Stroke(edge_of(colour), 0.45))


def paint_quilting(frame: Canvas, context: Context, draft: Draft) -> None:
    """Draw the quilting faintly: each line a shade away from the fabric beneath it.

    Lines in the ditch lie hidden beside the appliqué and are left out.
    """
    cover = unary_union([placed(draft, p) for p in draft.placements]) if draft.placements else None
    for fabric, region in _regions(context, draft, cover).items():
        colour = context.colour(fabric)
        shade = mix(colour, readable_on(colour), 0.28)
        shown = (q for q in draft.quilting if q.style != "ditch")
        lines = [part for q in shown for part in _clip(q.lines, region)]
        if lines:
            frame.lines(MultiLineString(lines), Stroke(shade, 0.3))


def _regions(context: Context, draft: Draft, cover: BaseGeometry | None) -> dict[str, BaseGeometry]:
    """Return what shows of each fabric on the top."""
    grouped: dict[str, list[Polygon]] = {}
    for patch in draft.patches:
        grouped.setdefault(patch.fabric, []).append(polygon_of(patch))
    regions = {fabric: unary_union(polygons) for fabric, polygons in grouped.items()}
    if cover is not None:
        regions = {fabric: region.difference(cover) for fabric, region in regions.items()}
        for place in draft.placements:
            fabric = context.pattern.motifs[place.motif].fabric
            here = placed(draft, place)
            regions[fabric] = regions[fabric].union(here) if fabric in regions else here
    return regions


def _clip(lines: MultiLineString, region: BaseGeometry) -> list[BaseGeometry]:
    cut = lines.intersection(region)
    parts = getattr(cut, "geoms", [cut])
    return [p for p in parts if p.geom_type == "LineString" and not p.is_empty]
