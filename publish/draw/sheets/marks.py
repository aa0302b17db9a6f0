"""The template as one sheet shows it: its lines, the joins, and the words beside them.

In: a template, a tiling and one of its windows. Out: marks on the sheet's canvas.
Invariant: every line is cut to the window exactly, so that sheets joined show each line
once; words are set only where `Room` finds them clear of lines and of each other.
"""

from __future__ import annotations

from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.canvas.canvas import Canvas
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
from publish.draw.sheets.own_words import own_words
from publish.draw.sheets.page import metric_square
from publish.draw.sheets.spread import LEAD, Caption, Spread
from publish.draw.sheets.template import Template
from publish.draw.sheets.tiling import MARK, Tiling
from publish.draw.sheets.windows import Window

FINE = 0.02
"""Points: how far a printed template line may be thinned (7 micrometres)."""
JOIN = Stroke(SOFT, 0.45, (9.0, 3.0))
NOTCH = Stroke(INK, 0.9)
AROUND = 0.6
"""Inches round a template, of several on a sheet, in which its words may stand."""
CENTRE = 5.0
"""Points: the radius of the centre mark."""


def draw_window(
    canvas: Canvas, corner: tuple[float, float], spread: Spread, window: Window
) -> bool:
    """Draw what one window shows, its top left corner at `corner` on the page (inches).

    Return whether the window also had room for the 5 cm square.
    """
    left, top = window.box[:2]
    frame = canvas.frame(corner[0] - left, corner[1] - top)
    seen = [lying for lying in spread.lying if lying.on(window)]
    frames = [frame.frame(lying.x, lying.y) for lying in seen]
    here = [lying.window(window) for lying in seen]
    for lying, own, at in zip(seen, frames, here, strict=True):
        _lines(own, lying.template, at.area)
    lines = [f.to_page(g.template.lines) for g, f in zip(seen, frames, strict=True)]
    area = frame.to_page(window.area.buffer(-0.03))
    room = Room(area, unary_union(lines).intersection(frame.to_page(window.area)))
    joins = _join_lines(frame, spread.tiling, window)
    room.take(*(line for _, _, _, line in joins))
    for mark in spread.tiling.marks_on(window):
        room.take(Point(frame.point((mark.x, mark.y))).buffer(MARK * 72 + 8))
        _diamond(frame, mark.x, mark.y, mark.number)
    for lying, own, at in zip(seen, frames, here, strict=True):
        if lying.caption is not None:
            _caption(own, room, lying.caption, at)
        if lying.template.of_motif:
            _centre(own, room, at)
    _join_words(frame, room, joins)
    bodies = [f.to_page(g.template.cut_body) for g, f in zip(seen, frames, strict=True)]
    held = [
        b for b, g in zip(bodies, seen, strict=True) if len(seen) > 1 or not g.template.of_motif
    ]
    squared = metric_square(canvas, room, unary_union(held) if held else None)
    for index, (lying, own, at) in enumerate(zip(seen, frames, here, strict=True)):
        around = bodies[index].envelope.buffer(AROUND * 72) if len(seen) > 1 else area
        others = unary_union(bodies[:index] + bodies[index + 1 :])
        near = Room(area.intersection(around).difference(others), room.taken.intersection(around))
        own_words(own, near, lying.template, at, len(seen) == 1)
        room.take(near.taken)
    return squared


def _caption(frame: Canvas, room: Room, caption: Caption, window: Window) -> None:
    """Set the words that stand beside a template, if this sheet holds them."""
    if not window.area.contains(caption.area):
        return
    left, top = caption.area.bounds[:2]
    x, y = frame.point((left, top))
    for index, line in enumerate(caption.lines):
        face = "semibold" if index == 0 else "regular"
        frame.page.text((x, y + LEAD * index), line, LABEL, face, level="top")
    room.take(frame.to_page(caption.area))


def _lines(frame: Canvas, template: Template, area: BaseGeometry) -> None:
    frame.shape(template.body.intersection(area), TINT, None, smooth=FINE)
    frame.lines(template.guides.intersection(area), CREASE, smooth=0)
    for fold in template.folds:
        frame.lines(fold.line.intersection(area), FOLD, smooth=0)
    frame.lines(template.half.intersection(area), FOLD, smooth=0)
    frame.lines(template.cut.intersection(area), CUT, smooth=FINE)
    frame.lines(template.finished.intersection(area), FINISHED, smooth=FINE)
    if not template.ticks.is_empty:
        frame.lines(template.ticks.intersection(area), NOTCH, smooth=0)


def _join_lines(
    frame: Canvas, tiling: Tiling, window: Window
) -> list[tuple[str, str, float, LineString]]:
    """Draw the line on which each neighbour joins.

    Return what to do there, in full and in brief, on which side of the line the edge of the
    paper lies (the sign of an offset to its right), and the line in points of the page.
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
        does = "cut" if before else "join"
        said = [
            frame.labels.text(f"sheet-{does}-here{brief}", label=other.label)
            for brief in ("", "-brief")
        ]
        line = LineString([frame.point(start), frame.point(end)])
        found.append((said[0], said[1], -1.0 if before else 1.0, line))
    return found


def _join_words(frame: Canvas, room: Room, joins: list[tuple[str, str, float, LineString]]) -> None:
    for text, brief, outer, line in joins:
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
    spot = room.spot(
        *size_of(frame.labels.text("figure-centre"), LABEL, "semibold"), near=(x + 24, y + 4)
    )
    if spot is not None:
        words(frame, room, spot, frame.labels.text("figure-centre"), LABEL, "semibold")
