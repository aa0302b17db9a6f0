"""The wedge at work: cuts in order, basting inside the edges, words inside the figure."""

import re
from dataclasses import replace
from fractions import Fraction

import pytest
from shapely.geometry import MultiLineString, Point, Polygon
from shapely.ops import unary_union
from sheet_print import printed, text_boxes, words_on
from sheet_samples import context_for, leaf_wedge, motif_shape, samphire_wedge

from publish.draw.context import CannotDrawError
from publish.draw.motifs.cuts import cut_order
from publish.draw.motifs.folding import fold
from publish.draw.motifs.place import place_motif, unfold
from publish.draw.motifs.stitch import DETAILS, stitch
from publish.draw.motifs.work import wedge_align, wedge_baste, wedge_cut, wedge_mark
from publish.draw.sheets.template import template_of
from publish.model.basting import FROM_EDGE, IN_WEDGE, on_ground, on_wedge
from publish.model.words import FigureSpec

THROW = Fraction(31, 2)
SAMPHIRE = motif_shape(samphire_wedge(THROW), 8, THROW)
LEAVES = {n: motif_shape(leaf_wedge(THROW, n), n, THROW) for n in (4, 6, 8, 12, 16)}
KINDS = {
    "fold": fold,
    "wedge-baste": wedge_baste,
    "wedge-align": wedge_align,
    "wedge-mark": wedge_mark,
    "wedge-cut": wedge_cut,
    "unfold": unfold,
    "place-motif": place_motif,
}


def drawn(kind, shape, **values):
    spec = FigureSpec(kind, kind, "throw", tuple(values.items()))
    return KINDS.get(kind, stitch)(context_for(shape), spec)


def test_the_demo_motif_is_cut_round_the_outside_first_and_at_the_centre_last():
    outer, centre = cut_order(template_of(SAMPHIRE))
    assert (outer.kind, centre.kind) == ("outer", "centre")
    alt = drawn("wedge-cut", SAMPHIRE).alt
    first = "cut the outer edge starting at the multiple folds and ending at the single fold"
    assert f"1 {first}" in alt
    assert "2 cut the centre opening last" in alt


@pytest.mark.parametrize("shape", [SAMPHIRE, *LEAVES.values()], ids=lambda s: f"{s.folds}")
def test_every_cut_is_made_once_from_fold_to_fold_and_never_along_one(shape):
    template = template_of(shape)
    runs = cut_order(template)
    assert sum(run.line.length for run in runs) == pytest.approx(template.cut.length)
    multiple, single = template.folds
    for run in runs:
        assert Point(run.line.coords[0]).distance(multiple.line) < 0.02
        assert Point(run.line.coords[-1]).distance(single.line) < 0.02
        for held in template.folds:
            assert run.line.intersection(held.line.buffer(1e-3)).length < 0.02


def test_openings_come_before_notches_before_the_outer_edge():
    hole = [(3, 0.6), (4, 0.6), (4, 1.5), (3, 1.5)]
    notch = [(1, 0), (5, 0), (5.2, 0.4), (5.6, 0.4), (5.8, 0), (7, 0), (7, 7), (1, 1)]
    template = template_of(motif_shape(Polygon(notch, [hole]), 8, Fraction(14)))
    assert [run.kind for run in cut_order(template)] == ["opening", "notch", "outer", "centre"]


def test_a_closed_centre_is_not_cut_open():
    solid = Polygon([(0, 0), (7, 0), (5, 2), (7, 7)])
    template = template_of(motif_shape(solid, 8, Fraction(14)))
    assert [run.kind for run in cut_order(template)] == ["outer"]


@pytest.mark.parametrize("shape", [SAMPHIRE, *LEAVES.values()], ids=lambda s: f"{s.folds}")
def test_basting_runs_on_the_folds_and_stops_short_of_the_raw_edge(shape):
    rows = on_ground(shape)
    assert len(rows.geoms) >= shape.folds
    assert shape.whole.buffer(1e-6).covers(rows)
    rays = unary_union([fold.line for fold in template_of(shape).folds])
    assert rays.length > 0
    for row in rows.geoms:
        x, y = row.coords[-1]
        assert Point(x, y).distance(shape.whole.boundary) > 0.05
    assert FROM_EDGE == 0.5


@pytest.mark.parametrize("shape", [SAMPHIRE, *LEAVES.values()], ids=lambda s: f"{s.folds}")
def test_basting_of_a_wedge_holds_every_arm_and_the_waste(shape):
    """Cut out, the wedge is still held: no part of it wider than two rows is without one."""
    template = template_of(shape)
    first, second = template.folds
    cloth = Polygon([(0, 0), *(f.at(20) for f in (first, second))])
    found = on_wedge(template.body, template.cut_body, cloth, (first.angle, second.angle))
    beside = found.beside
    assert template.body.buffer(-IN_WEDGE + 1e-6).covers(beside)
    assert found.middle.difference(template.body.buffer(1e-6)).is_empty
    assert found.waste.geoms and not found.waste.intersects(template.cut_body)
    rows = unary_union(found.rows)
    for arm in getattr(template.body, "geoms", [template.body]):
        assert arm.intersects(rows)


def test_basting_of_a_motif_without_folds_lies_inside_it():
    shape = replace(SAMPHIRE, edges=None)
    rows = on_ground(shape)
    assert isinstance(rows, MultiLineString)
    assert rows.length > 0
    assert shape.cut_line.buffer(-0.1).covers(rows)


@pytest.mark.parametrize("kind", list(KINDS))
@pytest.mark.parametrize("shape", [SAMPHIRE, LEAVES[6], LEAVES[16]], ids=["8", "6", "16"])
def test_all_words_lie_inside_the_figure_and_none_on_another(kind, shape):
    stage = {"stage": "9"} if kind == "fold" else {}
    figure = drawn(kind, shape, motif="samphire", **stage)
    assert_readable(figure)


@pytest.mark.parametrize("detail", list(DETAILS))
def test_close_ups_are_readable_and_described(detail):
    figure = drawn("stitch", SAMPHIRE, detail=detail)
    assert_readable(figure)
    assert len(figure.alt) > 80


def assert_readable(figure):
    document = printed(figure.svg, figure.width, figure.height)
    assert len(document) == 1
    for left, top, right, bottom, text in words_on(document):
        assert left > 0 and top > 0, text
        assert right < figure.width * 72 and bottom < figure.height * 72, text
    boxes = text_boxes(figure.svg)
    assert boxes
    for index, (place, text) in enumerate(boxes):
        for other, words in boxes[index + 1 :]:
            assert not place.intersects(other), (text, words)


def test_close_ups_give_the_pattern_s_own_turn_under():
    said = re.findall(r">([^<>]+)</text>", drawn("stitch", SAMPHIRE, detail="edge").svg)
    assert {"⅛ in", "stitches about ¹⁄₁₆ in apart", "raw edge", "finished line"} <= set(said)


def test_what_is_not_there_is_refused():
    flat = replace(SAMPHIRE, edges=None)
    for kind in ("wedge-baste", "wedge-align", "wedge-mark", "wedge-cut", "unfold"):
        with pytest.raises(CannotDrawError):
            drawn(kind, flat)
    with pytest.raises(CannotDrawError, match="knot"):
        drawn("stitch", SAMPHIRE, detail="knot")
    with pytest.raises(CannotDrawError, match="sedge"):
        drawn("place-motif", SAMPHIRE, block="sedge")


def test_figures_are_the_same_in_every_run():
    assert drawn("wedge-cut", SAMPHIRE) == drawn("wedge-cut", SAMPHIRE)
    assert drawn("wedge-align", LEAVES[12]) == drawn("wedge-align", LEAVES[12])
