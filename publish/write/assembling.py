"""Sewing blocks into rows and rows into the centre of the top.

In: seam trees. Out: the section, or nothing for tops of one block.
Invariant: rows are numbered as in the picture; pressing directions come from the tree,
so that the seams of neighbouring rows nest.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.size import Size
from publish.model.words import Section
from publish.surd import Length
from publish.words.en.phrase import capital, counted, listed, plural, rectangle
from publish.write import on_point
from publish.write.bench import Bench
from publish.write.by_size import per_size
from publish.write.context import Book
from publish.write.meeting import meets
from publish.write.pressing import press_text, told
from publish.write.sewn import sewn_size
from publish.write.steps import StepList, figure
from publish.write.tree import TOP, Group, together


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on assembling; none when every top is a single block."""
    keys = [k for k in book.keys if Bench(book, k).at(TOP)]
    blocks = "Trimmed blocks" if book.motifs else "Blocks"
    lead = f"{blocks} of one size fit without easing. Match the seams."
    return per_size(book, "assembling", "Assembling the top", lead, keys, _steps)


_NEST = ", so that neighbouring rows lock together"


def _steps(book: Book, key: str, steps: StepList) -> None:
    bench = Bench(book, key)
    if book.sizes[key].on_point:
        on_point.add(bench, steps)
        return
    _lay_out(bench, steps)
    seen: set[str] = set()
    for group in bench.at(TOP):
        _join(bench, group, steps, group.unit.name if group.unit.kind in seen else group.unit.kind)
        seen.add(group.unit.kind)


def _lay_out(bench: Bench, steps: StepList) -> None:
    book, key = bench.book, bench.key
    size = book.sizes[key]
    middle = {b for row in size.arrangement for b in row}
    which = (
        "" if size.block_count == 1 else
        " Check each kind of block against its place in the picture." if len(middle) > 1 else
        " Turn each block so that it lies as in the picture."
        if any(book.pieced(b) for b in middle) else ""
    )  # fmt: skip
    which += _lying(bench)
    rows = " Number the rows from the top on slips of paper and pin them." if size.rows > 1 else ""
    steps.add(
        "lay-out",
        f"Lay out the {_blocks_of(size)} on the floor or a design wall{_between(bench)}."
        f"{which}{rows}",
        sizes=[key],
        figure=figure(
            "setting" if size.sashing else "rows",
            key,
            f"{size.title}: the rows, numbered from the top.",
        ),
    )


def _blocks_of(size: Size) -> str:
    """Return `block`, `four blocks in one row`, `12 blocks in three rows of four blocks`."""
    if size.block_count == 1:
        return "block"
    blocks = counted(size.block_count, "block")
    if size.rows == 1:
        return f"{blocks} in one row"
    if size.columns == 1:
        return f"{blocks} in one column"
    return f"{blocks} in {counted(size.rows, 'row')} of {counted(size.columns, 'block')}"


def _between(bench: Bench) -> str:
    """Say what lies between and round the blocks."""
    size = bench.book.sizes[bench.key]
    sashing = size.sashing
    if sashing is None:
        return ""
    where = "around it" if size.block_count == 1 else (
        "between and around them" if sashing.outer else "between them")  # fmt: skip
    strips = f"with sashing strips of {bench.book.fabric(sashing.fabric)} {where}"
    if sashing.cornerstones is None or not (sashing.outer or min(size.rows, size.columns) > 1):
        return f", {strips}"
    stones = f"cornerstones of {bench.book.fabric(sashing.cornerstones)}"
    return f", {strips} and {stones} where the strips meet"


def _lying(bench: Bench) -> str:
    """Say where like blocks that are pressed two ways lie, place by place."""
    lying = []
    for block, found in places_by_way(bench).items():
        name = bench.book.block_name(block)
        for way, places in list(found.items())[1:]:
            lying.append(f"the {name}s pressed {way} in {_places(places)}")
    return f" Lay {listed(lying)}; the others are pressed the other way." if lying else ""


def places_by_way(bench: Bench) -> dict[str, dict[str, list[tuple[int, int]]]]:
    """Return, by block, the rows and columns of like blocks by the way they are pressed,
    the more frequent way first; only of blocks that are pressed two ways."""
    size = bench.book.sizes[bench.key]
    found: dict[str, dict[str, list[tuple[int, int]]]] = {}
    for group in bench.groups:
        first = group.unit.patches[0]
        if not bench.is_block(group.unit) or first.block is None or size.on_point:
            continue
        ways = {
            way: sorted((p.row + 1, p.column + 1) for u in units
                        if (p := u.patches[0]).row is not None and p.column is not None
                        and not (p.home is not None and p.home.in_round))
            for way, units in told(bench, group).items()
        }  # fmt: skip
        ways = {way: places for way, places in ways.items() if places}
        if len(ways) > 1:
            order = sorted(ways.items(), key=lambda item: -len(item[1]))
            found.setdefault(first.block, {}).update(order)
    return found


def _places(places: list[tuple[int, int]]) -> str:
    """Return `row 2, places 1 and 3` or, alike in several, `rows 1 and 3, place 2`."""
    rows: dict[int, list[str]] = {}
    for row, column in places:
        rows.setdefault(row, []).append(str(column))
    alike: dict[tuple[str, ...], list[str]] = {}
    for row, columns in rows.items():
        alike.setdefault(tuple(columns), []).append(str(row))
    return "; ".join(
        f"{plural(len(found), 'row')} {listed(found)}, {plural(len(columns), 'place')} "
        f"{listed(columns)}"
        for columns, found in alike.items()
    )


def _join(bench: Bench, group: Group, steps: StepList, key: str) -> None:
    unit = group.unit
    across = unit.join == "across"
    crossing = not across and meets(unit)
    rows = any(p.number and p.parts for p in unit.parts)
    through = not across and rows and any(p.patch is not None for p in unit.parts[1:-1])
    what = f"For {together(group) if len(group.names) > 1 else _the(unit)}, sew"
    how = "side by side" if across else "from the top down"
    before = (
        _pinned(unit) if crossing else
        "On each long strip mark where the seams of the row above end, so that the row below "
        "carries on in line. " if through else ""
    )  # fmt: skip
    steps.add(
        key,
        f"{before}{what} {bench.parts_text(unit)} together, {how}, right sides together. "
        f"{press_text(bench, group, _NEST)}",
        sizes=[bench.key],
        right=_measures(bench, group) + (" The seams match." if crossing else ""),
    )


def _pinned(unit: Unit) -> str:
    """Say how to pin where seams meet; those of rows lie opposite ways and lock."""
    if any(p.number for p in unit.parts):
        return "Pin at every crossing, where the allowances lie opposite ways and lock. "
    return "Pin wherever seams meet. "


def _measures(bench: Bench, group: Group) -> str:
    """Return what each unit of a group measures; those that measure alike share a phrase."""
    found: dict[tuple[Length, Length], list[str]] = {}
    for unit in group.units:
        found.setdefault(sewn_size(unit), []).append(_the(unit))
    if len(found) == 1:
        who = "each measures" if len(group.units) > 1 else f"{_the(group.unit)} measures"
        return f"{capital(who)} {rectangle(*next(iter(found)))}."
    each = [f"{listed(names)} {'measures' if len(names) == 1 else 'measure'} {rectangle(*size)}"
            for size, names in found.items()]  # fmt: skip
    return f"{capital(listed(each))}."


def _the(unit: Unit) -> str:
    return unit.name if unit.number else f"the {unit.name}"
