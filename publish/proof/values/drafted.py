"""What a template sheet is to show, as it was drafted.

In: a printed edition, one of its sheets. Out: the lines, in the template's own coordinates.
Invariant: they come from the draft or from the plan, never from the drawing: a motif's
outline without the stretches on its folds, a piece's finished line, a foundation's outer
line and its seams.
"""

from __future__ import annotations

import math

from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.geometry.base import BaseGeometry

from publish.model.draft import Draft, MotifShape
from publish.model.figure import Sheet
from publish.proof.printed.paper import Printed


def lines_of(printed: Printed, sheet: Sheet) -> BaseGeometry | None:
    """Return the lines that a sheet is one window on; None where they are not known."""
    if sheet.part == "piece":
        held = printed.plans[sheet.size].templates if sheet.size in printed.plans else ()
        return next((t.finished.boundary for t in held if t.key == sheet.motif), None)
    draft = printed.drafts.get(sheet.size)
    if draft is None:
        return None
    if sheet.part == "foundation":
        return _foundation(draft, sheet.motif)
    shape = draft.motifs.get(sheet.motif)
    return None if shape is None else motif_lines(shape, sheet.part)


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
