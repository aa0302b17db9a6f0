"""A motif at one finished size: read, placed, scaled, opened and measured.

In: a pattern, a motif, a span. Out: `MotifShape`, the narrow places and corners that the
checks need, and notes.
Invariant: the opened motif fits a square of side `span` about its centre exactly; curves
are within `limits.CHORD` of what was drawn, at that size.
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, box
from shapely.geometry.base import BaseGeometry

from publish.draft.corners import Corner, corners
from publish.draft.curves import Points
from publish.draft.drawing import Drawing, read_drawing
from publish.draft.fill import cloth, polygons
from publish.draft.limits import CHORD, MAX_OPENED, SNAP
from publish.draft.narrow import Search, narrowest
from publish.draft.narrowpart import Narrow
from publish.draft.outline import outline_cloth
from publish.draft.repeat import Repeat
from publish.draft.unfold import (
    fold_edges,
    half_span,
    ray,
    sector,
    unfold,
    wedge_angle,
)
from publish.draft.wedge import Frame, find_frame
from publish.draft.whole import symmetry_notes, whole_frame
from publish.model.draft import MotifShape
from publish.model.pattern import Motif, Pattern
from publish.notes import Note, Place, error, warning

CLIPPED = 0.01
"""Square inches of cloth across the folds that may be cut off without a word."""

ROUNDS = 4


@dataclass(frozen=True)
class DraftedMotif:
    """A drafted motif with the places that its checks look at."""

    shape: MotifShape
    motif: Motif
    neck: Narrow
    slit: Narrow | None
    tips: tuple[Corner, ...]
    insides: tuple[Corner, ...]
    cloth: Search
    ground: Search
    """The cloth, and the ground round it, to be searched for narrow places."""


@dataclass(frozen=True)
class _Source:
    """What a motif is made from: a drawing or an outline, and where notes about it go."""

    motif: Motif
    drawing: Drawing | None
    place: Place

    def cloth(self, tolerance: float) -> tuple[MultiPolygon, tuple[Note, ...]]:
        if self.drawing is not None:
            return cloth(self.drawing, tolerance)
        return outline_cloth(self.motif.outline, self.motif.folds, tolerance, self.place)

    def frame(self, area: MultiPolygon) -> Frame | None:
        if self.motif.covers == "whole" and self.drawing is not None:
            return whole_frame(area, self.drawing)
        return find_frame(area, self.drawing, self.motif)


def draft_motif(
    pattern: Pattern, motif: Motif, span: Fraction, size: str
) -> tuple[DraftedMotif | None, tuple[Note, ...]]:
    """Return a motif at its finished span, or None and the notes that say why not."""
    source, notes = _source(pattern, motif)
    if source is None:
        return None, notes
    placed, more = _scaled(source, float(span))
    notes += more
    if placed is None:
        return None, notes
    wedge, clipped, drawn = _cut_out(placed, motif)
    if wedge.is_empty:
        return None, (*notes, _no_wedge(source.place, motif))
    points = shapely.count_coordinates(wedge) * motif.folds
    if points > MAX_OPENED:
        return None, (*notes, _too_many(source.place, points, size))
    scale = float(span) / 2 / half_span(wedge, motif.folds, motif.symmetry)
    wedge, drawn = (shapely.transform(g, lambda p: p * scale) for g in (wedge, drawn))
    whole = unfold(wedge, motif.folds, motif.symmetry)
    if motif.covers == "whole":
        notes += symmetry_notes(drawn, whole, motif, source.place, size)
    elif clipped * scale**2 > CLIPPED:
        notes += (_clipped(source.place, clipped * scale**2, size),)
    return _measured(motif, span, whole), notes


def _source(pattern: Pattern, motif: Motif) -> tuple[_Source | None, tuple[Note, ...]]:
    key = "outline" if motif.drawing is None else "drawing"
    place = pattern.place("motifs", motif.key, key)
    if motif.drawing is None:
        return _Source(motif, None, place), ()
    path = pattern.folder / motif.drawing
    inside = Path(os.path.relpath(path, pattern.folder))
    file = (Path(pattern.place().file).parent / inside).as_posix()
    way = f"motifs.{motif.key}.drawing"
    drawing, notes = read_drawing(path, file, motif.element, way, motif.folds)
    if drawing is None:
        return None, notes
    return _Source(motif, drawing, drawing.place), notes


def _scaled(source: _Source, span: float) -> tuple[MultiPolygon | None, tuple[Note, ...]]:
    """Return the cloth in place, flattened finely enough for its finished size.

    The tolerance depends on the scale, the scale on the flattened cloth; two rounds are
    enough unless the drawing is mostly cut off at its folds.
    """
    motif, tolerance = source.motif, 0.05 if source.drawing is None else 0.0
    for _ in range(ROUNDS):
        area, notes = source.cloth(tolerance or 1e-3 * _size_guess(source))
        if area.is_empty:
            return None, notes
        frame = source.frame(area)
        if frame is None:
            return None, (*notes, _no_centre(source.place, motif))
        placed = polygons(shapely.make_valid(frame.place(area)))
        cut = _wedge_of(placed, motif)
        if cut.is_empty:
            return None, (*notes, _no_wedge(source.place, motif))
        unit = 2 * half_span(cut, motif.folds, motif.symmetry) / span
        wanted = CHORD * unit
        if tolerance and tolerance <= wanted:
            return _snapped(placed, motif, SNAP * unit), notes
        tolerance = 0.98 * wanted
    return _snapped(placed, motif, SNAP * unit), notes


def _size_guess(source: _Source) -> float:
    """Return about how large a drawing is, from its control points."""
    assert source.drawing is not None
    corners_ = [p.moved(s.matrix).start for s in source.drawing.shapes for p in s.subpaths]
    ends = [
        c.points[-1] for s in source.drawing.shapes for p in s.subpaths
        for c in p.moved(s.matrix).curves
    ]  # fmt: skip
    points = np.array([*corners_, *ends])
    return max(float(np.hypot(*(points.max(axis=0) - points.min(axis=0)))), 1e-9)


def _wedge_of(placed: MultiPolygon, motif: Motif) -> MultiPolygon:
    reach = float(np.abs(shapely.get_coordinates(placed)).max())
    if motif.symmetry == "turning" and motif.covers == "wedge":
        placed = unfold(placed, motif.folds, "turning")
    return polygons(placed.intersection(sector(motif.folds, reach)))


def _cut_out(placed: MultiPolygon, motif: Motif) -> tuple[MultiPolygon, float, MultiPolygon]:
    """Return the wedge, the area cut off at the folds, and everything that was drawn."""
    wedge = _wedge_of(placed, motif)
    turning = motif.symmetry == "turning"
    return wedge, 0.0 if turning else placed.area - wedge.area, placed


def _snapped(placed: MultiPolygon, motif: Motif, near: float) -> MultiPolygon:
    """Return cloth with the points that are as good as on a fold moved onto it."""
    if motif.symmetry == "turning" or motif.covers == "whole":
        return placed

    def onto(points: Points) -> Points:
        for angle in (0.0, wedge_angle(motif.folds)):
            along, across = ray(angle), ray(angle + 90)
            off = points @ across
            on = (np.abs(off) <= near) & (points @ along >= -near)
            points = points - np.where(on, off, 0.0)[:, None] * across
        return points

    return polygons(shapely.make_valid(shapely.transform(placed, onto)))


def _measured(motif: Motif, span: Fraction, whole: MultiPolygon) -> DraftedMotif:
    """Return everything that is measured on the opened motif."""
    side, folds = float(span), motif.folds
    repeat = Repeat(folds, motif.symmetry, side)
    cut_line = whole
    if motif.turn_under > 0:
        room = float(motif.turn_under)
        cut_line = polygons(repeat.offset(whole, room, CHORD / 4))
    region = repeat.region
    wedge = polygons(whole.intersection(region))
    around = Search.of(polygons(_ground(repeat, side).difference(whole)), repeat)
    within = Search.of(whole, repeat)
    neck = narrowest(within, 2 * side)
    assert neck is not None  # even a disc is narrow somewhere: at its own width
    slit = narrowest(around, side / 4)
    tips, insides = corners(whole)
    edges = fold_edges(wedge, folds, SNAP) if motif.symmetry == "mirror" else None
    shape = MotifShape(
        key=motif.key,
        span=span,
        folds=folds,
        wedge=wedge,
        wedge_angle=wedge_angle(folds),
        edges=edges,
        whole=whole,
        cut_line=cut_line,
        wedge_cut_line=polygons(cut_line.intersection(region)),
        area=whole.area,
        perimeter=whole.length,
        pieces=len(whole.geoms),
        holes=sum(len(p.interiors) for p in whole.geoms),
        tips=len(tips),
        inside_corners=len(insides),
        narrowest_neck=neck.width,
        narrowest_slit=None if slit is None else slit.width,
        sharpest_tip=tips[0].angle if tips else None,
    )
    return DraftedMotif(shape, motif, neck, slit, tips, insides, within, around)


def _ground(repeat: Repeat, side: float) -> BaseGeometry:
    """Return more than enough ground round a motif: a square, made to repeat as it does."""
    square = box(-side, -side, side, side)
    return unfold(square.intersection(repeat.region), repeat.folds, repeat.symmetry)


def _no_centre(place: Place, motif: Motif) -> Note:
    return error(
        "D320", place, "the wedge's centre and folds cannot be found in the drawing",
        expected=f"two straight edges that meet at {wedge_angle(motif.folds):g} degrees",
        help='add a small circle with the id "centre" where the folds meet, and '
        'data-start="0" (degrees from the x axis to the first fold) on the shape; or draw the '
        "wedge from the origin, between the x axis and the second fold",
    )  # fmt: skip


def _no_wedge(place: Place, motif: Motif) -> Note:
    return error(
        "D320", place, "nothing is drawn between the folds",
        expected=f"cloth within {wedge_angle(motif.folds):g} degrees of the first fold",
        help="check the marked centre and data-start",
    )  # fmt: skip


def _too_many(place: Place, points: int, size: str) -> Note:
    return error(
        "D302", place, f"the motif has more than {MAX_OPENED} points when it is opened",
        received=f"{points} at size {size}",
        help="simplify the drawing, or draw fewer points",
    )  # fmt: skip


def _clipped(place: Place, area: float, size: str) -> Note:
    return warning(
        "D321", place, "the drawing reaches across a fold and is cut off there",
        received=f"{area:.2f} square inches cut off at size {size}",
        help="end the drawing on its folds, or mark the centre and the first fold",
    )  # fmt: skip
