"""What a pattern may describe but drafting cannot draw yet.

In: a pattern and a size. Out: notes, each at the key that asks for it.
Invariant: nothing is drafted as something else than it says; whatever is not drawn here
stops the build with its place and what to write instead.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note, Place, error


def beyond(pattern: Pattern, size: Size) -> tuple[Note, ...]:
    """Return a note for everything in a size that cannot be drafted."""
    return tuple(dict.fromkeys([*_setting(pattern, size), *_blocks(pattern, size)]))


def _setting(pattern: Pattern, size: Size) -> Iterator[Note]:
    def place(key: str) -> Place:
        return pattern.place("sizes", size.key, key)

    if size.on_point:
        yield _note(place("setting"), "a top set on point", "`setting: straight`")
    if any(turn for row in size.turns for turn in row):
        yield _note(place("turns"), "turned blocks", "a block drawn as it shall lie")
    if size.sashing is not None:
        yield _note(place("sashing"), "sashing", "a border, or patches inside the block")
    if size.rounds:
        yield _note(place("rounds"), "a medallion", "`borders`")


def _blocks(pattern: Pattern, size: Size) -> Iterator[Note]:
    for key in dict.fromkeys(key for row in size.arrangement for key in row):
        block = pattern.blocks[key]
        place = pattern.place("blocks", key)
        if any(patch.arcs for patch in block.patches):
            yield _note(place, "curved seams", "patches with straight edges")
        if block.foundations:
            yield _note(place, "foundation piecing", "no `foundation`")


def _note(place: Place, what: str, instead: str) -> Note:
    return error(
        "D361", place, f"{what} cannot be drafted yet", expected=instead, received=what,
        help=f"write {instead}",
    )  # fmt: skip
