"""Stage 6 output: figures and template sheets as SVG.

In: figure specs, drafts, plans. Out: `Figure`, `Sheet`.
Invariant: `width` and `height` are the intended printed size in inches; a sheet's SVG is
drawn at 1 user unit = 1 inch times its stated scale and is never resized by a layout.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from publish.model.drawing import Drawing

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


Asked = tuple[str, str, str]
"""A template: the key of its motif, piece template or foundation section; size; part."""
XY = tuple[float, float]


@dataclass(frozen=True)
class Shown:
    """One template, or what of it one window shows, as it lies on a sheet.

    `x` and `y` are the template coordinates (inches, a motif's centre at the origin) of the
    window's corner, `window` its width and height, overlap included, and `at` where that
    corner lies on the page: left, top, in inches.
    """

    motif: str
    size: str
    part: str
    x: float
    y: float
    window: XY
    at: XY
    turn: float = 0.0
    """Degrees clockwise that take the motif's coordinates to the template's, after
    `mirrored` (left for right): what proof undoes to measure the printed outline."""
    mirrored: bool = False
    fold: tuple[XY, XY] | None = None
    """Of a template printed as its half: a line in its own coordinates on which the paper
    is folded. What lies to the left of its direction, seen on the page, is printed."""

    @property
    def asked(self) -> Asked:
        return self.motif, self.size, self.part


@dataclass(frozen=True)
class Sheet:
    """One printed template sheet at 100 %, and every template on it."""

    key: str
    svg: str
    title: str
    leads: Asked
    """The template that this sheet is printed with: the first on it, or on the sheets that it
    is joined to."""
    shown: tuple[Shown, ...]
    square: tuple[float, float, float]
    """Scale-check square on the page: left, top, side, in inches."""
    alt: str
    prints: Mapping[str, int] = field(default_factory=dict)
    """By size: how often it is printed, where that is not once."""
    drawing: Drawing | None = None
    """As in `Figure`."""


@dataclass(frozen=True)
class Artwork:
    """Every figure by key, and by template the sheets that show it, some of which show others
    as well."""

    figures: dict[str, Figure]
    sheets: dict[Asked, tuple[Sheet, ...]]
    pictures: Mapping[str, Picture] = field(default_factory=dict)
    """By the name that a figure shows them by: `picture:NAME`."""

    @property
    def pages(self) -> tuple[Sheet, ...]:
        """Return every template sheet once."""
        return tuple({s.key: s for group in self.sheets.values() for s in group}.values())

    def printed_with(self, asked: Asked) -> tuple[Sheet, ...]:
        """Return the sheets whose pages come with one template: those that it shares with an
        earlier one come with that."""
        return tuple(sheet for sheet in self.pages if sheet.leads == asked)
