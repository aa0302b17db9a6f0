"""Outlines that are sharp all round: searched on one repeat. A star of n points has 2 n
corners.
"""

import numpy as np
import pytest
import shapely
from shapely.geometry import MultiPolygon, Polygon

from publish.draft.narrow import Search, narrowest
from publish.draft.offset import corners, stepped
from publish.draft.repeat import Repeat


def star(points, outer=6.0, inner=5.6):
    angle = np.arange(2 * points) * np.pi / points
    reach = np.where(np.arange(2 * points) % 2, inner, outer)
    return Polygon(np.column_stack([reach * np.cos(angle), reach * np.sin(angle)]))


def test_sharp_corners_are_counted():
    assert corners(star(480)) == pytest.approx(960, abs=2)  # the ring's ends are not looked at
    assert corners(star(40)) == 0  # too few to be worth the count
    assert corners(shapely.Point(0, 0).buffer(5, quad_segs=100)) == 0


@pytest.mark.parametrize("distance", [0.02, 0.2, -0.02, -0.2])
def test_steps_come_to_the_whole_distance(distance):
    """A point is in a grown shape when the shape is no farther away than it was grown."""
    whole = star(480)
    found = stepped(whole, distance)
    edge = shapely.points(shapely.get_coordinates(shapely.segmentize(found.exterior, 0.05)))
    gaps = shapely.distance(edge, whole.exterior)
    # Eight pieces to a quarter turn: an arc is flat by 1 - cos(pi / 32), half a percent, in
    # each step, and each step leaves points out that lie within 1/4000 in.
    assert gaps.max() <= abs(distance) + 1e-3
    assert gaps.min() >= 0.995 * abs(distance) - 1e-3


def test_the_narrowest_place_of_a_toothed_ring_is_its_band():
    """A ring 0.5 in wide under its teeth: the opening of radius 5.1 is all but a circle."""
    whole = star(480).difference(shapely.Point(0, 0).buffer(5.1, quad_segs=200))
    search = Search.of(MultiPolygon([whole]), Repeat(16, "mirror", 7.0))
    found = narrowest(search, 1.0)
    assert found is not None
    assert found.width == pytest.approx(0.5, rel=0.01)
