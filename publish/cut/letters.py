"""Letters: a piece's short name in tables, steps and figures.

In: the needs of every size. Out: a letter for each of them.
Invariant: within one size no two pieces share a letter, and in all sizes a letter stands
for one purpose and fabric. A piece for patches keeps its letter where it is cut to the
same shape for the same places of the same blocks; any other, where its purpose and fabric
come again. I and O are left out: they read as 1 and 0.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from publish.cut.needs import Need

ALPHABET = "ABCDEFGHJKLMNPQRSTUVWXYZ"
ORDER = (
    "motif",
    "ground",
    "sashing",
    "cornerstone",
    "side triangle",
    "corner triangle",
    "foundation",
    "border",
    "pillow back",
    "backing",
    "binding",
    "sleeve",
)
"""Purposes in the order of the letters; the first word of `border 1 side` counts."""


@dataclass(frozen=True)
class Name:
    """What has a letter: a purpose in a fabric, and a number among several such."""

    purpose: str
    fabric: str
    number: int
    placed: bool
    """Whether it is told from others by the places that it serves."""


@dataclass
class _Group:
    """Pieces of all sizes that serve the same places."""

    name: Name
    shape: str
    serves: set[tuple[str, int]]


class Letters:
    """The letters of one pattern."""

    def __init__(self) -> None:
        self._known: dict[Name, str] = {}
        self._names: dict[tuple[str, str], Name] = {}
        self._groups: list[_Group] = []
        self._swapped: set[str] = set()

    def give(self, sizes: Mapping[str, Sequence[Need]]) -> None:
        """Name every piece in the order of making, over all sizes."""
        for size, needs in sizes.items():
            self._place(size, needs)
        names = dict.fromkeys(n for size, needs in sizes.items() for n in self._named(size, needs))
        fabrics = list(dict.fromkeys(n.fabric for n in names if n.placed))

        def rank(name: Name) -> tuple[int, str, int, int]:
            first = [i for i, start in enumerate(ORDER) if name.purpose.startswith(start)]
            border = name.purpose if name.purpose.startswith("border") else ""
            fabric = fabrics.index(name.fabric) if name.placed else 0
            return first[0] if first else len(ORDER), border, fabric, name.number

        for name in sorted(names, key=rank):
            self._known[name] = letter(len(self._known))
        self._swapped = self._ranked_otherwise(sizes)

    def of(self, size: str, needs: Sequence[Need]) -> list[tuple[str, Need]]:
        """Return one size's needs with their letters, in their order.

        One that is the large strip at one size and the small one at another is called by its
        own size at both.
        """
        found = []
        for own, need in zip(self._named(size, needs), needs, strict=True):
            known = self._known[own]
            swapped = known in self._swapped and need.sized is not None
            called = need.sized if swapped and need.sized else need.called
            found.append((known, replace(need, called=called)))
        return found

    def _ranked_otherwise(self, sizes: Mapping[str, Sequence[Need]]) -> set[str]:
        """Return the letters of pieces that are larger than others like them at one size, and
        smaller at another."""
        ranks: dict[str, set[str]] = {}
        for size, needs in sizes.items():
            for name, need in zip(self._named(size, needs), needs, strict=True):
                if need.rank:
                    ranks.setdefault(self._known[name], set()).add(need.rank)
        return {known for known, found in ranks.items() if len(found) > 1}

    def _place(self, size: str, needs: Sequence[Need]) -> None:
        """Find the group of each piece that serves places: the one that it shares most
        places with, each group once in a size, or a new one."""
        free = list(self._groups)
        for need in (n for n in needs if n.serves):
            like = [
                g
                for g in free
                if (g.name.purpose, g.name.fabric, g.shape)
                == (need.purpose, need.fabric, need.shape)
            ]
            best = max(like, key=lambda g: len(g.serves & need.serves), default=None)
            if best is None or not best.serves & need.serves:
                key = need.purpose, need.fabric
                number = sum((g.name.purpose, g.name.fabric) == key for g in self._groups)
                best = _Group(Name(*key, number, placed=True), need.shape, set())
                self._groups.append(best)
            else:
                free.remove(best)
            best.serves |= need.serves
            self._names[size, need.key] = best.name

    def _named(self, size: str, needs: Sequence[Need]) -> list[Name]:
        """Return each need's name; others of one purpose are numbered as they come."""
        seen: Counter[tuple[str, str]] = Counter()
        found = []
        for need in needs:
            if need.serves:
                found.append(self._names[size, need.key])
                continue
            key = need.purpose, need.fabric
            found.append(Name(*key, seen[key], placed=False))
            seen[key] += 1
        return found


def letter(index: int) -> str:
    """Return A, B ... Z, AA, AB ... without I and O; `index` counts from 0."""
    more, last = divmod(index, len(ALPHABET))
    return (letter(more - 1) if more else "") + ALPHABET[last]
