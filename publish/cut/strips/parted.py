"""Strips that are parted into sections, on the grid.

In: a `Problem` without squaring. Out: `Parted`.
Invariant: a section's rows lie one after another along the cloth and are together no
deeper than its strip; a row's pieces lie side by side and are together no wider than
its section. Whatever holds pieces that are not wanted can be trimmed until it does not.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from publish.cut.strips.problem import Problem

Held = tuple[tuple[int, int], ...]
"""Kinds and how many of each."""


@dataclass(frozen=True)
class Row:
    """Pieces side by side; `depth` is the index of its depth in the problem."""

    depth: int
    held: Held


Rows = tuple[Row, ...]
"""One section."""


@dataclass(frozen=True)
class Parted:
    """A strip of sections; a section of one row is pieces at the strip's own depth."""

    depth: int
    """In grid steps."""
    sections: tuple[Rows, ...]

    def counts(self, kinds: int) -> tuple[int, ...]:
        """Return how many of each kind it holds."""
        found = [0] * kinds
        for rows in self.sections:
            for row in rows:
                for i, n in row.held:
                    found[i] += n
        return tuple(found)

    @property
    def plain(self) -> bool:
        """Return whether it has no sections of several rows."""
        return all(len(rows) == 1 for rows in self.sections)


def trimmed(problem: Problem, parted: Parted, left: Sequence[int]) -> list[Parted]:
    """Return the strip with no more of each kind than is `left`, as shallow as that makes
    it; nothing where nothing is left in it.

    A strip that would be a single section is as many strips as that has rows.
    """
    rest = list(left)
    sections = []
    for rows in parted.sections:
        kept = [row for r in rows if (row := _trimmed_row(problem, r, rest)) is not None]
        if kept:
            sections.append(tuple(sorted(kept, key=lambda r: (-r.depth, r.held))))
    merged = _merged(sections)
    if len(merged) == 1:
        return [Parted(problem.depths[row.depth], ((row,),)) for row in merged[0]]
    return [Parted(max(_deep(problem, rows) for rows in merged), merged)] if merged else []


def _trimmed_row(problem: Problem, row: Row, rest: list[int]) -> Row | None:
    held = []
    for i, n in row.held:
        taken = min(n, rest[i])
        rest[i] -= taken
        if taken:
            held.append((i, taken))
    if not held:
        return None
    needed = max(problem.along[row.depth][i] for i, _ in held)
    return Row(problem.depths.index(needed), tuple(held))


def _deep(problem: Problem, rows: Rows) -> int:
    return sum(problem.depths[row.depth] for row in rows)


def width_of(problem: Problem, rows: Rows) -> int:
    """Return how wide a section must be."""
    return max(sum((problem.across[r.depth][i] or 0) * n for i, n in r.held) for r in rows)


def _merged(sections: Iterable[Rows]) -> tuple[Rows, ...]:
    """Return sections of rows equally deep as one wider section; the widest rows first."""
    alike: dict[tuple[int, ...], list[Rows]] = {}
    for rows in sections:
        alike.setdefault(tuple(r.depth for r in rows), []).append(rows)
    found = []
    for depths in sorted(alike, key=lambda d: (len(d), [-x for x in d])):
        rows = tuple(
            Row(depth, _together(section[at].held for section in alike[depths]))
            for at, depth in enumerate(depths)
        )
        found.append(rows)
    return tuple(found)


def _together(held: Iterable[Held]) -> Held:
    total: Counter[int] = Counter()
    for some in held:
        total.update(dict(some))
    return tuple(sorted(total.items()))
