"""What the rehearsal finds, as notes.

In: failings of a size. Out: notes, at the YAML that governs the operation's chapter.
Invariant: a note names the operation that needs something and the one that should have left
it, the part, the size and both values.
"""

from __future__ import annotations

from collections.abc import Iterable

from publish.model.pattern import Pattern
from publish.notes import Note, Place, error
from publish.operations.table import Failing

CODES = {
    "S401": "An operation needs what none before it has left",
    "S402": "What is sewn does not measure what was drafted",
    "S403": "Something that was cut or made is left over",
    "S404": "The finished work lacks something",
}
_KINDS = {"need": "S401", "meet": "S402", "size": "S402", "left": "S403", "goal": "S404"}
_GOVERNED = {
    "borders": "borders",
    "binding": "binding",
    "quilting": "quilting",
    "pillow": "pillow",
    "sleeve": "sleeve",
}
"""Which key of a size governs a chapter."""


def notes_on(pattern: Pattern, size: str, failings: Iterable[Failing]) -> tuple[Note, ...]:
    """Return a note for each failing of a size."""
    return tuple(
        error(
            _KINDS[failing.kind],
            place_of(pattern, size, failing),
            failing.headline(size),
            expected=failing.expected,
            received=failing.received,
        )
        for failing in failings
    )


def place_of(pattern: Pattern, size: str, failing: Failing) -> Place:
    """Return where the pattern governs what fails."""
    chapter = failing.operation.chapter if failing.operation else ""
    path = [_GOVERNED[chapter]] if chapter in _GOVERNED else []
    return pattern.place("sizes", size, *path)
