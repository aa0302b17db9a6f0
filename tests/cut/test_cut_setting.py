"""Blocks on point: side and corner triangles, sashing, grain, the handbooks' 1.414.

Sources are named beside each figure; grades and addresses stand in the trade reference
that the figures were copied from.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from demos import demo
from helpers import PROJECTS
from patch_cases import HOME, form, patch, pattern, size, top

from publish import cut, draft, grade, read
from publish.cut.classify import classify
from publish.cut.edges import Edges
from publish.cut.kinds import Kinds
from publish.cut.sized import needs_of
from publish.model.draft import Unit
from publish.model.pattern import SashingSpec
from publish.surd import ROOT_2
from publish.words import english

F = Fraction

# Setting and corner triangle chart (author not shown): finished block, square for side
# triangles cut twice, square for corner triangles cut once; factor 1.414, rounded up to
# 1/8 in after the addition.
CHART = [
    (5, F(67, 8), F(9, 2)),
    (6, F(39, 4), F(41, 8)),
    (8, F(101, 8), F(53, 8)),
    (9, F(14), F(29, 4)),
    (12, F(73, 4), F(75, 8)),
    (14, F(169, 8), F(87, 8)),
    (15, F(45, 2), F(23, 2)),
    (16, F(191, 8), F(49, 4)),
]


def need(shape, straight_long_side, purpose):
    """Return the need of one patch of a form."""
    one = patch("p", *shape.ring, role="setting", block=None)
    kinds = Kinds()
    kinds.add_patch(one, purpose, shape, straight_long_side, directional=False)
    (found,) = needs_of(pattern(), kinds)
    return found


def side_triangle(block):
    half = block * ROOT_2 / 2
    return form((0, half), (half, 0), (2 * half, half))


def corner_triangle(block):
    leg = block / ROOT_2
    return form((0, 0), (leg, 0), (0, leg))


@pytest.mark.parametrize(("block", "side", "corner"), CHART)
def test_side_and_corner_squares_of_a_published_chart(block, side, corner):
    found = need(side_triangle(F(block)), True, "side triangle")
    assert (found.width, found.yields, found.shape) == (side, 4, "twice-cut triangle")
    found = need(corner_triangle(F(block)), False, "corner triangle")
    assert (found.width, found.yields, found.shape) == (corner, 2, "once-cut triangle")


# Tip: on-point settings, Moonlight Quilters: 6 in blocks, side squares 9 3/4 in, corner
# squares 5 1/8 in, setting squares 6 1/2 in. Block on point, Pine Meadows Designs: 12 in
# blocks, corner squares 9 3/8 in.
def test_second_sources():
    assert need(side_triangle(F(6)), True, "side triangle").width == F(39, 4)
    assert need(corner_triangle(F(6)), False, "corner triangle").width == F(41, 8)
    assert classify(form((0, 0), (6, 0), (6, 6), (0, 6))).width == F(13, 2)
    assert need(corner_triangle(F(12)), False, "corner triangle").width == F(75, 8)


def test_the_larger_is_cut_where_the_handbooks_rule_and_the_root_part():
    """Ten times 1.414 and 1 1/4 in are 15.39 in, the exact square is 15.35 in."""
    found = need(side_triangle(F(10)), True, "side triangle")
    assert float(found.exact_width) == pytest.approx(15.3492, abs=1e-4)
    assert found.width == F(31, 2)
    assert english(found.note) == "a step larger than the exact size, to be trimmed"
    assert need(side_triangle(F(12)), True, "side triangle").note is None


def described():
    """Return towpath with its graded throw: 3 x 4 blocks of 12 in on point."""
    made, notes, _ = read.load(PROJECTS / "towpath")
    assert not notes
    return made, grade.grade(made, "throw")[0]


@pytest.fixture(scope="module")
def throw():
    work = demo("towpath")
    return work.drafts["throw"], work.plans["throw"]


# Quilt math made easy, Krista Moser: 4 x 4 blocks have 12 side triangles from 3 squares
# and 4 corner triangles from 2. Towpath's throw is 3 x 4: 2 x 2 + 2 x 3 = 10 at the sides.
def test_counts_on_point(throw):
    drafted, plan = throw
    sides, corners = plan.piece("side triangle"), plan.piece("corner triangle")
    assert sum(p.role == "setting" for p in drafted.patches) == 14
    assert (sides.count, sides.yields, sides.width) == (3, 4, F(73, 4))
    assert (corners.count, corners.yields, corners.width) == (2, 2, F(75, 8))
    letters = [plan.sources[p.key] for p in drafted.patches if p.role == "setting"]
    assert (letters.count(sides.letter), letters.count(corners.letter)) == (10, 4)


def test_borders_round_a_top_on_point_keep_the_root_and_are_cut_to_an_eighth(throw):
    """3 x 4 blocks of 12 in: 36√2 by 48√2 in, 50.912 by 67.882 in."""
    _, plan = throw
    inner = plan.piece("border 1 side")
    assert inner.exact_length == 48 * ROOT_2 + F(1, 2)
    assert inner.length == F(137, 2)
    outer = plan.piece("border 2 top")
    assert outer.exact_length == 36 * ROOT_2 + 2 + 9 + F(1, 2)
    assert outer.length == F(125, 2)
    assert plan.batting.width == 62 + 6  # 36√2 + 11 is 61.91 in


def sashed(corner):
    """Return the draft and plan of towpath's throw with 2 in sashing all round its blocks."""
    made, graded = described()
    strips = SashingSpec(F(2), "mist", corner, outer=True)
    spec = replace(made.sizes["throw"], sashing=strips, borders=())
    made = replace(made, sizes={"throw": spec})
    graded, notes = grade.grade(made, "throw")
    assert not notes
    drafted, _ = draft.draft(made, graded)
    plans, notes = cut.cut(made, {"throw": graded}, {"throw": drafted})
    assert not notes
    return drafted, plans["throw"]


def test_sashing_on_point_with_cornerstones():
    """The corners of 3 x 4 blocks meet in 3 x 3 + 4 x 2 whole crossings inside, and in
    2 x 3 + 2 x 4 half ones at the edge; each of the 12 blocks has its four strips."""
    drafted, plan = sashed("lamp")
    found = {english(p.called): p for p in plan.pieces if p.purpose in ("sashing", "cornerstone")}
    assert set(found) == {"sashing strip", "cornerstone", "half cornerstone"}
    strip = found["sashing strip"]
    assert {strip.width, strip.length} == {F(25, 2), F(5, 2)}
    assert strip.count == sum(p.role == "sashing" for p in drafted.patches) == 48
    whole, half = found["cornerstone"], found["half cornerstone"]
    assert (whole.width, half.shape) == (F(5, 2), "twice-cut triangle")
    # Its long side is the square's diagonal, 2√2 = 2.83 in: 2.83 + 1.21 = 4.04 in.
    assert half.width == F(33, 8)
    assert (whole.count, half.count, half.yields) == (17, 4, 4)
    assert sum(letter == half.letter for letter in plan.sources.values()) == 14
    assert set(plan.sources) == {p.key for p in drafted.patches}


def test_sashing_that_runs_through_is_cut_with_square_ends():
    drafted, plan = sashed(None)
    strips = [p for p in plan.pieces if p.purpose == "sashing"]
    assert {p.shape for p in strips} == {"rectangle"}
    longest = max(max(p.width, p.length) for p in strips)
    rings = [p for p in drafted.patches if p.role == "sashing"]
    assert longest > 40 and any(p.joined_from > 1 or max(p.width, p.length) > 40 for p in strips)
    assert set(plan.sources) == {p.key for p in drafted.patches}
    assert sum(p.count for p in strips) == len(rings)


def test_grain_follows_the_outside_and_then_the_seam_sewn_last():
    """A square of four triangles: long sides outside; sewn to a fifth, legs outside."""
    quarters = [
        patch(f"q{i}", *corners, fabric=fabric, home=HOME, spec=i)
        for i, (corners, fabric) in enumerate(
            [
                (((0, 0), (4, 0), (2, 2)), "linen"),
                (((4, 0), (4, 4), (2, 2)), "moss"),
                (((4, 4), (0, 4), (2, 2)), "linen"),
                (((0, 4), (0, 0), (2, 2)), "moss"),
            ]
        )
    ]
    pairs = [
        Unit(
            "pair",
            "pair",
            (F(0), F(0), F(4), F(4)),
            "slant",
            tuple(Unit("t", "t", p.box, patch=p) for p in quarters[i : i + 2]),
        )
        for i in (0, 2)
    ]
    whole = Unit("block", "block", (F(0), F(0), F(4), F(4)), "slant", tuple(pairs))
    edges = Edges(pattern(), size(4), top(whole))
    assert all(edges.straight_long_side(p) for p in quarters)


def test_a_print_with_a_direction_is_not_turned():
    """Upright and level strips are two pieces then, and triangles run every way."""
    made, _ = described()
    cloth = {k: replace(f, directional=True) for k, f in made.fabrics.items()}
    made = replace(made, fabrics=cloth)
    sizes = {key: grade.grade(made, key)[0] for key in ("mini", "throw")}
    drafts = {key: draft.draft(made, size)[0] for key, size in sizes.items()}
    plans, notes = cut.cut(made, sizes, drafts)
    assert {n.code for n in notes} == {"C407"}, "geese made several at once turn the print"
    strips = [p for p in plans["mini"].pieces if p.purpose == "sashing"]
    assert {(p.width, p.length, p.count) for p in strips} == {
        (F(3, 2), F(17, 2), 6),
        (F(17, 2), F(3, 2), 6),
    }
    side = plans["throw"].piece("side triangle")
    assert english(side.note) == "the print runs another way in each triangle"
    assert not any(p.may_turn for p in plans["mini"].pieces)
