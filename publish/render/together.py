"""All sizes of a pattern side by side, to one scale.

In: sizes' widths and heights in inches, subjects, colours, a scene. Out: how they lie in
rows, and each row's picture.
Invariant: one scale for all rows; sizes lie on one line at the foot of their row, each with
room below it for its name.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from publish.model.figure import Spot
from publish.render.arrays import Bytes, hashed, to_bytes
from publish.render.faces import GRAIN, coloured_face, face_at
from publish.render.prints import Print
from publish.render.scenes import Lying, Place, Scene, composed
from publish.render.subject import Subject

PER_ROW = 4
GAP = 0.045
EDGE = 0.055
"""Between sizes and round a row, as shares of its width."""
LEAST = 0.17
"""Share of a row's width that a size has for its name, however small it is."""
THICK = 0.42
FULL = 1.6
"""Inches by which a quilt's and a pillow's edge stand off the ground: common practice."""


@dataclass(frozen=True)
class Row:
    """Sizes beside each other, in inches: the same width for every row."""

    width: float
    height: float
    spots: tuple[Spot, ...]

    def high(self, wide: int) -> int:
        """Return the height in pixels of a picture that is `wide` pixels across."""
        return round(wide * self.height / self.width)


def arranged(sizes: Mapping[str, tuple[float, float]]) -> tuple[Row, ...]:
    """Return rows of up to `PER_ROW` sizes, given by their widths and heights in inches."""
    keys = list(sizes)
    shelves = [keys[i : i + PER_ROW] for i in range(0, len(keys), PER_ROW)]
    width = max(_wide([sizes[key][0] for key in shelf]) for shelf in shelves)
    return tuple(_row(shelf, sizes, width) for shelf in shelves)


def _wide(widths: Sequence[float]) -> float:
    """Return the least width of a row that has room for its sizes, gaps and edges."""
    rest = 1 - 2 * EDGE - GAP * (len(widths) - 1)
    # Whichever of them, the narrowest first, take no more than the least share.
    large = sorted(widths, reverse=True)
    kept = ((large[: len(large) - small], rest - LEAST * small) for small in range(len(large)))
    return max(sum(wide) / share for wide, share in kept)


def _row(keys: Sequence[str], sizes: Mapping[str, tuple[float, float]], width: float) -> Row:
    columns = [max(sizes[key][0], LEAST * width) for key in keys]
    tallest = max(sizes[key][1] for key in keys)
    height = tallest + 2 * EDGE * width
    left = (width - sum(columns) - GAP * width * (len(keys) - 1)) / 2
    spots = []
    for key, column in zip(keys, columns, strict=True):
        wide, high = sizes[key]
        x = left + (column - wide) / 2
        y = height - EDGE * width - high
        spots.append(Spot(key, x / width, y / height, wide / width, high / height, column / width))
        left += column + GAP * width
    return Row(width, height, tuple(spots))


def side_by_side(
    row: Row,
    subjects: Sequence[Subject],
    colours: Mapping[str, str],
    scene: Scene,
    wide: int,
    prints: Mapping[str, Print] | None = None,
) -> Bytes:
    """Return a row's picture, `wide` pixels across, as sRGB bytes."""
    fine = wide / row.width
    shape = (row.high(wide), wide)
    lying = []
    for spot, subject in zip(row.spots, subjects, strict=True):
        face = face_at(subject, fine)
        light = coloured_face(face, colours, scene.ground, prints)
        rows, columns = face.window.shape
        middle = (spot.left + spot.width / 2) * shape[1], (spot.top + spot.height / 2) * shape[0]
        place = Place(round(middle[0] - columns / 2), round(middle[1] - rows / 2))
        depth = (FULL if subject.pillow else THICK) * fine
        lying.append(Lying(light, face.relief.inside, place, depth))
    light = composed(replace(scene, bench=""), lying, shape)
    return to_bytes(light, GRAIN * hashed(shape, 72))
