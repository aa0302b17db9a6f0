"""Carrying out the operations of one size in order, and looking at what has come of them.

In: operations, goals. Out: `Rehearsal`: the table at the end, each moment, what failed.
Invariant: one failing does not stop the work; each is noted once.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property

from publish.operations.operation import Moment, Operation
from publish.operations.table import Failing, Table
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Rectangle, Said, Several, Value

Goal = Callable[[Table], None]
"""What the finished work of a size must be: looks at the table and notes what it is not."""


@dataclass(frozen=True)
class Rehearsal:
    """The making of one size, carried out."""

    table: Table
    moments: tuple[Moment, ...]

    @property
    def failings(self) -> tuple[Failing, ...]:
        return tuple(self.table.failings)


def rehearse(operations: Sequence[Operation], goals: Sequence[Goal] = ()) -> Rehearsal:
    """Carry out operations on an empty table, and ask what the goals ask."""
    table = Table(operations)
    moments = tuple(table.carry_out(operation) for operation in operations)
    for goal in goals:
        goal(table)
    return Rehearsal(table, moments)


@dataclass(frozen=True)
class NothingLeft:
    """The goal that nothing lies on the table but products and what may be spare."""

    products: tuple[str, ...]

    def __call__(self, table: Table) -> None:
        for part, count in table.heaps.items():
            if part.key not in self.products and part.key not in table.spare:
                table.goal(False, f"{count} of {part.key} left over", part=part.key, kind="left")


@dataclass(frozen=True)
class SizeMaking:
    """How one size is made: operations in order, goals, and what each was when rehearsed."""

    size: str
    operations: tuple[Operation, ...]
    goals: tuple[Goal, ...] = field(default=(), compare=False)
    moments: tuple[Moment, ...] = field(default=(), compare=False)

    @cached_property
    def _places(self) -> dict[str, list[int]]:
        """Return where the operations of a key stand."""
        found: dict[str, list[int]] = {}
        for at, moment in enumerate(self.moments):
            found.setdefault(moment.operation.key, []).append(at)
        return found

    def covering(self, keys: Iterable[str]) -> tuple[Moment, ...]:
        """Return the moments of operations by their keys, in order."""
        places = {at for key in keys for at in self._places.get(key, ())}
        return tuple(self.moments[at] for at in sorted(places))

    def of(self, chapter: str) -> tuple[Moment, ...]:
        """Return the moments of a chapter, in order."""
        return tuple(m for m in self.moments if m.operation.chapter == chapter)


@dataclass(frozen=True)
class Making:
    """How every size is made, by size key in the pattern's order."""

    sizes: Mapping[str, SizeMaking]

    def of_size(self, key: str) -> Making:
        """Return how one size is made."""
        return Making({key: self.sizes[key]})

    def chapter(self, name: str) -> Mapping[str, tuple[Moment, ...]]:
        """Return a chapter's moments by size; without the sizes that do not have it."""
        return {key: found for key, made in self.sizes.items() if (found := made.of(name))}


def lengths_told(moments: Iterable[Moment]) -> Iterator[Exact]:
    """Yield every length, in inches, that the words of some moments tell."""
    for value in values_told(moments):
        if isinstance(value, Length):
            yield value.inches
        elif isinstance(value, Rectangle):
            yield from (value.width, value.height)


def counts_told(moments: Iterable[Moment]) -> Iterator[Count]:
    """Yield every count with its noun that the words of some moments tell."""
    for value in values_told(moments):
        if isinstance(value, Count) and value.noun:
            yield value


def values_told(moments: Iterable[Moment]) -> Iterator[Value]:
    """Yield every value, and those inside it, that the words of some moments may tell."""
    for moment in moments:
        for value in moment.operation.values(moment).values():
            yield from _within(value)


def _within(value: Value) -> Iterator[Value]:
    """Yield a value and every value inside it."""
    yield value
    inner = value.items if isinstance(value, Several) else ()
    if isinstance(value, Said):
        inner = tuple(v for _, v in value.values)
    for each in inner:
        yield from _within(each)
