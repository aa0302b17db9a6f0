"""Whether all text lies on the paper.

In: a printed edition. Out: notes.
Invariant: every run of letters lies inside its page.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed

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
    for number, side in enumerate(printed.sides, start=1):
        width, height = side.page.get_size()
        for run in side.runs:
            left, bottom, right, top = run.left, run.bottom, run.right, run.top
            inside = (
                left >= -SLACK
                and bottom >= -SLACK
                and right <= width + SLACK
                and top <= height + SLACK
            )
            if not inside:
                yield error(
                    "P874",
                    printed.place,
                    f"text runs off page {number} of {printed.edition.name}",
                    received=run.words[:60],
                    page=number,
                    help="shorten it, or let it break over two lines",
                )
                break
