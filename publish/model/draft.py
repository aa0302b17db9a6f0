"""Stage 3 output: the finished geometry of one size, without allowances.

In: a pattern and a size. Out: `Draft`: patches as a planar map, the seam tree that sews
them, the motif unfolded, where it lies, the quilting lines.
Invariant: patch corners are exact; motif outlines are shapely geometries in inches with
the motif's centre at the origin. The y axis points down, as on a page. Figures of
lengths that come from curves are floats here and are rounded where they are printed.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from shapely.geometry import MultiLineString, Polygon

from publish.arcs import Arcs as Arcs
from publish.arcs import Point as Point
from publish.model.homes import BlockHome, Where
from publish.model.motif import FoldEdge as FoldEdge
from publish.model.motif import Meeting as Meeting
from publish.model.motif import MotifShape as MotifShape
from publish.model.recipe import Place, Sewn
from publish.surd import Length, turned

ROW, SASHING_ROW = "row", "sashing row"
"""What is numbered from the top: see `Unit.series`."""


@dataclass(frozen=True)
class Patch:
    """One patch of the top: corners clockwise on the page, edges straight or arcs."""

    key: str
    ring: tuple[Point, ...]
    fabric: str
    role: str
    """`ground` for the patches of blocks, `sashing`, `cornerstone`, `setting` for the side
    and corner triangles of blocks on point, or `border`."""
    block: str | None = None
    row: int | None = None
    column: int | None = None
    arcs: Arcs = ()
    home: BlockHome | None = None
    """Which block of the top holds it; None for what belongs to no block."""
    spec: int | None = None
    """Its position in its block's `patches`."""
    turn: int = 0
    """Degrees clockwise by which its block lies turned in the top, a multiple of 45."""

    @property
    def place(self) -> BlockHome | None:
        """Return its home, or that of the row and column of the block that it is drawn in."""
        if self.home is not None or self.block is None or self.row is None or self.column is None:
            return self.home
        return BlockHome(Where.ARRANGED, self.row, self.column)

    @property
    def box(self) -> tuple[Length, Length, Length, Length]:
        """Return left, top, right, bottom of its corners; an arc may bulge beyond."""
        xs, ys = zip(*self.ring, strict=True)
        return min(xs), min(ys), max(xs), max(ys)


@dataclass(frozen=True)
class Unit:
    """What is on the table after some seams: one patch, one foundation, or parts joined.

    `parts` are in sewing order: `across` joins them left to right (vertical seams), `down`
    top to bottom (horizontal seams), `slant` along seams at any other angle, `curve` along
    an arc, `mitred` adds a border with mitred corners to the first part, `set in` joins
    parts that no full straight seams join. `name` is what the steps call it (`ground`,
    `block`, `row 2`, `centre`, `top`); units that are congruent under turning, fabrics
    included, share a `kind`, and once pieces are cut those of one recipe.

    A unit that lies askew in the top is described as it lies on the table: `box`, `join`
    and `press` are in the frame that is turned `turn` degrees clockwise with it, and
    `surd.turned(point, -turn)` takes a point of the top into that frame.
    """

    kind: str
    name: str
    box: tuple[Length, Length, Length, Length]
    join: str | None = None
    parts: tuple[Unit, ...] = ()
    patch: Patch | None = None
    press: str = ""
    """Where the allowances of this unit's seams go: `left`, `right`, `up`, `down`,
    `open`, `out` for borders and wherever the outer of several parts lie round a middle:
    away from the middle, or `sashing`: each seam towards the strip of sashing that it
    joins; of a `slant`, `curve` or `set in`, `first` or `last`: towards the first part or
    the last."""
    turn: int = 0
    """0 or 45."""
    ring: tuple[Point, ...] = ()
    """Its finished outline in the top, clockwise on the page, with `arcs`."""
    arcs: Arcs = ()
    section: str = ""
    """Key of the `FoundationSection` that it is sewn on; `held` are then its patches."""
    held: tuple[Patch, ...] = ()
    made: str = ""
    """How it is made quicker than from patches cut to size, in the words of `Piecing`:
    `triangles`, `hourglasses`, `geese`, `corners` or `strips`; empty for most units."""
    set_in: int = 0
    """How many of its own seams are set in: pivoted at an inside corner."""
    series: str = ""
    """Of what is numbered from the top, `row` or `sashing row`; empty for all else. Its name
    is then this and its number."""
    number: int = 0
    """In its series, from 1; 0 for what is not numbered."""
    layer: int = 0
    """Of what goes round the blocks, and of all that is inside it together: which of the
    size's `layers`, from 1; 0 inside all of them."""
    side: str = ""
    """Of one side of a layer: `left`, `right`, `top` or `bottom`."""
    nests: bool = True
    """Whether its seams lie opposite those that they meet; False where no pressing can."""
    place: Place | None = field(default=None, compare=False, repr=False)
    """How it is made and how it lies, and with `sewn` how large it comes out; both None until
    pieces are cut."""
    sewn: Sewn | None = field(default=None, compare=False, repr=False)

    @property
    def width(self) -> Length:
        return self.box[2] - self.box[0]

    @property
    def height(self) -> Length:
        return self.box[3] - self.box[1]

    @property
    def patches(self) -> tuple[Patch, ...]:
        """Return every patch in it, in sewing order."""
        if self.patch is not None:
            return (self.patch,)
        return self.held or tuple(p for part in self.parts for p in part.patches)

    @property
    def is_box(self) -> bool:
        """Return whether its outline is a rectangle that fills its box, as far as is known."""
        outline = self.patch if self.patch is not None else self
        if not outline.ring:
            return self.join in ("across", "down")
        left, top, right, bottom = self.box
        lying = {turned(p, -self.turn) for p in outline.ring}
        corners = {(left, top), (right, top), (right, bottom), (left, bottom)}
        along = all(x in (left, right) or y in (top, bottom) for x, y in lying)
        return not outline.arcs and along and corners <= lying

    def outermost_first(self) -> Iterator[Unit]:
        """Yield the unit and every unit in it, wholes before parts."""
        yield self
        for part in self.parts:
            yield from part.outermost_first()

    def innermost_first(self) -> Iterator[Unit]:
        """Yield every unit in it and the unit, parts before wholes: as they are sewn."""
        for part in self.parts:
            yield from part.innermost_first()
        yield self


@dataclass(frozen=True)
class FoundationSection:
    """Patches that are sewn, in order, onto one printed foundation.

    Coordinates are inches from the top left corner of its block, which lies unturned.
    """

    key: str
    """Unique in the size: `heron A`."""
    letter: str
    """A, B ... within its block; the patches are called A1, A2 ..."""
    block: str
    patches: tuple[Patch, ...]
    """In sewing order. Those of the block, not of the top."""
    ring: tuple[Point, ...]
    """Its finished outline, clockwise on the page."""
    seams: tuple[tuple[Point, Point], ...]
    """The line sewn to add each patch after the first, on its finished ends."""
    count: int
    """How many are made at this size."""


@dataclass(frozen=True)
class Placement:
    """Where a motif lies: its centre on the top, turned with its block."""

    motif: str
    x: Length
    y: Length
    row: int
    column: int
    home: BlockHome | None = None
    """As in `Patch`."""
    turn: int = 0
    """Degrees clockwise, a multiple of 45."""

    @property
    def place(self) -> BlockHome:
        """Return its home, or that of its row and column."""
        return self.home or BlockHome(Where.ARRANGED, self.row, self.column)


@dataclass(frozen=True)
class QuiltingLines:
    """The quilting of one area, as lines on the finished top."""

    area: str
    style: str
    spacing: Fraction | None
    lines: MultiLineString
    length: float
    """Inches."""


@dataclass(frozen=True)
class Draft:
    """The finished geometry of one size."""

    size: str
    width: Length
    height: Length
    patches: tuple[Patch, ...]
    assembly: Unit
    """The seam tree whose root is the whole top."""
    motifs: Mapping[str, MotifShape]
    placements: tuple[Placement, ...]
    quilting: tuple[QuiltingLines, ...]
    seam_length: Fraction
    """Total length of the seams inside the top, finished."""
    edge_outline: Polygon
    """The finished top's own outline."""
    foundations: tuple[FoundationSection, ...] = ()

    @property
    def applique_length(self) -> float:
        """Return the length of every motif edge on the top, in inches."""
        return sum((self.motifs[p.motif].perimeter for p in self.placements), 0.0)

    @property
    def quilting_length(self) -> float:
        """Return the length of every quilting line on the top, in inches."""
        return sum((q.length for q in self.quilting), 0.0)
