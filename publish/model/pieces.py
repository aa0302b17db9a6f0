"""The pieces that are cut, and how they lie in strips of cloth.

In: a size and its draft. Out: frozen types, part of stage 4's output. Lengths are exact
`Fraction` inches.
Invariant: a piece is what the maker cuts; what she makes of it is told beside it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil

from shapely.geometry import MultiPolygon, Polygon

from publish.words.values import Value


@dataclass(frozen=True)
class Piece:
    """Pieces of one cut size from one fabric.

    `width` runs across the fabric and `length` along it, before any turning; `letter`
    names the piece in tables, steps and figures and is unique within the pattern for
    one purpose (the same purpose keeps its letter in every size). `exact_*` are the
    sizes before rounding up to 1/8 in, equal when nothing was rounded.
    """

    letter: str
    called: Value
    """What words call it: a name of the trade, or the patches of a foundation that it is for."""
    purpose: str
    """`ground`, `motif`, `border 1 side`, `border 1 top`, `backing`, `binding`,
    `pillow back`, `sleeve` ..."""
    fabric: str
    width: Fraction
    length: Fraction
    count: int
    finished_width: Fraction | None = None
    finished_length: Fraction | None = None
    exact_width: Fraction | None = None
    exact_length: Fraction | None = None
    may_turn: bool = True
    """Whether the piece may be laid with its width along the fabric."""
    joined_from: int = 1
    """How many cut pieces are joined end to end to make one of these."""
    note: Value | None = None
    """For the cutting table: `trim to 18 1/2 in after appliqué`."""
    shape: str = "rectangle"
    """What the rectangle becomes: `rectangle`, `once-cut triangle`, `twice-cut triangle`,
    `parallelogram`, `diamond`, `hexagon`, `equilateral triangle`, `template`, or `oversize`
    for the squares of a quicker method."""
    yields: int = 1
    """Patches that each rectangle gives: 2 from a square cut once on the diagonal."""
    template: str = ""
    """Key of the `PieceTemplate` that it is cut with."""
    angle: int = 0
    """Of shapes from strips: degrees at which the strip is cut across; 0 for all others."""
    apart: Fraction | None = None
    """Of parallelograms and diamonds: between two cuts, measured square to them."""


@dataclass(frozen=True)
class PieceTemplate:
    """The full-size template of a pieced patch. Inches, the finished box's corner at 0, 0."""

    key: str
    letter: str
    fabric: str
    count: int
    mirrored: int
    """How many of them are cut with the template turned over, not counted in `count`."""
    finished: Polygon
    cut: Polygon
    """`finished` with the seam allowance, corners trimmed to the neighbouring seam."""
    notches: tuple[tuple[float, float], ...]
    """Where a curve is matched: its middle and quarters, on the finished line."""
    grain: float
    """Of the straight grain on the template: degrees clockwise from upright."""
    allowances: tuple[Fraction, ...] = ()
    """Of its edges, each once, the narrowest first."""


@dataclass(frozen=True)
class Making:
    """Units that are made several at once, and what they are made from.

    `method` is that of `Unit.made`. `batches` times, the pieces of `letters`, one row of
    `each` for each letter, make `each_batch` units of `kind`, trimmed to `trim`.
    """

    method: str
    kind: str
    """Of the units."""
    letters: tuple[str, ...]
    each: tuple[int, ...]
    """Pieces of each letter in one batch."""
    batches: int
    each_batch: int
    count: int
    """Units needed; `batches * each_batch` may be more."""
    trim: tuple[Fraction, Fraction]
    """Width and height that a unit is trimmed to, allowances included."""
    segment: Fraction | None = None
    """Of a strip set: how far apart it is cut across."""


@dataclass(frozen=True)
class Cut:
    """Pieces cut side by side from one strip."""

    letter: str
    across: Fraction
    """Size across the fabric."""
    along: Fraction
    """Size along the fabric; less than the strip's depth when trimmed."""
    count: int
    turned: bool = False


@dataclass(frozen=True)
class Placed:
    """A shape where it is cut: inches across and along, from the corner of its stretch.

    It is drawn as it lies on the wrong side of the cloth and on the paper side of web.
    `turn` is in degrees clockwise from how the shape lies on the top.
    """

    letter: str
    outline: MultiPolygon
    turn: float


@dataclass(frozen=True)
class Section:
    """A part of a strip, as deep as it, that is cut into strips across itself again."""

    width: Fraction
    strips: tuple[Strip, ...]
    """The first is cut first; none has sections of its own."""


@dataclass(frozen=True)
class Strip:
    """A strip across the usable width, or across a section, cut `count` times alike.

    Its `cuts` are side by side at its full depth, and beside them its `sections`.
    With `placements` it is a stretch of cloth that shapes lie nested in, not rectangles
    side by side: its cuts then give the box round each shape, and boxes may overlap.
    """

    depth: Fraction
    """Along the fabric."""
    cuts: tuple[Cut, ...]
    count: int = 1
    placements: tuple[Placed, ...] = ()
    sections: tuple[Section, ...] = ()
    step: Fraction = Fraction(1, 8)
    """Inches: what nested shapes take of the width is rounded up to this."""

    @property
    def held(self) -> tuple[Cut, ...]:
        """Return the cuts of one such strip, those in its sections with all their strips."""
        inside = (
            replace(cut, count=cut.count * strip.count)
            for section in self.sections
            for strip in section.strips
            for cut in strip.cuts
        )
        return *self.cuts, *inside

    @property
    def used(self) -> Fraction:
        """Return the width taken by the pieces and the sections."""
        if self.placements:
            right = max(p.outline.bounds[2] for p in self.placements)
            return ceil(Fraction(right).limit_denominator(10**6) / self.step) * self.step
        beside = sum((c.across * c.count for c in self.cuts), Fraction(0))
        return beside + sum((s.width for s in self.sections), Fraction(0))

    @property
    def area(self) -> Fraction:
        """Return the area of the pieces of one such strip; of shapes, to 1/8 sq in below."""
        if self.placements:
            return Fraction(int(8 * sum(p.outline.area for p in self.placements)), 8)
        return sum((c.across * c.along * c.count for c in self.held), Fraction(0))
