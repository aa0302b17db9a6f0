"""Shapes as areas of cloth.

In: the shapes of a drawing, a tolerance in its units. Out: one valid `MultiPolygon`.
Invariant: what is cloth is what SVG would paint: fill rules decide holes and overlaps,
strokes without fill count with their width; curves are within the tolerance.

The work is bounded before it is begun: points are counted as they are made, and crossings
before outlines are cut at them.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import shapely
from shapely.geometry import LinearRing, LineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.validation import explain_validity

from publish.draft.curves import Points, quadrants
from publish.draft.drawing import Drawing
from publish.draft.limits import MAX_COORDINATE, MAX_CROSSINGS, MAX_NEAR, MAX_POINTS
from publish.draft.shapes import DrawingError, apply
from publish.draft.twice import drawn_twice
from publish.draft.walk import Shape
from publish.notes import Note, Place, error, warning

_CAPS = {"butt": "flat", "round": "round", "square": "square"}


class _LimitError(Exception):
    """A limit was met; the message says which."""


def cloth(drawing: Drawing, tolerance: float) -> tuple[MultiPolygon, tuple[Note, ...]]:
    """Return the area that a drawing paints, empty when that cannot be worked out."""
    areas: list[BaseGeometry] = []
    notes: list[Note] = []
    place = drawing.place
    outlines: list[tuple[Points, Place]] = []
    points = 0
    try:
        for shape in drawing.shapes:
            place = shape.place
            rings = _flatten(shape, tolerance)
            points += sum(len(r) for r, _ in rings)
            if points > MAX_POINTS:
                raise _LimitError(f"the outlines have more than {MAX_POINTS} points")
            if shape.stroke:
                areas.append(_stroked(shape, rings, tolerance))
            else:
                notes += _crossed(rings, shape.place)
                outlines += [(r, shape.place) for r, _ in rings if len(r) > 2]
                areas.append(painted([r for r, _ in rings], shape.style.rule))
        place = drawing.place
        _check_crossings([np.asarray(r.coords)[:-1] for area in areas for r in _rings(area)])
    except (_LimitError, DrawingError) as limit:
        mend = "simplify the drawing: draw fewer points, or save only the motif"
        return MultiPolygon(), (*notes, error("D302", place, str(limit), help=mend))
    notes += drawn_twice(outlines)
    whole = polygons(shapely.union_all(areas))
    if whole.is_empty:
        notes.append(
            error(
                "D310",
                drawing.place,
                "the drawing encloses no cloth",
                help="draw a closed, filled shape",
            )
        )
    return whole, tuple(notes)


def polygons(geometry: BaseGeometry) -> MultiPolygon:
    """Return the areas of a geometry, without the lines and points that may be in it."""
    parts = shapely.get_parts(geometry, return_index=False)
    found: list[Polygon] = []
    for part in parts:
        if isinstance(part, Polygon) and not part.is_empty:
            found.append(part)
        elif isinstance(part, MultiPolygon):
            found += part.geoms
    return MultiPolygon(found)


def _rings(area: BaseGeometry) -> list[LinearRing]:
    return [ring for p in polygons(area).geoms for ring in (p.exterior, *p.interiors)]


def painted(rings: list[Points], rule: str) -> BaseGeometry:
    """Return the area inside closed rings by a fill rule: `nonzero` or `evenodd`."""
    rings = [r for r in (_tidy(ring) for ring in rings) if len(r) >= 3]
    if not rings:
        return MultiPolygon()
    if len(rings) == 1:
        simple = Polygon(rings[0])
        if simple.is_valid:
            return simple
    _check_crossings(rings)
    lines = shapely.union_all([LinearRing(r) for r in rings])
    faces = shapely.get_parts(shapely.polygonize(shapely.get_parts(lines)))
    if not len(faces):
        return MultiPolygon()
    turns = _windings(shapely.get_coordinates(shapely.point_on_surface(faces)), rings)
    inside = turns % 2 != 0 if rule == "evenodd" else turns != 0
    return shapely.union_all(faces[inside])


def _flatten(shape: Shape, tolerance: float) -> list[tuple[Points, bool]]:
    """Return each subpath's points and whether it is closed.

    Filled shapes come in the drawing's coordinates; stroked ones in their own, where
    their stroke is a stroke, with the tolerance shrunk to match.
    """
    if shape.stroke:
        stretch = float(np.linalg.norm(shape.matrix[:2, :2], 2))
        made = [(p.flat(tolerance / max(stretch, 1e-12)), p.closed) for p in shape.subpaths]
        far = max(float(np.abs(apply(shape.matrix, r)).max()) for r, _ in made)
    else:
        made = [(p.moved(shape.matrix).flat(tolerance), p.closed) for p in shape.subpaths]
        far = max(float(np.abs(r).max()) for r, _ in made)
    if not far <= MAX_COORDINATE:
        raise _LimitError(f"a point lies more than {MAX_COORDINATE:.0f} units from the origin")
    return made


def _tidy(ring: Points) -> Points:
    return ring[:-1] if len(ring) > 1 and (ring[0] == ring[-1]).all() else ring


def _stroked(shape: Shape, rings: list[tuple[Points, bool]], tolerance: float) -> BaseGeometry:
    """Return the outline of strokes, worked out where they are drawn and then placed."""
    stretch = float(np.linalg.norm(shape.matrix[:2, :2], 2))
    half, style = shape.stroke / 2, shape.style
    lines = [
        (_tidy(r), True) if c and len(_tidy(r)) >= 3 else (r, False)
        for r, c in rings
        if len(r) >= 2
    ]
    _check_crossings([r for r, _ in lines], closed=False, reach=half)
    parts: list[BaseGeometry] = [
        (LinearRing(r) if closed else LineString(r)).buffer(
            half,
            quad_segs=quadrants(half * stretch, tolerance),
            cap_style=_CAPS.get(style.cap, "flat"),
            join_style="round" if style.join == "round" else "bevel",
        )
        for r, closed in lines
    ]
    if style.join not in ("round", "bevel"):
        parts += [m for r, closed in lines for m in _mitres(r, closed, half, float(style.limit))]
    m = shape.matrix
    moved = shapely.affinity.affine_transform(
        shapely.union_all(parts), [m[0, 0], m[0, 1], m[1, 0], m[1, 1], m[0, 2], m[1, 2]]
    )
    return shapely.make_valid(moved)


def _mitres(line: Points, closed: bool, half: float, limit: float) -> list[Polygon]:
    """Return the points of mitred joins, where the limit lets them be: the mitre's length
    is to the stroke's width as 1 to the sine of half the angle (SVG 2, `miterlimit`)."""
    before = np.roll(line, 1, axis=0) if closed else line[:-2]
    at = line if closed else line[1:-1]
    after = np.roll(line, -1, axis=0) if closed else line[2:]
    one, two = at - before, after - at
    one, two = (v / np.hypot(*v.T)[:, None] for v in (one, two))
    side = -np.sign(one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0])[:, None]
    across = [np.stack([-v[:, 1], v[:, 0]], axis=1) * side * half for v in (one, two)]
    open_ = 1 + (one * two).sum(axis=1)
    sharp = (side[:, 0] != 0) & (open_ * limit**2 >= 2) & (open_ > 1e-9)
    tips = at + (across[0] + across[1]) / np.maximum(open_, 1e-9)[:, None]
    return [
        Polygon([at[i], at[i] + across[0][i], tips[i], at[i] + across[1][i]])
        for i in np.flatnonzero(sharp)
    ]


def _crossed(rings: Iterable[tuple[Points, bool]], place: Place) -> list[Note]:
    """Say where an outline crosses itself."""
    found = []
    for ring, _ in rings:
        tidy = _tidy(ring)
        if len(tidy) < 3:
            continue
        area = Polygon(tidy)
        if not area.is_valid:
            why = explain_validity(area)
            where = why[why.index("[") + 1 : -1] if "[" in why else ""
            found.append(
                warning(
                    "D311",
                    place,
                    "an outline crosses or touches itself",
                    received=f"near {where} in the drawing" if where else "",
                    help="it is repaired by the fill rule; check the figures, or redraw it",
                )
            )
    return found[:1]


def _check_crossings(rings: list[Points], closed: bool = True, reach: float = 0.0) -> None:
    """Stop before outlines are cut at more crossings than can be handled.

    With a `reach`, pieces closer than that count as near each other: what a stroke's
    outline is made of.
    """
    if not rings:
        return
    ends = [(r, np.roll(r, -1, axis=0)) if closed else (r[:-1], r[1:]) for r in rings]
    pieces = shapely.linestrings(np.concatenate([np.stack(pair, axis=1) for pair in ends]))
    tree = shapely.STRtree(pieces)
    near = crossings = 0
    for first in range(0, len(pieces), 64):
        batch = pieces[first : first + 64]
        boxes = shapely.bounds(batch) + np.array([-reach, -reach, reach, reach])
        ours, theirs = tree.query(shapely.box(*boxes.T) if reach else batch)
        later = theirs > ours + first
        near += len(ours) * (20 if reach else 1)
        crossings += int(shapely.crosses(batch[ours[later]], pieces[theirs[later]]).sum())
        if crossings > MAX_CROSSINGS:
            raise _LimitError(f"the outlines cross in more than {MAX_CROSSINGS} places")
        if near > MAX_NEAR:
            raise _LimitError("the outlines are too tangled")


def _windings(points: Points, rings: list[Points]) -> np.ndarray:
    """Return how often the rings together wind round each point."""
    found = np.zeros(len(points), dtype=np.int64)
    for ring in rings:
        start, stop = ring, np.roll(ring, -1, axis=0)
        rows = max(1, 4_000_000 // len(ring))
        for first in range(0, len(points), rows):
            p = points[first : first + rows]
            below, above = start[:, 1], stop[:, 1]
            up = (below[None] <= p[:, 1, None]) & (above[None] > p[:, 1, None])
            down = (below[None] > p[:, 1, None]) & (above[None] <= p[:, 1, None])
            left = (stop[:, 0] - start[:, 0])[None] * (p[:, 1, None] - start[None, :, 1]) - (
                p[:, 0, None] - start[None, :, 0]
            ) * (stop[:, 1] - start[:, 1])[None]
            found[first : first + rows] += (up & (left > 0)).sum(axis=1)
            found[first : first + rows] -= (down & (left < 0)).sum(axis=1)
    return found
