"""Templates of pieces: made once from the printed sheets, and used for every piece of a letter.

In: letters of templates. Out: an operation, the keys of what it leaves.
Invariant: a template is not used up.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from publish.operations.operation import Operation
from publish.operations.parts import Part
from publish.operations.table import Table


def template_heap(letter: str) -> str:
    """Return what the template of a letter is called on the table."""
    return f"piece template {letter}"


@dataclass(frozen=True, kw_only=True)
class MakeTemplates(Operation):
    """Make templates of card or plastic from the printed ones."""

    letters: tuple[str, ...]

    message: ClassVar[str] = "make-templates"
    tools: ClassVar[tuple[str, ...]] = ("printer", "scissors")

    def carry_out(self, table: Table) -> None:
        for letter in self.letters:
            table.put(Part(template_heap(letter)))
            table.spare.add(template_heap(letter))
