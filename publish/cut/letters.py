"""Letters: a piece's short name in tables, steps and figures.

In: the needs of every size. Out: a letter for each purpose and fabric.
Invariant: the same purpose in the same fabric has one letter in every size; within one
size no two pieces share one. I and O are left out: they read as 1 and 0.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from publish.cut.needs import Need

ALPHABET = "ABCDEFGHJKLMNPQRSTUVWXYZ"
ORDER = ("motif", "ground", "border", "pillow back", "backing", "binding", "sleeve")
"""Purposes in the order of the letters; the first word of `border 1 side` counts."""

Name = tuple[str, str, int]
"""Purpose, fabric, and the number among pieces of that purpose in one size."""


class Letters:
    """The letters of one pattern."""

    def __init__(self) -> None:
        self._known: dict[Name, str] = {}

    def give(self, sizes: Iterable[Sequence[Need]]) -> None:
        """Name every purpose in the order of making, over all sizes."""
        names = dict.fromkeys(name for needs in sizes for name in named(needs))
        for name in sorted(names, key=_rank):
            self._known[name] = letter(len(self._known))

    def of(self, needs: Sequence[Need]) -> list[str]:
        """Return the letters of one size's needs, in their order."""
        return [self._known[name] for name in named(needs)]


def named(needs: Sequence[Need]) -> list[Name]:
    """Return each need's name; pieces of one purpose are numbered as they come."""
    seen: Counter[tuple[str, str]] = Counter()
    found = []
    for need in needs:
        key = need.purpose, need.fabric
        found.append((*key, seen[key]))
        seen[key] += 1
    return found


def _rank(name: Name) -> tuple[int, str, int]:
    first = [i for i, start in enumerate(ORDER) if name[0].startswith(start)]
    border = name[0] if name[0].startswith("border") else ""
    return (first[0] if first else len(ORDER), border, name[2])


def letter(index: int) -> str:
    """Return A, B ... Z, AA, AB ... without I and O; `index` counts from 0."""
    more, last = divmod(index, len(ALPHABET))
    return (letter(more - 1) if more else "") + ALPHABET[last]
