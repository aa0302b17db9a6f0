"""Prints with an up and a down: every piece stands on the cloth as it stands in the quilt.

Common practice, no source: the print runs along the fabric, so what is upright in the
quilt is cut along it and what lies level is cut across it.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from cut_cases import cuts, framed, pattern, planned

from publish.cut.needs import Cloth, long_ways

F = Fraction
ALL = {key: {"directional": True} for key in ("linen", "sandbar", "moss")}


@pytest.mark.parametrize("size", [(20, 24), (44, 60), (64, 90), (90, 64)])
def test_no_piece_of_a_directional_print_is_turned(size):
    plan = planned(pattern(**ALL), framed(*size, sleeve=F(4)))
    for fabric in plan.fabrics.values():
        assert not any(p.may_turn for p in fabric.pieces)
        assert not any(c.turned for s in fabric.strips for c in s.cuts)


@pytest.mark.parametrize("size", [(20, 24), (44, 60), (64, 90)])
def test_side_borders_run_along_and_top_borders_across(size):
    plan = planned(pattern(**ALL), framed(*size))
    width, height = size
    for cut, _ in cuts(plan, "border 1 side"):
        assert (cut.across, cut.along) == (F(9, 2), height - 8 + F(1, 2))
    for cut, _ in cuts(plan, "border 1 top"):
        assert cut.along == F(9, 2)
        assert cut.across <= 40
    top = plan.piece("border 1 top")
    assert (top.width, top.length) == (width + F(1, 2), F(9, 2))
    assert (top.finished_width, top.finished_length) == (width, 4)
    assert top.joined_from == -(-(width + F(1, 2)) // 40)


def test_the_same_border_without_direction_may_run_either_way():
    plan = planned(pattern(), framed(44, 60))
    side = plan.piece("border 1 side")
    assert (side.width, side.length) == (F(9, 2), F(105, 2))
    assert any(c.across > c.along for c, _ in cuts(plan, "border 1 side"))


def test_a_directional_backing_has_upright_seams_only():
    wide = framed(90, 64)  # level seams would buy less
    assert planned(pattern(), wide).backing.seams == "horizontal"
    plan = planned(pattern(linen={"directional": True}), wide)
    assert plan.backing.seams == "vertical"
    for cut, _ in cuts(plan, "backing"):
        assert (cut.across, cut.along) == (plan.backing.panel_width, 72)


@pytest.mark.parametrize("directional", [True, False])
def test_binding_strips_of_a_directional_print_run_across(directional):
    made = pattern(moss={"directional": directional})
    plan = planned(made, framed(100, 100, fabric="moss"))
    ways = {c.across > c.along for c, _ in cuts(plan, "binding")}
    assert ways == ({True} if directional else ways)
    if directional:
        assert plan.binding.strip_length == 40


def test_a_sleeve_lies_level():
    plan = planned(pattern(linen={"directional": True}), framed(64, 80, sleeve=F(4)))
    assert plan.sleeve.joined_from == 2
    assert all(c.along == F(17, 2) for c, _ in cuts(plan, "sleeve"))


def test_a_directional_strip_has_one_way_and_keeps_its_length():
    cloth = Cloth(F(40), directional=True)
    (upright,) = long_ways(F(9, 2), F(30), 2, cloth, F(1, 2))
    (level,) = long_ways(F(9, 2), F(30), 2, cloth, F(1, 2), level=True)
    assert (upright.across, upright.along) == (F(9, 2), 30)
    assert (level.across, level.along) == (30, F(9, 2))
    assert not upright.may_turn and not level.may_turn
    short = Cloth(F(22), F(18), directional=True)  # a fat quarter
    (upright,) = long_ways(F(9, 2), F(30), 2, short, F(1, 2))
    assert upright.joined == 2 and upright.along <= 18 and upright.across == F(9, 2)
