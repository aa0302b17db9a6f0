"""The best strip of sections for given prices of the pieces.

In: a `Problem` without squaring, whole-number prices, how many of each kind are left.
Out: for each depth that a strip may have, its best total price and the strip.
Invariant: whole numbers throughout. A row holds no more of a kind than is left; several
rows together may, so that a strip found here is trimmed before it is used.

Three knapsacks, one inside the other: pieces side by side in a row, by its depth and
width; rows one after another in a section, by the section's depth and width; sections
side by side in a strip.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

import numpy as np
import numpy.typing as npt

from publish.cut.strips.parted import Held, Parted, Row, Rows
from publish.cut.strips.pricing import Run, batches, runs_of
from publish.cut.strips.problem import Problem

Table = npt.NDArray[np.int64]

MOST_DEPTHS = 40
"""Depths that a strip is tried at: of the pieces, then sums of two."""
DEEPER = 8, 5
"""A strip is at most 8/5 as deep as the deepest piece."""
MOST_SUMS = 1000
"""Depths of rows together that are told apart; with more of them, a row may lie a little
deeper than it need."""
ROW, SECTION = 1, 4
"""Price of a further row and a further section: of equal strips the one with fewer cuts."""


@dataclass(frozen=True)
class _Step:
    """A batch of one kind: where it was worth taking, by depth and width."""

    run: Run
    batch: int
    width: int
    taken: npt.NDArray[np.bool_]


@dataclass(frozen=True)
class _Stacked:
    """The best sections, by the sums of their rows' depths and by the widths at which a row
    is worth more than one a step narrower."""

    sums: npt.NDArray[np.int64]
    column: npt.NDArray[np.int64]
    """Of each width, that of the last such one."""
    used: npt.NDArray[np.int64]
    """The depths of rows that are worth more than the next shallower one."""
    before: npt.NDArray[np.int64]
    """Of each sum, by the depth of its last row, the place of the sum before that."""
    worth: Table
    last: npt.NDArray[np.int16]
    """The last row's depth, in `used`."""
    ends: npt.NDArray[np.int32]
    """The place of the sum that the rows really come to, which may be less."""

    def place(self, depth: int) -> int:
        """Return the place of the greatest sum that is no more than a depth."""
        return int(np.searchsorted(self.sums, depth, "right")) - 1

    def rows(self, depth: int, width: int) -> list[int]:
        """Return the depths of the rows of the best section, as indices."""
        k, column, found = self.place(depth), int(self.column[width]), []
        while (k := int(self.ends[k, column])) > 0:
            at = int(self.last[k, column])
            found.append(int(self.used[at]))
            k = int(self.before[k, at])
        return found


class Stacks:
    """The tables of one problem, filled anew for every set of prices."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self.runs = runs_of(problem)
        self.tried = _tried(problem.depths)
        sums = len(_sums(problem.depths, self.tried))
        self.size = sums * problem.width * len(problem.depths)
        """Numbers that are worked out at one set of prices, at most."""

    def priced(self, prices: Sequence[int], left: Sequence[int]) -> Priced:
        """Return the tables at these prices, no row with more of a kind than is left."""
        rows, steps = self._rows(prices, left)
        stacked = self._stack(rows)
        worth, widths = self._beside(stacked)
        return Priced(self, worth, widths, stacked, steps)

    def _rows(self, prices: Sequence[int], left: Sequence[int]) -> tuple[Table, list[_Step]]:
        """Return the best price of a row, by its depth and width."""
        width = self.problem.width
        table = np.zeros((len(self.problem.depths), width + 1), dtype=np.int64)
        steps = []
        for run in self.runs:
            price = prices[run.kind]
            for batch in batches(min(left[run.kind], width // run.width)) if price > 0 else ():
                wide, rows = batch * run.width, table[run.first : run.last]
                gained = rows[:, : width + 1 - wide] + batch * price
                taken = gained > rows[:, wide:]
                np.copyto(rows[:, wide:], gained, where=taken)
                steps.append(_Step(run, batch, wide, taken))
        return table, steps

    def _stack(self, rows: Table) -> _Stacked:
        """Return the best sections at what rows are worth.

        No row is shallower than the shallowest, so that sums which lie closer together than
        that do not depend on each other and are worked out at once.
        """
        wider = np.concatenate([[True], (rows[:, 1:] != rows[:, :-1]).any(axis=0)])
        rows = rows[:, wider]
        more = (np.diff(rows, axis=0, prepend=np.zeros_like(rows[:1])) != 0).any(axis=1)
        used = np.flatnonzero(more)
        depths = np.array(self.problem.depths)[used]
        sums = np.array(_sums(depths.tolist(), self.tried))
        before = np.searchsorted(sums, sums[:, None] - depths, "right") - 1
        first = np.searchsorted(sums, depths)
        table = np.zeros((len(sums), rows.shape[1]), dtype=np.int64)
        last, ends = np.zeros(table.shape, dtype=np.int16), np.zeros(table.shape, dtype=np.int32)
        k = 1
        while k < len(sums):
            end = int(np.searchsorted(sums, sums[k] + depths[0]))
            value = np.full((end - k, rows.shape[1]), -1)
            for at, i in enumerate(used):
                low = max(k, int(first[at]))
                if low < end:
                    worth = table[before[low:end, at]] + (rows[i] - ROW)
                    better = worth > value[low - k :]
                    np.copyto(value[low - k :], worth, where=better)
                    np.copyto(last[low:end], at, where=better)
            most = np.maximum.accumulate(np.concatenate([table[k - 1 : k], value]), axis=0)
            table[k:end] = most[1:]
            gained = np.where(value > most[:-1], np.arange(k, end)[:, None], 0)
            ends[k:end] = np.maximum(np.maximum.accumulate(gained, axis=0), ends[k - 1])
            k = end
        return _Stacked(sums, np.cumsum(wider) - 1, used, before, table, last, ends)

    def _beside(self, stacked: _Stacked) -> tuple[Table, npt.NDArray[np.int32]]:
        """Return the best price of sections side by side by depth and width, and the width
        of the last; 0 where the last step across stays empty."""
        deep = [stacked.place(d) for d in self.tried]
        one = stacked.worth[deep][:, stacked.column] - SECTION
        table = np.zeros_like(one)
        widths = np.zeros(one.shape, dtype=np.int32)
        each = np.arange(len(one))
        # A section no better than a narrower one is never the last of the best.
        steps = 1 + np.flatnonzero((one[:, 1:] > one[:, :-1]).any(axis=0))
        for x in range(1, one.shape[1]):
            wide = steps[: np.searchsorted(steps, x, "right")]
            table[:, x] = table[:, x - 1]
            if len(wide):
                worth = table[:, x - wide] + one[:, wide]
                pick = worth.argmax(axis=1)
                value = worth[each, pick]
                better = value > table[:, x]
                table[better, x] = value[better]
                widths[better, x] = wide[pick[better]]
        return table, widths


@dataclass(frozen=True)
class Priced:
    """The best strips at one set of prices."""

    stacks: Stacks
    worth: Table
    widths: npt.NDArray[np.int32]
    stacked: _Stacked
    steps: Sequence[_Step]
    _held: dict[tuple[int, int], Held] = field(default_factory=dict)
    _sections: dict[tuple[int, int], Rows] = field(default_factory=dict)

    def better(self, than: Callable[[int], Fraction]) -> list[Parted]:
        """Return the best strip of each depth whose total price is above what `than` says
        for the depth."""
        width = self.stacks.problem.width
        return [
            Parted(depth, self.sections(depth, width))
            for at, depth in enumerate(self.stacks.tried)
            if int(self.worth[at, -1]) > than(depth)
        ]

    def sections(self, depth: int, room: int) -> tuple[Rows, ...]:
        """Return the best sections of a strip so deep, together no wider than `room`."""
        at, found = self.stacks.tried.index(depth), []
        while room > 0:
            width = int(self.widths[at, room])
            if width:
                found.append(self._section(depth, width))
            room -= width or 1
        return tuple(found)

    def _section(self, depth: int, width: int) -> Rows:
        if (depth, width) not in self._sections:
            rows = self.stacked.rows(depth, width)
            self._sections[depth, width] = tuple(Row(last, self._row(last, width)) for last in rows)
        return self._sections[depth, width]

    def _row(self, depth: int, width: int) -> Held:
        """Return the pieces of the best row."""
        if (depth, width) not in self._held:
            room, held = width, dict[int, int]()
            for step in reversed(self.steps):
                run = step.run
                fits = run.first <= depth < run.last and room >= step.width
                if fits and step.taken[depth - run.first, room - step.width]:
                    held[run.kind] = held.get(run.kind, 0) + step.batch
                    room -= step.width
            self._held[depth, width] = tuple(sorted(held.items()))
        return self._held[depth, width]


def _tried(depths: Sequence[int]) -> tuple[int, ...]:
    """Return the depths that strips are tried at, shallowest first: those of pieces, and as
    many sums of two as there is room for, evenly spread."""
    up, down = DEEPER
    most = max(depths) * up // down
    sums = sorted({a + b for a in depths for b in depths if a + b <= most} - set(depths))
    room = max(0, MOST_DEPTHS - len(depths))
    if len(sums) > room:
        sums = [sums[at * len(sums) // room] for at in range(room)]
    return tuple(sorted({*depths, *sums}))


def _sums(depths: Sequence[int], tried: Sequence[int]) -> list[int]:
    """Return every sum of depths up to the greatest that is tried, shallowest first; where
    those are very many, some evenly spread and what is tried."""
    most = max(tried)
    bits, mask = 1, (1 << (most + 1)) - 1
    for depth in depths:
        step = depth
        while step <= most:
            bits |= (bits << step) & mask
            step *= 2
    sums = [d for d in range(most + 1) if bits >> d & 1]
    if len(sums) > MOST_SUMS:
        spread = (sums[at * len(sums) // MOST_SUMS] for at in range(MOST_SUMS))
        sums = sorted({*spread, *(d for d in tried if bits >> d & 1)})
    return sums
