"""Viewports: how a viewBox, a nested <svg> and a used <symbol> place what is inside them.

In: an element and the view around it. Out: the view inside it (width and height in user
units, which percentages are of), and the matrix that places it.
Invariant: of the outermost <svg> only a stretch counts, since a motif is always scaled to
its finished size.
"""

from __future__ import annotations

from xml.etree.ElementTree import Element

import numpy as np
import svgelements

from publish.draft.curves import Points
from publish.draft.shapes import DrawingError, length, numbers


def root_view(root: Element) -> tuple[float, float]:
    box = _view_box(root)
    if box is not None:
        return box[2], box[3]
    sides = []
    for name in ("width", "height"):
        try:
            sides.append(length(root.get(name) or "100", 100, name))
        except DrawingError:
            sides.append(100.0)
    return sides[0], sides[1]


def root_matrix(root: Element) -> Points:
    """Return the stretch that preserveAspectRatio="none" gives; otherwise nothing moves."""
    matrix = np.eye(3)
    box = _view_box(root)
    if box is not None and (root.get("preserveAspectRatio") or "").split()[:1] == ["none"]:
        try:
            width = length(root.get("width") or "100%", box[2], "width")
            height = length(root.get("height") or "100%", box[3], "height")
        except DrawingError:
            return matrix
        if width > 0 and height > 0:
            matrix[1, 1] = (height / box[3]) / (width / box[2])
    return matrix


def _view_box(element: Element) -> list[float] | None:
    try:
        box = numbers(element.get("viewBox") or "", "viewBox")
    except DrawingError:
        return None
    return box if len(box) == 4 and box[2] > 0 and box[3] > 0 else None


def viewport(
    element: Element, sized: Element, view: tuple[float, float], placed: bool = True
) -> tuple[Points, tuple[float, float]]:
    """Return the matrix and the view inside a nested <svg> or a used <symbol>."""
    x = length(element.get("x") or "0", view[0], "x") if placed else 0.0
    y = length(element.get("y") or "0", view[1], "y") if placed else 0.0
    width = length(sized.get("width") or "100%", view[0], "width")
    height = length(sized.get("height") or "100%", view[1], "height")
    box = _view_box(element)
    if box is None:
        text, inside = f"translate({x}, {y})", (width, height)
    else:
        text = svgelements.Viewbox.viewbox_transform(
            x, y, width, height, *box, element.get("preserveAspectRatio") or "xMidYMid"
        )
        inside = (box[2], box[3])
    m = svgelements.Matrix(text)
    return np.array([[m.a, m.c, m.e], [m.b, m.d, m.f], [0.0, 0.0, 1.0]]), inside
