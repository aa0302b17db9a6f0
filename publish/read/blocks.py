"""Blocks made flat: shapes, blocks within blocks and traditional blocks become patches.

In: the values of `blocks` that hold, and the ledger. Out: `FlatBlock`s; notes.
Invariant: a block of which anything is amiss comes out as None once its notes are made,
and so, without more notes, does every block that it is set into.
"""

from __future__ import annotations

import functools
from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from publish.model.block import Foundation, PatchSpec
from publish.notes import Severity
from publish.read.characters import shown
from publish.read.curves import edges
from publish.read.fit import Fit
from publish.read.flat import FlatBlock, flat_ground
from publish.read.foundations import check_names, foundations
from publish.read.ledger import Ledger
from publish.read.library import trade_roles, trade_values
from publish.read.nesting import Setting, set_in, stretched_note
from publish.read.patches import at_text, outside_note, patch_shape, stays_inside
from publish.read.roles import check_swaps, in_fabrics, roles_filled

Values = Mapping[str, Any]

DEEPEST = 8
MOST_PATCHES = 1000
MOST_IN_ALL = 8000
"""Patches of all the blocks of one file together."""


class Blocks:
    """Makes blocks flat, each once. `find` gives the values written for a block's key."""

    def __init__(self, find: Callable[[str], Values | None], ledger: Ledger) -> None:
        self.find, self.ledger = find, ledger
        self.done: dict[str, FlatBlock | None] = {}
        self.open: list[str] = []
        self.count = 0

    def flat(self, key: str) -> FlatBlock | None:
        """Return a block made flat, or None when it cannot be made or is not there."""
        if key not in self.done:
            values = self.find(key)
            self.open.append(key)
            self.done[key] = self._flat(key, values) if values is not None else None
            self.open.pop()
        return self.done[key]

    def _flat(self, key: str, values: Values) -> FlatBlock | None:
        if "traditional" in values:
            block = self._traditional(key, values)
        elif "patches" in values:
            block = self._patched(key, values) if "grid" in values else None
        else:
            block = flat_ground(values.get("ground"))
        if block is None:
            return None
        own = foundations(block.patches, values.get("foundation"), key, self.ledger)
        return replace(block, foundations=own or block.foundations)

    def _traditional(self, key: str, values: Values) -> FlatBlock | None:
        """Return a block of the library in the designer's fabrics."""
        name, fabrics = values["traditional"], values.get("fabrics")
        block = trade_block(name)
        if block is None or fabrics is None:
            return None
        if not roles_filled(fabrics, trade_roles(name), name, key, self.ledger):
            return None
        return replace(block, patches=in_fabrics(block.patches, fabrics))

    def _patched(self, key: str, values: Values) -> FlatBlock | None:
        """Return a block of patches, checked one by one and then together."""
        found: list[PatchSpec] = []
        inherited: list[Foundation] = []
        sound = inside = True
        depth = 1
        for number, item in enumerate(values["patches"] if self.count <= MOST_IN_ALL else ()):
            part = self._item(key, number, item, values["grid"])
            if part is None:
                sound = False
                continue
            block, stays = part
            inside = inside and stays
            moved = [tuple(len(found) + n for n in f.patches) for f in block.foundations]
            inherited += [
                Foundation(m, f.in_order) for m, f in zip(moved, block.foundations, strict=True)
            ]
            found += [replace(p, item=number) for p in block.patches]
            if len(found) > MOST_PATCHES:
                break
            depth = max(depth, block.depth + 1 if "block" in item else 1)
        columns, rows = values["grid"]
        flat = FlatBlock(columns, rows, tuple(found), tuple(inherited), depth)
        if not sound or not self._bounded(flat, key):
            return None
        check_names(flat.patches, key, self.ledger)
        fits = Fit(key, flat.patches, flat.columns, flat.rows, self.ledger).check(inside)
        return flat if fits and inside else None

    def _bounded(self, flat: FlatBlock, key: str) -> bool:
        """Return whether blocks are of a size that can be worked with; note it if not."""
        before, self.count = self.count, self.count + len(flat.patches)
        if before > MOST_IN_ALL:
            return False  # the block before this one has the note
        if flat.depth > DEEPEST:
            what, received = "blocks stand too deep within each other", f"{flat.depth} deep"
        elif len(flat.patches) > MOST_PATCHES:
            what, received = "the block has too many patches", f"{len(flat.patches)} patches"
        elif self.count > MOST_IN_ALL:
            what, received = "the blocks have too many patches", f"{self.count} patches by here"
        else:
            return True
        self.ledger.note(
            "R158",
            self.ledger.place("blocks", key, "patches"),
            what,
            expected=f"at most {DEEPEST} blocks deep, {MOST_PATCHES} patches in a block and "
            f"{MOST_IN_ALL} in all",
            received=received,
            help="make the blocks smaller, and repeat them with `columns` and `rows`",
        )
        return False

    def _item(
        self, key: str, number: int, item: Values, grid: tuple[int, int]
    ) -> tuple[FlatBlock, bool] | None:
        """Return what one item adds to a block, and whether it stays on the block's grid."""
        path = ("blocks", key, "patches", str(number))
        if "block" in item:
            return self._inner(item, path, grid)
        found = patch_shape(item, path, self.ledger)
        if found is None or "fabric" not in item:
            return None
        patch = PatchSpec(found[0], item["fabric"], found[1], item.get("name", ""), number)
        around = edges(patch.ring, patch.arcs)
        inside = stays_inside(around, grid, self.ledger.place(*path), self.ledger)
        return FlatBlock(*grid, (patch,)), inside

    def _inner(
        self, item: Values, path: tuple[str, ...], grid: tuple[int, int]
    ) -> tuple[FlatBlock, bool] | None:
        """Return a block that is set into another, in place."""
        if item["block"] in self.open:
            self._circle(item["block"], path)
            return None
        block = self.flat(item["block"])
        if block is None or "at" not in item:
            return None
        setting = Setting(
            block.columns,
            block.rows,
            item.get("turn", 0),
            item.get("mirror", False),
            item["at"],
            item.get("size"),
        )
        if not self._settable(block, setting, path):
            return None
        fabrics = item.get("fabrics", {})
        check_swaps(fabrics, block.patches, item["block"], path, self.ledger)
        name = f"{item['name']}." if "name" in item else ""
        patches = tuple(
            replace(p, name=f"{name}{p.name}" if name and p.name else "")
            for p in in_fabrics(set_in(block.patches, setting), fabrics)
        )
        return replace(block, patches=patches), self._inside(setting, path, grid)

    def _circle(self, inner: str, path: tuple[str, ...]) -> None:
        way = [*self.open[self.open.index(inner) :], inner]
        self.ledger.note(
            "R157",
            self.ledger.place(*path, "block"),
            f"the block `{shown(inner)}` stands within itself",
            expected="a block that does not hold this one",
            received=" > ".join(way),
            help="set another block here",
        )

    def _settable(self, block: FlatBlock, setting: Setting, path: tuple[str, ...]) -> bool:
        """Return whether a block can fill the size it is given; note it if not."""
        if not all(setting.extent):
            self.ledger.note(
                "R152",
                self.ledger.place(*path, "size"),
                "the block within the block has no area",
                expected="a width and a height above 0",
                received=at_text(*setting.extent),
                help="write how many grid squares it fills, or remove `size`",
            )
            return False
        if block.curved and setting.stretched:
            stretched_note(self.ledger, self.ledger.place(*path, "size"), at_text(*setting.extent))
            return False
        if setting.stretched and setting.size is not None:
            self.ledger.note(
                "R166",
                self.ledger.place(*path, "size"),
                "the block within the block is stretched: its squares become oblong",
                expected=f"the proportion of its own grid, {block.columns} by {block.rows}",
                received=at_text(*setting.extent),
                help="write a width and a height in that proportion, or accept it with a reason",
                severity=Severity.WARNING,
            )
        return True

    def _inside(self, setting: Setting, path: tuple[str, ...], grid: tuple[int, int]) -> bool:
        (left, top), (width, height) = setting.at, setting.extent
        if 0 <= left <= left + width <= grid[0] and 0 <= top <= top + height <= grid[1]:
            return True
        outside_note(
            self.ledger,
            self.ledger.place(*path, "at"),
            "the block within the block",
            grid,
            f"from {at_text(left, top)} to {at_text(left + width, top + height)}",
        )
        return False


@functools.cache
def trade_block(name: str) -> FlatBlock | None:
    """Return a traditional block with its roles as fabrics; None when there is none."""
    ledger = Ledger("", [], Path())
    block = Blocks(trade_values, ledger).flat(name)
    assert not ledger.notes, ledger.notes
    return block
