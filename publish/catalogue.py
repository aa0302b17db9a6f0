"""Every code that a finding can have, by the stage that finds it.

In: the stages' own tables. Out: titles by code, and what each part of a run looks for.
Invariant: a code stands in one table only; what a run has looked for is the union of the
parts that it got through.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from publish import cut, deliver, draft, draw, grade, proof, read, sew, typeset, write

ACCEPTING: dict[str, str] = {
    "R171": "An acceptance that no warning answers to",
    "R172": "An acceptance of what cannot be accepted",
}
"""Found once the other findings are known, by `accepting`."""

BETWEEN: dict[str, str] = {
    "R181": "Two patterns have one stock number",
    "R182": "Two patterns have one barcode",
    "R183": "Two patterns have one title",
    "R184": "A fabric has another colour in another pattern",
    "R185": "A fabric's name is written in two ways",
    "R186": "Two patterns would have one folder of results",
    "R187": "Wording in studio.yaml is for a step that no pattern has",
    "X907": "A pattern is not on the line sheet",
}
"""Found only where several patterns are checked or built together, by `studio.across`."""

STAGES = ("read", "grade", "draft", "cut", "sew", "write", "draw", "typeset", "proof", "deliver")
INSPECTED = frozenset({"T701", "T702", *(f"T{n}" for n in range(712, 718))})
"""Codes of typesetting that a look at the pattern's own files finds."""


def codes(stage: str) -> Mapping[str, str]:
    """Return a stage's titles by code. Only then is a stage loaded that was put off."""
    if stage == "read":
        return {**read.CODES, **ACCEPTING}
    tables = {
        "grade": grade,
        "draft": draft,
        "cut": cut,
        "sew": sew,
        "write": write,
        "draw": draw,
        "typeset": typeset,
        "proof": proof,
        "deliver": deliver,
    }
    found: Mapping[str, str] = tables[stage].CODES
    return found


@cache
def titles() -> Mapping[str, str]:
    """Return every title by code, of what one pattern's run can find."""
    return {code: said for stage in STAGES for code, said in codes(stage).items()}


def proofed() -> frozenset[str]:
    """Return the codes of proof that need no printed page."""
    return frozenset(proof.CODES) - proof.ON_PAPER


def printed() -> frozenset[str]:
    """Return the codes that only building every edition can find."""
    set_in_type = set(typeset.CODES) - INSPECTED
    return frozenset({*draw.CODES, *set_in_type, *proof.ON_PAPER, *deliver.CODES})
