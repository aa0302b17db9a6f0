"""A finished PDF opened for measuring: its pages as drawn, its text, its objects.

In: an edition with what it was made from. Out: `Printed`.
Invariant: the PDF's own page size, in points of 1/72 in (ISO 32000-1, 8.3.2.3), is what
is measured against; pixels come from PDFium, objects from qpdf, neither of which wrote
the file.
"""

from __future__ import annotations

import io
import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from types import TracebackType
from typing import Any, TypeVar

import numpy as np
import numpy.typing as npt
import pikepdf
import pypdfium2

from publish.model.book import Edition
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.figure import Artwork, Sheet
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual
from publish.notes import Note, Place
from publish.proof.printed.text import PageText
from publish.units import POINTS_PER_INCH

DPI = 600
"""Dots per inch at which lines are measured: one dot is 0.0017 in."""
DARK = 128
"""Grey below which a dot counts as ink."""

Said = TypeVar("Said")
Box = tuple[float, float, float, float]
Grey = npt.NDArray[np.uint8]
Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Raster:
    """Part of a page as dots, row by row: 0 is black, 255 is white.

    `left` and `top` are the first dot's corner on the page in inches, `x` and `y` the dots
    to an inch.
    """

    dots: Grey
    left: float
    top: float
    x: float
    y: float

    @property
    def ink(self) -> npt.NDArray[np.bool_]:
        return self.dots < DARK


@dataclass(frozen=True)
class Printed:
    """An edition's PDF, opened; use it in a `with` statement."""

    pattern: Pattern
    drafts: Mapping[str, Draft]
    artwork: Artwork
    edition: Edition
    plans: Mapping[str, CutPlan]
    manual: Manual | None = None
    sizes: Mapping[str, Size] = field(default_factory=dict)
    _known: dict[Callable[[Printed], Any], Any] = field(default_factory=dict, compare=False)

    def once(self, reckon: Callable[[Printed], Said]) -> Said:
        """Return what a function says of this edition, reckoned no more than once."""
        if reckon not in self._known:
            self._known[reckon] = reckon(self)
        said: Said = self._known[reckon]
        return said

    def __enter__(self) -> Printed:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.pages.close()
        self.objects.close()

    @cached_property
    def pages(self) -> pypdfium2.PdfDocument:
        return pypdfium2.PdfDocument(self.edition.pdf)

    @cached_property
    def objects(self) -> pikepdf.Pdf:
        return pikepdf.open(io.BytesIO(self.edition.pdf))

    @property
    def place(self) -> Place:
        """Return where the pattern names the paper that this edition is for."""
        return self.pattern.place("papers")

    def sheets(self) -> Iterator[tuple[Sheet, int]]:
        """Yield each template sheet that this edition prints, and its page from 0."""
        for sheet in self.artwork.pages:
            page = self.edition.sheet_pages.get(sheet.key)
            if page is not None and 1 <= page <= len(self.pages):
                yield sheet, page - 1

    def sheet_place(self, sheet: Sheet) -> Place:
        return self.pattern.place("motifs", sheet.leads[0])

    @cached_property
    def sides(self) -> tuple[PageText, ...]:
        """Return each page with its text, opened once for all that look at it."""
        return tuple(PageText(page) for page in self.pages)

    @cached_property
    def texts(self) -> tuple[str, ...]:
        """Return each page's text as PDFium reads it."""
        return tuple(side.text.get_text_bounded() for side in self.sides)

    def raster(self, page: int, box: Box, dpi: int = DPI) -> Raster:
        """Return part of a page, from 0, as grey dots.

        `box` is left, top, right, bottom in inches from the page's top left corner; it is
        widened to whole dots and cut to the page.
        """
        drawn = self.sides[page].page
        scale = dpi / POINTS_PER_INCH
        inches = tuple(points / POINTS_PER_INCH for points in drawn.get_size())
        # PDFium draws the page on a whole number of dots, so a dot is not quite 1 / dpi.
        across, down = (math.ceil(side * dpi) for side in inches)
        x, y = across / inches[0], down / inches[1]
        left, top = max(0, math.floor(box[0] * x)), max(0, math.floor(box[1] * y))
        right, bottom = min(across, math.ceil(box[2] * x)), min(down, math.ceil(box[3] * y))
        trimmed = (left, down - bottom, across - right, top)
        # The crop is rounded up to whole dots: half a dot less is safe from float error.
        crop = tuple((c - 0.5) / scale if c else 0 for c in trimmed)
        bitmap = drawn.render(scale=scale, crop=crop, grayscale=True)
        dots = np.array(bitmap.to_numpy(), dtype=np.uint8)
        return Raster(dots.reshape(dots.shape[:2]), left / x, top / y, x, y)


Measurement = Callable[[Printed], Iterator[Note]]
