"""Cloth held down along lines over something soft: the membrane equation, by multigrid.

In: where the cloth is held and how firmly, how much it is pushed up. Out: its height.
Invariant: the height solves  -∇²h + held(x) h = push(x)  with h = 0 on a frame one
pixel round the array, on
square pixels by the five-point formula; everything is in pixels, so that `push` and
`held` carry the square of the pixel's side.

A stretched film under even pressure: S. Timoshenko and J. N. Goodier, Theory of
Elasticity, the membrane analogy (torsion). Over a springy bed the same with `held` spread
evenly. Multigrid: W. L. Briggs, V. E. Henson and S. F. McCormick, A Multigrid Tutorial,
chapters 3 and 4: full multigrid, V cycles, damped Jacobi sweeps.
"""

from __future__ import annotations

import numpy as np

from publish.render.arrays import Grey, enlarged_twice, halved

_LEAST = 12
"""Pixels: arrays this small are simply swept until they have settled."""
_SETTLED = 60
_FIRST = 400
"""Sweeps on the coarsest level, and on the first height there, from nothing."""
_FAST = np.float32(1e4)
"""How firmly the edge is held: all but fixed, yet no number that others drown in."""


def height(push: Grey, held: Grey, cycles: int = 1, sweeps: int = 2) -> Grey:
    """Return the height of the cloth, in the units of `push`.

    `cycles` V cycles of `sweeps` sweeps before and after are made on each level, from the
    coarsest up: one leaves an error near that of the formula itself.
    """
    rows, columns = push.shape
    levels = max(0, int(np.log2(max(1, min(rows, columns) / _LEAST))))
    edge = [(1, 1 + -(n + 2) % 2**levels) for n in (rows, columns)]
    # Held all round, so that coarser levels, whose pixels reach further, know the edge.
    framed = np.pad(held, edge, constant_values=_FAST)
    return _full(np.pad(push, edge), framed, cycles, sweeps)[1 : rows + 1, 1 : columns + 1]


def _full(push: Grey, held: Grey, cycles: int, sweeps: int) -> Grey:
    """Return the height from the coarsest level up."""
    rows, columns = push.shape
    if rows % 2 or columns % 2 or min(rows, columns) <= _LEAST:
        return _swept(np.zeros_like(push), push, held, _FIRST)
    four = np.float32(4)
    coarse = _full(halved(push) * four, halved(held) * four, cycles, sweeps)
    found = enlarged_twice(coarse, (rows, columns))
    for _ in range(cycles):
        found = _cycle(found, push, held, sweeps)
    return found


def _cycle(found: Grey, push: Grey, held: Grey, sweeps: int) -> Grey:
    """Return an improved height: one V cycle."""
    rows, columns = push.shape
    if rows % 2 or columns % 2 or min(rows, columns) <= _LEAST:
        return _swept(found, push, held, _SETTLED)
    four = np.float32(4)
    found = _swept(found, push, held, sweeps)
    lacking = lack(found, push, held)
    below = halved(lacking) * four
    more = _cycle(np.zeros_like(below), below, halved(held) * four, sweeps)
    more = enlarged_twice(more, (rows, columns)) / (1 + held / 4)
    more *= found.dtype.type(_step(more, lacking, held))
    more += found
    return _swept(more, push, held, sweeps)


def _step(more: Grey, lacking: Grey, held: Grey) -> float:
    """Return how much of a correction brings the cloth's energy lowest.

    Coarse pixels place a held line only to their own width, so that a whole correction can
    be too much; this much of it never makes the height worse.
    """
    pull = (held + 4) * more
    pull -= _around(more)
    below = float(np.vdot(more, pull))
    return float(np.vdot(more, lacking)) / below if below > 0 else 0.0


def lack(found: Grey, push: Grey, held: Grey) -> Grey:
    """Return by how much a height fails the equation at each pixel."""
    left = _around(found)
    left += push
    left -= (held + 4) * found
    return left


def _around(found: Grey) -> Grey:
    """Return the sum of each pixel's four neighbours, 0 beyond the array."""
    total = np.empty_like(found)
    total[1:] = found[:-1]
    total[0] = 0
    total[:-1] += found[1:]
    total[:, 1:] += found[:, :-1]
    total[:, :-1] += found[:, 1:]
    return total


def _swept(found: Grey, push: Grey, held: Grey, times: int) -> Grey:
    """Return a height after Jacobi sweeps, damped by 4/5 where nothing holds the cloth and
    hardly where it is held fast."""
    share = 1 / (held + 5)
    for _ in range(times):
        new = _around(found)
        new += found
        new += push
        new *= share
        found = new
    return found
