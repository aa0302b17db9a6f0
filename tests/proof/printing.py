"""Template sheets and booklet pages printed by cairo, true or spoiled, for measuring.

The pages are drawn here by plain trigonometry and printed by a library that the project's
own typesetting does not use, so that a page known to be right is right independently.
"""

from __future__ import annotations

import io
import math
from collections.abc import Iterable, Sequence
from dataclasses import replace

import cairosvg
import pikepdf
from reedmace import draft, pattern
from reedmace_case import plan
from shapely.geometry import MultiPolygon

from publish.model.book import LETTER, Edition
from publish.model.figure import Artwork, Sheet, Shown
from publish.notes import Note
from publish.proof import measure

SQUARE = (7.0, 0.5, 1.0)
SHEET = Sheet(
    "reedmace-mini-wedge-1",
    "",
    "Wedge, Mini, sheet 1",
    ("reedmace", "mini", "wedge"),
    (Shown("reedmace", "mini", "wedge", -0.5, -7.2, (7.5, 8.75), (0.5, 1.75), turn=-90.0),),
    SQUARE,
    "",
)
"""The wedge stands upright: its straight edge, along x as drafted, is turned to point up."""
WHOLE = replace(
    SHEET,
    key="reedmace-mini-whole-1",
    leads=("reedmace", "mini", "whole"),
    shown=(
        Shown("reedmace", "mini", "whole", -0.5, -8.0, (7.5, 8.75), (0.5, 1.75), mirrored=True),
    ),
)
"""One sheet of the unfolded motif: only a part of it lies in the window."""


def placed(sheet: Sheet, shape: MultiPolygon) -> list[list[tuple[float, float]]]:
    """Return a shape's rings in points on the page, as the sheet says they lie."""
    (shown,) = sheet.shown
    angle = math.radians(shown.turn)
    rings = [r for p in shape.geoms for r in (p.exterior, *p.interiors)]
    return [
        [
            (
                72 * (x * math.cos(angle) - y * math.sin(angle) - shown.x + shown.at[0]),
                72 * (x * math.sin(angle) + y * math.cos(angle) - shown.y + shown.at[1]),
            )
            for x, y in ((-x if shown.mirrored else x, y) for x, y in ring.coords)
        ]
        for ring in rings
    ]


def sheet_svg(
    sheet: Sheet = SHEET,
    *,
    change: str = "",
    outline: bool = True,
    square: bool = True,
    line: float = 0.8,
) -> str:
    """Return a template sheet; `change` is an SVG transform laid on all of it, in points."""
    shape = draft().motifs["reedmace"]
    left, top, side = (72 * v for v in sheet.square)
    wide, high = (72 * v for v in sheet.shown[0].window)
    x, y = (72 * v for v in sheet.shown[0].at)
    body = f'<clipPath id="w"><rect x="{x}" y="{y}" width="{wide}" height="{high}"/></clipPath>'
    if square:
        body += (
            f'<rect x="{left}" y="{top}" width="{side}" height="{side}" fill="none" '
            f'stroke="#000" stroke-width="0.5"/>{text("1 in", left + 8, top + 40)}'
        )
    if outline:
        rings = placed(sheet, shape.wedge if sheet.leads[2] == "wedge" else shape.whole)
        path = " ".join("M" + " L".join(f"{a:.4f} {b:.4f}" for a, b in ring) for ring in rings)
        body += (
            f'<path d="{path}" clip-path="url(#w)" fill="none" stroke="#000" '
            f'stroke-width="{line}"/>'
        )
    return page_svg(f'<g transform="{change}">{body}</g>' if change else body)


def text(words: str, x: float, y: float, size: float = 12) -> str:
    return f'<text x="{x}" y="{y}" font-size="{size}" font-family="DejaVu Sans">{words}</text>'


def page_svg(body: str, width: float = 8.5, height: float = 11.0) -> str:
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}in" height="{height}in" '
        f'viewBox="0 0 {72 * width} {72 * height}">{body}</svg>'
    )


def pdf_of(pages: Iterable[str], bookmarks: Sequence[str] = ("Templates",)) -> pikepdf.Pdf:
    """Return the pages as one PDF, with a bookmark for each name, page by page."""
    book = pikepdf.new()
    for svg in pages:
        with pikepdf.open(io.BytesIO(cairosvg.svg2pdf(svg.encode()))) as one:
            book.pages.extend(one.pages)
    with book.open_outline() as outline:
        for number, name in enumerate(bookmarks):
            outline.root.append(pikepdf.OutlineItem(name, number))
    return book


def edition(book: pikepdf.Pdf, sheets: Sequence[Sheet], name: str = "templates-letter") -> Edition:
    """Return an edition whose first pages are the sheets."""
    stream = io.BytesIO()
    book.save(stream)
    pages = {sheet.key: number for number, sheet in enumerate(sheets, start=1)}
    return Edition(name, LETTER, stream.getvalue(), "", pages, name.partition("-")[0])


def findings(
    book: pikepdf.Pdf, sheets: Sequence[Sheet] = (SHEET,), name: str = "templates-letter"
) -> tuple[Note, ...]:
    """Return what measuring finds in a PDF whose first pages are the sheets."""
    groups = {s.leads: (s,) for s in sheets}
    plans = {"mini": plan()} if name.startswith("booklet") else None
    return measure(
        pattern(), {"mini": draft()}, Artwork({}, groups), edition(book, sheets, name), plans
    )
