"""Blocks, sashing and setting triangles sewn into rows, and rows into the centre of a top.

In: the homes of a size, its patches. Out: `Part`s.
Invariant: a row is joined across its own frame, and rows one below the other; on point
that frame lies askew, and the centre, which does not, is joined on the slant.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from publish.arcs import Ring
from publish.draft.blockparts import BlockParts
from publish.draft.blocktree import BlockOrder, Sections, block_order
from publish.draft.homes import Home, inner_box, rectangle
from publish.draft.kinds import Kinds
from publish.draft.lattice import Band, Cell, bands
from publish.draft.order import Known
from publish.draft.parts import (
    TOWARDS_FIRST,
    TOWARDS_LAST,
    Part,
    Stitched,
    box_of,
    direction,
    shifted,
)
from publish.draft.pictures import Pictures, Placed, look_of, middle
from publish.model.draft import ROW, SASHING_ROW, Patch, Point
from publish.model.homes import BlockHome
from publish.model.pattern import Pattern
from publish.model.size import Size

NAMES = {
    "sashing": "sashing",
    "cornerstone": "cornerstone",
    "side": "setting triangle",
    "corner": "corner",
}
"""By the first word of a patch's key."""


class Rows:
    """Sews what lies inside the borders, and any block where it lies."""

    def __init__(
        self,
        pattern: Pattern,
        size: Size,
        places: tuple[Home, ...],
        patches: tuple[Patch, ...],
        sections: Sections,
    ) -> None:
        self.pattern, self.size, self.places, self.sections = pattern, size, places, sections
        self.kinds, self.pictures = Kinds(), Pictures(pattern)
        self.turn = 45 if size.on_point else 0
        self.at_home: dict[BlockHome, dict[int, Patch]] = {}
        for patch in patches:
            if patch.spec is not None and patch.home is not None:
                self.at_home.setdefault(patch.home, {})[patch.spec] = patch
        self.like: Known = {}
        self.orders: dict[tuple[str, Fraction], BlockOrder] = {}
        self.blocks: dict[tuple[str, Fraction, int], Part] = {}

    def block(self, home: Home) -> Part:
        """Return a block where it lies."""
        plan, look = (home.block, home.side), (home.block, home.side, home.turn)
        if plan not in self.orders:
            block = self.pattern.blocks[home.block]
            sections = self.sections.get(plan, ())
            self.orders[plan] = block_order(block, home.side, sections, self.like)
        if look not in self.blocks:
            self.blocks[look] = BlockParts(self.orders[plan], home.turn, self.kinds).part()
        return shifted(self.blocks[look], home.x, home.y, self.at_home[home.name])

    def centre(self, name: str) -> Part:
        """Return everything inside the borders, called `name` where it is no single block."""
        inside = [h for h in self.places if not h.name.in_round]
        rows = bands(self.size, inside)
        if len(rows) == 1:
            return self._row(rows[0], name)
        numbers = {ROW: 0, SASHING_ROW: 0}
        parts = []
        for band in rows:
            series = SASHING_ROW if band.sashing else ROW
            numbers[series] += not band.corner
            parts.append(self._numbered(band, series, numbers[series]))
        ring = rectangle(inner_box(self.size))
        seams = [_below(band, self.turn) for band in rows[1:]]
        return Part(
            name,
            name,
            box_of(ring, 0),
            ring,
            join="slant" if self.turn else "down",
            parts=tuple(parts),
            seams=tuple(seams),
            settled=_to_sashing([b.sashing for b in rows]),
            press="sashing" if any(b.sashing for b in rows) else "",
        )

    def strip(
        self, cells: list[tuple[Part, Placed]], family: str, side: str, join: str, ring: Ring
    ) -> Part:
        """Return blocks sewn into the side of a round, `family`."""
        look = look_of(placed for _, placed in cells)
        if len(cells) == 1:
            return cells[0][0]
        parts = [part for part, _ in cells]
        heading = (0, -1) if join == "across" else (1, 0)
        seams = []
        for part in parts[1:]:
            left, top, right, bottom = part.box
            start, end = (
                ((left, bottom), (left, top)) if join == "across" else ((left, top), (right, top))
            )
            seams.append(Stitched(start, heading, end, heading))
        title = f"{family} {side}"
        kind = self.kinds.name(family, look, first=title)
        return Part(
            kind, title, box_of(ring, 0), ring, join=join, parts=tuple(parts), seams=tuple(seams)
        )

    def _numbered(self, band: Band, series: str, number: int) -> Part:
        """Return a row with its number; a block or a corner that is all of one has none."""
        row = self._row(band, f"{series} {number}", series)
        named = len(band.cells) > 1 or band.sashing
        return replace(row, series=series, number=number) if named else row

    def _row(self, band: Band, title: str, family: str = "") -> Part:
        if len(band.cells) == 1:
            return self._cell(band.cells[0], title if band.sashing else "")
        look = look_of(self._placed(cell) for cell in band.cells)
        strips = [c.patch is not None and c.patch.role == "sashing" for c in band.cells]
        ring = _outline(band)
        return Part(
            self.kinds.name(family or title, look),
            title,
            box_of(ring, self.turn),
            ring,
            turn=self.turn,
            join="across",
            parts=tuple(self._cell(cell) for cell in band.cells),
            seams=tuple(_beside(cell, self.turn) for cell in band.cells[1:]),
            settled=_to_sashing(strips),
            press="sashing" if any(strips) else "",
        )

    def _cell(self, cell: Cell, title: str = "") -> Part:
        if cell.home is not None:
            return self.block(cell.home)
        assert cell.patch is not None
        name = NAMES[cell.patch.key.split(" ")[0]]
        look = look_of([self._placed(cell)])
        turn = self.turn if cell.patch.role != "setting" or name != "corner" else 0
        return self.leaf(cell.patch, title or name, self.kinds.name(name, look), turn)

    def leaf(self, patch: Patch, name: str, kind: str, turn: int = 0) -> Part:
        """Return a patch that belongs to no block as a part."""
        return Part(kind, name, box_of(patch.ring, turn), patch.ring, turn=turn, patch=patch)

    def _placed(self, cell: Cell) -> Placed:
        x, y = middle(cell.flat)
        if cell.home is not None:
            return x, y, self.pictures.of_home(cell.home)
        assert cell.patch is not None
        return x, y, self.pictures.of_patch(cell.patch.fabric, cell.flat)


def _to_sashing(strips: list[bool]) -> tuple[int, ...]:
    """Return how seams are pressed towards strips of sashing."""
    if not any(strips):
        return ()
    return tuple(TOWARDS_LAST if strip else TOWARDS_FIRST for strip in strips[1:])


def _beside(cell: Cell, turn: int) -> Stitched:
    """Return the seam that joins a cell to the one before it in its row."""
    left = min(x for x, _ in cell.flat)
    ends = sorted((y, number) for number, (x, y) in enumerate(cell.flat) if x == left)
    way = direction((0, -1), turn)
    return Stitched(cell.ring[ends[-1][1]], way, cell.ring[ends[0][1]], way)


def _below(band: Band, turn: int) -> Stitched:
    """Return the seam that joins a row to the one before it."""
    start, end = _ends(band)
    way = direction((1, 0), turn)
    return Stitched(start, way, end, way)


def _ends(band: Band) -> tuple[Point, Point]:
    """Return the left and right end of a row's upper edge, in the top."""
    corners = _corners(band)
    level = min(y for _, y in corners)
    edge = sorted(p for p in corners if p[1] == level)
    return corners[edge[0]], corners[edge[-1]]


def _corners(band: Band) -> dict[tuple[Fraction, Fraction], Point]:
    """Return the corners of a row's cells in the frame, and where they lie in the top."""
    return {p: q for c in band.cells for p, q in zip(c.flat, c.ring, strict=True)}


def _outline(band: Band) -> Ring:
    """Return the outline of a row, clockwise on the page. A row is a strip cut off by the
    straight edges of the top, so it has no inside corners."""
    corners = _corners(band)
    points = sorted(corners)
    return tuple(corners[p] for p in (*_chain(points), *_chain(points[::-1])))


def _chain(points: list[tuple[Fraction, Fraction]]) -> list[tuple[Fraction, Fraction]]:
    """Return one side of the outline round points, from the first to just before the last."""
    found: list[tuple[Fraction, Fraction]] = []
    for point in points:
        while len(found) > 1 and _turns_left(found[-2], found[-1], point):
            found.pop()
        found.append(point)
    return found[:-1]


def _turns_left(
    one: tuple[Fraction, Fraction], two: tuple[Fraction, Fraction], three: tuple[Fraction, Fraction]
) -> bool:
    """Return whether a way past three points bends to the left on the page, or not at all."""
    (x, y), (a, b), (u, v) = one, two, three
    return (a - x) * (v - y) - (u - x) * (b - y) <= 0
