"""A printed foundation as paper: its shapes as the printed side shows them.

In: a foundation section. Out: `Paper`: outlines, seams and rough-cut fabrics in inches.
Invariant: everything is mirrored left for right, once; fabric is rough-cut past its patch
on every side, and lies along the seam that adds it.
"""

from __future__ import annotations

import math

from shapely.affinity import rotate
from shapely.affinity import scale as scaled
from shapely.geometry import LineString, Polygon
from shapely.ops import split

from publish.draw.canvas.shapes import XY, polygon_of
from publish.draw.context import CannotDrawError, Context
from publish.model.draft import FoundationSection

BEYOND = 0.5
"""Inches by which a rough-cut fabric reaches past its patch."""


def mirrored(shape: Polygon) -> Polygon:
    """Return a shape of the block as the printed side shows it."""
    return scaled(shape, -1, 1, origin=(0, 0))


def across(shape: Polygon, seam: tuple[XY, XY]) -> Polygon:
    """Return a shape turned over along a line."""
    (ax, ay), (bx, by) = seam
    dx, dy = bx - ax, by - ay
    square = dx * dx + dy * dy

    def over(x: float, y: float) -> XY:
        t = ((x - ax) * dx + (y - ay) * dy) / square
        return 2 * (ax + t * dx) - x, 2 * (ay + t * dy) - y

    return Polygon([over(x, y) for x, y in shape.exterior.coords])


class Paper:
    """A section's printed side, and what is under it, in inches."""

    def __init__(self, context: Context, section: FoundationSection) -> None:
        self.context, self.section = context, section
        self.allowance = context.pattern.sewing.seam
        ring = Polygon([(float(x), float(y)) for x, y in section.ring])
        self.whole = mirrored(ring)
        self.cut = self.whole.buffer(float(self.allowance), join_style="mitre")
        self.shapes = [mirrored(polygon_of(p)) for p in section.patches]
        self.seams = [tuple((-float(x), float(y)) for x, y in seam) for seam in section.seams]
        self.colours = [context.colour(p.fabric) for p in section.patches]

    def name(self, number: int) -> str:
        return f"{self.section.letter}{number + 1}"

    def seam(self) -> tuple[XY, XY]:
        if not self.seams:
            raise CannotDrawError(f"the foundation {self.section.key!r} has no seam")
        start, end = self.seams[0]
        return start, end

    def rough(self, number: int) -> Polygon:
        """Return a fabric as it is rough-cut: a rectangle past its patch on every side."""
        shape = self.shapes[number]
        turn = 0.0 if number == 0 else self.angle()
        level = rotate(shape, -turn, origin=(0, 0)).envelope.buffer(BEYOND, join_style="mitre")
        rough: Polygon = rotate(level, turn, origin=(0, 0))
        return rough

    def angle(self) -> float:
        """Return the direction of the first seam, in degrees."""
        (ax, ay), (bx, by) = self.seam()
        return math.degrees(math.atan2(by - ay, bx - ax))

    def laid(self) -> Polygon:
        """Return the second fabric as it lies on the first, right sides together."""
        return across(self.rough(1), self.seam())

    def folded(self, seam: tuple[XY, XY]) -> tuple[Polygon, Polygon]:
        """Return the parts of the paper on patch 1's side of the seam, and beyond it."""
        (ax, ay), (bx, by) = seam
        run = math.hypot(bx - ax, by - ay)
        ux, uy = (bx - ax) / run * 100, (by - ay) / run * 100
        line = LineString([(ax - ux, ay - uy), (bx + ux, by + uy)])
        parts = [g for g in split(self.cut, line).geoms if isinstance(g, Polygon)]
        middle = self.shapes[0].representative_point()
        kept = min(parts, key=lambda g: float(g.distance(middle)))
        others = [g for g in parts if g is not kept]
        return kept, max(others, key=lambda g: float(g.area), default=kept)

    def outward(self, seam: tuple[XY, XY]) -> XY:
        """Return the unit vector across a seam from patch 1 to patch 2."""
        (ax, ay), (bx, by) = seam
        run = math.hypot(bx - ax, by - ay)
        nx, ny = (ay - by) / run, (bx - ax) / run
        here = self.shapes[1].centroid
        sign = 1.0 if (here.x - ax) * nx + (here.y - ay) * ny > 0 else -1.0
        return nx * sign, ny * sign

    def parallel(self, seam: tuple[XY, XY]) -> tuple[XY, XY]:
        """Return the line to trim on: the seam moved out by the allowance."""
        (nx, ny), s = self.outward(seam), float(self.allowance)
        (ax, ay), (bx, by) = seam
        run = math.hypot(bx - ax, by - ay)
        ux, uy = (bx - ax) / run * 0.5, (by - ay) / run * 0.5
        return ((ax - ux + nx * s, ay - uy + ny * s), (bx + ux + nx * s, by + uy + ny * s))

    def waste(self, seam: tuple[XY, XY]) -> Polygon:
        """Return what both fabrics together have beyond the line to trim on."""
        (nx, ny) = self.outward(seam)
        (ax, ay), (bx, by) = self.parallel(seam)
        ux, uy = bx - ax, by - ay
        far = Polygon(
            [
                (ax - ux, ay - uy),
                (bx + ux, by + uy),
                (bx + ux + nx * 9, by + uy + ny * 9),
                (ax - ux + nx * 9, ay - uy + ny * 9),
            ]
        )
        cloth = self.rough(0).union(self.laid())
        gone: Polygon = cloth.intersection(far)
        return gone

    def cloth(self, number: int) -> str:
        return self.context.pattern.fabrics[self.section.patches[number].fabric].name
