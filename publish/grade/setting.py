"""How the blocks of a size are set: which stands where, how it is turned, how large it is.

In: a size as declared. Out: arrangements, turns, and the finished size of the blocks
with their sashing and setting triangles.
Invariant: sizes are exact. On point a block takes up its diagonal, side times √2, across
and down, and so does a strip of sashing; nothing is rounded.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import cycle
from typing import TypeVar

from publish.model.pattern import SashingSpec, SizeSpec
from publish.model.size import Turns
from publish.surd import ROOT_2, Exact

T = TypeVar("T")


def in_turn(items: Sequence[T], rows: int, columns: int) -> tuple[tuple[T, ...], ...]:
    """Return items used in turn along each row and on through the rows."""
    return tuple(
        tuple(items[(row * columns + column) % len(items)] for column in range(columns))
        for row in range(rows)
    )


def checkered(
    items: Sequence[T], others: Sequence[T], rows: int, columns: int
) -> tuple[tuple[T, ...], ...]:
    """Return items and others on a checkerboard, the first of the items at the top left, each
    used in turn along the rows and on through them."""
    mine, its = cycle(items), cycle(others)
    return tuple(
        tuple(next(its if (row + column) % 2 else mine) for column in range(columns))
        for row in range(rows)
    )


def turns(listed: tuple[int, ...], rows: int, columns: int) -> Turns:
    """Return how far each block is turned; nothing where none is."""
    return in_turn(listed, rows, columns) if any(listed) else ()


def sashing(spec: SizeSpec) -> SashingSpec | None:
    """Return the strips between the blocks: on point they go round every block."""
    if spec.sashing is None:
        return None
    return replace(spec.sashing, outer=spec.sashing.outer or spec.setting == "on point")


def extent(spec: SizeSpec, count: int) -> Exact:
    """Return how much `count` blocks in a row or column take up, with what belongs to them.

    Straight: the blocks, the strips between them, and outer strips where there are any.
    On point: the diagonals of the blocks at the edge and of as many strips; blocks
    between, setting triangles and the halves of outer crossings lie within that.
    """
    strips = sashing(spec)
    width = strips.width if strips else 0
    if spec.setting == "on point":
        return count * (spec.block_size + width) * ROOT_2
    between = count + 1 if strips and strips.outer else count - 1
    return count * spec.block_size + between * width
