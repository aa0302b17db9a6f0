"""Folding is what paper does: the layers are the one square, moved and never stretched."""

import math
import re

import numpy as np
import pytest
from shapely.affinity import affine_transform
from shapely.geometry import Point, box
from shapely.ops import unary_union
from sheet_samples import context_for, leaf_wedge, motif_shape

from publish.draw.context import CannotDrawError
from publish.draw.motifs.folding import fold, shows_right
from publish.draw.motifs.folding_steps import crease_line, folded, folding_of, reflection
from publish.model.words import FigureSpec

FOLDS = (4, 6, 8, 12, 16)
EVERY_STAGE = [(n, made) for n in FOLDS for made in range(len(folding_of(n).creases) + 1)]
# Layers of a square folded in half repeatedly double; of a strip folded in three, treble.
LAYERS = {
    4: (1, 2, 4),
    6: (1, 2, 4, 6),
    8: (1, 2, 4, 8),
    12: (1, 2, 4, 6, 12),
    16: (1, 2, 4, 8, 16),
}


@pytest.mark.parametrize(("folds", "made"), EVERY_STAGE)
def test_the_layers_are_the_square_laid_back_flat(folds, made):
    flat = []
    for layer in folded(folding_of(folds), made):
        own = np.array(layer.own).reshape(2, 2)
        assert own @ own.T == pytest.approx(np.eye(2), abs=1e-9)  # turns and reflections only
        assert (np.linalg.det(own) < 0) == layer.flipped
        (a, b), (d, e) = np.linalg.inv(own)
        flat.append(affine_transform(layer.place, [a, b, d, e, 0, 0]))
    assert sum(part.area for part in flat) == pytest.approx(4)
    assert unary_union(flat).symmetric_difference(box(-1, -1, 1, 1)).area < 1e-9


@pytest.mark.parametrize(("folds", "made"), EVERY_STAGE)
def test_layers_near_the_centre_are_counted(folds, made):
    layers = folded(folding_of(folds), made)
    assert len(layers) == LAYERS[folds][made]


@pytest.mark.parametrize("folds", FOLDS)
def test_the_folded_wedge_stands_between_its_two_edges(folds):
    way = folding_of(folds)
    layers = folded(way, len(way.creases))
    assert way.wedge == 360 / folds
    for layer in layers:
        for x, y in layer.place.exterior.coords:
            if math.hypot(x, y) > 1e-6:
                angle = math.degrees(math.atan2(y, x))
                assert -90 - 1e-6 <= angle <= -90 + way.wedge + 1e-6
    # Every layer runs from one folded edge to the other close to the centre.
    inside = math.radians(-90 + way.wedge / 2)
    probe = Point(0.3 * math.cos(inside), 0.3 * math.sin(inside))
    assert sum(layer.place.covers(probe) for layer in layers) == folds


@pytest.mark.parametrize(("folds", "made"), EVERY_STAGE)
def test_neighbouring_layers_show_the_sides_that_folding_gives(folds, made):
    layers = folded(folding_of(folds), made)
    assert shows_right(layers[-1]) is (made > 0)  # wrong side up at first, right side out after
    if made:
        assert not layers[0].flipped
        assert sum(layer.flipped for layer in layers) * 2 == len(layers)


@pytest.mark.parametrize("folds", FOLDS)
def test_the_last_fold_makes_the_single_edge(folds):
    """The single fold is a new bend through the cloth, not an edge that it had before."""
    way = folding_of(folds)
    before = folded(way, len(way.creases) - 1)
    line = crease_line(before, way.creases[-1])
    outline = unary_union([layer.place for layer in before]).boundary
    for share in (0.3, 0.7):
        here = line.interpolate(share, normalized=True)
        assert here.hausdorff_distance(Point(0, 0)) < 0.01 or outline.distance(here) > 0.02


@pytest.mark.parametrize("angle", [0, -45, -67.5, 30])
def test_a_reflection_keeps_its_line_and_swaps_its_sides(angle):
    a, b, d, e = reflection(angle)
    c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    assert (a * c + b * s, d * c + e * s) == pytest.approx((c, s))
    assert (a * -s + b * c, d * -s + e * c) == pytest.approx((s, -c))


def figure(folds, stage):
    shape = motif_shape(leaf_wedge(folds=folds), folds)
    spec = FigureSpec("f", "fold", "throw", (("stage", stage), ("motif", "samphire")))
    return fold(context_for(shape), spec)


def said(svg):
    return re.findall(r">([^<>]+)</text>", svg)


@pytest.mark.parametrize("folds", FOLDS)
def test_the_last_stage_names_every_edge_and_the_centre(folds):
    last = len(folding_of(folds).creases)
    names = {"single fold", "multiple folds", "open edges", "centre"}
    assert names <= set(said(figure(folds, str(last)).svg))
    for stage in range(last):
        assert not names & set(said(figure(folds, str(stage)).svg))


@pytest.mark.parametrize("folds", FOLDS)
def test_every_stage_is_told_apart_in_words(folds):
    stages = [figure(folds, str(made)) for made in range(len(folding_of(folds).creases) + 1)]
    assert len({f.alt for f in stages}) == len({f.svg for f in stages}) == len(stages)
    assert "wrong side" in said(stages[0].svg)
    assert f"{folds} layers" in stages[-1].alt


def test_stages_have_names_as_well_as_numbers():
    assert figure(8, "flat") == figure(8, "0")
    assert figure(8, "eighth") == figure(8, "3") == figure(8, "9")
    with pytest.raises(CannotDrawError, match="crumpled"):
        figure(8, "crumpled")


def test_folding_figures_are_the_same_in_every_run():
    assert figure(16, "2") == figure(16, "2")
