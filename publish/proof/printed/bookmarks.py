"""Whether a reader on a screen can jump to each section.

In: a printed edition. Out: notes.
Invariant: the file has bookmarks, each with a name and a page, and the name stands on
that page.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, error, warning
from publish.proof.case import Code
from publish.proof.printed.paper import Printed

CODES = {
    "P875": Code(
        "Bookmarks are missing or lead nowhere",
        "nobody finds a step again",
        "a file without bookmarks",
        "a bookmark for each section",
    ),
    "P896": Code(
        "A bookmark leads to another page than it names",
        "nobody finds a step again",
        "a bookmark `Binding` that opens the page on quilting",
        "a bookmark that opens the page with its heading",
    ),
}


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note when there are no bookmarks, or for each that leads wrong or nowhere."""
    found = list(printed.pages.get_toc())
    if not found and len(printed.pages) > 1:
        yield warning(
            "P875", printed.pattern.place("layout"), f"{printed.edition.name} has no bookmarks"
        )
    # A sheet's bookmark names it in other words than its drawing does.
    sheets = set(printed.edition.sheet_pages.values())
    booklet = printed.edition.is_booklet
    for bookmark in found:
        title, target = bookmark.get_title(), bookmark.get_dest()
        page = None if target is None else target.get_index()
        if not title.strip() or page is None or not 0 <= page < len(printed.pages):
            yield warning(
                "P875",
                printed.pattern.place("layout"),
                f"a bookmark of {printed.edition.name} leads nowhere",
                received=title or "no name",
            )
        elif (
            booklet and page + 1 not in sheets and _plain(title) not in _plain(printed.texts[page])
        ):
            yield error(
                "P896",
                printed.pattern.place("layout"),
                f"a bookmark of {printed.edition.name} leads to another page than it names",
                expected=f"{title} on page {page + 1}",
                help="the layout's headings must carry the bookmarks themselves",
            )


def _plain(words: str) -> str:
    """Return words as they are the same however they were set and broken."""
    return "".join(c for c in words.lower() if c.isalnum())
