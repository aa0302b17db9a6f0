"""Stage 3 output: the finished geometry of one size, without allowances.

In: a pattern and a size. Out: `Draft`: patches as a planar map, the seam tree that sews
them, the motif unfolded, where it lies, the quilting lines.
Invariant: patch corners are exact; motif outlines are shapely geometries in inches with
the motif's centre at the origin. The y axis points down, as on a page. Figures of
lengths that come from curves are floats here and are rounded where they are printed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from shapely.geometry import MultiLineString, MultiPolygon, Polygon

Point = tuple[Fraction, Fraction]
"""Inches from the top left corner of the finished top."""


@dataclass(frozen=True)
class Patch:
    """One patch of the top: a simple polygon, corners clockwise on the page."""

    key: str
    ring: tuple[Point, ...]
    fabric: str
    role: str
    """`ground` or `border`."""
    block: str | None = None
    row: int | None = None
    column: int | None = None

    @property
    def box(self) -> tuple[Fraction, Fraction, Fraction, Fraction]:
        """Return left, top, right, bottom."""
        xs, ys = zip(*self.ring, strict=True)
        return min(xs), min(ys), max(xs), max(ys)


@dataclass(frozen=True)
class Unit:
    """What is on the table after some seams: one patch, or parts sewn side by side.

    `parts` are in sewing order along one direction: `across` joins them left to right
    (vertical seams), `down` top to bottom (horizontal seams). `name` is what the steps
    call it (`ground`, `block`, `row 2`, `centre`, `top`); units that are congruent under
    turning, fabrics included, share a `kind`.
    """

    kind: str
    name: str
    box: tuple[Fraction, Fraction, Fraction, Fraction]
    join: str | None = None
    parts: tuple[Unit, ...] = ()
    patch: Patch | None = None
    press: str = ""
    """Where the allowances of this unit's seams go: `left`, `right`, `up`, `down`,
    `open`, or `out` for borders."""

    @property
    def width(self) -> Fraction:
        return self.box[2] - self.box[0]

    @property
    def height(self) -> Fraction:
        return self.box[3] - self.box[1]


@dataclass(frozen=True)
class FoldEdge:
    """One edge of the folded wedge, from the centre outwards.

    `kind` is `single` for the edge made by the last fold and `multiple` for the edge
    where the earlier folds lie together; `angle` in degrees from the positive x axis,
    clockwise on the page; `grain` is `straight`, `bias` or `off grain`; `contact` are the stretches
    of the edge that the motif touches, as distances from the centre in inches.
    """

    kind: str
    angle: float
    grain: str
    contact: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class MotifShape:
    """A motif at one finished size. Geometries in inches, centre at the origin."""

    key: str
    span: Fraction
    folds: int
    wedge: MultiPolygon
    """What is cut on the folds: the motif inside one wedge."""
    wedge_angle: float
    """Degrees: 360 / folds."""
    edges: tuple[FoldEdge, FoldEdge] | None
    """None for a motif that turns without mirror."""
    whole: MultiPolygon
    """The finished motif, unfolded."""
    cut_line: MultiPolygon
    """`whole` with the turn-under added (equal to `whole` for raw edges)."""
    wedge_cut_line: MultiPolygon
    area: float
    perimeter: float
    """Of every edge that is stitched, holes included."""
    pieces: int
    holes: int
    tips: int
    """Outward points sharper than 90 degrees: turned with care."""
    inside_corners: int
    """Inward corners that are clipped."""
    narrowest_neck: float
    narrowest_slit: float | None
    sharpest_tip: float | None
    """Degrees."""


@dataclass(frozen=True)
class Placement:
    """Where a motif lies: its centre on the top."""

    motif: str
    x: Fraction
    y: Fraction
    row: int
    column: int


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
    width: Fraction
    height: Fraction
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

    @property
    def applique_length(self) -> float:
        """Return the length of every motif edge on the top, in inches."""
        return sum((self.motifs[p.motif].perimeter for p in self.placements), 0.0)

    @property
    def quilting_length(self) -> float:
        """Return the length of every quilting line on the top, in inches."""
        return sum((q.length for q in self.quilting), 0.0)
