"""How the ways in which like units are pressed are told, as values.

In: groups of units. Out: values.
Invariant: a way is told as it is in the picture of the first of the units.
"""

from __future__ import annotations

from publish.model.draft import SASHING_ROW, Patch, Unit
from publish.model.pressing import FIXED, INNER, WHOLE, towards, turned_press, ways
from publish.model.tree import BLOCK, Group, level
from publish.operations.joining import AHEAD, OPEN, START, STOP
from publish.sew.names import Names
from publish.words.values import Count, Letter, Named, Said, Several, Value, Word, said


def where_of(names: Names, unit: Unit) -> str:
    """Return how freely a unit is turned before it is sewn on."""
    if level(unit) != BLOCK:
        return FIXED
    return WHOLE if names.is_block(unit) else INNER


def way_value(names: Names, unit: Unit, way: str) -> Said:
    """Return a way as it is told.

    Where a seam joins two unlike parts it names the part, which stays true however the unit
    is turned later.
    """
    if way in ("first", "last"):
        if len(unit.parts) == 2:
            return _to("")
        rows = [p for p in unit.parts if p.number]
        at = 0 if way == "first" else -1
        return said(
            "toward", what=names.called(rows[at]) if rows else _short(names, unit.parts[at])
        )
    toward = towards(unit, way)
    if toward is None:
        return _to(way)
    other = next(p for p in unit.parts if p is not toward)
    if toward.patch is not None and other.patch is not None:
        if toward.patch.fabric != other.patch.fabric:
            return said("toward", what=_cloth(names, toward.patch))
        piece, beside = names.piece(toward), names.piece(other)
        if piece is not None and beside is not None and piece.letter != beside.letter:
            return said("toward", what=Letter(piece.letter))
        return _to(way)
    return said("toward", what=_short(names, toward))


def _to(way: str) -> Said:
    known = ("left", "right", "up", "down", "open", "out", "sashing")
    return said("way", way=Word(way if way in known else "one-side"))


def _cloth(names: Names, patch: Patch) -> Named:
    return Named(names.bench.pattern.fabrics[patch.fabric].name)


def _short(names: Names, part: Unit) -> Value:
    piece = names.piece(part)
    if piece is not None:
        return Letter(piece.letter)
    return _cloth(names, part.patch) if part.patch is not None else names.the(part)


def press_way(names: Names, unit: Unit) -> Said:
    """Return where the allowances of one unit's seams are pressed, as it lies."""
    return way_value(names, unit, turned_press(unit, 0))


def told(names: Names, group: Group) -> dict[Said, list[Unit]]:
    """Return the ways in which a group is pressed, each with its units.

    What lies as it lies is told as it lies; the rest as the first of the group lies.
    """
    where = where_of(names, group.unit)
    found: dict[Said, list[Unit]] = {}
    for way, units in ways(group, where):
        for unit in units:
            seen = unit if where == FIXED else group.unit
            found.setdefault(way_value(names, seen, way), []).append(unit)
    return found


def press_value(names: Names, group: Group) -> Value:
    """Return how the units of a group are pressed: one way, or each way with what it is for.

    Units pressed alike are named together, or counted when they share a name.
    """
    found = told(names, group)
    if len(found) == 1:
        return next(iter(found))
    named = len(group.names) == len(group.units)
    if not named and len(found) == 2 and len({len(units) for units in found.values()}) == 1:
        one, other = sorted(found, key=repr)  # the same words whichever comes first
        return said("way-halves", one=one, other=other)
    return Several(
        tuple(
            said("way-in", way=way, which=several(names, units) if named else Count(len(units)))
            for way, units in found.items()
        )
    )


def several(names: Names, units: list[Unit] | tuple[Unit, ...]) -> Value:
    """Return what several units are called: `rows 1 and 3`, or each by its name."""
    first = units[0]
    if len(units) > 1 and first.series and len({u.series for u in units}) == 1:
        series = names.called(first)
        numbers = Several(tuple(said("figure", number=Count(u.number)) for u in units))
        (word,) = (value for name, value in series.values if name == "series")
        return said("rows-of", series=word, numbers=numbers)
    return Several(tuple(dict.fromkeys(map(names.called, units))))


def seam_ways(unit: Unit) -> tuple[str, ...]:
    """Return to which end each seam of a row or column is pressed, from the left or the top."""
    count = len(unit.parts) - 1
    if unit.press == "sashing":
        strips = [_is_sashing(p) for p in unit.parts]
        return tuple(STOP if strips[n + 1] else START for n in range(count))
    if unit.press == "out":
        return tuple(START if n < count / 2 else STOP for n in range(count))
    if unit.press in ("first", "last"):
        return (START if unit.press == "first" else STOP,) * count
    return (AHEAD.get(unit.press, OPEN),) * count


def _is_sashing(part: Unit) -> bool:
    """Return whether a part is a strip of sashing, or a row of strips."""
    return part.series == SASHING_ROW or (part.patch is not None and part.patch.role == "sashing")


def turned_two_ways(names: Names, blocks: set[str]) -> bool:
    """Return whether like blocks, of these, differ in how their own last seam is pressed."""
    return any(
        len({press_way(names, u) for u in group.units}) > 1
        for group in names.groups
        if names.is_block(group.unit) and group.unit.patches[0].block in blocks
    )
