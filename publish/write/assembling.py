"""Sewing blocks into rows and rows into the centre of the top.

In: seam trees. Out: the section, or nothing for tops of one block.
Invariant: rows are numbered as in the picture; pressing directions come from the tree,
so that the seams of neighbouring rows nest.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import Unit
from publish.model.words import Section
from publish.write.by_size import per_size
from publish.write.context import Book
from publish.write.phrase import capital, counted, listed, rectangle
from publish.write.steps import StepList, figure
from publish.write.tree import (
    Group,
    at_level,
    numbered,
    parts_text,
    press_text,
    press_way,
    raw_size,
)


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on assembling; none when every top is a single block."""
    keys = [k for k in book.keys if at_level(book.drafts[k].assembly, "top")]
    blocks = "Trimmed blocks" if book.motifs else "Blocks"
    lead = f"{blocks} of one size go together without easing. Take care at the crossings."
    return per_size(book, "assembling", "Assembling the top", lead, keys, _steps)


_NEST = ", so that neighbouring rows lock together"


def _steps(book: Book, key: str, steps: StepList) -> None:
    size = book.sizes[key]
    kinds = len(book.blocks(key))
    which = (
        " Check each kind of block against its place in the picture." if kinds > 1 else
        " Turn each block so that its ground lies as in the picture."
        if any(book.pieced(b) for b in book.blocks(key)) else ""
    )  # fmt: skip
    if _pressed_two_ways(book, key):
        which += " Put blocks that are pressed opposite ways next to each other."
    steps.add(
        "lay-out",
        f"Lay out the {counted(size.block_count, 'block')} on the floor or a design wall: "
        f"{counted(size.rows, 'row')} of {counted(size.columns, 'block')}.{which} Number the rows "
        "from the top with a pinned slip of paper.",
        sizes=[key],
        figure=figure("rows", key, f"{size.title}: the rows, numbered from the top."),
    )
    for group in at_level(book.drafts[key].assembly, "top"):
        _join(book, key, group, steps)


def _pressed_two_ways(book: Book, key: str) -> bool:
    """Return whether like blocks differ in how their own last seam is pressed."""
    whole = (book.sizes[key].block_side,) * 2
    return any(
        len({press_way(book, u) for u in group.units}) > 1
        for group in at_level(book.drafts[key].assembly, "block")
        if (group.unit.width, group.unit.height) == whole
    )


def _join(book: Book, key: str, group: Group, steps: StepList) -> None:
    unit = group.unit
    across = unit.join == "across"
    crossing = any(p.parts and p.join != unit.join for p in unit.parts) and not across
    what = f"For {listed(list(group.names))}, sew" if len(group.names) > 1 else (
        f"For the {unit.name}, sew" if not numbered(unit) else f"For {unit.name}, sew")  # fmt: skip
    how = "together side by side" if across else "together, from the top down"
    pins = (
        " Pin at every crossing first: the allowances lie opposite ways and lock against each "
        "other."
        if crossing
        else ""
    )
    right = _measures(book, key, group)
    steps.add(
        unit.kind,
        f"{what} {parts_text(book, key, unit)} {how}, right sides facing.{pins} "
        f"{press_text(book, group, _NEST)}",
        sizes=[key],
        right=right + (" The seams meet in clean crosses." if crossing else ""),
    )


def _measures(book: Book, key: str, group: Group) -> str:
    """Return what each unit of a group measures; those that measure alike share a phrase."""
    found: dict[tuple[Fraction, Fraction], list[str]] = {}
    for unit in group.units:
        found.setdefault(raw_size(book, key, unit), []).append(_the(unit))
    if len(found) == 1:
        who = "each measures" if len(group.units) > 1 else f"{_the(group.unit)} measures"
        return f"{capital(who)} {rectangle(*next(iter(found)))}."
    told = [f"{listed(names)} {'measures' if len(names) == 1 else 'measure'} {rectangle(*size)}"
            for size, names in found.items()]  # fmt: skip
    return f"{capital(listed(told))}."


def _the(unit: Unit) -> str:
    return unit.name if numbered(unit) else f"the {unit.name}"
