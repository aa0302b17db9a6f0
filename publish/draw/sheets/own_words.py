"""The words that belong to one template: what its folds are laid on, what is cut out, how the
grain runs.

In: a template, a window on it, the room left there. Out: words on the sheet.
"""

from __future__ import annotations

from math import hypot

from shapely.geometry import LineString, Point, Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import arrow
from publish.draw.canvas.style import INK, LABEL, SMALL, Stroke
from publish.draw.sheets.labels import Room, size_of, text_box, words
from publish.draw.sheets.names import names
from publish.draw.sheets.template import Fold, Template, polar
from publish.draw.sheets.windows import Window

GRAIN = Stroke(INK, 0.7)
NEAR = 0.5
"""Inches from a template within which its grain arrow stands."""
MOSTLY = 0.5
HALF_WORDS = ("sheet-half", "sheet-half-short")
"""Messages, the longer first."""


def own_words(frame: Canvas, room: Room, template: Template, window: Window, alone: bool) -> None:
    """Set the words that a template has for itself; beside it too, where it is `alone`."""
    names(frame, room, template, window)
    for fold in template.folds:
        _fold_words(frame, room, fold, template, window)
    _half_words(frame, room, template, window)
    _openings(frame, room, template, window)
    if template.part != "foundation":
        _grain(frame, room, template, window, alone)


def fold_words(say: Labels, fold: Fold, traced: bool) -> str:
    """Return what is printed along a fold edge.

    A raw-edge wedge is not laid on folded cloth: it is `traced` all round the centre.
    """
    if traced:
        return say.text("figure-own-words-fold-words")
    return say.text(f"sheet-place-on-{fold.kind}", grain=grain_words(say, fold))


def grain_words(say: Labels, fold: Fold) -> str:
    """Return how the threads of the cloth lie to a fold: `straight grain`, `bias`."""
    return say.text(f"figure-grain-{fold.grain.replace(' ', '-')}")


def _half_words(frame: Canvas, room: Room, template: Template, window: Window) -> None:
    """Say along the fold of a half template how it becomes whole."""
    seen = template.half.intersection(window.area)
    if not isinstance(seen, LineString) or seen.length < 0.2:
        return
    for message in HALF_WORDS:
        text = frame.labels.text(message)
        place = room.along(
            frame.to_page(seen), *size_of(text, LABEL, "semibold"), offsets=(9, -9, 20, -20)
        )
        if place is not None:
            words(frame, room, place[0], text, LABEL, "semibold", place[1])
            return


def _fold_words(frame: Canvas, room: Room, fold: Fold, template: Template, window: Window) -> None:
    """Say along a fold edge what it is laid on: outside the cloth where there is room."""
    seen = fold.line.intersection(window.area)
    if not isinstance(seen, LineString) or seen.length < 0.2:
        return
    line = frame.to_page(seen)
    ux, uy = polar(1.0, fold.angle)
    x, y = fold.line.interpolate(0.5, normalized=True).coords[0]
    probe = Point(x - uy * 0.01, y + ux * 0.01)
    outside = -1 if _sector(template).covers(probe) else 1
    offsets = (9 * outside, -9 * outside, 20 * outside, -20 * outside, -34 * outside)
    traced = template.cut.is_empty
    short = (
        frame.labels.text("figure-turn-over-here")
        if traced
        else frame.labels.text(f"figure-{fold.kind}-fold")
    )
    for text in (fold_words(frame.labels, fold, traced), short):
        place = room.along(line, *size_of(text, LABEL, "semibold"), offsets=offsets)
        if place is not None:
            words(frame, room, place[0], text, LABEL, "semibold", place[1])
            return


def _sector(template: Template) -> Polygon:
    """Return the triangle that the centre and the ends of a wedge's folds make."""
    return Polygon([(0, 0), *(f.line.coords[-1] for f in template.folds)])


def _openings(frame: Canvas, room: Room, template: Template, window: Window) -> None:
    """Letter the openings: the cloth inside them is cut out."""
    places = list(template.openings)
    centre = _open_centre(template)
    if centre is not None:
        places.append(centre)
    sector = frame.to_page(_sector(template)) if template.folds else None
    for point in places:
        if not window.area.covers(Point(point)):
            continue
        at = frame.point(point)
        size = size_of(frame.labels.text("figure-cut-out"), LABEL, "italic")
        spot = room.spot(*size, near=at, within=sector)
        if spot is not None and hypot(spot[0] - at[0], spot[1] - at[1]) < 40:
            words(frame, room, spot, frame.labels.text("figure-cut-out"), LABEL, "italic")


def _open_centre(template: Template) -> tuple[float, float] | None:
    """Return a point inside a wedge's open centre, or None when the centre is cloth."""
    if not template.folds:
        return None
    angle = sum(f.angle for f in template.folds) / len(template.folds)
    ray = LineString([(0, 0), polar(100, angle)])
    inside = template.cut_body.intersection(ray)
    reach = float(inside.distance(Point(0, 0))) if not inside.is_empty else 0.0
    return polar(reach * 0.6, angle) if reach > 0.3 else None


def _grain(frame: Canvas, room: Room, template: Template, window: Window, alone: bool) -> None:
    """Draw the grain arrow on the cloth, or beside it when the cloth is too slender; on a
    sheet that it shares, near it, and only if most of it is there."""
    angle = template.grain
    level = (angle + 90) % 180 - 90
    level = -90.0 if abs(abs(level) - 90) < 0.01 else level
    inside = frame.to_page(template.body.intersection(window.area))
    held = template.body.intersection(window.area).area / template.body.area
    near = None if alone else frame.to_page(template.cut_body.buffer(NEAR))
    for within in (inside, near) if alone or held > MOSTLY else (inside,):
        for length in (120.0, 96.0, 72.0, 54.0):
            spot = room.spot(length, 17.0, angle=level, within=within)
            if spot is None:
                continue
            ux, uy = polar(1.0, level)
            shift = (uy * -4.5, ux * 4.5)
            ends = [
                (spot[0] + shift[0] + ux * s * length / 2, spot[1] + shift[1] + uy * s * length / 2)
                for s in (-1, 1)
            ]
            arrow(frame.page, ends, GRAIN, "filled", both=True, size=6.0)
            label = (spot[0] - shift[0] * 0.9, spot[1] - shift[1] * 0.9)
            frame.page.text(
                label,
                frame.labels.text("figure-straight-grain"),
                SMALL,
                "regular",
                "middle",
                "middle",
                INK,
                level,
            )
            room.take(text_box(spot, length, 17.0, level))
            return
