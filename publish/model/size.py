"""Stage 2 output: one size with every finished dimension and count settled.

In: a pattern and a size name. Out: `Size`. Lengths are `Fraction` inches.
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
)


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
    """Innermost first."""
    inner_width: Fraction
    """Of the blocks, without borders."""
    inner_height: Fraction
    width: Fraction
    """Of the finished top, borders included: the finished quilt or pillow cover."""
    height: Fraction
    pillow: PillowSpec | None
    backing: BackingSpec | None
    batting: BattingSpec | None
    binding: BindingSpec | None
    quilting: tuple[QuiltingSpec, ...]
    sleeve: Fraction | None

    @property
    def block_count(self) -> int:
        return self.columns * self.rows

    @property
    def perimeter(self) -> Fraction:
        return 2 * (self.width + self.height)
