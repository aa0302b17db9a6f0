"""The sewing order of one block, worked out once for all of its homes.

In: a block, its finished side, what of it is sewn on foundations. Out: a `BlockOrder`: the
map of the block and the tree that sews it.
Invariant: a tree has each patch of the block in it once, a foundation section as one leaf.

A block that another block is set into is sewn first and then treated as one piece, unless
that would cost set-in seams which the patches by themselves do not.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.draft.homes import block_shapes
from publish.draft.order import Known, Node, Order, set_in_seams
from publish.draft.paths import Faces
from publish.draft.planar import Planar, Sewable
from publish.model.block import Block


@dataclass(frozen=True, eq=False)
class Leaf:
    """What is sewn as one: patches of a block, several only of a foundation section."""

    specs: tuple[int, ...]
    section: str = ""


Sections = dict[tuple[str, Fraction], tuple[Leaf, ...]]
"""The foundation sections of a block at one finished side."""


@dataclass(frozen=True, eq=False)
class BlockOrder:
    """A block's map, in inches from its middle; the leaf of each face; the tree."""

    block: Block
    side: Fraction
    order: Order
    leaves: tuple[Leaf, ...]
    tree: Node

    @property
    def closed_in(self) -> bool:
        """Return whether parts were left that no seam comes between."""
        return any(
            len(n.parts) > 2 and any(s.corners for s in self.order.seams(n))
            for n in self.tree.every()
        )


def block_order(
    block: Block, side: Fraction, sections: tuple[Leaf, ...], like: Known
) -> BlockOrder:
    """Return how a block of a finished side is sewn; `like` is shared by blocks of a top."""
    taken = {n for leaf in sections for n in leaf.specs}
    singles = [Leaf((n,)) for n in range(len(block.patches)) if n not in taken]
    leaves = tuple(sorted((*sections, *singles), key=lambda leaf: min(leaf.specs)))
    order = Order(block_map(block, side, leaves), like)
    return BlockOrder(block, side, order, leaves, _tree(order, _nested(block, leaves)))


def patch_map(block: Block, side: Fraction) -> Planar:
    """Return the map of a block's patches."""
    return Planar(
        [
            Sewable(ring, arcs, ((spec.fabric, ring, arcs),))
            for spec, (ring, arcs) in zip(block.patches, block_shapes(block, side, 0), strict=True)
        ]
    )


def block_map(block: Block, side: Fraction, leaves: tuple[Leaf, ...]) -> Planar:
    """Return the map of what a block is sewn from."""
    patches = patch_map(block, side)
    if all(len(leaf.specs) == 1 for leaf in leaves):
        return patches
    found = patches.coarser([frozenset(leaf.specs) for leaf in leaves])
    for face, leaf in enumerate(leaves):
        if leaf.section:  # sections differ that are sewn in another order
            found.figures[face] = [
                (f"{label} {place}", ways)
                for place, n in enumerate(leaf.specs)
                for label, ways in patches.figures[n]
            ]
    return found


def _nested(block: Block, leaves: tuple[Leaf, ...]) -> list[Faces]:
    """Return the faces of a map by the item of the block that they are written in."""
    groups: dict[object, set[int]] = {}
    for face, leaf in enumerate(leaves):
        items = {block.patches[n].item for n in leaf.specs}
        item = items.pop() if len(items) == 1 else None
        groups.setdefault(("alone", face) if item is None else item, set()).add(face)
    return [frozenset(group) for group in groups.values()]


def _tree(order: Order, groups: list[Faces]) -> Node:
    """Return the best tree that keeps groups together, or a better one that does not."""
    if len(groups) in (1, len(order.planar.faces)):
        return order.take_apart()
    coarse = Order(order.planar.coarser(groups))
    tree = _expanded(coarse.take_apart(), order, groups)
    if set_in_seams(order, tree):
        flat = order.take_apart()
        if set_in_seams(order, flat) < set_in_seams(order, tree):
            return flat
    return order.settled(tree)


def _expanded(node: Node, order: Order, groups: list[Faces]) -> Node:
    """Return a tree of groups as a tree of what is in them."""
    faces = frozenset().union(*(groups[n] for n in node.faces))
    if not node.parts:
        return order.best(faces)
    return Node(faces, tuple(_expanded(part, order, groups) for part in node.parts))
