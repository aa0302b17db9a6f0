"""Fabric for foundation piecing: a rectangle for each numbered patch.

In: sections, the patches of the top that are sewn on them. Out: `Need`s.
Invariant: a rectangle, laid along the seam that adds its patch, reaches past every corner
of the patch by its seam allowance and `SAFETY`; sizes are rounded up to `STEP`.

Common practice, no source: cut generously, at least 1/4 in beyond the seam allowance all
round, since the patch is laid blind and trimmed once it is sewn.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from fractions import Fraction

from publish.cut.forms import Vector, cross, dot, length_of
from publish.cut.needs import Need, plain
from publish.model.draft import Draft, FoundationSection, Unit
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.units import round_up
from publish.words.values import Named, Several, Value, said

SAFETY = Fraction(1, 4)
STEP = Fraction(1, 4)

Place = tuple[str, int]
"""Key of a section, and the number of a patch on it, from 0."""


@dataclass
class _Like:
    """Rectangles of one size and fabric, with the patches that they are for."""

    count: int = 0
    patches: list[str] = field(default_factory=list)
    places: list[Place] = field(default_factory=list)


def foundation_needs(pattern: Pattern, size: Size, draft: Draft) -> list[Need]:
    """Return the rectangles of every section, those of one size and fabric together."""
    safety = pattern.measures.usual(SAFETY)
    around = pattern.sewing.seam + safety
    if size.pillow is not None and not size.layers:
        around = max(around, size.pillow.seam + safety)
    held = _held(draft.assembly, {s.key: s for s in draft.foundations})
    found: dict[tuple[str, Fraction, Fraction], _Like] = {}
    sections = {s.key: s for s in draft.foundations}
    for section in draft.foundations:
        for number, patch in enumerate(section.patches):
            sides = rectangle(section, number, around, pattern.measures.coarse)
            if not pattern.fabrics[patch.fabric].directional:
                sides = min(sides), max(sides)
            like = found.setdefault((patch.fabric, *sides), _Like())
            like.count += section.count
            like.places.append((section.key, number))
            like.patches += held.get((section.key, number), [])
    fabrics = list(pattern.fabrics)
    ordered = sorted(found.items(), key=lambda f: (fabrics.index(f[0][0]), -f[0][1] * f[0][2]))
    return [
        replace(_need(pattern, fabric, (width, length), like, sections), key=f"foundation {i}")
        for i, ((fabric, width, length), like) in enumerate(ordered)
    ]


def rectangle(
    section: FoundationSection, number: int, around: Fraction, step: Fraction = STEP
) -> tuple[Fraction, Fraction]:
    """Return the sides of a patch's rectangle, the one along its seam first.

    The first patch lies along the seam that adds the second.
    """
    ring = section.patches[number].ring
    points = [*ring, *(through for _, through in section.patches[number].arcs)]
    along: Vector = (Fraction(1), Fraction(0))
    if section.seams:
        (x, y), (u, v) = section.seams[max(number - 1, 0)]
        along = u - x, v - y
    places = [dot(along, p) for p in points], [cross(along, p) for p in points]
    square = dot(along, along)
    sides = []
    for reach in places:
        far = max(reach) - min(reach)
        sides.append(round_up(length_of(far * far / square) + 2 * around, step))
    return sides[0], sides[1]


def _held(unit: Unit, sections: dict[str, FoundationSection]) -> dict[Place, list[str]]:
    """Return the keys of the patches of the top by their place on a section."""
    found: dict[Place, list[str]] = {}
    for sewn in (u for u in unit.outermost_first() if u.section):
        specs = [p.spec for p in sections[sewn.section].patches]
        for number, patch in enumerate(sewn.held):
            place = specs.index(patch.spec) if patch.spec in specs else number
            found.setdefault((sewn.section, place), []).append(patch.key)
    return found


def _need(
    pattern: Pattern,
    fabric: str,
    sides: tuple[Fraction, Fraction],
    like: _Like,
    sections: dict[str, FoundationSection],
) -> Need:
    blocks = {s.block for s in sections.values()}
    named = [(sections[key], number) for key, number in like.places]
    ways = plain(*sides, like.count, pattern.fabrics[fabric].directional)
    need = Need(
        said("cut-for", patches=_names(named, len(blocks) > 1)),
        "foundation",
        fabric,
        *sides,
        like.count,
        ways,
        patches=tuple(like.patches),
    )
    return replace(need, serves=frozenset(_serves(named)))


def _serves(named: Iterable[tuple[FoundationSection, int]]) -> Iterator[tuple[str, int]]:
    for section, number in named:
        spec = section.patches[number].spec
        yield section.block, number if spec is None else spec


def _names(named: Iterable[tuple[FoundationSection, int]], with_block: bool) -> Value:
    """Return `A1, A3, B2`; of several blocks `heron A1, B2 and reeds A4`."""
    by: dict[str, list[str]] = {}
    for section, number in named:
        by.setdefault(section.block, []).append(f"{section.letter}{number + 1}")
    if not with_block:
        return Named(", ".join(*by.values()))
    return Several(tuple(Named(f"{block} {', '.join(own)}") for block, own in by.items()))


def held_keys(unit: Unit) -> set[str]:
    """Return the keys of all patches that are sewn on foundations."""
    return {p.key for u in unit.outermost_first() for p in u.held}
