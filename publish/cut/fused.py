"""Fused motifs: cut to their outline, so that they can be nested on web and on cloth.

In: pattern, draft, letters. Out: shapes to nest, the web.
Invariant: between any two outlines lie at least `WEB_APART`, as makers have it, and half of
that beside each edge of the roll; the nested layout is kept only where it buys less than squares.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from shapely import affinity, convex_hull, count_coordinates
from shapely.geometry import MultiPolygon, Polygon

from publish.cut.fabric import Lettered
from publish.cut.nest import Shape, nest
from publish.cut.rolls import squares
from publish.cut.stretch import placed
from publish.cut.words import piece_called
from publish.model.cutplan import WebPlan
from publish.model.draft import Draft
from publish.model.pattern import Motif, Pattern
from publish.model.trade import WEB_APART
from publish.units import round_up
from publish.words.values import Said

MANY = 4_000
"""Points of an outline above which it is made coarser to be nested."""
COARSER = 1 / 32
"""Inches by which it may be: half of what the nesting itself lets pass."""


NESTED = piece_called("nested motif")


@dataclass(frozen=True)
class Fused:
    """A motif to nest: its letter, how many, and its outline seen from the wrong side."""

    letter: str
    motif: Motif
    outline: MultiPolygon
    count: int
    apart: Fraction = WEB_APART
    called: Said | None = NESTED

    @property
    def name(self) -> str:
        return self.letter

    @property
    def blank(self) -> Polygon:
        """Return what the motif takes of web and cloth: its outline and half of `WEB_APART`.

        An outline with very many points is made coarser first, and the room round it wider
        by as much.
        """
        outline, room = self.outline, float(self.apart) / 2
        if count_coordinates(outline) > MANY:
            outline, room = outline.simplify(COARSER), room + COARSER
        grown = outline.buffer(room)
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
    found, apart = [], pattern.measures.usual(WEB_APART)
    for lettered in needs:
        motif = pattern.motifs.get(lettered.need.motif)
        if motif is not None and motif.method == "fusible":
            whole: MultiPolygon = draft.motifs[motif.key].whole
            seen = affinity.scale(whole, -1, 1, origin=(0, 0))
            found.append(Fused(lettered.letter, motif, seen, lettered.need.count, apart))
    return found


def web(pattern: Pattern, draft: Draft, motifs: Sequence[Fused]) -> WebPlan | None:
    """Return the web: nested, or squares side by side where that buys no more."""
    if not motifs:
        return None
    sewing = pattern.sewing
    side = max(draft.motifs[m.motif.key].span for m in motifs) + sewing.motif_margin
    plain = squares(sewing.web_width, sum(m.count for m in motifs), side, sewing)
    shapes = [m.shape((0, 90, 180, 270, *m.half_turn)) for m in motifs]
    made = nest(
        shapes,
        plain.width,
        lambda length: round_up(length, sewing.first_step),
        sewing.measures.grid,
    )
    buy = plain.buy if made is None else round_up(made.length, sewing.first_step)
    if made is None or buy >= plain.buy:
        return plain
    return replace(plain, length=made.length, buy=buy, placements=placed(motifs, made))
