"""The template as one sheet shows it: its lines, the joins, and the words beside them.

In: a template, a tiling and one of its windows. Out: marks on the sheet's canvas.
Invariant: every line is cut to the window exactly, so that sheets joined show each line
once; words are set only where `Room` finds them clear of lines and of each other.
"""

from __future__ import annotations

from math import hypot

from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow
from publish.draw.canvas.style import (
    CREASE,
    CUT,
    FINISHED,
    FOLD,
    INK,
    LABEL,
    PAPER,
    SMALL,
    SOFT,
    TINT,
    Stroke,
)
from publish.draw.sheets.labels import SLIDES, Room, beside, size_of, text_box, words
from publish.draw.sheets.names import names
from publish.draw.sheets.page import metric_square
from publish.draw.sheets.template import Fold, Template, polar
from publish.draw.sheets.tiling import MARK, Tiling, Window

FINE = 0.02
"""Points: how far a printed template line may be thinned (7 micrometres)."""
JOIN = Stroke(SOFT, 0.45, (9.0, 3.0))
GRAIN = Stroke(INK, 0.7)
NOTCH = Stroke(INK, 0.9)
FOLD_NAMES = {"single": "single fold", "multiple": "multiple folds"}
CENTRE = 5.0
"""Points: the radius of the centre mark."""


def fold_words(fold: Fold, traced: bool) -> str:
    """Return what is printed along a fold edge.

    A raw-edge wedge is not laid on folded cloth: it is `traced` all round the centre.
    """
    if traced:
        return "Turn the paper over along this edge"
    return f"Place on the {FOLD_NAMES[fold.kind]} ({grain_words(fold)})"


def grain_words(fold: Fold) -> str:
    """Return how the threads of the cloth lie to a fold: `straight grain`, `bias`."""
    return "straight grain" if fold.grain == "straight" else fold.grain


def draw_window(
    canvas: Canvas, corner: tuple[float, float], template: Template, tiling: Tiling, window: Window
) -> bool:
    """Draw what one window shows, its top left corner at `corner` on the page (inches).

    Return whether the window also had room for the 5 cm square.
    """
    left, top = window.box[:2]
    frame = canvas.frame(corner[0] - left, corner[1] - top)
    _lines(frame, template, window.area)
    seen = template.lines.intersection(window.area)
    room = Room(frame.to_page(window.area.buffer(-0.03)), frame.to_page(seen))
    joins = _join_lines(frame, tiling, window)
    room.take(*(line for _, _, line in joins))
    for mark in tiling.marks_on(window):
        room.take(Point(frame.point((mark.x, mark.y))).buffer(MARK * 72 + 8))
        _diamond(frame, mark.x, mark.y, mark.number)
    if template.of_motif:
        _centre(frame, room, window)
    _join_words(frame, room, joins)
    off = None if template.of_motif else frame.to_page(template.cut_body.intersection(window.area))
    squared = metric_square(canvas, room, off)
    names(frame, room, template, window)
    for fold in template.folds:
        _fold_words(frame, room, fold, template, window)
    _openings(frame, room, template, window)
    if template.part != "foundation":
        _grain(frame, room, template, window)
    return squared


def _lines(frame: Canvas, template: Template, area: BaseGeometry) -> None:
    frame.shape(template.body.intersection(area), TINT, None, smooth=FINE)
    frame.lines(template.guides.intersection(area), CREASE, smooth=0)
    for fold in template.folds:
        frame.lines(fold.line.intersection(area), FOLD, smooth=0)
    frame.lines(template.cut.intersection(area), CUT, smooth=FINE)
    frame.lines(template.finished.intersection(area), FINISHED, smooth=FINE)
    if not template.ticks.is_empty:
        frame.lines(template.ticks.intersection(area), NOTCH, smooth=0)


def _join_lines(
    frame: Canvas, tiling: Tiling, window: Window
) -> list[tuple[str, float, LineString]]:
    """Draw the line on which each neighbour joins.

    Return what to do there, on which side of the line the edge of the paper lies (the
    sign of an offset to its right), and the line in points of the page.
    """
    left, top, right, bottom = window.box
    half = tiling.overlap / 2
    edges = {
        "left": ((left + half, bottom), (left + half, top)),
        "above": ((left, top + half), (right, top + half)),
        "right": ((right - half, bottom), (right - half, top)),
        "below": ((left, bottom - half), (right, bottom - half)),
    }
    found = []
    for side, (start, end) in edges.items():
        other = tiling.neighbour(window, side)
        if other is None:
            continue
        frame.line(start, end, JOIN)
        before = side in ("left", "above")
        text = (
            f"Cut here and join to sheet {other.label}"
            if before
            else (f"Join to sheet {other.label} here")
        )
        line = LineString([frame.point(start), frame.point(end)])
        found.append((text, -1.0 if before else 1.0, line))
    return found


def _join_words(frame: Canvas, room: Room, joins: list[tuple[str, float, LineString]]) -> None:
    for text, outer, line in joins:
        brief = text[text.index("to sheet") :]
        for said, size, away in ((text, LABEL, 9), (text, SMALL, 6), (brief, SMALL, 6)):
            place = room.along(line, *size_of(said, size), offsets=(away * outer, -away * outer))
            if place is not None:
                words(frame, room, place[0], said, size, angle=place[1], fill=SOFT)
                break
        else:
            middle = line.interpolate(0.5, normalized=True)
            spot = room.spot(*size_of(text, SMALL), near=(middle.x, middle.y))
            if spot is not None:
                words(frame, room, spot, text, SMALL, fill=SOFT)
            else:
                _over(frame, room, text, outer, line)


def _over(frame: Canvas, room: Room, text: str, outer: float, line: LineString) -> None:
    """Set words where no place is free: on the half of the overlap that the join hides or cuts
    off, over as little else as may be."""
    width, high = size_of(text, SMALL)
    places = [beside(line, 6 * outer, share) for share in SLIDES]
    boxes = [text_box(at, width, high, angle) for at, angle in places]
    over = [(round(box.intersection(room.taken).area, 3), i) for i, box in enumerate(boxes)]
    _, least = min(over)
    at, angle = places[least]
    frame.page.shape(boxes[least], PAPER)
    words(frame, room, at, text, SMALL, angle=angle, fill=SOFT)


def _diamond(frame: Canvas, x: float, y: float, number: int) -> None:
    """Draw a numbered diamond whose halves can be told on both sides of the join."""
    frame.polygon(
        [(x - MARK, y), (x, y - MARK), (x + MARK, y), (x, y + MARK)], PAPER, Stroke(INK, 0.7)
    )
    frame.line((x - MARK, y), (x + MARK, y), Stroke(INK, 0.4))
    frame.line((x, y - MARK), (x, y + MARK), Stroke(INK, 0.4))
    for dx, dy in ((-1, -1), (1, 1)):
        frame.text(
            (x, y), str(number), SMALL, "semibold", "middle", "middle", shift=(dx * 7.5, dy * 6.0)
        )


def _centre(frame: Canvas, room: Room, window: Window) -> None:
    """Draw the centre mark of the motif, if this sheet holds it."""
    if not window.area.covers(Point(0, 0)):
        return
    x, y = frame.point((0, 0))
    page = frame.page
    page.circle((x, y), CENTRE, None, Stroke(INK, 0.6))
    for dx, dy in ((CENTRE + 3, 0), (0, CENTRE + 3)):
        page.line((x - dx, y - dy), (x + dx, y + dy), Stroke(INK, 0.6))
    room.take(Point(x, y).buffer(CENTRE + 4))
    spot = room.spot(*size_of("centre", LABEL, "semibold"), near=(x + 24, y + 4))
    if spot is not None:
        words(frame, room, spot, "centre", LABEL, "semibold")


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
    short = "turn over here" if traced else FOLD_NAMES[fold.kind]
    for text in (fold_words(fold, traced), short):
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
        size = size_of("cut out", LABEL, "italic")
        spot = room.spot(*size, near=at, within=sector)
        if spot is not None and hypot(spot[0] - at[0], spot[1] - at[1]) < 40:
            words(frame, room, spot, "cut out", LABEL, "italic")


def _open_centre(template: Template) -> tuple[float, float] | None:
    """Return a point inside a wedge's open centre, or None when the centre is cloth."""
    if not template.folds:
        return None
    angle = sum(f.angle for f in template.folds) / len(template.folds)
    ray = LineString([(0, 0), polar(100, angle)])
    inside = template.cut_body.intersection(ray)
    reach = float(inside.distance(Point(0, 0))) if not inside.is_empty else 0.0
    return polar(reach * 0.6, angle) if reach > 0.3 else None


def _grain(frame: Canvas, room: Room, template: Template, window: Window) -> None:
    """Draw the grain arrow on the cloth, or beside it when the cloth is too slender."""
    angle = template.grain
    level = (angle + 90) % 180 - 90
    level = -90.0 if abs(abs(level) - 90) < 0.01 else level
    inside = frame.to_page(template.body.intersection(window.area))
    for within in (inside, None):
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
                label, "straight grain", SMALL, "regular", "middle", "middle", INK, level
            )
            room.take(text_box(spot, length, 17.0, level))
            return
