"""The demos and some made-up patterns, sewn: what the tests of the making run over.

In: the demos' files, `write_made`. Out: each by name: pattern, sizes, drafts, plans, making.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from pathlib import Path

from publish import cut, draft, grade, read
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import BorderSpec, Pattern
from publish.model.size import Size
from publish.operations.operation import Operation
from publish.operations.rehearsal import Making, SizeMaking, rehearse
from publish.operations.table import Failing
from publish.sew import sew

ROOT = Path(__file__).parents[2]
sys.path.append(str(ROOT / "tests" / "write"))
import write_made as w  # noqa: E402

DEMOS = ("samphire", "towpath", "millrace", "heronry")


@dataclass(frozen=True)
class Sewn:
    """A pattern that is sewn."""

    pattern: Pattern
    sizes: dict[str, Size]
    drafts: dict[str, Draft]
    plans: dict[str, CutPlan]
    making: Making


def of(pattern: Pattern, sizes: dict[str, Size], drafts: dict[str, Draft],
       plans: dict[str, CutPlan]) -> Sewn:  # fmt: skip
    return Sewn(pattern, sizes, drafts, plans, sew(pattern, sizes, drafts, plans)[0])


@cache
def sewn(name: str) -> Sewn:
    if name in MADE:
        made = w.made(MADE[name])
        return of(made.pattern, dict(made.sizes), dict(made.drafts), dict(made.plans))
    pattern, notes, _ = read.load(ROOT / "projects" / name)
    assert pattern is not None, notes
    sizes, drafts = {}, {}
    for key in pattern.sizes:
        size, _ = grade.grade(pattern, key)
        assert size is not None
        found, _ = draft.draft(pattern, size)
        assert found is not None
        sizes[key], drafts[key] = size, found
    plans, _ = cut.cut(pattern, sizes, drafts)
    drafts = cut.construct(pattern, sizes, drafts, plans)
    return of(pattern, sizes, drafts, plans)


MITRED = (BorderSpec(Fraction(1), "sand", "mitred"), BorderSpec(Fraction(4), "sand", "mitred"))
MADE = {
    "bias": replace(w.MINI, bias=True),
    "mitred": replace(w.MINI, borders=MITRED),
    "pillow": w.PILLOW,
}
CASES = (*DEMOS, *MADE)


def makings(name: str) -> list[SizeMaking]:
    return list(sewn(name).making.sizes.values())


def failings(made: SizeMaking, operations: tuple[Operation, ...]) -> tuple[Failing, ...]:
    return rehearse(operations, made.goals).failings
