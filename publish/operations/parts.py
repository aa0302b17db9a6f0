"""What lies on the table: parts with edges, and all that matters about them.

In: exact lengths. Out: frozen types, fit for counting in heaps.
Invariant: a part's size is what a ruler would show from raw edge to raw edge, twice: exactly,
and as it is told to the maker. Edges go clockwise from the top.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from publish.surd import Length, Surd
from publish.units import maker_inches

TOP, RIGHT, BOTTOM, LEFT = range(4)
"""The edges of a rectangle, by their place."""
TOLERANCE = Fraction(1, 8)
"""Inches by which what is told may miss what is exact, edge against edge, and still be eased
in: common practice, no source."""


@dataclass(frozen=True)
class Measure:
    """A length in inches, exact and as told: a cut size is told rounded up, say."""

    exact: Length
    told: Length

    def __add__(self, other: Measure | Length) -> Measure:
        if isinstance(other, Measure):
            return Measure(self.exact + other.exact, self.told + other.told)
        return Measure(self.exact + other, self.told + other)

    def __sub__(self, other: Measure | Length) -> Measure:
        if isinstance(other, Measure):
            return Measure(self.exact - other.exact, self.told - other.told)
        return Measure(self.exact - other, self.told - other)

    def __mul__(self, times: int) -> Measure:
        return Measure(self.exact * times, self.told * times)

    @property
    def drift(self) -> Length:
        """Return by how much what a ruler shows misses what is exact."""
        return abs(_shown(self.told) - _shown(self.exact))


def _shown(length: Length) -> Length:
    """Return a length on the diagonal as a ruler shows it, and any other as it is."""
    return maker_inches(length) if isinstance(length, Surd) else length


def measured(length: Length, told: Length | None = None) -> Measure:
    """Return a length that is told as it is, or as `told`."""
    return Measure(length, length if told is None else told)


@dataclass(frozen=True)
class Stretch:
    """A stretch of an edge, from its first corner clockwise, and what has been done to it."""

    start: Length
    stop: Length
    done: str


@dataclass(frozen=True)
class SeamEnd:
    """Where a seam ends on an edge: how far along it, and to which side it is pressed.

    `toward` is `start` or `stop` of the edge, `open`, or empty while it is not pressed.
    """

    at: Length
    toward: str = ""


@dataclass(frozen=True)
class Edge:
    """One edge of a part. `state` is `raw`, or what it was made: `hemmed`, `bound`, `closed`."""

    length: Measure
    state: str = "raw"
    stretches: tuple[Stretch, ...] = ()
    seams: tuple[SeamEnd, ...] = ()
    allowance: Length | None = None
    """What lies outside the finished line, where the part itself must know it."""

    def with_stretch(self, start: Length, stop: Length, done: str) -> Edge:
        """Return the edge with a stretch more, joined to those that it touches."""
        kept = []
        for old in self.stretches:
            if old.done == done and old.start <= stop and start <= old.stop:
                start, stop = min(start, old.start), max(stop, old.stop)
            else:
                kept.append(old)
        both = sorted([*kept, Stretch(start, stop, done)], key=lambda s: (s.start, s.done))
        return replace(self, stretches=tuple(both))

    def covers(self, start: Length, stop: Length, done: str) -> bool:
        """Return whether one stretch reaches from `start` to `stop`."""
        return any(s.done == done and s.start <= start and stop <= s.stop for s in self.stretches)


@dataclass(frozen=True)
class Layer:
    """A layer under the first: batting, backing. It may reach beyond the part's own edges."""

    name: str
    width: Measure
    height: Measure


@dataclass(frozen=True)
class Part:
    """One thing on the table, or each of a heap of them."""

    key: str
    """What it is: `piece E`, `top`, a recipe's key."""
    edges: tuple[Edge, ...] = ()
    state: frozenset[str] = frozenset()
    """What has been done to it as a whole, in the words of its trade: `pressed`, `pinned left`."""
    layers: tuple[Layer, ...] = ()
    marks: frozenset[str] = frozenset()
    basting: frozenset[str] = frozenset()
    """What holds layers together for a while: `pins`, `long stitches`."""
    paper: frozenset[str] = frozenset()
    finished: tuple[Length, Length] | None = None
    """Width and height of what is wholly done: between seams, bound or turned edges."""
    outline: tuple[tuple[Length, Length], ...] = ()
    """Corners, clockwise, of what is sewn so far of it on paper, as the drawing has them."""
    known: bool = True
    """False for what stands in for something that is missing: nothing about it is looked at."""

    @property
    def width(self) -> Measure:
        return self.edges[TOP].length

    @property
    def height(self) -> Measure:
        return self.edges[RIGHT].length

    @property
    def long(self) -> Measure:
        """Return the longer side of a strip."""
        return max(self.width, self.height, key=lambda m: m.told)

    @property
    def deep(self) -> Measure:
        """Return the shorter side of a strip."""
        return min(self.width, self.height, key=lambda m: m.told)

    def is_(self, *states: str) -> bool:
        """Return whether all of these have been done to it."""
        return not self.known or self.state.issuperset(states)

    def having(self, *states: str) -> Part:
        return replace(self, state=self.state | set(states))

    def without(self, *states: str) -> Part:
        return replace(self, state=self.state - set(states))

    def edge(self, at: int, **changes: object) -> Part:
        """Return the part with one edge changed."""
        edges = list(self.edges)
        edges[at] = replace(edges[at], **changes)  # type: ignore[arg-type]
        return replace(self, edges=tuple(edges))

    def sized(self, width: Measure, height: Measure) -> Part:
        """Return the rectangle at another size; what was done along its edges is kept."""
        lengths = (width, height, width, height)
        pairs = zip(self.edges, lengths, strict=True)
        return replace(self, edges=tuple(replace(e, length=n) for e, n in pairs))


def sheet(key: str, width: Measure, height: Measure, *state: str) -> Part:
    """Return a rectangle of cloth with raw edges."""
    edges = tuple(Edge(length) for length in (width, height, width, height))
    return Part(key, edges, frozenset(state))


def missing(key: str) -> Part:
    """Return what stands in for a part that is not there."""
    nothing = measured(Fraction(0))
    return Part(key, tuple(Edge(nothing) for _ in range(4)), known=False)
