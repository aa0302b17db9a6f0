"""Which steps join the units of blocks, and which of them no step joins.

In: a case, a size, its steps. Out: the units that are left untold, in words.
Invariant: a unit that is joined from foundations is told by the step that has its kind in its
key; no words are read. What is pieced without paper is rehearsed instead.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from publish.model.draft import Unit
from publish.model.tree import every, holds_sections, sections
from publish.proof.booklet.claims import Told
from publish.proof.case import Case


def untold(case: Case, key: str, steps: Sequence[Told]) -> Iterator[str]:
    """Yield what no step of a size does to the units of its blocks: `joins sections A and B`."""
    keys = [s.step.key for s in steps if s.section.key.startswith("foundation")]
    for unit in filter(holds_sections, inner(case.drafts[key].assembly)):
        ending = "-".join(re.findall(r"[a-z0-9]+", unit.kind.lower()))
        if not any(k.endswith(f"-{ending}") for k in keys):
            yield f"joins {_name(case, key, unit)}"


def _name(case: Case, key: str, unit: Unit) -> str:
    """Return what a note calls a unit: by the sections that it is joined from."""
    letters = {f.key: f.letter for f in case.drafts[key].foundations}
    found = [letters[u.section] for u in sections(unit) if u.section in letters]
    *before, last = found or [unit.name]
    return f"sections {', '.join(before)} and {last}" if before else f"section {last}"


def inner(root: Unit) -> list[Unit]:
    """Return the first unit of each kind that is joined inside blocks, parts before wholes."""
    found: dict[str, Unit] = {}
    for unit in every(root):
        homes = {(p.place, p.role) for p in unit.patches}
        if len(unit.parts) > 1 and len(homes) == 1 and unit.patches[0].role == "ground":
            found.setdefault(unit.kind, unit)
    return list(found.values())
