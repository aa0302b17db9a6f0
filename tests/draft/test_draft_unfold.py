"""Opening a wedge: areas, holes and edges, for every number of folds."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Polygon

from publish.draft.fill import polygons
from publish.draft.unfold import contact, fold_edges, half_span, images, ray, sector, unfold

FOLDS = (4, 6, 8, 12, 16)


def polar(reach, share, folds):
    turn = math.radians(360 / folds * share)
    return reach * math.cos(turn), reach * math.sin(turn)


@st.composite
def wedges(draw):
    """A star-shaped piece of cloth from fold to fold, with or without an open centre."""
    folds = draw(st.sampled_from(FOLDS))
    shares = [0.0, *sorted(draw(st.sets(st.floats(0.05, 0.95), min_size=1, max_size=6))), 1.0]
    outer = [polar(draw(st.floats(3, 9)), s, folds) for s in shares]
    inner = [polar(draw(st.floats(0.5, 2)), s, folds) for s in (0.0, 1.0)]
    middle = [(0.0, 0.0)] if draw(st.booleans()) else [inner[1], inner[0]]
    return folds, Polygon([*outer, *middle])


def test_no_speck_comes_off_a_tip():
    """A tip on a fold whose image, laid on a grid, once left a piece of 1e-14 square inches."""
    shape = [polar(5.676, 0, 6), polar(3, 0.5, 6), polar(3, 0.75, 6), polar(3, 1, 6), (0.0, 0.0)]
    for reach in np.linspace(5.4, 6.0, 100):
        whole = unfold(Polygon([(reach, 0), *shape[1:]]), 6, "mirror")
        assert len(whole.geoms) == 1


@given(wedges(), st.sampled_from(["mirror", "turning"]))
def test_the_whole_is_folds_times_the_wedge(made, symmetry):
    folds, wedge = made
    whole = unfold(wedge, folds, symmetry)
    assert whole.is_valid
    assert whole.area == pytest.approx(folds * wedge.area, rel=1e-6)
    back = polygons(whole.intersection(sector(folds, 20)))
    assert back.symmetric_difference(wedge).area < 1e-5


@given(wedges())
def test_no_hairlines_at_mirrored_folds(made):
    folds, wedge = made
    whole = unfold(wedge, folds, "mirror")
    open_centre = wedge.distance(shapely.Point(0, 0)) > 0
    assert len(whole.geoms) == 1
    assert len(whole.geoms[0].interiors) == int(open_centre)


@given(wedges())
def test_mirrored_motifs_have_their_mirror_lines(made):
    folds, wedge = made
    whole = unfold(wedge, folds, "mirror")
    for i in range(folds):
        across = ray(360 / folds * i + 90)
        mirrored = shapely.transform(whole, lambda p, a=across: p - 2 * (p @ a)[:, None] * a)
        assert mirrored.symmetric_difference(whole).area < 1e-4


@pytest.mark.parametrize("folds", FOLDS)
@pytest.mark.parametrize("symmetry", ["mirror", "turning"])
def test_images_are_turns_and_reflections(folds, symmetry):
    for i, m in enumerate(images(folds, symmetry)):
        assert np.allclose(m @ m.T, np.eye(2), atol=1e-15)
        flipped = symmetry == "mirror" and i % 2 == 1
        assert np.linalg.det(m) == pytest.approx(-1 if flipped else 1)
        middle = m @ ray(180 / folds)
        turn = math.degrees(math.atan2(middle[1], middle[0])) % 360
        assert turn == pytest.approx((i + 0.5) * 360 / folds)


@given(wedges(), st.sampled_from(["mirror", "turning"]))
def test_half_span_is_that_of_the_opened_motif(made, symmetry):
    folds, wedge = made
    left, top, right, bottom = unfold(wedge, folds, symmetry).bounds
    most = max(-left, -top, right, bottom)
    assert half_span(wedge, folds, symmetry) == pytest.approx(most, abs=1e-6)


def test_ray_is_exact_where_it_can_be():
    assert ray(0).tolist() == [1, 0] and ray(90).tolist() == [0, 1]
    assert ray(60)[0] == 0.5 and ray(150)[1] == 0.5


def test_contact_is_merged_and_leaves_out_points():
    comb = Polygon(
        [
            (1, 0),
            (2, 0),
            (2, 0.5),
            (3, 0),
            (4, 0.5),
            (5, 0),
            (6, 0),
            (6, 0.001),
            (6.5, 0),
            (7, 0),
            (7, 2),
            (1, 2),
        ]
    )
    found = contact(comb, 0.0, 0.005)
    assert [tuple(round(v, 9) for v in span) for span in found] == [(1, 2), (5, 7)]
    assert contact(comb, 45.0, 0.005) == ()


@pytest.mark.parametrize(
    ("folds", "grain"),
    [(4, "straight"), (6, "off grain"), (8, "bias"), (12, "off grain"), (16, "off grain")],
)
def test_the_last_fold_and_its_grain(folds, grain):
    """Common practice, no source: folding in half, quarters and diagonally."""
    wedge = Polygon([(0, 0), polar(5, 0, folds), polar(5, 1, folds)])
    first, last = fold_edges(wedge, folds, 0.005)
    assert (first.kind, first.angle, first.grain) == ("multiple", 0.0, "straight")
    assert (last.kind, last.angle, last.grain) == ("single", 360 / folds, grain)
    assert first.contact[0] == pytest.approx((0, 5)) == last.contact[0]


def test_a_grid_that_cannot_close_a_hole_is_not_the_last_try(monkeypatch):
    """Very thin holes defeat one grid; the next rounds them otherwise, and no area is lost."""
    wedge = Polygon([(0, 0), (5, 0), polar(5, 1.0, 6)])
    first, real = [], shapely.union_all

    def stubborn(parts, grid_size=None):
        if not first:
            first.append(grid_size)
            raise shapely.errors.GEOSException("unable to assign free hole to a shell")
        return real(parts, grid_size=grid_size)

    monkeypatch.setattr(shapely, "union_all", stubborn)
    whole = unfold(wedge, 6, "mirror")
    assert first and whole.area == pytest.approx(6 * wedge.area, rel=1e-6)
    assert len(whole.geoms) == 1 and not whole.geoms[0].interiors
