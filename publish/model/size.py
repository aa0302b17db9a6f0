"""Stage 2 output: one size with every finished dimension and count settled.

In: a pattern and a size name. Out: `Size`. Lengths are exact inches: `Fraction`, and
`surd.Surd` only where blocks on point bring the diagonal of a block in.
Invariant: allowances, binding and minimum features are never scaled.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.model.pattern import (
    BackingSpec,
    BattingSpec,
    BindingSpec,
    BorderSpec,
    PillowSpec,
    QuiltingSpec,
    SashingSpec,
)
from publish.surd import Length

Turns = tuple[tuple[int, ...], ...]
"""Degrees clockwise, 0, 90, 180 or 270, for each block of an arrangement."""


@dataclass(frozen=True)
class RoundBlock:
    """A block of a round, turned by `turn` degrees clockwise.

    `row` and `column` count block sides from the top left corner of the round's outer
    edge, from 0.
    """

    block: str
    turn: int
    row: int
    column: int


@dataclass(frozen=True)
class Round:
    """What goes all round what is inside it: a border, or blocks.

    `width` and `height` are finished and include the round. Of a round of blocks,
    `columns` and `rows` count its blocks along the top and along a side, corners
    included, and `blocks` go clockwise from the top left corner.
    """

    inner_width: Length
    inner_height: Length
    width: Length
    height: Length
    border: BorderSpec | None = None
    block_side: Fraction | None = None
    columns: int = 0
    rows: int = 0
    blocks: tuple[RoundBlock, ...] = ()


@dataclass(frozen=True)
class Size:
    """Finished dimensions and counts of one size."""

    key: str
    title: str
    finish: str
    columns: int
    rows: int
    arrangement: tuple[tuple[str, ...], ...]
    """Block keys, row by row from the top, each row from the left."""
    block_side: Fraction
    motif_span: Fraction | None
    """Finished width and height of the motif."""
    borders: tuple[BorderSpec, ...]
    """Innermost first; of a medallion, those among its rounds."""
    inner_width: Length
    """Of the blocks with sashing and setting triangles, without borders and rounds."""
    inner_height: Length
    width: Length
    """Of the finished top, borders included: the finished quilt or pillow cover."""
    height: Length
    pillow: PillowSpec | None
    backing: BackingSpec | None
    batting: BattingSpec | None
    binding: BindingSpec | None
    quilting: tuple[QuiltingSpec, ...]
    sleeve: Fraction | None
    setting: str = "straight"
    """`straight`, or `on point`: each block is turned a further 45 degrees clockwise, so
    that its top left corner stands uppermost, and setting triangles fill the edges."""
    turns: Turns = ()
    """Shaped as `arrangement`; empty when no block is turned."""
    alternates: tuple[tuple[str, ...], ...] = ()
    """On point: the blocks between, one row and one column fewer than `arrangement`.
    `alternates[r][c]` touches the blocks at rows r and r + 1, columns c and c + 1."""
    alternate_turns: Turns = ()
    sashing: SashingSpec | None = None
    setting_fabric: str = ""
    rounds: tuple[Round, ...] = ()
    """Of a medallion, from the blocks outwards; empty otherwise: see `layers`."""

    @property
    def block_count(self) -> int:
        """Return the number of blocks of `block_side`; those of rounds are not counted."""
        return self.columns * self.rows + sum(map(len, self.alternates))

    @property
    def perimeter(self) -> Length:
        return 2 * (self.width + self.height)

    @property
    def pitch(self) -> Fraction:
        """Return the distance between the centres of neighbouring blocks, along a side."""
        return self.block_side + (self.sashing.width if self.sashing else 0)

    @property
    def side_triangles(self) -> int:
        """Return the number of triangles that fill the edges on point, corners not counted."""
        return 2 * (self.columns - 1) + 2 * (self.rows - 1) if self.on_point else 0

    @property
    def corner_triangles(self) -> int:
        return 4 if self.on_point else 0

    @property
    def on_point(self) -> bool:
        return self.setting == "on point"

    @property
    def layers(self) -> tuple[Round, ...]:
        """Return everything round the blocks, innermost first: the rounds of a medallion,
        or else a round for each border."""
        if self.rounds:
            return self.rounds
        found = []
        width, height = self.inner_width, self.inner_height
        for border in self.borders:
            outer = width + 2 * border.width, height + 2 * border.width
            found.append(Round(width, height, *outer, border))
            width, height = outer
        return tuple(found)

    def seams_beyond(self, seam: Fraction) -> tuple[Fraction, ...]:
        """Return, for each of `layers`, the seam that lies beyond its outside edge: `seam`,
        and round the last one of a pillow the seam that closes the cover."""
        seams = [seam] * len(self.layers)
        if self.pillow is not None:
            seams[-1:] = [self.pillow.seam] * bool(seams)
        return tuple(seams)

    @property
    def bare(self) -> bool:
        """Return whether blocks lie at the edge of the top, with nothing round them."""
        outer = self.sashing is not None and self.sashing.outer
        return not self.layers and not outer and not self.on_point

    def turn(self, row: int, column: int) -> int:
        """Return how far a block is turned, in degrees clockwise."""
        return self.turns[row][column] if self.turns else 0

    def alternate_turn(self, row: int, column: int) -> int:
        """Return how far a block between is turned, in degrees clockwise."""
        return self.alternate_turns[row][column] if self.alternate_turns else 0
