"""The rounds of a medallion, from the centre outwards, with every block in its place.

In: the rounds as declared, and the size of what they surround. Out: `Round`s; a note where
a round of blocks does not go round what is inside it.
Invariant: a round of blocks surrounds a whole number of its blocks, in both directions.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from publish.model.pattern import BorderSpec, Pattern, RoundSpec, SizeSpec
from publish.model.size import Round, RoundBlock
from publish.notes import Note, error
from publish.surd import Exact, Surd

SIDES = (0, 90, 180, 270)
"""The turn of a block by its side: top, right, bottom, left."""


def rounds(
    pattern: Pattern, spec: SizeSpec, width: Exact, height: Exact
) -> tuple[tuple[Round, ...] | None, tuple[Note, ...]]:
    """Return the rounds of a size round an inside of `width` by `height`."""
    found: list[Round] = []
    for number, declared in enumerate(spec.rounds):
        if declared.border is not None:
            around = _border(declared.border, width, height)
        elif not _goes_round(declared, width, height):
            return None, (_unfit(pattern, spec, number, width, height),)
        else:
            around = _blocks(declared, width, height)
        found.append(around)
        width, height = around.width, around.height
    return tuple(found), ()


def _border(border: BorderSpec, width: Exact, height: Exact) -> Round:
    outer = width + 2 * border.width, height + 2 * border.width
    return Round(width, height, *outer, border)


def _goes_round(declared: RoundSpec, width: Exact, height: Exact) -> bool:
    side = declared.block_size
    assert side is not None
    return width % side == 0 and height % side == 0


def _blocks(declared: RoundSpec, width: Exact, height: Exact) -> Round:
    """Return a round of blocks, clockwise from its top left corner."""
    side = declared.block_size
    assert side is not None
    columns, rows = width // side + 2, height // side + 2
    along = (
        [(0, column) for column in range(columns - 1)],
        [(row, columns - 1) for row in range(rows - 1)],
        [(rows - 1, column) for column in range(columns - 1, 0, -1)],
        [(row, 0) for row in range(rows - 1, 0, -1)],
    )
    placed = [
        RoundBlock(
            declared.blocks[number % len(declared.blocks)],
            (turn + declared.turns[number % len(declared.turns)]) % 360,
            row,
            column,
        )
        for turn, places in zip(SIDES, along, strict=True)
        for number, (row, column) in enumerate(places)
    ]
    outer = width + 2 * side, height + 2 * side
    return Round(width, height, *outer, None, side, columns, rows, tuple(placed))


def _unfit(pattern: Pattern, spec: SizeSpec, number: int, width: Exact, height: Exact) -> Note:
    """Say which border would let a round of blocks go round."""
    say = pattern.measures.text
    side = spec.rounds[number].block_size
    assert side is not None
    return error(
        "G214",
        pattern.place("sizes", spec.key, "rounds", number, "block_size"),
        "the round of blocks does not go round what is inside it",
        expected=f"an inside that is a whole number of times {say(side)} wide and high",
        received=f"{say(width)} by {say(height)}",
        help=_remedy(say, spec, number, width, height, side),
    )


def _remedy(
    say: Callable[[Exact], str],
    spec: SizeSpec,
    number: int,
    width: Exact,
    height: Exact,
    side: Fraction,
) -> str:
    """Return the nearest widths of the border inside a round that would make it fit."""
    if isinstance(width, Surd) or isinstance(height, Surd):
        return (
            "blocks on point take up no whole number of blocks that stand straight: set the "
            "centre straight, or put only borders round it"
        )
    before = spec.rounds[number - 1].border if number else None
    own = before.width if before else Fraction(0)
    widths = _fitting(width - 2 * own, height - 2 * own, own, side)
    if not widths:
        return (
            f"width and height differ by {say(abs(width - height))}, which is no whole "
            "number of blocks: choose a `block_size` that divides it"
        )
    listed = " or ".join(f"`{say(w)}`" for w in widths)
    if before:
        return f"make the border inside it {listed} wide instead of {say(own)}"
    return f"put a border inside it, {listed} wide"


def _fitting(width: Fraction, height: Fraction, own: Fraction, side: Fraction) -> list[Fraction]:
    """Return the nearest border widths below and above `own` that make both sides fit."""
    if (width - height) % side:
        return []
    short = -width % side / 2
    steps = (own - short) // (side / 2)
    found = [short + n * side / 2 for n in (steps, steps + 1)]
    return [w for w in found if w > 0]
