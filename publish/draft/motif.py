"""A motif at one finished size: read, placed, scaled, opened and measured.

In: a pattern, a motif, a span. Out: `MotifShape`, the narrow places and corners that the
checks need, and notes.
Invariant: the opened motif fits a square of side `span` about its centre exactly; curves
are within `limits.CHORD` of what was drawn, at that size.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

import shapely
from shapely.geometry import MultiPolygon, box
from shapely.geometry.base import BaseGeometry

from publish.draft.corners import Corner, corners
from publish.draft.fill import polygons
from publish.draft.limits import CHORD, MAX_OPENED, SNAP
from publish.draft.meetings import meetings
from publish.draft.narrow import Search, narrowest
from publish.draft.narrowpart import Narrow
from publish.draft.placing import no_wedge, placed, source_of
from publish.draft.repeat import Repeat
from publish.draft.unfold import fold_edges, half_span, unfold, wedge_angle
from publish.draft.whole import symmetry_notes
from publish.model.draft import Meeting, MotifShape
from publish.model.pattern import Motif, Pattern
from publish.notes import Note, Place, error, warning

CLIPPED = 0.01
"""Square inches of cloth across the folds that may be cut off without a word."""


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


def draft_motif(
    pattern: Pattern, motif: Motif, span: Fraction, size: str
) -> tuple[DraftedMotif | None, tuple[Note, ...]]:
    """Return a motif at its finished span, or None and the notes that say why not."""
    source, notes = source_of(pattern, motif)
    if source is None:
        return None, notes
    there, more = placed(source, float(span))
    notes += more
    if there is None:
        return None, notes
    wedge = there.wedge()
    if wedge.is_empty:
        return None, (*notes, no_wedge(source.place, motif))
    points = shapely.count_coordinates(wedge) * motif.folds
    if points > MAX_OPENED:
        return None, (*notes, _too_many(source.place, points, size))
    scale = float(span) / 2 / half_span(wedge, motif.folds, motif.symmetry)
    cut_off = (there.area.area - wedge.area) * scale**2
    wedge, drawn = (shapely.transform(g, lambda p: p * scale) for g in (wedge, there.area))
    whole = unfold(wedge, motif.folds, motif.symmetry)
    if motif.covers == "whole":
        notes += symmetry_notes(drawn, whole, motif, source.place, size)
    elif motif.symmetry == "mirror" and not there.laid and cut_off > CLIPPED:
        notes += (_clipped(source.place, cut_off, size),)
    meets: tuple[Meeting, ...] = ()
    if motif.symmetry == "mirror":
        meets = meetings(shapely.transform(there.finely(), lambda p: p * scale), motif.folds)
    return _measured(motif, span, whole, meets), notes


def _measured(
    motif: Motif, span: Fraction, whole: MultiPolygon, meets: tuple[Meeting, ...]
) -> DraftedMotif:
    """Return everything that is measured on the opened motif."""
    side, folds = float(span), motif.folds
    repeat = Repeat(folds, motif.symmetry, side)
    cut_line = whole
    if motif.turn_under > 0:
        cut_line = polygons(repeat.offset(whole, float(motif.turn_under), CHORD / 4))
    region = repeat.region
    wedge = polygons(whole.intersection(region))
    within, around, neck, slit = _narrow(whole, repeat)
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
        meetings=meets,
    )
    return DraftedMotif(shape, motif, neck, slit, tips, insides, within, around)


@lru_cache(maxsize=64)
def _narrow(whole: MultiPolygon, repeat: Repeat) -> tuple[Search, Search, Narrow, Narrow | None]:
    """Return the cloth and the ground round it, and where each is narrowest.

    Kept, since it is most of the drafting, and an outline stays as it is while other lines
    of a pattern change.
    """
    around = Search.of(polygons(_ground(repeat, repeat.reach).difference(whole)), repeat)
    within = Search.of(whole, repeat)
    neck = narrowest(within, 2 * repeat.reach)
    assert neck is not None  # even a disc is narrow somewhere: at its own width
    return within, around, neck, narrowest(around, repeat.reach / 4)


def _ground(repeat: Repeat, side: float) -> BaseGeometry:
    """Return more than enough ground round a motif: a square, made to repeat as it does."""
    square = box(-side, -side, side, side)
    return unfold(square.intersection(repeat.region), repeat.folds, repeat.symmetry)


def _too_many(place: Place, points: int, size: str) -> Note:
    return error(
        "D302",
        place,
        f"the motif has more than {MAX_OPENED} points when it is opened",
        received=f"{points} at size {size}",
        help="simplify the drawing, or draw fewer points",
    )


def _clipped(place: Place, area: float, size: str) -> Note:
    return warning(
        "D321",
        place,
        "the drawing reaches across a fold and is cut off there",
        received=f"{area:.2f} square inches cut off at size {size}",
        help="end the drawing on its folds, or mark the centre and the first fold",
    )
