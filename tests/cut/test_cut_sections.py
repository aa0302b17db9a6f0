"""Plans in sections: examples worked out by hand, cut up by a checker of its own.

The checker, `guillotine`, knows the form of `numbers.json` and nothing of the planner.
Lengths and areas are worked out in the comments beside each example.
"""

from __future__ import annotations

from collections import Counter
from fractions import Fraction

import pytest
from cut_instances import SHOP, cut_list
from guillotine import cut_up
from test_cut_fabric import plan

from publish.cut.strips import Part, floor_of, into_sections, lay_out
from publish.deliver.cloth import fabric_numbers
from publish.model.cutplan import FabricPlan

F = Fraction
SQUARING = F(1, 10)
WIDTH = F(40)
YARDS = F(7, 8) * 36


def planned(parts, width=WIDTH):
    """Return whole strips, and what sections make of them."""
    whole = lay_out(parts, width, SHOP, squaring=SQUARING)
    return whole, into_sections(parts, width, SHOP, whole)


def square(letter, side, count):
    return Part(letter, F(side), F(side), count, True)


def stages(parts, width, laid):
    """Cut a layout up, hold what it gives against what was asked for, and return the
    stages of cuts that it took."""
    fabric = FabricPlan(
        "", width, (), laid.strips, laid.length, laid.gross, laid.gross, laid.gross, F(0), F(0)
    )
    pieces, took = cut_up(fabric_numbers(fabric))
    found = Counter()
    for (letter, turned, across, along), n in pieces.items():
        found[letter, *((along, across) if turned else (across, along))] += n
    assert found == Counter({(p.letter, p.across, p.along): p.count for p in parts})
    free = {p.letter for p in parts if p.may_turn}
    assert all(letter in free for letter, turned, *_ in pieces if turned)
    return took


@pytest.mark.parametrize(
    ("large", "small", "whole", "length"),
    [
        # 40 of 2 1/2 in lie four abreast in the 12 in beside the square, ten times down 28 in;
        # in strips of their own, sixteen to each, they take 28 + 3 x 2 1/2 in
        ((28, 1), (F(5, 2), 40), F(71, 2), 28),
        # four of 10 in lie beside the 20 in square, and four in a strip: 20 + 10; else 20 + 20
        ((20, 1), (10, 8), 40, 30),
    ],
)
def test_small_pieces_come_out_of_what_is_left_beside_a_large_one(large, small, whole, length):
    parts = [square("A", *large), square("B", *small)]
    before, after = planned(parts)
    assert (before.length, after.length) == (whole, length)
    assert SHOP.buy(before.gross) > SHOP.buy(after.gross) == YARDS
    assert stages(parts, WIDTH, after) == 4


def test_strips_stay_whole_where_sections_save_nothing():
    """Nine squares of 10 in: three strips of three across 30 in, nothing left."""
    parts = [square("A", 10, 9)]
    before, after = planned(parts, F(30))
    assert before == after
    assert stages(parts, F(30), after) == 2


def test_what_may_not_turn_lies_straight_in_a_section():
    """Beside a 30 in square, 10 in are left: five of 10 x 6 in lie there one under another."""
    parts = [Part("A", F(30), F(30), 1), Part("B", F(10), F(6), 5)]
    _, after = planned(parts)
    assert after.length == 30
    stages(parts, WIDTH, after)


@pytest.mark.parametrize("seed", [1, 3, 7, 22, 28, 30, 35, 50])
def test_plans_of_made_up_lists_can_be_cut(seed):
    width, parts = cut_list(seed)
    before, after = planned(parts, width)
    stages(parts, width, after)
    floor = floor_of(parts, width, SQUARING)
    area = sum(p.across * p.along * p.count for p in parts) / width
    assert area + SQUARING <= floor <= after.gross <= before.gross
    if after != before:
        bought = [(SHOP.buy(x.gross), SHOP.buy_metric(x.gross)) for x in (after, before)]
        assert bought[0] < bought[1]


def test_the_same_list_gives_the_same_sections():
    width, parts = cut_list(7)
    assert planned(parts, width) == planned(parts, width)


@pytest.mark.parametrize(
    ("parts", "bound"),
    [
        # three of 21 in wide never lie side by side in 40 in: 3 x 10, though the area is less
        ([Part("A", F(21), F(10), 3)], 30),
        # one of 28 in, and area for less
        ([Part("A", F(4), F(28), 1), Part("B", F(4), F(4), 3)], 28),
        # a line across 40 in meets 15 + 15, 15 + 12 + 12 or three of 12: 22 1/2 in of the first
        # and 15 of the second meet six and three that are 10 in long, and all end at tens; the
        # area takes 31 1/2
        ([Part("A", F(15), F(10), 6), Part("B", F(12), F(10), 3)], 40),
    ],
)
def test_no_layout_is_below_the_bound(parts, bound):
    assert floor_of(parts, WIDTH) == bound
    assert floor_of(parts, WIDTH, quick=True) <= bound


def test_a_fabric_is_planned_in_sections():
    """The plan that a fabric gets holds its own check, and the square alone bounds it."""
    found = plan([(28, 28, 1), (F(5, 2), F(5, 2), 40)], 40)
    assert found.length == found.bound == 28
    assert found.buy == YARDS
    assert [s.depth for s in found.strips] == [28]
