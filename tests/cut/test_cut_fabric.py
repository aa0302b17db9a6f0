"""Fabric plans: published counts at their stated width, and what must always hold."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
import reedmace
from guillotine import inches
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.cut.fabric import Lettered, checked, plan_fabric
from publish.cut.needs import Need, plain
from publish.deliver.cloth import fabric_numbers
from publish.units import YARD
from publish.words.values import Named

F = Fraction


def plan(pieces, width, **changes):
    """Return the plan of rectangles (width, length, count), no allowances."""
    base = reedmace.pattern()
    sewing = replace(base.sewing, straightening=F(0), **changes)
    fabric = replace(base.fabrics["linen"], usable_width=F(width))
    needs = [
        Lettered(
            chr(65 + i),
            Need(Named("piece"), "ground", "linen", F(w), F(h), n, plain(F(w), F(h), n, False)),
        )
        for i, (w, h, n) in enumerate(pieces)
    ]
    return checked(plan_fabric(fabric, needs, sewing))


# Fabric cutting chart, sylviasquiltdepot.com: squares from a length of washed 44 in fabric;
# the width that fits the chart best is 43 1/2 in, so these test the counting, not the width.
@pytest.mark.parametrize(
    ("side", "yards", "squares"),
    [
        (F(5, 2), F(1, 8), 17),
        (F(5, 2), F(1, 2), 119),
        (F(5, 2), F(1), 238),
        (F(7, 2), F(1, 4), 24),
        (F(7, 2), F(1), 120),
        (F(5), F(1), 56),
        (F(11, 2), F(1, 2), 21),
        (F(13, 2), F(1, 4), 6),
        (F(8), F(1), 20),
        (F(10), F(1), 12),
    ],
)
def test_squares_from_a_length(side, yards, squares):
    assert plan([(side, side, squares)], "43.5").length <= yards * YARD
    assert plan([(side, side, squares + 1)], "43.5").length > yards * YARD


# Measurements, quiltersresources.com: squares from a fat quarter, 18 x 22 in.
@pytest.mark.parametrize(("side", "squares"), [(2, 99), (3, 42), (4, 20), (6, 9), (F(13, 2), 6)])
def test_squares_from_a_fat_quarter(side, squares):
    assert plan([(side, side, squares)], 22).length <= 18
    assert plan([(side, side, squares + 1)], 22).length > 18


# Arithmetic done here (from memory): 40 squares of 2 1/2 in on 42 in: three levels of 16.
def test_levels_and_area_bound():
    made = plan([(F(5, 2), F(5, 2), 40)], 42)
    assert made.length == made.bound == F(15, 2)


SIDES = st.integers(8, 200).map(lambda n: F(n, 8))
PIECES = st.lists(st.tuples(SIDES, SIDES, st.integers(1, 12)), min_size=1, max_size=4)


@settings(max_examples=25, deadline=None)
@given(PIECES)
def test_a_plan_fits_and_is_never_below_its_bound(pieces):
    made = plan(pieces, 40)  # `plan` lays every strip out again
    area = sum((w * h * n for w, h, n in pieces), F(0))
    assert area / 40 <= made.bound <= made.length <= made.buy
    assert made.buy - made.needed < F(9, 2)


@settings(max_examples=15, deadline=None)
@given(PIECES, st.tuples(SIDES, SIDES, st.integers(1, 6)))
def test_more_pieces_never_need_a_lower_bound(pieces, more):
    assert plan([*pieces, more], 40).buy >= plan(pieces, 40).bound


def test_a_turned_piece_keeps_its_size():
    made = plan([(F(39), F(3), 1), (F(3), F(30), 1)], 40)
    cuts = {c.letter: (c.across, c.along) for s in made.strips for c in s.cuts}
    assert made.length == 6
    assert cuts["B"] == (30, 3)


def test_each_strip_is_squared_up() -> None:
    """Nine squares of 10 in, three to a strip of 30 in: three strips, 3/8 in for their edges.

    A single strip 30 in deep, cut lengthwise, would be squared up once: so low is the bound.
    """
    found = plan([(10, 10, 9)], 30, squaring=F(1, 8))
    assert (found.length, found.squaring) == (30, F(3, 8))
    assert found.needed == F(30) + F(3, 8)
    assert (found.bound, found.gap) == (F(30) + F(1, 8), F(1, 4))


@settings(max_examples=40, deadline=None)
@given(
    st.lists(
        st.tuples(st.integers(2, 20), st.integers(2, 20), st.integers(1, 9)),
        min_size=1,
        max_size=4,
    ),
    st.sampled_from([F(0), F(1, 8), F(1, 4), F(3, 10)]),
)
def test_a_person_who_squares_up_has_enough(pieces, squaring) -> None:
    """Cutting strip by strip, taking the squaring off before each strip, never runs out."""
    found = plan([(F(w), F(h), n) for w, h, n in pieces], 42, squaring=squaring)
    left = found.needed
    for strip in found.strips:
        left -= strip.count * (strip.depth + squaring)
    assert left == 0
    assert found.bound <= found.length + found.squaring


def test_squaring_can_make_fewer_strips_the_better_plan() -> None:
    """With nothing to square, two ways of one length are alike; with squaring, the one with
    fewer strips is bought: six of 6 x 12 in on 36 in lie in one strip of 12, not in two of 6."""
    few = plan([(6, 12, 6)], 36, squaring=F(1))
    assert [(s.depth, s.count) for s in few.strips] == [(12, 1)]


def test_net_length_and_allowances_add_up_to_what_is_needed():
    """Ten squares of 10 in, four abreast: three strips, 30 in. With 1/8 in for squaring each,
    1 in for the cut end and 2 1/2 in for a mis-cut 33 7/8 in, which is 97 % of what is needed."""
    base = reedmace.pattern()
    sewing = replace(base.sewing, straightening=F(1), squaring=F(1, 8), mis_cut=F(5, 2))
    fabric = replace(base.fabrics["linen"], usable_width=F(40), shrinkage=F(3, 100))
    need = Need(Named("piece"), "ground", "linen", F(10), F(10), 10, plain(F(10), F(10), 10, False))
    told = fabric_numbers(plan_fabric(fabric, [Lettered("A", need)], sewing))
    parts = [inches(told[key]) for key in ("length", "squaring", "shrinkage")]
    assert parts == [30, F(3, 8), F(271, 8) / F(97, 100) * F(3, 100)]
    assert sum(parts) + 1 + F(5, 2) == inches(told["needed"])
