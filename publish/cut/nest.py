"""Shapes nested on a width of cloth or web, where boxes round them would waste it.

In: outlines, how many of each, the turns they may take; the width. Out: `Nest`.
Invariant: what is returned has passed `faults`, which looks at the given outlines with
shapely and at nothing that the solver worked with.

The solver runs in a process of its own (`solver`) and shortens its layout until it is told
to stop, by what it has found and never by the clock: at the first layout that buys as little
as can be hoped for; when it has come nearer to the next layout `PATIENCE` times and not to
it; or when the shapes could not be moved apart, which shows in the share by which the next
layout is shorter. Other seeds are tried only while a layout shorter by `REACH` would buy
less. Shapes in rows are what it has to better.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from shapely import STRtree, affinity
from shapely.geometry import Polygon, box
from shapely.geometry.base import BaseGeometry

from publish.cut.running import Placing, Run
from publish.units import EIGHTH, round_up

SEEDS = 3
"""How often the solver starts anew."""
PATIENCE = 20
"""For a few shapes; two for every five of many."""
SHARE, DECAY = 0.0005, 0.9
"""By how much of its length the solver shortens a layout, and what a failure makes of that."""
DENSEST = Fraction(93, 100)
"""Share of the cloth that shapes fill at most: of the published records in
tests/data/packing none is above 92.4 %."""
REACH = Fraction(4, 100)
"""Share of its length that a further start has been seen to save at most."""
TOLERANCE = 1 / 16
"""Inches by which a drawn-out curve may be coarser for the solver, outside the outline."""
MANY = 60
"""Corners of an outline above which it is made coarser."""
SLACK = 1 / 10000
"""Inches kept round each outline for the solver's single-precision arithmetic."""
OVERLAP = 1e-9
"""Square inches below which two outlines count as touching."""


@dataclass(frozen=True)
class Shape:
    """An outline in inches about its own origin, y along the cloth; holes do not count.

    `turns` are the degrees clockwise that it may be turned by.
    """

    name: str
    outline: Polygon
    count: int
    turns: tuple[float, ...] = (0.0,)


@dataclass(frozen=True)
class Spot:
    """Where one shape lies: turned about its origin, which comes to `across`, `along`."""

    name: str
    turn: float
    across: float
    along: float


@dataclass(frozen=True)
class Nest:
    """A layout: every shape once each time it is wanted."""

    width: Fraction
    length: Fraction
    spots: tuple[Spot, ...]


def nest(
    shapes: Sequence[Shape],
    width: Fraction,
    buys: Callable[[Fraction], Fraction] = round_up,
    step: Fraction = EIGHTH,
) -> Nest | None:
    """Return a layout that buys as little as was found, or None where a shape is too wide.

    `buys` tells what is bought for a length; both in inches. The layout's length is rounded
    up to a `step`.
    """
    best = in_rows(shapes, width, step)
    if best is None:
        return None
    enough = buys(least(shapes, width * DENSEST))
    seeds = SEEDS if sum(shape.count for shape in shapes) > 1 else 0
    for seed in range(seeds):
        if buys(best.length) <= enough or (
            seed and buys(best.length * (1 - REACH)) == buys(best.length)
        ):
            break
        for found in _layouts(tuple(shapes), width, seed, step):
            if buys(found.length) < buys(best.length) and not faults(shapes, found):
                best = found
            if buys(best.length) <= enough:
                break
    assert not faults(shapes, best)
    return best


def in_rows(shapes: Sequence[Shape], width: Fraction, step: Fraction = EIGHTH) -> Nest | None:
    """Return the shapes in rows, box beside box, the deepest first; None where one is
    too wide."""
    boxes = []
    for shape in shapes:
        turned = _lowest(shape, width)
        if turned is None:
            return None
        boxes += [(shape.name, *turned)] * shape.count
    boxes.sort(key=lambda item: (item[3] - item[2].bounds[1], item[0]), reverse=True)
    spots: list[Spot] = []
    across = start = end = 0.0
    for name, turn, outline, bottom in boxes:
        left, top, right, _ = outline.bounds
        if spots and across + right - left > width:
            across, start = 0.0, end
        spots.append(Spot(name, turn, across - left, start - top))
        across, end = across + right - left, max(end, start + bottom - top)
    return Nest(width, round_up(Fraction(end), step), tuple(spots))


def _lowest(shape: Shape, width: Fraction) -> tuple[float, Polygon, float] | None:
    """Return the turn in which a shape fits the width and takes the least length."""
    ways = []
    for turn in shape.turns:
        outline = affinity.rotate(_simple(shape.outline), turn, origin=(0, 0))
        left, top, right, bottom = outline.bounds
        if right - left <= width:
            ways.append((bottom - top, turn, outline, bottom))
    return min(ways, key=lambda way: way[:2])[1:] if ways else None


def least(shapes: Sequence[Shape], width: Fraction) -> Fraction:
    """Return a length that no layout can go below: by area, and by the deepest shape."""
    area = sum(Polygon(s.outline.exterior).area * s.count for s in shapes)
    deepest = 0.0
    for shape in shapes:
        turned = [affinity.rotate(shape.outline, t, origin=(0, 0)).bounds for t in shape.turns]
        deepest = max(deepest, min(bottom - top for _, top, _, bottom in turned))
    return max(round_up(Fraction(area) / width), round_up(Fraction(deepest)))


def faults(shapes: Sequence[Shape], made: Nest) -> list[str]:
    """Return what is wrong with a layout: overlaps, what lies outside, what is missing."""
    outlines = {shape.name: Polygon(shape.outline.exterior) for shape in shapes}
    laid = [place(outlines[spot.name], spot) for spot in made.spots]
    room = box(0, 0, float(made.width), float(made.length))
    found = [
        f"{spot.name} lies outside"
        for spot, outline in zip(made.spots, laid, strict=True)
        if not room.covers(outline)
    ]
    first, second = STRtree(laid).query(laid, predicate="intersects")
    found += [
        f"{made.spots[i].name} overlaps {made.spots[j].name}"
        for i, j in zip(first, second, strict=True)
        if i < j and laid[i].intersection(laid[j]).area > OVERLAP
    ]
    counts = Counter(spot.name for spot in made.spots)
    if counts != {shape.name: shape.count for shape in shapes}:
        found.append("shapes are missing, or there are too many")
    return found


def place(geometry: BaseGeometry, spot: Spot) -> BaseGeometry:
    """Return a geometry about its shape's origin where the spot puts it."""
    turned = affinity.rotate(geometry, spot.turn, origin=(0, 0))
    return affinity.translate(turned, spot.across, spot.along)


def _simple(outline: Polygon) -> Polygon:
    """Return an outline with few corners that holds the given one with slack all round."""
    whole = Polygon(outline.exterior)
    if len(whole.exterior.coords) <= MANY:
        grown = whole.buffer(SLACK, join_style="mitre")
    else:
        grown = whole.buffer(TOLERANCE + SLACK, join_style="mitre").simplify(TOLERANCE)
    return Polygon(grown.exterior)


def _layouts(
    shapes: tuple[Shape, ...], width: Fraction, seed: int, step: Fraction
) -> Iterator[Nest]:
    """Yield what the solver finds before it has failed too often, the longest first."""
    before, waited = 0.0, 0
    patience = max(PATIENCE, 2 * sum(shape.count for shape in shapes) // 5)
    for line in _run(shapes, width, seed).lines():
        waited = 0 if line is not None else waited + 1
        if waited > patience:
            return
        if line is None:
            continue
        length, spots = line
        if before and before - length < before * SHARE * (1 + DECAY) / 2:
            return
        before = length
        yield _read(shapes, width, length, spots, step)


@lru_cache(maxsize=64)
def _run(shapes: tuple[Shape, ...], width: Fraction, seed: int) -> Run:
    """Return a run of the solver, kept, because sizes and materials ask for the same shapes
    on the same width."""
    # The solver's x runs along the cloth, and its y against the direction across.
    items = [
        {
            "corners": [(y, -x) for x, y in _simple(shape.outline).exterior.coords],
            "count": shape.count,
            "turns": list(shape.turns),
        }
        for shape in shapes
    ]
    return Run(json.dumps({"width": float(width), "items": items, "seed": seed}))


def _read(
    shapes: Sequence[Shape],
    width: Fraction,
    length: float,
    found: Sequence[Placing],
    step: Fraction,
) -> Nest:
    spots = [
        Spot(shapes[item].name, turn, float(width) - across, along)
        for item, turn, along, across in found
    ]
    spots.sort(key=lambda s: (s.along, s.across, s.name))
    return Nest(width, round_up(Fraction(length), step), tuple(spots))
