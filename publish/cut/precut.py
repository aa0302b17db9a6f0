"""Cloth sold ready cut: how many fat quarters, squares or strips hold a fabric's pieces.

In: the lettered needs of one fabric, as they are when it is sold that way. Out: a
`PrecutPlan`, or the piece that is too large; `Alternative`s.
Invariant: every piece is cut from one sheet, every sheet fits its pieces, and the number
of sheets is never below its proven bound. A sheet is used to its edges: counts as
published for an 18 x 22 in fat quarter (quiltersresources.com, Measurements).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import islice

from publish.cut.fabric import Lettered, combinations, piece_of
from publish.cut.needs import Way, cloth_of
from publish.cut.sheets import Fewest, Kind, Problem, Side, fewest
from publish.cut.sheets import Pattern as SheetPattern
from publish.cut.strips import Part
from publish.cut.strips.problem import common_step
from publish.measures import INCHES, Measures
from publish.model.cloth import Fabric, SoldAs, fat_cuts
from publish.model.cutplan import Alternative, Cut, Piece, PrecutPlan, Sheet, Strip

MOST_COMBINATIONS = 8

Rest = list[tuple[Part, int]]


@dataclass(frozen=True)
class ReadyCut:
    """A plan with the ways and pieces that it was made for."""

    plan: PrecutPlan
    ways: tuple[Way, ...]
    pieces: tuple[Piece, ...]


def offers(fabric: Fabric, measures: Measures = INCHES) -> tuple[SoldAs, ...]:
    """Return what a fabric sold by length is also looked for as: common sizes, no source
    but those of the fat cuts. Squares and strips sold ready cut are inch products, which are
    offered where an inch may be told."""
    fat = fat_cuts(measures.metric)
    if not measures.has_inches:
        return fat
    ten, strip = Fraction(10), Fraction(5, 2)
    return (
        *fat,
        SoldAs("square", ten, ten),
        SoldAs("strip", fabric.usable_width, strip),
    )


def too_large(fabric: Fabric, needs: Sequence[Lettered]) -> Lettered | None:
    """Return the first need that no way of cutting fits what the fabric is sold as."""
    cloth = cloth_of(fabric)
    return next((n for n in needs if not any(w.fits(cloth) for w in n.need.ways)), None)


def ready_cut(fabric: Fabric, needs: Sequence[Lettered]) -> ReadyCut:
    """Return the plan with the fewest sheets; every need must have a way that fits."""
    best: ReadyCut | None = None
    for ways in islice(combinations(needs, cloth_of(fabric)), MOST_COMBINATIONS):
        parts = [
            Part(n.letter, w.across, w.along, w.count, w.may_turn)
            for n, w in zip(needs, ways, strict=True)
        ]
        plan = _plan(fabric, parts)
        if best is None or plan.used < best.plan.used:
            pieces = tuple(piece_of(n, w) for n, w in zip(needs, ways, strict=True))
            best = ReadyCut(plan, ways, pieces)
    assert best is not None
    return best


def alternative(
    fabric: Fabric, needs: Sequence[Lettered], pieces: Sequence[Piece], looked_for: bool = True
) -> Alternative:
    """Return whether a fabric could be bought as its `sold_as` says, with which pieces in
    more lengths than the plan's own `pieces`.

    What fits is laid out only where it is `looked_for`.
    """
    assert fabric.sold_as is not None
    wrong = too_large(fabric, needs)
    if wrong is not None:
        return Alternative(fabric.sold_as, None, larger=wrong.letter)
    if not looked_for:
        return Alternative(fabric.sold_as, None)
    made = ready_cut(fabric, needs)
    lengths = {p.letter: p.count * p.joined_from for p in pieces}
    joined = tuple(p.letter for p in made.pieces if p.count * p.joined_from > lengths[p.letter])
    return Alternative(fabric.sold_as, made.plan.used, made.plan.bound, joined=joined)


def _plan(fabric: Fabric, parts: Sequence[Part]) -> PrecutPlan:
    """Return the fewest sheets that hold the parts, with every cut in them."""
    sold, cloth = fabric.sold_as, cloth_of(fabric)
    assert sold is not None and cloth.along is not None
    step = common_step([side for p in parts for side in (p.across, p.along)])
    merged: dict[tuple[tuple[int, int], ...], Rest] = {}
    for part in parts:
        a, b = int(part.across / step), int(part.along / step)
        options = tuple(sorted({(a, b), (b, a)} if part.may_turn else {(a, b)}))
        merged.setdefault(options, []).append((part, part.count))
    kinds = tuple(Kind(o, sum(n for _, n in rest)) for o, rest in merged.items())
    problem = Problem(int(cloth.across // step), int(cloth.along // step), kinds)
    found = fewest(problem)
    sheets = sheets_of(problem, found, list(merged.values()), step)
    plan = PrecutPlan(sold, sheets, found.count, found.bound, -(-found.count // sold.packet))
    return _checked(plan, parts, cloth.across, cloth.along)


def sheets_of(
    problem: Problem, found: Fewest, left: list[Rest], step: Fraction
) -> tuple[Sheet, ...]:
    """Return sheets in inches; the patterns may hold more pieces than are wanted, and what
    is taken of those that are `left` is taken off there."""
    made: Counter[tuple[tuple[Strip, ...], bool]] = Counter()
    for pattern, times in sorted(found.patterns, reverse=True):
        for _ in range(times):
            strips = _strips(problem, pattern, left, step)
            made[strips, pattern[0]] += 1
    return tuple(Sheet(strips, n, lengthwise) for (strips, lengthwise), n in made.items())


def _strips(
    problem: Problem, pattern: SheetPattern, left: list[Rest], step: Fraction
) -> tuple[Strip, ...]:
    lengthwise, rows = pattern
    side = next(s for s in problem.sides if s.lengthwise == lengthwise)
    found: Counter[tuple[Fraction, tuple[Cut, ...]]] = Counter()
    for depth, counts in rows:
        cuts: list[Cut] = []
        for i, wanted in enumerate(counts):
            cuts += _take(problem, side, (side.depths.index(depth), i), wanted, left, step)
        if cuts:
            deep = max(c.along for c in cuts)
            found[deep, tuple(sorted(cuts, key=lambda c: (-c.along, -c.across, c.letter)))] += 1
    ordered = sorted(found.items(), key=lambda item: -item[0][0])
    return tuple(Strip(deep, cuts, n) for (deep, cuts), n in ordered)


def _take(
    problem: Problem, side: Side, at: tuple[int, int], wanted: int, left: list[Rest], step: Fraction
) -> list[Cut]:
    """Take pieces of one kind that are still to be cut, as they lie in one strip."""
    d, i = at
    run = side.run[d][i]
    ways = [o[::-1] if side.lengthwise else o for o in problem.kinds[i].options]
    deep = min((deep for r, deep in ways if r == run and deep <= side.depths[d]), default=0)
    cuts = []
    for j, (part, rest) in enumerate(left[i]):
        taken = min(wanted, rest)
        if taken:
            left[i][j] = part, rest - taken
            wanted -= taken
            lying = (deep * step, run * step) if side.lengthwise else (run * step, deep * step)
            turned = lying != (part.across, part.along)
            cuts.append(Cut(part.letter, run * step, deep * step, taken, turned))
    return cuts


def _checked(
    plan: PrecutPlan, parts: Sequence[Part], across: Fraction, along: Fraction
) -> PrecutPlan:
    """Return a plan after looking at every sheet: raises AssertionError where one fails."""
    held: Counter[str] = Counter()
    sizes = {p.letter: p for p in parts}
    for sheet in plan.sheets:
        long, room = (along, across) if sheet.lengthwise else (across, along)
        assert sum((s.depth * s.count for s in sheet.strips), Fraction(0)) <= room
        for strip in sheet.strips:
            assert strip.used <= long
            for cut in strip.cuts:
                part = sizes[cut.letter]
                lying = (cut.along, cut.across) if sheet.lengthwise else (cut.across, cut.along)
                wanted = (part.across, part.along)
                assert lying == (wanted[::-1] if cut.turned else wanted)
                assert cut.along <= strip.depth and (part.may_turn or not cut.turned)
                held[cut.letter] += cut.count * strip.count * sheet.count
    assert held == {p.letter: p.count for p in parts}
    assert sum(sheet.count for sheet in plan.sheets) == plan.used
    return plan


def sold_as(fabric: Fabric, offer: SoldAs) -> Fabric:
    """Return a fabric as if it were sold so."""
    return replace(fabric, sold_as=offer)
