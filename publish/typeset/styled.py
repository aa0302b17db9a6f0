"""Pages as HTML and CSS, and the style sheets as WeasyPrint reads them.

In: a layout, the CSS of its style sheets, the artwork. Out: `Styled`, which measuring and
printing share, so that style sheets and fonts are read once.
Invariant: nothing is fetched but the fonts, drawings and layout files of this edition.
"""

from __future__ import annotations

import logging
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

from weasyprint import CSS
from weasyprint.text.fonts import FontConfiguration

from publish.model.figure import Artwork
from publish.typeset import plates
from publish.typeset.drawn import DrawnImage
from publish.typeset.pictures import Print
from publish.typeset.shelf import LAYOUT, Shelf


@dataclass(frozen=True)
class StyleSheet:
    """CSS, and the file that its lines come from; None for what no file says."""

    path: Path | None
    css: str


@dataclass(frozen=True)
class Styled:
    """Style sheets as read, and what was said of them on the way: each record with the file
    of the sheet that it is about."""

    sheets: tuple[CSS, ...]
    fonts: FontConfiguration
    said: tuple[tuple[logging.LogRecord, Path | None], ...]


@dataclass(frozen=True)
class Composed:
    """An edition's pages, its style sheets from the lowest layer up, and own pictures."""

    html: str
    styles: tuple[StyleSheet, ...]
    pictures: Mapping[str, Print]
    """By address: the designer's logo and photographs, and computed pictures."""
    styled: Styled


def read_styles(styles: Sequence[StyleSheet], shelf: Shelf) -> Styled:
    """Read style sheets, the lowest layer first."""
    fonts, sheets = FontConfiguration(), []
    said: list[tuple[logging.LogRecord, Path | None]] = []
    for style in styles:
        with listening() as records:
            given = {"base_url": f"{LAYOUT}:", "url_fetcher": shelf, "font_config": fonts}
            sheets.append(CSS(string=style.css, **given))
        said += [(record, style.path) for record in records]
    return Styled(tuple(sheets), fonts, tuple(said))


class _Ear(logging.Handler):
    """Keeps what WeasyPrint logs, from warnings up."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.records: list[logging.LogRecord] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.records.append(record)


@contextmanager
def listening() -> Iterator[list[logging.LogRecord]]:
    """Collect what WeasyPrint logs meanwhile."""
    ear, logger = _Ear(), logging.getLogger("weasyprint")
    logger.addHandler(ear)
    try:
        yield ear.records
    finally:
        logger.removeHandler(ear)


def drawings(artwork: Artwork) -> dict[str, str]:
    """Return every drawing as SVG by the address that pages ask for it by."""
    found = {f"{plates.FIGURE}:{f.key}": f.svg for f in artwork.figures.values()}
    return found | {f"{plates.SHEET}:{s.key}": s.svg for s in artwork.pages}


def drawn(artwork: Artwork, fonts: FontConfiguration) -> dict[str, object]:
    """Return every recorded drawing as an image, by its address."""
    figures = artwork.figures.values()
    found = {f"{plates.FIGURE}:{quote(f.key, safe='')}": f.drawing for f in figures}
    found |= {plates.address(s): s.drawing for s in artwork.pages}
    return {k: DrawnImage(d, fonts) for k, d in found.items() if d is not None}
