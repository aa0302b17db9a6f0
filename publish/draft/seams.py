"""Sewing order: a map of patches taken apart by straight seams, until single patches are left.

In: `Item`s, simple polygons with exact corners that cover an area once. Out: a tree of
`Node`s whose leaves are the items.
Invariant: a seam is straight, runs through the whole of what it joins and crosses no item;
putting the tree together again gives the map.

Of several ways to take a map apart, the one that needs the fewest different units is
taken, then the one in fewer stages, then the one in rows.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import pairwise
from math import gcd, lcm

from publish.draft.topmap import Box, Ring
from publish.model.draft import Patch

Way = tuple[Fraction, Fraction]
"""The direction of a line, scaled so that equal directions are equal."""

LEVEL: Way = (Fraction(1), Fraction(0))
UPRIGHT: Way = (Fraction(0), Fraction(1))
JOINS = {LEVEL: "down", UPRIGHT: "across"}
"""Seams that run level join parts one below the other; upright ones, side by side."""


@dataclass(frozen=True, eq=False)
class Item:
    """What is sewn as it is: its outline, its patches, and its layer: 0 for blocks, n for
    the nth border from the inside. `motif` is what is appliquéd on it before."""

    ring: Ring
    patches: tuple[Patch, ...]
    layer: int = 0
    motif: str | None = None


@dataclass(frozen=True, eq=False)
class Node:
    """Parts joined by seams of one direction, or a single item.

    `join` is `across`, `down`, `slant` for seams at any other angle, `mitred` for a border
    with mitred corners round what is inside it (the first part), or `set in` for parts
    that no straight seams join.
    """

    join: str | None = None
    parts: tuple[Node, ...] = ()
    item: Item | None = None

    @cached_property
    def items(self) -> tuple[Item, ...]:
        if self.item is not None:
            return (self.item,)
        return tuple(i for part in self.parts for i in part.items)

    @cached_property
    def box(self) -> Box:
        xs, ys = zip(*(p for i in self.items for p in i.ring), strict=True)
        return min(xs), min(ys), max(xs), max(ys)

    @cached_property
    def shape(self) -> Hashable:
        """What the unit looks like, the same for units that are turned by quarters."""
        rings = [(p.fabric, p.ring) for i in self.items for p in i.patches]
        rings += [(f"motif {i.motif}", i.ring) for i in self.items if i.motif]
        step = lcm(*(v.denominator for _, ring in rings for point in ring for v in point))
        whole = [(name, [(int(x * step), int(y * step)) for x, y in ring]) for name, ring in rings]
        looks = min(_turned(whole, quarter) for quarter in range(4))
        common = gcd(step, *(v for _, ring in looks for point in ring for v in point))
        return step // common, tuple(
            (name, tuple((x // common, y // common) for x, y in ring)) for name, ring in looks
        )

    def every(self) -> tuple[Node, ...]:
        """Return this node and everything in it, parts before wholes."""
        return (*(n for part in self.parts for n in part.every()), self)


def take_apart(items: tuple[Item, ...]) -> Node:
    """Return the best tree for a map of items."""
    if len(items) == 1:
        return Node(item=items[0])
    ways = [
        Node(JOINS.get(way, "slant"), tuple(take_apart(part) for part in parts))
        for way, parts in _splits(items)
    ]
    if ways:
        return min(ways, key=_cost)
    outer = max(i.layer for i in items)
    inside = tuple(i for i in items if i.layer < outer)
    if outer and inside:
        frame = tuple(Node(item=i) for i in items if i.layer == outer)
        return Node("mitred", (take_apart(inside), *frame))
    return Node("set in", tuple(Node(item=i) for i in items))


def sewn(node: Node) -> tuple[Item, ...]:
    """Return the items of a tree, having checked that each seam can be sewn.

    Raises ValueError for parts that do not lie edge to edge along a straight seam.
    """
    if node.item is not None:
        return (node.item,)
    boxes = [part.box for part in node.parts]
    if node.join in ("across", "down"):
        start, aside = (0, 1) if node.join == "across" else (1, 0)
        ends = {(b[aside], b[aside + 2]) for b in boxes}
        if len(ends) != 1 or any(a[start + 2] != b[start] for a, b in pairwise(boxes)):
            raise ValueError(f"parts joined {node.join} do not lie edge to edge")
    return tuple(i for part in node.parts for i in sewn(part))


def _splits(items: tuple[Item, ...]) -> list[tuple[Way, list[tuple[Item, ...]]]]:
    """Return each direction in which full seams run, and the parts between them in order."""
    lines: dict[Way, set[Fraction]] = {LEVEL: set(), UPRIGHT: set()}
    for item in items:
        for one, two in zip(item.ring, (*item.ring[1:], item.ring[0]), strict=True):
            way = _way(two[0] - one[0], two[1] - one[1])
            lines.setdefault(way, set()).add(_offset(way, one))
    found = []
    for way, offsets in lines.items():
        reach = [(*_reach(way, item), item) for item in items]
        seams = sorted(o for o in offsets if not any(low < o < high for low, high, _ in reach))
        seams = [o for o in seams if o > min(r[0] for r in reach) and o < max(r[1] for r in reach)]
        if seams:
            marks = [*seams, max(r[1] for r in reach)]
            parts: list[list[Item]] = [[] for _ in marks]
            for _, high, item in reach:
                parts[next(i for i, mark in enumerate(marks) if high <= mark)].append(item)
            parts = _peeled(parts)
            if len(parts) > 1:
                found.append((way, [tuple(p) for p in parts]))
    return found


def _peeled(parts: list[list[Item]]) -> list[list[Item]]:
    """Return parts with neighbours inside the outermost border taken together: borders come
    off before what they surround is taken apart."""
    outer = max(i.layer for part in parts for i in part)
    found: list[list[Item]] = []
    inside_before = False
    for part in parts:
        inside = outer > 0 and all(i.layer < outer for i in part)
        if inside and inside_before:
            found[-1] += part
        else:
            found.append(part)
        inside_before = inside
    return found


def _way(across: Fraction, down: Fraction) -> Way:
    largest = max(abs(across), abs(down))
    if down < 0 or (down == 0 and across < 0):
        largest = -largest
    return across / largest, down / largest


def _offset(way: Way, point: tuple[Fraction, Fraction]) -> Fraction:
    """Return how far a point lies to the right of, or below, the direction's own line."""
    if way == UPRIGHT:
        return point[0]
    return point[1] * way[0] - point[0] * way[1]


def _reach(way: Way, item: Item) -> tuple[Fraction, Fraction]:
    offsets = [_offset(way, p) for p in item.ring]
    return min(offsets), max(offsets)


def _cost(node: Node) -> tuple[int, int, int]:
    joined = [n for n in node.every() if n.parts]
    order = {"down": 0, "across": 1}.get(node.join or "", 2)
    return len({n.shape for n in joined}), _depth(node), order


def _depth(node: Node) -> int:
    return 1 + max((_depth(p) for p in node.parts), default=0)


def _turned(
    rings: list[tuple[str, list[tuple[int, int]]]], quarter: int
) -> list[tuple[str, list[tuple[int, int]]]]:
    """Return rings turned by quarters about the origin and moved to it, in a fixed order."""
    for _ in range(quarter):
        rings = [(name, [(-y, x) for x, y in ring]) for name, ring in rings]
    left = min(x for _, ring in rings for x, _ in ring)
    top = min(y for _, ring in rings for _, y in ring)
    moved = []
    for name, ring in rings:
        points = [(x - left, y - top) for x, y in ring]
        first = points.index(min(points))
        moved.append((name, points[first:] + points[:first]))
    return sorted(moved)
