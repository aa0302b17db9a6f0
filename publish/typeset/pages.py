"""Templates filled in: a manual as HTML, the styles of a layout as CSS.

In: layout, pattern, manual, artwork, paper. Out: `Composed`, or notes with the template's
file and line.
Invariant: templates see only the values listed in layouts/README.md; an unknown name is
an error, never an empty string; whatever is not marked as HTML is escaped.
"""

from __future__ import annotations

import re
import traceback
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby
from pathlib import Path
from typing import Any

from jinja2 import BaseLoader, ChoiceLoader, PrefixLoader, TemplateError
from jinja2.exceptions import TemplateSyntaxError
from markupsafe import Markup

from publish.model.book import Paper
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.model.words import Manual
from publish.notes import Note, Place, error, shown_path
from publish.typeset import composing, house, photos, plates, prose, tables
from publish.typeset.composing.measuring import measure
from publish.typeset.fonts import face_css
from publish.typeset.layout import Layout
from publish.typeset.palette import palette
from publish.typeset.pictures import Print, logo
from publish.typeset.sandbox import Folder, Sandbox
from publish.typeset.shelf import Shelf
from publish.typeset.styled import Composed, Styled, StyleSheet, read_styles
from publish.units import POINTS_PER_INCH

_UNREAD = (OSError, UnicodeDecodeError, RecursionError, MemoryError)
"""What a template can raise without a line of its own: it cannot be read, or is nested or
grows beyond what can be held."""
_FAULTS = (
    TemplateError,
    ArithmeticError,
    AttributeError,
    LookupError,
    TypeError,
    ValueError,
    *_UNREAD,
)
"""What a template can raise: its own errors, and those of the values it works with."""
WORDED = ("booklet", "kits")
"""Editions with pages of words; the others are sheets alone."""


def compose(
    layout: Layout,
    pattern: Pattern,
    manual: Manual,
    artwork: Artwork,
    paper: Paper,
    edition: str,
    bleed: float = 0.0,
) -> tuple[Composed | None, tuple[Note, ...]]:
    """Return the edition as HTML and CSS.

    `edition` is `booklet` or `templates`; a layout may leave the covers out of the latter.
    `bleed` is how far colour runs over the edges, in points.
    """
    frame, wrong = composing.grid(layout)
    if wrong:
        return None, wrong
    environment = _environment(layout, artwork)
    values = _values(layout, pattern, manual, paper, edition) | {"bleed": bleed, "leaves": []}
    try:
        css = [environment.get_template(_layer(layout, p)).render(values) for p in layout.styles]
        sheets = [StyleSheet(p, text) for p, text in zip(layout.styles, css, strict=True)]
        plain = house.PLAIN_LETTERS if pattern.style.fonts else ""
        sheets.append(StyleSheet(None, f"{face_css(layout.fonts)}\n{plain}"))
        shelf = Shelf(layout, {}, {})
        styled = read_styles(sheets, shelf)
        if frame is not None and edition in WORDED:
            template = environment.get_template("items.html").make_module(values)
            values |= {"leaves": _leaves(frame, template, values, artwork, styled, shelf)}
        html = environment.get_template(layout.template).render(values)
    except _FAULTS as fault:
        note = _note(fault, layout)
        if note is None:
            raise
        return None, (note,)
    return Composed(html, tuple(sheets), _pictures(pattern, artwork, html), styled), ()


def _leaves(
    frame: composing.Grid,
    template: Any,
    values: Mapping[str, Any],
    artwork: Artwork,
    styled: Styled,
    shelf: Shelf,
) -> list[composing.Leaf]:
    """Return the pages between the covers, composed; `template` has the macro `item`."""
    booklet = values["edition"] == "booklet"
    return composing.compose(
        frame,
        values["manual"],
        artwork,
        values["photos"] if booklet else (),
        booklet,
        lambda placed: str(template.item(placed)),
        lambda parts: measure(parts, styled.sheets, styled.fonts, shelf),
    )


def _pictures(pattern: Pattern, artwork: Artwork, html: str) -> dict[str, Print]:
    """Return the designer's own pictures that the pages show, and the computed ones."""
    found = photos.prints(pattern, html)
    for name, each in artwork.pictures.items():
        address = f"{plates.PICTURE}:{name}"
        found[address] = Print(each.data, "image/jpeg", each.width, each.height)
    mark = logo(pattern.style.logo) if pattern.style.logo else None
    return found | ({plates.LOGO: mark} if mark is not None else {})


def _layer(layout: Layout, style: Path) -> str:
    """Return the name that one style sheet of a layout is loaded by."""
    at = next(n for n, folder in enumerate(layout.folders) if style.is_relative_to(folder))
    name = style.relative_to(layout.folders[at]).as_posix()
    return f"{layout.folders[at].name}/{name}" if at else name


def _loader(layout: Layout) -> BaseLoader:
    """Return where templates come from: the layout, what it extends, what all share.

    A layout's own file replaces one of the same name; `NAME/FILE` is always the file that
    the layout of that name has, so that a replacement can build on it.
    """
    files = [Folder(folder) for folder in layout.searched]
    bases: dict[str, BaseLoader] = {}
    for at, folder in enumerate(layout.folders[1:], start=1):
        bases.setdefault(folder.name, ChoiceLoader(files[at:]))
    return ChoiceLoader([*files, PrefixLoader(bases)])


def _environment(layout: Layout, artwork: Artwork) -> Sandbox:
    environment = Sandbox(_loader(layout))
    environment.filters.update(inline=prose.inline, prose=prose.prose, plain=prose.plain)
    environment.filters.update(kind=kind, runs=runs, columns=tables.columns, css_string=css_string)
    environment.globals.update(
        plate=lambda spec: plates.plate(artwork, spec),
        sheets=lambda block: plates.sheets(artwork, block),
        own_sheets=lambda block: plates.own_sheets(artwork, block),
        sheet_address=plates.address,
        sheet_anchor=plates.anchor,
    )
    return environment


def _values(
    layout: Layout, pattern: Pattern, manual: Manual, paper: Paper, edition: str
) -> dict[str, Any]:
    return {
        "pattern": pattern,
        "manual": manual,
        "edition": edition,
        "paper": paper,
        "page_width": paper.width * POINTS_PER_INCH,
        "page_height": paper.height * POINTS_PER_INCH,
        "settings": layout.settings,
        "colours": palette(pattern),
        "families": {role: Markup(house.stack(layout, role)) for role in layout.families},
        "logo": plates.logo(pattern),
        "cover_photo": next(iter(photos.plates(pattern, "cover")), None),
        "photos": photos.plates(pattern, "page"),
        "language": pattern.words.tag,
        "message": pattern.words.named("page-"),
    }


def kind(block: object) -> str:
    """Return a block's kind in lower case with underscores: `figure_grid`."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "_", type(block).__name__).lower()


def runs(blocks: Sequence[object]) -> list[list[object]]:
    """Return blocks in lists of one kind each, in order: what a layout may set together."""
    return [list(group) for _, group in groupby(blocks, key=type)]


def css_string(text: str) -> Markup:
    """Return text as a quoted CSS string."""
    escaped = "".join(c if c.isalnum() or c == " " else f"\\{ord(c):06x} " for c in text)
    return Markup(f'"{escaped}"')


def _frames(fault: Exception) -> Iterator[tuple[str, int]]:
    """Yield file and line of each frame of a fault; of a template's code, where it was
    written. Jinja has put that in its place already unless a template imports it."""
    for frame, line in traceback.walk_tb(fault.__traceback__):
        template = frame.f_globals.get("__jinja_template__")
        written = line if template is None else template.get_corresponding_lineno(line)
        yield frame.f_code.co_filename, written or 1


def _note(fault: Exception, layout: Layout) -> Note | None:
    """Return where in the templates something went wrong, or None if it was not there.

    An undefined name carries no line of its own; the last frame of the traceback that
    runs in a template does.
    """
    if isinstance(fault, TemplateSyntaxError):
        file = Path(fault.filename) if fault.filename else layout.folder / layout.template
        place = Place(shown_path(file), fault.lineno)
    else:
        inside = [
            (file, line)
            for file, line in _frames(fault)
            if any(Path(file).is_relative_to(d) for d in layout.searched)
        ]
        if not inside and not isinstance(fault, (TemplateError, *_UNREAD)):
            return None
        name, line = inside[-1] if inside else (layout.folder / layout.template, 1)
        place = Place(shown_path(Path(name)), line)
    said = str(fault) or type(fault).__name__
    return error("T703", place, f"the template cannot be filled in: {said}")
