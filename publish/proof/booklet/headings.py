"""Whether the booklet's sections and steps can be found by name and number.

In: a case. Out: notes.
Invariant: every section has a heading of its own and something under it; the steps of a
section are numbered from 1 without a gap, and none stands there twice.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from publish.model.words import Steps
from publish.notes import Note, error, warning
from publish.proof.case import Case, Code

CODES = {
    "P856": Code(
        "A heading is missing, or two are alike",
        "a reader cannot find the section",
        "two sections called `Binding`, or a section whose title is empty",
        "a heading for each section, each its own",
    ),
    "P858": Code(
        "Steps are not numbered through",
        "the maker looks for the step that is missing",
        "steps 1, 2, 4, or a step that stands there twice",
        "steps 1, 2, 3",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each heading and each numbering that is out of order."""
    titles = Counter(s.title.strip() for s in case.manual.sections)
    parents = {s.parent for s in case.manual.sections}
    known = {None, *(s.key for s in case.manual.sections)}
    for section in case.manual.sections:
        title = section.title.strip()
        empty = not section.blocks and section.key not in parents
        if not title or titles[title] > 1 or empty or section.parent not in known:
            yield warning(
                "P856",
                case.pattern.place("title"),
                f"the section {section.key} has no heading of its own, or nothing under it",
                received=title or "no heading",
            )
        steps = [s for b in section.blocks if isinstance(b, Steps) for s in b.items]
        numbers = [s.number for s in steps]
        if numbers != list(range(1, len(steps) + 1)) or len({s.key for s in steps}) < len(steps):
            yield error(
                "P858",
                case.pattern.place("steps"),
                f"the steps of {title or section.key} are not numbered through",
                expected=f"1 to {len(steps)}",
                received=", ".join(map(str, numbers)),
            )
