"""Necks, slits, tips and inside corners on shapes whose measures are known beforehand."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale, translate
from shapely.geometry import LineString, MultiPolygon, Point, Polygon, box
from shapely.ops import unary_union

from publish.draft.corners import corners
from publish.draft.fill import polygons
from publish.draft.narrow import Search, narrow_places, narrowest


def joined(*parts):
    return polygons(unary_union(parts))


def neck(cloth, most=20.0):
    return narrowest(Search.of(polygons(cloth)), most)


def slit(cloth, most=2.0):
    left, top, right, bottom = cloth.bounds
    ground = box(left - 9, top - 9, right + 9, bottom + 9).difference(cloth)
    return narrowest(Search.of(polygons(ground)), most)


def regular(sides, radius=2.0):
    """Return a regular polygon by its circumscribed circle."""
    turns = [math.tau * k / sides for k in range(sides)]
    return Polygon([(radius * math.cos(t), radius * math.sin(t)) for t in turns])


def bar(width, long=2.0):
    """Return two squares of side 2 joined by a bar."""
    half = width / 2
    return joined(
        box(-2 - long / 2, -1, -long / 2, 1),
        box(long / 2, -1, 2 + long / 2, 1),
        box(-long, -half, long, half),
    )


HOURGLASS = Polygon([(-2, -1), (0, -0.15), (2, -1), (2, 1), (0, 0.15), (-2, 1)])
RING = Point(0, 0).buffer(2, 64).difference(Point(0.3, 0).buffer(1.5, 64))
FINGER = joined(box(-2, -1, 0, 1), box(-1, -0.1, 2, 0.1))
ROUND_FINGER = joined(box(-2, -1, 0, 1), LineString([(-1, 0), (2, 0)]).buffer(0.1, 32))
LEAF_ON_STALK = joined(box(-2, -1, 0, 1), box(-1, -0.08, 1, 0.08), Point(1.5, 0).buffer(0.6, 64))
HALF_RING = Point(0, 0).buffer(1.1, 64).difference(Point(0, 0).buffer(0.9, 64))
CURVED = joined(
    HALF_RING.intersection(box(0, -2, 2, 2)), box(-2, 0.5, 0.1, 2.5), box(-2, -2.5, 0.1, -0.5)
)
ARMS = [rotate(box(0, -0.2, 3, 0.2), 60 * k, origin=(0, 0)) for k in range(6)]

NECKS = {
    "bar": (bar(0.3), 0.3),
    "short bar": (bar(0.3, 0.1), 0.3),
    "hourglass": (HOURGLASS, 0.3),
    "ring": (RING, 0.2),
    "finger": (FINGER, 0.2),
    "round finger": (ROUND_FINGER, 0.2),
    "leaf on a stalk": (LEAF_ON_STALK, 0.16),
    "curved bar": (CURVED, 0.2),
    "arms": (joined(*ARMS, Point(0, 0).buffer(1, 64)), 0.4),
    "disc": (Point(0, 0).buffer(1, 64), 2.0),
    "square": (box(0, 0, 2, 2), 2.0),
    "small piece apart": (joined(box(0, 0, 2, 2), box(5, 0, 5.5, 0.5)), 0.5),
}


@pytest.mark.parametrize("name", NECKS)
def test_known_necks(name):
    cloth, width = NECKS[name]
    assert neck(cloth).width == pytest.approx(width, abs=1.5e-3)


@pytest.mark.parametrize("name", NECKS)
def test_the_same_widths_of_ground_are_slits(name):
    """The shape cut out of a large piece of cloth: what was a neck is a slit."""
    shape, width = NECKS[name]
    cloth = box(-9, -9, 9, 9).difference(shape)
    assert slit(cloth, 3.0).width == pytest.approx(width, abs=1.5e-3)


def test_the_place_is_named():
    assert neck(bar(0.3)).y == pytest.approx(0)
    assert abs(neck(bar(0.3)).x) < 1
    found = neck(HOURGLASS)
    assert (found.x, found.y) == pytest.approx((0, 0))


@pytest.mark.parametrize("sides", [3, 4, 5, 6, 8])
def test_a_regular_polygon_is_as_narrow_as_its_inscribed_circle(sides):
    wide = 2 * 2.0 * math.cos(math.pi / sides)
    assert neck(regular(sides)).width == pytest.approx(wide, abs=1e-3)


@pytest.mark.parametrize("angle", [10, 20, 40, 80])
def test_a_tip_is_no_neck(angle):
    """A spike that tapers evenly from a square: no place on it is narrower than the rest."""
    half = math.tan(math.radians(angle / 2))
    spike = Polygon([(0.9, -half * 1.6), (2.5, 0), (0.9, half * 1.6)])
    cloth = joined(box(-1, -1, 1, 1), spike.intersection(box(0, -1, 9, 1)))
    assert neck(cloth).width > 1.9


def test_a_notch_is_no_slit():
    cloth = box(-2, -2, 2, 2).difference(Polygon([(0, 0), (2.1, -0.4), (2.1, 0.4)]))
    assert slit(cloth) is None


@settings(max_examples=30)
@given(
    st.floats(0.12, 0.8),
    st.floats(0, 360),
    st.booleans(),
    st.sampled_from([bar, lambda w: scale(HOURGLASS, 1, w / 0.3)]),
)
def test_turned_and_mirrored_necks(width, turn, flip, make):
    cloth = make(width)
    turned = rotate(scale(cloth, 1, -1 if flip else 1), turn, origin=(0.3, 0.7))
    assert neck(cloth).width == pytest.approx(width, rel=1e-6)
    assert neck(turned).width == pytest.approx(width, rel=1e-6)


def test_every_narrow_place_below_what_is_needed():
    cloth = joined(
        *(translate(bar(w), 0, 3 * k) for k, w in enumerate((0.1, 0.2, 0.3))), box(-3, -1, -2.9, 7)
    )
    found = narrow_places(Search.of(cloth), 0.25)
    bars = [n for n in found if abs(n.x) < 1]
    assert [round(n.width, 6) for n in bars] == [0.1, 0.2]
    assert [round(n.y) for n in bars] == [0, 3]


def test_nothing_narrower_than_asked():
    assert narrowest(Search.of(MultiPolygon([box(0, 0, 2, 2)])), 1.0) is None


@pytest.mark.parametrize(
    ("sides", "tips"), [(3, 3), (4, 0), (5, 0), (8, 0), (64, 0)]
)  # a right angle is no tip
def test_tips_of_regular_polygons(sides, tips):
    found, insides = corners(polygons(regular(sides)))
    assert (len(found), len(insides)) == (tips, 0)
    if found:
        assert found[0].angle == pytest.approx(180 - 360 / sides)


@pytest.mark.parametrize(("points", "ratio"), [(5, 0.4), (8, 0.5), (12, 0.7)])
def test_tips_and_inside_corners_of_stars(points, ratio):
    """Angles by the law of cosines in the triangle of a tip and its two neighbours."""
    radii = [3.0, 3.0 * ratio] * points
    turns = [math.pi * k / points for k in range(2 * points)]
    star = Polygon([(r * math.cos(t), r * math.sin(t)) for r, t in zip(radii, turns, strict=True)])
    found, insides = corners(polygons(star))
    side = math.sqrt(9 + 9 * ratio**2 - 18 * ratio * math.cos(math.pi / points))
    tip = 2 * math.degrees(math.asin(3 * ratio * math.sin(math.pi / points) / side))
    inside = tip + 360 / points
    assert len(found) == points * (tip < 90)
    assert len(insides) == points * (inside <= 135)
    assert not found or found[0].angle == pytest.approx(tip)
    assert not insides or insides[0].angle == pytest.approx(inside)


@pytest.mark.parametrize("pieces", [8, 16, 64, 512])
def test_flattening_makes_no_corners(pieces):
    """A disc of 1 in and a round hole in it, however coarsely they are flattened."""
    disc = Point(0, 0).buffer(1, pieces).difference(Point(0, 0).buffer(0.4, pieces))
    assert corners(polygons(disc)) == ((), ())


@pytest.mark.parametrize("pieces", [1, 4, 32])
def test_a_corner_rounded_less_than_the_window_is_still_one_corner(pieces):
    tip = Polygon([(0, 0), (3, -1), (3, 1)]).buffer(-0.02).buffer(0.02, quad_segs=pieces)
    found, _ = corners(polygons(tip))
    assert len([t for t in found if t.x < 1]) == 1


def test_corners_of_holes_are_seen_from_the_cloth():
    """A triangular hole in a square: its corners are ground, and clipped."""
    cloth = box(-5, -5, 5, 5).difference(regular(3))
    tips, insides = corners(polygons(cloth))
    assert len(tips) == 0 and len(insides) == 3
    assert insides[0].angle == pytest.approx(60)


@given(st.floats(0, 360), st.booleans())
def test_turning_changes_no_corner(turn, flip):
    cloth = polygons(unary_union([ARMS[0], ARMS[2], ARMS[4], regular(3, 1.2)]))
    other = polygons(rotate(scale(cloth, 1, -1 if flip else 1), turn, origin=(1, 2)))
    for one, two in zip(corners(cloth), corners(other), strict=True):
        assert np.allclose([c.angle for c in one], [c.angle for c in two], rtol=1e-6)
