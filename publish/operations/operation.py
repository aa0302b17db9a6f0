"""What every operation is: a verb of the trade with typed operands.

In: operands from a planner. Out: `Operation`, `Shown`, `Moment`.
Invariant: an operation is frozen and knows no size of the pattern; it is one and the same
at every size at which it is told alike, by its `key`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, ClassVar, TypedDict

from publish.operations.parts import Part
from publish.words.values import Value, Values

if TYPE_CHECKING:
    from publish.operations.table import Table

_CAPITAL = re.compile(r"(?<!^)(?=[A-Z])")


class Where(TypedDict):
    """Where operations are told, for a planner to hand on: `SewBorder(**where, top=...)`."""

    chapter: str
    step: str


@dataclass(frozen=True)
class Shown:
    """A figure that an operation asks for: its kind, what varies, and its caption's values.

    The caption is the message's part `caption`. `sized` says that it shows one size.
    """

    kind: str
    values: tuple[tuple[str, str], ...] = ()
    sized: bool = True
    name: str = ""


@dataclass(frozen=True)
class Moment:
    """What the table had and gave when an operation was carried out."""

    operation: Operation
    took: tuple[tuple[Part, int], ...] = ()
    gave: tuple[tuple[Part, int], ...] = ()

    def before(self, key: str) -> Part:
        """Return a part as it was taken; LookupError where none was."""
        return _first(self.took, key)

    def after(self, key: str) -> Part:
        """Return a part as it was left; LookupError where none was."""
        return _first(self.gave, key)

    def count(self, key: str) -> int:
        """Return how many of a part were taken."""
        return sum(count for part, count in self.took if part.key == key)


def _first(parts: tuple[tuple[Part, int], ...], key: str) -> Part:
    found = next((part for part, _ in reversed(parts) if part.key == key), None)
    if found is None:
        raise LookupError(f"no {key} at this moment")
    return found


@dataclass(frozen=True, kw_only=True)
class Operation:
    """A verb of the trade. Subclasses add operands, and say what they do to the table.

    `chapter` and `step` say where it is told; operations of one step that follow each other
    are told in one, a message for each. `tag` tells apart two of one kind in a step.
    """

    chapter: str
    step: str
    tag: str = ""

    message: ClassVar[str] = ""
    """Of the words: `sew-borders`; empty for what is told by another operation's words."""
    tools: ClassVar[tuple[str, ...]] = ()
    trims: ClassVar[bool] = False
    """Whether it cuts parts down, so that their old size is no length of its work."""

    @cached_property
    def key(self) -> str:
        """Return what it is called at every size: `borders.sides-1.sew-borders`."""
        return ".".join(p for p in (self.chapter, self.step, self.verb, self.tag) if p)

    @cached_property
    def verb(self) -> str:
        """Return its verb, from the name of its class."""
        return _CAPITAL.sub("-", type(self).__name__).lower()

    @property
    def says(self) -> str:
        """Return the message that tells it; a variant has a message of its own."""
        return self.message

    @property
    def uses(self) -> tuple[str, ...]:
        """Return the tools that it takes; a variant may take others."""
        return self.tools

    def carry_out(self, table: Table) -> None:
        """Do it to the table. What it needs and does not find is noted there, not raised."""
        raise NotImplementedError

    def values(self, moment: Moment) -> Values:
        """Return the values of its message, from its operands and what the table had."""
        return {}

    def figure(self, moment: Moment) -> Shown | None:
        """Return the figure that shows it, if a hand needs to see it."""
        return None


def chosen(values: Mapping[str, Value | None]) -> dict[str, Value]:
    """Return the values that are there."""
    return {name: value for name, value in values.items() if value is not None}
