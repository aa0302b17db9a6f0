"""Whether a block's patches fill its grid, and where they do not.

In: a block's patches, each sound in itself. Out: notes that name gaps and overlaps.
Invariant: the verdict is `cover`'s and exact. Only where it says no are gaps and overlaps
looked for, among outlines drawn out in straight steps (`curves.STEP`); what is then less
than `LEAST` is no more than points that all but meet, and is told as such.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shapely import STRtree, union_all
from shapely.geometry import MultiPolygon, Polygon, box
from shapely.geometry.base import BaseGeometry

from publish.model.block import GridPoint, PatchSpec
from publish.notes import Place, Sketch
from publish.read.cover import misfits
from publish.read.curves import edges
from publish.read.ledger import Ledger
from publish.read.patches import at_text, number_text
from publish.units import fraction_text

LEAST = 1e-3
"""Grid squares."""
MOST = 20
"""Gaps, and overlaps, told of one block."""


@dataclass(frozen=True)
class Fit:
    """A block's patches on its grid; `key` is the block's."""

    key: str
    patches: tuple[PatchSpec, ...]
    columns: int
    rows: int
    ledger: Ledger

    def check(self, inside: bool) -> bool:
        """Return whether the patches fill the grid once; note where they do not.

        `inside` says that no patch reaches outside the grid, which has its own note.
        """
        around = [edges(p.ring, p.arcs) for p in self.patches]
        points = misfits(around, self.columns, self.rows)
        if not points:
            return True
        outlines = [Polygon([p for edge in patch for p in edge.drawn_out()]) for patch in around]
        told = [*self._gaps(outlines), *self._overlaps(outlines)]
        if not told and inside:
            self._nearly(points[0])
        return False

    def _gaps(self, outlines: list[Polygon]) -> Iterator[BaseGeometry]:
        left = box(0, 0, self.columns, self.rows).difference(union_all(outlines))
        for gap in _parts(left)[:MOST]:
            self.ledger.note(
                "R154",
                self.ledger.place("blocks", self.key, "patches"),
                f"the patches leave a gap at {_middle(gap)}",
                expected="patches that fill the grid from edge to edge",
                received=f"{_area(gap)} uncovered, {_extent(gap)}",
                help="add a patch there, or correct a corner beside it",
                sketch=self._sketch(outlines, gap),
            )
            yield gap

    def _overlaps(self, outlines: list[Polygon]) -> Iterator[BaseGeometry]:
        tree = STRtree(outlines)
        count = 0
        for later, outline in enumerate(outlines):
            for earlier in sorted(int(n) for n in tree.query(outline)):
                if earlier >= later or count >= MOST:
                    continue
                for part in _parts(outlines[earlier].intersection(outline)):
                    self._overlap(earlier, later, part, self._sketch(outlines, part))
                    count += 1
                    yield part

    def _overlap(self, earlier: int, later: int, part: Polygon, sketch: Sketch) -> None:
        self.ledger.note(
            "R155",
            self._place(later),
            f"{self._called(later)} overlaps {self._called(earlier)} at {_middle(part)}",
            expected="patches that meet edge to edge",
            received=f"{_area(part)} covered twice, {_extent(part)}",
            help="correct a corner of one of the two, or remove it",
            sketch=sketch,
        )

    def _sketch(self, outlines: list[Polygon], area: Polygon) -> Sketch:
        rings = tuple(tuple(o.exterior.coords) for o in outlines)
        return Sketch(self.key, self.columns, self.rows, rings, tuple(area.exterior.coords))

    def _nearly(self, point: GridPoint) -> None:
        """Note corners that all but meet."""
        there = [n for n, p in enumerate(self.patches) if point in p.ring]
        self.ledger.note(
            "R156",
            self._place(there[-1]) if there else self.ledger.place("blocks", self.key, "patches"),
            f"patches all but meet at {at_text(*point)}",
            expected="the same corners on both sides of every seam, to the last digit",
            received=f"an edge that ends at {fraction_text(point[0])}, {fraction_text(point[1])}",
            help="write thirds and the like as fractions, 1/3 and not 0.333; let curved edges "
            "that meet run through points of the same circle",
        )

    def _place(self, number: int) -> Place:
        item = self.patches[number].item
        return self.ledger.place("blocks", self.key, "patches", -1 if item is None else item)

    def _called(self, number: int) -> str:
        """Return what a headline calls a patch: its position in the file."""
        item = self.patches[number].item
        return f"item {(item or 0) + 1} of `patches`"


def _parts(shape: BaseGeometry) -> list[Polygon]:
    """Return the areas of a shape that count, from the top and from the left."""
    parts = shape.geoms if isinstance(shape, MultiPolygon) or hasattr(shape, "geoms") else [shape]
    found = [p for p in parts if isinstance(p, Polygon) and p.area > LEAST]
    return sorted(found, key=lambda p: (round(p.bounds[1], 6), round(p.bounds[0], 6)))


def _middle(part: Polygon) -> str:
    point = part.representative_point()
    return at_text(point.x, point.y)


def _extent(part: Polygon) -> str:
    left, top, right, bottom = part.bounds
    return f"from {at_text(left, top)} to {at_text(right, bottom)}"


def _area(part: Polygon) -> str:
    """Return an area in words."""
    return f"{number_text(part.area)} grid square{'' if part.area <= 1 else 's'}"
