"""What sections on paper are called while they are joined: `AB`, as in the figure of a block.

In: units of a size. Out: names.
Invariant: letters come in sewing order; what holds anything else than sections keeps its name.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.tree import only_sections
from publish.words.en.phrase import listed
from publish.write.bench import Bench


def parts_named(bench: Bench, unit: Unit) -> str:
    """Return what is joined: `sections A and B`, `AB, C and a Linen square **D**`."""
    names = [called(bench, part) or bench.part_name(part) for part in unit.parts]
    all_sections = all(part.section for part in unit.parts)
    return f"{'sections ' if all_sections else ''}{listed(names)}"


def called(bench: Bench, unit: Unit) -> str:
    """Return the letters of the sections that a unit is joined from, as its figure has them;
    empty for a whole block, and for what holds anything else."""
    if bench.is_block(unit) or not only_sections(unit):
        return ""
    return "".join(bench.letters(unit))
