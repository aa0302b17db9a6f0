"""What is not read of a booklet that is told in another language than English.

In: a case. Out: a note.
Invariant: it is said once, and only where the designer has written steps.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, Severity
from publish.proof.case import Case, Code

CODES = {
    "P899": Code(
        "The designer's own steps are not read in this language",
        "a slip in their sentences is found by nobody else",
        "`text: Vier Streifen zuschneiden.`, where the plan cuts five",
        "values by their names, `{{ throw.binding_strips }}`, which are always right",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note where steps are in the designer's own words."""
    own = [change for _, _, change in case.pattern.changes() if change.text]
    if own:
        yield Note(
            "P899",
            Severity.INFO,
            case.pattern.place("steps"),
            "counts and terms in the designer's own steps are read in English only",
            expected="lengths and letters, which are read in every language",
            received=case.words.code,
            help="have somebody who knows the language compare them with the English booklet",
        )
