"""Units that are made quicker than from patches cut to size, where a block asks for it.

In: a seam tree, the blocks' `Piecing`. Out: the tree with `Unit.made` filled in.
Invariant: what is recognised is the shape that a method makes, exactly; units of one kind
are all made alike, so a kind that one block asks for is made so in every block.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import fields, replace

from publish.model.block import SINGLY, Block, Piecing
from publish.model.draft import Patch, Point, Unit
from publish.surd import Exact

REPEATS = 2
"""A strip set is cut into this many equal units at least."""

Ring = tuple[Point, ...]


def methods(root: Unit, blocks: Mapping[str, Block]) -> dict[str, str]:
    """Return the method of each kind of unit that is made quicker."""
    made: dict[str, str] = {}
    if all(block.piecing == Piecing() for block in blocks.values()):
        return made
    counts = Counter(u.kind for u in root.outermost_first() if u.parts)
    seen: set[tuple[str, str]] = set()
    for unit in (u for u in root.outermost_first() if u.parts):
        block = unit.patches[0].block
        if block is None or (unit.kind, block) in seen:
            continue
        seen.add((unit.kind, block))
        method = recognised(unit, blocks[block].piecing)
        if method and (method != "strips" or counts[unit.kind] >= REPEATS):
            made.setdefault(unit.kind, method)
    return made


def recognised(unit: Unit, piecing: Piecing) -> str:
    """Return the method, of those asked for, that makes a unit of one block; or nothing."""
    patches = unit.patches
    if len({(p.home, p.block) for p in patches}) != 1 or any(p.arcs for p in patches):
        return ""
    if any(u.section for u in unit.innermost_first()):
        return ""
    shapes = {
        "triangles": _is_triangles,
        "hourglasses": _is_hourglass,
        "geese": _is_goose,
        "corners": _has_corners,
        "strips": _is_strips,
    }
    for field in fields(piecing):
        if getattr(piecing, field.name) != SINGLY and shapes[field.name](unit, patches):
            return field.name
    return ""


def _is_triangles(unit: Unit, patches: tuple[Patch, ...]) -> bool:
    """A square of two triangles."""
    legs = [_legs(p.ring) for p in patches]
    return len(patches) == 2 and _square(unit.ring) and None not in legs and legs[0] == legs[1]


def _is_hourglass(unit: Unit, patches: tuple[Patch, ...]) -> bool:
    """A square of four triangles that meet in its middle, opposite ones of one fabric."""
    if len(patches) != 4 or not _square(unit.ring) or len(unit.parts) != 2:
        return False
    if any(_legs(p.ring) is None for p in patches):
        return False
    halves = [{p.fabric for p in part.patches} for part in unit.parts]
    sizes = {_legs(p.ring) for p in patches}
    return halves[0] == halves[1] and len(halves[0]) == 2 and len(sizes) == 1


def _is_goose(unit: Unit, patches: tuple[Patch, ...]) -> bool:
    """A triangle between two corners in a rectangle twice as long as it is wide."""
    sides = _sides(unit.ring)
    if len(patches) != 3 or sides is None or max(sides) != 4 * min(sides):
        return False
    short = min(sides)
    wings = [p for p in patches if _legs(p.ring) == short]
    middle = [p for p in patches if _legs(p.ring) == 2 * short]
    return len(wings) == 2 and len(middle) == 1 and wings[0].fabric == wings[1].fabric


def _has_corners(unit: Unit, patches: tuple[Patch, ...]) -> bool:
    """A rectangle of one large patch, with triangles smaller than it in its corners."""
    if _sides(unit.ring) is None or not 2 <= len(patches) <= 5:
        return False
    large = max(patches, key=lambda p: _area(p.ring))
    small = [p for p in patches if p is not large]
    tips = [_right_angle(p.ring) for p in small]
    if None in tips or len(set(tips)) < len(tips) or not set(tips) <= set(unit.ring):
        return False
    return all(_area(p.ring) < _area(large.ring) for p in small)


def _is_strips(unit: Unit, patches: tuple[Patch, ...]) -> bool:
    """Rectangles side by side, each as long as the unit."""
    return (
        unit.join in ("across", "down")
        and all(part.patch is not None and _sides(part.ring) is not None for part in unit.parts)
        and _sides(unit.ring) is not None
    )


def with_methods(unit: Unit, made: Mapping[str, str]) -> Unit:
    """Return a tree with methods, each on the outermost unit of its construction."""
    method = made.get(unit.kind, "") if unit.parts else ""
    if method:
        return replace(unit, made=method)
    if not unit.parts:
        return unit
    return replace(unit, parts=tuple(with_methods(part, made) for part in unit.parts))


def _area(ring: Ring) -> Exact:
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    total: Exact = sum(((x * v - u * y) for (x, y), (u, v) in pairs), 0)  # type: ignore[assignment]
    return total


def _squares(ring: Ring) -> list[Exact]:
    """Return the square of the length of each side."""
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    return [(u - x) * (u - x) + (v - y) * (v - y) for (x, y), (u, v) in pairs]


def _right_angle(ring: Ring) -> Point | None:
    """Return the corner of a triangle between two equal sides at a right angle."""
    if len(ring) != 3:
        return None
    squares = _squares(ring)
    for i in range(3):
        before, after, across = squares[i - 1], squares[i], squares[(i + 1) % 3]
        if before == after and across == 2 * after:
            return ring[i]
    return None


def _legs(ring: Ring) -> Exact | None:
    """Return the square of the equal sides of a right-angled triangle; None of others."""
    return None if _right_angle(ring) is None else min(_squares(ring))


def _sides(ring: Ring) -> tuple[Exact, Exact] | None:
    """Return the squares of the two sides of a rectangle; None of other shapes."""
    if len(ring) != 4:
        return None
    one, two, three, four = _squares(ring)
    (x, y), (u, v) = ring[0], ring[2]
    across = (u - x) * (u - x) + (v - y) * (v - y)
    return (one, two) if one == three and two == four and across == one + two else None


def _square(ring: Ring) -> bool:
    sides = _sides(ring)
    return sides is not None and sides[0] == sides[1]
