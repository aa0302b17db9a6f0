"""Whether all type is large enough to be read.

In: a printed edition. Out: notes.
Invariant: no letter is printed smaller than `SMALLEST`, in figures and tables neither.
The limit is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, warning
from publish.proof.case import Code
from publish.proof.printed.paper import Printed

CODES = {
    "P891": Code(
        "Type is too small",
        "nobody can read it without a glass",
        "labels of 5 points in a figure",
        "labels of 6 points or more",
    ),
}
SMALLEST = 6.0
"""Points."""
SLACK = 0.05


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page with type below the limit: its smallest size, and words."""
    for number, side in enumerate(printed.sides, start=1):
        small = [(size, letter) for letter, size in side.letters if size < SMALLEST - SLACK]
        if small:
            yield warning(
                "P891",
                printed.pattern.place("layout"),
                f"type on page {number} of {printed.edition.name} is too small to read",
                expected=f"at least {SMALLEST:g} points",
                received=f"{min(small)[0]:.1f} points: "
                f"{''.join(letter for _, letter in small[:30])}",
                help="let the layout make the figure wider, or its words fewer",
                page=number,
            )


def smallest(printed: Printed) -> float:
    """Return the size of the smallest letter of an edition in points; 0 for no letters."""
    sizes = (size for side in printed.sides for _, size in side.letters)
    return min(sizes, default=0.0)
