"""The words inside a template's shapes: a piece's letter, the patches of a foundation.

In: a template, a window, the room left on it. Out: words on the sheet.
Invariant: words stand wholly inside their own shape; words that find no room there are
told in a list beside the template, so that none is lost.
"""

from __future__ import annotations

from shapely.affinity import scale
from shapely.geometry import Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import polylabel

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import HEAD, INK, LABEL, SMALL
from publish.draw.sheets.labels import Room, Spot, size_of, text_box, words
from publish.draw.sheets.template import Name, Template
from publish.draw.sheets.windows import Window

LARGE = 16.0
"""Points: a piece's letter."""
MOST, LARGE_PART = 0.5, 1.0
"""A shape is named on every sheet that holds this share of it, or so many square inches."""
LEAD = 10.0
"""Points from one line to the next."""


def names(frame: Canvas, room: Room, template: Template, window: Window) -> None:
    """Set the name of every shape that this sheet holds a good part of."""
    left_over = []
    first = LARGE if template.part == "piece" else HEAD
    for name in template.names:
        seen = name.shape.intersection(window.area)
        if seen.is_empty or seen.area < min(MOST * name.shape.area, LARGE_PART):
            continue
        shown = _set(frame, room, name, _largest(seen), first)
        if len(shown) < len(name.lines):
            left_over.append(", ".join(name.lines) if not shown else f"{shown[0]} {name.lines[1]}")
    _list(frame, room, left_over)


def named_inside(template: Template) -> bool:
    """Return whether every name of a template finds room for all of its lines inside it."""
    first = LARGE if template.part == "piece" else HEAD
    lines = scale(template.lines, 72, 72, origin=(0, 0))
    for name in template.names:
        shape = scale(name.shape, 72, 72, origin=(0, 0))
        room = Room(shape, lines)
        size = min(first, HEAD)
        if _place(room, shape, shape.centroid, name.lines, size) is None:
            return False
    return True


def _set(frame: Canvas, room: Room, name: Name, shape: Polygon, first: float) -> tuple[str, ...]:
    """Set as many of a name's lines as its shape holds; return those."""
    on_page = frame.to_page(shape)
    middle = on_page.centroid if on_page.contains(on_page.centroid) else polylabel(on_page, 0.5)
    for count in range(len(name.lines), 0, -1):
        lines = name.lines[:count]
        for size in dict.fromkeys((first, HEAD, SMALL)):
            found = _place(room, on_page, middle, lines, size)
            if found is not None:
                _write(frame, room, found, lines, size)
                return lines
    return ()


def _block(lines: tuple[str, ...], size: float) -> tuple[float, float]:
    wide = max(size_of(line, _size(i, size), _face(i))[0] for i, line in enumerate(lines))
    return wide, size + LEAD * (len(lines) - 1)


def _size(index: int, first: float) -> float:
    return first if index == 0 else min(LABEL, first)


def _face(index: int) -> str:
    return "semibold" if index == 0 else "regular"


def _place(
    room: Room, shape: Polygon, middle: Point, lines: tuple[str, ...], size: float
) -> Spot | None:
    """Return where a block of lines fits: the shape's own middle first."""
    wide, high = _block(lines, size)
    box = text_box((middle.x, middle.y), wide, high)
    if room.fits(box) and shape.contains(box):
        return middle.x, middle.y
    return room.spot(wide, high, near=(middle.x, middle.y), within=shape)


def _write(frame: Canvas, room: Room, at: Spot, lines: tuple[str, ...], size: float) -> None:
    wide, high = _block(lines, size)
    y = at[1] - high / 2 + size / 2
    for index, line in enumerate(lines):
        frame.page.text((at[0], y), line, _size(index, size), _face(index), "middle", "middle", INK)
        y += (size + _size(1, size)) / 2 + 2 if index == 0 else LEAD
    room.take(text_box(at, wide, high))


def _list(frame: Canvas, room: Room, rows: list[str]) -> None:
    """Set what found no room inside its shape as a list beside the template."""
    if not rows:
        return
    wide = max(text_width(row, LABEL) for row in rows) + 2
    spot = room.spot(wide, LEAD * len(rows))
    if spot is None:
        for row in rows:
            alone = room.spot(*size_of(row))
            if alone is not None:
                words(frame, room, alone, row)
        return
    top = spot[1] - LEAD * (len(rows) - 1) / 2
    for index, row in enumerate(rows):
        frame.page.text((spot[0] - wide / 2, top + LEAD * index), row, LABEL, level="middle")
    room.take(text_box(spot, wide, LEAD * len(rows)))


def _largest(geometry: BaseGeometry) -> Polygon:
    return max(getattr(geometry, "geoms", [geometry]), key=lambda g: float(g.area))
