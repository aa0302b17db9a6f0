"""Findings on a motif, drawn where they are.

In: the pattern, the drafts, notes. Out: one figure for each note that names a spot on a
drafted motif.
Invariant: the words are the note's own; the ring is centred on the spot itself, in the
motif and enlarged beside it.

These figures are the designer's: no booklet prints them. A ring has a pale rim, so that
it shows on a fabric of any colour.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from shapely import count_coordinates
from shapely.geometry import Point, box
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import wrap
from publish.draw.canvas.style import (
    HEAD,
    INK,
    LABEL,
    LEADER,
    PAPER,
    RED_BROWN,
    SOFT,
    TEXT_COLUMN,
    TINT,
    Stroke,
    edge_of,
)
from publish.model.draft import Draft, MotifShape
from publish.model.figure import Figure
from publish.model.pattern import Pattern
from publish.model.words import FigureSpec
from publish.notes import Note, Spot
from publish.units import POINTS_PER_INCH

WHOLE = 3.4
"""Inches: the side of the picture of the whole motif."""
LENS = 0.9
"""Inches: the radius of the enlarged view."""
LENS_AT = (5.1, 1.0)
MANY = 4_000
"""Points of a motif above which those are left out that cannot be seen."""
FINEST = 0.25
"""Points of the page: half a line's width where the whole motif is drawn."""
RING = 7.0
"""Points: the radius of the ring on the whole motif."""
OTHER_FACE = 0.82
"""Share of the room that a line of words may fill: the figure is opened by itself, where
another, wider face may stand in for ours."""
SEEN, ROOMY = 0.5, 2.0
"""Inches of motif that the enlarged view reaches to, at least; and in times what is needed."""


def finding_figures(
    pattern: Pattern, drafts: Mapping[str, Draft], notes: Iterable[Note]
) -> dict[str, str]:
    """Return SVG by name, `<size>-<code>-<n>`, n counting a size's findings of one code.

    Notes without a spot, or about a motif that could not be drafted, have no figure.
    """
    found: dict[str, str] = {}
    seen: dict[tuple[str, str], BaseGeometry] = {}
    for note in notes:
        shape = _shape(drafts, note.spot)
        if note.spot is None or shape is None:
            continue
        stem, number = f"{note.spot.size}-{note.code}", 1
        while (name := f"{stem}-{number}") in found:
            number += 1
        one = note.spot.size, note.spot.motif
        if one not in seen:
            seen[one] = _small(shape)
        found[name] = _figure(pattern, shape, seen[one], note, note.spot, name).svg
    return found


def _shape(drafts: Mapping[str, Draft], spot: Spot | None) -> MotifShape | None:
    if spot is None or spot.size not in drafts:
        return None
    return drafts[spot.size].motifs.get(spot.motif)


def _small(shape: MotifShape) -> BaseGeometry:
    """Return a motif with as many points as can be seen where it is drawn whole."""
    if count_coordinates(shape.whole) <= MANY:
        return shape.whole
    return shape.whole.simplify(FINEST * float(shape.span) / (WHOLE * POINTS_PER_INCH))


def _figure(
    pattern: Pattern, shape: MotifShape, small: BaseGeometry, note: Note, spot: Spot, name: str
) -> Figure:
    """Draw the whole motif, the place enlarged, and what is found and needed there."""
    colour = pattern.fabrics[pattern.motifs[shape.key].fabric].colour
    canvas = Canvas(TEXT_COLUMN, WHOLE)
    scale = WHOLE / float(shape.span)
    whole = canvas.frame(WHOLE / 2, WHOLE / 2, scale)
    whole.shape(small, colour, Stroke(edge_of(colour), 0.25))
    _lens(canvas, shape, spot, colour)
    at = whole.point((spot.x, spot.y))
    centre = canvas.point(LENS_AT)
    long = Point(at).distance(Point(centre))
    reach = [
        (at[0] + (centre[0] - at[0]) * share, at[1] + (centre[1] - at[1]) * share)
        for share in (RING / long, 1 - LENS * POINTS_PER_INCH / long)
    ]
    for stroke in (Stroke(PAPER, 2.2), LEADER.but(colour=RED_BROWN)):
        canvas.page.line(reach[0], reach[1], stroke)
    for stroke in (Stroke(PAPER, 3.2), Stroke(RED_BROWN, 1.5)):
        canvas.page.circle(at, RING, None, stroke)
    _words(canvas, note)
    return canvas.figure(FigureSpec(name, "finding", spot.size), _alt(shape, note, spot))


def _lens(canvas: Canvas, shape: MotifShape, spot: Spot, colour: str) -> None:
    """Draw the place enlarged, a smaller ring round what is too small there."""
    view = max(SEEN, ROOMY * (spot.needed or 0.0), ROOMY * (spot.measure or 0.0))
    view = min(view, float(shape.span) / 4)
    radius = LENS * POINTS_PER_INCH
    times = LENS / view
    frame = canvas.frame(LENS_AT[0] - spot.x * times, LENS_AT[1] - spot.y * times, times)
    window = box(spot.x - view, spot.y - view, spot.x + view, spot.y + view)
    seen = Point(spot.x, spot.y).buffer(view, 32)
    canvas.circle(LENS_AT, radius, TINT)
    cloth = shape.whole.intersection(window).intersection(seen)
    if not cloth.is_empty:
        frame.shape(cloth, colour)
        frame.lines(shape.whole.boundary.intersection(seen), Stroke(edge_of(colour), 0.7))
    inner = (spot.measure or spot.needed or view / 4) / 2 * frame.unit
    inner = min(max(inner + 4, 6.0), 0.8 * radius)
    for stroke in (Stroke(PAPER, 2.6), Stroke(RED_BROWN, 1.2)):
        canvas.circle(LENS_AT, inner, None, stroke)
    canvas.circle(LENS_AT, radius, None, Stroke(RED_BROWN, 1.5))


def _words(canvas: Canvas, note: Note) -> None:
    """Set the finding under the enlarged view."""
    left = WHOLE + 0.35
    room = (TEXT_COLUMN - left) * POINTS_PER_INCH * OTHER_FACE
    y = (LENS_AT[1] + LENS) * POINTS_PER_INCH + 16
    head = f"{note.code}: {note.what}"
    parts = [(head, HEAD, "semibold", INK)]
    parts += [(f"Here: {note.received}", LABEL, "regular", INK)] if note.received else []
    parts += [(f"Needed: {note.expected}", LABEL, "regular", INK)] if note.expected else []
    parts += [(note.help, LABEL, "regular", SOFT)] if note.help else []
    for text, size, face, fill in parts:
        for line in wrap(text[:1].upper() + text[1:], size, room, face):
            canvas.page.text((left * POINTS_PER_INCH, y), line, size, face, fill=fill)
            y += size * 1.3
        y += 3


def _alt(shape: MotifShape, note: Note, spot: Spot) -> str:
    where = f"{spot.x:.2f} in across and {spot.y:.2f} in down from its centre"
    here = f", {note.received}" if note.received else ""
    needed = f"; needed: {note.expected}" if note.expected else ""
    return f"The {shape.folds}-fold motif with a ring {where}: {note.what}{here}{needed}."
