"""Drawings refined until, blurred, they look like the picture: against shapes that are known.

Shapes are drawn at eight times the size and blurred as a lens blurs, so that the truth is
the shape itself. Distances are in pixels.
"""

import math

import cv2
import numpy as np
import pytest
import shapely
from shapely.geometry import Point, Polygon

from publish.draft.fill import polygons
from publish.draft.unfold import sector, unfold
from publish.trace.consensus import MARGIN, Wedge
from publish.trace.cubics import flat
from publish.trace.drawn import Drawn, drawn
from publish.trace.missed import missed
from publish.trace.outline import outlined
from publish.trace.refined import refined
from publish.trace.straighten import Pose

FOLDS, UNIT, SPREAD, FINE = 8, 320.0, 1.7, 8
ANGLE = 2 * math.pi / FOLDS
WAY = np.array([math.cos(ANGLE), math.sin(ANGLE)])


def seen(shape: shapely.Geometry) -> Wedge:
    """Return the wedge of a shape, unfolded on eight folds, as a lens shows it."""
    whole = unfold(polygons(shape.intersection(sector(FOLDS, 3))), FOLDS, "mirror")
    columns, rows = (round(v * UNIT) + 2 * MARGIN for v in (1.06, 0.75))
    mask = np.zeros((rows * FINE, columns * FINE), np.uint8)
    for part in whole.geoms:
        rings = [
            np.round(((shapely.get_coordinates(r) * UNIT + MARGIN + 0.5) * FINE - 0.5) * 16)
            for r in (part.exterior, *part.interiors)
        ]
        cv2.fillPoly(mask, [r.astype(np.int32) for r in rings], 255, shift=4)
    small = cv2.resize(mask, (columns, rows), interpolation=cv2.INTER_AREA)
    field = cv2.GaussianBlur(small.astype(np.float32) / 255, (0, 0), SPREAD)
    return Wedge(field, UNIT, np.array([-MARGIN, -MARGIN]) / UNIT, ANGLE)


def both(shape: shapely.Geometry) -> tuple[Drawn, Drawn]:
    """Return a shape's drawing before and after."""
    wedge = seen(shape)
    made = drawn(outlined(wedge), wedge, SPREAD)
    return made, refined(made, wedge, SPREAD)


def farthest(made: Drawn, shape: shapely.Geometry) -> float:
    """Return how far in pixels a drawing's outline and the true one are apart at most."""
    truth = polygons(shape.intersection(sector(FOLDS, 3)))
    got = [
        Polygon(flat(list(p[0].curves)), [flat(list(h.curves)) for h in p[1:]]) for p in made.parts
    ]
    one, two = shapely.union_all(got).boundary, truth.boundary
    return UNIT * float(shapely.hausdorff_distance(one, two, densify=0.02))


DISC = Point(0, 0).buffer(0.9, quad_segs=64)
ACROSS = np.array([-WAY[1], WAY[0]])
SHAPES = {
    "a kite of 8 by 26 pixels on a fold": DISC.difference(
        Polygon([(0.5, 0), (0.56, 0.0125), (0.582, 0), (0.56, -0.0125)])
    ),
    "a point of 16 degrees on a fold": DISC.difference(
        Polygon([(0.4, 0), (0.75, 0.05), (0.75, -0.05)])
    ),
    "a notch of 3 pixels": DISC.difference(
        Polygon([WAY * 0.91, WAY * 0.885, WAY * 0.91 - ACROSS * 0.02])
    ),
}


@pytest.mark.parametrize("name", SHAPES)
def test_what_a_lens_rounds_away_is_drawn_where_it_is(name: str) -> None:
    before, after = both(SHAPES[name])
    assert farthest(after, SHAPES[name]) < min(0.75, 0.6 * farthest(before, SHAPES[name]))
    assert after.nodes == before.nodes


@pytest.mark.parametrize("lean", [0, 15, 30])
@pytest.mark.parametrize("radius", [0.1, 0.2])
def test_an_arc_meets_its_fold_at_its_own_angle(lean: int, radius: float) -> None:
    """A circle whose middle lies off the fold by r sin(lean) meets it `lean` off square."""
    centre = (0.5, radius * math.sin(math.radians(lean)))
    made = both(DISC.difference(Point(centre).buffer(radius, quad_segs=64)))[1]
    off = [abs(m.off) for m in made.meetings if m.fold == 0 and m.reach < 0.8]
    assert off == pytest.approx([lean, lean], abs=3)
    rim = [m.off for m in made.meetings if m.reach > 0.8]
    assert rim == pytest.approx([0, 0], abs=0.5)


def test_what_is_not_drawn_is_found_in_the_picture() -> None:
    made = both(DISC)[1]
    pose = Pose(np.array([[200.0, 0, 250], [0, 200, 250], [0, 0, 1]]), FOLDS // 2, 0.0)
    share = np.zeros((500, 500), np.float32)
    cv2.circle(share, (250, 250), 180, 1.0, -1)
    assert missed(share, made, pose, 6) == []
    cv2.circle(share, (330, 270), 9, 0.0, -1)
    places = missed(share, made, pose, 6)
    assert len(places) == 1
    assert places[0] == pytest.approx([330, 270], abs=2)
