"""One fabric's plan: the ways that buy least, the strips, the length to buy.

In: the lettered needs of one fabric and size. Out: `FabricPlan` and its pieces.
Invariant: the plan buys no more than any combination of ways that was laid out; those
that were not cannot buy less, or are past the first `MOST_LAID_OUT`. What is returned
has been laid out and checked piece by piece.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import islice, product

from publish.cut.left import largest_left
from publish.cut.needs import Cloth, Need, Way
from publish.cut.order import cutting_order
from publish.cut.purchase import Purchase, purchase_of
from publish.cut.strips import Layout, Limits, Part, bound_of, floor_of, into_sections, lay_out
from publish.cut.words import to_buy
from publish.model.cutplan import FabricPlan, Piece
from publish.model.pattern import Fabric, Sewing
from publish.units import inches_text
from publish.words import english

MOST_COMBINATIONS = 512
"""Ways weighed by their bounds."""
MOST_LAID_OUT = 24
"""Ways laid out, those with the lowest bounds first."""
MOST_IN_SECTIONS = 2
"""Ways laid out in sections besides the one that is best without."""

FEW = 6
"""Kinds of pieces up to which it is worth the time to prove that whole strips are the
shortest; with more, sections find in that time what the proof would."""

Ways = tuple[Way, ...]
Cost = tuple[Fraction, Fraction]
"""What is bought by the yard and by the metre, in inches."""


@dataclass(frozen=True)
class Lettered:
    letter: str
    need: Need


def plan_fabric(fabric: Fabric, needs: Sequence[Lettered], sewing: Sewing) -> FabricPlan:
    """Return the plan that buys least over all ways to cut the needs.

    Every need must have a way that fits the usable width.
    """
    table = _Table(fabric, needs, purchase_of(fabric, sewing))
    best = table.least(table.choices)
    return replace(table.plan(best), choices=_choices(table, best))


def effort(parts: Sequence[Part]) -> Limits:
    """Return how hard whole strips are looked for."""
    return Limits(searches=int(len(parts) <= FEW))


class _Table:
    """Every choice of ways with its bounds, and the plans of those laid out so far."""

    def __init__(self, fabric: Fabric, needs: Sequence[Lettered], purchase: Purchase) -> None:
        self.fabric, self.needs, self.purchase = fabric, needs, purchase
        self._whole: dict[Ways, Layout] = {}
        self._plans: dict[Ways, FabricPlan] = {}
        cloth = Cloth(fabric.usable_width)
        self.choices = combinations(needs, cloth)
        self._bounds = {
            ways: bound_of(_parts(needs, ways), cloth.across, purchase.squaring)
            for ways in self.choices
        }

    def whole(self, ways: Ways) -> Layout:
        """Return a choice laid out in whole strips, once."""
        if ways not in self._whole:
            parts, purchase = _parts(self.needs, ways), self.purchase
            width = self.fabric.usable_width
            self._whole[ways] = lay_out(
                parts,
                width,
                purchase,
                squaring=purchase.squaring,
                limits=effort(parts),
            )
        return self._whole[ways]

    def plan(self, ways: Ways) -> FabricPlan:
        """Return the plan of a choice, in sections where that buys less."""
        if ways not in self._plans:
            parts, width = _parts(self.needs, ways), self.fabric.usable_width
            laid = into_sections(parts, width, self.purchase, self.whole(ways))
            self._plans[ways] = _plan(self.fabric, self.needs, ways, self.purchase, laid)
        return self._plans[ways]

    def least(self, choices: Sequence[Ways]) -> Ways:
        """Return the choice that buys least; of equals the first, with the plainest ways."""
        best = self._least_whole(choices)
        floors = {ways: self._floor(ways) for ways in choices}
        for ways in sorted(choices, key=lambda ways: floors[ways])[:MOST_IN_SECTIONS]:
            if self._priced(floors[ways]) < self._cost(best) and self._cost(ways) < self._cost(
                best
            ):
                best = ways
        return best

    def _least_whole(self, choices: Sequence[Ways]) -> Ways:
        """Return the choice that buys least in whole strips."""
        ranked = sorted(choices, key=lambda ways: self._bounds[ways])[:MOST_LAID_OUT]
        best = ranked[0]
        for ways in ranked[1:]:
            if self._at_best(ways) < self._at_whole(best) and (
                self._at_whole(ways) < self._at_whole(best)
            ):
                best = ways
        before = [
            w for w in choices[: choices.index(best)] if self._at_best(w) <= self._at_whole(best)
        ]
        equal = (w for w in before[:MOST_LAID_OUT] if self._at_whole(w) == self._at_whole(best))
        return next(equal, best)

    def _cost(self, ways: Ways) -> Cost:
        return self.cost_of(self.plan(ways))

    def cost_of(self, plan: FabricPlan) -> Cost:
        """Return what a plan buys: in the units that lead, then in the other."""
        return self._in_order(plan.buy, plan.buy_metric)

    def _at_whole(self, ways: Ways) -> Cost:
        return self._priced(self.whole(ways).gross)

    def _at_best(self, ways: Ways) -> Cost:
        return self._priced(self._bounds[ways])

    def _floor(self, ways: Ways) -> Fraction:
        parts, squaring = _parts(self.needs, ways), self.purchase.squaring
        return floor_of(parts, self.fabric.usable_width, squaring, quick=True)

    def _priced(self, length: Fraction) -> Cost:
        return self._in_order(self.purchase.buy(length), self.purchase.buy_metric(length))

    def _in_order(self, yards: Fraction, metres: Fraction) -> Cost:
        """Return what is bought in the units that lead, then in the other."""
        return (metres, yards) if self.purchase.metric else (yards, metres)


def combinations(needs: Sequence[Lettered], cloth: Cloth) -> list[Ways]:
    """Return every choice of ways that fit, one for each need, the plain ones first."""
    fitting = [[w for w in n.need.ways if w.fits(cloth)] for n in needs]
    return list(islice(product(*fitting), MOST_COMBINATIONS))


def _parts(needs: Sequence[Lettered], ways: Sequence[Way]) -> list[Part]:
    return [
        Part(n.letter, w.across, w.along, w.count, w.may_turn)
        for n, w in zip(needs, ways, strict=True)
    ]


def _plan(
    fabric: Fabric, needs: Sequence[Lettered], ways: Sequence[Way], purchase: Purchase, laid: Layout
) -> FabricPlan:
    parts, gross = _parts(needs, ways), laid.gross
    area = sum((p.across * p.along * p.count for p in parts), Fraction(0))
    return FabricPlan(
        fabric=fabric.key,
        usable_width=fabric.usable_width,
        pieces=tuple(piece_of(n, w) for n, w in zip(needs, ways, strict=True)),
        strips=cutting_order(laid.strips, fabric.usable_width),
        length=laid.length,
        needed=purchase.needed(gross),
        buy=purchase.buy(gross),
        buy_metric=purchase.buy_metric(gross),
        bound=floor_of(parts, fabric.usable_width, purchase.squaring),
        waste=1 - area / (laid.length * fabric.usable_width),
        squaring=laid.squared,
        shrunk=purchase.shrunk(gross),
        left=largest_left(laid.strips, fabric.usable_width, purchase.room(gross) - gross),
    )


def piece_of(lettered: Lettered, way: Way) -> Piece:
    """Return the piece that a need is, cut this way."""
    need = lettered.need
    piece = Piece(
        lettered.letter,
        need.called,
        need.purpose,
        need.fabric,
        need.width,
        need.length,
        need.count,
        need.finished_width,
        need.finished_length,
        need.exact_width,
        need.exact_length,
        way.may_turn,
        way.joined,
        need.note,
        need.shape,
        need.yields,
        template_key(lettered) if need.outline else "",
        need.angle,
        need.apart,
    )
    return piece if way.made is None else replace(piece, **vars(way.made))


def template_key(lettered: Lettered) -> str:
    """Return the key of the template that a piece is cut with."""
    return f"template-{lettered.letter.lower()}"


def _choices(table: _Table, chosen: Ways) -> tuple[str, ...]:
    """Say each decision that was made, and what the next best way would have cost."""
    said = []
    best = table.plan(chosen)
    for i, (lettered, way) in enumerate(zip(table.needs, chosen, strict=True)):
        others: dict[str, list[Ways]] = {}
        for ways in table.choices:
            others.setdefault(ways[i].words, []).append(ways)
        found = [
            (table.plan(table.least(ways)), words)
            for words, ways in others.items()
            if words != way.words
        ]
        if not found:
            continue
        other, words = min(found, key=lambda f: (*table.cost_of(f[0]), f[1]))
        called = lettered.need.called if way.made is None else way.made.called
        name = english(called, table.purchase.measures)
        text = f"{lettered.letter} ({name}) cut {way.words}"
        if table.cost_of(other)[0] > table.cost_of(best)[0]:
            yards, metres = other.buy - best.buy, other.buy_metric - best.buy_metric
            saved = to_buy(yards, metres, table.purchase.measures)
            text += f": buys {saved} less than {words}"
        said.append(text)
    return tuple(said)


def checked(plan: FabricPlan) -> FabricPlan:
    """Return a plan after laying it out: raises AssertionError where it does not fit."""
    held: Counter[str] = Counter()
    for strip in plan.strips:
        assert strip.used <= plan.usable_width, inches_text(strip.used)
        for cut in strip.held:
            assert cut.along <= strip.depth, inches_text(cut.along)
            held[cut.letter] += cut.count * strip.count
    wanted = {p.letter: p.count * p.joined_from for p in plan.pieces}
    assert held == wanted, (held, wanted)
    assert plan.length == sum((s.depth * s.count for s in plan.strips), Fraction(0))
    assert plan.bound <= plan.length + plan.squaring <= plan.needed
    return plan
