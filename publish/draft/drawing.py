"""A drawing, SVG or a picture of cut paper, as shapes, and the marks that place its wedge.

In: a file, the id (or label) of the element that is the motif. Out: `Drawing`.
Invariant: a drawing comes back whole or not at all, with notes on what is wrong with it.

Coordinates are the user units of the outermost <svg>, its viewBox counted, its placing on
a page not: a motif is always scaled to its finished size.

Marks for the wedge (all optional):
- an element with the id `centre` (a circle or any shape): its middle is the motif's centre;
- `data-centre="x y"` on the element, a shape in it, or <svg>: the centre, in coordinates of
  what carries the mark;
- `data-start="degrees"` beside it: the direction of the first fold, clockwise from the x
  axis, in the same coordinates.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from pathlib import Path
from xml.etree.ElementTree import Element

import numpy as np

from publish import trace
from publish.draft.limits import MAX_PICTURE
from publish.draft.shapes import DrawingError, apply, numbers, subpaths
from publish.draft.style import style_rules
from publish.draft.walk import Shape, Walk
from publish.notes import Note, Place, error
from publish.svgfile import MAX_BYTES, SvgFile, read_svg


@dataclass(frozen=True)
class Drawing:
    """The shapes of one motif, and its marks: the centre, and the first fold in degrees."""

    shapes: tuple[Shape, ...]
    centre: tuple[float, float] | None
    start: float | None
    place: Place


def read_drawing(
    path: Path, file: str, element: str | None, yaml_path: str, folds: int | None = None
) -> tuple[Drawing | None, tuple[Note, ...]]:
    """Read the drawing of a motif. `file` is how notes name it.

    A picture is traced first; `folds` is how many folds its paper must have.
    """
    top = Place(file, 1, 1, yaml_path)
    data, told = _as_svg(path, top, folds)
    if data is None:
        return None, told
    svg, notes = read_svg(data, file, yaml_path)
    if svg is None:
        return None, notes
    picked = svg.root if element is None else _find(svg, element)
    if picked is None:
        return None, (_missing(svg, element or "", top),)
    rules, notes = style_rules(svg)
    walk = Walk(svg, rules, [*told, *notes])
    context = walk.above(picked)
    walk.draw(picked, context)
    centre, start = _marks(walk, picked)
    found = Drawing(tuple(walk.shapes), centre, start, svg.places[picked])
    if not walk.shapes and not walk.failed:
        walk.notes.append(_nothing(svg.places[picked], element))
    return (None if walk.failed or not walk.shapes else found), tuple(walk.notes)


def _as_svg(path: Path, top: Place, folds: int | None) -> tuple[bytes | None, tuple[Note, ...]]:
    """Return a drawing's SVG, traced where it is a picture, with what tracing it said."""
    drawn = path.suffix.lower() == ".svg"
    try:
        with path.open("rb") as stream:
            data = stream.read((MAX_BYTES if drawn else MAX_PICTURE) + 1)
    except OSError as fault:
        reason = fault.strerror or "unknown reason"
        return None, (
            error(
                "D301",
                top,
                "the drawing cannot be opened",
                received=reason,
                help="check the file's name and place",
            ),
        )
    if drawn:
        return data, ()
    paper, told = trace.traced(data, top, folds)
    if paper is None:
        return None, told
    # How it meets its folds is said of every drawing, with its place on the motif.
    told = tuple(note for note in told if note.code != "D379")
    return trace.drawing(paper, path.name).encode(), told


def _marks(walk: Walk, picked: Element) -> tuple[tuple[float, float] | None, float | None]:
    """Return the centre and the first fold's direction where the drawing marks them."""
    centre = start = None
    for element in (*picked.iter(), walk.svg.root):
        if element.get("data-centre") is None and element.get("data-start") is None:
            continue
        inside = walk.enter(element, walk.above(element))
        try:
            if centre is None and element.get("data-centre"):
                x, y = _pair(element.get("data-centre", ""))
                at = apply(inside.matrix, np.array([[x, y]]))[0]
                centre = (float(at[0]), float(at[1]))
            if start is None and element.get("data-start"):
                turn = math.radians(_one(element.get("data-start", "")))
                way = inside.matrix[:2, :2] @ np.array([math.cos(turn), math.sin(turn)])
                start = math.degrees(math.atan2(way[1], way[0]))
        except DrawingError as fault:
            walk.fault(element, fault, "D323")
    mark = walk.svg.by_id.get("centre")
    if centre is None and mark is not None and walk.is_mark(mark):
        centre = _middle(walk, mark)
    return centre, start


def _middle(walk: Walk, mark: Element) -> tuple[float, float] | None:
    """Return the middle of a marking shape's box, in the drawing's coordinates."""
    inside = walk.enter(mark, walk.above(mark))
    try:
        parts = [p.moved(inside.matrix).flat(1e-3) for p in subpaths(mark, inside.view)]
    except DrawingError as fault:
        walk.fault(mark, fault, "D323")
        return None
    if not parts:
        return None
    points = np.concatenate(parts)
    x, y = (points.min(axis=0) + points.max(axis=0)) / 2
    return float(x), float(y)


def _pair(text: str) -> tuple[float, float]:
    found = numbers(text, "data-centre")
    if len(found) != 2:
        raise DrawingError(f"data-centre {text[:40]!r} is not two numbers")
    return found[0], found[1]


def _one(text: str) -> float:
    found = numbers(text, "data-start")
    if len(found) != 1:
        raise DrawingError(f"data-start {text[:40]!r} is not one number of degrees")
    return found[0]


def _find(svg: SvgFile, name: str) -> Element | None:
    """Return the element with an id, or failing that with a label of that name."""
    if name in svg.by_id and name:
        return svg.by_id[name]
    for element in svg.places:
        labels = (v for k, v in element.attrib.items() if k.rpartition("}")[2] == "label")
        if name in labels:
            return element
    return None


def _missing(svg: SvgFile, name: str, top: Place) -> Note:
    known = [i for i in svg.by_id if i][:8]
    return error(
        "D306",
        top,
        f"the drawing has no element {name!r}",
        expected=f"one of {', '.join(known)}" if known else "an element with an id",
        help="give the shape or layer that id or label, or change `element`",
    )


def _nothing(place: Place, name: str | None) -> Note:
    what = f"the element {name!r} shows no shape" if name else "the drawing shows no shape"
    return error(
        "D310",
        place,
        what,
        expected="a filled shape, or a line with a stroke",
        help="check that it is not hidden and has a fill",
    )
