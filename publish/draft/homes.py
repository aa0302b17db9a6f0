"""Where each block of a top lies, and its patches there.

In: a pattern and a size. Out: `Home`s, and the patches of one.
Invariant: positions are exact; a block is turned about its own middle, so that two homes
of one block with the same turn differ by a shift alone.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from publish.arcs import Ring
from publish.model.block import Block
from publish.model.draft import Arcs, Patch, Point
from publish.model.homes import BlockHome, Where
from publish.model.pattern import Pattern
from publish.model.size import Round, Size
from publish.surd import ROOT_2, Length, turned

Box = tuple[Length, Length, Length, Length]
"""Left, top, right, bottom."""


@dataclass(frozen=True)
class Home:
    """A place for a block: its side, its middle in the top, and its turn, the further 45
    degrees of a block on point included."""

    name: BlockHome
    block: str
    side: Fraction
    x: Length
    y: Length
    turn: int
    row: int
    column: int

    @property
    def arranged(self) -> bool:
        return self.name.where is Where.ARRANGED


def homes(size: Size) -> tuple[Home, ...]:
    """Return every place for a block: of the arrangement, row by row, between, and in
    rounds from the inside out."""
    return (*_arranged(size), *_between(size), *_in_rounds(size))


def inner_box(size: Size) -> Box:
    """Return the box of the blocks with their sashing and setting triangles."""
    return _middle(size, size.inner_width, size.inner_height)


def layer_boxes(size: Size) -> tuple[tuple[Round, Box, Box], ...]:
    """Return each layer round the blocks with the boxes inside and round it."""
    return tuple(
        (
            layer,
            _middle(size, layer.inner_width, layer.inner_height),
            _middle(size, layer.width, layer.height),
        )
        for layer in size.layers
    )


def rectangle(box: Box) -> Ring:
    """Return a box's corners, clockwise on the page from the top left."""
    left, top, right, bottom = box
    return (left, top), (right, top), (right, bottom), (left, bottom)


def block_shapes(block: Block, side: Fraction, turn: int) -> tuple[tuple[Ring, Arcs], ...]:
    """Return the outline of each patch of a block that lies turned, from its middle."""
    across, down = side / block.columns, side / block.rows

    def place(point: Point) -> Point:
        return turned((point[0] * across - side / 2, point[1] * down - side / 2), turn)

    return tuple(
        (tuple(place(p) for p in spec.ring), tuple((i, place(p)) for i, p in spec.arcs))
        for spec in block.patches
    )


def moved(ring: Ring, x: Length, y: Length) -> Ring:
    """Return points shifted."""
    return tuple((a + x, b + y) for a, b in ring)


def home_patches(pattern: Pattern, places: Iterable[Home]) -> list[Patch]:
    """Return the patches of blocks where they lie, block by block."""
    shapes: dict[tuple[str, Fraction, int], tuple[tuple[Ring, Arcs], ...]] = {}
    found = []
    for home in places:
        block = pattern.blocks[home.block]
        look = (home.block, home.side, home.turn)
        if look not in shapes:
            shapes[look] = block_shapes(block, home.side, home.turn)
        row, column = (home.row, home.column) if home.arranged else (None, None)
        start = f"{home.name}" if home.arranged else f"{home.name} "
        for number, (ring, arcs) in enumerate(shapes[look]):
            found.append(
                Patch(
                    f"{start}p{number + 1}",
                    moved(ring, home.x, home.y),
                    block.patches[number].fabric,
                    "ground",
                    block.key,
                    row,
                    column,
                    tuple((i, (x + home.x, y + home.y)) for i, (x, y) in arcs),
                    home.name,
                    number,
                    home.turn,
                )
            )
    return found


def _middle(size: Size, width: Length, height: Length) -> Box:
    left, top = (size.width - width) / 2, (size.height - height) / 2
    return left, top, left + width, top + height


def _arranged(size: Size) -> Iterable[Home]:
    left, top, _, _ = inner_box(size)
    pitch: Length = size.pitch
    if size.on_point:
        pitch = pitch * ROOT_2
        begin = pitch / 2
    else:
        outer = size.sashing.width if size.sashing and size.sashing.outer else 0
        begin = size.block_side / 2 + outer
    extra = 45 if size.on_point else 0
    for row, line in enumerate(size.arrangement):
        for column, key in enumerate(line):
            yield Home(
                BlockHome(Where.ARRANGED, row, column),
                key,
                size.block_side,
                left + begin + column * pitch,
                top + begin + row * pitch,
                size.turn(row, column) + extra,
                row,
                column,
            )


def _between(size: Size) -> Iterable[Home]:
    left, top, _, _ = inner_box(size)
    pitch = size.pitch * ROOT_2
    for row, line in enumerate(size.alternates):
        for column, key in enumerate(line):
            yield Home(
                BlockHome(Where.BETWEEN, row, column),
                key,
                size.block_side,
                left + (column + 1) * pitch,
                top + (row + 1) * pitch,
                size.alternate_turn(row, column) + 45,
                row,
                column,
            )


def _in_rounds(size: Size) -> Iterable[Home]:
    for number, (layer, _, (left, top, _, _)) in enumerate(layer_boxes(size), start=1):
        side = layer.block_side
        if side is None:
            continue
        for place, block in enumerate(layer.blocks, start=1):
            yield Home(
                BlockHome(Where.ROUND, block.row, block.column, number, place),
                block.block,
                side,
                left + block.column * side + side / 2,
                top + block.row * side + side / 2,
                block.turn,
                block.row,
                block.column,
            )
