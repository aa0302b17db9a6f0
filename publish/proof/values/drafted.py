"""What a template sheet is to show, as it was drafted.

In: a printed edition, a template on one of its sheets. Out: the lines, in its own
coordinates.
Invariant: they come from the draft or from the plan, never from the drawing: a motif's
outline without the stretches on its folds, a piece's finished line, a foundation's outer
line and its seams.
"""

from __future__ import annotations

import math

from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.geometry.base import BaseGeometry

from publish.model.draft import Draft, MotifShape
from publish.model.figure import Shown
from publish.proof.printed.paper import Printed

XY = tuple[float, float]
FAR = 200.0
"""Inches: beyond every template."""


def lines_of(printed: Printed, shown: Shown) -> BaseGeometry | None:
    """Return the lines of a template that a sheet shows; None where they are not known."""
    lines = _whole(printed, shown)
    if lines is None or shown.fold is None:
        return lines
    return lines.intersection(half_plane(shown.fold))


def half_plane(fold: tuple[XY, XY]) -> Polygon:
    """Return the near part of what lies to the left of a line's direction, as the page, whose
    y points down, shows it."""
    (ax, ay), (bx, by) = fold
    run = math.hypot(bx - ax, by - ay)
    ux, uy = (bx - ax) / run * FAR, (by - ay) / run * FAR
    corners = [(ax - ux, ay - uy), (ax + ux, ay + uy)]
    return Polygon([*corners, *((x + uy, y - ux) for x, y in corners[::-1])])


def _whole(printed: Printed, shown: Shown) -> BaseGeometry | None:
    if shown.part == "piece":
        held = printed.plans[shown.size].templates if shown.size in printed.plans else ()
        return next((t.finished.boundary for t in held if t.key == shown.motif), None)
    draft = printed.drafts.get(shown.size)
    if draft is None:
        return None
    if shown.part == "foundation":
        return _foundation(draft, shown.motif)
    shape = draft.motifs.get(shown.motif)
    return None if shape is None else motif_lines(shape, shown.part)


def motif_lines(shape: MotifShape, part: str) -> BaseGeometry:
    """Return a motif's finished outline; of a wedge, without the stretches on its folds."""
    if part == "wedge":
        return shape.wedge.boundary.difference(_folds(shape).buffer(1e-3))
    return shape.whole.boundary


def _foundation(draft: Draft, key: str) -> BaseGeometry | None:
    for section in draft.foundations:
        if section.key == key:
            ring = Polygon([(float(x), float(y)) for x, y in section.ring]).exterior
            seams = [[(float(x), float(y)) for x, y in seam] for seam in section.seams]
            return MultiLineString([ring.coords, *seams])
    return None


def _folds(shape: MotifShape) -> BaseGeometry:
    far = 2 * float(shape.span)
    rays = [
        LineString([(0, 0), (far * math.cos(a), far * math.sin(a))])
        for a in (math.radians(edge.angle) for edge in shape.edges or ())
    ]
    return rays[0].union(rays[-1]) if rays else LineString()
