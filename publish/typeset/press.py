"""HTML and CSS to PDF through WeasyPrint.

In: `Composed` pages, a layout's fonts, the artwork. Out: PDF bytes, the page of each
template sheet, and what WeasyPrint said as notes.
Invariant: nothing is fetched but the fonts, drawings and layout files of this edition;
the same input gives the same bytes.
"""

from __future__ import annotations

import hashlib
import logging
import re
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

from weasyprint import CSS, HTML, Document
from weasyprint.text.fonts import FontConfiguration

from publish.model.figure import Artwork
from publish.notes import Note, Place, Severity, shown_path
from publish.typeset import plates, tagging
from publish.typeset.drawn import DrawnImage
from publish.typeset.layout import Layout
from publish.typeset.pages import Composed
from publish.typeset.shelf import LAYOUT, Shelf

VARIANT = "pdf/ua-1"
"""ISO 14289-1, tagged PDF for readers who cannot see the page."""
_EXPECTED = ("Using fontTools instead of HarfBuzz-Subset",)
"""About the machine, not the pages: which library thins the fonts out."""
_AT = re.compile(r" at (\d+):(\d+)")


@dataclass(frozen=True)
class Printed:
    pdf: bytes
    sheet_pages: dict[str, int]


def print_pages(
    composed: Composed,
    layout: Layout,
    artwork: Artwork,
    place: Place,
    variant: str | None = VARIANT,
) -> tuple[Printed, tuple[Note, ...]]:
    """Return the PDF. `place` is where notes point that name no line of the style."""
    svgs = drawings(artwork)
    shelf = Shelf(layout, svgs, composed.pictures)
    configuration = FontConfiguration()
    with _listening() as records:
        css, said_by = _parse(composed, shelf, configuration, records)
        html = HTML(string=composed.html, base_url=f"{LAYOUT}:", url_fetcher=shelf)
        document = html.render(
            font_config=configuration,
            stylesheets=css,
            pdf_variant=variant,
            cache=drawn(artwork, configuration),
        )
        identifier = _identifier(composed, svgs)
        pdf = document.write_pdf(
            finisher=tagging.finish if variant else None,
            pdf_variant=variant,
            pdf_identifier=identifier,
        )
    paths = [*said_by, *[layout.styles[-1]] * (len(records) - len(said_by))]
    notes = dict.fromkeys(_note(r, p, place) for r, p in zip(records, paths, strict=True))
    return Printed(pdf, _sheet_pages(document, artwork)), tuple(n for n in notes if n)


def _parse(
    composed: Composed,
    shelf: Shelf,
    configuration: FontConfiguration,
    records: list[logging.LogRecord],
) -> tuple[list[CSS], list[Path | None]]:
    """Return the style sheets, and the file of each thing that was logged on the way."""
    sheets, said_by = [], list[Path | None]()
    for style in composed.styles:
        sheets.append(
            CSS(
                string=style.css,
                base_url=f"{LAYOUT}:",
                url_fetcher=shelf,
                font_config=configuration,
            )
        )
        said_by += [style.path] * (len(records) - len(said_by))
    return sheets, said_by


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


def _identifier(composed: Composed, svgs: Mapping[str, str]) -> bytes:
    """Return the PDF's identifier: from its content, so that rebuilding changes nothing."""
    digest = hashlib.sha256()
    words = [composed.html, *(s.css for s in composed.styles)]
    words += [t for pair in sorted(svgs.items()) for t in pair]
    parts = [t.encode() for t in words] + [p.data for _, p in sorted(composed.pictures.items())]
    for part in parts:
        digest.update(part)
        digest.update(b"\0")
    return digest.hexdigest()[:32].encode()


def _sheet_pages(document: Document, artwork: Artwork) -> dict[str, int]:
    keys = {plates.anchor(s): s.key for s in artwork.pages}
    found: dict[str, int] = {}
    for number, page in enumerate(document.pages, start=1):
        found |= {keys[name]: number for name in page.anchors if name in keys}
    return found


class _Ear(logging.Handler):
    """Keeps what WeasyPrint logs, from warnings up."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.records: list[logging.LogRecord] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.records.append(record)


@contextmanager
def _listening() -> Iterator[list[logging.LogRecord]]:
    ear, logger = _Ear(), logging.getLogger("weasyprint")
    logger.addHandler(ear)
    try:
        yield ear.records
    finally:
        logger.removeHandler(ear)


def _note(record: logging.LogRecord, style: Path | None, place: Place) -> Note | None:
    """Return a log message as a note; one about the style points at its line."""
    said = record.getMessage()
    if said.startswith(_EXPECTED):
        return None
    at = _AT.search(said)
    if at and style is not None:
        place = Place(shown_path(style), int(at[1]), int(at[2]))
    bad = record.levelno >= logging.ERROR
    code, severity = ("T711", Severity.ERROR) if bad else ("T710", Severity.WARNING)
    return Note(code, severity, place, said.rstrip("."))
