"""Figures that show computed pictures instead of drawings.

In: a figure with its words, and where pictures go in it. Out: the figure with them.
Invariant: a picture keeps its shape; the figure's SVG names it by its address, and whoever
shows the figure has its bytes.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from xml.sax.saxutils import quoteattr

from publish.draw.canvas.svg import number
from publish.model.figure import Figure
from publish.units import POINTS_PER_INCH

ADDRESS = "picture:"
Box = tuple[float, float, float, float]
"""Left, top, width and height, in inches of the figure's canvas."""


def with_pictures(figure: Figure, boxes: Mapping[str, Box], alone: bool = False) -> Figure:
    """Return a figure with pictures, by their names, laid under what is drawn in it.

    `alone` is for one picture that is the whole figure.
    """
    images = "".join(_image(name, box) for name, box in boxes.items())
    root, rest = figure.svg.split(">", 1)
    # No recorded drawing: pages take its SVG, which can name pictures.
    return replace(figure, svg=f"{root}>{images}{rest}", drawing=None, picture=alone)


def _image(name: str, box: Box) -> str:
    left, top, wide, high = (number(v * POINTS_PER_INCH) for v in box)
    where = f'x="{left}" y="{top}" width="{wide}" height="{high}"'
    return f"<image href={quoteattr(ADDRESS + name)} {where}/>"
