"""Sewing blocks into rows and rows into the middle of the top.

In: the seam tree of a size, heaps of blocks. Out: operations; none for a top of one block.
Invariant: rows are numbered as in the picture; pressing directions come from the tree, so
that the seams of neighbouring rows nest.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.size import Size
from publish.model.tree import TOP, Group
from publish.operations.joining import (
    MarkStrips,
    PinSeams,
    Pressed,
    PressSeams,
    Result,
    SewParts,
    Taken,
)
from publish.operations.layout import LayOut
from publish.operations.operation import Where
from publish.sew import lengths, on_point
from publish.sew.bench import Bench
from publish.sew.leaves import word
from publish.sew.meeting import meets
from publish.sew.names import Names
from publish.sew.pressing import press_value, seam_ways, several, told
from publish.words.values import Count, Named, Said, Several, Value, Word, said

CHAPTER = "assembling"
NOTHING = said("nothing")


def plan(bench: Bench) -> None:
    """Lay out the blocks, sew them into rows, and the rows together."""
    names = Names(bench)
    found = names.at(TOP)
    if not found:
        return
    joining: Where = {"chapter": CHAPTER, "step": "join-sashing"}
    strips = bench.pieces("sashing")
    lengths.join(bench, joining, strips, said("sashing-strips"), lengths.as_cut)
    if bench.size.on_point:
        on_point.plan(bench, names)
        return
    lay_out(bench, names, found)
    seen: set[str] = set()
    for group in found:
        step = group.unit.name if group.unit.kind in seen else group.unit.kind
        seen.add(group.unit.kind)
        where: Where = {"chapter": CHAPTER, "step": word(step)}
        join(bench, names, group, where)


def heaps_in(names: Names, units: tuple[Group, ...]) -> tuple[tuple[str, int], ...]:
    """Return the heaps that rows are sewn from, and how many each gives."""
    made = {id_of(u) for g in units for u in g.units}
    found: dict[str, int] = {}
    for unit in (u for g in units for u in g.units):
        for part in unit.parts:
            if id_of(part) not in made:
                found[names.key(part)] = found.get(names.key(part), 0) + 1
    return tuple(found.items())


def id_of(unit: Unit) -> tuple[str, ...]:
    """Return what tells a unit from every other of its top: its patches."""
    return (unit.kind, *(p.key for p in unit.patches))


def lay_out(bench: Bench, names: Names, rows: tuple[Group, ...]) -> None:
    size = bench.size
    kinds = {b for row in size.arrangement for b in row}
    pieced = any(len(bench.pattern.blocks[b].patches) > 1 for b in kinds)
    check = "kinds" if len(kinds) > 1 else "turned" if pieced else "none"
    where: Where = {"chapter": CHAPTER, "step": "lay-out"}
    bench.add(
        LayOut(
            **where,
            heaps=heaps_in(names, rows),
            blocks=size.block_count,
            rows=size.rows,
            columns=size.columns,
            between=_between(bench),
            check="none" if size.block_count == 1 else check,
            lying=_lying(names),
            setting=size.sashing is not None,
        )
    )


def _between(bench: Bench) -> Said:
    """Return what lies between and round the blocks."""
    size, sashing, fabrics = bench.size, bench.size.sashing, bench.pattern.fabrics
    if sashing is None:
        return NOTHING
    where = "around" if size.block_count == 1 else "both" if sashing.outer else "between"
    strips = Named(fabrics[sashing.fabric].name)
    stones = sashing.cornerstones
    if stones is None or not (sashing.outer or min(size.rows, size.columns) > 1):
        return said("with-sashing", fabric=strips, where=Word(where))
    return said(
        "with-cornerstones",
        fabric=strips,
        where=Word(where),
        stones=Named(fabrics[stones].name),
    )


def _lying(names: Names) -> Value:
    """Return where like blocks that are pressed two ways lie, place by place."""
    found: list[Value] = []
    for block, ways in places_by_way(names).items():
        for way, places in list(ways.items())[1:]:
            name = names.name_of_block(block)
            found.append(said("blocks-lie", name=name, way=way, places=_places(places)))
    lying = said("lying", which=Several(tuple(found))) if found else NOTHING
    return said("lying-either-way", lying=lying) if _half_turned(names) else lying


def _half_turned(names: Names) -> bool:
    """Return whether blocks that look the same after half a turn lie both ways, so that their
    seams lock with those of the rows beside them: a picture cannot show it."""
    ways: dict[tuple[str, int], set[tuple[str, ...]]] = {}
    for unit in (u for g in names.groups for u in g.units):
        if not names.is_block(unit) or unit.place is None or not _of_middle([unit]):
            continue
        if 180 in unit.place.recipe.symmetry:
            key = unit.place.recipe.key, unit.place.turn
            ways.setdefault(key, set()).add(tuple(p.press for p in unit.parts))
    return any(len(found) > 1 for found in ways.values())


def places_by_way(names: Names) -> dict[str, dict[Said, list[tuple[int, int]]]]:
    """Return, by block, the rows and columns of like blocks by the way they are pressed,
    the more frequent way first; only of blocks that are pressed two ways."""
    found: dict[str, dict[Said, list[tuple[int, int]]]] = {}
    for group in names.groups:
        first = group.unit.patches[0]
        if not names.is_block(group.unit) or first.block is None:
            continue
        ways = {way: _of_middle(units) for way, units in told(names, group).items()}
        ways = {way: places for way, places in ways.items() if places}
        if len(ways) > 1:
            order = sorted(ways.items(), key=lambda item: -len(item[1]))
            found.setdefault(first.block, {}).update(order)
    return found


def _of_middle(units: list[Unit]) -> list[tuple[int, int]]:
    """Return the rows and columns, from 1, of blocks that lie in no round."""
    firsts = (u.patches[0] for u in units)
    return sorted(
        (p.row + 1, p.column + 1)
        for p in firsts
        if p.row is not None
        and p.column is not None
        and not (p.home is not None and p.home.in_round)
    )


def _places(places: list[tuple[int, int]]) -> Value:
    """Return `row 2, places 1 and 3` or, alike in several, `rows 1 and 3, place 2`."""
    rows: dict[int, list[int]] = {}
    for row, column in places:
        rows.setdefault(row, []).append(column)
    alike: dict[tuple[int, ...], list[int]] = {}
    for row, columns in rows.items():
        alike.setdefault(tuple(columns), []).append(row)
    return Several(
        tuple(
            said(
                "places",
                many=Count(len(found)),
                rows=_figures(found),
                count=Count(len(columns)),
                columns=_figures(columns),
            )
            for columns, found in alike.items()
        )
    )


def _figures(numbers: list[int] | tuple[int, ...]) -> Several:
    return Several(tuple(said("figure", number=Count(n)) for n in numbers))


def eased_over(size: Size) -> int:
    """Return over how many parts what a ruler shows of a row may be eased."""
    return 2 * max(size.rows, size.columns) + 1


def join(bench: Bench, names: Names, group: Group, where: Where) -> None:
    """Sew one kind of row, or all rows into the middle of the top."""
    unit = group.unit
    down = unit.join == "down"
    parts = tuple(Taken(names.key(p), names.quarters(p)) for p in unit.parts)
    results = tuple(Result(names.key(u)) for u in group.units)
    crossing = meets(unit)
    rows = any(p.number and p.parts for p in unit.parts)
    through = down and rows and any(p.patch is not None for p in unit.parts[1:-1])
    strips = {
        names.key(p): sum(names.key(q) == names.key(p) for q in unit.parts)
        for p in unit.parts
        if p.patch is not None
    }
    if crossing:
        bench.add(PinSeams(**where, parts=parts, results=results, rows=down and rows))
    elif through:
        bench.add(MarkStrips(**where, strips=tuple(strips.items())))
    assert unit.sewn is not None
    last = unit is names.centre
    bench.add(
        SewParts(
            **where,
            parts=parts,
            results=results,
            down=down,
            seam=bench.seam,
            drafted=unit.sewn.exact,
            eased=eased_over(bench.size),
            pinned=crossing,
            marked=tuple(strips) if through and not crossing else (),
            nests=unit.nests,
            last=last,
            what=several(names, group.units) if unit.number else names.the(unit),
            those=names.parts(unit),
        ),
        press(names, group, where, results, crossing=crossing),
    )


def press(
    names: Names, group: Group, where: Where, results: tuple[Result, ...], *, crossing: bool
) -> PressSeams:
    """Return how one kind of row is pressed."""
    by_way: dict[tuple[str, ...], list[Result]] = {}
    for unit, result in zip(group.units, results, strict=True):
        by_way.setdefault(seam_ways(unit), []).append(result)
    one = names.called(group.unit) if group.unit.number else names.the(group.unit)
    return PressSeams(
        **where,
        groups=tuple(Pressed(tuple(found), ways) for ways, found in by_way.items()),
        down=group.unit.join == "down",
        way=press_value(names, group),
        measures=said("each") if len(group.units) > 1 else one,
        crossing=crossing,
    )
