"""Sections on printed foundations, sewn patch by patch and trimmed.

In: foundation sections, the seam tree of a size, its plan. Out: operations.
Invariant: sections and their order are the draft's, cloth is the plan's; every section is sewn
before any is joined, first the one that is pictured.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from fractions import Fraction

from publish.model.draft import FoundationSection, Unit
from publish.model.recipe import Recipe
from publish.model.tree import every
from publish.operations.foundation import (
    Area,
    Foundation,
    LayFirstPatch,
    OfPatch,
    OpenPatch,
    PrintFoundations,
    SewPatch,
    ShortenStitch,
    TrimPatch,
)
from publish.operations.foundation_sections import Trimmed, TrimSection
from publish.operations.operation import Where
from publish.sew import foundation_joins
from publish.sew.bench import Bench
from publish.sew.names import Names
from publish.surd import Length
from publish.units import INCH_IN_MM

CHAPTER = "foundation"
SHORT_STITCH = Fraction(3, 2) / INCH_IN_MM
"""Length of one machine stitch through paper (1.5 mm), which then tears easily: common
practice, no source."""
SPARE = Fraction(1, 4)
"""Inches: cloth kept round a section until it is trimmed, and paper outside its cut line:
common practice, no source."""
HOW = ("print", "machine", "place", "sew", "flip", "on", "trim")
"""Steps that hold for every section, in order."""


def plan(bench: Bench, names: Names) -> None:
    """Sew every section of the size, and join blocks from them."""
    held = _held(bench)
    if held:
        _sew(bench, names, held)
        foundation_joins.join(bench, names)


@dataclass(frozen=True)
class _Held:
    """A section, the units of the top that are sewn on it, and what is printed."""

    drawn: FoundationSection
    units: tuple[Unit, ...]
    paper: Foundation


def _held(bench: Bench) -> list[_Held]:
    """Return the sections, first the one that is pictured: the first of three patches or more."""
    by_key: dict[str, list[Unit]] = {}
    for unit in every(bench.draft.assembly):
        if unit.section:
            by_key.setdefault(unit.section, []).append(unit)
    found = [
        _Held(f, tuple(by_key[f.key]), Foundation(f.key, f.key, f.count, f.ring, len(f.patches)))
        for f in bench.draft.foundations
        if f.key in by_key
    ]
    shown = next((h for h in found if len(h.drawn.patches) > 2), next(iter(found), None))
    return sorted(found, key=lambda held: held is not shown)


def _where(step: str) -> Where:
    return {"chapter": CHAPTER, "step": step}


def _sew(bench: Bench, names: Names, held: list[_Held]) -> None:
    seam, spare = bench.seam, bench.usual(SPARE)
    papers = tuple(h.paper for h in held)
    bench.add(
        PrintFoundations(**_where("print"), papers=papers, spare=spare, seam=seam),
        ShortenStitch(**_where("machine"), stitch=SHORT_STITCH),
    )
    ends = {h.paper.key: _ends(names, h) for h in held}
    wider = max(a for results in ends.values() for one in results for a in one.allow)
    for at, one in enumerate(held, 1):
        area = _area(bench, one, 1)
        bench.add(
            LayFirstPatch(
                **_where("place"),
                tag=str(at),
                paper=one.paper,
                area=area,
                seam=seam,
                around=max(wider, spare),
                shown=at == 1,
            )
        )
    second = [_work(bench, one, 2, at, wider, shown=at == 1) for at, one in enumerate(held, 1)]
    bench.add(*(sew for sew, _, _ in second))
    bench.add(*(trim for _, trim, _ in second), *(open_ for _, _, open_ in second))
    more = [(one, n) for one in held for n in range(3, one.paper.last + 1)]
    for at, (one, number) in enumerate(more, 1):
        bench.add(*_work(bench, one, number, at, wider, shown=False))
    for at, one in enumerate(held, 1):
        bench.add(
            TrimSection(
                **_where("trim"),
                tag=str(at),
                paper=one.paper,
                results=ends[one.paper.key],
                seam=seam,
                wider=wider,
                shown=at == 1,
            )
        )


def _work(
    bench: Bench, held: _Held, number: int, at: int, around: Length, *, shown: bool
) -> tuple[SewPatch, TrimPatch, OpenPatch]:
    """Return how a patch of a section is sewn on, its seam trimmed, and how it is opened."""
    further = number > 2
    sew, flip = (_where("on"), _where("on")) if further else (_where("sew"), _where("flip"))
    on: OfPatch = {
        "tag": str(at),
        "paper": held.paper,
        "area": _area(bench, held, number),
        "seam": bench.seam,
        "further": further,
    }
    return (
        SewPatch(**sew, **on, around=around, shown=shown),
        TrimPatch(**flip, **on, shown=shown),
        OpenPatch(**flip, **on),
    )


def _area(bench: Bench, held: _Held, number: int) -> Area:
    drawn, plan = held.drawn, bench.plan
    patch = drawn.patches[number - 1]
    own = [p for p in held.units[0].patches if p.spec == patch.spec]
    letter = plan.sources.get(own[0].key if own else "", "")
    return Area(
        number,
        patch.ring,
        tuple(through for _, through in patch.arcs),
        drawn.seams[max(number - 2, 0)],
        f"piece {letter}",
        not bench.pattern.fabrics[patch.fabric].directional,
    )


def _ends(names: Names, held: _Held) -> tuple[Trimmed, ...]:
    """Return what the papers of a section become: a heap for each way its edges are trimmed."""
    found: Counter[Trimmed] = Counter()
    for unit in held.units:
        assert unit.place is not None and unit.sewn is not None
        lies = names.lies(unit)
        quarters = (unit.patches[0].turn - unit.turn) // 90 - lies
        wide, high = unit.sewn.exact
        sides = (high, wide) if lies % 2 else (wide, high)
        allow = _allow(unit.place.recipe)
        found[Trimmed(names.made(unit), 0, quarters % 4, allow, sides)] += 1
    return tuple(replace(one, count=count) for one, count in found.items())


def _allow(recipe: Recipe) -> tuple[Length, Length, Length, Length]:
    """Return what lies beyond a recipe's outline at the top, right, bottom and left."""
    xs, ys = zip(*recipe.ring, strict=True)
    widest = max(recipe.allow)
    found: dict[int, Length] = {}
    after = (*recipe.ring[1:], recipe.ring[0])
    for one, two, allow in zip(recipe.ring, after, recipe.allow, strict=True):
        ends = (min(ys), max(xs), max(ys), min(xs))
        for side, end in enumerate(ends):
            axis = 1 if side in (0, 2) else 0
            if one[axis] == two[axis] == end:
                found[side] = max(allow, found.get(side, allow))
    top, right, bottom, left = (found.get(side, widest) for side in range(4))
    return top, right, bottom, left
