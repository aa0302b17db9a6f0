"""What was measured in one finished PDF, for whoever sends it out.

In: an edition, what it was made from, what measuring it found. Out: `Preflight`, and all of
them as a few lines of text.
Invariant: every count is taken from the file itself by the code that measured it; a file
with an error is never called sound.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from publish.notes import Note, Severity
from publish.proof.printed.barcode import NOMINAL, found_in
from publish.proof.printed.fill import AIRY, fill
from publish.proof.printed.fonts import names
from publish.proof.printed.paper import DPI, Printed
from publish.proof.printed.pictures import shown
from publish.proof.printed.type_size import smallest
from publish.units import POINTS_PER_INCH

MEASURED = (
    "page boxes, blank and crowded pages, text against the trim, type sizes, fonts, pictures, "
    f"page numbers, bookmarks; check squares and outlines at {DPI} dots to the inch"
)
PRESSED = "bleed, inks, output intent, PDF/X-4"


@dataclass(frozen=True)
class Preflight:
    """One PDF: its page size in inches, how much of what was measured, what was found."""

    name: str
    pages: int
    width: float
    height: float
    sheets: int
    """Template sheets whose check square and outline were measured."""
    fonts: int
    pictures: int
    bookmarks: int
    smallest: float
    """Points: the smallest type; 0 for none."""
    barcode: float | None
    """Millimetres from the first bar to the last; None where there is none to find."""
    errors: int
    warnings: int
    full: float = 0.0
    """Of a booklet's body: the mean share of half-inch cells that carry ink; 0 of others."""
    airy: int = 0
    """Pages of which less than `AIRY` does."""


def preflight(printed: Printed, notes: Iterable[Note]) -> Preflight:
    """Return what there was to measure in a PDF, and how many findings `notes` holds."""
    severities = [n.severity for n in notes]
    first = printed.objects.pages[0]
    full = printed.once(fill)
    left, bottom, right, top = (float(v) for v in first.obj.get("/TrimBox", first.mediabox))
    return Preflight(
        printed.edition.name,
        len(printed.pages),
        (right - left) / POINTS_PER_INCH,
        (top - bottom) / POINTS_PER_INCH,
        len(list(printed.sheets())),
        len(names(printed.objects)),
        len(printed.once(shown)),
        len(list(printed.pages.get_toc())),
        smallest(printed),
        _barcode(printed),
        severities.count(Severity.ERROR),
        severities.count(Severity.WARNING),
        sum(full.values()) / len(full) if full else 0.0,
        sum(share < AIRY for share in full.values()),
    )


def _barcode(printed: Printed) -> float | None:
    number = printed.pattern.publication.barcode
    if not number or not printed.edition.name.startswith("booklet-"):
        return None
    found = printed.once(found_in)
    return None if found is None else found.width


def preflight_text(found: Sequence[Preflight]) -> str:
    """Return the result as lines: the verdict, what was looked at, one line for each file."""
    pages, errors = sum(f.pages for f in found), sum(f.errors for f in found)
    verdict = "sound" if not errors else _counted(errors, "error")
    what = MEASURED + (f"; {PRESSED}" if any(f.name.startswith("press") for f in found) else "")
    head = f"preflight: {_counted(len(found), 'PDF')}, {_counted(pages, 'page')}: {verdict}"
    return "\n".join([head, f"  measured: {what}", *map(_line, found)]) + "\n"


def _line(one: Preflight) -> str:
    size = f"{_short(one.width)} × {_short(one.height)} in"
    parts = [f"{_counted(one.pages, 'page')} of {size}"]
    if one.sheets:
        parts.append(f"{_counted(one.sheets, 'template sheet')} at 100 %")
    parts.append(_counted(one.fonts, "font"))
    if one.pictures:
        parts.append(_counted(one.pictures, "picture"))
    if one.bookmarks:
        parts.append(_counted(one.bookmarks, "bookmark"))
    if one.smallest:
        parts.append(f"type from {one.smallest:.1f} points")
    if one.full:
        parts.append(f"pages {100 * one.full:.0f} % full, {one.airy} under {100 * AIRY:.0f} %")
    if one.barcode is not None:
        parts.append(f"barcode at {100 * one.barcode / NOMINAL[0]:.1f} %")
    for count, word in ((one.errors, "error"), (one.warnings, "warning")):
        if count:
            parts.append(_counted(count, word).upper())
    return f"  {one.name}: {', '.join(parts)}"


def _short(inches: float) -> str:
    return f"{inches:.2f}".rstrip("0").rstrip(".")


def _counted(count: int, one: str) -> str:
    return f"{count} {one}" if count == 1 else f"{count} {one}s"
