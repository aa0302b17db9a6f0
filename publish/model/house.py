"""Stage 1 output, the designer's own look and voice: publication, style, photos, steps.

In: nothing. Out: frozen types, parts of a `Pattern`.
Invariant: only what the YAML says; paths are of files that were there when it was read.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from pathlib import Path

from publish.model.trade import PAPER_THICKNESS


@dataclass(frozen=True)
class Publication:
    """Who publishes the pattern, and what the cover and the last page say."""

    studio: str
    stock_number: str
    edition: str
    year: int
    licence: str
    contact: str
    skill: str
    blurb: str
    barcode: str = ""
    """`EAN-13 6291041500213`: kind and all digits, as `gtin.parse_gtin` reads; may be empty."""
    paper_thickness: Fraction = PAPER_THICKNESS
    """Of one sheet of a folded booklet."""


@dataclass(frozen=True)
class Style:
    """The designer's own colour, logo and fonts over a layout's.

    `fonts` holds a font file for each of `titles`, `text`, `text_bold`, `text_italic`,
    `labels`, `labels_bold`, `labels_italic` that is given.
    """

    accent: str | None = None
    """`#rrggbb`; None for one taken from the fabrics."""
    logo: Path | None = None
    fonts: Mapping[str, Path] = field(default_factory=dict)


@dataclass(frozen=True)
class Photo:
    """A photograph: `place` is `cover`, or `page` for the opening section."""

    file: Path
    caption: str = ""
    place: str = "page"
    alt: str = ""
    """What it shows, for a reader who cannot see it; the caption where that is empty."""


@dataclass(frozen=True)
class ShopPictures:
    """Pictures of pages for a shop: pixels on the longer side of each, for the covers and
    for pages inside; `pages` are numbered from 1, none for those that are chosen. `scale` is
    what gives the scale of computed pictures: `bar`, or empty for nothing."""

    cover: tuple[int, ...] = (2000, 600)
    page: tuple[int, ...] = (1200,)
    pages: tuple[int, ...] = ()
    scale: str = ""


@dataclass(frozen=True)
class StepChange:
    """One change to the generated steps.

    `action` is `replace`, `insert`, `remove` or `move`; `step` the key of the step that is
    replaced, removed or moved, or the inserted step's own, if it has one; `beside` the key
    of the step that an inserted or moved one comes `before` or after. What is None stays
    as it is.
    """

    action: str
    step: str = ""
    beside: str = ""
    before: bool = False
    text: str | None = None
    right: str | None = None
    tip: str | None = None
    caution: str | None = None
    figure: bool = True
    """Whether the step keeps its figure."""
    sizes: tuple[str, ...] = ()
    """Keys of the sizes that the change is for; empty for all."""
