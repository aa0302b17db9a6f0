"""A motif's drawing in place: read, laid between its folds, flattened for its size.

In: a pattern, a motif, a span. Out: `Placed`, and notes.
Invariant: the centre is the origin and the first fold the x axis; curves are within
`limits.CHORD` of what was drawn, at that size.
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import shapely
from shapely.geometry import MultiPolygon

from publish.draft.curves import Points
from publish.draft.drawing import Drawing, read_drawing
from publish.draft.fill import cloth, polygons
from publish.draft.lay import frame_of
from publish.draft.limits import CHORD, SNAP
from publish.draft.outline import outline_cloth
from publish.draft.unfold import half_span, ray, sector, unfold, wedge_angle
from publish.draft.wedge import Frame, find_frame
from publish.draft.whole import whole_frame
from publish.model.pattern import Lay, Motif, Pattern
from publish.notes import Note, Place, error, warning

ROUNDS = 4

FINER = 40
"""How many times finer a drawing is flattened to see how it meets its folds."""

FEW = 3000
"""Points from which a wedge is fine enough as it is."""


@dataclass(frozen=True)
class Source:
    """What a motif is made from: a drawing or an outline, and where notes about it go."""

    motif: Motif
    drawing: Drawing | None
    place: Place

    def cloth(self, tolerance: float) -> tuple[MultiPolygon, tuple[Note, ...]]:
        """Return the area that is drawn, its curves within a tolerance."""
        if self.drawing is not None:
            return cloth(self.drawing, tolerance)
        return outline_cloth(self.motif.outline, self.motif.folds, tolerance, self.place)

    def frame(self, area: MultiPolygon) -> tuple[Frame | None, tuple[Note, ...]]:
        """Return where the wedge lies in the drawing."""
        motif = self.motif
        if motif.covers == "whole" and self.drawing is not None:
            return whole_frame(area, self.drawing), ()
        if motif.lay is not None:
            return frame_of(area, motif, motif.lay), ()
        found = find_frame(area, self.drawing, motif)
        if found is not None:
            return found, ()
        found = frame_of(area, motif, Lay())
        return found, () if found is None else (_ornament(self.place, motif),)


@dataclass(frozen=True)
class Placed:
    """A drawing's cloth in place, and how it came there."""

    area: MultiPolygon
    source: Source
    frame: Frame
    laid: bool
    """Whether it is an ornament laid across its folds, which cut it."""
    tolerance: float

    def wedge(self) -> MultiPolygon:
        """Return what lies between the folds."""
        return wedge_of(self.area, self.source.motif)

    def finely(self) -> MultiPolygon:
        """Return the same, flattened so finely that its curves show their directions."""
        wedge = self.wedge()
        if shapely.count_coordinates(wedge) > FEW:
            return wedge
        fine, _ = self.source.cloth(self.tolerance / FINER)
        if fine.is_empty:
            return wedge
        area = polygons(shapely.make_valid(self.frame.place(fine)))
        return wedge_of(area, self.source.motif)


def source_of(pattern: Pattern, motif: Motif) -> tuple[Source | None, tuple[Note, ...]]:
    """Return what a motif is made from, or None and the notes that say why not."""
    key = "outline" if motif.drawing is None else "drawing"
    place = pattern.place("motifs", motif.key, key)
    if motif.drawing is None:
        return Source(motif, None, place), ()
    path = pattern.folder / motif.drawing
    inside = Path(os.path.relpath(path, pattern.folder))
    file = (Path(pattern.place().file).parent / inside).as_posix()
    way = f"motifs.{motif.key}.drawing"
    drawing, notes = read_drawing(path, file, motif.element, way, motif.folds)
    if drawing is None:
        return None, notes
    return Source(motif, drawing, drawing.place), notes


def placed(source: Source, span: float) -> tuple[Placed | None, tuple[Note, ...]]:
    """Return the cloth in place, flattened finely enough for its finished size.

    The tolerance depends on the scale, the scale on the flattened cloth; two rounds are
    enough unless the drawing is mostly cut off at its folds.
    """
    motif = source.motif
    tolerance = 0.05 if source.drawing is None else 1e-3 * _size_guess(source.drawing)
    sure = source.drawing is None
    frame: Frame | None = None
    said: tuple[Note, ...] = ()
    laid = False
    for _ in range(ROUNDS):
        area, notes = source.cloth(tolerance)
        if area.is_empty:
            return None, notes
        if not laid:
            frame, said = source.frame(area)
            laid = motif.lay is not None or bool(said)
        if frame is None:
            return None, (*notes, _no_centre(source.place, motif))
        there = polygons(shapely.make_valid(frame.place(area)))
        cut = wedge_of(there, motif)
        if cut.is_empty:
            return None, (*notes, no_wedge(source.place, motif))
        unit = 2 * half_span(cut, motif.folds, motif.symmetry) / span
        if sure and tolerance <= CHORD * unit:
            break
        tolerance, sure = 0.98 * CHORD * unit, True
    assert frame is not None
    found = Placed(_snapped(there, motif, SNAP * unit), source, frame, laid, tolerance)
    return found, (*notes, *said)


def _size_guess(drawing: Drawing) -> float:
    """Return about how large a drawing is, from its control points."""
    corners_ = [p.moved(s.matrix).start for s in drawing.shapes for p in s.subpaths]
    ends = [
        c.points[-1] for s in drawing.shapes for p in s.subpaths for c in p.moved(s.matrix).curves
    ]
    points = np.array([*corners_, *ends])
    return max(float(np.hypot(*(points.max(axis=0) - points.min(axis=0)))), 1e-9)


def wedge_of(placed: MultiPolygon, motif: Motif) -> MultiPolygon:
    """Return what of a placed drawing lies between the folds."""
    reach = float(np.abs(shapely.get_coordinates(placed)).max())
    if motif.symmetry == "turning" and motif.covers == "wedge":
        placed = unfold(placed, motif.folds, "turning")
    return polygons(placed.intersection(sector(motif.folds, reach)))


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


def _no_centre(place: Place, motif: Motif) -> Note:
    return error(
        "D320",
        place,
        "the wedge's centre and folds cannot be found in the drawing",
        expected=f"two straight edges that meet at {wedge_angle(motif.folds):g} degrees",
        help='add a small circle with the id "centre" where the folds meet, and '
        'data-start="0" (degrees from the x axis to the first fold) on the shape; or draw the '
        "wedge from the origin, between the x axis and the second fold",
    )


def no_wedge(place: Place, motif: Motif) -> Note:
    """Say that nothing lies between the folds."""
    return error(
        "D320",
        place,
        "nothing is drawn between the folds",
        expected=f"cloth within {wedge_angle(motif.folds):g} degrees of the first fold",
        help="check the marked centre and data-start",
    )


def _ornament(place: Place, motif: Motif) -> Note:
    return warning(
        "D324",
        place,
        "the drawing shows no wedge, so it is laid in as an ornament",
        expected=f"two straight edges that meet at {wedge_angle(motif.folds):g} degrees, a marked "
        "centre, or `lay`",
        received="it is laid along the halving line of the wedge and cut by both folds",
        help="write `lay: {along: halving line}` in the motif to keep it so; `foldwork open` shows "
        "other ways to lay it; or mark the wedge's centre and first fold",
    )
