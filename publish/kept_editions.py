"""PDFs that were made before: set and measured once, and taken again as long as nothing that
they show has changed.

In: a call that makes one, what it is made from, a store. Out: what the call returns, made anew
or kept.
Invariant: what is kept was made from the same design, words, drawings and files by the same
program; what was found then is told at the lines where the pattern says it now.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import TypeVar

import msgspec

from publish.content import content
from publish.inputs import files, program
from publish.kept import Store
from publish.model.pattern import Pattern
from publish.notes import Note

KIND = "edition"
_PASSING: dict[type, tuple[str, ...]] = {
    Pattern: ("folder", "places", "steps", "accepts", "studio", "origins", "prices", "shop")
}
"""What no page shows as it stands in the pattern: words of steps are the manual's."""

Made = TypeVar("Made")


def kept(
    make: Callable[[], Made],
    kind: type[Made],
    pattern: Pattern,
    shown: Iterable[object],
    store: Store,
) -> Made:
    """Return what `make` returns, a dataclass of bytes and plain values; `shown` is all that it
    is made from besides the files that the pattern names."""
    if store.folder is None:
        return make()
    told = content(*shown, sorted(set(files(pattern))), passing=_PASSING)
    data = store.made(KIND, (program().encode(), told), lambda: msgspec.msgpack.encode(make()))
    return msgspec.msgpack.decode(data, type=kind)


def placed(notes: Iterable[Note], pattern: Pattern) -> tuple[Note, ...]:
    """Return notes at the lines where their values stand now."""
    return tuple(
        replace(note, place=pattern.places.get(note.place.path, note.place)) for note in notes
    )
