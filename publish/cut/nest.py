"""Shapes nested on a width of cloth or web, where boxes round them would waste it.

In: outlines, how many of each, the turns they may take; the width. Out: `Nest`.
Invariant: what is returned has passed `faults`, which looks at the given outlines with
shapely and at nothing that the solver worked with.

The solver stops by the clock. What it finds on the way, with one seed and one thread, is
the same sequence everywhere: only its events up to the first length at which it fails count,
and of those the first `EVENTS`; the budgets are many times what they take, and of the layouts
among them the first that buys least is taken. So a slower machine gets the same layout.
Beyond a failed length the solver spends seconds on thousandths. Shapes in rows are what it
has to better.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

import spyrrow
from shapely import STRtree, affinity
from shapely.geometry import Polygon, box
from shapely.geometry.base import BaseGeometry

from publish.units import round_up

EVENTS = 200
BUDGETS = (1, 3, 9, 27)
"""Seconds: a longer one is spent only where the one before it neither failed at a length nor
brought `EVENTS`, as on a machine that is busy with other work."""
EXPLORING = (
    spyrrow.ReportType.ExplFeas,
    spyrrow.ReportType.ExplInfeas,
    spyrrow.ReportType.ExplImproving,
)
TOLERANCE = 1 / 16
"""Inches by which a drawn-out curve may be coarser for the solver, outside the outline."""
MANY = 60
"""Corners of an outline above which it is made coarser."""
SLACK = 1 / 10000
"""Inches kept round each outline for the solver's single-precision arithmetic."""
OVERLAP = 1e-9
"""Square inches below which two outlines count as touching."""

_Event = tuple[spyrrow.ReportType, spyrrow.StripPackingSolution]


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


def nest(shapes: Sequence[Shape], width: Fraction,
         buys: Callable[[Fraction], Fraction] = round_up) -> Nest | None:  # fmt: skip
    """Return the first layout found that buys least, or None where a shape is too wide.

    `buys` tells what is bought for a length; both in inches.
    """
    best = in_rows(shapes, width)
    if best is None:
        return None
    alone = sum(shape.count for shape in shapes) == 1
    if not alone and buys(best.length) > buys(least(shapes, width)):
        for found in _layouts(tuple(shapes), width):
            if buys(found.length) < buys(best.length) and not faults(shapes, found):
                best = found
    assert not faults(shapes, best)
    return best


def in_rows(shapes: Sequence[Shape], width: Fraction) -> Nest | None:
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
    return Nest(width, round_up(Fraction(end)), tuple(spots))


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
    found = [f"{spot.name} lies outside" for spot, outline in zip(made.spots, laid, strict=True)
             if not room.covers(outline)]  # fmt: skip
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


@lru_cache(maxsize=256)
def _layouts(shapes: tuple[Shape, ...], width: Fraction) -> tuple[Nest, ...]:
    """Return what the solver finds within the events that count, the longest first.

    Kept, because sizes and materials ask for the same shapes on the same width.
    """
    # The solver's x runs along the cloth, and its y against the direction across.
    items = [
        spyrrow.Item(str(i), [(y, -x) for x, y in _simple(shape.outline).exterior.coords],
                     shape.count, list(shape.turns))
        for i, shape in enumerate(shapes)
    ]  # fmt: skip
    problem = spyrrow.StripPackingInstance("", float(width), items)
    for seconds in BUDGETS:
        events = _events(problem, seconds)
        kinds = [kind for kind, _ in events]
        failed = spyrrow.ReportType.ExplInfeas in kinds
        if failed or len(events) >= EVENTS:
            break
    counted = min(EVENTS, kinds.index(spyrrow.ReportType.ExplInfeas) if failed else EVENTS)
    laid = [found for kind, found in events[:counted] if kind == spyrrow.ReportType.ExplFeas]
    return tuple(_read(shapes, width, found) for found in laid)


def _events(problem: spyrrow.StripPackingInstance, seconds: int) -> list[_Event]:
    """Return what the solver reports of its exploration, in order."""
    queue = spyrrow.ProgressQueue()
    problem.solve(_settings(seconds), queue)
    return [event for event in queue.drain() if event[0] in EXPLORING]


def _settings(seconds: int) -> spyrrow.StripPackingConfig:
    return spyrrow.StripPackingConfig(
        early_termination=False, exploration_time=seconds, compression_time=0,
        total_computation_time=None, num_workers=1, seed=0,
    )  # fmt: skip


def _read(shapes: Sequence[Shape], width: Fraction, found: spyrrow.StripPackingSolution) -> Nest:
    spots = [
        Spot(shapes[int(item.id)].name, item.rotation, float(width) - item.translation[1],
             item.translation[0])
        for item in found.placed_items
    ]  # fmt: skip
    spots.sort(key=lambda s: (s.along, s.across, s.name))
    return Nest(width, round_up(Fraction(found.width)), tuple(spots))
