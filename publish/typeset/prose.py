"""Markdown to HTML, with lengths set as a printer sets them.

In: the manual's Markdown. Out: safe HTML (`Markup`).
Invariant: raw HTML and images in the text stay text; only words are touched, never a
link's address or code; what a reader copies is what the manual says (`2 1/2 in`).

A fraction is set by the font's own `frac` feature, so that the text layer keeps `1/2`.
A whole number, its fraction and its unit never part at a line's end.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache
from html import escape

from markdown_it import MarkdownIt
from markdown_it.renderer import RendererHTML
from markdown_it.token import Token
from markupsafe import Markup

RULER = (2, 3, 4, 8, 16, 32, 64)
"""Denominators that makers' rulers and shops use; others need a unit to count as lengths,
so that a day and month such as 1/12 stay as they are."""

_UNIT = r"(?: (?:(?:in|yd|ft|cm|mm|m)\b|%))"
_LENGTH = re.compile(
    rf"(?<![\w/.,-])"
    rf"(?:(?:(?P<whole>\d+) )?(?P<above>\d{{1,3}})/(?P<below>\d{{1,3}})(?P<unit>{_UNIT})?"
    rf"|(?P<plain>\d+(?:[.,]\d+)?{_UNIT}))"
    rf"(?P<by> ×)?(?![\w/]|-\d|[.,]\d)"
)

_BEFORE = re.compile(r'(?<=[^\s>]) (?=<(?:span class="length|strong|em|a |code))')
"""A space between a word and what is marked up after it."""


def lengths(text: str) -> str:
    """Return text as HTML: escaped, its lengths kept together, its fractions marked."""
    parts, at = [], 0
    for match in _LENGTH.finditer(text):
        marked = _marked(match)
        if marked is not None:
            parts += [escape(text[at : match.start()], quote=False), marked]
            at = match.end()
    return "".join(parts) + escape(text[at:], quote=False)


def _marked(match: re.Match[str]) -> str | None:
    """Return one length as HTML, or None when it only looks like one."""
    by = match["by"] or ""
    if match["plain"]:
        return f'<span class="length">{match["plain"]}{by}</span>'
    above, below = int(match["above"]), int(match["below"])
    unit = match["unit"] or ""
    if above >= below or (below not in RULER and not unit):
        return None
    part = f'<span class="fraction">{above}/{below}</span>{unit}{by}'
    if not match["whole"]:
        return f'<span class="length">{part}</span>'
    return f'<span class="length mixed">{match["whole"]} {part}</span>'


def _text(renderer: RendererHTML, tokens: Sequence[Token], at: int, *_: object) -> str:
    """Render a run of words; an address written as its own label stays as it is."""
    token = tokens[at]
    if at and tokens[at - 1].type == "link_open" and tokens[at - 1].markup == "autolink":
        return escape(token.content, quote=False)
    return lengths(token.content)


@cache
def _markdown() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False, "typographer": True})
    parser.enable(["smartquotes"]).disable(["image", "html_inline", "html_block"])
    parser.add_render_rule("text", _text)
    return parser


def inline(text: str) -> Markup:
    """Return one line of Markdown as HTML without a paragraph around it."""
    return _spaced(_markdown().renderInline(text))


def prose(text: str) -> Markup:
    """Return Markdown as HTML paragraphs and lists."""
    return _spaced(_markdown().render(text))


def plain(text: str) -> Markup:
    """Return words that are not Markdown, such as a title, as HTML."""
    return _spaced(lengths(text))


def _spaced(html: str) -> Markup:
    """Return HTML whose spaces before marked words stand by themselves.

    Where such a space ends a run of words, WeasyPrint sometimes breaks the line after the
    first word of the run instead of after the last.
    """
    return Markup(_BEFORE.sub("<span> </span>", html))
