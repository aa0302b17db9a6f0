"""Work by hand on heaps that are alike: what it needs to find done, and what it leaves done.

In: keys and counts. Out: `Handwork`, a base for verbs; keys of motifs, grounds and blocks.
Invariant: a verb names each state that it needs together with the verb that leaves it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from publish.operations.operation import Operation
from publish.operations.parts import Part
from publish.operations.table import Table

Heaps = tuple[tuple[str, int], ...]
"""Keys and how many of each."""
Needs = tuple[tuple[str, type[Operation]], ...]
"""States, each with the verb that should have left it."""


def motif_heap(motif: str) -> str:
    """Return what a motif's cloth is called on the table, from its square to its ground."""
    return f"motif {motif}"


def ground_heap(block: str) -> str:
    """Return what the grounds of a block are called, until their motif lies on them."""
    return f"ground {block}"


def laid_heap(block: str) -> str:
    """Return what the blocks of a key are called while their motif is sewn on."""
    return f"laid {block}"


@dataclass(frozen=True, kw_only=True)
class Handwork(Operation):
    """Work that is done to every part of some heaps."""

    on: Heaps

    needs: ClassVar[Needs] = ()
    leaves: ClassVar[str] = ""

    def carry_out(self, table: Table) -> None:
        for key, count in self.on:
            part = table.take(key, count)
            for state, by in self.needs:
                table.need(part.is_(state), state, by=by, part=part)
            table.put(self.worked(table, part), count)

    def worked(self, table: Table, part: Part) -> Part:
        """Return a part as the work leaves it; what it needs besides is noted on the table."""
        return part.having(self.leaves)
