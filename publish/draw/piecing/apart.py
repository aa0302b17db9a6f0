"""Parts moved away from each other, square to the seams that will join them.

In: units with seams at any angle. Out: `Apart`, and from it `Spread`: shapes and how far
each part has moved.
Invariant: a part keeps the way it lies; it moves along the normal of its longest seam with
a part that is there before it, and carries on from where that part has gone.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from shapely.affinity import translate
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import plus
from publish.draw.canvas.shapes import XY, bounds_of, laid, outline_of, polygon_of
from publish.draw.canvas.style import INK, Stroke, edge_of, mix, readable_on
from publish.draw.context import Context
from publish.draw.piecing.pressing import Seam, seams_between
from publish.draw.piecing.table import letter_inside, margins, piece_for, raw_patches
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Patch, Unit


@dataclass(frozen=True)
class Spread:
    """Parts moved apart, in one frame and in inches of cloth."""

    parts: tuple[tuple[tuple[Patch, Polygon], ...], ...]
    moves: tuple[XY, ...]
    signs: tuple[XY, ...]
    """Where the plus signs stand."""

    def shapes(self) -> list[BaseGeometry]:
        """Return every patch where it has moved."""
        return [shape for number in range(len(self.parts)) for shape in self.part(number)]

    def part(self, number: int) -> list[BaseGeometry]:
        """Return the patches of one part where it has moved."""
        dx, dy = self.moves[number]
        return [translate(shape, dx, dy) for _, shape in self.parts[number]]


@dataclass(frozen=True)
class Apart:
    """Parts and the ways they go, from which a `Spread` of any width is made."""

    parts: tuple[tuple[tuple[Patch, Polygon], ...], ...]
    ways: tuple[XY, ...]
    """Of each part, the sum of the unit vectors that it and those before it move by."""
    seams: tuple[tuple[XY, XY], ...]
    """The middle of each seam, and the way that its plus sign moves by."""
    seam: float
    """Inches of each raw edge beyond its seam."""

    def fitted(self, gap: float, room: tuple[float, float], largest: float) -> tuple[float, Spread]:
        """Return the largest scale at which the parts, printed `gap` inches apart, fit a
        room, and the parts spread for it."""
        low, high = 0.0, largest
        for _ in range(24):
            middle = (low + high) / 2
            left, top, right, bottom = bounds_of(self.at(gap / middle).shapes())
            fits = (right - left) * middle <= room[0] and (bottom - top) * middle <= room[1]
            low, high = (middle, high) if fits else (low, middle)
        scale = max(low, 1e-3)
        return scale, self.at(gap / scale)

    def at(self, gap: float) -> Spread:
        """Return the parts moved until their raw edges are `gap` inches of cloth away."""
        apart = gap + 2 * self.seam
        moves = tuple((x * apart, y * apart) for x, y in self.ways)
        signs = tuple((x + u * apart, y + v * apart) for (x, y), (u, v) in self.seams)
        return Spread(self.parts, moves, signs)


def of_unit(context: Context, draft: Draft, unit: Unit) -> Apart:
    """Return a unit's own parts in the frame of the unit, as they are cut."""
    seam = float(context.pattern.sewing.seam)
    shapes = []
    for part in unit.parts:
        raw = raw_patches(part, margins(context, draft, part, trimmed=False))
        shapes.append(tuple((p, laid(shape, unit.turn - part.turn)) for p, shape in raw))
    return _apart(unit.parts, tuple(shapes), unit.turn, unit.join == "set in", seam)


def finished(parts: Sequence[Unit]) -> Apart:
    """Return parts as they lie in the top, without any allowances."""
    shapes = tuple(tuple((p, polygon_of(p)) for p in part.patches) for part in parts)
    return _apart(parts, shapes, 0, False, 0.0)


def _apart(
    parts: Sequence[Unit],
    shapes: tuple[tuple[tuple[Patch, Polygon], ...], ...],
    turn: int,
    set_in: bool,
    seam: float,
) -> Apart:
    """Return which way each part goes: set-in parts, along the mean of all their seams."""
    seams = seams_between([laid(outline_of(part), turn) for part in parts])
    ways: dict[int, XY] = {0: (0.0, 0.0)}
    signs = []
    for at in _chain(seams):
        nx, ny = mean_normal(seams, at) if set_in else at.normal
        x, y = ways[at.first]
        ways[at.last] = (x + nx, y + ny)
        signs.append((at.middle, (x + nx / 2, y + ny / 2)))
    found = tuple(ways.get(i, (0.0, 0.0)) for i in range(len(shapes)))
    return Apart(shapes, found, tuple(signs), seam)


def _chain(seams: Sequence[Seam]) -> list[Seam]:
    """Return the seams that part after part is reached by, from part 0 outwards.

    A part is reached from those before it by its longest seam, and one that has none with
    them is reached from a later part, the other way round.
    """
    placed: set[int] = {0}
    found: list[Seam] = []
    left = sorted(seams, key=lambda s: (s.last, -s.line.length))
    while True:
        ready = [s for s in left if (s.first in placed) != (s.last in placed)]
        if not ready:
            return found
        seam = ready[0]
        if seam.first not in placed:
            seam = Seam(seam.last, seam.first, seam.line, (-seam.normal[0], -seam.normal[1]))
        placed.add(seam.last)
        found.append(seam)


def mean_normal(seams: Sequence[Seam], of: Seam) -> XY:
    """Return the mean of the normals of all the seams that join the part of one."""
    mine = [s for s in seams if s.last == of.last]
    x = sum(s.normal[0] * s.line.length for s in mine)
    y = sum(s.normal[1] * s.line.length for s in mine)
    run = float((x * x + y * y) ** 0.5)
    return (x / run, y / run) if run > 1e-6 else of.normal


def paint_spread(frame: Canvas, context: Context, plan: CutPlan | None, apart: Spread) -> None:
    """Draw the parts where they have moved, with their letters where a plan gives them."""
    for number, part in enumerate(apart.parts):
        for (patch, _), moved in zip(part, apart.part(number), strict=True):
            colour = context.colour(patch.fabric)
            frame.shape(moved, colour, Stroke(mix(edge_of(colour), INK, 0.2), 0.4))
            piece = piece_for(plan, patch) if plan is not None else None
            if piece is not None:
                letter_inside(frame, moved, piece.letter, readable_on(colour))


def paint_signs(frame: Canvas, apart: Spread) -> None:
    """Draw a plus sign on every seam that is to be sewn."""
    for sign in apart.signs:
        plus(frame, sign, 6.0)
