"""Joining strips that are longer than the cloth from the lengths that they are cut in.

In: pieces. Out: an operation, where any of them is joined.
Invariant: a joined strip is never shorter than the plan says.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

from publish.model.cutplan import Piece
from publish.operations.lengths import Joined, JoinLengths
from publish.operations.operation import Where
from publish.sew.bench import Bench, heap, side
from publish.words.values import Value


def join(
    bench: Bench,
    where: Where,
    pieces: Iterable[Piece],
    what: Value,
    whole: Callable[[Piece], Joined],
) -> None:
    """Join the lengths of those pieces that come in several; `whole` says how each then lies."""
    joined = tuple(whole(piece) for piece in pieces if piece.joined_from > 1)
    if joined:
        bench.add(JoinLengths(**where, strips=joined, seam=bench.seam, what=what))


def as_cut(piece: Piece) -> Joined:
    """Return a strip on the heap of its lengths, turned and as long as the plan has it."""
    across = piece.width > piece.length
    return replace(_joined(piece, heap(piece)), trimmed=True, across=across)


def upright(piece: Piece, strip: str) -> Joined:
    """Return a strip on a heap of its own, its length upward, left long until it is measured."""
    return _joined(piece, strip)


def _joined(piece: Piece, strip: str) -> Joined:
    sides = side(piece.width, piece.exact_width), side(piece.length, piece.exact_length)
    return Joined(
        piece=heap(piece),
        strip=strip,
        letter=piece.letter,
        count=piece.count,
        each=piece.joined_from,
        long=max(sides, key=lambda measure: measure.told),
    )
