"""Cutting layouts of patchwork: what becomes of each rectangle is drawn where it is cut."""

import math
import re
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from patch_figures import context, drawn
from patch_samples import TEMPLATE
from shapely.affinity import rotate, scale, translate
from shapely.geometry import Polygon
from top_figures import elements, filled, illegible, rings

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.style import CUT
from publish.draw.cutting.bench_cuts import draw_cuts, shape_of
from publish.draw.cutting.bench_table import Bench
from publish.draw.cutting.layout import Laid
from publish.model.cutplan import FabricPlan, Piece
from publish.words.values import Named

F = Fraction
PLAN = FabricPlan("moss", F(40), (), (), F(9), F(9), F(9), F(9), F(9), F(0))


def bench(down: bool = True) -> tuple[Canvas, Bench]:
    canvas = Canvas(6, 6)
    return canvas, Bench(canvas.frame(0, 0, 0.1), down, PLAN, "#2f6152", Labels())


def piece(shape: str, width: Fraction, length: Fraction, yields: int) -> Piece:
    return Piece("A", Named("a"), "ground", "moss", width, length, 1, shape=shape, yields=yields)


def cuts(of: Piece, laid: Laid, down: bool = True) -> list[tuple[tuple[float, float], ...]]:
    """Return the cuts of a piece in inches of the page's cloth, rounded."""
    canvas, held = bench(down)
    draw_cuts(held, laid, of)
    return [
        tuple((round(x / 7.2, 2), round(y / 7.2, 2)) for x, y in rings(e)[0])
        for e in elements(canvas.svg())
        if e.tag == "path"
    ]


LAID = Laid("A", F(2), F(3), F(5), F(5), 0)


def test_a_square_cut_once_has_one_diagonal_and_cut_twice_both() -> None:
    assert cuts(piece("once-cut triangle", F(5), F(5), 2), LAID) == [((3, 2), (8, 7))]
    both = cuts(piece("twice-cut triangle", F(5), F(5), 4), LAID)
    assert both == [((3, 2), (8, 7)), ((8, 2), (3, 7))]


def test_rectangles_and_squares_for_quicker_methods_have_no_cuts() -> None:
    assert cuts(piece("rectangle", F(5), F(5), 1), LAID) == []
    assert cuts(piece("oversize", F(5), F(5), 1), LAID) == []


def test_a_strip_of_diamonds_has_slanting_cuts_as_far_apart_as_cut() -> None:
    """Four 45-degree diamonds from a 2 1/2 in strip: cuts 2 1/2 in apart, square to them."""
    step = 2.5 * math.sqrt(2)
    long = F(4 * step + 2.5).limit_denominator(1000)
    of = replace(piece("diamond", long, F(5, 2), 4), angle=45, apart=F(5, 2))
    found = cuts(of, Laid("A", F(0), F(0), F(5, 2), long, 0))
    assert len(found) == 5
    starts = [min(a[0], b[0]) for a, b in found]
    for one, other in pairwise(starts):
        assert (other - one) / math.sqrt(2) == pytest.approx(2.5, abs=0.02)
    assert all(abs(a[0] - b[0]) == pytest.approx(2.5, abs=0.02) for a, b in found)


L_SHAPE = Polygon([(0, 0), (4, 0), (4, 1), (1, 1), (1, 2), (0, 2)])
"""Unlike its mirror image, however it is turned."""


@pytest.mark.parametrize("down", [True, False])
@pytest.mark.parametrize("turned", [False, True])
def test_a_template_lies_in_its_box_turned_but_never_mirrored(down: bool, turned: bool) -> None:
    template = replace(TEMPLATE, finished=L_SHAPE, cut=L_SHAPE)
    wide, high = (F(2), F(4)) if turned else (F(4), F(2))
    _, held = bench(down)
    shape = shape_of(held, Laid("A", F(1), F(2), high, wide, 0), template)
    box = (2, 1, 2 + wide, 1 + high) if down else (1, 2, 1 + high, 2 + wide)
    assert shape.bounds == pytest.approx(tuple(map(float, box)))
    centred = translate(shape, -shape.centroid.x, -shape.centroid.y)
    own = translate(L_SHAPE, -L_SHAPE.centroid.x, -L_SHAPE.centroid.y)
    turns = [rotate(own, 90 * i, origin=(0, 0)) for i in range(4)]
    assert min(centred.symmetric_difference(t).area for t in turns) < 1e-6
    over = scale(own, -1, 1, origin=(0, 0))
    mirrored = [rotate(over, 90 * i, origin=(0, 0)) for i in range(4)]
    assert min(centred.symmetric_difference(t).area for t in mirrored) > 1


@pytest.mark.parametrize(
    ("name", "size"),
    [("towpath", "throw"), ("towpath", "mini"), ("millrace", "throw"), ("heronry", "mini")],
)
def test_every_layout_of_a_pattern_is_legible(name: str, size: str) -> None:
    for fabric in context(name, size).plans[size].fabrics:
        shown = drawn(name, "cutting-layout", size, fabric=fabric)
        assert illegible(shown.svg) == [], fabric
        assert shown.width <= 6.5


def test_setting_triangles_are_told_and_drawn() -> None:
    shown = drawn("towpath", "cutting-layout", "throw", fabric="sedge")
    assert re.search("[A-Z] of 18 1/4 × 18 1/4 in, cut twice into 4 triangles", shown.alt)
    assert re.search("[A-Z] of 9 3/8 × 9 3/8 in, cut once into 2 triangles", shown.alt)
    dashed = [
        e
        for e in elements(shown.svg)
        if e.tag == "path" and e.values.get("stroke-dasharray") == "4 2"
    ]
    assert len(dashed) == 3 * 2 + 2 * 1  # three squares cut twice, two cut once
    assert CUT.dash == (4.0, 2.0)


def test_templates_cover_their_share_of_the_cloth() -> None:
    held = context("millrace", "throw")
    shown = drawn("millrace", "cutting-layout", "throw", fabric="race")
    (template,) = (t for t in held.plans["throw"].templates if t.fabric == "race")
    shapes = [p for p in filled(shown.svg, held.colour("race")) if len(p.exterior.coords) > 10]
    assert len(shapes) == template.count
    areas = [p.area for p in shapes]
    assert max(areas) == pytest.approx(min(areas), rel=0.02)
