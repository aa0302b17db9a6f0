"""Pages to read in a browser, post or print: filled in, complete in one file.

In: a template of `publish/pages` and its values. Out: HTML; `web_pdf` makes PDF of it.
Invariant: a page names no other file, so that it can be moved, posted and opened
anywhere; text is escaped; the same values give the same bytes.
"""

from __future__ import annotations

import base64
import re
from functools import cache
from importlib import resources
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from publish.words import language

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
