"""How the parts of a unit lie to each other: which edge curves in, which part lies turned.

In: a unit with parts. Out: parts, truth values.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import Arcs, Point, Unit

CLIP_INTERVAL, CLIP_DEPTH = Fraction(1, 2), Fraction(1, 8)
"""Inches: an edge that curves in is clipped so far apart, so deep; common practice, no source."""


def hollow_first(unit: Unit) -> tuple[Unit, Unit]:
    """Return the part whose shared edge curves in, then the one whose edge curves out."""
    first, last = unit.parts[0], unit.parts[-1]
    return (last, first) if _bulges(first) and not _bulges(last) else (first, last)


def _bulges(part: Unit) -> bool:
    """Return whether the first arc of a part's outline curves out of it."""
    ring, arcs = _outline(part)
    for at, through in arcs:
        (ax, ay), (bx, by), (tx, ty) = ring[at], ring[(at + 1) % len(ring)], through
        return bool((bx - ax) * (ty - ay) - (by - ay) * (tx - ax) < 0)
    return False


def _outline(part: Unit) -> tuple[tuple[Point, ...], Arcs]:
    if part.patch is not None:
        return part.patch.ring, part.patch.arcs
    return part.ring, part.arcs


def lies_turned(unit: Unit) -> bool:
    """Return whether one kind of part lies in two ways in a unit, or a unit among the parts
    lies otherwise than where it was made."""
    if any(_otherwise(part, unit) for part in unit.parts if part.parts):
        return True
    lying: dict[str, set[frozenset[object]]] = {}
    for part in unit.parts:
        left, top, _, _ = part.patches[0].box if part.turn else part.box
        spots = frozenset(
            (p.fabric, frozenset((x - left, y - top) for x, y in p.ring)) for p in part.patches
        )
        lying.setdefault(part.kind, set()).add(spots)
    return any(len(ways) > 1 for ways in lying.values())


def _otherwise(part: Unit, unit: Unit) -> bool:
    """Return whether a part lies turned against how its recipe does."""
    if part.place is None:
        return False
    lies = part.place.turn - unit.turn
    return all((lies + turn) % 360 for turn in part.place.recipe.symmetry)
