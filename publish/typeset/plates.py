"""Figures and template sheets as the templates place them.

In: the artwork and the manual's specs. Out: `Plate`, a figure's address, words and
printed size; notes for what is missing or would not print true.
Invariant: a figure is never enlarged beyond what the template asks for, and a template
sheet is placed only when its drawing is exactly as large as the paper.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from urllib.parse import quote

from publish.model.book import Paper, full_size
from publish.model.figure import Artwork, Figure, Sheet
from publish.model.pattern import Pattern
from publish.model.words import FigureSpec, Manual, TemplateSheets
from publish.notes import Note, error
from publish.typeset import pictures
from publish.units import POINTS_PER_INCH

FIGURE = "figure"
SHEET = "sheet"
PICTURE = "picture"
"""Addresses of computed pictures, which figures show: `picture:cover`."""
LOGO = "own:logo"
CLOSE = 0.002
"""Inches by which a sheet's drawing may miss the paper: a seventh of a point."""

_TO_INCHES = {"in": 1.0, "pt": 1 / 72, "pc": 1 / 6, "mm": 1 / 25.4, "cm": 1 / 2.54, "px": 1 / 96}
_ROOT = re.compile(r"<svg\b[^>]*>", re.DOTALL)
_SIZE = re.compile(r"\b(width|height)\s*=\s*[\"']\s*([\d.]+)\s*([a-z]*)\s*[\"']")


@dataclass(frozen=True)
class Plate:
    """A figure in its place. `width` and `height` are printed points."""

    key: str
    src: str
    alt: str
    caption: str
    width: float
    height: float
    scalable: bool
    picture: bool = False
    """Whether its outer parts may be cut off, as a photograph's."""

    def within(self, width: float, height: float, enlarge: bool = False) -> Plate:
        """Return the plate made to fit a box of points; a fixed figure stays as it is."""
        share = min(width / self.width, height / self.height)
        if not self.scalable or (share >= 1 and not enlarge):
            return self
        return replace(self, width=self.width * share, height=self.height * share)


def plate(artwork: Artwork, spec: FigureSpec) -> Plate:
    """Return the figure that a spec asks for."""
    figure: Figure = artwork.figures[spec.key]
    return Plate(
        key=figure.key,
        src=f"{FIGURE}:{quote(figure.key, safe='')}",
        alt=figure.alt,
        caption=figure.caption or spec.caption,
        width=figure.width * POINTS_PER_INCH,
        height=figure.height * POINTS_PER_INCH,
        scalable=figure.scalable,
        picture=figure.picture,
    )


def logo(pattern: Pattern) -> Plate | None:
    """Return the designer's logo, or None."""
    path = pattern.style.logo
    found = pictures.logo(path) if path is not None else None
    if found is None:
        return None
    name = pattern.publication.studio or pattern.title
    return Plate(
        LOGO,
        LOGO,
        pattern.words.tell("page-logo", studio=name),
        "",
        found.width,
        found.height,
        True,
    )


def sheets(artwork: Artwork, block: TemplateSheets) -> tuple[Sheet, ...]:
    """Return the sheets that show one template, in print order."""
    return artwork.sheets[block.motif, block.size, block.part]


def own_sheets(artwork: Artwork, block: TemplateSheets) -> tuple[Sheet, ...]:
    """Return the sheets whose pages come with one template, in print order."""
    return artwork.printed_with((block.motif, block.size, block.part))


def address(sheet: Sheet) -> str:
    """Return the address that a template places a sheet's drawing by."""
    return f"{SHEET}:{quote(sheet.key, safe='')}"


def anchor(sheet: Sheet) -> str:
    """Return the element id that marks a sheet's page."""
    return f"sheet-{sheet.key}"


def wanted(manual: Manual) -> tuple[TemplateSheets, ...]:
    """Return every template that the manual gives pages to."""
    blocks = [b for s in manual.sections for b in s.blocks]
    return tuple(b for b in blocks if isinstance(b, TemplateSheets))


def check(pattern: Pattern, manual: Manual, artwork: Artwork, paper: Paper) -> tuple[Note, ...]:
    """Return a note for each figure or sheet that is not there or not true to size."""
    place = pattern.place("title")
    notes = [
        error("T705", place, "a figure that the booklet asks for was not drawn", received=spec.key)
        for spec in manual.figures()
        if spec.key not in artwork.figures
    ]
    if paper.parent and wanted(manual):
        what = "template sheets are at full size and do not go on half-size paper"
        expected = f"no template sheets, or {full_size(paper).name}"
        notes.append(error("T709", place, what, expected=expected, received=paper.name))
        return tuple(notes)
    for block in wanted(manual):
        found = artwork.sheets.get((block.motif, block.size, block.part))
        if not found:
            name = f"{block.motif}, {block.size}, {block.part}"
            what = "the template sheets that the booklet asks for were not drawn"
            notes.append(error("T706", place, what, received=name))
        notes += [_untrue(pattern, s, paper) for s in found or () if not _true(s, paper)]
    return tuple(notes)


def _true(sheet: Sheet, paper: Paper) -> bool:
    size = drawn_size(sheet.svg)
    if size is None:
        return False
    return abs(size[0] - paper.width) <= CLOSE and abs(size[1] - paper.height) <= CLOSE


def _untrue(pattern: Pattern, sheet: Sheet, paper: Paper) -> Note:
    size = drawn_size(sheet.svg)
    received = f"{size[0]:.3f} x {size[1]:.3f} in" if size else "no size"
    return error(
        "T707",
        pattern.place("motifs", sheet.leads[0]),
        f"the template sheet {sheet.key} is not drawn at the size of the paper",
        expected=f"{paper.width:.3f} x {paper.height:.3f} in",
        received=received,
    )


def drawn_size(svg: str) -> tuple[float, float] | None:
    """Return the width and height that an SVG states, in inches, or None."""
    root = _ROOT.search(svg)
    found = {m[1]: (m[2], m[3] or "px") for m in _SIZE.finditer(root[0])} if root else {}
    try:
        width, height = (float(found[k][0]) * _TO_INCHES[found[k][1]] for k in ("width", "height"))
    except (KeyError, ValueError):
        return None
    return width, height
