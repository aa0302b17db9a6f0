"""Sewing order: a map of patches taken apart seam by seam, until single faces are left.

In: a map. Out: a tree of `Node`s whose leaves are its faces.
Invariant: sewing the tree together again gives the map; units that look alike, turned or
mirrored, are taken apart alike.

A seam that runs from edge to edge without a corner is taken wherever there is one. Where
there is none, a unit is set in: of all ways to do that, the one with the fewest set-in
seams over the whole is taken, then the one with the fewest corners to pivot at. Among
equals, the tree with the fewest different units wins, then the one in fewer stages, then
the one in rows.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from dataclasses import dataclass, field

from publish.draft.looks import Look, look
from publish.draft.paths import Faces, Parts, Path, heading, parallel_parts, parted, paths
from publish.draft.planar import Planar, Spot, Way

MOST_CORNERS = 6
"""Of one set-in seam: more than any unit that can be pinned."""

MOST_TRIED = 20
"""Set-in seams compared for one unit, those with the fewest corners first."""

MOST_UNITS = 1500
"""Units weighed for one map; after that the first way found is taken."""


@dataclass(frozen=True, eq=False)
class Node:
    """A face, or parts in the order of sewing, each joined to the one before it."""

    faces: Faces
    parts: tuple[Node, ...] = ()

    def every(self) -> Iterator[Node]:
        """Yield this node and everything in it, parts before wholes."""
        for part in self.parts:
            yield from part.every()
        yield self


@dataclass(frozen=True)
class Seam:
    """The seam that joins a part to what comes before it, run along that part's outline."""

    path: Path

    @property
    def corners(self) -> int:
        """Return at how many corners it pivots; 1 where the parts do not meet in a seam."""
        if not self.path:
            return 1
        return sum(not a.goes_on(b) for a, b in zip(self.path, self.path[1:], strict=False))

    @property
    def heading(self) -> Spot | None:
        """Return the direction of a straight seam, None of any other."""
        if self.corners or any(w.bend for w in self.path):
            return None
        return heading(self.path[0])


@dataclass(frozen=True)
class _Cost:
    """What a tree costs; `looks` are those of its units."""

    set_in: int = 0
    corners: int = 0
    looks: frozenset[Hashable] = frozenset()
    depth: int = 0

    @property
    def key(self) -> tuple[int, int, int, int]:
        return self.set_in, self.corners, len(self.looks), self.depth


Known = dict[Hashable, tuple[Node, _Cost, Look]]
"""The best tree of a look, for faces in that look's order."""


@dataclass
class Order:
    """The sewing order of one map. `like` holds what is known of looks, which several maps
    may share, so that units that look alike are taken apart alike in all of them."""

    planar: Planar
    like: Known = field(default_factory=dict)
    nodes: dict[Faces, tuple[Node, _Cost]] = field(default_factory=dict)
    looks: dict[Faces, Look] = field(default_factory=dict)
    met: set[Hashable] = field(default_factory=set)
    """The looks of this map's own units."""
    weighed: int = 0

    def best(self, faces: Faces) -> Node:
        """Return the best tree for faces that make one piece of cloth."""
        return self._best(faces)[0]

    def take_apart(self) -> Node:
        """Return the best tree for the whole map."""
        return self._best(frozenset(range(len(self.planar.faces))))[0]

    def settled(self, node: Node) -> Node:
        """Return a tree found elsewhere with what is known of its units in their place, and
        know the others from now on."""
        if not node.parts:
            return node
        mine = self.look(node.faces)
        known = self.like.get(mine.either)
        if known is not None:
            return _renamed(known[0], dict(zip(known[2].faces, mine.faces, strict=True)))
        made = Node(node.faces, tuple(self.settled(part) for part in node.parts))
        self.like[mine.either] = (made, self._cost(made), mine)
        return made

    def look(self, faces: Faces) -> Look:
        """Return what faces look like together."""
        if faces not in self.looks:
            figures = ((n, f) for n in sorted(faces) for f in self.planar.figures[n])
            self.looks[faces] = look(self.planar.outline(faces), figures, self.planar.scale)
        return self.looks[faces]

    def seams(self, node: Node) -> tuple[Seam, ...]:
        """Return the seams that join a node's parts, in order."""
        found = []
        for number in range(1, len(node.parts)):
            before = node.parts[number - 1].faces
            path = seam_path(self.planar, before, node.parts[number].faces)
            found.append(Seam(path))
        return tuple(found)

    def _best(self, faces: Faces) -> tuple[Node, _Cost]:
        if len(faces) == 1:
            return Node(faces), _Cost()
        if faces not in self.nodes:
            self.nodes[faces] = self._weighed(faces)
        return self.nodes[faces]

    def _weighed(self, faces: Faces) -> tuple[Node, _Cost]:
        mine = self.look(faces)
        self.met.add(mine.either)
        known = self.like.get(mine.either)
        if known is not None:
            node, cost, other = known
            return _renamed(node, dict(zip(other.faces, mine.faces, strict=True))), cost
        best: tuple[Node, _Cost] | None = None
        for parts in self._ways(faces):
            self.weighed += 1
            found = self._joined(faces, parts)
            if best is None or found[1].key < best[1].key:
                best = found
            if self.weighed > MOST_UNITS:
                break
        assert best is not None
        self.like[mine.either] = (*best, mine)
        return best

    def _ways(self, faces: Faces) -> Iterator[Parts]:
        """Yield the ways to take faces apart that are worth weighing."""
        smooth = parallel_parts(self.planar, faces)
        if smooth:
            for parts in smooth:
                yield self._gathered(self._corners_last(parts))
            return
        tried: list[Path] = []
        for turns in range(1, MOST_CORNERS + 1):
            enough = bool(tried)
            tried += paths(self.planar, faces, turns)
            if enough:
                break
        for path in tried[:MOST_TRIED]:
            # What is set in is the smaller part, and comes after what it is set into.
            one, two = parted(self.planar, faces, path)
            yield (two, one) if len(one) < len(two) else (one, two)
        if not tried:  # a face shut in by others: nothing but the order is left to say
            yield tuple(frozenset({n}) for n in sorted(faces))

    def _corners_last(self, parts: Parts) -> Parts:
        """Return parts in a row with everything between two equal triangles taken together:
        what the triangles are the corners of is sewn before them."""
        first, last = parts[0], parts[-1]
        if len(parts) < 4 or len(first) > 1 or len(last) > 1:
            return parts
        if len(self.planar.outline(first)) != 3 or self.look(first).own != self.look(last).own:
            return parts
        return first, frozenset().union(*parts[1:-1]), last

    def _gathered(self, parts: Parts) -> Parts:
        """Return parts in a row, those taken together that make a unit the map has already:
        rails beside a square as the rails above it, not as patches of a longer row."""
        if len(parts) < 4:
            return parts
        found: list[Faces] = []
        at = 0
        while at < len(parts):
            for count in (3, 2, 1):
                group: Faces = frozenset().union(*parts[at : at + count])
                if count == 1 or (at + count <= len(parts) and self.look(group).either in self.met):
                    break
            found.append(group)
            at += count
        return tuple(found) if len(found) > 1 else parts

    def _joined(self, faces: Faces, parts: Parts) -> tuple[Node, _Cost]:
        made = [self._best(part) for part in parts]
        node = Node(faces, tuple(n for n, _ in made))
        return node, self._sum(node, [c for _, c in made])

    def _cost(self, node: Node) -> _Cost:
        if not node.parts:
            return _Cost()
        return self._sum(node, [self._cost(part) for part in node.parts])

    def _sum(self, node: Node, costs: list[_Cost]) -> _Cost:
        """Return what a node costs with its parts."""
        corners = [seam.corners for seam in self.seams(node)]
        return _Cost(
            sum(c.set_in for c in costs) + sum(1 for n in corners if n),
            sum(c.corners for c in costs) + sum(corners),
            frozenset({self.look(node.faces).own}).union(*(c.looks for c in costs)),
            1 + max(c.depth for c in costs),
        )


def set_in_seams(order: Order, node: Node) -> int:
    """Return how many seams of a tree pivot at a corner."""
    return sum(1 for n in node.every() for seam in order.seams(n) if seam.corners)


def seam_path(planar: Planar, before: Faces, after: Faces) -> Path:
    """Return the edges that two parts share, run along the outline of the second."""
    shared = {
        w.start: w
        for n in sorted(after)
        for w in planar.faces[n]
        if planar.owner.get(w.back) in before
    }
    ends = {w.end for w in shared.values()}
    start = next((spot for spot in shared if spot not in ends), None)
    found: list[Way] = []
    while start in shared:
        found.append(shared.pop(start))
        start = found[-1].end
    return tuple(found)


def _renamed(node: Node, names: dict[int, int]) -> Node:
    """Return a tree for faces that lie as those of another tree do."""
    faces = frozenset(names[n] for n in node.faces)
    return Node(faces, tuple(_renamed(part, names) for part in node.parts))
