"""The reference of every code: what it finds, why that matters, a wrong example, a right one.

In: the codes that the stages declare beside their checks. Out: CHECKS.md as text.
Invariant: every code of every stage stands in it once; those of the proof, which judge a
pattern as a maker would, have all four parts.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish import proof
from publish.catalogue import BETWEEN, codes
from publish.proof.case import Code

_ABOUT = {
    "read": "the file itself",
    "grade": "the dimensions of a size",
    "draft": "shapes and seams",
    "cut": "pieces, strips and cloth",
    "sew": "operations in order",
    "write": "words and steps",
    "draw": "figures and template sheets",
    "typeset": "layouts, fonts and pictures",
    "deliver": "files for makers, shops and machines",
}
"""The other stages, and what their codes are about."""

_OPENING = """# Every check and its code

This file is written by `foldwork reference`, from what stands beside each check.

`foldwork check PATTERN` runs all checks that need no paper; `foldwork build` measures the
finished files too. A finding names its code, its place in the file, what was expected and
what was found. Codes keep their meaning for good. An error stops the build; a warning asks
to be weighed.

The codes of the **proof** (P8xx) ask what a technical editor asks before a pattern is sold.
They add up again, by themselves, what the stages before have computed, and read the booklet
against it. The other stages' codes say what they could not read, draft, cut or set.
"""


def reference() -> str:
    """Return CHECKS.md."""
    parts = [_OPENING, "## Proof\n"]
    parts += [_page(code, said) for code, said in sorted(proof.EXPLAINED.items())]
    for stage, about in _ABOUT.items():
        parts.append(_table(f"{stage.capitalize()}: {about}", codes(stage)))
    parts.append(_table("Studio: several patterns together", BETWEEN))
    return "\n".join(parts)


def _table(title: str, found: Mapping[str, str]) -> str:
    rows = "\n".join(f"| {code} | {said} |" for code, said in sorted(found.items()))
    return f"## {title}\n\n| code | what it finds |\n|---|---|\n{rows}\n"


def _page(code: str, said: Code) -> str:
    return (
        f"### {code}\n\n"
        f"- **What it finds**: {said.title}.\n"
        f"- **Why it matters**: {said.why}.\n"
        f"- **Wrong**: {said.wrong}\n"
        f"- **Right**: {said.right}\n"
    )
