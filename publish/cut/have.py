"""Whether a fabric's pieces can be cut from what is there, and how: that cloth first.

In: a fabric's plan, its needs, the pieces of cloth of it that are there. Out: the plan with
a `HavePlan`; notes. Invariant: every piece is cut once, from a piece of cloth that is there
or from what is still bought; what is there is used to its edges. Long strips keep the
lengths that they have when all of the fabric is bought.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction

from publish.cut.fabric import Lettered, plan_fabric
from publish.cut.needs import Way
from publish.cut.precut import Rest, ready_cut, sheets_of
from publish.cut.purchase import purchase_of
from publish.cut.scraps import Cloth, Cutting, spread
from publish.cut.sheets import Kind as SheetKind
from publish.cut.sheets import Problem as SheetProblem
from publish.cut.sheets import fewest
from publish.cut.stock import with_stock
from publish.cut.strips import Part
from publish.cut.strips.problem import Kind, Problem, common_step
from publish.cut.words import to_buy
from publish.model.cloth import Fabric, Have
from publish.model.cutplan import Cut, CutPlan, FabricPlan, HavePlan, Sheet, Strip, Used
from publish.model.pattern import Pattern, Sewing
from publish.notes import Note, Severity, warning
from publish.units import round_down

Merged = dict[tuple[tuple[int, int], ...], Rest]
"""Parts by the ways in which they may lie."""


def with_have(
    pattern: Pattern, fabric: Fabric, plan: FabricPlan, needs: Sequence[Lettered]
) -> FabricPlan:
    """Return a fabric's plan with the one that uses up what is there first."""
    there = tuple(h for h in pattern.have if h.fabric == fabric.key)
    if not there:
        return plan
    parts = parts_of(plan, needs)
    step = common_step([side for p in parts for side in (p.across, p.along)])
    merged = _merged(parts, step)
    width = int(fabric.usable_width // step)
    problem = _problem(merged, width)
    cloths = [Cloth(int(h.width // step), int(h.length // step), h.count) for h in there]
    found = spread(problem, pattern.sewing.squaring / step, cloths)
    left = list(merged.values())
    used = tuple(
        _simpler(one, parts, step) if one.count else one
        for one in _used(there, found.cuttings, left, step)
    )
    rest, bound = _rest(fabric, left, needs, pattern.sewing), round_down(found.bound * step)
    leads = purchase_of(fabric, pattern.sewing).leads
    if rest is not None and rest.precut is None and leads(rest) > leads(plan):
        used, rest = tuple(Used(have, ()) for have in there), plan  # nothing is spared
    return replace(plan, have=_checked(HavePlan(used, rest, bound), parts))


def _merged(parts: Sequence[Part], step: Fraction) -> Merged:
    """Return parts that may lie in the same ways together, in grid steps."""
    found: dict[tuple[tuple[int, int], ...], Rest] = {}
    for part in parts:
        a, b = int(part.across / step), int(part.along / step)
        options = tuple(sorted({(a, b), (b, a)} if part.may_turn else {(a, b)}))
        found.setdefault(options, []).append((part, part.count))
    return {options: found[options] for options in sorted(found)}


def _problem(merged: Merged, width: int) -> Problem:
    kinds = tuple(
        Kind(
            tuple(way for way in options if way[0] <= width),
            sum(n for _, n in merged[options]),
            options[0][0] * options[0][1],
        )
        for options in merged
    )
    return Problem(width, kinds, Fraction(1), Fraction(1), ())


def parts_of(plan: FabricPlan, needs: Sequence[Lettered]) -> list[Part]:
    """Return the rectangles that a plan cuts, those of nested shapes as the boxes round them."""
    held: Counter[tuple[str, Fraction, Fraction]] = Counter()
    nested: set[str] = set()
    for strip in plan.strips:
        nested |= {cut.letter for cut in strip.cuts} if strip.placements else set()
        for cut in () if strip.placements else strip.held:
            lying = (cut.along, cut.across) if cut.turned else (cut.across, cut.along)
            held[cut.letter, *lying] += cut.count * strip.count
    ways = {n.letter: n.need.ways for n in needs}
    found = [
        Part(*key, n, next(w.may_turn for w in ways[key[0]] if (w.across, w.along) == key[1:]))
        for key, n in held.items()
    ]
    for letter in sorted(nested):
        way = ways[letter][0]
        found.append(Part(letter, way.across, way.along, way.count, way.may_turn))
    return found


def _used(
    there: Sequence[Have], cuttings: Sequence[Cutting], left: list[Rest], step: Fraction
) -> tuple[Used, ...]:
    """Return how each piece of cloth is cut; a cutting may hold more than is wanted."""
    found: list[Counter[tuple[tuple[Strip, ...], bool]]] = [Counter() for _ in there]
    for cutting in cuttings:
        for _ in range(cutting.times):
            strips = _strips(cutting, left, step)
            if strips:
                found[cutting.cloth][strips, cutting.side.lengthwise] += 1
    return tuple(
        Used(have, tuple(Sheet(strips, n, way) for (strips, way), n in sheets.items()))
        for have, sheets in zip(there, found, strict=True)
    )


def _simpler(used: Used, parts: Sequence[Part], step: Fraction) -> Used:
    """Return the same pieces from as few of the same cloth, in as few cuts, as are found."""
    held: Counter[str] = Counter()
    for sheet in used.sheets:
        for strip in sheet.strips:
            for cut in strip.cuts:
                held[cut.letter] += cut.count * strip.count * sheet.count
    merged = _merged([replace(p, count=held[p.letter]) for p in parts if held[p.letter]], step)
    kinds = tuple(SheetKind(o, sum(n for _, n in rest)) for o, rest in merged.items())
    width, length = (int(side // step) for side in (used.have.width, used.have.length))
    problem = SheetProblem(width, length, kinds)
    sheets = sheets_of(problem, fewest(problem), list(merged.values()), step)
    return min(used, replace(used, sheets=sheets), key=_handling)


def _handling(used: Used) -> tuple[int, int]:
    """Return what makes cloth tedious to cut: many pieces of it, many strips."""
    return used.count, sum(sheet.count * len(sheet.strips) for sheet in used.sheets)


def _strips(cutting: Cutting, left: list[Rest], step: Fraction) -> tuple[Strip, ...]:
    made: Counter[tuple[Fraction, tuple[Cut, ...]]] = Counter()
    for d, counts in cutting.rows:
        cuts = [c for i, n in enumerate(counts) for c in _take(cutting, (d, i), n, left, step)]
        if cuts:
            deep = max(c.along for c in cuts)
            made[deep, tuple(sorted(cuts, key=lambda c: (-c.along, -c.across, c.letter)))] += 1
    ordered = sorted(made.items(), key=lambda item: -item[0][0])
    return tuple(Strip(deep, cuts, n) for (deep, cuts), n in ordered)


def _take(
    cutting: Cutting, at: tuple[int, int], wanted: int, left: list[Rest], step: Fraction
) -> Iterator[Cut]:
    """Yield pieces of one kind that are still to be cut, as they lie in one strip."""
    d, i = at
    problem, lengthwise = cutting.side.problem, cutting.side.lengthwise
    run, deep = (problem.across[d][i] or 0) * step, problem.along[d][i] * step
    for j, (part, rest) in enumerate(left[i]):
        taken = min(wanted, rest)
        if taken:
            left[i][j] = part, rest - taken
            wanted -= taken
            lying = (deep, run) if lengthwise else (run, deep)
            yield Cut(part.letter, run, deep, taken, lying != (part.across, part.along))


def _rest(
    fabric: Fabric, left: list[Rest], needs: Sequence[Lettered], sewing: Sewing
) -> FabricPlan | None:
    """Return the plan of what is still to be cut, from cloth that is bought; None for nothing."""
    by_letter = {n.letter: n.need for n in needs}
    fewer = [
        Lettered(
            part.letter,
            replace(
                by_letter[part.letter],
                count=n,
                ways=(Way(part.across, part.along, n, may_turn=part.may_turn),),
            ),
        )
        for rest in left
        for part, n in rest
        if n
    ]
    if not fewer:
        return None
    plan = with_stock(fabric, plan_fabric(fabric, fewer, sewing), sewing)
    return plan if fabric.sold_as is None else replace(plan, precut=ready_cut(fabric, fewer).plan)


def _checked(made: HavePlan, parts: Sequence[Part]) -> HavePlan:
    """Return a plan after looking at every piece of cloth in it: raises AssertionError where
    one does not hold what it should."""
    held: Counter[str] = Counter()
    sizes = {p.letter: {(q.across, q.along) for q in parts if q.letter == p.letter} for p in parts}
    for used in made.used:
        assert used.count <= used.have.count
        for sheet in used.sheets:
            long, room = (used.have.width, used.have.length)[:: -1 if sheet.lengthwise else 1]
            assert sum((s.depth * s.count for s in sheet.strips), Fraction(0)) <= room
            for strip in sheet.strips:
                assert strip.used <= long
                for cut in strip.cuts:
                    lying = (cut.across, cut.along)[:: -1 if sheet.lengthwise else 1]
                    assert lying[:: -1 if cut.turned else 1] in sizes[cut.letter]
                    assert cut.along <= strip.depth
                    held[cut.letter] += cut.count * strip.count * sheet.count
    for strip in made.rest.strips if made.rest is not None else ():
        for cut in strip.held:
            held[cut.letter] += cut.count * strip.count
    assert held == sum((Counter({p.letter: p.count}) for p in parts), Counter[str]())
    return made


def answers(pattern: Pattern, plans: Mapping[str, CutPlan]) -> Iterator[Note]:
    """Yield, for each size, whether what is there suffices; and what nothing is cut from."""
    if not pattern.have:
        return
    used: set[Have] = set()
    for key, plan in plans.items():
        used |= {
            u.have
            for f in plan.fabrics.values()
            for u in (f.have.used if f.have else ())
            if u.count
        }
        yield _answer(pattern, pattern.sizes[key].title, plan)
    for have in pattern.have:
        if have not in used:
            fabric = pattern.fabrics[have.fabric]
            yield warning(
                "C409",
                pattern.place("have", have.item),
                f"nothing is cut from the {have.kind} of {fabric.name}",
                expected="cloth that holds a piece of the quilt, and spares some that is bought",
                received=" × ".join(map(pattern.measures.text, (have.width, have.length))),
                help="leave it out of `have`, or keep it for another quilt",
            )


def _answer(pattern: Pattern, title: str, plan: CutPlan) -> Note:
    """Return what is still to buy for one size, beside what is there."""
    short = []
    for key, found in plan.fabrics.items():
        left = found if found.have is None else found.have.rest
        if left is not None and left.precut is not None:
            short.append(
                f"{left.precut.used} × {left.precut.sold_as.kind} of {_name(pattern, key)}"
            )
        elif left is not None:
            short.append(
                f"{to_buy(left.buy, left.buy_metric, pattern.measures)} of {_name(pattern, key)}"
            )
    what = f"the {title} can be made from what is there"
    if short:
        what = f"beside what is there, the {title} takes {', '.join(short)}"
    return Note("C410", Severity.INFO, pattern.place("have"), what)


def _name(pattern: Pattern, key: str) -> str:
    return pattern.fabrics[key].name
