"""Fused motifs: cut to their outline, so that they can be nested on web and on cloth.

In: pattern, draft, letters. Out: shapes to nest, a stretch of cloth, the web.
Invariant: between any two outlines lie at least `APART` inches, and half of that beside
each edge of the roll; the nested layout is kept only where it buys less than squares.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from shapely import affinity, convex_hull
from shapely.geometry import MultiPolygon, Polygon

from publish.cut.fabric import Lettered
from publish.cut.nest import Nest, Shape, nest, place
from publish.cut.order import cutting_order
from publish.cut.purchase import Purchase
from publish.cut.rolls import squares
from publish.cut.words import to_buy
from publish.model.cutplan import Cut, FabricPlan, Piece, Placed, Strip, WebPlan
from publish.model.draft import Draft
from publish.model.pattern import Motif, Pattern
from publish.units import round_down, round_up

APART = Fraction(1, 2)
"""Left between shapes traced on web, which is cut out 3/16 in outside the line:
Quiltmaker magazine (F+W), Piecing and applique."""


@dataclass(frozen=True)
class Fused:
    """A motif to nest: its letter, how many, and its outline seen from the wrong side."""

    letter: str
    motif: Motif
    outline: MultiPolygon
    count: int

    @property
    def blank(self) -> Polygon:
        """Return what the motif takes of web and cloth: its outline and half of `APART`."""
        grown = self.outline.buffer(float(APART) / 2)
        return Polygon((grown if isinstance(grown, Polygon) else convex_hull(grown)).exterior)

    @property
    def half_turn(self) -> tuple[int, ...]:
        """Return the turn that brings points between points, in whole degrees."""
        return () if 180 % self.motif.folds else (180 // self.motif.folds,)

    def shape(self, turns: Sequence[int]) -> Shape:
        """Return the blank to nest; turns that the motif's folds repeat are left out."""
        every = {turn % (360 / self.motif.folds): turn for turn in sorted(turns, reverse=True)}
        return Shape(self.letter, self.blank, self.count, tuple(sorted(every.values())))


def fused(pattern: Pattern, draft: Draft, needs: Sequence[Lettered]) -> list[Fused]:
    """Return the motifs among some needs that are fused."""
    found = []
    for lettered in needs:
        motif = pattern.motifs.get(lettered.need.motif)
        if motif is not None and motif.method == "fusible":
            whole: MultiPolygon = draft.motifs[motif.key].whole
            seen = affinity.scale(whole, -1, 1, origin=(0, 0))
            found.append(Fused(lettered.letter, motif, seen, lettered.need.count))
    return found


def nested_cloth(motifs: Sequence[Fused], boxes: FabricPlan, rest: FabricPlan | None,
                 purchase: Purchase, directional: bool) -> FabricPlan:  # fmt: skip
    """Return the fabric's plan with its motifs nested, or `boxes`, cut from
    squares, where that buys less.

    `rest` is the plan of everything else that is cut from the fabric.
    """
    before = Fraction(0) if rest is None else rest.length
    turns = (0,) if directional else (0, 90, 180, 270)
    made = nest([m.shape(turns) for m in motifs], boxes.usable_width,
                lambda length: purchase.buy(before + length))  # fmt: skip
    if made is None or purchase.buy(before + made.length) >= boxes.buy:
        return boxes
    length = before + made.length
    strip = _stretch(motifs, made)
    strips = cutting_order((strip, *(rest.strips if rest else ())), boxes.usable_width)
    taken = sum((s.area * s.count for s in strips), Fraction(0))
    pieces = {p.letter: p for p in rest.pieces} if rest else {}
    pieces |= {c.letter: _outlined(boxes, c) for c in strip.cuts}
    said = rest.choices if rest else ()
    return replace(
        boxes,
        pieces=tuple(pieces[p.letter] for p in boxes.pieces),
        strips=strips,
        length=length,
        needed=purchase.needed(length),
        buy=purchase.buy(length),
        buy_metric=purchase.buy_metric(length),
        bound=round_down(taken / boxes.usable_width),
        waste=1 - taken / (length * boxes.usable_width),
        choices=(*said, _words(boxes, purchase, length, strip)),
    )


def _words(boxes: FabricPlan, purchase: Purchase, length: Fraction, strip: Strip) -> str:
    letters = " and ".join(c.letter for c in strip.cuts)
    saved = to_buy(boxes.buy - purchase.buy(length),
                   boxes.buy_metric - purchase.buy_metric(length))  # fmt: skip
    return f"{letters} nested: buys {saved} less than squares"


def _outlined(boxes: FabricPlan, cut: Cut) -> Piece:
    """Return the piece that a nested motif is: the box round its outline."""
    piece = next(p for p in boxes.pieces if p.letter == cut.letter)
    return replace(piece, name="nested motif", width=cut.across, length=cut.along,
                   exact_width=None, exact_length=None, may_turn=False)  # fmt: skip


def _stretch(motifs: Sequence[Fused], made: Nest) -> Strip:
    """Return the stretch of cloth that nested motifs take."""
    cuts = []
    for motif in motifs:
        left, top, right, bottom = motif.outline.bounds
        wide, high = (round_up(Fraction(v).limit_denominator(10**6))
                      for v in (right - left, bottom - top))  # fmt: skip
        cuts.append(Cut(motif.letter, wide, high, motif.count))
    return Strip(made.length, tuple(cuts), 1, placed(motifs, made))


def placed(motifs: Sequence[Fused], made: Nest) -> tuple[Placed, ...]:
    """Return every motif's outline where it lies."""
    outlines = {m.letter: m.outline for m in motifs}
    return tuple(Placed(s.name, place(outlines[s.name], s), s.turn) for s in made.spots)


def web(pattern: Pattern, draft: Draft, motifs: Sequence[Fused]) -> WebPlan | None:
    """Return the web: nested, or squares side by side where that buys no more."""
    if not motifs:
        return None
    sewing = pattern.sewing
    side = max(draft.motifs[m.motif.key].span for m in motifs) + sewing.motif_margin
    plain = squares(sewing.web_width, sum(m.count for m in motifs), side, sewing)
    shapes = [m.shape((0, 90, 180, 270, *m.half_turn)) for m in motifs]
    made = nest(shapes, plain.width, lambda length: round_up(length, sewing.purchase_step))
    buy = plain.buy if made is None else round_up(made.length, sewing.purchase_step)
    if made is None or buy >= plain.buy:
        return plain
    return replace(plain, length=made.length, buy=buy, placements=placed(motifs, made))
