"""Outlines of templates: allowance, trimmed corners, arcs, notches.

Reference: areas from elementary geometry, and shapely's buffer (GEOS) as another
implementation of offsets.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from math import hypot, pi, radians, tan

import pytest
from helpers import loaded
from hypothesis import assume, given
from hypothesis import strategies as st
from patch_cases import form, joined, leaf, patch, planned, points
from shapely import affinity
from shapely.geometry import Point, Polygon, box

from publish import cut, draft, grade
from publish.cut.forms import Form
from publish.cut.templates import outline
from publish.surd import ROOT_2

F = Fraction
S = 0.25


def bend(radius):
    """Return a quarter circle, and what is left of the square round it, twice as large."""
    through = (radius * ROOT_2 / 2, radius * ROOT_2 / 2)
    quarter = Form(points((0, 0), (radius, 0), (0, radius)), (F(1, 4),) * 3, ((1, through),))
    side = 2 * radius
    rest = Form(
        points((radius, 0), (side, 0), (side, side), (0, side), (0, radius)),
        (F(1, 4),) * 5,
        ((4, through),),
    )
    return outline(quarter), outline(rest)


def test_the_band_round_blunt_corners_is_the_mitred_one():
    """A pentagon with every corner above a right angle: perimeter and corners."""
    shape = outline(form((1, 0), (4, 0), (5, 3), ("5/2", 5), (0, 3)))
    sides = pairwise(shape.finished.exterior.coords)
    lengths = [hypot(c - a, d - b) for (a, b), (c, d) in sides]
    mitred = shape.finished.buffer(S, join_style="mitre", mitre_limit=20)
    assert shape.cut.area == pytest.approx(mitred.area, abs=1e-9)
    assert shape.cut.symmetric_difference(mitred).area < 1e-9
    assert shape.cut.area - shape.finished.area > S * sum(lengths)


def test_a_square_grows_by_its_allowance():
    """An L of unit squares: area 3, perimeter 8; five outward corners, one inward."""
    shape = outline(form((0, 0), (2, 0), (2, 1), (1, 1), (1, 2), (0, 2)))
    assert shape.cut.area == pytest.approx(3 + 8 * S + 5 * S**2 - S**2)
    assert shape.box() == (F(5, 2), F(5, 2))
    assert shape.notches == ()


# Common practice, no source: a triangle's points are trimmed to the raw edge of its
# neighbour, square to the leg, one allowance beyond the corner.
def test_the_points_of_a_triangle_are_trimmed_square_to_its_legs():
    shape = outline(form((0, 0), (4, 0), (0, 4)))
    assert shape.cut.bounds == pytest.approx((-S, -S, 4 + S, 4 + S))
    mitred = shape.finished.buffer(S, join_style="mitre", mitre_limit=20)
    # Each tip beyond is a right triangle with legs of (1 + √2 - 1) allowances.
    leg = S * 2**0.5
    assert mitred.area - shape.cut.area == pytest.approx(2 * leg * leg / 2)


def test_a_very_sharp_point_is_cut_off_an_allowance_beyond_it():
    shape = outline(form((0, 0), (1, 0), (0, 8)))
    tip = Point(0, 8)
    assert shape.cut.exterior.distance(tip) == pytest.approx(S)
    assert shape.cut.bounds[3] < 8 + 2 * S


CORNERS = st.lists(st.integers(0, 359), min_size=3, max_size=7, unique=True)


@given(CORNERS, st.integers(2, 9))
def test_nowhere_is_there_less_than_the_allowance_nor_more_than_the_mitre(degrees, size):
    circle = Point(0, 0).buffer(size, quad_segs=90).exterior.coords[:-1]
    ring = [circle[d] for d in sorted(degrees)]
    exact = points(*((F(x).limit_denominator(1000), F(y).limit_denominator(1000)) for x, y in ring))
    made = Polygon([(float(x), float(y)) for x, y in exact])
    assume(made.is_valid and made.area > 0.5)
    if not made.exterior.is_ccw:  # the y axis points down: this is clockwise on the page
        exact = exact[::-1]
    shape = outline(Form(exact, (F(1, 4),) * len(exact)))
    assert shape.cut.buffer(1e-6).covers(shape.finished.buffer(S, quad_segs=64))
    mitred = shape.finished.buffer(S, join_style="mitre", mitre_limit=1000)
    assert mitred.buffer(1e-6).covers(shape.cut)


def test_arcs_are_drawn_at_their_true_offset():
    quarter, rest = bend(F(3))
    assert quarter.finished.area == pytest.approx(pi * 9 / 4, abs=0.003)
    assert rest.finished.area == pytest.approx(36 - pi * 9 / 4, abs=0.003)
    # Corner at 0, 0 with both allowances; round the arc a quarter ring; two mitred squares.
    grown = pi * (3 + S) ** 2 / 4 + 2 * 3 * S + 3 * S**2
    assert quarter.cut.area == pytest.approx(grown, abs=0.02)
    centre = Point(0, 0)
    for shape, radius in ((quarter, 3 + S), (rest, 3 - S)):
        arc = [
            p for p in shape.cut.exterior.coords if abs(centre.distance(Point(p)) - radius) < 1e-3
        ]
        assert len(arc) > 20
        steps = pairwise(arc)
        chords = [c for c in (hypot(b[0] - a[0], b[1] - a[1]) for a, b in steps) if c < 1]
        # The height of a circular segment is c² / 8r.
        assert max(chords) ** 2 / (8 * radius) < 0.002


def test_the_notches_of_both_patches_meet():
    quarter, rest = bend(F(3))
    assert len(quarter.notches) == len(rest.notches) == 3
    for x, y in quarter.notches:
        assert min(hypot(x - u, y - v) for u, v in rest.notches) < 1e-9
        assert hypot(x, y) == pytest.approx(3)
    angles = sorted(y / x for x, y in quarter.notches)
    assert angles == pytest.approx([tan(radians(d)) for d in (22.5, 45, 67.5)])


def kite(key, flip, dx, **more):
    """Return a half rectangle, 2 in by 4, and its mirror image."""
    corners = ((0, 0), (2, 0), (0, 4)) if not flip else ((0, 0), (2, 0), (2, 4))
    return patch(key, *((x + dx, y) for x, y in corners), **more)


def test_mirrored_templates_are_counted_apart():
    first, second = kite("a", False, 0, spec=0), kite("b", True, 2, spec=1)
    others = [
        patch("c", (2, 0), (2, 4), (0, 4), spec=2, fabric="moss"),
        patch("d", (2, 0), (4, 4), (2, 4), spec=3, fabric="moss"),
    ]
    whole = joined("block", "slant", *map(leaf, (first, others[0], second, others[1])))
    plan = planned(whole)
    piece = next(p for p in plan.pieces if p.fabric == "linen")
    template = next(t for t in plan.templates if t.letter == piece.letter)
    assert (piece.count, template.count, template.mirrored) == (2, 1, 1)
    assert piece.template == template.key
    assert (piece.finished_width, piece.finished_length) == (2, 4)
    assert len(plan.templates) == 2
    assert template.finished.bounds[:2] == (0, 0)


def ells(count, side=9, gap=7):
    """Return L shapes with a side of their own each, in a row on the top."""
    shapes = []
    for i in range(count):
        x, flip = side * i, i % 3 == 0
        corners = [
            (0, 0),
            (side, 0),
            (side, side - gap),
            (side - gap, side - gap),
            (side - gap, side),
            (0, side - 1),
        ]
        if flip:
            corners = [(side - a, b) for a, b in reversed(corners)]
        shapes.append(patch(f"l{i}", *((x + a, b) for a, b in corners), spec=i))
    return joined("top", "across", *map(leaf, shapes))


def test_templates_that_leave_their_boxes_empty_are_nested():
    """Each L fills half of its box; twelve of them also lie in each other's corners."""
    plan = planned(ells(12))
    fabric = plan.fabrics["linen"]
    (piece,) = plan.pieces
    stretch = next(s for s in fabric.strips if s.placements)
    template = plan.templates[0]
    assert (piece.count, template.count, template.mirrored) == (12, 4, 8)
    assert [(c.letter, c.count) for c in stretch.cuts] == [(piece.letter, 12)]
    assert "nested: buys" in fabric.choices[0] and "the boxes round them" in fabric.choices[0]
    assert fabric.length < 3 * piece.length
    laid = [p.outline for p in stretch.placements]
    assert all(p.area == pytest.approx(template.cut.area) for p in laid)
    for i, one in enumerate(laid):
        assert all(one.distance(two) >= 0.125 - 1e-3 for two in laid[:i])
    cloth = box(0, 0, 40, float(stretch.depth))
    assert all(cloth.covers(p) for p in laid)


def test_each_side_of_a_template_lies_on_the_cloth_as_often_as_it_is_cut():
    """Face down, a template that is not turned over is seen mirrored."""
    plan = planned(ells(12))
    stretch = next(s for s in plan.fabrics["linen"].strips if s.placements)
    template = plan.templates[0]
    plain = affinity.scale(template.cut, -1, 1, origin=(0, 0))
    found = 0
    for placed in stretch.placements:
        back = affinity.rotate(placed.outline, -placed.turn, origin=(0, 0))
        left, top, _, _ = back.bounds
        a, b, _, _ = plain.bounds
        there = affinity.translate(back, a - left, b - top)
        found += there.symmetric_difference(plain).area < 0.01
    assert (found, len(stretch.placements)) == (template.count, 12)


def test_a_curve_tighter_than_its_allowance_is_an_error_at_its_patch(tmp_path):
    text = (
        'title: Osier\nfabrics:\n  linen: {name: Linen, colour: "#101010"}\n'
        '  moss: {name: Moss, colour: "#202020"}\nblocks:\n  one: {traditional: drunkard\'s path, '
        "fabrics: {path: linen, background: moss}}\nsewing: {seam: 3/4 in}\n"
        "sizes:\n  mini: {block_size: SIDE}\n"
    )
    # The quarter circle's radius is three quarters of the side.
    for side, codes in (("1 in", ["C405"]), ("2 in", [])):
        made = loaded(tmp_path, text.replace("SIDE", side), drawings=())
        size, _ = grade.grade(made, "mini")
        drafted, _ = draft.draft(made, size)
        notes = cut.cut(made, {"mini": size}, {"mini": drafted})[1]
        assert [n.code for n in notes] == codes
        assert all(n.place.path.startswith("blocks.one") for n in notes)
