"""Pages to read in a browser, as PDF.

In: a page of `web`, complete in itself. Out: PDF, in the fonts of the booklet.
Invariant: nothing is fetched but fonts; the same page gives the same bytes.
"""

from __future__ import annotations

import hashlib
from importlib.util import find_spec
from pathlib import Path

from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration
from weasyprint.urls import URLFetcher

_FACES = (
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-Light.ttf", 300, "normal"),
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-Regular.ttf", 400, "normal"),
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-It.ttf", 400, "italic"),
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-Semibold.ttf", 600, "normal"),
    ("Source Sans Pro", "font_source_sans_pro", "SourceSansPro-Regular.ttf", 400, "normal"),
    ("Source Sans Pro", "font_source_sans_pro", "SourceSansPro-Semibold.ttf", 600, "normal"),
)
"""Family, package, file, weight and style of the fonts that a PDF is set in."""


def pdf(page: str) -> bytes:
    """Return a page as PDF, in the fonts of the booklet."""
    configuration = FontConfiguration()
    faces = "\n".join(map(_face, _FACES))
    fonts = CSS(string=faces, font_config=configuration, url_fetcher=_only("file"))
    identifier = hashlib.sha256(page.encode()).hexdigest()[:32].encode()
    made: bytes = HTML(string=page, url_fetcher=_only("data")).write_pdf(
        stylesheets=[fonts], font_config=configuration, pdf_identifier=identifier
    )
    return made


def _only(scheme: str) -> URLFetcher:
    """Return what opens addresses of one kind: of ours, only fonts are files, and a page's
    pictures are in the page itself. Nothing is fetched from elsewhere."""
    return URLFetcher(allowed_protocols=(scheme,))


def _face(face: tuple[str, str, str, int, str]) -> str:
    """Return the CSS rule that finds a font in its package; empty where there is none."""
    family, package, file, weight, style = face
    spec = find_spec(package)
    homes = (spec.submodule_search_locations or ()) if spec else ()
    found = next((p for h in homes if (p := Path(h) / "files" / file).is_file()), None)
    if found is None:
        return ""
    return (
        f'@font-face {{ font-family: "{family}"; font-weight: {weight}; font-style: {style}; '
        f'src: url("{found.as_uri()}") }}'
    )
