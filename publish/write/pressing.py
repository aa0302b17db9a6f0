"""Which way the seams of like units are pressed, as a maker sees them lying alike.

In: groups of units. Out: phrases and sentences.
Invariant: units that lie turned in the top are turned back before they are compared, so
that a way is told as it is in the picture of the first of them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable
from fractions import Fraction

from publish.model.draft import Patch, Point, Unit
from publish.model.tree import BLOCK, Group, level
from publish.surd import turned
from publish.words.en.phrase import listed, number, plural
from publish.write.bench import Bench

_TURN = {"left": "up", "up": "right", "right": "down", "down": "left"}
"""A way after a quarter turn clockwise."""
_WAYS = {
    "left": "to the left",
    "right": "to the right",
    "up": "upwards",
    "down": "downwards",
    "open": "open",
    "out": "outwards, away from the middle",
    "sashing": "toward the sashing",
}

INNER, WHOLE, FIXED = "inner", "whole", "fixed"
_ANY_WAY = ("open", "out", "sashing", "")

Shape = frozenset[tuple[str, frozenset[Point]]]


def _shape(unit: Unit, degrees: int) -> Shape:
    """Return the patches of a unit about its centre, turned clockwise."""
    left, top, right, bottom = unit.box
    half = Fraction(1, 2)
    x, y = (left + right) * half, (top + bottom) * half

    def moved(patch: Patch) -> frozenset[Point]:
        lying = (turned(p, -unit.turn) for p in patch.ring)
        return frozenset(turned((px - x, py - y), degrees) for px, py in lying)

    return frozenset((p.fabric, moved(p)) for p in unit.patches)


def _turned_press(unit: Unit, degrees: int) -> str:
    """Return where a unit's seams go once it is turned."""
    press = unit.press
    if press in ("first", "last") and len(unit.parts) == 2:
        kinds = unit.parts[0].kind, unit.parts[1].kind
        if kinds[0] != kinds[1]:
            return f"kind {kinds[0 if press == 'first' else 1]}"
    for _ in range(degrees // 90):
        press = _TURN.get(press, press)
    return press


def ways(group: Group, where: str) -> tuple[tuple[str, tuple[Unit, ...]], ...]:
    """Return the ways in which the units are pressed, as the first of them lies.

    `where` is INNER for parts of blocks, WHOLE for blocks, FIXED for what lies as it lies.
    A part of a block that looks the same when it is turned may be turned to be pressed
    like another; a block is turned back as it lies turned in the top.
    """
    presses = dict.fromkeys(u.press for u in group.units)
    if len(presses) == 1 and (group.unit.press in _ANY_WAY or where == FIXED):
        return ((group.unit.press, group.units),)
    options: list[tuple[str, ...]]
    if where == FIXED:
        options = [(u.press,) for u in group.units]
    elif where == WHOLE:
        first = _lying(group.unit)
        options = [(_turned_press(u, (first - _lying(u)) % 360),) for u in group.units]
    else:
        options = _options(group)
    shared = [w for w in options[0] if all(w in o for o in options)]
    if group.unit.made and not shared:
        # Made several at once, they are pressed alike: the way that most of them ask for.
        shared = [Counter(option[0] for option in options).most_common(1)[0][0]]
    found: dict[str, list[Unit]] = {}
    for unit, option in zip(group.units, options, strict=True):
        found.setdefault(shared[0] if shared else option[0], []).append(unit)
    return tuple((way, tuple(units)) for way, units in found.items())


def _lying(unit: Unit) -> int:
    """Return how far a block is turned in the frame that its unit is described in."""
    return unit.patches[0].turn - unit.turn


def _options(group: Group) -> list[tuple[str, ...]]:
    """Return the ways in which each unit is pressed, turned so that it looks like the first."""
    first = _shape(group.unit, 0)
    seen: dict[Hashable, tuple[str, ...]] = {}
    options = []
    for unit in group.units:
        mark = _mark(unit)
        if mark not in seen:
            fits = [d for d in (0, 90, 180, 270) if _shape(unit, d) == first]
            seen[mark] = tuple(dict.fromkeys(_turned_press(unit, d) for d in fits or [0]))
        options.append(seen[mark])
    return options


def _mark(unit: Unit) -> Hashable:
    """Return what units that lie and are pressed alike have in common."""
    found = unit.patches
    if any(p.spec is None for p in found):
        return id(unit)
    return (
        found[0].block,
        found[0].turn,
        unit.press,
        tuple(p.spec for p in found),
        len({p.home for p in found}) == 1 or id(unit),
    )


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
    toward = _towards(unit, way)
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


def _towards(unit: Unit, way: str) -> Unit | None:
    """Return the part that the one seam of a unit is pressed toward, if the parts differ."""
    if len(unit.parts) != 2 or unit.parts[0].kind == unit.parts[1].kind:
        return None
    if way.startswith("kind "):
        return next(p for p in unit.parts if p.kind == way.removeprefix("kind "))
    return {
        "left": unit.parts[0],
        "up": unit.parts[0],
        "right": unit.parts[1],
        "down": unit.parts[1],
    }.get(way)


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


def press_text(bench: Bench, group: Group) -> str:
    """Return how the units of a group are pressed, as a sentence.

    Units pressed alike are named together, or counted when they share a name.
    """
    seam = plural(_seams(group.unit), "seam")
    found = told(bench, group)
    if len(found) == 1:
        return f"Press the {seam} {next(iter(found))}."
    named = len(group.names) == len(group.units)
    phrases = [
        f"{way} in {listed([u.name for u in units]) if named else number(len(units))}"
        for way, units in found.items()
    ]
    return f"Press the {seam} {listed(phrases)}."


def _seams(unit: Unit) -> int:
    return len(unit.parts) - 1 if unit.join != "set in" else 2
