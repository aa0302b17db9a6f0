"""What a shop gets besides the pattern: pictures, a listing, kit sheets, a tester's form.

In: pattern, manual, numbers, plans, editions. Out: file contents by name, below `shop/`.
Invariant: a picture is a page of the edition that is sold; all words and numbers come from
the model.
"""

from __future__ import annotations

import io
import json
from collections.abc import Mapping, Sequence
from typing import Any

import pypdfium2

from publish.deliver.kits import kits_text
from publish.deliver.listing import file_name, listing, listing_text, page_count
from publish.deliver.tester import tester_form
from publish.model.book import Edition
from publish.model.figure import Picture
from publish.model.pattern import Pattern
from publish.model.words import Manual
from publish.notes import Note, error
from publish.words import Language

Json = dict[str, Any]
FOLDER = "shop"
COVERS = {"cover": 1, "back": -1}
SHOWN = ("materials",)
"""Keys of the sections that are shown, besides the first, where the designer names no
pages."""


def pictures(
    edition: Edition, sides: Sequence[int], pages: Mapping[str, int] | None = None
) -> dict[str, bytes]:
    """Return PNG files of pages: `shop/cover-2000.png`.

    `pages` names page numbers from 1, or from the end when negative; None for the covers.
    `sides` are the pixels of a picture's longer side. Raises ValueError for a page that is
    not there.
    """
    files = {}
    document = pypdfium2.PdfDocument(edition.pdf)
    try:
        for name, number in (COVERS if pages is None else pages).items():
            index = number - 1 if number > 0 else len(document) + number
            if number == 0 or not 0 <= index < len(document):
                raise ValueError(f"{name}: {edition.name} has no page {number}")
            for side in sides:
                files[f"{FOLDER}/{name}-{side}.png"] = _picture(document[index], side)
    finally:
        document.close()
    return files


def shown_pages(pattern: Pattern, manual: Manual, edition: Edition) -> tuple[int, ...]:
    """Return which pages inside a booklet a shop shows, numbered from 1.

    Where the designer names none: the first pages of the opening section and of the
    materials, as the booklet's own bookmarks say.
    """
    if not edition.is_booklet or pattern.shop.pages:
        return pattern.shop.pages if edition.is_booklet else ()
    keys = {s.key: s.title for s in manual.sections}
    titles = [next(iter(keys.values()), ""), *(keys.get(key, "") for key in SHOWN)]
    document = pypdfium2.PdfDocument(edition.pdf)
    try:
        starts: dict[str, int] = {}
        for bookmark in document.get_toc():
            target = bookmark.get_dest()
            if target is not None:
                starts.setdefault(bookmark.get_title(), target.get_index() + 1)
    finally:
        document.close()
    return tuple(dict.fromkeys(starts[title] for title in titles if title in starts))


def nothing_of(pattern: Pattern, only: str) -> Note:
    """Return the note that a pattern has nothing of the one edition that was asked for."""
    what = {"templates": "template sheets", "full-size": "motif to print at full size"}
    return error(
        "X906",
        pattern.place(""),
        f"the pattern has no {what.get(only, only)}",
        help="leave out `--only`, or ask for the booklet",
    )


def picture_notes(pattern: Pattern, edition: Edition) -> tuple[Note, ...]:
    """Return a note for each page to be shown that is not there or would be given away."""
    if not edition.is_booklet:
        return ()
    count, sheets = page_count(edition), edition.sheet_pages.values()
    notes = []
    for at, number in enumerate(pattern.shop.pages):
        place = pattern.place("shop", "pictures", "pages", at)
        if number > count:
            notes.append(
                error(
                    "X904",
                    place,
                    f"{edition.name} has no such page to picture",
                    expected=f"a page from 1 to {count}",
                    received=str(number),
                    help="name a page of the booklet on the pattern's first paper",
                )
            )
        elif number in sheets:
            notes.append(
                error(
                    "X905",
                    place,
                    "a picture of a template sheet would give the pattern away",
                    expected="a page without a template",
                    received=f"page {number}",
                    help="name another page",
                )
            )
    return tuple(notes)


def _picture(page: pypdfium2.PdfPage, side: int) -> bytes:
    """Return a page as PNG, its longer side exactly `side` pixels."""
    longest = max(page.get_size())
    # PDFium rounds up to whole dots: a hair less than the exact scale gives `side`.
    image = page.render(scale=(side - 0.01) / longest).to_pil().convert("RGB")
    stream = io.BytesIO()
    image.save(stream, "PNG", optimize=True)
    return stream.getvalue()


def shop_files(
    pattern: Pattern,
    manual: Manual,
    numbers: Json,
    editions: Sequence[Edition],
    shown: Mapping[str, Picture],
) -> dict[str, bytes]:
    """Return computed pictures (`shown`, by name), pictures of the first edition, the listing
    and the tester's form.

    `picture_notes` must have found nothing.
    """
    said = listing(pattern, manual, numbers, editions, shown)
    first, wanted = editions[0], pattern.shop
    files = pictures(first, wanted.cover)
    inside = {f"page-{n:02}": n for n in shown_pages(pattern, manual, first)}
    files |= pictures(first, wanted.page, inside)
    files |= {f"{FOLDER}/{file_name(name, each)}": each.data for name, each in shown.items()}
    files[f"{FOLDER}/listing.json"] = json_file(said)
    files[f"{FOLDER}/listing.md"] = listing_text(pattern.words, manual, said).encode()
    files[f"{FOLDER}/tester-form.md"] = tester_form(pattern, manual, numbers).encode()
    return files


def kit_files(words: Language, found: Json) -> dict[str, bytes]:
    """Return a kit sheet, as `kits` found it, as JSON and Markdown."""
    return {"kits.json": json_file(found), "kits.md": kits_text(words, found).encode()}


def json_file(data: Json) -> bytes:
    """Return a file of data that people may read as well."""
    return json.dumps(data, indent=2, ensure_ascii=False).encode() + b"\n"
