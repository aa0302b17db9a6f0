"""Pages to read in a browser, post or print: filled in, complete in one file.

In: a template of `publish/pages` and its values. Out: HTML, and PDF made of it.
Invariant: a page names no other file, so that it can be moved, posted and opened
anywhere; text is escaped; the same values give the same bytes.
"""

from __future__ import annotations

import base64
import hashlib
import re
from functools import cache
from importlib import resources
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup
from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration
from weasyprint.urls import URLFetcher

from publish.words import language

_FACES = (
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-Light.ttf", 300, "normal"),
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-Regular.ttf", 400, "normal"),
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-It.ttf", 400, "italic"),
    ("Source Serif Pro", "font_source_serif_pro", "SourceSerifPro-Semibold.ttf", 600, "normal"),
    ("Source Sans Pro", "font_source_sans_pro", "SourceSansPro-Regular.ttf", 400, "normal"),
    ("Source Sans Pro", "font_source_sans_pro", "SourceSansPro-Semibold.ttf", 600, "normal"),
)
"""Family, package, file, weight and style of the fonts that a PDF is set in."""


_TIES = re.compile(r"(?<=\d) (?=\d+/\d|(?:in|yd|cm|mm|m|sq)\b)")


@cache
def _environment() -> Environment:
    made = Environment(
        loader=PackageLoader("publish", "pages"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.globals["language"] = language().tag
    made.filters["tied"] = tied
    made.filters["code"] = code
    return made


def tied(text: str) -> str:
    """Return text whose lengths stay on one line: `2 1/2 in` with no-break spaces."""
    return _TIES.sub("\u00a0", text)


def code(text: str) -> Markup:
    """Return text with what stands between backticks set as code, and the rest escaped."""
    parts = text.split("`")
    return Markup("").join(
        Markup("<code>{}</code>").format(part) if at % 2 else part for at, part in enumerate(parts)
    )


def render(template: str, **values: Any) -> str:
    """Return a page with its values, and the pages' style in it."""
    style = (resources.files("publish") / "pages" / "page.css").read_text(encoding="utf-8")
    return _environment().get_template(template).render(style=Markup(style), **values)


def embedded(data: bytes, kind: str = "image/svg+xml") -> str:
    """Return a drawing, or a picture of another kind, as an address that holds it."""
    return f"data:{kind};base64,{base64.b64encode(data).decode()}"


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
