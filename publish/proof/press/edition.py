"""A print shop's edition: whether it can be printed, trimmed, and cut from.

In: the press edition as it will be delivered, and what it was made from. Out: notes.
Invariant: what is measured is the file's own content, not how it was made. Cut down to its
trim, an edition must also pass every check of the paper that a booklet at home passes.
"""

from __future__ import annotations

import io
from collections.abc import Mapping
from dataclasses import replace

import pikepdf

from publish.model.book import Edition
from publish.model.draft import Draft
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.notes import Note
from publish.proof.case import Code
from publish.proof.preflight import Preflight, preflight
from publish.proof.press import boxes as press_boxes
from publish.proof.press import colours as press_colours
from publish.proof.press import identity as press_identity
from publish.proof.printed import barcode, crowding, edges, folios, outline, pages, scale, type_size
from publish.proof.printed import fonts as printed_fonts
from publish.proof.printed import pictures as printed_pictures
from publish.proof.printed.paper import Measurement, Printed

AT_THE_SHOP: tuple[Measurement, ...] = (
    press_colours.measure,
    press_boxes.measure,
    press_identity.measure,
    printed_fonts.measure,
    printed_pictures.coarse,
)
AFTER_TRIMMING: tuple[Measurement, ...] = (
    pages.measure,
    edges.measure,
    barcode.measure,
    type_size.measure,
    crowding.measure,
    folios.measure,
    scale.measure,
    outline.measure,
)
CODES: dict[str, Code] = {**press_colours.CODES, **press_boxes.CODES, **press_identity.CODES}


def measure_press(
    pattern: Pattern, drafts: Mapping[str, Draft], artwork: Artwork, edition: Edition
) -> tuple[Note, ...]:
    """Return every finding about a press edition, whose `pdf` is what the shop will get."""
    return measured_press(pattern, drafts, artwork, edition)[0]


def measured_press(
    pattern: Pattern, drafts: Mapping[str, Draft], artwork: Artwork, edition: Edition
) -> tuple[tuple[Note, ...], Preflight]:
    """Return what `measure_press` does, and what there was to measure."""
    with Printed(pattern, drafts, artwork, edition, {}) as printed:
        found = [note for each in AT_THE_SHOP for note in each(printed)]
    cut = replace(edition, pdf=trimmed(edition.pdf))
    with Printed(pattern, drafts, artwork, cut, {}) as printed:
        found += [note for each in AFTER_TRIMMING for note in each(printed)]
        return tuple(found), preflight(printed, found)


def trimmed(pdf: bytes) -> bytes:
    """Return the pages of a press edition as they are after the cut."""
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(pdf)) as book:
        for page in book.pages:
            trim = page.obj.get("/TrimBox", page.mediabox)
            for name in ("/MediaBox", "/CropBox", "/BleedBox"):
                page.obj[name] = trim
        book.save(stream)
    return stream.getvalue()
