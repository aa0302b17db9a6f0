"""Backing, binding, sleeve, pillow and border arithmetic against published examples.

Sources are named beside each figure; grades and addresses stand in the trade reference
that the figures were copied from.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
import reedmace
from hypothesis import given
from hypothesis import strategies as st
from shapely.affinity import translate
from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union

from publish.cut import finishing
from publish.cut.borders import borders
from publish.cut.fabric import Lettered, piece_of
from publish.cut.needs import Cloth, equal_lengths, long_ways
from publish.cut.thread import thread
from publish.model.pattern import BackingSpec, BindingSpec, BorderSpec, PillowSpec
from publish.units import YARD, yards_text

F = Fraction


def quilt(width, height, **changes):
    """Return a size of plain finished dimensions."""
    base = replace(
        reedmace.size(),
        borders=(),
        inner_width=F(width),
        inner_height=F(height),
        width=F(width),
        height=F(height),
    )
    return replace(base, **changes)


def pattern(width=40, **changes):
    base = reedmace.pattern()
    fabrics = {k: replace(f, usable_width=F(width)) for k, f in base.fabrics.items()}
    return replace(base, fabrics=fabrics, **changes)


def bound(made, top):
    """Return the binding that a quilt's first way of cutting it gives."""
    need = finishing.binding(made, top)
    return finishing.binding_plan(top, piece_of(Lettered("E", need), need.ways[0]), F(1, 4))


# How to figure binding, alwaysinstitchesohio, 2009: 40 x 50 in, no allowance, 40 in wide
# fabric, 2 1/2 in strips: 180 in, 5 strips, 12 1/2 in of fabric.
# Double fold flange binding, Monica Curry Quilt Design, 2019: 54 x 60 in, 10 in allowance,
# 42 in wide fabric: 238 in, 6 strips.
@pytest.mark.parametrize(
    ("size", "allowance", "width", "strip", "length", "strips"),
    [((40, 50), 0, 40, F(5, 2), 180, 5), ((54, 60), 10, 42, F(9, 4), 238, 6)],
)
def test_straight_binding(size, allowance, width, strip, length, strips):
    spec = BindingSpec("moss", strip, "straight", F(allowance))
    plan = bound(pattern(width), quilt(*size, binding=spec))
    assert (plan.length, plan.strips, plan.joins) == (length, strips, strips - 1)
    assert plan.strip_length == width
    assert plan.joined_length >= plan.length


# Continuous bias, soft-furnishing FAQ: 250 in of 2 in strip -> 500 sq in, root 22.36, a
# 23 in square. How many yards do I need (retailer tutorial): 51 x 61 in, 20 in allowance,
# 2 1/2 in strip -> 244 in, root 24.7, so 25 in whole inches. Both rules are of area alone:
# the squares that give as much in whole lines, seams off, are an inch larger.
@pytest.mark.parametrize(
    ("size", "allowance", "strip", "published"),
    [((60, 60), 10, F(2), 23), ((51, 61), 20, F(5, 2), 25)],
)
def test_bias_binding_square(size, allowance, strip, published):
    spec = BindingSpec("moss", strip, "bias", F(allowance))
    plan = bound(pattern(), quilt(*size, binding=spec))
    assert plan.square == published + 1
    assert spiral(published, strip) < plan.length <= spiral(plan.square, strip)


def spiral(side, strip, seam=0.25):
    """Return what a square gives as continuous bias, measured on the shape itself.

    Two right triangles, an allowance cut off where they meet and at the ends of the tube; a
    line counts where a whole strip lies between it and the next.
    """
    ends = box(-side, seam, side, side - seam)
    right = Polygon([(0, 0), (side, 0), (0, side)]).intersection(box(seam, 0, side, side))
    left = Polygon([(side, 0), (side, side), (0, side)]).intersection(box(0, 0, side - seam, side))
    slant = unary_union([translate(right, -seam), translate(left, seam - side)]).intersection(ends)
    round_ = 2**0.5 * (side - 2 * seam)
    whole = [
        at / 32
        for at in range(32 * int(side))
        if slant.intersection(
            LineString([(at / 32 + side, -side), (at / 32 - 2 * side, 2 * side)])
        ).length
        > round_ - 0.01
    ]
    return int((max(whole) - min(whole)) / (2**0.5 * float(strip))) * round_


@pytest.mark.parametrize("strip", [F(2), F(9, 4), F(5, 2)])
def test_bias_from_a_square_goes_round_every_quilt(strip):
    """Of 324 square quilts, none gets less than it is promised, and none a square that is
    two inches larger than it must be."""
    for side in range(12, 120):
        spec = BindingSpec("moss", strip, "bias", F(10))
        plan = bound(pattern(), quilt(side, side, binding=spec))
        lines = int((float(plan.square) - 0.5) / (2**0.5 * float(strip)))
        given = lines * 2**0.5 * (float(plan.square) - 0.5)
        assert plan.lines == lines
        assert (
            4 * side + 10 == plan.length <= plan.joined_length <= given < plan.joined_length + 0.125
        )
        smaller = float(plan.square) - 1.5
        assert int(smaller / (2**0.5 * float(strip))) * 2**0.5 * smaller < plan.length


def backings(width, top):
    """Return the ways to make a backing from fabric of a usable width."""
    need, plans = finishing.backing(pattern(width), top)
    assert len(need.ways) == len(plans)
    return plans


def joined(plan):
    """Return what a backing's panels give across their seams, 1/2 in from each edge."""
    seams = plan.panels - 1 if plan.half is None else plan.panels
    return plan.panels * plan.panel_width - seams


# Measuring help for a backing, quiltingboard: two 42 in lengths joined with 1/2 in seams
# give 83 in.
def test_two_panels_lose_one_inch_in_their_seam():
    top = quilt(83 - 8, 100, backing=BackingSpec("linen", F(4)))
    plans = [p for p in backings(42, top) if p.seams == "vertical"]
    assert [(p.panels, p.panel_width, p.half) for p in plans] == [(2, 42, None)]
    wider = quilt(84 - 8, 100, backing=BackingSpec("linen", F(4)))
    assert [p.panels for p in backings(42, wider) if p.seams == "vertical"] == [3]


# Quilt backings: fabric calculation, BellaOnline: avoid a centre seam; one full panel, one
# split in two.
def test_a_second_panel_is_split_to_keep_a_seam_from_the_middle():
    top = quilt(64, 90, backing=BackingSpec("linen", F(4)))
    split, whole = [p for p in backings(40, top) if p.seams == "vertical"]
    assert (split.panels, split.half, split.panel_width) == (2, F(37, 2), 37)
    assert (whole.panels, whole.half, whole.panel_width) == (2, None, F(73, 2))
    # the whole panel and its two halves, with two seams: 37 + 18 1/2 + 18 1/2 - 2
    assert split.panel_width + 2 * split.half - 2 == joined(split) == 72


@given(st.integers(20, 400), st.integers(20, 400), st.sampled_from([36, 40, 42, 60, 108]))
def test_every_backing_reaches_and_no_panel_is_a_sliver(width, height, usable):
    top = quilt(F(width, 2), F(height, 2), backing=BackingSpec("linen", F(4)))
    for plan in backings(usable, top):
        across = plan.height if plan.seams == "horizontal" else plan.width
        if plan.seams == "none":
            sides = sorted((plan.panel_width, plan.panel_length))
            assert sides == sorted((plan.width, plan.height))
            continue
        assert joined(plan) >= across
        assert plan.panel_width <= usable
        assert min(plan.panel_width, plan.half or usable) >= finishing.LEAST_PANEL
        if plan.half is not None:
            assert plan.half * 2 == plan.panel_width
            assert plan.panels % 2 == 0  # an odd number leaves a panel in the middle


def test_a_wide_backing_needs_no_seam():
    top = quilt(64, 64, backing=BackingSpec("linen", F(4)))
    (plan,) = backings(108, top)
    assert (plan.seams, plan.panels, plan.panel_width) == ("none", 1, 72)


# Quilt show sleeve instructions, Hill Country Quilt Guild, 2023: 4 in finished -> 8 1/2 in
# strip, 3 in -> 6 1/2 in, 1 in shorter than the quilt is wide.
@pytest.mark.parametrize(("depth", "strip"), [(4, F(17, 2)), (3, F(13, 2))])
def test_sleeve(depth, strip):
    need = finishing.sleeve(pattern(), quilt(30, 40, sleeve=F(depth)))
    assert (need.width, need.length) == (strip, 29)


@pytest.mark.parametrize("seam", [F(1, 4), F(3, 8), F(1, 2), F(5, 8)])
@pytest.mark.parametrize("depth", [3, 4, F(9, 2)])
def test_a_sleeve_is_as_deep_as_asked_at_every_seam(seam, depth):
    """Folded in half and sewn, what is left is the strip less two allowances, halved."""
    base = pattern()
    made = replace(base, sewing=replace(base.sewing, seam=seam))
    need = finishing.sleeve(made, quilt(30, 40, sleeve=F(depth)))
    assert (need.width - 2 * seam) / 2 == depth


# Fit and closures, House on Hill Road: envelope back for an 18 in form: two 18 x 12 in.
# Cushion cover tutorial, everythingsewing, 2016: 14 in form, front 14 x 14, zip back 14 x 15.
@pytest.mark.parametrize(
    ("cover", "back", "sides", "count"),
    [(17, "envelope", {12, 18}, 2), (13, "zip", {14, 15}, 1)],
)
def test_pillow_backs(cover, back, sides, count):
    spec = PillowSpec(F(cover + 1), back, "linen", F(4), F(1), F(1, 2))
    plan, need = finishing.pillow(pattern(), quilt(cover, cover, pillow=spec))
    assert {plan.piece_width, plan.piece_length} == sides
    assert need.count == count


# Standard quilt sizes, project12quilts, 2012: crib 45 x 60, twin 72 x 90, queen 90 x 108.
@pytest.mark.parametrize(
    ("size", "package"), [((44, 38), "crib"), ((66, 84), "twin"), ((84, 102), "queen")]
)
def test_batting_package(size, package):
    plan = finishing.batting(quilt(*size))
    assert plan.package.name == package
    assert finishing.batting(quilt(130, 130)).package is None


# Classroom slides: a 70 x 86 in quilt with a border cut 6 1/2 in wide measures 82 x 98 in,
# so a border that finishes at 6 in is cut 6 1/2 in wide.
def test_border_cut_width_and_lengths():
    top = replace(quilt(70, 86, borders=(BorderSpec(F(6), "sandbar"),)), width=F(82), height=F(98))
    side, end = borders(pattern(), top)
    assert side.width == end.width == F(13, 2)
    assert (side.length, end.length) == (F(173, 2), F(165, 2))


def test_a_long_border_is_whole_or_joined_and_no_join_is_forgotten():
    whole, parts = long_ways(F(9, 2), F(129, 2), 2, Cloth(F(40)), F(1, 2))
    assert (whole.across, whole.along, whole.joined) == (F(9, 2), F(129, 2), 1)
    assert parts.across * parts.joined - (parts.joined - 1) * F(1, 2) >= F(129, 2)
    assert parts.across <= 40
    assert parts.count == 2 * parts.joined


@given(st.integers(1, 4000), st.integers(40, 400), st.integers(0, 30))
def test_equal_lengths_give_the_length_with_as_few_joins_as_can_be(length, most, loss):
    length, most, loss = F(length, 8), F(most, 8), F(loss, 8)
    parts, each = equal_lengths(length, most, loss)
    if most <= loss < length:
        assert (parts, each) == (1, length)
        return
    assert each <= most
    assert parts * each - (parts - 1) * loss >= length
    assert parts == 1 or (parts - 1) * most - (parts - 2) * loss < length


# A diagonal join takes one strip width: from memory.
def test_binding_is_also_cut_beside_long_pieces():
    spec = BindingSpec("moss", F(9, 4))
    need = finishing.binding(pattern(), quilt(64, 64, binding=spec), [F(129, 2)])
    across, along = need.ways
    assert (across.across, across.along, across.count) == (40, F(9, 4), 7)
    assert (along.across, along.count) == (F(9, 4), 5)
    assert along.along <= F(129, 2)
    assert along.count * along.along - (along.count - 1) * F(9, 4) >= 64 * 4 + 10
    assert (along.made.width, along.made.length, along.made.count) == (F(9, 4), along.along, 5)


# Coats, stitch type classification guide: lockstitch 301 uses 2.5 times the seam.
def test_thread_for_a_lockstitch_seam():
    plan = thread(reedmace.pattern(), reedmace.size(), reedmace.draft())
    assert plan.piecing == 72 * F(5, 2)
    assert plan.quilting == 12 * 20 * F(5, 2)


# Convert fabric measurements, Scissortail Quilting: eighths of a yard in inches.
@pytest.mark.parametrize(
    ("inches", "yards"),
    [(F(9, 2), "1/8 yd"), (9, "1/4 yd"), (F(27, 2), "3/8 yd"), (18, "1/2 yd"), (27, "3/4 yd")],
)
def test_yard_fractions(inches, yards):
    assert yards_text(F(inches)) == yards
    assert F(inches) / YARD == F(yards.split()[0])
