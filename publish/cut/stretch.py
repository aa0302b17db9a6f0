"""A stretch of cloth that shapes are nested in, where boxes round them would waste it.

In: outlines with their letters, a fabric's plan in boxes. Out: the plan that buys less.
Invariant: the nested layout is kept only where it buys less than boxes; it has been
looked at again by `nest.faults`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Protocol

from shapely.geometry import MultiPolygon

from publish.cut.left import largest_left
from publish.cut.nest import Nest, Shape, least, nest, place
from publish.cut.order import cutting_order
from publish.cut.purchase import Purchase
from publish.cut.words import to_buy
from publish.model.cutplan import Cut, FabricPlan, Piece, Placed, Strip
from publish.units import round_down, round_up
from publish.words.values import Said


class Nestable(Protocol):
    """A shape to nest, as it lies on the wrong side of the cloth."""

    @property
    def name(self) -> str:
        """Unique among the shapes of one stretch."""

    @property
    def letter(self) -> str:
        """Of its piece."""

    @property
    def outline(self) -> MultiPolygon:
        """What is cut out."""

    @property
    def count(self) -> int:
        """How many are cut."""

    @property
    def called(self) -> Said | None:
        """What its piece is called once it is nested; None to keep its name."""

    def shape(self, turns: Sequence[int]) -> Shape:
        """Return what it takes of the cloth, and the turns it may lie in."""


def nested_cloth(
    motifs: Sequence[Nestable],
    boxes: FabricPlan,
    rest: FabricPlan | None,
    purchase: Purchase,
    directional: bool,
) -> FabricPlan:
    """Return the fabric's plan with its shapes nested, or `boxes` where that buys no more.

    `rest` is the plan of everything else that is cut from the fabric.
    """
    before = purchase.squaring + (rest.length + rest.squaring if rest is not None else 0)
    turns = (0,) if directional else (0, 90, 180, 270)
    shapes, grid = [m.shape(turns) for m in motifs], purchase.measures.grid
    if purchase.first(before + least(shapes, boxes.usable_width)) >= purchase.leads(boxes):
        return boxes
    made = nest(shapes, boxes.usable_width, lambda length: purchase.first(before + length), grid)
    if made is None or purchase.first(before + made.length) >= purchase.leads(boxes):
        return boxes
    gross = before + made.length
    squaring = purchase.squaring + (rest.squaring if rest is not None else 0)
    length = gross - squaring
    strip = _stretch(motifs, made, grid)
    strips = cutting_order((strip, *(rest.strips if rest else ())), boxes.usable_width)
    taken = sum((s.area * s.count for s in strips), Fraction(0))
    pieces = {p.letter: p for p in rest.pieces} if rest else {}
    called = {m.letter: m.called for m in motifs}
    pieces |= {c.letter: _outlined(boxes, c, called[c.letter]) for c in strip.cuts}
    said = rest.choices if rest else ()
    return replace(
        boxes,
        pieces=tuple(pieces[p.letter] for p in boxes.pieces),
        strips=strips,
        length=length,
        needed=purchase.needed(gross),
        buy=purchase.buy(gross),
        buy_metric=purchase.buy_metric(gross),
        squaring=squaring,
        shrunk=purchase.shrunk(gross),
        bound=round_down(taken / boxes.usable_width),
        waste=1 - taken / (length * boxes.usable_width),
        choices=(*said, _words(boxes, purchase, gross, strip)),
        left=largest_left(strips, boxes.usable_width, purchase.room(gross) - gross),
    )


def _words(boxes: FabricPlan, purchase: Purchase, gross: Fraction, strip: Strip) -> str:
    letters = " and ".join(c.letter for c in strip.cuts)
    whole = all(p.shape != "template" for p in boxes.pieces if p.letter in letters.split(" and "))
    of = "squares" if whole else "the boxes round them"
    yards = boxes.buy - purchase.buy(gross)
    metres = boxes.buy_metric - purchase.buy_metric(gross)
    saved = to_buy(yards, metres, purchase.measures)
    return f"{letters} nested: buys {saved} less than {of}"


def _outlined(boxes: FabricPlan, cut: Cut, called: Said | None) -> Piece:
    """Return the piece that a nested shape is: the box round its outline."""
    piece = next(p for p in boxes.pieces if p.letter == cut.letter)
    return replace(
        piece,
        called=called or piece.called,
        width=cut.across,
        length=cut.along,
        exact_width=None,
        exact_length=None,
        may_turn=False,
    )


def _stretch(motifs: Sequence[Nestable], made: Nest, grid: Fraction) -> Strip:
    """Return the stretch of cloth that nested shapes take; a cut is the box round the first
    of its shapes, as that lies."""
    cuts: dict[str, Cut] = {}
    laid = placed(motifs, made)
    for motif in motifs:
        outline = next(p.outline for p in laid if p.letter == motif.letter)
        left, top, right, bottom = outline.bounds
        wide, high = (
            round_up(Fraction(v).limit_denominator(10**6), grid)
            for v in (right - left, bottom - top)
        )
        before = cuts[motif.letter].count if motif.letter in cuts else 0
        cuts[motif.letter] = Cut(motif.letter, wide, high, before + motif.count)
    return Strip(made.length, tuple(cuts.values()), 1, laid, step=grid)


def placed(motifs: Sequence[Nestable], made: Nest) -> tuple[Placed, ...]:
    """Return every shape's outline where it lies."""
    known = {m.name: m for m in motifs}
    return tuple(
        Placed(known[s.name].letter, place(known[s.name].outline, s), s.turn) for s in made.spots
    )
