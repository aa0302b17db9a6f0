"""The shape of a patch by itself, whichever way it lies on the top.

In: a `Patch` and the allowance of each of its edges. Out: `Form`.
Invariant: coordinates are exact; a corner at which straight edges run straight on is left
out; two forms share a `signature` exactly when one can be turned onto the other,
allowances included, and share one in print order exactly when it need not be turned.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import pairwise
from math import isqrt
from typing import Any

from publish.model.draft import Arcs, Patch, Point
from publish.surd import Exact, Length, exact, parts, root, turned

FINE = 10**9

Signature = tuple[Any, ...]
Vector = tuple[Length, Length]


@dataclass(frozen=True)
class Form:
    """A polygon, clockwise on the page, as it lies in its unturned block.

    Edge i runs from corner i to the one after it, and `allow[i]` is added outside it.
    """

    ring: tuple[Point, ...]
    allow: tuple[Fraction, ...]
    arcs: Arcs = ()

    @cached_property
    def edges(self) -> tuple[Vector, ...]:
        """Return each edge as a vector from its first corner to its last."""
        after = self.ring[1:] + self.ring[:1]
        return tuple((u - x, v - y) for (x, y), (u, v) in zip(self.ring, after, strict=True))

    @cached_property
    def box(self) -> tuple[Length, Length]:
        """Return width and height of its corners; an arc may bulge beyond."""
        xs, ys = zip(*self.ring, strict=True)
        return max(xs) - min(xs), max(ys) - min(ys)

    @cached_property
    def doubled_area(self) -> Length:
        """Return twice the area within its corners, arcs taken as their chords."""
        x, y = self.ring[0]
        spokes = [(u - x, v - y) for u, v in self.ring[1:]]
        return sum((cross(a, b) for a, b in pairwise(spokes)), Fraction(0))

    @cached_property
    def even(self) -> bool:
        """Return whether every edge gets the same allowance."""
        return len(set(self.allow)) == 1

    @cached_property
    def signature(self) -> Signature:
        """Return what all turnings of the form share, and no other form has."""
        edges = self.edges
        items = [
            (dot(e, e), dot(e, f), cross(e, f), *self._bend(i), self.allow[i])
            for i, (e, f) in enumerate(zip(edges, edges[1:] + edges[:1], strict=True))
        ]
        turns = [items[i:] + items[:i] for i in range(len(items))]
        first = min(turns, key=lambda t: [float(v) for item in t for v in item])
        return tuple(first)

    @cached_property
    def laid(self) -> Signature:
        """Return what copies of the form share that lie the same way."""
        start = min(range(len(self.ring)), key=lambda i: self.ring[i][::-1])
        edges, size = self.edges, len(self.ring)
        order = [(start + i) % size for i in range(size)]
        return tuple((*edges[i], *self._bend(i), self.allow[i]) for i in order)

    def _bend(self, i: int) -> tuple[Length, Length, int]:
        """Return what tells an arc from others on the same chord; zeros for a straight edge."""
        through = dict(self.arcs).get(i)
        if through is None:
            return Fraction(0), Fraction(0), 0
        edge, (x, y) = self.edges[i], self.ring[i]
        a, b = centre(self.ring[i], through, self.ring[(i + 1) % len(self.ring)])
        middle = (a - x, b - y)
        side = cross(edge, (through[0] - x, through[1] - y))
        return dot(edge, middle), cross(edge, middle), 1 if side > 0 else -1

    @property
    def tight(self) -> bool:
        """Return whether an arc bends no wider than the allowance beside it."""
        for i, through in self.arcs:
            a, b = centre(self.ring[i], through, self.ring[(i + 1) % len(self.ring)])
            arm = self.ring[i][0] - a, self.ring[i][1] - b
            if dot(arm, arm) <= self.allow[i] * self.allow[i]:
                return True
        return False

    @cached_property
    def mirrored(self) -> Form:
        """Return the form turned over, left for right."""
        size = len(self.ring)
        return Form(
            tuple((-x, y) for x, y in reversed(self.ring)),
            tuple(self.allow[(size - 2 - j) % size] for j in range(size)),
            tuple(((size - 2 - i) % size, (-x, y)) for i, (x, y) in self.arcs),
        )


def form_of(patch: Patch, allow: Sequence[Fraction], upright: bool = False) -> Form:
    """Return a patch's form in the frame of its block; with `upright`, for a print with a
    direction, turned back no further than to the nearest way that its block could hang."""
    back = patch.turn % 90 if upright else patch.turn
    ring = [turned(point, -back % 360) for point in patch.ring]
    arcs = {i: turned(through, -back % 360) for i, through in patch.arcs}
    kept = [i for i in range(len(ring)) if not _runs_on(ring, arcs, i)]
    after = zip(kept, [*kept[1:], kept[0] + len(ring)], strict=True)
    widest = [max(allow[j % len(ring)] for j in range(i, k)) for i, k in after]
    return Form(
        tuple(ring[i] for i in kept),
        tuple(widest),
        tuple((kept.index(i), through) for i, through in sorted(arcs.items())),
    )


def _runs_on(ring: Sequence[Point], arcs: dict[int, Point], i: int) -> bool:
    """Return whether straight edges run straight on through a corner."""
    if i in arcs or (i - 1) % len(ring) in arcs:
        return False
    (a, b), (x, y), (u, v) = ring[i - 1], ring[i], ring[(i + 1) % len(ring)]
    return not cross((x - a, y - b), (u - x, v - y))


def dot(one: Vector, two: Vector) -> Length:
    return one[0] * two[0] + one[1] * two[1]


def cross(one: Vector, two: Vector) -> Length:
    return one[0] * two[1] - one[1] * two[0]


def centre(one: Point, two: Point, three: Point) -> Point:
    """Return the centre of the circle through three points that lie on no line."""
    (x, y), (u, v) = ((p[0] - one[0], p[1] - one[1]) for p in (two, three))
    below, first, second = 2 * (x * v - y * u), x * x + y * y, u * u + v * v
    return (
        one[0] + (v * first - y * second) / below,
        one[1] + (x * second - u * first) / below,
    )


def length_of(square: Exact) -> Exact:
    """Return the square root of a length's square: exact where it is a + b√2, or else the
    next billionth of an inch above."""
    found = known_root(square)
    if found is not None:
        return found
    scaled = -((-square * FINE * FINE) // 1)
    below = isqrt(int(scaled))
    return Fraction(below if below * below == scaled else below + 1, FINE)


def known_root(square: Exact) -> Exact | None:
    """Return the positive root where it is a + b√2: p + q√2 with p² + 2q² = a, 2pq = b."""
    if isinstance(square, Fraction):
        return root(square)
    a, b = parts(square)
    norm = root(square.norm)
    for sign in (1, -1):
        p = root((a + sign * norm) / 2) if isinstance(norm, Fraction) else None
        if isinstance(p, Fraction) and p:
            return abs(exact(p, b / (2 * p)))
    return None
