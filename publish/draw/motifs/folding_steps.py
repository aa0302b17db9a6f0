"""How a square of cloth is folded into a wedge: layers followed fold by fold.

In: the number of wedges (4, 6, 8, 12, 16) and how many folds have been made.
Out: the stack of layers, bottom first, and the next fold.
Invariant: the layers are pieces of the one square, of side 2 about the centre, each moved
by turns and reflections only; together they are the square. The y axis points down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shapely.affinity import affine_transform, rotate
from shapely.geometry import LineString, Polygon, box

from publish.draw.sheets.template import polar

SHY = 0.03
"""Share by which a folded part is drawn short of its true place, so that the edges
beneath it show."""

Matrix = tuple[float, float, float, float]
"""a, b, d, e of a linear map about the centre: x' = a x + b y, y' = d x + e y."""


@dataclass(frozen=True)
class Crease:
    """A fold to make: a line through the centre, or a ray from it, at `angle` degrees
    clockwise from the positive x axis. The cloth on the side `over` (1 clockwise of the
    ray, -1 counterclockwise) is folded over onto the rest."""

    name: str
    angle: float
    over: int


@dataclass(frozen=True)
class Layer:
    """One thickness of cloth.

    `place` is where it lies, `shown` the same drawn a little short, `own` the matrix that
    took it there from the flat square. `flipped` counts as the wrong side of a cloth that
    began right side up.
    """

    place: Polygon
    shown: Polygon
    own: Matrix = (1.0, 0.0, 0.0, 1.0)
    flipped: bool = False


@dataclass(frozen=True)
class Folding:
    """The folds of one way of folding, and the turn that stands the wedge up at the end."""

    folds: int
    creases: tuple[Crease, ...]
    turn: float

    @property
    def wedge(self) -> float:
        """Return the wedge's angle in degrees."""
        return 360 / self.folds


_HALF = Crease("half", 0.0, 1)
_ACROSS = Crease("quarter", -90.0, -1)
_THIRDS = (Crease("third", -120.0, -1), Crease("third", -60.0, 1))

_WAYS: dict[int, tuple[tuple[Crease, ...], float]] = {
    4: ((Crease("half", -90.0, -1), Crease("quarter", 0.0, 1)), 0.0),
    6: ((_HALF, *_THIRDS), 30.0),
    8: ((_HALF, _ACROSS, Crease("eighth", -45.0, 1)), 0.0),
    12: ((_HALF, *_THIRDS, Crease("half again", -90.0, 1)), 30.0),
    16: ((_HALF, _ACROSS, Crease("eighth", -45.0, 1), Crease("sixteenth", -67.5, 1)), 0.0),
}
"""The last fold always makes the wedge's right edge, so that the other edge holds every
earlier fold; the turn stands that edge upright."""


def folding_of(folds: int) -> Folding:
    """Return how cloth is folded into `folds` wedges; KeyError for other numbers."""
    creases, turn = _WAYS[folds]
    return Folding(folds, creases, turn)


def folded(way: Folding, made: int) -> tuple[Layer, ...]:
    """Return the layers, bottom first, after `made` folds; more than there are is all."""
    square = box(-1, -1, 1, 1)
    layers: tuple[Layer, ...] = (Layer(square, square),)
    for crease in way.creases[:made]:
        layers = _fold(layers, crease)
    if made >= len(way.creases) and way.turn:
        layers = tuple(_turned(layer, way.turn) for layer in layers)
    return layers


def _fold(layers: tuple[Layer, ...], crease: Crease) -> tuple[Layer, ...]:
    """Fold one side over: what moves turns over, in reversed order, on top of the rest."""
    moving_side = _sector(crease, 1)
    staying_side = _sector(crease, -1)
    staying: list[Layer] = []
    moving: list[Layer] = []
    for layer in layers:
        kept = _part(layer.place, staying_side)
        if kept is not None:
            shown = _part(layer.shown, staying_side) or kept
            staying.append(Layer(kept, shown, layer.own, layer.flipped))
        moved = _part(layer.place, moving_side)
        if moved is not None:
            shown = _part(layer.shown, moving_side) or moved
            moving.append(_over(layer, moved, shown, crease.angle))
    return (*staying, *reversed(moving))


def _sector(crease: Crease, moving: int) -> Polygon:
    """Return the half plane beside a crease, large enough for the square."""
    side = crease.over * moving
    along, away = polar(4, crease.angle), polar(4, crease.angle + 90 * side)
    ax, ay = along
    bx, by = away
    return Polygon([(ax, ay), (ax + bx, ay + by), (-ax + bx, -ay + by), (-ax, -ay)])


def _part(shape: Polygon, side: Polygon) -> Polygon | None:
    part = shape.intersection(side)
    return part if part.geom_type == "Polygon" and part.area > 1e-9 else None


def _over(layer: Layer, place: Polygon, shown: Polygon, angle: float) -> Layer:
    true = reflection(angle)
    short = reflection(angle, 1 - SHY)
    a, b, d, e = true
    p, q, r, s = layer.own
    own = (a * p + b * r, a * q + b * s, d * p + e * r, d * q + e * s)
    return Layer(_mapped(place, true), _mapped(shown, short), own, not layer.flipped)


def reflection(angle: float, keep: float = 1.0) -> Matrix:
    """Return the reflection across a line through the centre, at `keep` of the distance."""
    c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    # The part along the line stays; the part across it is reversed and scaled.
    return c * c - keep * s * s, (1 + keep) * c * s, (1 + keep) * c * s, s * s - keep * c * c


def _mapped(shape: Polygon, matrix: Matrix) -> Polygon:
    a, b, d, e = matrix
    return affine_transform(shape, [a, b, d, e, 0, 0])


def _turned(layer: Layer, turn: float) -> Layer:
    spun = [rotate(g, turn, origin=(0, 0)) for g in (layer.place, layer.shown)]
    c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    p, q, r, t = layer.own
    own = (c * p - s * r, c * q - s * t, s * p + c * r, s * q + c * t)
    return Layer(spun[0], spun[1], own, layer.flipped)


def crease_line(layers: tuple[Layer, ...], crease: Crease) -> LineString:
    """Return the line along which the cloth is to be folded, from edge to edge."""
    through = LineString([polar(-3, crease.angle), polar(3, crease.angle)])
    reach = [layer.place.intersection(through) for layer in layers]
    longest = max(reach, key=lambda line: float(line.length))
    return longest if isinstance(longest, LineString) else through
