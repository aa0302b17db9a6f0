"""Strips that are longer than the cloth: what is told of their lengths is what was cut.

Common practice, no source: n lengths joined by straight seams give their sum less a seam's two
allowances at each of the n - 1 joins.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from sewing_cases import sewn

from publish.operations.lengths import JoinLengths
from publish.operations.operation import Moment
from publish.operations.rehearsal import SizeMaking

LONG = (
    "samphire",
    "heronry",
    "long sashing",
    "long sashing on point",
    "long sashing along the cloth",
)


def joins(made: SizeMaking) -> list[tuple[JoinLengths, Moment]]:
    return [(m.operation, m) for m in made.moments if isinstance(m.operation, JoinLengths)]


@pytest.mark.parametrize("name", LONG)
def test_lengths_are_as_they_were_cut_and_come_to_the_strip(name: str) -> None:
    found, seam = sewn(name), sewn(name).pattern.sewing.seam
    seen = 0
    for key, made in found.making.sizes.items():
        pieces = {p.letter: p for p in found.plans[key].pieces}
        for operation, moment in joins(made):
            for one in operation.strips:
                piece = pieces[one.letter]
                cuts = [
                    (sorted((cut.across, cut.along)), cut.count * strip.count)
                    for strip in found.plans[key].fabrics[piece.fabric].strips
                    for cut in strip.held
                    if cut.letter == one.letter
                ]
                assert sum(count for _, count in cuts) == piece.count * piece.joined_from
                (narrow, long), *others = {tuple(sides) for sides, _ in cuts}
                part = moment.before(one.piece)
                assert not others and (narrow, long) == (part.width.told, part.height.told)
                comes_to = long * one.each - 2 * seam * (one.each - 1)
                need = max(piece.width, piece.length)
                assert need <= comes_to < need + one.each * Fraction(1, 8)
                seen += 1
    assert seen


def test_blocks_between_long_strips_come_to_the_top_by_hand() -> None:
    """Four 12 in blocks and three 2 in strips: 54 in finished, 54 1/2 in from raw edge to raw
    edge, of two lengths of 27 1/2 in."""
    (made,) = sewn("long sashing").making.sizes.values()
    ((operation, moment),) = joins(made)
    (one,) = operation.strips
    assert (one.count, one.each) == (4, 2)
    assert moment.before(one.piece).height.told == Fraction(55, 2)
    assert moment.after(one.strip).height.exact == Fraction(109, 2)
