"""Arcs, grown edges and seams as shapes: measured against circles and cutting rules.

Cutting rules: a square cut once is 7/8 in larger than the finished leg, cut twice 1 1/4 in
larger than the finished long side, at 1/4 in seams (published rules of rotary cutting, as
Krista Moser, Quilt math made easy, gives them). The exact sizes are (2 + √2) and
(2 + 2√2) seams, less than 1/8 in below.
"""

import math
from dataclasses import replace
from fractions import Fraction

import pytest
from patch_samples import CONTEXT, DRAFT, PIE, SECTION, UNITS, patch
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union

from publish.draw.canvas.shapes import moved_edges, outline_of, polygon_of, shared
from publish.draw.piecing.apart import of_unit
from publish.draw.piecing.pressing import main_seams, seams_of, ways_of
from publish.draw.piecing.table import raw_patches

F = Fraction
SEAM = (F(1, 4),) * 4
BY_KIND = {unit.kind: unit for unit in UNITS}


def test_patches_at_a_curve_leave_no_gap() -> None:
    pie, rest = (polygon_of(p) for p in BY_KIND["bend"].patches)
    assert pie.area == pytest.approx(math.pi * 9 / 4, abs=0.01)
    assert pie.area + rest.area == pytest.approx(16)
    assert pie.intersection(rest).area == pytest.approx(0, abs=1e-9)


def test_a_triangle_grows_to_the_square_that_is_cut_once() -> None:
    first, _ = BY_KIND["half square"].parts
    ((_, raw),) = raw_patches(first, SEAM)
    left, top, right, bottom = raw.bounds
    assert right - left == pytest.approx(3 + (2 + math.sqrt(2)) / 4)
    assert 0 <= 3 + 7 / 8 - (right - left) < 1 / 8
    assert raw.area == pytest.approx((right - left) * (bottom - top) / 2)


def test_a_triangle_grows_to_the_square_that_is_cut_twice() -> None:
    ((_, raw),) = raw_patches(BY_KIND["goose"].parts[0], SEAM)
    left, _, right, _ = raw.bounds
    assert 0 <= 4 + 5 / 4 - (right - left) < 1 / 8


def test_inside_a_unit_only_outer_edges_grow() -> None:
    for unit in UNITS:
        raw = [shape for _, shape in raw_patches(unit, SEAM)]
        left, top, right, bottom = (float(v) for v in unit.box)
        whole = unary_union([s.buffer(1e-6) for s in raw])
        assert whole.area == pytest.approx((right - left + 0.5) * (bottom - top + 0.5), rel=1e-3)
        for held, shape in raw_patches(unit, SEAM):
            assert shape.buffer(0.01).contains(polygon_of(held))


def test_moved_edges_step_where_a_line_goes_on() -> None:
    square = [(0.0, 0.0), (1.0, 0.0), (2.0, 0.0), (2.0, 1.0), (0.0, 1.0)]
    grown = moved_edges(square, [0.25, 0.0, 0.0, 0.0, 0.0])
    assert grown.area == pytest.approx(2 + 0.25)


def test_shapes_that_meet_at_a_corner_share_no_seam() -> None:
    one = Polygon([(0, 0), (1, 0), (1, 1), (0, 1)])
    other = Polygon([(1, 1), (2, 1), (2, 2), (1, 2)])
    assert shared(one, other).is_empty
    beside = Polygon([(1, 0), (2, 0), (2, 1), (1, 1)])
    assert shared(one, beside).length == pytest.approx(1, abs=0.02)


@pytest.mark.parametrize("kind", BY_KIND)
def test_every_part_is_reached_by_a_seam_that_points_to_it(kind: str) -> None:
    unit = BY_KIND[kind]
    seams = main_seams(unit)
    assert [s.last for s in seams] == list(range(1, len(unit.parts)))
    for seam in seams:
        x, y = seam.middle
        ahead = Point(x + 0.05 * seam.normal[0], y + 0.05 * seam.normal[1])
        assert outline_of(unit.parts[seam.last]).contains(ahead)


def test_a_set_in_part_has_a_seam_with_each_of_the_others() -> None:
    seams = [s for s in seams_of(BY_KIND["corner"]) if s.last == 2]
    assert [s.first for s in seams] == [0, 1]
    assert seams[1].line.length == pytest.approx(2, abs=0.02)
    assert seams[0].line.length == pytest.approx(math.sqrt(8), abs=0.02)


def test_pressing_arrows_point_where_the_unit_says() -> None:
    (seam,) = main_seams(BY_KIND["half square"])
    (way,) = ways_of(BY_KIND["half square"], seam)
    assert way == pytest.approx((math.sqrt(0.5), math.sqrt(0.5)))  # towards the last, lower right
    both = ways_of(BY_KIND["corner"], main_seams(BY_KIND["corner"])[0])
    assert sorted(both)[0] == pytest.approx((-1, 0), abs=1e-9)
    assert sorted(both)[1] == pytest.approx((1, 0), abs=1e-9)


def test_outward_is_away_from_the_part_that_the_others_lie_round() -> None:
    goose = BY_KIND["goose"]
    ways = [ways_of(goose, s) for s in main_seams(goose)]
    half = math.sqrt(0.5)
    assert ways[0][0] == pytest.approx((-half, half)) and ways[1][0] == pytest.approx((half, half))
    middle_second = replace(goose, parts=(goose.parts[1], goose.parts[0], goose.parts[2]))
    again = [ways_of(middle_second, s) for s in main_seams(middle_second)]
    assert again[0][0] == pytest.approx((-half, half))
    assert again[1][0] == pytest.approx((half, half))


@pytest.mark.parametrize("kind", BY_KIND)
def test_parts_laid_apart_keep_their_shape_and_do_not_touch(kind: str) -> None:
    unit = BY_KIND[kind]
    apart = of_unit(CONTEXT, DRAFT, unit).at(1.0)
    shapes = [unary_union(apart.part(i)) for i in range(len(unit.parts))]
    for i, one in enumerate(shapes):
        for other in shapes[i + 1 :]:
            assert one.distance(other) > 0.5
    still = [unary_union([s for _, s in raw_patches(p, SEAM)]).area for p in unit.parts]
    assert [s.area for s in shapes] == pytest.approx(still)


def test_a_pie_and_a_section_are_what_the_samples_say() -> None:
    assert PIE.area == pytest.approx(math.pi * 36 / 4, rel=1e-3)
    covered = sum(polygon_of(p).area for p in SECTION.patches)
    assert covered == pytest.approx(15)
    assert polygon_of(patch("x", [(0, 0), (2, 0), (2, 1)], "linen", 5)).area == 1
