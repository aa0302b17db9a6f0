"""The map of the top: exact, complete, every patch at home.

Published source: on point, 4 x 4 blocks have 9 between them, 12 side triangles and 4
corners, Krista Moser, Quilt math made easy. A block on point is 1.414 times its side
across: the factor of every on-point chart in use, here the root of 2 itself. Everything
else is geometry.
"""

from collections import Counter
from fractions import Fraction

import pytest
from draft_builders import codes, grid, motif, pattern, size
from draft_tops import area_of, four, library, top, tops
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import union_all

from publish.draft.topmap import covered_area, doubled_area, placements, seam_length, top_patches
from publish.model.pattern import Block, BorderSpec, PatchSpec, RoundSpec, SashingSpec
from publish.surd import ROOT_2, Surd

F = Fraction
FABRICS = ("linen", "moss", "sand")


def area(patches):
    return covered_area((p.ring, p.arcs) for p in patches)


def roles(patches):
    return Counter(p.role for p in patches)


@settings(max_examples=25)
@given(tops())
def test_areas_add_up_exactly(made):
    pat, one = made
    patches, notes = top_patches(pat, one)
    assert not notes
    assert area(patches) == one.width * one.height
    assert len({p.key for p in patches}) == len(patches)
    assert all(p.turn % 90 == (45 if one.on_point and p.role != "border" else 0) for p in patches)


@settings(max_examples=15)
@given(tops())
def test_no_two_patches_overlap(made):
    """By shapely: what the patches cover together is the top, and so is their sum."""
    pat, one = made
    areas = [area_of(p) for p in top_patches(pat, one)[0]]
    whole = float(one.width * one.height)
    assert union_all(areas, grid_size=1e-8).area == pytest.approx(whole, rel=1e-7)
    assert sum(a.area for a in areas) == pytest.approx(whole, rel=1e-7)


@pytest.mark.parametrize("name", library())
def test_every_block_covers_its_square_at_every_turn(name):
    for turn in (0, 90, 180, 270):
        for setting in ("straight", "on point"):
            pat, one = top(library()[name], turns=(turn,), setting=setting)
            patches = [p for p in top_patches(pat, one)[0] if p.home]
            assert area(patches) == one.block_side**2
            assert {p.spec for p in patches} == set(range(len(patches)))
            assert {p.turn for p in patches} == {turn + (45 if one.on_point else 0)}


def test_a_turned_block_by_hand():
    """A quarter turn clockwise takes the upper left triangle to the upper right."""
    pat, one = top(library()["half-square triangle"], side=F(6), turns=(90,))
    light, _ = top_patches(pat, one)[0]
    assert set(light.ring) == {(0, 0), (6, 0), (6, 6)}


def test_a_block_on_point_by_hand():
    """Turned 45 degrees clockwise, a block's upper left corner stands uppermost."""
    pat, one = top(
        grid("two", [["linen", "sand"]]), side=F(2), setting="on point", setting_fabric="moss"
    )
    patches = top_patches(pat, one)[0]
    middle = patches[0].ring[0][0]
    assert one.width == 2 * ROOT_2 and middle == ROOT_2
    assert patches[0].ring[0] == (ROOT_2, 0)  # of the left half, which lies on the left
    left = min(x for x, _ in patches[0].ring)
    assert left == 0 and patches[0].fabric == "linen"
    assert roles(patches) == {"ground": 2, "setting": 4}


def test_published_counts_on_point():
    pat, one = top(
        grid("plain", [["linen"]]),
        columns=4,
        rows=4,
        side=F(6),
        setting="on point",
        setting_fabric="moss",
    )
    patches = top_patches(pat, one)[0]
    names = Counter(p.key.rpartition(" ")[0] for p in patches if p.role == "setting")
    assert names == {"side triangle": 12, "corner triangle": 4}
    assert sum(str(p.home).startswith("between") for p in patches) == 9
    assert sum(p.row is not None for p in patches) == 16
    sides = {p.key: p.box for p in patches if p.key.startswith("side")}
    assert all(max(b[2] - b[0], b[3] - b[1]) == 6 * ROOT_2 for b in sides.values())
    corners = [p.box for p in patches if p.key.startswith("corner")]
    assert all(b[2] - b[0] == 3 * ROOT_2 == b[3] - b[1] for b in corners)


@given(st.integers(1, 5), st.integers(1, 5), st.booleans())
@settings(max_examples=20)
def test_setting_triangles_follow_the_formula(columns, rows, sashed):
    """2 (rows + columns) - 4 sides and 4 corners. Common practice, no source; the case of
    4 x 4 above is published."""
    sashing = SashingSpec(F(1), "sand", "linen", True) if sashed else None
    pat, one = top(
        grid("plain", [["linen"]]),
        columns=columns,
        rows=rows,
        setting="on point",
        setting_fabric="moss",
        sashing=sashing,
    )
    names = Counter(p.key.rpartition(" ")[0] for p in top_patches(pat, one)[0])
    assert names["side triangle"] == 2 * (rows + columns) - 4 == one.side_triangles
    assert names["corner triangle"] == 4 == one.corner_triangles


@pytest.mark.parametrize(("outer", "strips", "stones"), [(False, 7, 2), (True, 17, 12)])
def test_sashing_by_hand(outer, strips, stones):
    """3 x 2 blocks of 6 in with strips of 1 in: 2 + 2 upright and 3 level strips between
    them; with outer strips 4 x 2 upright, 3 x 3 level, and 4 x 3 cornerstones."""
    sashing = SashingSpec(F(1), "moss", "sand", outer)
    pat, one = top(grid("plain", [["linen"]]), columns=3, rows=2, side=F(6), sashing=sashing)
    patches = top_patches(pat, one)[0]
    assert roles(patches) == {"ground": 6, "sashing": strips, "cornerstone": stones}
    assert all(
        area([p]) == (6 if p.role == "sashing" else 1) for p in patches if p.role != "ground"
    )


def test_sashing_without_cornerstones_runs_through():
    sashing = SashingSpec(F(1), "moss", None, True)
    pat, one = top(grid("plain", [["linen"]]), columns=3, rows=2, side=F(6), sashing=sashing)
    lengths = Counter(area([p]) for p in top_patches(pat, one)[0] if p.role == "sashing")
    assert lengths == {6: 8, one.inner_width: 3}


def test_sashing_on_point_ends_in_half_cornerstones():
    """One block: four strips round it; the crossings lie on the edges, cut in half."""
    sashing = SashingSpec(F(1), "moss", "sand", True)
    pat, one = top(
        grid("plain", [["linen"]]),
        side=F(6),
        sashing=sashing,
        setting="on point",
        setting_fabric="linen",
    )
    patches = top_patches(pat, one)[0]
    assert roles(patches) == {"ground": 1, "sashing": 4, "cornerstone": 4, "setting": 4}
    assert {area([p]) for p in patches if p.role == "cornerstone"} == {F(1, 2)}
    assert {area([p]) for p in patches if p.role == "sashing"} == {6}
    assert {area([p]) for p in patches if p.role == "setting"} == {9}


def test_a_medallion_by_hand():
    rounds = (RoundSpec(BorderSpec(F(1), "moss")), RoundSpec(None, ("half",), F(2), (0,)))
    half = grid("half", [["linen", "sand"]])
    pat, one = top(four(), side=F(6), rounds=rounds, others=[half])
    patches = top_patches(pat, one)[0]
    assert area(patches) == 12 * 12
    homes = Counter(str(p.home) for p in patches if p.home is not None and p.home.in_round)
    assert homes == {f"round 2 block {n}": 2 for n in range(1, 21)}
    first, last = (next(p for p in patches if str(p.home) == f"round 2 block {n}") for n in (1, 7))
    assert first.ring[0] == (0, 0) and first.turn == 0
    assert last.turn == 90 and last.box == (10, 2, 12, 3)  # its left half lies on top


def test_arcs_are_turned_with_their_patch():
    """The quarter circle of 3/4 of the side, about the upper left corner, then uppermost."""
    block = library()["drunkard's path"]
    for setting in ("straight", "on point"):
        pat, one = top(block, side=F(8), setting=setting)
        path, ground = top_patches(pat, one)[0][:2]
        x, y = path.ring[0]
        for patch in (path, ground):
            ((i, (u, v)),) = patch.arcs
            a, b = patch.ring[i]
            assert (u - x) * (u - x) + (v - y) * (v - y) == 36
            assert (a - x) * (a - x) + (b - y) * (b - y) == 36


def test_arcs_cut_on_one_side_alone_still_add_up():
    """One arc on the left, two arcs of the same circle on the right."""
    zero, five, on = F(0), F(5), (F(4), F(3))
    left = PatchSpec(((zero, zero), (five, zero), (zero, five)), "linen", ((1, on),))
    upper = PatchSpec(((five, zero), (five, five), on), "moss", ((2, (F(24, 5), F(7, 5))),))
    lower = PatchSpec(((five, five), (zero, five), on), "sand", ((1, (F(7, 5), F(24, 5))),))
    pat, one = top(Block("pool", 5, 5, (left, upper, lower)), side=five)
    patches, notes = top_patches(pat, one)
    assert not notes and area(patches) == 25
    assert sum(doubled_area(p.ring) / 2 for p in patches) != 25


def test_rows_and_columns_count_from_zero_and_motifs_lie_in_their_middles():
    made = [grid("plain", [["linen"]], "fen"), grid("bare", [["sand"]])]
    pat = pattern(motifs=[motif()], blocks=made)
    one = size(3, 2, blocks=("plain", "bare"), borders=(BorderSpec(F(5, 2), "moss"),), side=F(9))
    found = placements(pat, one)
    assert [(p.row, p.column, str(p.home)) for p in found] == [
        (0, 0, "r1c1"),
        (0, 2, "r1c3"),
        (1, 1, "r2c2"),
    ]
    assert [(p.x, p.y) for p in found] == [(7, 7), (25, 7), (16, 16)]


def test_motifs_turn_with_their_blocks():
    pat, one = top(
        grid("plain", [["linen"]], "fen"),
        columns=2,
        rows=2,
        turns=(90,),
        setting="on point",
        setting_fabric="moss",
        motif_size=F(8),
    )
    found = placements(pat, one)
    assert len(found) == 5 and {p.turn for p in found} == {135, 45}
    assert [str(p.home) for p in found if p.turn == 45] == ["between r1c1"]


def test_seam_length_by_hand():
    """Nine patches of 3 in: four seams of 9 in; a border of 1 in: two of 9, two of 11."""
    block = grid("nine", [["linen", "sand", "linen"]] * 3)
    pat, one = top(block, borders=(BorderSpec(F(1), "moss"),), side=F(9))
    assert seam_length(top_patches(pat, one)[0], one) == 4 * 9 + 2 * 9 + 2 * 11
    pat, one = top(block, borders=(BorderSpec(F(1), "moss", "mitred"),), side=F(9))
    found = seam_length(top_patches(pat, one)[0], one)
    assert float(found) == pytest.approx(4 * 9 + 4 * 9 + 4 * 2**0.5, abs=1e-8)


def test_seam_length_of_curves_and_on_point():
    """A quarter circle of radius 6; a block of 6 in on point in four seams of 6 in."""
    pat, one = top(library()["drunkard's path"], side=F(8))
    found = seam_length(top_patches(pat, one)[0], one)
    assert float(found) == pytest.approx(3 * 3.141592653589793, abs=1e-8)
    pat, one = top(grid("plain", [["linen"]]), side=F(6), setting="on point", setting_fabric="moss")
    assert isinstance(one.width, Surd)
    assert seam_length(top_patches(pat, one)[0], one) == 24


def test_patches_that_do_not_fill_their_block():
    spec = PatchSpec(((F(0), F(0)), (F(1), F(0)), (F(1), F(1)), (F(0), F(1))), "linen")
    pat = pattern(blocks=[Block("gap", 2, 1, (spec,))])
    _, notes = top_patches(pat, size(blocks=("gap",)))
    assert codes(notes) == ["D341"]
