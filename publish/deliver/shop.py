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

from publish.deliver.kits import kits, kits_text
from publish.deliver.listing import listing, listing_text
from publish.deliver.tester import tester_form
from publish.model.book import Edition
from publish.model.cutplan import CutPlan
from publish.model.pattern import Pattern
from publish.model.words import Manual

Json = dict[str, Any]
FOLDER = "shop"
SIDES = (2000, 600)
"""Pixels on the longer side of a picture: for a shop's page, and for its list."""
COVERS = {"cover": 1, "back": -1}


def pictures(
    edition: Edition, pages: Mapping[str, int] | None = None, sides: Sequence[int] = SIDES
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
    sides: Sequence[int] = SIDES,
) -> dict[str, bytes]:
    """Return pictures of the first edition's covers, the listing and the tester's form."""
    said = listing(pattern, manual, numbers, editions)
    files = pictures(editions[0], sides=sides)
    files[f"{FOLDER}/listing.json"] = _json(said)
    files[f"{FOLDER}/listing.md"] = listing_text(manual, said).encode()
    files[f"{FOLDER}/tester-form.md"] = tester_form(pattern, manual, numbers).encode()
    return files


def kit_files(
    pattern: Pattern, plans: Mapping[str, CutPlan], wanted: Mapping[str, int]
) -> dict[str, bytes]:
    """Return the kit sheet for `wanted` kits, by size key, as JSON and Markdown."""
    found = kits(pattern, plans, wanted)
    return {
        f"{FOLDER}/kits.json": _json(found),
        f"{FOLDER}/kits.md": kits_text(found).encode(),
    }


def _json(data: Json) -> bytes:
    return json.dumps(data, indent=2, ensure_ascii=False).encode() + b"\n"
