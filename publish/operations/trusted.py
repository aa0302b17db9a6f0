"""Work that is still told by chapters of its own: trusted to have the effect it declares.

In: what it takes, gives and turns into what. Out: an operation without words.
Invariant: a test counts how many kinds of it there are, and the number may only fall.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from publish.operations.operation import Operation
from publish.operations.parts import Layer, Part, measured
from publish.operations.table import Table
from publish.surd import Length


@dataclass(frozen=True)
class Becoming:
    """A part that is taken as `key` and put back as `into`, with what is done to it.

    `width` and `height`, where given, are what it must measure when it is taken.
    """

    key: str
    into: str
    having: frozenset[str] = frozenset()
    without: frozenset[str] = frozenset()
    layers: tuple[Layer, ...] = ()
    width: Length | None = None
    height: Length | None = None
    sized: tuple[Length, Length] | None = None
    """What it measures afterwards, where that changes."""
    needs: frozenset[str] = frozenset()
    """What must have been done to it."""
    closed: bool = False
    """Whether its edges are closed and its finished size is then `finished`."""
    seam: Length = 0
    """Allowance that is lost all round when it is closed."""


@dataclass(frozen=True, kw_only=True)
class Trusted(Operation):
    """What a chapter that has not moved yet is trusted to do."""

    takes: tuple[tuple[str, int], ...] = ()
    gives: tuple[tuple[Part, int], ...] = ()
    becomes: tuple[Becoming, ...] = ()
    ready: frozenset[str] = frozenset()
    """What must have been done to each heap that it takes and that was sewn."""
    spare: tuple[str, ...] = ()
    """Heaps of which some may be left."""

    def carry_out(self, table: Table) -> None:
        for key, count in self.takes:
            part = table.take(key, count)
            done = key.startswith("piece ") or part.is_(*self.ready)
            table.need(done, f"the {key} {', '.join(sorted(self.ready))}", part=part)
        table.spare.update(self.spare)
        for part, count in self.gives:
            table.put(part, count)
        for change in self.becomes:
            part = table.take(change.key)
            for state in sorted(change.needs):
                table.need(part.is_(state), f"the {change.key} {state}", part=part)
            part = table.drafted(part, change.width, change.height)
            table.put(_changed(part, change))


def _changed(part: Part, change: Becoming) -> Part:
    state = (part.state | change.having) - change.without
    new = replace(part, key=change.into, state=state, layers=(*part.layers, *change.layers))
    if change.sized is not None:
        new = new.sized(measured(change.sized[0]), measured(change.sized[1]))
    if change.closed:
        edges = tuple(replace(edge, state="closed") for edge in new.edges)
        sides = new.width.exact - 2 * change.seam, new.height.exact - 2 * change.seam
        new = replace(new, edges=edges, finished=sides)
    return new
