"""Sewing a seam tree back together, to see that it gives the top.

In: a unit. Out: its outline, put together from the outlines of its patches; ValueError for
a seam that cannot be sewn as the tree says.
Invariant: nothing here knows how the tree was found: outlines are cut at each other's
corners, what two parts share must be one seam, and what is left must be one outline.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

from publish.arcs import circle_through, clockwise, edges_of
from publish.model.draft import Arcs, Point, Unit
from publish.surd import Length, turned

Bend = tuple[Length, Length, bool] | None
NEAR = 1e-6
"""Square inches: what floats may be wrong by before a comparison is made exactly."""


@dataclass(frozen=True)
class Side:
    """One edge of an outline; `bend` is the centre of an arc and whether it runs clockwise."""

    start: Point
    end: Point
    bend: Bend = None

    @property
    def back(self) -> Side:
        bend = None if self.bend is None else (self.bend[0], self.bend[1], not self.bend[2])
        return Side(self.end, self.start, bend)


Outline = tuple[Side, ...]


def sewn(unit: Unit) -> Outline:
    """Return the outline of a unit sewn from its patches, or raise ValueError."""
    if unit.patch is not None:
        found = _sides(unit.patch.ring, unit.patch.arcs)
    elif unit.section:
        first, *others = unit.held
        found = _sides(first.ring, first.arcs)
        for patch in others:
            found, path = _joined(unit, found, _sides(patch.ring, patch.arcs))
            _straight(unit, path)
    else:
        found = sewn(unit.parts[0])
        corners = 0
        for part in unit.parts[1:]:
            found, path = _joined(unit, found, sewn(part))
            corners += _turns(path) > 0
            _as_said(unit, path)
        if unit.join != "mitred" and corners != unit.set_in:
            raise ValueError(f"{unit.name}: {corners} seams are set in, not {unit.set_in}")
    if {(s.start, s.end) for s in found} != {(s.start, s.end) for s in _of(unit)}:
        raise ValueError(f"{unit.name}: sewn together it has another outline than it says")
    points = [turned(s.start, -unit.turn) for s in found]
    xs, ys = zip(*points, strict=True)
    if (min(xs), min(ys), max(xs), max(ys)) != unit.box:
        raise ValueError(f"{unit.name}: its outline does not fill its box")
    return found


def _of(unit: Unit) -> Outline:
    return _merged(list(_sides(unit.ring, unit.arcs)))


def _sides(ring: tuple[Point, ...], arcs: Arcs) -> Outline:
    found = []
    for one, two, through in edges_of(ring, arcs):
        bend: Bend = None
        if through is not None:
            x, y, _ = circle_through(one, through, two)
            bend = (x, y, clockwise(one, through, two))
        found.append(Side(one, two, bend))
    return _merged(found)


def _joined(unit: Unit, one: Outline, two: Outline) -> tuple[Outline, list[Side]]:
    """Return the outline of two parts together, and the seam between them."""
    first, second = _cut(one, [s.start for s in two]), _cut(two, [s.start for s in one])
    backs = {s.back for s in second}
    path = [s for s in first if s in backs]
    taken = {s.back for s in path}
    rest = [s for s in first if s not in backs] + [s for s in second if s not in taken]
    if not path:
        raise ValueError(f"{unit.name}: parts joined {unit.join} do not meet edge to edge")
    ordered = _in_order(path)
    around = _in_order(rest)
    if len(ordered) < len(path) or len(around) < len(rest):
        raise ValueError(f"{unit.name}: parts joined {unit.join} meet in more than one seam")
    if around[0].start != around[-1].end:
        raise ValueError(f"{unit.name}: parts joined {unit.join} leave a gap")
    return _merged(around), ordered


def _in_order(sides: list[Side]) -> list[Side]:
    """Return sides as they follow each other, as far as they do."""
    after = {s.start: s for s in sides}
    ends = {s.end for s in sides}
    at: Point | None = next((s.start for s in sides if s.start not in ends), sides[0].start)
    found: list[Side] = []
    while at in after:
        found.append(after.pop(at))
        at = found[-1].end
    return found


def _cut(outline: Outline, corners: Iterable[Point]) -> list[Side]:
    """Return an outline cut at the corners that lie on it."""
    points = [(p, float(p[0]), float(p[1])) for p in corners]
    found = []
    for side in outline:
        on = [p for p, x, y in points if p not in (side.start, side.end) and _on(side, p, x, y)]
        start = side.start
        while on:  # the nearest leaves no other between it and the start
            near = next(
                p
                for p in on
                if not any(
                    _on(Side(start, p, side.bend), q, float(q[0]), float(q[1]))
                    for q in on
                    if q != p
                )
            )
            on.remove(near)
            found.append(Side(start, near, side.bend))
            start = near
        found.append(Side(start, side.end, side.bend))
    return found


def _on(side: Side, point: Point, x: float, y: float) -> bool:
    """Return whether a point lies on a side, which it is no end of."""
    (a, b), (c, d) = side.start, side.end
    e, f, g, h = float(a), float(b), float(c), float(d)
    if side.bend is None:
        if abs((g - e) * (y - f) - (x - e) * (h - f)) > NEAR:
            return False
        if not (
            min(e, g) - NEAR <= x <= max(e, g) + NEAR and min(f, h) - NEAR <= y <= max(f, h) + NEAR
        ):
            return False
        return bool((c - a) * (point[1] - b) == (point[0] - a) * (d - b))
    u, v, right = side.bend
    across, down = float(u), float(v)
    if abs((x - across) ** 2 + (y - down) ** 2 - (e - across) ** 2 - (f - down) ** 2) > NEAR:
        return False
    beyond = clockwise(side.start, point, side.end) == right
    square = (a - u) * (a - u) + (b - v) * (b - v)
    return beyond and bool(
        (point[0] - u) * (point[0] - u) + (point[1] - v) * (point[1] - v) == square
    )


def _merged(sides: list[Side]) -> Outline:
    """Return an outline whose sides are as long as they can be."""
    first = next((i for i, s in enumerate(sides) if not _goes_on(sides[i - 1], s)), 0)
    found: list[Side] = []
    for side in (*sides[first:], *sides[:first]):
        if found and found[-1].bend == side.bend and _goes_on(found[-1], side):
            found[-1] = Side(found[-1].start, side.end, side.bend)
        else:
            found.append(side)
    return tuple(found) if len(found) > 1 else tuple(sides)


def _goes_on(one: Side, two: Side) -> bool:
    """Return whether a side carries another on without a corner."""
    (x, y), (u, v) = _heading(one, one.end), _heading(two, two.start)
    if abs(float(x) * float(v) - float(u) * float(y)) > NEAR:
        return False
    return bool(x * v == u * y) and float(x) * float(u) + float(y) * float(v) > 0


def _heading(side: Side, at: Point) -> Point:
    if side.bend is None:
        return side.end[0] - side.start[0], side.end[1] - side.start[1]
    x, y = at[0] - side.bend[0], at[1] - side.bend[1]
    return (-y, x) if side.bend[2] else (y, -x)


def _turns(path: list[Side]) -> int:
    return sum(not _goes_on(a, b) for a, b in pairwise(path))


def _straight(unit: Unit, path: list[Side]) -> None:
    if _turns(path) or any(s.bend for s in path):
        raise ValueError(f"{unit.name}: a seam on a foundation is not straight")


def _as_said(unit: Unit, path: list[Side]) -> None:
    """Raise ValueError for a seam that is not what its unit's join says."""
    if unit.join in ("mitred", "set in"):
        return
    if _turns(path):
        raise ValueError(f"{unit.name}: a seam joined {unit.join} turns a corner")
    if any(s.bend for s in path):
        if unit.join != "curve":
            raise ValueError(f"{unit.name}: a seam joined {unit.join} is curved")
        return
    one, two = (turned(p, -unit.turn) for p in (path[0].start, path[-1].end))
    if (unit.join == "across" and one[0] != two[0]) or (unit.join == "down" and one[1] != two[1]):
        raise ValueError(f"{unit.name}: a seam joined {unit.join} runs another way")
