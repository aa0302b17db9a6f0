"""The cover of a bound book in one piece: back, spine and front, and the inside without it.

In: a book set for a print shop, with its bleed. Out: PDF bytes.
Invariant: what stands on the covers stays where it is; the spine is as wide as the leaves
inside are thick together.

A spine's words read from the top down in English (common practice, no source), and one under
a quarter of an inch has none (common practice, no source).
"""

from __future__ import annotations

import io
import math
from dataclasses import dataclass
from fractions import Fraction

import pikepdf

from publish import web, web_pdf
from publish.model.book import BLEED, Edition, Paper
from publish.model.pattern import Pattern
from publish.typeset.palette import palette
from publish.units import POINTS_PER_INCH, decimal_text, mm_text, to_mm

NARROWEST = Fraction(1, 4)
"""Inches: the narrowest spine that is lettered."""
Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Spine:
    """The thickness of the leaves between the covers."""

    pages: int
    thickness: Fraction
    """Inches of one leaf."""

    @property
    def width(self) -> Fraction:
        return Fraction(self.pages, 2) * self.thickness

    @property
    def words(self) -> str:
        """Return what a print shop is told."""
        exact = decimal_text(self.width, 3)
        leaf = f"{decimal_text(self.thickness, 4)} in ({mm_text(self.thickness)})"
        return (
            f"spine {exact} in ({decimal_text(to_mm(self.width), 1)} mm): "
            f"{self.pages} pages on paper {leaf} thick"
        )


def spine_of(looks: Pattern, edition: Edition) -> Spine:
    """Return the spine of a book that was set with its covers."""
    with pikepdf.open(io.BytesIO(edition.pdf)) as book:
        inside = len(book.pages) - 1
    return Spine(inside + inside % 2, looks.publication.paper_thickness)


def cover_wrap(looks: Pattern, edition: Edition, paper: Paper) -> tuple[bytes, str]:
    """Return the cover in one piece, and what is said of its spine."""
    spine = spine_of(looks, edition)
    bleed = float(BLEED[paper.key]) * POINTS_PER_INCH
    wide, high = (side * POINTS_PER_INCH for side in (paper.width, paper.height))
    thick = float(spine.width) * POINTS_PER_INCH
    whole = (2 * wide + thick + 2 * bleed, high + 2 * bleed)
    page = web.render(
        "spine.html",
        title=looks.title,
        studio=looks.publication.studio,
        size=f"{whole[0]:.3f}pt {whole[1]:.3f}pt",
        left=f"{bleed + wide:.3f}",
        width=f"{thick:.3f}",
        height=f"{whole[1]:.3f}",
        lettered=spine.width >= NARROWEST,
        type=f"{min(thick * 0.5, 18):.2f}",
        colours=palette(looks),
    )
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(web_pdf.pdf(page))) as cover:
        sheet = cover.pages[0]
        sheet.contents_add(b"q\n", prepend=True)  # the page is drawn from its top down
        sheet.contents_add(b"\nQ\n")
        with pikepdf.open(io.BytesIO(edition.pdf)) as book:
            _lay(cover, book.pages[-1], bleed, (bleed, 0.0))
            _lay(cover, book.pages[0], bleed + wide + thick, (0.0, bleed))
        sheet.obj["/BleedBox"] = pikepdf.Array([0, 0, *map(_rounded, whole)])
        inner = (bleed, bleed, whole[0] - bleed, whole[1] - bleed)
        sheet.obj["/TrimBox"] = pikepdf.Array(list(map(_rounded, inner)))
        cover.save(stream, deterministic_id=True)
    return stream.getvalue(), spine.words


def inside(edition: Edition) -> bytes:
    """Return the pages between the covers: the front page is the title page, the back is
    left out, and the count is even."""
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(edition.pdf)) as book:
        size = book.pages[0].mediabox
        trim = book.pages[0].obj.get("/TrimBox")
        del book.pages[-1]
        if len(book.pages) % 2:
            book.add_blank_page(page_size=(float(size[2] - size[0]), float(size[3] - size[1])))
            blank = book.pages[-1].obj
            blank["/MediaBox"] = size
            if trim is not None:
                blank["/TrimBox"] = trim
                blank["/BleedBox"] = book.pages[0].obj["/BleedBox"]
        book.save(stream, deterministic_id=True)
    return stream.getvalue()


def _lay(cover: pikepdf.Pdf, page: pikepdf.Page, left: float, bleeds: tuple[float, float]) -> None:
    """Put a page on the cover, its trimmed left edge at `left`; colour runs over the edge by
    so much on the left and on the right."""
    trim = _box(page, "/TrimBox")
    bled = _box(page, "/BleedBox")
    form = cover.copy_foreign(page.as_form_xobject())
    form["/BBox"] = pikepdf.Array([trim[0] - bleeds[0], bled[1], trim[2] + bleeds[1], bled[3]])
    sheet = cover.pages[0]
    name = sheet.add_resource(form, pikepdf.Name.XObject)
    # The cover's bleed is the page's own, so that both stand on the same line.
    move = f"q 1 0 0 1 {left - trim[0]:.4f} {-bled[1]:.4f} cm {name} Do Q\n"
    sheet.contents_add(move.encode())


def _box(page: pikepdf.Page, name: str) -> Box:
    left, bottom, right, top = (float(v) for v in page.obj.get(name, page.mediabox))
    return left, bottom, right, top


def _rounded(value: float) -> float:
    return math.floor(value * 1000 + 0.5) / 1000
