"""What a patch is cut as, against published sizes.

Sources are named beside each figure; grades and addresses stand in the trade reference
that the figures were copied from.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from patch_cases import form, points, right_triangle, square
from shapely.geometry import Polygon

from publish.cut.classify import classify, once_cut, twice_cut
from publish.cut.forms import Form, form_of, known_root, length_of
from publish.model.draft import Patch
from publish.surd import ROOT_2, exact, turned
from publish.units import round_up

F = Fraction


def cut_side(shape, straight_long_side=False):
    return round_up(classify(shape, straight_long_side).width)


# Lesson 1: allowing for seam allowances (teaching handout): 3 in finished, cut 3 1/2 in.
def test_a_square_is_cut_two_seams_larger():
    made = classify(square(3))
    assert (made.shape, made.width, made.length, made.yields) == ("rectangle", F(7, 2), F(7, 2), 1)


# Half square and quarter square triangles, North Hampshire Quilters, block notes hblk402b:
# 3 in finished from 3 7/8 in; How to measure and cut triangles, Granny Maud's Girl, 2018:
# 2 in from 2 7/8 in.
@pytest.mark.parametrize(("finished", "cut"), [(3, F(31, 8)), (2, F(23, 8))])
def test_a_triangle_with_straight_legs_comes_from_a_square_cut_once(finished, cut):
    made = classify(right_triangle(finished))
    assert (made.shape, made.yields, round_up(made.width)) == ("once-cut triangle", 2, cut)


# North Hampshire Quilters: long side 3 in finished from 4 1/4 in.
def test_a_triangle_with_a_straight_long_side_comes_from_a_square_cut_twice():
    shape = form((0, 0), (3, 0), ("3/2", "3/2"))
    made = classify(shape, straight_long_side=True)
    assert (made.shape, made.yields, round_up(made.width)) == ("twice-cut triangle", 4, F(17, 4))


# Patchwork mathematics, tilkkutaiwas, 2012: for any seam, 3 1/2 and 5 seams are added.
# Exactly (2 + √2) and (2 + 2√2) seams: 0.8536 and 1.2071 in at 1/4 in, 2.5607 and 3.6213
# at 3/4 in (from memory, no page cited).
@pytest.mark.parametrize(
    ("seam", "once", "twice"), [(F(1, 4), 0.8536, 1.2071), (F(3, 4), 2.5607, 3.6213)]
)
def test_exact_additions_at_any_seam(seam, once, twice):
    assert float(once_cut(F(0), seam)) == pytest.approx(once, abs=5e-5)
    assert float(twice_cut(F(0), seam)) == pytest.approx(twice, abs=5e-5)
    assert once_cut(F(0), seam) <= seam * F(7, 2)
    assert twice_cut(F(0), seam) <= seam * 5
    assert classify(right_triangle(3, seam)).width == once_cut(F(3), seam)
    long = classify(right_triangle(3, seam), straight_long_side=True)
    assert long.width == twice_cut(3 * ROOT_2, seam)
    assert (round_up(once_cut(F(0), F(1, 4))), round_up(twice_cut(F(0), F(1, 4)))) == (
        F(7, 8),
        F(5, 4),
    )


def test_each_edge_may_have_its_own_allowance():
    """A square whose right side is a pillow's edge, and a triangle on such a leg."""
    shape = Form(square(3).ring, (F(1, 4), F(1, 2), F(1, 4), F(1, 4)))
    assert (classify(shape).width, classify(shape).length) == (F(15, 4), F(7, 2))
    leg = Form(right_triangle(3).ring, (F(1, 2), F(1, 4), F(1, 4)))
    assert classify(leg).width == 3 + F(1, 2) + F(1, 4) + F(1, 4) * ROOT_2


# Rotary cutting part 6, Chris and Barbara quilts, 2015: an equilateral triangle 3 in high
# from a strip 3 3/4 in wide.
def test_an_equilateral_triangle():
    half = F(1732051, 10**6)
    made = classify(Form(points((0, 3), (half, 0), (2 * half, 3)), (F(1, 4),) * 3))
    assert (made.shape, made.near) == ("equilateral triangle", True)
    assert round_up(made.length) == F(15, 4)


# Rotary cutting part 7, Chris and Barbara quilts, 2015: a 45 degree diamond 2 in from side
# to side from a 2 1/2 in strip. Equilateral diamonds thread, quiltingboard: from a strip
# 2 in wide, cuts are 2.828 in apart along its edge.
def test_a_diamond_of_45_degrees():
    side = 2 * ROOT_2
    shape = form((0, 0), (side, 0), (side + 2, 2), (2, 2))
    made = classify(shape)
    assert (made.shape, made.angle, made.length) == ("diamond", 45, F(5, 2))
    assert made.apart == F(5, 2)
    assert made.width == F(5, 2) * ROOT_2
    raw = classify(Form(shape.ring, (F(0),) * 4))
    assert float(raw.width) == pytest.approx(2.828, abs=5e-4)


# Formulas for quilters, Karen Combs Studio, 2002: diamonds with sides of 1 in make an
# eight-pointed star of 3.41 in.
def test_an_eight_pointed_star_closes_with_diamonds_corners_and_sides():
    corner = ROOT_2 / 2
    assert float(2 * corner + 2) == pytest.approx(3.41, abs=0.005)
    diamond = form((0, 0), (1, 0), (1 + corner, corner), (corner, corner))
    assert classify(diamond).shape == "diamond"
    diamonds, squares, sides = diamond.doubled_area * 4, 4, 4 * F(1, 2)
    assert diamonds + squares + sides == (2 + ROOT_2) * (2 + ROOT_2)


# How to cut the hexagon shape, Slaney Quilting Studio: 2 3/4 in from flat to flat from a
# strip 3 1/4 in wide, cut at 60 degrees.
def test_a_hexagon():
    high = F(11, 8)
    half = high * F(577350, 10**6)
    shape = Form(
        points(
            (-2 * half, 0),
            (-half, -high),
            (half, -high),
            (2 * half, 0),
            (half, high),
            (-half, high),
        ),
        (F(1, 4),) * 6,
    )
    made = classify(shape)
    assert (made.shape, made.angle) == ("hexagon", 60)
    assert round_up(made.length) == F(13, 4)
    askew = Form((*shape.ring[:5], points((F(-7, 10), high))[0]), shape.allow)
    assert classify(askew) is None


def test_a_parallelogram_and_its_mirror_image_are_told_apart():
    left = classify(form((0, 0), (3, 0), (4, 1), (1, 1)))
    right = classify(form((1, 0), (4, 0), (3, 1), (0, 1)))
    assert {left.shape, right.shape} == {"parallelogram"}
    assert (left.hand, right.hand) == (1, -1)
    assert left.length == F(3, 2)
    assert left.apart == F(3) / ROOT_2 + F(1, 2)


@pytest.mark.parametrize(
    "shape",
    [
        form((0, 0), (3, 0), (0, 2)),
        form((0, 0), (4, 0), (3, 1), (1, 1)),
        form((0, 0), (3, 0), (4, 2), (1, 2)),
        form((0, 0), (2, 0), (2, 1), (1, 1), (1, 2), (0, 2)),
        form((0, 0), (3, 0), (0, 3), arcs=((1, points((2, "5/2"))[0]),)),
    ],
)
def test_what_no_ruler_cuts_is_a_template(shape):
    assert classify(shape) is None


def test_lengths_with_and_without_a_root():
    assert known_root(F(9, 4)) == F(3, 2)
    assert known_root(exact(6, 4)) == 2 + ROOT_2
    assert known_root(exact(6, -4)) == 2 - ROOT_2
    assert known_root(F(3)) is None
    above = length_of(F(3))
    assert above**2 > 3 > (above - F(1, 10**9)) ** 2


GRID = st.integers(-6, 6)
RINGS = st.lists(st.tuples(GRID, GRID), min_size=3, max_size=5, unique=True)


@given(RINGS, st.sampled_from(range(0, 360, 45)), GRID, GRID)
def test_turning_and_moving_a_patch_leaves_its_signature(ring, turn, dx, dy):
    ring = points(*ring)
    allow = (F(1, 4),) * len(ring)
    there = tuple((x + dx, y + dy) for x, y in (turned(p, turn) for p in ring))
    assume(Polygon(ring).is_valid)
    first = form_of(Patch("a", ring, "linen", "ground"), allow)
    moved = form_of(Patch("b", there, "linen", "ground"), allow)
    back = form_of(Patch("b", there, "linen", "ground", turn=turn), allow)
    assert moved.signature == first.signature == back.signature
    assert back.laid == first.laid
    assert first.mirrored.mirrored.signature == first.signature
    assert first.doubled_area == first.mirrored.doubled_area


def test_a_corner_that_runs_straight_on_is_left_out():
    shape = form_of(
        Patch("a", points((0, 0), (1, 0), (3, 0), (3, 3), (0, 3)), "linen", "ground"),
        (F(1, 4), F(1, 4), F(1, 4), F(1, 4), F(1, 4)),
    )
    assert shape.ring == square(3).ring
    assert shape.signature == square(3).signature
