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
from dataclasses import dataclass
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
ROW, SECTION = 1, 4
"""Price of a further row and a further section: of equal strips the one with fewer cuts."""


@dataclass(frozen=True)
class _Step:
    """A batch of one kind: where it was worth taking, by depth and width."""

    run: Run
    batch: int
    width: int
    taken: npt.NDArray[np.bool_]


class Stacks:
    """The tables of one problem, filled anew for every set of prices."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self.runs = runs_of(problem)
        self.tried = _tried(problem.depths)
        self.sums = _sums(problem.depths, self.tried[-1])
        at = {depth: k for k, depth in enumerate(self.sums)}
        self._at = at
        self._before = [
            [(at[d - h], i) for i, h in enumerate(problem.depths) if d - h in at] for d in self.sums
        ]

    def priced(self, prices: Sequence[int], left: Sequence[int]) -> Priced:
        """Return the tables at these prices, no row with more of a kind than is left."""
        rows, steps = self._rows(prices, left)
        stacks, chosen = self._stack(rows)
        worth, widths = self._beside(stacks)
        return Priced(self, worth, widths, chosen, steps)

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

    def _stack(self, rows: Table) -> tuple[Table, npt.NDArray[np.int16]]:
        """Return the best price of a section by depth and width, and its last row's depth;
        -1 where its last step along stays empty."""
        across = np.arange(rows.shape[1])
        table = np.zeros((len(self.sums), rows.shape[1]), dtype=np.int64)
        chosen = np.full(table.shape, -1, dtype=np.int16)
        for k, before in enumerate(self._before):
            if k == 0:
                continue
            table[k] = table[k - 1]
            if before:
                above, last = (np.array(side) for side in zip(*before, strict=True))
                worth = table[above] + rows[last] - ROW
                pick = worth.argmax(axis=0)
                value = worth[pick, across]
                better = value > table[k]
                table[k][better] = value[better]
                chosen[k][better] = last[pick][better]
        return table, chosen

    def _beside(self, stacks: Table) -> tuple[Table, npt.NDArray[np.int32]]:
        """Return the best price of sections side by side by depth and width, and the width
        of the last; 0 where the last step across stays empty."""
        one = stacks[[self._at[d] for d in self.tried]] - SECTION
        table = np.zeros_like(one)
        widths = np.zeros(one.shape, dtype=np.int32)
        each = np.arange(len(one))
        for x in range(1, one.shape[1]):
            worth = table[:, x - 1 :: -1] + one[:, 1 : x + 1]
            pick = worth.argmax(axis=1)
            value = worth[each, pick]
            better = value > table[:, x - 1]
            table[:, x] = np.where(better, value, table[:, x - 1])
            widths[:, x] = np.where(better, pick + 1, 0)
        return table, widths


@dataclass(frozen=True)
class Priced:
    """The best strips at one set of prices."""

    stacks: Stacks
    worth: Table
    widths: npt.NDArray[np.int32]
    chosen: npt.NDArray[np.int16]
    steps: Sequence[_Step]

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
        sums, depths = self.stacks.sums, self.stacks.problem.depths
        k, rows = sums.index(depth), []
        while k > 0:
            last = int(self.chosen[k, width])
            if last < 0:
                k -= 1
                continue
            rows.append(Row(last, _held(self.steps, last, width)))
            k = sums.index(sums[k] - depths[last])
        return tuple(rows)


def _held(steps: Sequence[_Step], depth: int, width: int) -> Held:
    """Return the pieces of the best row."""
    room, held = width, dict[int, int]()
    for step in reversed(steps):
        run = step.run
        fits = run.first <= depth < run.last and room >= step.width
        if fits and step.taken[depth - run.first, room - step.width]:
            held[run.kind] = held.get(run.kind, 0) + step.batch
            room -= step.width
    return tuple(sorted(held.items()))


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


def _sums(depths: Sequence[int], most: int) -> tuple[int, ...]:
    """Return every sum of depths up to `most`."""
    bits, mask = 1, (1 << (most + 1)) - 1
    for depth in depths:
        step = depth
        while step <= most:
            bits |= (bits << step) & mask
            step *= 2
    return tuple(d for d in range(most + 1) if bits >> d & 1)
