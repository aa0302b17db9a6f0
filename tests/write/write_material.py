"""A made-up pattern with every material fact: cloth sold ready cut, cloth at hand, motifs
nested on cloth and on web, stabiliser, a split backing panel.

In: the fusible pattern. Out: `facts`.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import write_made as w
from shapely.geometry import MultiPolygon, box

from publish.model.cloth import FAT_EIGHTH, FAT_QUARTER, SoldAs
from publish.model.cutplan import (
    Alternative,
    Cut,
    CutPlan,
    FabricPlan,
    Piece,
    Placed,
    PrecutPlan,
    Sheet,
    Strip,
    WebPlan,
)
from publish.words.values import Named

F = Fraction
STRIPS = SoldAs("strip", F(40), F(5, 2), 20)
SQUARES = SoldAs("square", F(10), F(10))
SPAN = F(31, 2)


def placements(letter: str, count: int, beside: int) -> tuple[Placed, ...]:
    """Return boxes of the motif's span in rows, 1/2 in apart."""
    step = float(SPAN) + 0.5
    return tuple(
        Placed(letter, MultiPolygon([box(x, y, x + float(SPAN), y + float(SPAN))]), 0.0)
        for x, y in ((0.25 + n % beside * step, 0.25 + n // beside * step) for n in range(count))
    )


def facts() -> w.Made:
    """Return a mini and a throw, fused."""
    made = w.made(w.MINI, w.THROW, method="fusible")
    fabrics = {
        **made.pattern.fabrics,
        "linen": replace(made.pattern.fabrics["linen"], owned=F(99)),
        "sand": replace(made.pattern.fabrics["sand"], sold_as=FAT_QUARTER),
        "red": replace(made.pattern.fabrics["red"], sold_as=STRIPS),
    }
    motifs = {k: replace(m, stabiliser=True) for k, m in made.pattern.motifs.items()}
    pattern = replace(made.pattern, fabrics=fabrics, motifs=motifs)
    plans = {k: _plan(p, k == "throw") for k, p in made.plans.items()}
    return replace(made, pattern=pattern, plans=plans)


def _plan(plan: CutPlan, throw: bool) -> CutPlan:
    assert plan.web is not None and plan.backing is not None
    fabrics = {key: _fabric(key, fabric, throw) for key, fabric in plan.fabrics.items()}
    pieces = {p.letter: p for fabric in fabrics.values() for p in fabric.pieces}
    count = plan.web.squares
    letter = next(p.letter for p in plan.pieces if p.purpose == "motif")
    web = (
        replace(
            plan.web,
            width=F(17),
            length=F(145),
            buy=F(297, 2),
            placements=placements(letter, count, 1),
        )
        if throw
        else plan.web
    )
    backing = plan.backing
    if throw:
        backing = replace(backing, half=backing.panel_width / 2)
    return replace(
        plan,
        pieces=tuple(pieces[p.letter] for p in plan.pieces),
        fabrics=fabrics,
        web=web,
        backing=backing,
        stabiliser=WebPlan(F(20), 17 * F(count), 18 * F(count), count, F(17)),
    )


def _fabric(key: str, plan: FabricPlan, throw: bool) -> FabricPlan:
    if key in ("sand", "red"):
        return replace(plan, precut=_precut(plan, FAT_QUARTER if key == "sand" else STRIPS))
    answers = (
        Alternative(FAT_QUARTER, 3, 2, joined=(plan.pieces[0].letter,)),
        Alternative(FAT_EIGHTH, None, larger=plan.pieces[0].letter),
        Alternative(SQUARES, None, larger=plan.pieces[0].letter),
        Alternative(STRIPS, None, larger=plan.pieces[0].letter),
    )
    plan = replace(plan, alternatives=answers)
    if key == "linen":
        stock = "short by 3/8 yd (0.30 m)" if throw else "enough, with 1/4 yd (0.20 m) left"
        said = f"2 3/4 yd (2.51 m) at hand are {stock}"
        return replace(plan, spare=F(9), stock=Named(stock), choices=(*plan.choices, said))
    return _nested(plan) if key == "moss" and throw else plan


def _precut(plan: FabricPlan, sold: SoldAs) -> PrecutPlan:
    """Return a sheet for each piece; what is short enough is cut along the sheet's length."""
    sheets = tuple(_sheet(p, sold) for p in plan.pieces)
    used = sum(s.count for s in sheets)
    return PrecutPlan(sold, sheets, used, used, -(-used // sold.packet))


def _sheet(piece: Piece, sold: SoldAs) -> Sheet:
    deep, long = sorted((piece.width, piece.length))
    cut = Cut(piece.letter, min(long, sold.width), deep, 1)
    count = piece.count * piece.joined_from
    return Sheet((Strip(deep, (cut,), 1),), count, 12 < long <= sold.length)


def _nested(plan: FabricPlan) -> FabricPlan:
    piece = plan.pieces[0]
    cut = Cut(piece.letter, SPAN, SPAN, piece.count)
    strip = Strip(F(80), (cut,), 1, placements(piece.letter, piece.count, 2))
    return replace(
        plan,
        pieces=(replace(piece, called=Named("nested motif"), width=SPAN, length=SPAN),),
        strips=(strip,),
        length=F(80),
        needed=F(81),
        buy=F(81),
        bound=F(60),
    )
