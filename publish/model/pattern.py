"""Stage 1 output: the pattern as the designer wrote it, checked key by key.

In: nothing. Out: frozen types. Lengths are `Fraction` inches.
Invariant: only what the YAML says or its documented default; nothing derived.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from pathlib import Path

from publish.measures import INCHES, Measures
from publish.model.block import Block as Block
from publish.model.block import Foundation as Foundation
from publish.model.block import GridPoint as GridPoint
from publish.model.block import PatchSpec as PatchSpec
from publish.model.block import Piecing as Piecing
from publish.model.cloth import Fabric as Fabric
from publish.model.cloth import Have as Have
from publish.model.cloth import SoldAs as SoldAs
from publish.model.house import Photo as Photo
from publish.model.house import Publication as Publication
from publish.model.house import ShopPictures as ShopPictures
from publish.model.house import StepChange as StepChange
from publish.model.house import Style as Style
from publish.model.motif import Lay as Lay
from publish.model.motif import Motif as Motif
from publish.model.motif import OutlinePoint as OutlinePoint
from publish.model.studio import Caution as Caution
from publish.model.studio import Origin as Origin
from publish.model.studio import Price as Price
from publish.model.studio import Studio as Studio
from publish.notes import Acceptance, Place
from publish.words import LANGUAGES, Language, language


@dataclass(frozen=True)
class BorderSpec:
    """A border: finished width, and how its corners are joined (`butted`, `mitred`)."""

    width: Fraction
    fabric: str
    corners: str = "butted"


@dataclass(frozen=True)
class SashingSpec:
    """Strips between the blocks: finished width and fabric.

    `cornerstones` is the fabric of the squares where strips cross, None when the strips
    between rows run through. `outer` strips also go round the outside; on point they
    always do, and the edge of the top runs through the middle of the outermost crossings.
    """

    width: Fraction
    fabric: str
    cornerstones: str | None = None
    outer: bool = False


@dataclass(frozen=True)
class RoundSpec:
    """One round of a medallion: a border, or blocks all round what is inside.

    Blocks are used in turn along each side, clockwise, beginning anew at each corner,
    and so are `turns`, which are added to the turn that each side has.
    """

    border: BorderSpec | None = None
    blocks: tuple[str, ...] = ()
    block_size: Fraction | None = None
    turns: tuple[int, ...] = (0,)


@dataclass(frozen=True)
class BindingSpec:
    """Double-fold binding: the strip's cut width, its cut (`straight`, `bias`)."""

    fabric: str
    width: Fraction
    cut: str = "straight"
    allowance: Fraction = Fraction(10)
    """Length beyond the perimeter for corners and the closing join."""


@dataclass(frozen=True)
class BackingSpec:
    """Backing fabric and how far it must reach past each edge of the top.

    In a `SizeSpec` a fabric that was left out is empty here, in a binding and in a
    pillow; a graded `Size` always names one.
    """

    fabric: str
    overhang: Fraction


@dataclass(frozen=True)
class BattingSpec:
    """Batting: its name, reach past each edge, and the widest gap its label allows."""

    name: str
    overhang: Fraction
    largest_gap: Fraction | None = None


@dataclass(frozen=True)
class QuiltingSpec:
    """Quilting of one area (`motif`, `ground`, `border`).

    `style`: `echo`, `parallel`, `grid`, `ditch` or `as desired`; `spacing` where lines
    repeat; `angle` in degrees from the horizontal for parallel lines.
    """

    area: str
    style: str
    spacing: Fraction | None = None
    angle: int = 0


@dataclass(frozen=True)
class PillowSpec:
    """A pillow's finish: the form's side, the back (`envelope`, `zip`), its fabric.

    The finished cover is the size's block; `overlap` is the finished overlap of an
    envelope back.
    """

    form: Fraction
    back: str
    fabric: str
    overlap: Fraction
    hem: Fraction
    """Taken up by the hem on each back's inner edge (folded twice)."""
    seam: Fraction
    """Seam that joins front and back."""


@dataclass(frozen=True)
class SizeSpec:
    """One size as declared. What it leaves out is the pattern's own, or the default."""

    key: str
    title: str
    finish: str
    """`quilt` or `pillow`."""
    columns: int
    rows: int
    blocks: tuple[str, ...]
    """Block keys, used in turn across each row and on through the rows."""
    block_size: Fraction
    motif_size: Fraction | None
    borders: tuple[BorderSpec, ...]
    pillow: PillowSpec | None
    backing: BackingSpec | None
    batting: BattingSpec | None
    binding: BindingSpec | None
    quilting: tuple[QuiltingSpec, ...]
    """Empty when nothing is said: see `grade.quilting.usual`."""
    sleeve: Fraction | None
    """Finished depth of the hanging sleeve; None for no sleeve."""
    setting: str = "straight"
    """`straight` or `on point`."""
    turns: tuple[int, ...] = (0,)
    """Degrees clockwise by which blocks are turned, used in turn as `blocks` are."""
    alternate: tuple[str, ...] = ()
    """On point: the blocks between the rows, used in turn; empty for `blocks`."""
    alternate_turns: tuple[int, ...] = (0,)
    sashing: SashingSpec | None = None
    setting_fabric: str = ""
    """On point: the fabric of the side and corner triangles."""
    rounds: tuple[RoundSpec, ...] = ()
    """Instead of `borders`: rounds from the blocks outwards."""


@dataclass(frozen=True)
class Sewing:
    """What holds for every seam of the pattern."""

    seam: Fraction
    motif_margin: Fraction
    """How much larger than the motif its square is cut, in both directions together."""
    ground_margin: Fraction
    """How much larger than its finished size plus seams a ground is cut, to be trimmed."""
    straightening: Fraction
    """Length added to every purchase for straightening the end that the shop cut."""
    purchase_step: Fraction
    metric_step: Fraction
    tension_ratio: Fraction
    """Thread used per length of lockstitch seam."""
    web_width: Fraction = Fraction(17)
    """Of fusible web on the roll."""
    stabiliser_width: Fraction = Fraction(20)
    """Of stabiliser on the roll."""
    squaring: Fraction = field(kw_only=True)
    """Length added for each strip: its edge is squared up every few cuts."""
    mis_cut: Fraction = field(kw_only=True)
    """Length added to every purchase for a strip that goes wrong."""
    measures: Measures = INCHES
    """What lengths are rounded to and told in."""

    @property
    def first_step(self) -> Fraction:
        """Return what a purchase is rounded up to in the units that lead."""
        return self.metric_step if self.measures.metric else self.purchase_step

    @property
    def yard_step(self) -> Fraction:
        """Return what a purchase is rounded up to in yards; where no yard is told, the step
        that is."""
        return self.purchase_step if self.measures.has_inches else self.metric_step


@dataclass(frozen=True)
class Colourway:
    """Another palette over the same design: new fabrics for some of the pattern's keys."""

    key: str
    title: str
    fabrics: Mapping[str, Fabric]


@dataclass(frozen=True)
class Pattern:
    """Everything one YAML file says."""

    key: str
    folder: Path
    title: str
    subtitle: str
    publication: Publication
    papers: tuple[str, ...]
    """Keys of `book.PAPERS`."""
    layout: str
    fabrics: Mapping[str, Fabric]
    motifs: Mapping[str, Motif]
    blocks: Mapping[str, Block]
    sizes: Mapping[str, SizeSpec]
    sewing: Sewing
    places: Mapping[str, Place] = field(repr=False)
    """Where each value stands, by its path: `sizes.mini.block_size`."""
    colourways: Mapping[str, Colourway] = field(default_factory=dict)
    style: Style = field(default_factory=Style)
    photos: tuple[Photo, ...] = ()
    cover: str = "rendered"
    """`rendered`, `drawn` or `photo`: what stands for the quilt where there is no photo."""
    scene: str = "wall"
    """`wall` or `flat`: where computed pictures show quilts; pillows stand on a bench."""
    shop: ShopPictures = field(default_factory=ShopPictures)
    booklets: str = "whole"
    """`whole`, or `by size`: a booklet for each size as well."""
    others: tuple[str, ...] = ()
    """Keys of sizes that were left out, which the designer's words may still speak of."""
    steps: tuple[StepChange, ...] = ()
    """In the order in which they are made."""
    accepts: tuple[Acceptance, ...] = ()
    """Warnings that the designer keeps, each with a reason."""
    cautions: tuple[Caution, ...] = ()
    have: tuple[Have, ...] = ()
    """Pieces of cloth that are there."""
    prices: tuple[Price, ...] = ()
    studio: Studio | None = None
    language: str = LANGUAGES[0]
    """The one that it is told in here: every text of the designer's is in it."""
    languages: tuple[str, ...] = LANGUAGES[:1]
    """All that it is told in."""
    texts: Mapping[str, str] = field(default_factory=dict, repr=False)
    """What the designer wrote by language, in each of them, by the way to it."""
    origins: tuple[Origin, ...] = field(default=(), repr=False)
    """Of each value that patterns may share."""

    @property
    def measures(self) -> Measures:
        """Return what lengths are rounded to and told in."""
        return self.sewing.measures

    @property
    def words(self) -> Language:
        """Return what says every word that a maker reads."""
        return language(self.language, self.measures)

    def changes(self) -> tuple[tuple[tuple[str, ...], int, StepChange], ...]:
        """Return every change of a step in the order in which they are made, each with the
        way to it among the places: the studio's first, then the pattern's own."""
        theirs = self.studio.steps if self.studio is not None else ()
        return (
            *((("studio", "steps"), number, change) for number, change in enumerate(theirs)),
            *((("steps",), number, change) for number, change in enumerate(self.steps)),
        )

    def place(self, *path: str | int) -> Place:
        """Return where a value stands, or the nearest thing around it that does."""
        parts = [str(p) for p in path]
        while parts:
            found = self.places.get(".".join(parts))
            if found is not None:
                return found
            parts.pop()
        return self.places[""]
