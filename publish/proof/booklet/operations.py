"""Whether the work is told from beginning to end, in an order in which it can be done.

In: a case. Out: notes.
Invariant: what a size needs (by its setting, its seams, its foundations) has a
step that says how; of two operations that depend on each other, the first comes first.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from publish.notes import Note, warning
from publish.proof.booklet import joining
from publish.proof.booklet.claims import is_cutting, told
from publish.proof.case import Case, Code

CODES = {
    "P857": Code(
        "No step says how to do something that the work needs",
        "the maker cannot go on",
        "`steps: [{remove: binding-finish}]`, and the binding hangs loose at the back",
        "reword the step with `step:` instead of removing it",
    ),
    "P859": Code(
        "Steps stand in an order in which they cannot be done",
        "work has to be undone",
        "`{move: quilting-unpin, before: quilting-begin}`: the basting is out before quilting",
        "baste, quilt, then take the basting out",
    ),
}

Needed = Callable[[Case, str], bool]


def _finish(finish: str) -> Needed:
    return lambda case, key: case.sizes[key].finish == finish


def _papered(case: Case, key: str) -> bool:
    return bool(case.drafts[key].foundations)


def _paper_order(case: Case, key: str) -> bool:
    return any(len(f.patches) > 2 for f in case.drafts[key].foundations)


_OPERATIONS: tuple[tuple[str, Needed, str], ...] = (
    ("printing the foundations", _papered, r"\bprint the foundations?\b"),
    ("laying the first patch on a foundation", _papered, r"\bpatch 1 on (?:it|the)\b"),
    (
        "sewing a patch to a foundation",
        _papered,
        r"\bpatch 2 on patch 1\b[^.]*\..*\bsew on the (?:printed )?line\b",
    ),
    ("opening a patch on its foundation", _papered, r"\bopen patch 2\b"),
    ("sewing a foundation's other patches", _paper_order, r"\bin the order of the numbers\b"),
    ("trimming a foundation section", _papered, r"\bcut\b[^.]*\b(?:outer|dashed cut) line\b"),
    (
        "taking the foundation's paper out",
        _papered,
        r"\btear the paper away\b|\b(?:take|pull|tear) the paper out\b",
    ),
)


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each operation that is missing or comes too early."""
    work = [s for s in told(case) if not is_cutting(s.section)]
    for key in case.keys if work else ():
        steps = [s for s in work if key in s.sizes]
        text = "\n\n".join(s.words for s in steps)
        for name, needed, form in _OPERATIONS:
            if needed(case, key) and not re.search(form, text, re.IGNORECASE | re.DOTALL):
                yield warning(
                    "P857",
                    case.pattern.place("steps"),
                    f"no step of the {key} is {name}",
                    help="reword the step that said so instead of removing it",
                )
        for what in joining.untold(case, key, steps):
            yield warning(
                "P857",
                case.pattern.place("steps"),
                f"no step of the {key} {what}",
                help="reword the step that said so instead of removing it",
            )
