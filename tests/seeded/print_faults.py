"""Slips between the typeset page and the paper: one page, object or number changed.

In: nothing. Out: `FAULTS`: what is wrong, the change, and the code that has to say so.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import dataclass, replace

import pikepdf
from state import State

from publish import proof
from publish.model.book import Edition
from publish.model.figure import Artwork
from publish.notes import Note


@dataclass(frozen=True)
class Print:
    """What the checks of the paper are given."""

    state: State
    artwork: Artwork
    edition: Edition
    reset: Callable[[State], Edition]
    """Sets another state's booklet, for slips between the model and the page."""

    def notes(self) -> tuple[Note, ...]:
        return proof.measure(
            self.state.pattern,
            self.state.drafts,
            self.artwork,
            self.edition,
            self.state.plans,
            self.state.manual,
            self.state.sizes,
        )

    def page_of(self, words: str) -> int:
        """Return the first page, from 0, with some words in its text."""
        return next(n for n, text in enumerate(texts(self.edition)) if words in text)


Change = Callable[[Print], Print]


def texts(edition: Edition) -> list[str]:
    import pypdfium2

    with pypdfium2.PdfDocument(edition.pdf) as book:
        return [page.get_textpage().get_text_bounded() for page in book]


def edited(change: Callable[[pikepdf.Pdf, Print], None]) -> Change:
    """Return a change of the PDF's own objects."""

    def made(printed: Print) -> Print:
        with pikepdf.open(io.BytesIO(printed.edition.pdf)) as book:
            change(book, printed)
            stream = io.BytesIO()
            book.save(stream)
        return replace(printed, edition=replace(printed.edition, pdf=stream.getvalue()))

    return made


def dropped(words: str) -> Change:
    def change(book: pikepdf.Pdf, printed: Print) -> None:
        del book.pages[printed.page_of(words)]

    return edited(change)


def moved(matrix: str, sheet: bool = True) -> Change:
    """Return a change that lays a matrix on the template page, or on every page."""

    def change(book: pikepdf.Pdf, printed: Print) -> None:
        numbers = set(printed.edition.sheet_pages.values())
        for number, page in enumerate(book.pages, start=1):
            if number in numbers or not sheet:
                page.contents_add(f"q {matrix} cm".encode(), prepend=True)
                page.contents_add(b"Q")

    return edited(change)


def _blanked(book: pikepdf.Pdf, printed: Print) -> None:
    book.pages[printed.page_of("Binding")].Contents = book.make_stream(b"")


def _other_paper(book: pikepdf.Pdf, printed: Print) -> None:
    book.pages[3].MediaBox = [0, 0, 595.28, 841.89]


def _turned(book: pikepdf.Pdf, printed: Print) -> None:
    book.pages[4].Rotate = 90


def _no_bookmarks(book: pikepdf.Pdf, printed: Print) -> None:
    del book.Root["/Outlines"]


def _swapped(book: pikepdf.Pdf, printed: Print) -> None:
    one, other = printed.page_of("Folding the fabric"), len(book.pages) - 3
    pages = list(book.pages)
    pages[one], pages[other] = pages[other], pages[one]
    for at, page in enumerate(pages):
        book.pages[at] = page


def _twice(book: pikepdf.Pdf, printed: Print) -> None:
    book.pages.insert(printed.page_of("Needle-turn"), book.pages[printed.page_of("Needle-turn")])


def _plain_font(book: pikepdf.Pdf, printed: Print) -> None:
    font = pikepdf.Dictionary(
        Type=pikepdf.Name.Font, Subtype=pikepdf.Name.Type1, BaseFont=pikepdf.Name.Helvetica
    )
    resources = book.pages[2].Resources
    resources.Font = pikepdf.Dictionary(Plain=book.make_indirect(font))


def reset(change: Callable[[State], State]) -> Change:
    """Return a change of the words that are set, while the model stays as it was."""
    return lambda p: replace(p, edition=p.reset(change(p.state)))


def unlisted(printed: Print) -> Print:
    return replace(printed, edition=replace(printed.edition, sheet_pages={}))


FAULTS: tuple[tuple[str, Change, str], ...] = (
    ("the cutting page is lost", dropped("Pieces for the"), "P870"),
    ("a page of steps is lost", dropped("sleeve strip"), "P870"),
    (
        "the template page is lost",
        edited(lambda book, p: book.pages.__delitem__(min(p.edition.sheet_pages.values()) - 1)),
        "P877",
    ),
    ("every page is fitted to the paper", moved("0.97 0 0 0.97 9.18 11.88", sheet=False), "P876"),
    ("the template page is fitted to the paper", moved("0.97 0 0 0.97 9.18 11.88"), "P876"),
    ("the template is stretched by a printer", moved("1.005 0 0 1 0 0"), "P877"),
    ("the template is printed mirrored", moved("-1 0 0 1 612 0"), "P877"),
    ("the template slides on its page", moved("1 0 0 1 2 0"), "P877"),
    ("a page is blank", edited(_blanked), "P873"),
    ("a page is of another paper", edited(_other_paper), "P871"),
    ("a page is turned", edited(_turned), "P871"),
    ("bookmarks are lost", edited(_no_bookmarks), "P875"),
    ("two pages are swapped", edited(_swapped), "P875"),
    ("a page is there twice", edited(_twice), "P877"),
    ("a font is not in the file", edited(_plain_font), "P872"),
    ("the template has no page", unlisted, "P879"),
    (
        "a cut size is set wrongly",
        reset(
            lambda s: s.words(
                "16 1/2 in × 2 1/2 in (41.9 cm × 6.4 cm)", "17 1/2 in × 2 1/2 in (44.5 cm × 6.4 cm)"
            )
        ),
        "P870",
    ),
    (
        "a length to buy is set wrongly",
        reset(lambda s: s.words("7/8 yd (0.80 m)", "3/8 yd (0.40 m)")),
        "P870",
    ),
    (
        "the count in the cutting table is set wrongly",
        reset(lambda s: s.words("3", "2", "cutting", times=1)),
        "P878",
    ),
    (
        "the batting is not printed",
        reset(lambda s: s.words("26 in (66.0 cm)", "a little more")),
        "P870",
    ),
    ("the backing is not printed", reset(lambda s: s.words("28 in (71.1 cm)", "large")), "P878"),
    (
        "the binding's length is not printed",
        reset(lambda s: s.words("90 in (228.6 cm)", "ample")),
        "P878",
    ),
    (
        "the finished size is not printed",
        reset(lambda s: s.words("20 in (50.8 cm)", "small").cover(sizes=()).back(sizes=())),
        "P870",
    ),
)
