"""The seam tree of the top, with the names that the steps use.

In: the patches of a size. Out: the `Unit` that is the whole top, and notes.
Invariant: blocks are sewn before rows, rows before borders, borders from the inside out;
every patch is in the tree once; units that look alike when turned share a kind.

Names: `block`, `ground` (a pieced ground that a motif goes on), `half block`, `half
ground`, `ground row` and so on inside them; `row 1`, `row 2` ...; `centre`, the blocks
joined, when borders follow; `border 1 sides` and `border 1`; `top`. A top of one block
without borders is that block.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass, field

from publish.draft.press import pressing
from publish.draft.seams import Item, Node, sewn, take_apart
from publish.draft.topmap import Box, Ring, rectangle
from publish.model.draft import Patch, Unit
from publish.model.pattern import Pattern
from publish.notes import Note, warning


def assemble(pattern: Pattern, patches: tuple[Patch, ...]) -> tuple[Unit, tuple[Note, ...]]:
    """Return the seam tree of a top."""
    blocks: dict[tuple[int | None, int | None], list[Patch]] = {}
    for patch in patches:
        if patch.role == "ground":
            blocks.setdefault((patch.row, patch.column), []).append(patch)
    inside = {home: take_apart(_loose(found)) for home, found in blocks.items()}
    motifs = {b.key: b.motif for b in pattern.blocks.values()}
    items = [_block_item(found, motifs) for found in blocks.values()]
    items += [Item(p.ring, (p,), _border_number(p)) for p in patches if p.role == "border"]
    tree = _filled(take_apart(tuple(items)), inside)
    assert {p for i in sewn(tree) for p in i.patches} == set(patches)
    names = _Names(pressing(tree), motifs)
    return names.top(tree), tuple(_set_in(pattern, tree))


def _loose(patches: list[Patch]) -> tuple[Item, ...]:
    return tuple(Item(p.ring, (p,)) for p in patches)


def _block_item(patches: list[Patch], motifs: dict[str, str | None]) -> Item:
    boxes = [p.box for p in patches]
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    box: Box = min(lefts), min(tops), max(rights), max(bottoms)
    ring: Ring = rectangle(box)
    return Item(ring, tuple(patches), motif=motifs.get(patches[0].block or ""))


def _border_number(patch: Patch) -> int:
    return int(patch.key.split(" ")[1])


def _filled(node: Node, inside: dict[tuple[int | None, int | None], Node]) -> Node:
    """Return a tree of blocks with each block's own tree in place of it."""
    if node.item is None:
        return Node(node.join, tuple(_filled(part, inside) for part in node.parts))
    first = node.item.patches[0]
    own = inside.get((first.row, first.column)) if first.role == "ground" else None
    return node if own is None or own.item is not None else own


def _set_in(pattern: Pattern, tree: Node) -> list[Note]:
    """Say which blocks need set-in seams."""
    blocks = [
        n.items[0].patches[0].block or "" for n in tree.every() if n.join == "set in"
    ]  # fmt: skip
    return [
        warning("D340", pattern.place("blocks", key, "ground"),
                "these patches cannot be joined by straight seams alone",
                expected="seams that run from edge to edge",
                help="split a patch so that every seam runs straight, or sew these seams set in")
        for key in dict.fromkeys(blocks)
    ]  # fmt: skip


@dataclass
class _Names:
    """Turns nodes into units, and keeps one kind for units that look alike."""

    press: dict[Node, str]
    motifs: dict[str, str | None]
    kinds: dict[tuple[str, Hashable], str] = field(default_factory=dict)

    def top(self, tree: Node) -> Unit:
        layers = max(i.layer for i in tree.items)
        if layers:
            return self.bordered(tree, layers, "top")
        return self.blocks(tree, "top")

    def bordered(self, node: Node, layer: int, name: str) -> Unit:
        """Return a unit whose outermost border is `layer`."""
        inner = max((i.layer for i in node.items if i.layer < layer), default=0)
        parts = []
        for part in node.parts:
            layers = {i.layer for i in part.items}
            if part.item is not None and layers == {layer}:
                parts.append(self.strip(part, layer))
            elif layer in layers:
                parts.append(self.bordered(part, layer, f"border {layer} sides"))
            elif inner:
                parts.append(self.bordered(part, inner, f"border {inner}"))
            else:
                parts.append(self.blocks(part, "centre"))
        return self.unit(node, name, name, parts)

    def strip(self, node: Node, layer: int) -> Unit:
        assert node.item is not None
        name = node.item.patches[0].key
        side = "side" if name.endswith(("left", "right")) else "top"
        return self.unit(node, name, f"border {layer} {side}", [], f"border {layer}")

    def blocks(self, node: Node, name: str) -> Unit:
        """Return blocks joined: `name` is what the whole of them is called."""
        if self.one_block(node):
            return self.block(node)
        down = node.join == "down"
        parts = [
            self.block(part) if self.one_block(part)
            else self.blocks(part, f"{'row' if down else 'column'} {number}")
            for number, part in enumerate(node.parts, start=1)
        ]  # fmt: skip
        kind = name.split(" ")[0]
        return self.unit(node, name, kind, parts)

    def block(self, node: Node) -> Unit:
        key = node.items[0].patches[0].block or ""
        if node.item is not None:
            return self.unit(node, "block", f"block {key}", [])
        name = "ground" if self.motifs.get(key) else "block"
        return self.unit(node, name, f"{name} {key}", self.inside(node, name))

    def inside(self, node: Node, whole: str) -> list[Unit]:
        """Return the parts of a pieced block."""
        boxes = [p.box for p in node.parts]
        sizes = {(b[2] - b[0], b[3] - b[1]) for b in boxes}
        line = "row" if node.join == "down" else "column"
        name = f"half {whole}" if len(boxes) == 2 and len(sizes) == 1 else f"{whole} {line}"
        found = []
        for part in node.parts:
            if part.item is not None:
                fabric = part.item.patches[0].fabric
                found.append(self.unit(part, "patch", f"patch {fabric}", []))
            else:
                found.append(self.unit(part, name, name, self.inside(part, name)))
        return found

    def one_block(self, node: Node) -> bool:
        return len({(p.row, p.column) for i in node.items for p in i.patches}) == 1

    def unit(self, node: Node, name: str, kind: str, parts: list[Unit], family: str = "") -> Unit:
        """Return a unit; looking alike counts within one family of names."""
        mark = (family or kind, node.shape)
        if mark not in self.kinds:
            taken = set(self.kinds.values())
            number = 1
            while (label := kind if number == 1 else f"{kind}, {number}") in taken:
                number += 1
            self.kinds[mark] = label
        patch = None if node.item is None else node.item.patches[0]
        return Unit(self.kinds[mark], name, node.box, node.join, tuple(parts), patch,
                    self.press.get(node, ""))  # fmt: skip
