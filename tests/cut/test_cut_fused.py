"""Fused motifs on web and on cloth, stabiliser, and cloth at hand.

Distance between shapes on web, 1/2 in: Quiltmaker magazine (F+W), Piecing and applique.
Widths of web and stabiliser: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import combinations

import pytest
import reedmace
import yaml
from cut_cases import framed, pattern, planned
from shapely.geometry import MultiPolygon, Polygon, box
from small import CARRIES, prepared
from space.pieces_of_patterns import motif

from publish import cut
from publish.cut.rolls import squares
from publish.cut.stock import stock_of
from publish.model.draft import Placement
from publish.model.trade import WEB_APART
from publish.words import english

F = Fraction
CROSS = MultiPolygon(
    [
        Polygon(
            [
                (-5, -1),
                (-1, -1),
                (-1, -5),
                (1, -5),
                (1, -1),
                (5, -1),
                (5, 1),
                (1, 1),
                (1, 5),
                (-1, 5),
                (-1, 1),
                (-5, 1),
            ]
        )
    ]
)
"""A cross 10 in wide: four in a box each take 4 x 11 1/2 in square, interlocked much less."""


def fused(count=1, whole=CROSS, span=10, motif=None, **fabrics):
    """Return the plan of `count` fused motifs, all of one outline."""
    made = pattern(**fabrics)
    changes = {"method": "fusible", "turn_under": F(0), "folds": 4, **(motif or {})}
    made = replace(made, motifs={"reedmace": replace(made.motifs["reedmace"], **changes)})
    shape = replace(reedmace.shape(), whole=whole, cut_line=whole, span=F(span), folds=4)
    draft = replace(
        reedmace.draft(),
        motifs={"reedmace": shape},
        placements=(Placement("reedmace", F(0), F(0), 0, 0),) * count,
    )
    size = framed(20, 20, border=2, binding=None)
    plans, notes = cut.cut(made, {"mini": size}, {"mini": draft})
    assert not notes
    return plans["mini"]


def outlines(placements):
    return [p.outline for p in placements]


@pytest.fixture(scope="module")
def four():
    return fused(4)


def test_nested_web_buys_less_than_squares_and_keeps_the_published_distance(four):
    plain = squares(F(17), 4, F(23, 2), pattern().sewing)
    assert plain.length == 4 * F(23, 2)  # one beside another does not fit 17 in
    web = four.web
    assert web.buy < plain.buy and web.buy >= web.length
    found = outlines(web.placements)
    assert len(found) == 4
    assert min(a.distance(b) for a, b in combinations(found, 2)) >= float(WEB_APART) - 1e-6
    room = box(0, 0, 17, float(web.length)).buffer(-float(WEB_APART) / 2 + 1e-6)
    assert all(room.covers(shape) for shape in found)


def test_nested_cloth_holds_every_motif_at_its_size(four):
    plan = four.fabrics["moss"]
    (stretch,) = [s for s in plan.strips if s.placements]
    found = outlines(stretch.placements)
    assert len(found) == 4 == sum(c.count for c in stretch.cuts)
    assert all(shape.area == pytest.approx(CROSS.area) for shape in found)
    assert min(a.distance(b) for a, b in combinations(found, 2)) >= float(WEB_APART) - 1e-6
    assert all(box(0, 0, 40, float(stretch.depth)).covers(shape) for shape in found)
    # squares of 11 1/2 in: three to a strip of 40 in, two strips
    assert plan.buy < -(-(2 * F(23, 2) + 1) // F(9, 2)) * F(9, 2)
    assert plan.bound <= plan.length
    assert "nested: buys" in " ".join(plan.choices)
    motif = four.piece("motif")
    assert (motif.width, motif.length, motif.count) == (10, 10, 4)


def test_the_same_layout_every_time(four):
    again = fused(4)
    assert again.web == four.web
    assert again.fabrics["moss"] == four.fabrics["moss"]


def test_one_motif_stays_a_square():
    made = fused(1)
    assert made.web.placements == () and made.web.side == F(23, 2)
    assert not any(s.placements for s in made.fabrics["moss"].strips)


def test_the_nested_outline_is_seen_from_the_wrong_side():
    """An L is its own mirror image in no turn by quarters that a print allows here."""
    ell = MultiPolygon([Polygon([(-5, -5), (-3, -5), (-3, 3), (3, 3), (3, 5), (-5, 5)])])
    made = fused(4, whole=ell, moss={"directional": True})
    stretch = [s for s in made.fabrics["moss"].strips if s.placements]
    assert stretch, "four L shapes did not nest"
    for placed in stretch[0].placements:
        _, top, right, bottom = placed.outline.bounds
        arm = box(right - 2, top, right, bottom)  # its long arm on the right, mirrored
        assert placed.outline.intersection(arm).area == pytest.approx(arm.area)


def test_web_width_is_the_patterns_own():
    made = pattern()
    narrow = replace(made, sewing=replace(made.sewing, web_width=F(12)))
    assert squares(narrow.sewing.web_width, 3, F(23, 2), narrow.sewing).length == 3 * F(23, 2)
    assert squares(F(24), 3, F(23, 2), narrow.sewing).length == 2 * F(23, 2)


def test_stabiliser_is_a_square_behind_each_motif():
    found = fused(1, motif={"stabiliser": True}).stabiliser
    assert (found.width, found.squares, found.side) == (20, 1, F(23, 2))
    assert (found.length, found.buy) == (F(23, 2), F(27, 2))
    assert fused(1).stabiliser is None


def test_squares_side_by_side_on_a_roll():
    """Two squares of 11 1/2 in need 23 in beside each other; 9 in ones fit 20 in twice."""
    sewing = pattern().sewing
    assert squares(F(20), 3, F(23, 2), sewing).length == 3 * F(23, 2)
    assert squares(F(20), 3, F(9), sewing).length == 2 * 9
    assert squares(F(20), 2, F(30), sewing).length == 2 * 2 * 30  # two lengths for each


# Cloth at hand.


@pytest.mark.parametrize(
    ("spare", "said"),
    [
        (F(9), "enough, with 1/4 yd (0.20 m) left"),
        (F(10), "enough, with 1/4 yd (0.20 m) left"),
        (F(3), "enough, with less than 1/8 yd (0.10 m) left"),
        (F(0), "enough, to the inch"),
        (F(-1, 8), "short by 1/8 yd (0.10 m)"),
        (F(-9), "short by 1/4 yd (0.30 m)"),
        (F(-10), "short by 3/8 yd (0.30 m)"),
    ],
)
def test_what_is_left_rounds_down_and_what_is_short_rounds_up(spare, said):
    """9 in are 22.86 cm, so 0.20 m when left and 0.30 m when short."""
    assert english(stock_of(spare, pattern().sewing)) == said


def test_binding_and_backing_count_against_cloth_at_hand():
    """Linen is ground and backing, moss is motif and binding."""
    plan = planned(pattern(linen={"owned": F(108)}, moss={"owned": F(9)}), framed(20, 20, border=2))
    linen, moss = plan.fabrics["linen"], plan.fabrics["moss"]
    assert {p.purpose for p in linen.pieces} == {"ground", "backing"}
    assert {p.purpose for p in moss.pieces} == {"motif", "binding"}
    assert linen.spare == 108 - linen.needed > 0
    assert english(linen.stock).startswith("enough")
    assert english(moss.stock).startswith("short by")
    assert linen.choices[-1] == f"3 yd (2.74 m) at hand are {english(linen.stock)}"
    assert plan.fabrics["sandbar"].stock is None and plan.fabrics["sandbar"].spare is None


def test_short_cloth_is_a_note_and_enough_is_not():
    made = pattern(linen={"owned": F(108)}, moss={"owned": F(9)})
    notes = cut.cut(made, {"mini": framed(20, 20, border=2)}, {"mini": reedmace.draft()})[1]
    assert [(n.code, n.place.path) for n in notes] == [("C403", "fabrics.moss")]


# 14 and 15 in across six folds: the box of a motif lying turned is not the box of one upright.
# Each of either once; the thorough run pairs them all.
@pytest.mark.parametrize(
    ("folds", "span"),
    [
        pytest.param(folds, span, marks=() if n == m else pytest.mark.thorough)
        for n, folds in enumerate((4, 6, 8, 12))
        for m, span in enumerate((8, 13, 14, 15))
    ],
)
def test_nested_motifs_are_measured_as_they_lie(tmp_path, folds, span):
    drawing = yaml.safe_dump({"m": motif("fern", folds, method="fusible")}, default_flow_style=True)
    size = f"mini: {{block: carries, block_size: {span + 2} in, motif_size: {span} in}}"
    plan = prepared(tmp_path, size, CARRIES, f"motifs: {drawing}").plans["mini"].fabrics["fern"]
    for strip in plan.strips:
        assert strip.used <= plan.usable_width
        for cut_ in strip.cuts:
            assert cut_.along <= strip.depth
        for placed in strip.placements:
            left, top, right, bottom = placed.outline.bounds
            assert left >= 0 and right <= plan.usable_width and top >= 0 and bottom <= strip.depth
