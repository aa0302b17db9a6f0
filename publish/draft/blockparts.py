"""A block as parts: every unit of its tree with its name, frame, outline and seams.

In: a block's order, the turn of its homes. Out: the block as a `Part`, its middle at the
origin.
Invariant: parts are in the order in which the unit's frame shows them, from left to right
or from the top; where seams slant or curve, what is sewn to comes before what is sewn on.

Names: `half block` for the equal halves of a block, `block row` or `block column` for its
other full strips, `unit` for everything smaller, `section` and `patch`; where a motif goes
on a pieced ground, `ground` instead of `block`.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from math import atan2, cos, pi, sin, sqrt
from typing import Any

from publish.draft.blocktree import BlockOrder, Leaf
from publish.draft.kinds import Kinds
from publish.draft.order import Node, Seam, seam_path
from publish.draft.parts import TOWARDS_FIRST, TOWARDS_LAST, Part, Stitched, box_of, direction
from publish.draft.paths import LEVEL, UPRIGHT
from publish.draft.planar import Spot, Way
from publish.model.draft import Arcs, Point
from publish.surd import turned

FINE = 1000
"""An arc is given by a point near its middle, found from a direction to this fineness."""


class BlockParts:
    """Turns the tree of a block into parts."""

    def __init__(self, found: BlockOrder, turn: int, kinds: Kinds) -> None:
        self.found, self.turn, self.kinds = found, turn, kinds
        self.order, self.planar = found.order, found.order.planar
        self.numbers = {node: n for n, node in enumerate(found.tree.every())}
        pieced = len(found.block.patches) > 1
        self.whole = "ground" if found.block.motif and pieced else "block"

    def part(self) -> Part:
        """Return the whole block."""
        return self._part(self.found.tree, self.whole, f"{self.whole} {self.found.block.key}")

    def _part(self, node: Node, name: str, family: str) -> Part:
        ways = self.planar.outline(node.faces)
        seams = self.order.seams(node)
        ring = tuple(self._placed(w.start) for w in ways)
        arcs: Arcs = tuple((i, self._through(w)) for i, w in enumerate(ways) if w.bend)
        frame = (_frame(ways, seams) + self.turn) % 90
        plain = Part(self._kind(node, name, family), name, box_of(ring, frame), ring, arcs, frame)
        if not node.parts:
            return replace(plain, **self._held(self._leaf(node)))
        join = self._join(seams, frame)
        nodes = self._in_order(node, seams, join, frame)
        names = self._name(node, nodes, join)
        return replace(
            plain,
            join=join,
            parts=tuple(self._part(n, *self._leaf_name(n, names)) for n in nodes),
            seams=tuple(s for a, b in pairwise(nodes) for s in self._stitched(a, b)),
            set_in=sum(1 for seam in seams if seam.corners),
            settled=self._settled(nodes, seams),
            choice=(self.found.block.key, self.found.side, self.numbers[node]),
            flipped=nodes[0] is not node.parts[0],
        )

    def _kind(self, node: Node, name: str, family: str) -> str:
        look = self.order.look(node.faces)
        return self.kinds.name(family, look.own, look.mirror, first=name if family == INNER else "")

    def _leaf(self, node: Node) -> Leaf:
        return self.found.leaves[min(node.faces)]

    def _held(self, leaf: Leaf) -> dict[str, Any]:
        if leaf.section:
            return {"section": leaf.section, "held_specs": leaf.specs}
        return {"spec": leaf.specs[0]}

    def _name(self, node: Node, among: list[Node], join: str) -> str:
        """Return what parts of a unit are called that have parts themselves."""
        if node is not self.found.tree:
            return "unit"
        sizes = {self._extent(n) for n in among}
        if len(among) == 2 and len(sizes) == 1 and join in _LINES:
            return f"half {self.whole}"
        return f"{self.whole} {_LINES[join]}" if join in _LINES else "unit"

    def _leaf_name(self, node: Node, name: str) -> tuple[str, str]:
        """Return the name and the family of a part."""
        if node.parts:
            return name, INNER
        leaf = self._leaf(node)
        if leaf.section:
            return "section", f"section {leaf.section}"
        return "patch", f"patch {self.found.block.patches[leaf.specs[0]].fabric}"

    def _extent(self, node: Node) -> tuple[int, int]:
        xs, ys = zip(*(w.start for w in self.planar.outline(node.faces)), strict=True)
        return max(xs) - min(xs), max(ys) - min(ys)

    def _join(self, seams: tuple[Seam, ...], frame: int) -> str:
        if any(seam.corners for seam in seams):
            return "set in"
        headings = {seam.heading for seam in seams}
        if len(headings) > 1 or None in headings:
            return "curve"
        way = direction(next(iter(headings)) or LEVEL, self.turn - frame)
        return {LEVEL: "down", UPRIGHT: "across"}.get((abs(way[0]), abs(way[1])), "slant")

    def _in_order(self, node: Node, seams: tuple[Seam, ...], join: str, frame: int) -> list[Node]:
        """Return the parts as the frame shows them, or what is sewn to before what is sewn on."""
        nodes = list(node.parts)
        if join == "set in":
            return nodes
        if join == "curve":
            bend = next(w.bend for w in seams[0].path if w.bend)
            return nodes[::-1] if bend[2] else nodes  # the bulging part comes first
        one, two = self._area(nodes[0]), self._area(nodes[-1])
        if join == "slant" and len(nodes) == 2 and one != two:
            return nodes if one > two else nodes[::-1]
        (x, y), (u, v) = (self._middle(n, frame) for n in (nodes[0], nodes[-1]))
        if join == "across":
            return nodes if x < u else nodes[::-1]
        return nodes if (y, x) < (v, u) else nodes[::-1]

    def _middle(self, node: Node, frame: int) -> Point:
        """Return the middle of a node's box in a frame."""
        ring = tuple(self._placed(w.start) for w in self.planar.outline(node.faces))
        left, top, right, bottom = box_of(ring, frame)
        return left + right, top + bottom

    def _area(self, node: Node) -> int:
        ways = self.planar.outline(node.faces)
        return sum(w.start[0] * w.end[1] - w.end[0] * w.start[1] for w in ways)

    def _settled(self, nodes: list[Node], seams: tuple[Seam, ...]) -> tuple[int, ...]:
        """Return how seams are pressed where two equal triangles are sewn on either side."""
        if len(nodes) != 3 or any(seam.heading is None for seam in seams):
            return ()
        ends = nodes[0], nodes[2]
        if any(n.parts or len(self.planar.outline(n.faces)) != 3 for n in ends):
            return ()
        first, last = (self.order.look(n.faces) for n in ends)
        return (TOWARDS_FIRST, TOWARDS_LAST) if first.own == last.own else ()

    def _stitched(self, before: Node, after: Node) -> Iterator[Stitched]:
        path = seam_path(self.planar, before.faces, after.faces)
        if path:
            yield Stitched(
                self._placed(path[0].start),
                direction(path[0].leaves, self.turn),
                self._placed(path[-1].end),
                direction(path[-1].arrives, self.turn),
            )

    def _placed(self, spot: Spot | tuple[Fraction, Fraction]) -> Point:
        scale = self.planar.scale
        return turned((Fraction(spot[0]) / scale, Fraction(spot[1]) / scale), self.turn)

    def _through(self, way: Way) -> Point:
        """Return a point of an arc near its middle, exactly on its circle.

        The line from the start in any rational direction meets the circle again in a
        rational point, so the direction of the middle need not be exact.
        """
        assert way.bend is not None
        x, y, right = way.bend
        (a, b), (c, d) = way.start, way.end
        begin, end = atan2(b - y, a - x), atan2(d - y, c - x)
        sweep = (end - begin) % (2 * pi) if right else -((begin - end) % (2 * pi))
        radius, half = sqrt((a - x) ** 2 + (b - y) ** 2), begin + sweep / 2
        across, down = x + radius * cos(half) - a, y + radius * sin(half) - b
        most = max(abs(across), abs(down))
        u, v = Fraction(round(across / most * FINE)), Fraction(round(down / most * FINE))
        share = -2 * ((a - x) * u + (b - y) * v) / (u * u + v * v)
        return self._placed((a + share * u, b + share * v))


INNER = "part of a block"
"""The family of all that is joined below a block: a row of a block is a column of one that
lies turned, and may be a unit of another."""
_LINES = {"down": "row", "across": "column"}


def _frame(ways: tuple[Way, ...], seams: tuple[Seam, ...]) -> int:
    """Return 45 for what lies straight when turned by 45 degrees, else 0."""
    straight = all(w.bend is None for w in ways)
    if len(ways) == 4 and straight:
        for frame, along in ((0, _level), (45, _diagonal)):
            if all(map(along, ways)):
                return frame
    headings = {seam.heading for seam in seams}
    if headings and None not in headings:
        return 45 if all(h is not None and abs(h[0]) == abs(h[1]) for h in headings) else 0
    lengths = [(abs(w.end[0] - w.start[0]) + abs(w.end[1] - w.start[1]), w) for w in ways]
    level = sum(n for n, w in lengths if _level(w))
    return 45 if sum(n / sqrt(2) for n, w in lengths if _diagonal(w)) > level else 0


def _level(way: Way) -> bool:
    return way.bend is None and (way.start[0] == way.end[0] or way.start[1] == way.end[1])


def _diagonal(way: Way) -> bool:
    across, down = way.end[0] - way.start[0], way.end[1] - way.start[1]
    return way.bend is None and abs(across) == abs(down)
