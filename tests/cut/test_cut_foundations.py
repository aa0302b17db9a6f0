"""Rectangles for foundation piecing.

Common practice, no source: at least 1/4 in beyond the seam allowance all round.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from math import hypot

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from patch_cases import patch, pattern, planned, points, size
from shapely import affinity
from shapely.geometry import Polygon

from publish.cut.foundations import rectangle
from publish.model.draft import FoundationSection, Unit
from publish.model.homes import BlockHome, Where
from publish.words import english

F = Fraction
AROUND = F(1, 2)

SQUARE = points((0, 0), (6, 0), (6, 6), (0, 6))
PATCHES = (
    # A leaning stripe with a triangle on each side of it.
    patch("s0", (1, 0), (3, 0), (5, 6), (3, 6), fabric="moss", spec=0),
    patch("s1", (0, 0), (1, 0), (3, 6), (0, 6), spec=1),
    patch("s2", (3, 0), (6, 0), (6, 6), (5, 6), spec=2),
)
SECTION = FoundationSection(
    "plume A",
    "A",
    "plume",
    PATCHES,
    SQUARE,
    (points((1, 0), (3, 6)), points((3, 0), (5, 6))),
    2,
)


def sewn(column, dx):
    """Return the section sewn, its patches somewhere on the top."""
    home = BlockHome(Where.ARRANGED, 0, column)
    held = tuple(
        replace(
            p,
            key=f"{home} {p.key}",
            home=home,
            column=column,
            ring=tuple((x + dx, y) for x, y in p.ring),
        )
        for p in PATCHES
    )
    box = (F(dx), F(0), F(dx) + 6, F(6))
    return Unit("section plume A", "section", box, section="plume A", held=held)


def made():
    whole = Unit("top", "top", (F(0), F(0), F(12), F(6)), "across", (sewn(0, 0), sewn(1, 6)))
    of = replace(size(6), width=F(12), inner_width=F(12), columns=2)
    return planned(whole, of=of, foundations=(SECTION,))


def test_a_rectangle_for_each_patch_like_ones_together():
    """By hand: the seams run along (1, 3) / √10, and 1/2 in is added at each end."""
    plan = made()
    stripe = next(p for p in plan.pieces if p.fabric == "moss")
    # Its corners lie at 1, 3, 23 and 21 along the seam: 22 / √10 = 6.957 in; it is
    # 12 sq in / √40 = 1.897 in wide.
    assert (stripe.width, stripe.length) == (F(3), F(8))
    assert (stripe.count, english(stripe.called), stripe.purpose) == (2, "for A1", "foundation")
    sides = [p for p in plan.pieces if p.fabric == "linen"]
    # Along the seam A2 reaches from 0 to 21, A3 from 3 to 24: 21 / √10 = 6.641 in; across
    # it, 3x - y, A2 reaches from -6 to 3, A3 from 9 to 18: 9 / √10 = 2.846 in.
    assert [(english(p.called), p.count) for p in sides] == [("for A2, A3", 4)]
    assert {sides[0].width, sides[0].length} == {F(4), F(31, 4)}


def test_every_held_patch_has_its_piece():
    plan = made()
    stripe = next(p for p in plan.pieces if p.fabric == "moss")
    assert {k for k, letter in plan.sources.items() if letter == stripe.letter} == {
        "r1c1 s0",
        "r1c2 s0",
    }
    assert len(plan.sources) == 6


GRID = st.integers(0, 12)
RING = st.lists(st.tuples(GRID, GRID), min_size=3, max_size=5, unique=True)


@given(RING, st.tuples(GRID, GRID), st.tuples(GRID, GRID))
def test_a_rectangle_holds_its_patch_with_allowance_and_is_not_much_larger(ring, one, two):
    assume(Polygon(ring).is_valid and one != two)
    shape = patch("a", *ring)
    section = replace(SECTION, patches=(shape,), seams=(points(one, two),))
    along, across = rectangle(section, 0, AROUND)
    dx, dy = two[0] - one[0], two[1] - one[1]
    turned = affinity.affine_transform(Polygon(ring), [dx, dy, -dy, dx, 0, 0])
    scale = hypot(dx, dy)
    left, top, right, bottom = (v / scale for v in turned.bounds)
    for side, needed in ((along, right - left + 1), (across, bottom - top + 1)):
        assert needed - 1e-6 <= side < needed + 0.25 + 1e-6
        assert side.denominator in (1, 2, 4)


def test_a_section_of_another_block_is_named_with_its_block():
    other = replace(SECTION, key="reed A", block="reed", patches=PATCHES[:1], seams=(), count=1)
    whole = Unit("top", "top", (F(0), F(0), F(6), F(6)), "across", (sewn(0, 0),))
    plan = planned(whole, pattern(), size(6), foundations=(SECTION, other))
    names = {english(p.called) for p in plan.pieces}
    assert any("plume A1" in name for name in names)
    assert any("reed A1" in name for name in names)


@pytest.mark.parametrize("name", ["for A1", "for A2, A3"])
def test_foundation_pieces_carry_no_finished_size(name):
    piece = next(p for p in made().pieces if english(p.called) == name)
    assert piece.finished_width is None and piece.exact_width is None
