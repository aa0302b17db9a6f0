"""Whether the booklet states what every figure in it rests on: seam and usable width.

In: a case. Out: notes.
Invariant: before the work begins, in words of its own and not in a step, the booklet states
the seam allowance, and the usable width of each fabric that is sold by length.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.notes import Note, warning
from publish.proof.booklet.claims import sentences
from publish.proof.booklet.words import passages
from publish.proof.case import Case, Code

CODES = {
    "P864": Code(
        "The seam allowance or the usable width is not stated",
        "cut sizes and lengths to buy rest on them",
        "a booklet whose lengths hold for 40 in of cloth and do not say so",
        "`Fabric requirements assume 40 in of usable width. Seams are 1/4 in.`",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each statement that is missing."""
    stated = [s for p in passages(case.manual) if p.kind == "text" for s in sentences(p.text)]
    seam = case.words.measures.text(case.seam)
    if not any(seam in s and _speaks(case, "seam-allowance", s, r"\bseams?\b") for s in stated):
        yield _note(case, "sewing.seam", "the seam allowance is not stated", seam)
    widths = {p.usable_width: f for _, f, p in case.fabric_plans() if p.precut is None}
    for width, fabric in widths.items():
        said = case.words.measures.text(width)
        if not any(said in s and _speaks(case, "usable-width", s) for s in stated):
            yield _note(
                case, f"fabrics.{fabric}.usable_width", "the usable width is not stated", said
            )


def _speaks(case: Case, term: str, sentence: str, *others: str) -> bool:
    """Return whether a sentence speaks of a term of the glossary, or by another form of it."""
    form = case.words.text(f"term-{term}", part="form")
    return bool(re.search("|".join((form, *others)), sentence, re.IGNORECASE))


def _note(case: Case, path: str, what: str, expected: str) -> Note:
    return warning(
        "P864", case.pattern.place(*path.split(".")), what, expected=f"a sentence with {expected}"
    )
