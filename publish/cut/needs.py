"""What a size needs from its fabrics, before letters and strips.

In: pattern, size, draft. Out: `Need`s: pieces with every way in which they may be cut.
Invariant: a need's first way is the plain one; every way gives the same finished piece.
The loss in each join is counted in the way's own lengths.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.cut.templates import Outline
from publish.model.cloth import FAT, Fabric
from publish.surd import Length
from publish.units import EIGHTH, round_up
from publish.words.values import Said, Value


@dataclass(frozen=True)
class Cloth:
    """What limits a piece of one fabric: inches across and along, None for no limit."""

    across: Fraction
    along: Fraction | None = None
    directional: bool = False
    step: Fraction = EIGHTH
    """What lengths that are joined are rounded up to."""

    @property
    def reach(self) -> Fraction:
        """Return the longest side of a piece that is not cut along a bolt."""
        return max(self.across, self.along or self.across)

    def holds(self, across: Fraction, along: Fraction) -> bool:
        return across <= self.across and (self.along is None or along <= self.along)


def cloth_of(fabric: Fabric, step: Fraction = EIGHTH) -> Cloth:
    """Return the limits of a fabric as it is sold, and the step of what is joined.

    Cloth cut from a bolt shrinks along its length; squares and strips sold ready cut are
    not washed (common practice, no source).
    """
    sold = fabric.sold_as
    if sold is None:
        return Cloth(fabric.usable_width, None, fabric.directional, step)
    fat = sold.kind in FAT
    length = sold.length * (1 - fabric.shrinkage) if fat else sold.length
    return Cloth(sold.width, length, fabric.directional, step)


@dataclass(frozen=True)
class Made:
    """The piece that a way makes, where it is not the need's own."""

    called: Said
    width: Fraction
    length: Fraction
    count: int


@dataclass(frozen=True)
class Way:
    """One way to cut a need: `count` rectangles `across` by `along` the fabric.

    `joined` rectangles are sewn end to end for one finished piece. `words` says the way
    in the plan's list of choices and is empty for the only way.
    """

    across: Fraction
    along: Fraction
    count: int
    joined: int = 1
    may_turn: bool = False
    words: str = ""
    made: Made | None = None

    def fits(self, cloth: Cloth) -> bool:
        turned = self.may_turn and cloth.holds(self.along, self.across)
        return cloth.holds(self.across, self.along) or turned


@dataclass(frozen=True)
class Need:
    """Pieces of one size and purpose from one fabric. Lengths in inches."""

    called: Said
    purpose: str
    fabric: str
    width: Fraction
    length: Fraction
    count: int
    ways: tuple[Way, ...]
    finished_width: Length | None = None
    finished_length: Length | None = None
    exact_width: Length | None = None
    exact_length: Length | None = None
    note: Value | None = None
    motif: str = ""
    """The motif that is cut from it."""
    shape: str = "rectangle"
    yields: int = 1
    angle: int = 0
    apart: Fraction | None = None
    """As in `Piece`, all four."""
    outline: Outline | None = None
    """Of a template."""
    mirrored: int = 0
    """How many of them are cut with the template turned over."""
    patches: tuple[str, ...] = ()
    """Keys of the patches of the top that are cut from it."""
    serves: frozenset[tuple[str, int]] = frozenset()
    """The places of blocks that it is for: it keeps its letter where they come again."""
    key: str = ""
    """Of a piece for patches: unique in its size."""
    rank: str = ""
    """`large`, `medium` or `small` among pieces of one name, by area; its name begins with it."""
    sized: Said | None = None
    """Its name with its size in place of its rank."""


ALONG = "along the length, without joins"
ACROSS = "across the width, joined"
ALONG_JOINED = "along the length, joined"


def plain(width: Fraction, length: Fraction, count: int, directional: bool) -> tuple[Way, ...]:
    """Return the only way to cut a piece that fits the fabric: turned or not at will."""
    return (Way(width, length, count, may_turn=not directional and width != length),)


def long_ways(
    width: Fraction, length: Fraction, count: int, cloth: Cloth, loss: Fraction, level: bool = False
) -> tuple[Way, ...]:
    """Return the ways to cut strips `width` by `length`: whole, or joined.

    `loss` is the length that one join takes. A strip that fits across the fabric is one
    piece; a longer one is cut along the length, or joined from the fewest equal lengths
    that fit. A print with a direction leaves one way: strips that lie `level` in the
    quilt run across the fabric, upright ones along it.
    """
    if cloth.directional and level:
        return (_level(width, length, count, (cloth.across, cloth.step), loss),)
    if cloth.directional:
        return (_upright(width, length, count, cloth.along, loss, cloth.step),)
    if length <= cloth.reach:
        return plain(width, length, count, directional=False)
    across = _level(width, length, count, (cloth.reach, cloth.step), loss)
    return (_upright(width, length, count, None, loss, cloth.step), across)


def _level(
    width: Fraction, length: Fraction, count: int, room: tuple[Fraction, Fraction], loss: Fraction
) -> Way:
    """Return strips across the fabric, the longest and the step of joined ones given as `room`;
    joined ones of a fat quarter may run along it."""
    most, step = room
    if length <= most:
        return Way(length, width, count)
    parts, each = equal_lengths(length, most, loss, step)
    return Way(each, width, count * parts, parts, words=ACROSS)


def _upright(
    width: Fraction,
    length: Fraction,
    count: int,
    most: Fraction | None,
    loss: Fraction,
    step: Fraction,
) -> Way:
    if most is None or length <= most:
        return Way(width, length, count, words=ALONG)
    parts, each = equal_lengths(length, most, loss, step)
    return Way(width, each, count * parts, parts, words=ALONG_JOINED)


def equal_lengths(
    length: Fraction, most: Fraction, loss: Fraction, step: Fraction = EIGHTH
) -> tuple[int, Fraction]:
    """Return the fewest equal lengths, each at most `most`, that give `length` when each
    join takes `loss`; and how long each is, rounded up to a `step`.

    Where a join takes a whole length there is no such number: one piece of the full
    length is returned, which no cloth so short holds.
    """
    if length <= most or most <= loss:
        return 1, length
    parts = int(-(-(length - loss) // (most - loss)))
    while True:
        each = round_up((length + (parts - 1) * loss) / parts, step)
        if each <= most:
            return parts, each
        parts += 1  # rounding up took the last step
