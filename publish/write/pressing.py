"""How the ways in which like units are pressed are told, in words.

In: groups of units. Out: phrases and sentences.
Invariant: a way is told as it is in the picture of the first of the units.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.pressing import FIXED, INNER, WHOLE, towards, ways
from publish.model.tree import BLOCK, Group, level
from publish.words.en.phrase import listed, number, plural
from publish.write.bench import Bench

_WAYS = {
    "left": "to the left",
    "right": "to the right",
    "up": "upwards",
    "down": "downwards",
    "open": "open",
    "out": "outwards, away from the middle",
    "sashing": "toward the sashing",
}


def way_text(bench: Bench, unit: Unit, way: str) -> str:
    """Return a way as a phrase.

    Where a seam joins two unlike parts the phrase names the part, which stays true however
    the unit is turned later.
    """
    if way in ("first", "last"):
        if len(unit.parts) == 2:
            return "to one side"
        rows = [p.name for p in unit.parts if p.number]
        if rows:
            return f"toward {rows[0 if way == 'first' else -1]}"
        return f"toward {_short(bench, unit.parts[0 if way == 'first' else -1])}"
    toward = towards(unit, way)
    if toward is None:
        return _WAYS.get(way, "to one side")
    other = next(p for p in unit.parts if p is not toward)
    if toward.patch is not None and other.patch is not None:
        if toward.patch.fabric != other.patch.fabric:
            return f"toward {bench.book.fabric(toward.patch.fabric)}"
        piece, beside = bench.piece(toward), bench.piece(other)
        if piece is not None and beside is not None and piece.letter != beside.letter:
            return f"toward **{piece.letter}**"
        return _WAYS.get(way, "to one side")
    if toward.patch is not None:
        piece = bench.piece(toward)
        return (
            f"toward **{piece.letter}**"
            if piece is not None
            else (f"toward {bench.book.fabric(toward.patch.fabric)}")
        )
    return f"toward {bench.the(toward)}"


def _short(bench: Bench, part: Unit) -> str:
    piece = bench.piece(part)
    return f"**{piece.letter}**" if piece is not None else bench.the(part)


def where_of(bench: Bench, unit: Unit) -> str:
    """Return how freely a unit is turned before it is sewn on."""
    if level(unit) != BLOCK:
        return FIXED
    return WHOLE if bench.is_block(unit) else INNER


def told(bench: Bench, group: Group) -> dict[str, list[Unit]]:
    """Return the ways in which a group is pressed, as phrases, each with its units.

    What lies as it lies is told as it lies; the rest as the first of the group lies.
    """
    where = where_of(bench, group.unit)
    found: dict[str, list[Unit]] = {}
    for way, units in ways(group, where):
        for unit in units:
            seen = unit if where == FIXED else group.unit
            found.setdefault(way_text(bench, seen, way), []).append(unit)
    return found


def ways_text(bench: Bench, group: Group) -> str:
    """Return how the units of a group are pressed: one way, or each way with what it is for.

    Units pressed alike are named together, or counted when they share a name.
    """
    found = told(bench, group)
    if len(found) == 1:
        return next(iter(found))
    named = len(group.names) == len(group.units)
    return listed(
        [
            f"{way} in {listed([u.name for u in units]) if named else number(len(units))}"
            for way, units in found.items()
        ]
    )


def press_text(bench: Bench, group: Group) -> str:
    """Return how the units of a group are pressed, as a sentence."""
    return f"Press the {plural(_seams(group.unit), 'seam')} {ways_text(bench, group)}."


def _seams(unit: Unit) -> int:
    return len(unit.parts) - 1 if unit.join != "set in" else 2
