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
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from weasyprint import HTML, Document

from publish.model.figure import Artwork
from publish.notes import Note, Place, Severity, shown_path
from publish.typeset import plates, tagging
from publish.typeset.layout import Layout
from publish.typeset.shelf import LAYOUT, Shelf
from publish.typeset.styled import Composed, drawings, drawn, listening

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
    svgs, styled = drawings(artwork), composed.styled
    shelf = Shelf(layout, svgs, composed.pictures)
    with listening() as records:
        html = HTML(string=composed.html, base_url=f"{LAYOUT}:", url_fetcher=shelf)
        document = html.render(
            font_config=styled.fonts,
            stylesheets=styled.sheets,
            pdf_variant=variant,
            cache=drawn(artwork, styled.fonts),
        )
        tagging.prepare(document)
        identifier = _identifier(composed, svgs)
        pdf = document.write_pdf(
            finisher=tagging.finish if variant else None,
            pdf_variant=variant,
            pdf_identifier=identifier,
        )
    said = [*styled.said, *((record, layout.styles[-1]) for record in records)]
    notes = dict.fromkeys(_note(record, path, place) for record, path in said)
    return Printed(pdf, _sheet_pages(document, artwork)), tuple(n for n in notes if n)


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
