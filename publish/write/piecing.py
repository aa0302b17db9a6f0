"""Sewing patches into grounds and pieced blocks, before any appliqué.

In: seam trees, plans. Out: the section, one child for each size when several are pieced.
Invariant: every unit below a block is made once, with its count; the size that a unit
should measure is the sum of its cut pieces less the seams.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.words import Section
from publish.write.by_size import per_size
from publish.write.context import Book
from publish.write.phrase import capital, measure, number, rectangle, stitch
from publish.write.practice import PIECING_STITCH
from publish.write.steps import StepList, figure
from publish.write.tree import Group, at_level, numbered, parts_text, patches, press_text, sewn_size


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on piecing; none when every ground is whole cloth."""
    keys = [k for k in book.keys if at_level(book.drafts[k].assembly, "block")]
    lead = (
        f"Sew with a {measure(book.pattern.sewing.seam)} seam and a stitch about "
        f"{stitch(PIECING_STITCH.value)} long, and press each seam before it is crossed by "
        "another."
    )
    title = "Piecing the ground" if book.motifs else "Piecing the blocks"
    return per_size(book, "piecing", title, lead, keys, _steps)


def _steps(book: Book, key: str, steps: StepList) -> None:
    for group in at_level(book.drafts[key].assembly, "block"):
        _unit(book, key, group, steps)


_LAID = {
    "across": "side by side, from left to right",
    "down": "one below the other, from the top",
    "slant": "along their slanting edges",
}
_LOCK = ", so that they lock where neighbours meet"
_SET_IN = (
    " Where the patches meet at an inside corner, sew each seam from point to point, stop one "
    "seam allowance from the corner, turn the cloth and go on with the next side."
)


def _unit(book: Book, key: str, group: Group, steps: StepList) -> None:
    unit = group.unit
    many = len(group.units)
    how = _LAID.get(unit.join or "", "as in the picture")
    make = f" Make {number(many)}." if many > 1 else ""
    size = sewn_size(book, key, unit)
    name = unit.name if numbered(unit) else f"the {unit.name}"
    measures = f"{capital(name)} measures {rectangle(*size)}." if size is not None else ""
    set_in = _SET_IN if unit.join == "set in" else ""
    after = " It is trimmed after the appliqué." if _carries_motif(book, key, unit) else ""
    steps.add(
        unit.kind,
        f"{_block(book, key, group)} {parts_text(book, key, unit)} {how}. {_turned(unit)}"
        f"Put {_first(len(unit.parts))} right sides together, edges level, and sew"
        f"{_onwards(len(unit.parts))}.{set_in} {press_text(book, group, _LOCK)}{make}",
        sizes=[key],
        right=f"{measures}{after}".strip(),
        figure=figure(
            "units", key, f"{capital(unit.name)}: the parts, and how they look when joined.",
            unit=unit.kind,
        ),
    )  # fmt: skip


def _block(book: Book, key: str, group: Group) -> str:
    """Return the first words of a step, naming the block where a size has several."""
    pieced = [b for b in book.blocks(key) if book.pieced(b)]
    homes = {p.block for unit in group.units for p in patches(unit) if p.block is not None}
    if len(pieced) < 2 or len(homes) > 1:
        return "Lay out"
    return f"For the {book.block_name(homes.pop())}, lay out"


def _turned(unit: Unit) -> str:
    """Say that like parts are turned, where the same unit lies in two ways."""
    lying: dict[str, set[frozenset[object]]] = {}
    for part in unit.parts:
        left, top, _, _ = part.box
        spots = frozenset((p.fabric, p.box[0] - left, p.box[1] - top) for p in patches(part))
        lying.setdefault(part.kind, set()).add(spots)
    turned = any(len(ways) > 1 for ways in lying.values())
    return "Turn them as in the picture. " if turned else ""


def _first(parts: int) -> str:
    return "the first two" if parts > 2 else "them"


def _onwards(parts: int) -> str:
    return ", then add the next in the same way until the last is on" if parts > 2 else ""


def _carries_motif(book: Book, key: str, unit: Unit) -> bool:
    """Return whether a unit is the whole ground of a block that carries a motif."""
    side = book.sizes[key].block_side
    block = patches(unit)[0].block
    whole = (unit.width, unit.height) == (side, side)
    return whole and block is not None and book.block(block).motif is not None
