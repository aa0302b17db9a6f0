"""Backing, binding, sleeve, pillow and border arithmetic against published examples.

Sources are named beside each figure; grades and addresses stand in the trade reference
that the figures were copied from.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
import reedmace

from publish.cut import finishing
from publish.cut.needs import long_ways
from publish.cut.patches import borders
from publish.cut.thread import thread
from publish.model.pattern import BackingSpec, BindingSpec, BorderSpec, PillowSpec
from publish.units import YARD, yards_text

F = Fraction


def quilt(width, height, **changes):
    """Return a size of plain finished dimensions."""
    base = replace(reedmace.size(), borders=(), inner_width=F(width), inner_height=F(height),
                   width=F(width), height=F(height))  # fmt: skip
    return replace(base, **changes)


def pattern(width=40, **changes):
    base = reedmace.pattern()
    fabrics = {k: replace(f, usable_width=F(width)) for k, f in base.fabrics.items()}
    return replace(base, fabrics=fabrics, **changes)


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
    plan, need = finishing.binding(pattern(width), quilt(*size, binding=spec))
    assert (plan.length, plan.strips) == (length, strips)
    assert need.count * strip == strips * strip
    assert plan.joined_length >= plan.length


# Continuous bias, soft-furnishing FAQ: 250 in of 2 in strip -> 500 sq in, root 22.36, a
# 23 in square. How many yards do I need (retailer tutorial): 51 x 61 in, 20 in allowance,
# 2 1/2 in strip -> 244 in, root 24.7, so 25 in whole inches.
@pytest.mark.parametrize(
    ("size", "allowance", "strip", "square"),
    [((60, 60), 10, F(2), 23), ((51, 61), 20, F(5, 2), 25)],
)
def test_bias_binding_square(size, allowance, strip, square):
    spec = BindingSpec("moss", strip, "bias", F(allowance))
    plan, need = finishing.binding(pattern(), quilt(*size, binding=spec))
    assert plan.square == need.width == square
    assert plan.joined_length >= plan.length


# Measuring help for a backing, quiltingboard: two 42 in lengths joined with 1/2 in seams
# give 83 in.
def test_two_panels_lose_one_inch_in_their_seam():
    top = quilt(83 - 8, 100, backing=BackingSpec("linen", F(4)))
    plans = {p.seams: p for p, _ in finishing.backing(pattern(42), top)[0]}
    assert (plans["vertical"].panels, plans["vertical"].panel_width) == (2, 42)
    wider = quilt(84 - 8, 100, backing=BackingSpec("linen", F(4)))
    plans = {p.seams: p for p, _ in finishing.backing(pattern(42), wider)[0]}
    assert plans["vertical"].panels == 3


def test_a_wide_backing_needs_no_seam():
    top = quilt(64, 64, backing=BackingSpec("linen", F(4)))
    plan, need = finishing.backing(pattern(108), top)[0][0]
    assert (plan.seams, plan.panels, need.width) == ("none", 1, 72)


# Quilt show sleeve instructions, Hill Country Quilt Guild, 2023: 4 in finished -> 8 1/2 in
# strip, 3 in -> 6 1/2 in, 1 in shorter than the quilt is wide.
@pytest.mark.parametrize(("depth", "strip"), [(4, F(17, 2)), (3, F(13, 2))])
def test_sleeve(depth, strip):
    need = finishing.sleeve(pattern(), quilt(30, 40, sleeve=F(depth)))
    assert (need.width, need.length) == (strip, 29)


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
    assert plan.package.startswith(package)
    assert finishing.batting(quilt(130, 130)).package is None


# Classroom slides: a 70 x 86 in quilt with a border cut 6 1/2 in wide measures 82 x 98 in,
# so a border that finishes at 6 in is cut 6 1/2 in wide.
def test_border_cut_width_and_lengths():
    top = replace(quilt(70, 86, borders=(BorderSpec(F(6), "sandbar"),)), width=F(82), height=F(98))
    side, end = borders(pattern(), top)
    assert side.width == end.width == F(13, 2)
    assert (side.length, end.length) == (F(173, 2), F(165, 2))


def test_a_long_border_is_whole_or_joined_and_no_join_is_forgotten():
    whole, joined = long_ways(F(9, 2), F(129, 2), 2, F(40), F(1, 2))
    assert (whole.across, whole.along, whole.joined) == (F(9, 2), F(129, 2), 1)
    assert joined.across * joined.joined - (joined.joined - 1) * F(1, 2) >= F(129, 2)
    assert joined.across <= 40
    assert joined.count == 2 * joined.joined


# Coats, stitch type classification guide: lockstitch 301 uses 2.5 times the seam.
def test_thread_for_a_lockstitch_seam():
    plan = thread(reedmace.pattern(), reedmace.size(), reedmace.draft())
    assert plan.piecing == 72 * F(5, 2)
    assert plan.quilting == 20 * F(5, 2)


# Convert fabric measurements, Scissortail Quilting: eighths of a yard in inches.
@pytest.mark.parametrize(
    ("inches", "yards"),
    [(F(9, 2), "1/8 yd"), (9, "1/4 yd"), (F(27, 2), "3/8 yd"), (18, "1/2 yd"), (27, "3/4 yd")],
)
def test_yard_fractions(inches, yards):
    assert yards_text(F(inches)) == yards
    assert F(inches) / YARD == F(yards.split()[0])
