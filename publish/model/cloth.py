"""What the quilt is cut from: fabrics, and how each is sold.

In: nothing. Out: frozen types, part of stage 1's output. Lengths are `Fraction` inches.
Invariant: only what the YAML says or its documented default; nothing derived.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from publish.units import parse_length


@dataclass(frozen=True)
class SoldAs:
    """Cloth sold ready cut: `kind` is `fat quarter`, `fat eighth`, `square` or `strip`.

    `width` runs across the fabric and `length` along it; `packet` says how many are sold
    together.
    """

    kind: str
    width: Fraction
    length: Fraction
    packet: int = 1


FAT_QUARTER = SoldAs("fat quarter", Fraction(22), Fraction(18))
"""Common practice, no source."""
FAT_EIGHTH = SoldAs("fat eighth", Fraction(22), Fraction(9))
"""A quarter yard of half the width, about 9 x 22 in: tilkkunen.com, Meters, yards, inches
and fat quarter."""
FAT = (FAT_QUARTER.kind, FAT_EIGHTH.kind)
"""Kinds of cut that are made from a length in the shop."""
_FAT = tuple(parse_length(text) for text in ("55 cm", "50 cm", "25 cm"))
METRIC_FAT_QUARTER = SoldAs("fat quarter", _FAT[0], _FAT[1])
"""50 x 55 cm: lonesockproductions blog, Cot quilt with metric maths, 2010."""
METRIC_FAT_EIGHTH = SoldAs("fat eighth", _FAT[0], _FAT[2])
"""Half of it; common practice, no source."""


def fat_cuts(metric: bool) -> tuple[SoldAs, SoldAs]:
    """Return the fat quarter and the fat eighth where cloth is sold by the metre or the yard."""
    return (METRIC_FAT_QUARTER, METRIC_FAT_EIGHTH) if metric else (FAT_QUARTER, FAT_EIGHTH)


@dataclass(frozen=True)
class Have:
    """Pieces of a fabric that are there: `width` runs across the fabric, `length` along it.

    `kind` is `piece`, or as of `SoldAs`; `item` is where it stands in the list.
    """

    fabric: str
    width: Fraction
    length: Fraction
    count: int = 1
    kind: str = "piece"
    item: int = 0


@dataclass(frozen=True)
class Swatch:
    """A photograph of a printed fabric: how wide the cloth is that it shows."""

    file: Path
    width: Fraction


@dataclass(frozen=True)
class Fabric:
    """One fabric. `colour` is `#rrggbb`."""

    key: str
    name: str
    colour: str
    usable_width: Fraction
    directional: bool = False
    shrinkage: Fraction = Fraction(0)
    """Share lost in washing: 3/100 for three percent."""
    owned: Fraction | None = None
    """Length the designer already has, in inches."""
    sold_as: SoldAs | None = None
    """None for yardage."""
    swatch: Swatch | None = None
    """For computed pictures; None for a plain cloth of its colour."""
