"""Stage 4 output: what to cut and what to buy for one size.

In: a size and its draft. Out: `CutPlan`. Lengths are exact `Fraction` inches.
Invariant: every piece that is cut has a place in a fabric's plan, the plan fits the
usable width, and the length to buy is never below the plan's length.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from publish.model.cloth import Have, SoldAs
from publish.model.pieces import Cut as Cut
from publish.model.pieces import Making as Making
from publish.model.pieces import Piece as Piece
from publish.model.pieces import PieceTemplate as PieceTemplate
from publish.model.pieces import Placed as Placed
from publish.model.pieces import Section as Section
from publish.model.pieces import Strip as Strip
from publish.words.values import Rectangle, Said, Value, Word, said


@dataclass(frozen=True)
class Sheet:
    """Fat quarters, squares or strips as sold that are cut alike.

    Strips run across `sold_as.width`; with `lengthwise` they run along its length, and
    a cut's `across` and `along` keep their meaning for the strip.
    """

    strips: tuple[Strip, ...]
    count: int
    lengthwise: bool = False


@dataclass(frozen=True)
class PrecutPlan:
    """How a fabric that is sold ready cut is cut: every one of its pieces, once each.

    `used` is how many are cut into, `bound` a proven lower bound on that for any plan
    with two stages of cuts in each, and `packets` what is bought.
    """

    sold_as: SoldAs
    sheets: tuple[Sheet, ...]
    used: int
    bound: int
    packets: int


@dataclass(frozen=True)
class Alternative:
    """Whether a fabric's pieces could be cut from something sold ready cut.

    `count` says from how many, with `bound` a proven lower bound; None where piece
    `larger` does not fit, or where `larger` is empty because nobody looked. Pieces in
    `joined` are then joined from shorter lengths than in the plan.
    """

    sold_as: SoldAs
    count: int | None
    bound: int | None = None
    larger: str = ""
    joined: tuple[str, ...] = ()


@dataclass(frozen=True)
class Used:
    """Pieces of cloth that are there, and how those that are used are cut."""

    have: Have
    sheets: tuple[Sheet, ...]

    @property
    def count(self) -> int:
        """Return how many are cut into."""
        return sum(sheet.count for sheet in self.sheets)


@dataclass(frozen=True)
class HavePlan:
    """How a fabric's pieces are cut where some of it is there: from that first.

    `rest` is the plan of what is still to be bought, None where nothing is. `bound` is a
    proven lower bound, in inches, on the length of the rest for every plan with two stages
    of cuts in each piece of cloth that is there, however the rest is laid out.
    """

    used: tuple[Used, ...]
    """By item of the list."""
    rest: FabricPlan | None
    bound: Fraction


@dataclass(frozen=True)
class Share:
    """What to buy of a fabric for one of its uses alone."""

    use: str
    """`top`, or the purpose of what is cut besides it: `backing`, `binding` ..."""
    buy: Fraction
    buy_metric: Fraction


@dataclass(frozen=True)
class FabricPlan:
    """How one fabric is cut at one size, what to buy, and how little could be saved.

    Every length runs along the fabric. `length` is the strips' own, `squaring` what squaring
    up all of them takes; `needed` is both with the allowances for straightening, a mis-cut
    and shrinkage; `buy` is `needed` rounded up to the purchase step in yards and
    `buy_metric` to the metric step; `bound` is a proven lower bound on `length + squaring`
    however the same pieces are laid, straight or at right angles, or, where shapes are
    nested, what the area of all pieces needs; `gap` is what lies between.
    """

    fabric: str
    usable_width: Fraction
    pieces: tuple[Piece, ...]
    strips: tuple[Strip, ...]
    length: Fraction
    needed: Fraction
    buy: Fraction
    buy_metric: Fraction
    bound: Fraction
    waste: Fraction
    """Share of the plan's area that is not pieces, between 0 and 1."""
    choices: tuple[str, ...] = ()
    """Decisions in words: `borders cut across the width and joined: saves 1 1/2 yd`."""
    precut: PrecutPlan | None = None
    """Where the fabric is sold ready cut; the lengths are then what to buy instead."""
    alternatives: tuple[Alternative, ...] = ()
    """For a fabric sold by length: what else it could be cut from."""
    spare: Fraction | None = None
    """What the length at hand has over `needed`; below zero where it is short."""
    stock: Value | None = None
    """The same in words: `enough, with 1/4 yd (0.20 m) left`, or `short by ...`."""
    squaring: Fraction = Fraction(0)
    shrunk: Fraction = Fraction(0)
    """What shrinking takes of `needed`."""
    shares: tuple[Share, ...] = ()
    """For a fabric that serves the top and something else, or two things: what each use
    would be bought as by itself. Together they may come to more than `buy`."""
    have: HavePlan | None = None
    """Where some of the fabric is there."""
    left: tuple[Fraction, Fraction] | None = None
    """The largest piece that is left of what is bought, across the fabric and along it."""

    @property
    def gap(self) -> Fraction:
        return self.length + self.squaring - self.bound

    def lies(self, piece: Piece) -> tuple[Fraction, Fraction]:
        """Return a piece's two sides as it lies in the strip that it is first cut from: across
        the fabric, then along it."""
        cuts = (cut for strip in self.strips for cut in strip.held if cut.letter == piece.letter)
        first = next(cuts, None)
        if first is not None and first.along == piece.width:
            return piece.length, piece.width
        return piece.width, piece.length


@dataclass(frozen=True)
class BackingPlan:
    """The backing as sewn: overall size, panels, and which way the seams run."""

    fabric: str
    width: Fraction
    height: Fraction
    panels: int
    panel_width: Fraction
    panel_length: Fraction
    seams: str
    """`none`, `vertical` or `horizontal`."""
    overhang: Fraction
    half: Fraction | None = None
    """Width of each half of the last panel, which is cut in two and sewn on at both
    sides, so that no seam runs down the middle; None where all panels stay whole."""


@dataclass(frozen=True)
class Package:
    """Batting as it is sold: its name in the trade, and its sides in inches, the shorter first."""

    name: str
    short: Fraction
    long: Fraction

    @property
    def called(self) -> Said:
        """Return its name and its sides, as a value."""
        sides = Rectangle(self.short, self.long)
        return said("package", name=Word(self.name), sides=sides)


@dataclass(frozen=True)
class BattingPlan:
    """The batting to cut, and the smallest standard package that holds it."""

    name: str
    width: Fraction
    height: Fraction
    package: Package | None


@dataclass(frozen=True)
class BindingPlan:
    """Binding: the length needed, and the strips that give it."""

    fabric: str
    cut: str
    strip_width: Fraction
    length: Fraction
    """Perimeter and allowance: what must be there after joining."""
    strips: int
    joins: int
    joined_length: Fraction
    """What the strips give after joining; of a square for bias, rounded down to 1/8 in."""
    square: Fraction | None = None
    """Side of the square for continuous bias."""
    lines: int = 0
    """Whole strips that lie side by side on that square, once it is sewn to a slant."""
    strip_length: Fraction | None = None
    """Of each straight strip, as cut."""


@dataclass(frozen=True)
class PillowPlan:
    """A pillow's back pieces and the overlap they give."""

    form: Fraction
    back: str
    fabric: str
    piece_width: Fraction
    piece_length: Fraction
    count: int
    overlap: Fraction
    hem: Fraction


@dataclass(frozen=True)
class WebPlan:
    """Fusible web for raw-edge motifs, or stabiliser: what is cut from a roll.

    Squares of `side`; or, with `placements`, shapes nested in `length`.
    """

    width: Fraction
    """Of the roll."""
    length: Fraction
    buy: Fraction
    squares: int
    side: Fraction
    placements: tuple[Placed, ...] = ()


@dataclass(frozen=True)
class ThreadPlan:
    """Thread by purpose. Lengths are inches of thread, not of seam."""

    piecing: Fraction
    applique: Fraction
    quilting: Fraction
    binding: Fraction
    ratio: Fraction
    motifs: Mapping[str, Fraction] = field(default_factory=dict)
    """The appliqué's, by the fabric of the motifs that it is matched to."""

    @property
    def total(self) -> Fraction:
        return self.piecing + self.applique + self.quilting + self.binding


@dataclass(frozen=True)
class CutPlan:
    """Everything to cut and to buy for one size."""

    size: str
    pieces: tuple[Piece, ...]
    fabrics: Mapping[str, FabricPlan]
    """By fabric key, in the pattern's order; only fabrics this size uses."""
    motif_square: Fraction | None
    backing: BackingPlan | None
    batting: BattingPlan | None
    binding: BindingPlan | None
    pillow: PillowPlan | None
    web: WebPlan | None
    sleeve: Piece | None
    thread: ThreadPlan
    stabiliser: WebPlan | None = None
    sources: Mapping[str, str] = field(default_factory=dict)
    """Letter of the piece that each patch of the top is cut from, by the patch's key."""
    templates: tuple[PieceTemplate, ...] = ()
    makings: tuple[Making, ...] = ()

    def piece(self, purpose: str) -> Piece | None:
        """Return the piece cut for a purpose, or None."""
        return next((p for p in self.pieces if p.purpose == purpose), None)
