"""Strips of sections in inches, with the letters of their pieces, and back.

In: a `Problem` without squaring, strips on its grid. Out: `Strip`s.
Invariant: every part is named as often as it is wanted when the strips hold each kind
exactly as often.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from publish.cut.strips.parted import Parted, Row, Rows
from publish.cut.strips.problem import Part, Problem
from publish.model.cutplan import Cut, Section, Strip


def on_the_grid(problem: Problem, strips: Iterable[Strip]) -> Iterator[Parted]:
    """Yield whole strips as strips of one row."""
    kinds = {part: i for i, parts in enumerate(problem.members) for part in parts}
    for strip in strips:
        depth = int(strip.depth / problem.along_step)
        held: Counter[int] = Counter()
        for cut in strip.cuts:
            size = (cut.along, cut.across) if cut.turned else (cut.across, cut.along)
            part = next(p for p in kinds if (p.letter, p.across, p.along) == (cut.letter, *size))
            held[kinds[part]] += cut.count
        row = Row(problem.depths.index(depth), tuple(sorted(held.items())))
        yield from (Parted(depth, ((row,),)) for _ in range(strip.count))


class Naming:
    """Gives pieces on the grid the letters of parts that are still to be cut."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self._left = [[(part, part.count) for part in parts] for parts in problem.members]

    def strips(self, plan: Sequence[Parted]) -> tuple[Strip, ...]:
        """Return strips in inches, like ones as one with their number."""
        found = Counter(self._strip(parted) for parted in plan)
        return tuple(
            Strip(depth, cuts, n, sections=sections) for (depth, cuts, sections), n in found.items()
        )

    def _strip(self, parted: Parted) -> tuple[Fraction, tuple[Cut, ...], tuple[Section, ...]]:
        alone = [rows[0] for rows in parted.sections if len(rows) == 1]
        cuts = _in_order(cut for row in alone for cut in self._cuts(row))
        sections = tuple(self._section(rows) for rows in parted.sections if len(rows) > 1)
        return parted.depth * self.problem.along_step, cuts, sections

    def _section(self, rows: Rows) -> Section:
        cut = Counter((self._depth(row), _in_order(self._cuts(row))) for row in rows)
        strips = tuple(Strip(depth, cuts, n) for (depth, cuts), n in cut.items())
        return Section(max(strip.used for strip in strips), strips)

    def _depth(self, row: Row) -> Fraction:
        return self.problem.depths[row.depth] * self.problem.along_step

    def _cuts(self, row: Row) -> list[Cut]:
        cuts, problem = [], self.problem
        for i, wanted in row.held:
            across = (problem.across[row.depth][i] or 0) * problem.across_step
            along = problem.along[row.depth][i] * problem.along_step
            for part, taken in self._take(i, wanted):
                turned = (across, along) != (part.across, part.along)
                cuts.append(Cut(part.letter, across, along, taken, turned))
        return cuts

    def _take(self, kind: int, wanted: int) -> list[tuple[Part, int]]:
        found = []
        for j, (part, rest) in enumerate(self._left[kind]):
            taken = min(wanted, rest)
            if taken:
                self._left[kind][j], wanted = (part, rest - taken), wanted - taken
                found.append((part, taken))
        return found


def _in_order(cuts: Iterable[Cut]) -> tuple[Cut, ...]:
    return tuple(sorted(cuts, key=lambda c: (-c.along, -c.across, c.letter)))
