"""Whether all text lies on the paper.

In: a printed edition. Out: notes.
Invariant: every run of letters lies inside its page.
"""

from __future__ import annotations

from collections.abc import Iterator

import pypdfium2

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.paper import Printed

CODES = {
    "P874": Code(
        "Text runs off the page",
        "the end of it is not printed",
        "a title too long for its line, cut by the edge",
        "a shorter title, or two lines",
    ),
}
SLACK = 1.0
"""Points by which a letter's box may reach past the edge: its ink does not."""


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page with text beyond an edge."""
    for number, page in enumerate(printed.pages, start=1):
        width, height = page.get_size()
        for left, bottom, right, top, words in _runs(page.get_textpage()):
            inside = (
                left >= -SLACK and bottom >= -SLACK
                and right <= width + SLACK and top <= height + SLACK
            )  # fmt: skip
            if not inside and words.strip():
                yield error(
                    "P874", printed.place,
                    f"text runs off page {number} of {printed.edition.name}",
                    received=words.strip()[:60],
                    help="shorten it, or let it break over two lines",
                )  # fmt: skip
                break


def _runs(text: pypdfium2.PdfTextPage) -> Iterator[tuple[float, float, float, float, str]]:
    for index in range(text.count_rects()):
        box = text.get_rect(index)
        yield (*box, text.get_text_bounded(*box))
