"""A motif: as a pattern says it, and drafted at one finished size.

In: nothing. Out: frozen types.
Invariant: a motif's geometries are in inches with its centre at the origin, the y axis
pointing down.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from shapely.geometry import MultiPolygon

from publish.model.trade import SLIP, SQUARE


@dataclass(frozen=True)
class Lay:
    """How an ornament lies in its wedge: along a line from the centre, its top outwards.

    `distance` is from the centre to its near end and `size` its length along the line, both
    in hundredths of the motif's half span; where one is None the other leaves the rest, where
    both are, it lies so that both folds cut it. The motif is made to its finished size, so
    only one against the other counts.
    """

    along: str = "halving line"
    """`halving line`, `first fold` or `second fold`."""
    distance: Fraction | None = None
    size: Fraction | None = None
    turn: int = 0
    """Degrees clockwise by which it is turned about its own middle before it is laid."""


@dataclass(frozen=True)
class Motif:
    """A paper-cut motif: a drawing, the folds it repeats on, and how it is applied.

    Exactly one of `drawing` and `outline` is given. `covers` is `wedge` when the
    drawing shows one wedge and `whole` when it shows the motif unfolded.
    """

    key: str
    fabric: str
    folds: int
    symmetry: str
    """`mirror` or `turning`."""
    method: str
    """`needle-turn`, `prepared edge` or `fusible`."""
    turn_under: Fraction
    covers: str = "wedge"
    drawing: Path | None = None
    element: str | None = None
    outline: tuple[OutlinePoint, ...] = ()
    smallest_neck: Fraction | None = None
    smallest_slit: Fraction | None = None
    sharpest_tip: int | None = None
    """Degrees."""
    pieces: int = 1
    stabiliser: bool = False
    """Whether stabiliser goes under the ground when the motif is stitched."""
    lay: Lay | None = None
    """Of a drawing that is an ornament and no wedge."""


@dataclass(frozen=True)
class OutlinePoint:
    """One point of an outline written in YAML, in hundredths of the motif's half span."""

    x: Fraction
    y: Fraction
    corner: bool = False


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
class Meeting:
    """Where an outline meets a fold that it was cut on.

    `edge` is the fold's `kind`, `reach` inches from the centre, `angle` degrees between the
    outline and the fold on the cloth's side: at 90 the opened edge runs on round, below it
    the cloth makes a point of twice the angle, above it the ground a corner.
    """

    edge: str
    reach: float
    angle: float

    @property
    def off(self) -> float:
        """Return by how many degrees the outline is off square."""
        return abs(90 - self.angle)

    @property
    def runs_on(self) -> bool:
        """Return whether the opened edge runs on round, as far as an eye can tell."""
        return self.off <= SQUARE

    @property
    def slips(self) -> bool:
        """Return whether the outline was most likely meant to be square."""
        return SQUARE < self.off <= SLIP


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
    meetings: tuple[Meeting, ...] = ()
    """Where its outline meets the folds, by fold and from the centre outwards; none for a
    motif that turns without mirror."""
