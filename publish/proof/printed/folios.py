"""Whether page numbers are right, where they are printed and where they are referred to.

In: a printed edition. Out: notes.
Invariant: where numbers are printed under a link, one of them is the page that it leads
to; and
where a booklet numbers its pages, each page between the covers that is no template sheet
has its own number in its first or last line.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed
from publish.proof.printed.text import Run, links

CODES = {
    "P895": Code(
        "A page number is wrong",
        "the maker turns to another page",
        "`Binding 49` in the contents, and the section on page 50",
        "`Binding 50`",
    ),
}
LINE = 6.0
"""Points: runs whose feet are as near as this stand in one line."""
_NUMBER = re.compile(r"(?<![\d/⁄.])\d{1,3}(?![\d/⁄.])")


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each reference and each folio that does not fit."""
    for number, side in enumerate(printed.sides, start=1):
        for link in links(printed.pages, side):
            said = [int(n) for n in _NUMBER.findall(link.words)]
            if said and link.page + 1 not in said:
                yield _note(
                    printed,
                    number,
                    f"page {number} of {printed.edition.name} refers to another page",
                    f"{link.page + 1}",
                    " ".join(link.words.split()),
                )
    if printed.edition.is_booklet:
        yield from _folios(printed)


def _folios(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page without its number, unless no page has one."""
    sheets = set(printed.edition.sheet_pages.values())
    inside = [n for n in range(2, len(printed.pages)) if n not in sheets]
    said = {n: _numbers(printed.sides[n - 1].runs) for n in inside}
    if not any(n in found for n, found in said.items()):
        return
    for number, found in said.items():
        if number not in found:
            yield _note(
                printed,
                number,
                f"page {number} of {printed.edition.name} has not its own number",
                str(number),
                ", ".join(map(str, sorted(found))) or "none",
            )


def _numbers(found: Sequence[Run]) -> set[int]:
    """Return the whole numbers in the first and in the last line of a page."""
    if not found:
        return set()
    low, high = min(r.bottom for r in found), max(r.bottom for r in found)
    lines = [r.words for r in found if r.bottom < low + LINE or r.bottom > high - LINE]
    return {int(n) for words in lines for n in _NUMBER.findall(words)}


def _note(printed: Printed, page: int, what: str, expected: str, received: str) -> Note:
    return error(
        "P895",
        printed.pattern.place("layout"),
        what,
        expected=expected,
        received=received,
        help="the layout must count pages with CSS's `page` counter and `target-counter`",
        page=page,
    )
