"""Which way the seams of like units are pressed, as a maker sees them lying alike.

In: groups of units of the seam tree. Out: ways, each with the units that are pressed so.
Invariant: units that lie turned in the top are turned back before they are compared, so
that a way is told as it is in the picture of the first of them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable
from fractions import Fraction

from publish.model.draft import Patch, Point, Unit
from publish.model.tree import Group
from publish.surd import turned

_TURN = {"left": "up", "up": "right", "right": "down", "down": "left"}
"""A way after a quarter turn clockwise."""
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


def turned_press(unit: Unit, degrees: int) -> str:
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
        options = [(turned_press(u, (first - _lying(u)) % 360),) for u in group.units]
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
            seen[mark] = tuple(dict.fromkeys(turned_press(unit, d) for d in fits or [0]))
        options.append(seen[mark])
    return options


def _mark(unit: Unit) -> Hashable:
    """Return what units that lie and are pressed alike have in common."""
    found = unit.patches
    if any(p.spec is None for p in found) or len({p.home for p in found}) > 1:
        return tuple(p.key for p in found)
    return found[0].block, found[0].turn, unit.press, tuple(p.spec for p in found)


def towards(unit: Unit, way: str) -> Unit | None:
    """Return the part that the one seam of a unit is pressed toward, if the parts differ."""
    if len(unit.parts) != 2 or unit.parts[0].kind == unit.parts[1].kind:
        return None
    if way.startswith("kind "):
        return next(p for p in unit.parts if p.kind == way.removeprefix("kind "))
    at = {"left": 0, "up": 0, "right": 1, "down": 1}.get(way)
    return None if at is None else unit.parts[at]
