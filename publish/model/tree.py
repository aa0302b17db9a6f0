"""Reading the seam tree: what is sewn from what, how often, and where.

In: a draft's assembly. Out: groups of like units in sewing order.
Invariant: every unit that a maker sews from parts is in exactly one group; parts come
before what is made of them. What lies inside a unit that is made a quicker way, or on a
foundation, is no unit of its own.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from publish.model.draft import Unit

BLOCK, TOP, BORDER = "block", "top", "border"


@dataclass(frozen=True)
class Group:
    """Units that are sewn alike; they may differ in name and in how they are pressed."""

    units: tuple[Unit, ...]

    @property
    def unit(self) -> Unit:
        return self.units[0]

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(u.name for u in self.units))

    @property
    def blocks(self) -> tuple[str, ...]:
        """Return the keys of the blocks that the units belong to."""
        found = (p.block for u in self.units for p in u.patches[:1])
        return tuple(dict.fromkeys(b for b in found if b is not None))


def every(unit: Unit) -> Iterator[Unit]:
    """Yield a unit and everything in it, parts before wholes."""
    if not unit.made and not unit.section:
        for part in unit.parts:
            yield from every(part)
    yield unit


def sections(unit: Unit) -> list[Unit]:
    """Return the foundation sections in a unit, in sewing order."""
    if unit.section:
        return [unit]
    return [found for part in unit.parts for found in sections(part)]


def holds_sections(unit: Unit) -> bool:
    """Return whether a unit is or holds a foundation section."""
    return bool(unit.section) or any(map(holds_sections, unit.parts))


def only_sections(unit: Unit) -> bool:
    """Return whether a unit is joined from nothing but foundation sections."""
    return bool(unit.section) or (bool(unit.parts) and all(map(only_sections, unit.parts)))


def groups(root: Unit) -> tuple[Group, ...]:
    """Return the units that have parts, grouped by kind, parts before wholes.

    Rows are told as they lie in the top: those of one kind are grouped where the same parts
    follow each other in them.
    """
    found: dict[str, list[Unit]] = {}
    for unit in every(root):
        if unit.parts:
            found.setdefault(unit.kind, []).append(unit)
    return tuple(
        Group(tuple(units)) for like in _in_order(found).values() for units in _as_they_lie(like)
    )


def _as_they_lie(units: list[Unit]) -> Iterator[list[Unit]]:
    found: dict[tuple[str, ...], list[Unit]] = {}
    for unit in units:
        order = tuple(part.kind for part in unit.parts) if unit.series else ()
        found.setdefault(order, []).append(unit)
    yield from found.values()


def _in_order(found: dict[str, list[Unit]]) -> dict[str, list[Unit]]:
    """Return the kinds with each after all kinds that some unit of it is made of.

    A kind that is met early may, turned or elsewhere, hold a kind that is met later.
    """
    done: dict[str, list[Unit]] = {}

    def take(kind: str) -> None:
        if kind in done or kind not in found:
            return
        for unit in found[kind]:
            for part in unit.parts if not unit.made else ():
                if part.kind != kind:
                    take(part.kind)
        done[kind] = found[kind]

    for kind in found:
        take(kind)
    return done


def level(unit: Unit) -> str:
    """Return where a unit is made: inside a `block`, in the `top`, or as a `border`.

    Blocks that go round the centre of a medallion are joined to it as borders are.
    """
    found = unit.patches
    if any(p.role == BORDER for p in found):
        return BORDER
    homes = {p.place for p in found}
    if len(homes) == 1 and None not in homes:
        return BLOCK
    return BORDER if any(home is not None and home.in_round for home in homes) else TOP


def runs(unit: Unit) -> list[tuple[Unit, int]]:
    """Return the parts in order, neighbours of one kind taken together with their count."""
    found: list[tuple[Unit, int]] = []
    for part in unit.parts:
        if found and _alike(found[-1][0], part):
            found[-1] = (found[-1][0], found[-1][1] + 1)
        else:
            found.append((part, 1))
    return found


def _alike(one: Unit, two: Unit) -> bool:
    return one.kind == two.kind and (one.patch is None) == (two.patch is None)
