"""Whether each step that cannot be done from words alone has a figure, and the right one.

In: a case. Out: notes.
Invariant: a step that speaks of a picture has one; so has a step that folds the motif's
cloth, lays a template or blocks out, turns a corner or cuts a fabric by its layout; a step
for some sizes shows one of them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.notes import Note, error, warning
from publish.proof.booklet.claims import Told, is_cutting, step_place, told
from publish.proof.booklet.prose import moments_of
from publish.proof.case import Case, Code

CODES = {
    "P866": Code(
        "A step has no figure where one is needed",
        "words alone leave two ways to do it",
        "`{step: folding-diagonal-8, figure: none}`",
        "keep the step's figure, or add words that need none",
    ),
    "P867": Code(
        "A figure shows a size that its step is not for",
        "the maker counts blocks that are not hers",
        "a step for the throw with a figure of the mini",
        "a figure of the throw",
    ),
}

_SPEAKS = re.compile(r"\b(?:in|on|as) (?:the|this|its|in the) (?:picture|figure|drawing|diagram)\b")
_NEEDED = (
    (re.compile(r"\bLay out\b"), "how the parts lie"),
    (re.compile(r"before the corner\b"), "how the corner is turned"),
)
"""What needs to be seen: how steps begin or what they say, and what the figure shows."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each step without its figure, and each figure of another size."""
    for one in told(case):
        figure = one.step.figure
        if figure is None:
            needed = _asked(case, one) or ("" if one.step.generated else _needs(one))
            if needed:
                yield warning(
                    "P866",
                    step_place(case, one),
                    f"{one.where} has no figure",
                    expected=f"a figure of {needed}",
                )
        elif figure.size and one.sizes and figure.size not in one.sizes:
            yield error(
                "P867",
                step_place(case, one),
                f"the figure of {one.where} shows another size",
                expected=" or ".join(one.sizes),
                received=figure.size,
            )


def _asked(case: Case, one: Told) -> str:
    """Return the figure that a step's operations ask for."""
    moments = (m for key in one.sizes for m in moments_of(case, one, key))
    shown = (moment.operation.figure(moment) for moment in moments)
    return next((figure.kind for figure in shown if figure is not None), "")


def _needs(one: Told) -> str:
    """Return what a step needs a figure for; empty when words are enough."""
    text = one.step.text
    if _SPEAKS.search(text):
        return "what it speaks of"
    if is_cutting(one.section) and "layout" in text and "number" in text:
        return "the layout that it speaks of"
    return next((what for form, what in _NEEDED if form.search(text)), "")
