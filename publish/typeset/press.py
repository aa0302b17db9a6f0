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
from urllib.parse import unquote

from weasyprint import CSS, HTML, Document
from weasyprint.text.fonts import FontConfiguration
from weasyprint.urls import URLFetcher, URLFetcherResponse

from publish.model.figure import Artwork
from publish.notes import Note, Place, Severity
from publish.typeset import fonts, plates
from publish.typeset.layout import Layout, shown
from publish.typeset.pages import Composed

LAYOUT = "layout"
"""Addresses of a layout's own files: `layout:caution.svg`."""
VARIANT = "pdf/ua-1"
"""ISO 14289-1, tagged PDF for readers who cannot see the page."""
_TYPES = {".svg": "image/svg+xml", ".png": "image/png", ".jpg": "image/jpeg", ".css": "text/css"}
_EXPECTED = ("Using fontTools instead of HarfBuzz-Subset",)
"""About the machine, not the pages: which library thins the fonts out."""
_AT = re.compile(r" at (\d+):(\d+)")


@dataclass(frozen=True)
class Printed:
    pdf: bytes
    sheet_pages: dict[str, int]


class _Shelf(URLFetcher):  # type: ignore[misc]  # WeasyPrint has no types
    """Everything that an edition's pages may refer to."""

    def __init__(self, layout: Layout, drawings: Mapping[str, str]) -> None:
        super().__init__()
        self._folder = layout.folder.resolve()
        self._fonts = {fonts.address(f): f.path for f in layout.fonts}
        self._drawings = drawings

    def fetch(self, url: str, headers: Mapping[str, str] | None = None) -> URLFetcherResponse:
        """Return a font, a drawing or a file of the layout; refuse everything else."""
        if url in self._fonts:
            return URLFetcherResponse(url, self._fonts[url].read_bytes(), {})
        scheme, _, name = url.partition(":")
        name = unquote(name).lstrip("/")
        if scheme in (plates.FIGURE, plates.SHEET):
            svg = self._drawings[f"{scheme}:{name}"]
            return URLFetcherResponse(url, svg.encode(), {"Content-Type": _TYPES[".svg"]})
        path = (self._folder / name).resolve()
        if scheme != LAYOUT or not path.is_relative_to(self._folder):
            raise ValueError("pages may only use the files of their layout and their figures")
        kind = _TYPES.get(path.suffix, "application/octet-stream")
        return URLFetcherResponse(url, path.read_bytes(), {"Content-Type": kind})


def print_pages(
    composed: Composed,
    layout: Layout,
    artwork: Artwork,
    place: Place,
    variant: str | None = VARIANT,
) -> tuple[Printed, tuple[Note, ...]]:
    """Return the PDF. `place` is where notes point that name no line of the style."""
    drawings = _drawings(artwork)
    with _listening() as records:
        document = _lay_out(composed, _Shelf(layout, drawings), variant)
        identifier = _identifier(composed, drawings)
        pdf = document.write_pdf(pdf_variant=variant, pdf_identifier=identifier)
    style = layout.folder / layout.style
    notes = dict.fromkeys(_note(r, style, composed.css, place) for r in records)
    return Printed(pdf, _sheet_pages(document, artwork)), tuple(n for n in notes if n)


def _lay_out(composed: Composed, shelf: _Shelf, variant: str | None) -> Document:
    configuration = FontConfiguration()
    base = f"{LAYOUT}:"
    css = CSS(string=composed.css, base_url=base, url_fetcher=shelf, font_config=configuration)
    html = HTML(string=composed.html, base_url=base, url_fetcher=shelf)
    return html.render(font_config=configuration, stylesheets=[css], pdf_variant=variant)


def _drawings(artwork: Artwork) -> dict[str, str]:
    found = {f"{plates.FIGURE}:{f.key}": f.svg for f in artwork.figures.values()}
    for group in artwork.sheets.values():
        found |= {f"{plates.SHEET}:{s.key}": s.svg for s in group}
    return found


def _identifier(composed: Composed, drawings: Mapping[str, str]) -> bytes:
    """Return the PDF's identifier: from its content, so that rebuilding changes nothing."""
    digest = hashlib.sha256()
    for part in (composed.html, composed.css, *(t for kv in sorted(drawings.items()) for t in kv)):
        digest.update(part.encode())
        digest.update(b"\0")
    return digest.hexdigest()[:32].encode()


def _sheet_pages(document: Document, artwork: Artwork) -> dict[str, int]:
    keys = {plates.anchor(s): s.key for group in artwork.sheets.values() for s in group}
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


def _note(record: logging.LogRecord, style: Path, css: str, place: Place) -> Note | None:
    """Return a log message as a note; one about the style points at its line."""
    said = record.getMessage()
    if said.startswith(_EXPECTED):
        return None
    at = _AT.search(said)
    if at:
        place = Place(shown(style), int(at[1]), int(at[2]))
    bad = record.levelno >= logging.ERROR
    code, severity = ("T711", Severity.ERROR) if bad else ("T710", Severity.WARNING)
    return Note(code, severity, place, said.rstrip("."))
