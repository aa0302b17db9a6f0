"""The largest piece that is left, worked out by hand beside each case."""

from fractions import Fraction

import pytest
from cut_instances import cut_list
from guillotine import cut_up
from test_cut_fabric import plan

from publish.cut.left import largest_left
from publish.deliver.cloth import fabric_numbers
from publish.model.cutplan import Cut, Section, Strip

F = Fraction
SMALL = Strip(F(5, 2), (Cut("B", F(5, 2), F(5, 2), 4),), 6)
SQUARE = Cut("A", F(28), F(28), 1)


@pytest.mark.parametrize(
    ("strip", "end", "left"),
    [
        # beside the square 12 in are left, as deep as it
        (Strip(F(28), (SQUARE,)), F(0), (12, 28)),
        # a piece across the whole cloth is larger: 40 x 11 against 12 x 28
        (Strip(F(28), (SQUARE,)), F(11), (40, 11)),
        # six strips of 2 1/2 in leave 13 in of a section 10 in wide; beside it are 2 in
        (Strip(F(28), (SQUARE,), sections=(Section(F(10), (SMALL,)),)), F(0), (10, 13)),
        # 4 in of cloth are not worth keeping
        (Strip(F(28), (Cut("A", F(36), F(28), 1),)), F(4), None),
    ],
)
def test_the_largest_piece_left(strip, end, left):
    assert largest_left([strip], F(40), end) == left


def test_what_is_bought_beyond_the_plan_is_left_at_its_end():
    """Five of 9 in, four abreast: 18 in, and 1/2 yd buys just that. Beside the fifth lie
    31 x 9 in."""
    found = plan([(9, 9, 5)], 40, mis_cut=F(0))
    assert (found.length, found.buy) == (18, 18)
    assert found.left == (31, 9)


@pytest.mark.parametrize("seed", [1, 4, 16, 22, 28, 31, 35, 38])
def test_what_is_told_as_left_is_the_largest_that_is_left_when_all_is_cut(seed):
    """The checker of its own cuts up what is bought, an eighth lost to squaring each strip,
    and keeps what it has over: nothing in it is larger than the piece that is told."""
    width, parts = cut_list(seed)
    found = plan([(p.across, p.along, p.count) for p in parts], width)
    rests = []
    bought = min(found.buy, found.buy_metric)
    cut_up(fabric_numbers(found), bought, rests, F(1, 8))
    kept = [(r.width, r.length) for r in rests if min(r.width, r.length) >= 5]
    assert (found.left in kept) if kept else found.left is None
    assert all(w * h <= found.left[0] * found.left[1] for w, h in kept)
