"""Whether the work is told from beginning to end, in an order in which it can be done.

In: a case. Out: notes.
Invariant: what a size needs (by its finish, its seams, its motif's method and folds) has a
step that says how; of two operations that depend on each other, the first comes first.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from publish.model.pattern import Motif
from publish.notes import Note, warning
from publish.proof import joining
from publish.proof.case import Case, Code
from publish.proof.claims import Told, is_cutting, told

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


def _motif(case: Case, key: str) -> list[Motif]:
    laid = {p.motif for p in case.drafts[key].placements}
    return [m for k, m in case.pattern.motifs.items() if k in laid]


def _folded(case: Case, key: str) -> bool:
    turned = [m for m in _motif(case, key) if m.method != "fusible"]
    return any(m.symmetry == "mirror" for m in turned)


def _cornered(case: Case, key: str) -> bool:
    turned = [m.key for m in _motif(case, key) if m.method == "needle-turn"]
    return any(case.drafts[key].motifs[k].inside_corners for k in turned)


def _pointed(case: Case, key: str) -> bool:
    turned = [m.key for m in _motif(case, key) if m.method == "needle-turn"]
    return any(case.drafts[key].motifs[k].tips for k in turned)


def _open(case: Case, key: str) -> bool:
    turned = [m.key for m in _motif(case, key) if m.method == "needle-turn"]
    return any(case.drafts[key].motifs[k].holes for k in turned)


def _traced(case: Case, key: str) -> bool:
    return any(m.method == "needle-turn" and m.symmetry == "mirror" for m in _motif(case, key))


def _papered(case: Case, key: str) -> bool:
    return bool(case.drafts[key].foundations)


def _paper_order(case: Case, key: str) -> bool:
    return any(len(f.patches) > 2 for f in case.drafts[key].foundations)


_OPERATIONS: tuple[tuple[str, Needed, str], ...] = (
    ("cutting the folded wedge", _folded, r"\bcut along the (?:dashed )?(?:cut )?line|\bcut .{0,40}"
     r"through all .{0,20}layers"),
    ("opening the motif", _folded, r"\b(?:open|unfold) the motif"),
    ("laying the motif on its ground", lambda c, k: bool(_motif(c, k)),
     r"\bmotif\b[^.]{0,40} on top of it|\blay (?:the|each) (?:motif|shape)[^.]* on(?:to)? "
     r"(?:the|its) (?:ground|block)"),
    ("turning inside corners", _cornered, r"inside corner"),
    ("turning points", _pointed, r"\b(?:at a|each|every|the) (?:point|tip)"),
    ("turning the edges of openings", _open, r"\b(?:each|every) opening\b"),
    ("drawing the finished line", _traced,
     r"\bthis is the \*\*finished line|draw[^.]*finished line"),
    ("printing the foundations", _papered, r"\bprint the foundations?\b"),
    ("laying the first patch on a foundation", _papered, r"\bpatch 1 on (?:it|the)\b"),
    ("sewing a patch to a foundation", _papered,
     r"\bpatch 2 on patch 1\b[^.]*\..*\bsew on the (?:printed )?line\b"),
    ("opening a patch on its foundation", _papered, r"\bopen patch 2\b"),
    ("sewing a foundation's other patches", _paper_order, r"\bin the order of the numbers\b"),
    ("trimming a foundation section", _papered, r"\bcut\b[^.]*\b(?:outer|dashed cut) line\b"),
    ("taking the foundation's paper out", _papered,
     r"\btear the paper away\b|\b(?:take|pull|tear) the paper out\b"),
)  # fmt: skip

_ORDER = (
    ("sewing the motif down", r"\bsweep the turn-under",
     "trimming the block", r"\bTrim each block to\b"),
    ("marking the wedge", r"\bDraw around the paper", "cutting the wedge",
     r"\bcut along the dashed line through"),
    ("basting the motif", r"^Baste the motif to the ground", "sewing the motif down",
     r"\bsweep the turn-under"),
)  # fmt: skip
"""Pairs of operations, by how the booklet says them; the first must not come after."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each operation that is missing or comes too early."""
    work = [s for s in told(case) if not is_cutting(s.section)]
    for key in case.keys if work else ():
        steps = [s for s in work if key in s.sizes]
        text = "\n\n".join(s.words for s in steps)
        for name, needed, form in _OPERATIONS:
            if needed(case, key) and not re.search(form, text, re.IGNORECASE | re.DOTALL):
                yield warning(
                    "P857", case.pattern.place("steps"), f"no step of the {key} is {name}",
                    help="reword the step that said so instead of removing it",
                )  # fmt: skip
        yield from _folds(case, key, text)
        for what in joining.untold(case, key, steps):
            yield warning(
                "P857", case.pattern.place("steps"), f"no step of the {key} {what}",
                help="reword the step that said so instead of removing it",
            )  # fmt: skip
        yield from _order(case, key, steps)


def _folds(case: Case, key: str, text: str) -> Iterator[Note]:
    """Folding halves the wedge each time: two layers, four, eight; the last must be reached."""
    turned = [m for m in _motif(case, key) if m.method != "fusible" and m.symmetry == "mirror"]
    words = {4: "four", 6: "six", 8: "eight", 12: "twelve|12", 16: "16|sixteen"}
    for folds in sorted({m.folds for m in turned}):
        if not re.search(rf"\byou have (?:{words.get(folds, folds)}) layers", text, re.IGNORECASE):
            yield warning(
                "P857", case.pattern.place("steps"),
                f"no step of the {key} folds the cloth to its {folds} layers",
            )  # fmt: skip


def _order(case: Case, key: str, steps: list[Told]) -> Iterator[Note]:
    for first, before, second, after in _ORDER:
        done = [n for n, s in enumerate(steps) if re.search(before, s.step.text, re.DOTALL)]
        then = [n for n, s in enumerate(steps) if re.search(after, s.step.text, re.DOTALL)]
        if done and then and min(then) < max(done) and min(then) < min(done):
            yield warning(
                "P859", case.pattern.place("steps"),
                f"{second} comes before {first} in the steps of the {key}",
                expected=f"{first} first", received=f"{steps[min(then)].where} first",
            )  # fmt: skip
