"""Sewing blocks into rows and rows into the centre of the top.

In: seam trees. Out: the section, or nothing for tops of one block.
Invariant: rows are numbered as in the picture; pressing directions come from the tree,
so that the seams of neighbouring rows nest.
"""

from __future__ import annotations

from itertools import pairwise

from publish.model.draft import Unit
from publish.model.words import Section
from publish.surd import Length
from publish.words.en.phrase import capital, counted, listed, rectangle
from publish.write import on_point
from publish.write.bench import Bench
from publish.write.by_size import per_size
from publish.write.context import Book
from publish.write.pressing import press_text, press_way
from publish.write.sewn import raw_size
from publish.write.steps import StepList, figure
from publish.write.tree import TOP, Group, numbered


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on assembling; none when every top is a single block."""
    keys = [k for k in book.keys if Bench(book, k).at(TOP)]
    blocks = "Trimmed blocks" if book.motifs else "Blocks"
    lead = f"{blocks} of one size go together without easing. Take care at the crossings."
    return per_size(book, "assembling", "Assembling the top", lead, keys, _steps)


_NEST = ", so that neighbouring rows lock together"


def _steps(book: Book, key: str, steps: StepList) -> None:
    bench = Bench(book, key)
    if book.sizes[key].on_point:
        on_point.add(bench, steps)
        return
    _lay_out(bench, steps)
    for group in bench.at(TOP):
        _join(bench, group, steps)


def _lay_out(bench: Bench, steps: StepList) -> None:
    book, key = bench.book, bench.key
    size = book.sizes[key]
    middle = {b for row in size.arrangement for b in row}
    which = (
        " Check each kind of block against its place in the picture." if len(middle) > 1 else
        " Turn each block so that it lies as in the picture."
        if any(book.pieced(b) for b in middle) else ""
    )  # fmt: skip
    if _pressed_two_ways(bench):
        which += " Put blocks that are pressed opposite ways next to each other."
    steps.add(
        "lay-out",
        f"Lay out the {counted(size.block_count, 'block')} on the floor or a design wall: "
        f"{counted(size.rows, 'row')} of {counted(size.columns, 'block')}{_between(bench)}.{which} "
        "Number the rows from the top with a pinned slip of paper.",
        sizes=[key],
        figure=figure(
            "setting" if size.sashing else "rows",
            key,
            f"{size.title}: the rows, numbered from the top.",
        ),
    )


def _between(bench: Bench) -> str:
    """Say what lies between the blocks."""
    sashing = bench.book.sizes[bench.key].sashing
    if sashing is None:
        return ""
    strips = f"sashing strips of {bench.book.fabric(sashing.fabric)}"
    if sashing.cornerstones is None:
        return f", with {strips} between them"
    stones = f"cornerstones of {bench.book.fabric(sashing.cornerstones)}"
    return f", with {strips} between them and {stones} where the strips meet"


def _pressed_two_ways(bench: Bench) -> bool:
    """Return whether like blocks differ in how their own last seam is pressed."""
    return any(
        len({press_way(bench, u) for u in group.units}) > 1
        for group in bench.groups
        if bench.is_block(group.unit)
    )


def _join(bench: Bench, group: Group, steps: StepList) -> None:
    unit = group.unit
    across = unit.join == "across"
    crossing = not across and any(a.parts and b.parts for a, b in pairwise(unit.parts))
    through = not across and any(p.patch is not None for p in unit.parts[1:-1])
    what = f"For {_together(group.names)}, sew" if len(group.names) > 1 else (
        f"For the {unit.name}, sew" if not numbered(unit) else f"For {unit.name}, sew")  # fmt: skip
    how = "together side by side" if across else "together, from the top down"
    pins = (
        " Pin at every crossing first: the allowances lie opposite ways and lock against each "
        "other."
        if crossing
        else " Mark on each long strip where the seams of the first row end, so that the short "
        "strips of the next row carry on in line."
        if through
        else ""
    )
    right = _measures(bench, group)
    steps.add(
        unit.kind,
        f"{what} {bench.parts_text(unit)} {how}, right sides facing.{pins} "
        f"{press_text(bench, group, _NEST)}",
        sizes=[bench.key],
        right=right + (" The seams meet in clean crosses." if crossing else ""),
    )


def _together(names: tuple[str, ...]) -> str:
    """Return `rows 1 and 3` for names that differ in their number alone."""
    bases = {name.rsplit(" ", 1)[0] for name in names}
    numbers = [name.rsplit(" ", 1)[-1] for name in names]
    if len(bases) == 1 and all(n.isdigit() for n in numbers):
        return f"{bases.pop()}s {listed(numbers)}"
    return listed(list(names))


def _measures(bench: Bench, group: Group) -> str:
    """Return what each unit of a group measures; those that measure alike share a phrase."""
    found: dict[tuple[Length, Length], list[str]] = {}
    for unit in group.units:
        found.setdefault(raw_size(bench.book, bench.key, unit), []).append(_the(unit))
    if len(found) == 1:
        who = "each measures" if len(group.units) > 1 else f"{_the(group.unit)} measures"
        return f"{capital(who)} {rectangle(*next(iter(found)))}."
    told = [f"{listed(names)} {'measures' if len(names) == 1 else 'measure'} {rectangle(*size)}"
            for size, names in found.items()]  # fmt: skip
    return f"{capital(listed(told))}."


def _the(unit: Unit) -> str:
    return unit.name if numbered(unit) else f"the {unit.name}"
