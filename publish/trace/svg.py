"""A traced motif as an SVG drawing that is pleasant to edit.

In: a `Traced`. Out: SVG text.
Invariant: the wedge is the one group that is shown; its centre is the origin, its first
fold the x axis, and half the motif's span 100; what is hidden beside it (the opened motif,
the folds) follows the wedge as it is edited.
"""

from __future__ import annotations

import math
from xml.sax.saxutils import escape

import numpy as np

from publish.trace.cubics import Curve
from publish.trace.drawn import Path
from publish.trace.image import Points
from publish.trace.plane import copies
from publish.trace.tracing import Traced

SPAN = 100.0
FILL = "#4f6b4a"


def drawing(found: Traced, name: str) -> str:
    """Return the SVG file of a motif traced from the picture of that name."""
    scale = SPAN / found.half
    edge = 104
    paths = []
    for i, part in enumerate(found.drawn.parts, 1):
        data = "\n      ".join(_data(p, scale) for p in part)
        paths.append(f'    <path id="part-{i}" d="{data}"/>')
    uses = [
        f'    <use href="#wedge" transform="matrix({_matrix(w)})"/>'
        for w in copies(found.folds // 2, 0.0)
    ]
    far, angle = SPAN * 1.4, 2 * math.pi / found.folds
    folds = [
        f'    <line id="fold-{i}" x1="0" y1="0" x2="{_n(far * math.cos(a))}" '
        f'y2="{_n(far * math.sin(a))}"/>'
        for i, a in ((1, 0.0), (2, angle))
    ]
    side = "" if found.inches is None else f' width="{found.inches * edge / 100:.2f}in"'
    high = side.replace("width", "height")
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-{edge} -{edge} {2 * edge} {2 * edge}"'
        f"{side}{high}>",
        f"  <title>{escape(name)}</title>",
        f"  <desc>One wedge of {found.folds}, traced from {escape(name)}. Edit the wedge; show "
        "the group opened to see it opened.</desc>",
        f'  <g id="wedge" fill="{FILL}" data-centre="0 0" data-start="0">',
        *paths,
        "  </g>",
        f'  <g id="opened" display="none" fill="{FILL}">',
        *uses,
        "  </g>",
        '  <g id="folds" display="none" fill="none" stroke="#b03030" stroke-width="0.4">',
        *folds,
        "  </g>",
        "</svg>",
    ]
    return "\n".join(lines) + "\n"


def _data(path: Path, scale: float) -> str:
    """Return path data, a curve a line so that two versions can be compared."""
    curves = [np.round(c * scale, 3) for c in path.curves]
    closing = len(curves[-1]) == 2
    steps = [_step(curve) for curve in (curves[:-1] if closing else curves)]
    return "\n      ".join([f"M{_pair(curves[0][0])}", *steps]) + " Z"


def _step(curve: Curve) -> str:
    if len(curve) == 2:
        return f"L{_pair(curve[1])}"
    return "C" + " ".join(_pair(p) for p in curve[1:])


def _pair(point: Points) -> str:
    return f"{_n(float(point[0]))},{_n(float(point[1]))}"


def _matrix(way: Points) -> str:
    return " ".join(f"{v:.9g}" for v in (*way[:, 0], *way[:, 1], 0, 0))


def _n(value: float) -> str:
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
