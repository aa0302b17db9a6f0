"""Towpath's mini, worked out by hand from its YAML and the rules named beside each line.

Two locks and two paths of 8 in on a grid of 8, so 1 in to a grid square; 1/4 in seams;
40 in of usable width. Rules with a published source stand in the tests of shapes; here
they are only counted. Fractions below are inches.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from demos import demo

F = Fraction


def f(text):
    """Return `2 1/2` as a fraction."""
    return sum((F(part) for part in text.split()), F(0))


# Sides in increasing order, and how many are cut.
BY_HAND = {
    ("mist", "ground"): [
        # Cobbles: 4 in each of 4 blocks, two segments each: 32 segments 1 1/2 in wide.
        # (40 - 1/2) / 1 1/2 = 26 from a set, so 2 sets of 16: 16 x 1 1/2 + 1/2 = 24 1/2.
        ("1 1/2", "24 1/2", 2),
        # Geese: 4 in each lock, 8 in two batches: 4 + 1 1/4.
        ("5 1/4", "5 1/4", 2),
        # The path's middle row, 2 + 4 + 2 in wide and 4 high: one set, 2 segments of
        # 4 1/2 and 1/2 in; its two outer strips are 2 1/2 in wide.
        ("2 1/2", "9 1/2", 2),
        # Above and below in each path: 2 x 4 in finished.
        ("2 1/2", "4 1/2", 4),
    ],
    ("water", "ground"): [
        ("2 7/8", "2 7/8", 8),  # four for each batch of geese: 2 + 7/8
        ("2 1/2", "2 1/2", 8),  # four corners flipped onto each lamp square: 2 + 1/2
    ],
    ("water", "sashing"): [("1 1/2", "8 1/2", 12)],  # 3 x 2 upright, 3 x 2 level
    ("brick", "ground"): [("1 1/2", "24 1/2", 2)],
    ("sedge", "ground"): [("4 1/2", "9 1/2", 1)],
    ("lamp", "ground"): [("4 1/2", "4 1/2", 2)],  # cut whole for its flipped corners
    ("lamp", "cornerstone"): [("1 1/2", "1 1/2", 9)],
    # 2 x 8 + 3 x 1 = 19 in inside the border; 19 + 2 x 2 = 23 in outside.
    ("sedge", "border 1 side"): [("2 1/2", "19 1/2", 2)],
    ("sedge", "border 1 top"): [("2 1/2", "23 1/2", 2)],
    ("sedge", "backing"): [("31", "31", 1)],  # 23 + 2 x 4
    ("sedge", "sleeve"): [("6 1/2", "22", 1)],  # 2 x 3 + 1/2; 23 - 1
    # 4 x 23 + 10 = 102 in; three strips of 40 in less two joins of 2 1/4 in: 115 1/2.
    ("brick", "binding"): [("2 1/4", "40", 3)],
}


@pytest.fixture(scope="module")
def plan():
    return demo("towpath").plans["mini"]


def test_every_piece_of_the_mini(plan):
    found = {}
    for piece in plan.pieces:
        short, long = sorted((piece.width, piece.length))
        found.setdefault((piece.fabric, piece.purpose), set()).add((short, long, piece.count))
    by_hand = {k: {(f(a), f(b), n) for a, b, n in rows} for k, rows in BY_HAND.items()}
    assert found == by_hand


def test_the_batches_of_the_mini(plan):
    found = {(m.method, m.count, m.batches, m.each_batch, m.trim, m.segment) for m in plan.makings}
    assert found == {
        ("geese", 8, 2, 4, (f("4 1/2"), f("2 1/2")), None),
        ("corners", 2, 2, 1, (f("4 1/2"), f("4 1/2")), None),
        ("strips", 32, 2, 16, (f("1 1/2"), f("2 1/2")), f("1 1/2")),
        ("strips", 2, 1, 2, (f("8 1/2"), f("4 1/2")), f("4 1/2")),
    }
    rows = [m for m in plan.makings if m.method == "strips" and m.count == 2]
    mist = next(p for p in plan.pieces if (p.width, p.length) == (f("9 1/2"), f("2 1/2")))
    assert dict(zip(rows[0].letters, rows[0].each, strict=True))[mist.letter] == 2


# Mist: a strip 5 1/4 in deep holds two squares of 5 1/4, two strips of 9 1/2 and four
# rectangles upright, 10 1/2 + 19 + 4 x 2 1/2 = 39 1/2 in; two more of 1 1/2 in hold the
# strips of 24 1/2. 8 1/4 in, 3/8 in to square up three strips and 1 in to straighten are
# 9 5/8: 3/8 yd. No plan is shorter:
# the 5 1/4 in strip is needed, and beside its two squares the 24 1/2 in strips have no
# room together, nor alone with all of the rest.
# Lamp: nine cornerstones and two squares, 9 + 13 1/2 in, lie in one strip of 4 1/2 in.
@pytest.mark.parametrize(
    ("fabric", "length", "yards"), [("mist", "8 1/4", "3/8"), ("lamp", "4 1/2", "1/4")]
)
def test_lengths_to_buy_for_the_mini(plan, fabric, length, yards):
    bought = plan.fabrics[fabric]
    assert (bought.length, bought.buy) == (f(length), f(yards) * 36)
    assert bought.bound <= bought.length + bought.squaring
