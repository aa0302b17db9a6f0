"""Every code that a finding can have, by the stage that finds it.

In: the stages' own tables. Out: titles by code, and what each part of a run looks for.
Invariant: a code stands in one table only; what a run has looked for is the union of the
parts that it got through.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish import cut, deliver, draft, draw, grade, proof, read, typeset, write

ACCEPTING: dict[str, str] = {
    "R171": "An acceptance that no warning answers to",
    "R172": "An acceptance of what cannot be accepted",
}
"""Found once the other findings are known, by `accepting`."""

BY_STAGE: dict[str, Mapping[str, str]] = {
    "read": {**read.CODES, **ACCEPTING},
    "grade": grade.CODES,
    "draft": draft.CODES,
    "cut": cut.CODES,
    "write": write.CODES,
    "draw": draw.CODES,
    "typeset": typeset.CODES,
    "proof": proof.CODES,
    "deliver": deliver.CODES,
}
"""Titles by code, by stage."""
TITLES: dict[str, str] = {code: said for codes in BY_STAGE.values() for code, said in codes.items()}

INSPECTED = frozenset({"T701", "T702", *(f"T{n}" for n in range(712, 718))})
"""Codes of typesetting that a look at the pattern's own files finds."""
PROOFED = frozenset(proof.CODES) - proof.ON_PAPER
"""Codes of proof that need no printed page."""
PRINTED = frozenset(
    {*draw.CODES, *(set(typeset.CODES) - INSPECTED), *proof.ON_PAPER, *deliver.CODES}
)
"""Codes that only building every edition can find."""
