"""Stage 6 output: figures and template sheets as SVG.

In: figure specs, drafts, plans. Out: `Figure`, `Sheet`.
Invariant: `width` and `height` are the intended printed size in inches; a sheet's SVG is
drawn at 1 user unit = 1 inch times its stated scale and is never resized by a layout.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from publish.model.drawing import Drawing

COMPUTED = "Computed from the pattern, not photographed."
"""What every alternative text of a computed picture ends with."""
COVER = "cover"
"""Name of the cover's computed picture."""


def way_name(way: str) -> str:
    """Return the name of a colourway's computed picture."""
    return f"way-{way}"


def row_name(number: int) -> str:
    """Return the name of the computed picture of a row of sizes, counted from 0."""
    return f"sizes-{number}"


@dataclass(frozen=True)
class Spot:
    """Where one of several sizes lies in a picture, as shares of its width and height."""

    key: str
    left: float
    top: float
    width: float
    height: float
    column: float
    """Of the picture's width, about the size's middle: what is its own for words below it."""


@dataclass(frozen=True)
class Picture:
    """Sizes as they will look, computed: a JPEG in sRGB.

    `width` and `height` in pixels; `where` says what they lie or hang on.
    """

    data: bytes
    width: int
    height: int
    where: str
    inches: float = 0.0
    """How much of the cloth's plane its width shows; 0 where nothing is measured on it."""
    spots: tuple[Spot, ...] = ()
    """Where each size lies, where it shows several."""
    size: str = ""
    colourway: str = ""
    """Keys of what a shop's picture shows; no colourway is the pattern's own fabrics."""


@dataclass(frozen=True)
class Figure:
    """A drawn figure. `alt` describes it from its own data for a reader who cannot see
    it; `scalable` figures may be resized by a layout."""

    key: str
    svg: str
    width: float
    height: float
    alt: str
    caption: str = ""
    scalable: bool = True
    drawing: Drawing | None = None
    """What `svg` was written from; None for a figure that no canvas recorded."""
    picture: bool = False
    """Whether it is one computed picture, whose outer parts a layout may cut off."""


@dataclass(frozen=True)
class Sheet:
    """One printed template sheet at 100 %.

    `row` and `column` count from 0 in the tiling; `x` and `y` are the template
    coordinates (inches, motif centre at the origin) of the sheet's window corner, and
    `window` its width and height, overlap included.
    """

    key: str
    svg: str
    title: str
    motif: str
    size: str
    part: str
    row: int
    column: int
    rows: int
    columns: int
    x: float
    y: float
    window: tuple[float, float]
    square: tuple[float, float, float]
    """Scale-check square on the page: left, top, side, in inches."""
    alt: str
    at: tuple[float, float] | None = None
    """Where the window's corner lies on the page: left, top, in inches; None when unknown."""
    turn: float = 0.0
    """Degrees clockwise that take the motif's coordinates to the template's, after
    `mirrored` (left for right): what proof undoes to measure the printed outline."""
    mirrored: bool = False
    drawing: Drawing | None = None
    """As in `Figure`."""


@dataclass(frozen=True)
class Artwork:
    """Every figure by key, and the template sheets by motif, size and part."""

    figures: dict[str, Figure]
    sheets: dict[tuple[str, str, str], tuple[Sheet, ...]]
    pictures: Mapping[str, Picture] = field(default_factory=dict)
    """By the name that a figure shows them by: `picture:NAME`."""
