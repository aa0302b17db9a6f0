"""Imposition: single pages to printer's spreads that are folded once and stapled.

In: a PDF of single pages, the sheet it is printed on. Out: `Imposed`, a PDF whose pages
are the fronts and backs of the sheets, outermost first, to print on both sides and turn
on the short edge.
Invariant: folded and nested, the sheets read in the order of the pages; no page reaches
across the fold; a page is never enlarged. Template sheets must not be among the pages:
folded and scaled paper cuts nothing true.

Nested sheets push each other out at the fold, sheet k by (k - 1) times the paper's
thickness (Color Vision Printing, Saddle stitch binding: what is creep); the pages of
sheet k move towards the fold by as much, so that their margins are even after trimming.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

import pikepdf

from publish.deliver.fillers import NOTES, filler_page
from publish.deliver.marks import LENGTH, Box, crop_marks, fold_marks, number
from publish.model.trade import PAPER_THICKNESS
from publish.units import INCH_IN_MM, POINTS_PER_INCH, decimal_text

PAGES_PER_SHEET = 4
GAP = 9.0
"""Points between what is cut and the marks where there is no bleed."""


CLOSE = 1e-5
"""Share by which a page may miss the size of its half sheet and count as that size."""


@dataclass(frozen=True)
class Stock:
    """A sheet as it lies in the printer, folded across its width. Inches."""

    name: str
    width: Fraction
    height: Fraction


def _metric(name: str, width: int, height: int) -> Stock:
    return Stock(name, width / INCH_IN_MM, height / INCH_IN_MM)


HALVES = {
    "letter": Stock("US Letter", Fraction(11), Fraction(17, 2)),
    "a4": _metric("A4", 297, 210),
}
"""By paper: the sheet of that paper, which folds to half its size (5 1/2 x 8 1/2 in, A5);
pages of the whole size are reduced to fit."""
SPREADS = {
    "letter": Stock("tabloid", Fraction(17), Fraction(11)),
    "a4": _metric("A3", 420, 297),
    "half-letter": HALVES["letter"],
    "a5": HALVES["a4"],
}
"""By paper: the sheet that folds to a booklet of that paper's size. ISO 216, ANSI Y14.1."""


@dataclass(frozen=True)
class Imposed:
    """Printer's spreads, and what was done to make them."""

    pdf: bytes
    sides: tuple[tuple[int, int], ...]
    """Left and right page of each side, front and back in turn; 0 is a filler page."""
    fillers: int
    creep: tuple[Fraction, ...]
    """Inches by which the pages of each sheet moved towards the fold, outermost first."""
    scale: float
    said: str
    """For the printer: sheets, filler pages, scale and creep in words."""


def impose(
    pdf: bytes,
    sheet: Stock,
    pages: Sequence[int] | None = None,
    *,
    thickness: Fraction = PAPER_THICKNESS,
    marks: bool = True,
    filler: str = NOTES,
) -> Imposed:
    """Return `pages` (numbers from 1; all when None) as spreads on `sheet`.

    Filler pages (`notes` or `blank`) stand before the last page, the back cover. With
    `marks`, the PDF's pages are larger than the sheet and carry crop and fold marks.
    Raises ValueError when there is no such page or none at all.
    """
    with pikepdf.open(io.BytesIO(pdf)) as book:
        count = len(book.pages)
        wanted = list(range(1, count + 1)) if pages is None else list(pages)
        if not wanted or not all(1 <= p <= count for p in wanted):
            raise ValueError(f"pages are numbered from 1 to {count}")
        order = filled(wanted)
        creep = creep_of(len(order) // PAGES_PER_SHEET, thickness)
        press = _Press(book, sheet, marks, filler, wanted[0])
        sides = spreads(order)
        made = [press.side(pair, creep[i // 2]) for i, pair in enumerate(sides)]
        _replace_pages(book, made)
        stream = io.BytesIO()
        book.save(stream, deterministic_id=True)
    fillers = len(order) - len(wanted)
    said = _said(sheet, creep, fillers, filler, press.scale)
    return Imposed(stream.getvalue(), sides, fillers, creep, press.scale, said)


def page_count(pdf: bytes) -> int:
    """Return how many pages a PDF has."""
    with pikepdf.open(io.BytesIO(pdf)) as book:
        return len(book.pages)


def filled(pages: Sequence[int]) -> list[int]:
    """Return pages with as many fillers (0) before the last as make a multiple of four."""
    missing = -len(pages) % PAGES_PER_SHEET
    if len(pages) == 1:
        return [*pages, *[0] * missing]
    return [*pages[:-1], *[0] * missing, pages[-1]]


def spreads(order: Sequence[int]) -> tuple[tuple[int, int], ...]:
    """Return left and right of each side, outermost sheet first, front before back."""
    sides: list[tuple[int, int]] = []
    for outer in range(0, len(order) // 2, 2):
        sides.append((order[-1 - outer], order[outer]))
        sides.append((order[outer + 1], order[-2 - outer]))
    return tuple(sides)


def creep_of(sheets: int, thickness: Fraction) -> tuple[Fraction, ...]:
    """Return by how much each nested sheet is pushed out, the outermost first."""
    return tuple(k * thickness for k in range(sheets))


def _said(sheet: Stock, creep: Sequence[Fraction], fillers: int, kind: str, scale: float) -> str:
    """Return what the printer should know, in words."""
    sheets = f"{len(creep)} sheet{'' if len(creep) == 1 else 's'} of {sheet.name}"
    parts = [f"{sheets}, both sides, turned on the short edge, folded and stapled in the fold."]
    if fillers:
        name = "page for notes" if kind == NOTES else "blank page"
        parts.append(
            f"{fillers} {name if fillers == 1 else name.replace('page', 'pages')} added before "
            "the back cover, to make a multiple of four."
        )
    if scale < 1:
        parts.append(f"Pages are reduced to {scale * 100:.1f} %.")
    if creep[-1]:
        moved = decimal_text(creep[-1] * INCH_IN_MM, 1)
        parts.append(f"Creep is allowed for: the innermost pages are {moved} mm nearer the fold.")
    return " ".join(parts)


class _Press:
    """Places pages of one book on one kind of sheet. Everything in points."""

    def __init__(
        self, book: pikepdf.Pdf, sheet: Stock, marks: bool, filler: str, first: int
    ) -> None:
        self._book = book
        self._half = float(sheet.width) * POINTS_PER_INCH / 2
        self._height = float(sheet.height) * POINTS_PER_INCH
        self._marks = marks
        self._forms: dict[int, pikepdf.Object] = {}
        self._trims: dict[int, Box] = {}
        left, bottom, right, top = _box(book.pages[first - 1], "/TrimBox")
        self._size = (right - left, top - bottom)
        share = min(self._half / self._size[0], self._height / self._size[1])
        # Sizes in millimetres are rounded on their way into the PDF.
        self.scale = share if share < 1 - CLOSE else 1.0
        bleed = left - _box(book.pages[first - 1], "/BleedBox")[0]
        self._bleed = bleed * self.scale if marks else 0.0
        self._filler = filler_page(filler, *self._size)

    def side(self, pair: tuple[int, int], creep: Fraction) -> pikepdf.Object:
        """Return one side of a sheet as a page."""
        gap = max(self._bleed, GAP)
        slug = gap + LENGTH + GAP if self._marks else 0.0
        sheet = (slug, slug, slug + 2 * self._half, slug + self._height)
        names, parts = {}, []
        for right, page in enumerate(pair):
            name = f"P{right}"
            names[name] = self._form(page)
            parts.append(self._placed(name, page, sheet, bool(right), float(creep)))
        if self._marks:
            parts += [crop_marks(sheet, gap), fold_marks(sheet, gap)]
        return self._page(sheet, slug, names, "".join(parts))

    def _placed(self, name: str, page: int, sheet: Box, right: bool, creep: float) -> str:
        """Return the operators that draw a page in its half, cut off at the fold."""
        fold = sheet[0] + self._half
        trim = self._trims[page]
        wide, high = (trim[2] - trim[0]) * self.scale, (trim[3] - trim[1]) * self.scale
        aside, up = (self._half - wide) / 2, sheet[1] + (self._height - high) / 2
        moved = creep * POINTS_PER_INCH
        x = fold + aside - moved if right else sheet[0] + aside + moved
        low, tall = sheet[1] - self._bleed, self._height + 2 * self._bleed
        start = fold if right else sheet[0] - self._bleed
        clip = (start, low, self._half + self._bleed, tall)
        matrix = (self.scale, 0, 0, self.scale, x - trim[0] * self.scale, up - trim[1] * self.scale)
        return (
            f"q {' '.join(number(v) for v in clip)} re W n "
            f"{' '.join(f'{v:.6f}' for v in matrix)} cm /{name} Do Q\n"
        )

    def _form(self, page: int) -> pikepdf.Object:
        """Return a page as a drawing that spreads can hold; 0 is the filler page."""
        if page not in self._forms:
            if page:
                source = self._book.pages[page - 1]
                form = source.as_form_xobject()
                form["/BBox"] = pikepdf.Array(_box(source, "/BleedBox"))
                self._trims[page] = _box(source, "/TrimBox")
            else:
                form = pikepdf.Stream(self._book, self._filler)
                form["/Type"], form["/Subtype"] = pikepdf.Name.XObject, pikepdf.Name.Form
                form["/BBox"] = pikepdf.Array([0, 0, *self._size])
                self._trims[0] = (0.0, 0.0, *self._size)
            self._forms[page] = self._book.make_indirect(form)
        return self._forms[page]

    def _page(
        self, sheet: Box, slug: float, names: dict[str, pikepdf.Object], content: str
    ) -> pikepdf.Object:
        media = (0.0, 0.0, sheet[2] + slug, sheet[3] + slug)
        bleed = (*(v - self._bleed for v in sheet[:2]), *(v + self._bleed for v in sheet[2:]))
        page = pikepdf.Dictionary(
            Type=pikepdf.Name.Page,
            MediaBox=_array(media),
            BleedBox=_array(bleed),
            TrimBox=_array(sheet),
            Contents=pikepdf.Stream(self._book, content.encode()),
            Resources=pikepdf.Dictionary(
                XObject=pikepdf.Dictionary({f"/{n}": form for n, form in names.items()})
            ),
        )
        return self._book.make_indirect(page)


def _array(box: Sequence[float]) -> pikepdf.Array:
    return pikepdf.Array([round(v, 4) for v in box])


def _box(page: pikepdf.Page, name: str) -> Box:
    """Return one of a page's boxes; what a page does not state is its trim, or the page."""
    found = page.obj.get(name) or page.obj.get("/TrimBox") or page.mediabox
    left, bottom, right, top = (float(v) for v in found)
    return left, bottom, right, top


def _replace_pages(book: pikepdf.Pdf, made: Sequence[pikepdf.Object]) -> None:
    """Put the spreads in the place of the pages, and drop what pointed at the pages."""
    del book.pages[:]
    for page in made:
        book.pages.append(pikepdf.Page(page))
    for key in (
        "/Outlines",
        "/Names",
        "/Dests",
        "/StructTreeRoot",
        "/MarkInfo",
        "/PageLabels",
        "/AcroForm",
        "/OpenAction",
        "/PageMode",
        "/ViewerPreferences",
    ):
        if key in book.Root:
            del book.Root[key]
    if "/OutputIntents" not in book.Root and "/Metadata" in book.Root:
        del book.Root["/Metadata"]  # it says that the file is tagged, and spreads are not
