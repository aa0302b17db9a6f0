"""Quilting lines: true offsets, spaced as said, inside their areas, of known length.

The area within r of a convex shape of area A and perimeter P is A + P r + pi r^2
(Steiner's formula, convex geometry; a textbook result).
"""

import math
from fractions import Fraction

import numpy as np
import pytest
import shapely
from draft_builders import codes, grid, pattern, size
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate
from shapely.geometry import MultiPoint, MultiPolygon, Point, Polygon, box

from publish.draft.limits import CHORD
from publish.draft.offset import offset
from publish.draft.quilting import Top, quilt
from publish.draft.topmap import placements, top_patches
from publish.model.pattern import BorderSpec, QuiltingSpec

F = Fraction
SQUARE = MultiPolygon([box(-2, -2, 2, 2)])


@settings(max_examples=60)
@given(
    st.lists(st.tuples(st.floats(-5, 5), st.floats(-5, 5)), min_size=3, max_size=12),
    st.floats(0.05, 8),
)
def test_offsets_obey_steiners_formula(points, r):
    shape = MultiPoint(points).convex_hull
    if shape.geom_type != "Polygon" or shape.area < 0.5:
        shape = box(0, 0, 2, 3)
    expected = shape.area + shape.length * r + math.pi * r * r
    found = offset(shape, r).area
    assert expected - CHORD * (shape.length + math.tau * r) <= found <= expected + 1e-9


TEN = F(10)


def lines(spec, columns=1, rows=1, side=TEN, borders=(), whole=SQUARE, ground=None):
    block = grid("plain", ground or [["linen"]], "fen" if whole is not None else None)
    pat = pattern(blocks=[block], places=["quilting", "quilting.0"])
    one = size(columns, rows, side=side, borders=tuple(borders), quilting=(spec,))
    patches, _ = top_patches(pat, one)
    wholes = {} if whole is None else {"fen": whole}
    top = Top(one, wholes, placements(pat, one), patches)
    found, notes = quilt(pat, top)
    return (found[0] if found else None), notes, top


def test_ditch_round_the_motif():
    found, notes, _ = lines(QuiltingSpec("motif", "ditch"), 2)
    assert not notes and found.length == pytest.approx(2 * 16)
    assert found.lines.bounds == pytest.approx((3, 3, 17, 7))


def test_echo_round_a_square_until_the_block_is_full():
    """At 1, 2 and 3 in whole rounded squares; from 4 in on only what reaches the corners,
    which lie 3 sqrt 2 = 4.24 in from the motif's."""
    found, _, top = lines(QuiltingSpec("ground", "echo", F(1)))
    whole = sum(16 + math.tau * r for r in (1, 2))
    touching = 16 + math.tau * 3  # at 3 in it runs along the block's edge
    arc = 4 * 4 * (math.pi / 2 - 2 * math.acos(3 / 4))
    assert found.length == pytest.approx(whole + touching + arc, rel=2e-3)
    assert top.inside.buffer(1e-9).covers(found.lines)


@given(st.sampled_from([1, 2, 3]), st.floats(0, 90), st.sampled_from([F(1, 2), F(3, 4), F(1)]))
@settings(max_examples=20)
def test_echoes_are_true_offsets_of_all_motifs_together(columns, turn, gap):
    whole = MultiPolygon(
        [rotate(Polygon([(-3, -0.5), (3, -1), (2, 2), (0, 0.4), (-2, 2)]), turn, origin=(0, 0))]
    )
    found, _, top = lines(QuiltingSpec("ground", "echo", gap), columns, whole=whole)
    motifs = top.placed(top.wholes)
    points = shapely.points(shapely.get_coordinates(shapely.segmentize(found.lines, 0.1)))
    rounds = shapely.distance(points, motifs) / float(gap)
    assert np.abs(rounds - np.round(rounds)).max() * float(gap) <= 2 * CHORD
    assert rounds.min() > 0.9
    assert top.inside.buffer(1e-9).covers(found.lines)


def test_echoes_fill_holes_and_the_whole_ground():
    ring = MultiPolygon([Point(0, 0).buffer(4, 64).difference(Point(0, 0).buffer(3, 64))])
    found, _, top = lines(QuiltingSpec("ground", "echo", F(1, 2)), whole=ring)
    inside = [line for line in found.lines.geoms if Point(5, 5).buffer(2.9).covers(line)]
    assert sorted(round(line.length / math.tau, 2) for line in inside) == [0.5, 1, 1.5, 2, 2.5]
    ground = top.inside.difference(top.placed(top.wholes))
    reach = offset(found.lines.union(top.placed(top.wholes).boundary), 0.51)
    assert ground.difference(reach).area < 0.01


def test_echo_inside_the_motif():
    found, _, _ = lines(QuiltingSpec("motif", "echo", F(1, 2)), 2)
    assert found.length == pytest.approx(2 * 4 * (3 + 2 + 1))


@pytest.mark.parametrize(
    ("spec", "borders", "whole"),
    [
        (QuiltingSpec("ground", "echo", F(1)), (), None),
        (QuiltingSpec("ground", "ditch"), (), None),
        (QuiltingSpec("motif", "echo", F(3)), (), SQUARE),
        (QuiltingSpec("border", "parallel", F(1)), [BorderSpec(F(1), "fen")], None),
        (QuiltingSpec("border", "echo", F(2)), [BorderSpec(F(1), "fen")], None),
    ],
)
def test_quilting_without_a_single_line_is_said(spec, borders, whole):
    """Asked for and not done: an area that no line of its style falls into."""
    found, notes, _ = lines(spec, borders=borders, whole=whole)
    assert found is None and codes(notes) == ["D351"] and notes[0].place.path == "quilting.0"


def test_left_to_the_maker_has_no_lines_and_no_finding():
    found, notes, _ = lines(QuiltingSpec("ground", "as desired"), whole=None)
    assert found is not None and found.length == 0 and not notes


@pytest.mark.parametrize(("angle", "count"), [(0, 9), (90, 9)])
def test_parallel_lines_by_hand(angle, count):
    """Ten inches, a line every inch through the middle: nine inside and two on the edge."""
    found, _, _ = lines(QuiltingSpec("ground", "parallel", F(1), angle), whole=None)
    inside = [g for g in found.lines.geoms if 0 < g.bounds[0] + g.bounds[1] - 0 < 20]
    assert len([g for g in inside if g.length == pytest.approx(10)]) >= count
    assert found.length == pytest.approx(10 * 11)


@given(st.integers(0, 179), st.integers(2, 16))
@settings(max_examples=30)
def test_parallel_lines_cover_their_area_evenly(angle, eighths):
    """Lines a distance apart have a total length of about the area over the distance."""
    gap = F(eighths, 8)
    found, _, top = lines(QuiltingSpec("ground", "parallel", gap, angle), 2, whole=None)
    area = top.inside.area / float(gap)
    assert abs(found.length - area) <= 45
    assert top.inside.buffer(1e-9).covers(found.lines)


def test_grid_is_two_sets_on_the_diagonal():
    found, _, _ = lines(QuiltingSpec("ground", "grid", F(2)), whole=None)
    for line in found.lines.geoms:
        (a, b), (c, d) = line.coords[0], line.coords[-1]
        assert abs(c - a) == pytest.approx(abs(d - b))


def test_ground_lines_keep_off_the_motif():
    for spec in (
        QuiltingSpec("ground", "parallel", F(1, 2), 30),
        QuiltingSpec("ground", "grid", F(1)),
        QuiltingSpec("ground", "ditch"),
    ):
        found, _, top = lines(spec, 2, 2, ground=[["linen", "sand"]] * 2)
        within = top.placed(top.wholes).buffer(-1e-6)
        assert found.length > 0 and not within.intersects(found.lines)


def test_ditch_of_the_ground_is_its_seams_outside_motifs():
    """Two by two blocks of four patches: 6 seams of 20 in; three on each way cross motifs of
    4 in twice each, except the middle one."""
    found, _, _ = lines(QuiltingSpec("ground", "ditch"), 2, 2, ground=[["linen", "sand"]] * 2)
    assert found.length == pytest.approx(6 * 20 - 4 * 2 * 4)


BORDERS = [BorderSpec(F(1), "moss"), BorderSpec(F(3), "sand", "mitred")]


def test_border_lines_follow_the_border():
    """Four inches of border round 10: lines at 1, 2 and 3 in, square all round."""
    found, _, _ = lines(QuiltingSpec("border", "parallel", F(1), 0), borders=BORDERS)
    assert found.length == pytest.approx(4 * (12 + 14 + 16))
    again, _, _ = lines(QuiltingSpec("border", "echo", F(1)), borders=BORDERS)
    assert again.length == pytest.approx(found.length)


def test_border_lines_across():
    found, _, top = lines(QuiltingSpec("border", "parallel", F(1), 90), borders=BORDERS)
    frame = top.frame.buffer(1e-9)
    assert frame.covers(found.lines)
    straight = [np.hypot(*np.diff(line.coords, axis=0).T).max() for line in found.lines.geoms]
    assert max(straight) == pytest.approx(4)
    straight_across = [g for g in found.lines.geoms if g.length == pytest.approx(4)]
    assert len(straight_across) >= 4 * 9


def test_border_ditch_is_every_border_seam():
    """Butted: 2 x 10 and 2 x 12. Mitred round 12: four sides and four corners of 3 in."""
    found, _, _ = lines(QuiltingSpec("border", "ditch"), borders=BORDERS)
    butted = 2 * 10 + 2 * 12
    assert found.length == pytest.approx(butted + 4 * 12 + 4 * 3 * 2**0.5)


def test_areas_that_are_not_there_are_left_out():
    assert lines(QuiltingSpec("border", "parallel", F(1)))[:2] == (None, ())
    assert lines(QuiltingSpec("motif", "ditch"), whole=None)[:2] == (None, ())


def test_as_desired_has_no_lines():
    found, notes, _ = lines(QuiltingSpec("ground", "as desired"))
    assert not notes and found.length == 0 and found.style == "as desired"


@pytest.mark.parametrize("spacing", [None, F(0), F(1, 32), F(1, 10**9)])
@pytest.mark.parametrize("style", ["echo", "parallel", "grid"])
def test_lines_too_close_are_refused(style, spacing):
    found, notes, _ = lines(QuiltingSpec("ground", style, spacing))
    assert found is None and codes(notes) == ["D350"] and notes[0].place.path == "quilting.0"
