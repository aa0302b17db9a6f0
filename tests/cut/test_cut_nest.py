"""Nesting: published instances, and layouts that are looked at again.

Instances: `fu` (Fujita and others, 1993) and `marques` (Marques and others, 1991), sets of
the EURO working group on cutting and packing, as kept with their record layouts by the
sparrow project (MIT; Gardeyn and others, 2025, arXiv:2509.13329), whose strip lengths are
the best known.
"""

from __future__ import annotations

import json
import subprocess
from fractions import Fraction
from itertools import pairwise

import pytest
from helpers import ROOT
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import MultiPolygon, Polygon, box

from publish.cut import nest as nesting
from publish.cut.nest import Nest, Shape, Spot, faults, in_rows, nest
from publish.model.pieces import Placed, Strip
from publish.units import EIGHTH, round_up

F = Fraction
FACTOR = 1.06
"""How far above the best known length a layout may be: it is found in seconds, the records
in many minutes."""
DATA = ROOT / "tests/data/packing"


def instance(name):
    found = json.loads((DATA / f"{name}.json").read_text(encoding="utf-8"))
    shapes = [
        Shape(str(i), Polygon(item["polygon"]), item["n"], tuple(item["orientations_deg"]))
        for i, item in enumerate(found["items"])
    ]
    return shapes, F(str(found["strip_height"])), found["best_known_length"]


def within_the_factor(name, buys):
    shapes, width, best = instance(name)
    made = nest(shapes, width, buys(F(best * FACTOR)))
    assert faults(shapes, made) == []
    assert best * 0.999 <= made.length <= best * FACTOR
    assert made.length < in_rows(shapes, width).length


def test_a_published_instance_within_a_factor_of_the_best_known():
    """Searched only until it is; the thorough run searches two of them to the end."""
    within_the_factor("marques", lambda enough: lambda length: max(length, enough))


@pytest.mark.thorough
@pytest.mark.parametrize("name", ["fu", "marques"])
def test_published_instances_within_a_factor_of_the_best_known(name):
    within_the_factor(name, lambda _: round_up)


def test_the_same_layouts_come_every_time_and_no_solver_is_left_running(monkeypatch):
    started = []

    class Kept(subprocess.Popen):
        def __init__(self, *values, **named):
            super().__init__(*values, **named)
            started.append(self)

    monkeypatch.setattr(subprocess, "Popen", Kept)
    shapes, width, _ = instance("fu")
    runs = []
    for _ in range(2):
        nesting._run.cache_clear()
        found = nesting._layouts(tuple(shapes), width, 0, EIGHTH)
        runs.append([next(found) for _ in range(40)])
        found.close()
        runs.append([next(nesting._layouts(tuple(shapes), width, 0, EIGHTH))])
    assert runs[0] == runs[2] and runs[1] == runs[3] == runs[0][:1]
    assert all(a.length >= b.length for a, b in pairwise(runs[0]))
    assert started and all(process.poll() is not None for process in started)


def test_a_second_reader_goes_on_where_the_first_stopped():
    """What the first did not read, the solver finds again."""
    shapes, width, _ = instance("fu")
    nesting._run.cache_clear()
    first = nesting._layouts(tuple(shapes), width, 0, EIGHTH)
    few = [next(first) for _ in range(5)]
    first.close()
    second = nesting._layouts(tuple(shapes), width, 0, EIGHTH)
    more = [next(second) for _ in range(9)]
    second.close()
    assert more[:5] == few
    assert len({nest.length for nest in more}) > 1 or more[0] != more[8]


L = Polygon([(0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6)])


def test_two_corners_interlock():
    """Two L shapes turned to each other: 8 in of cloth 6 in wide; 12 in as boxes."""
    shapes = [Shape("A", L, 2, (0, 90, 180, 270))]
    assert in_rows(shapes, F("6.01")).length >= 12
    made = nest(shapes, F("6.01"))
    assert faults(shapes, made) == []
    assert made.length <= F("8.25")


def test_a_print_with_direction_keeps_every_shape_upright():
    """Two L shapes, one in the other's corner: 8 in wide and long; in rows 12 in long."""
    made = nest([Shape("A", L, 2)], F(9), lambda length: max(length, F(9)))
    assert {spot.turn % 360 for spot in made.spots} == {0.0}
    assert made.length <= 9


def test_a_shape_that_is_too_wide_has_no_layout():
    assert nest([Shape("A", box(0, 0, 10, 3), 1)], F(9)) is None
    assert nest([Shape("A", box(0, 0, 10, 3), 1, (0, 90))], F(9)).length == F(["10", "1/8"][0]) + F(
        1, 8
    )


def layout(*spots, width=10, length=10):
    return Nest(F(width), F(length), tuple(Spot("A", 0, *at) for at in spots))


SQUARE = Shape("A", box(0, 0, 4, 4), 2)


@pytest.mark.parametrize(
    ("made", "words"),
    [
        (layout((0, 0), (3.9, 0)), "overlaps"),
        (layout((0, 0), (6.1, 0)), "outside"),
        (layout((0, 0), (0, 6.1)), "outside"),
        (layout((-0.1, 0), (5, 5)), "outside"),
        (layout((0, 0)), "missing"),
        (layout((0, 0), (5, 0), (0, 5)), "too many"),
        (layout((0, 0), (0, 0)), "overlaps"),
    ],
)
def test_every_fault_is_found(made, words):
    assert any(words in fault for fault in faults([SQUARE], made))


def test_touching_is_no_overlap():
    assert faults([SQUARE], layout((0, 0), (4, 0))) == []


def test_a_hole_does_not_count():
    """What lies in a hole of another shape is an overlap: cloth is cut round the outside."""
    ring = Shape("R", Polygon(box(0, 0, 9, 9).exterior, [box(2, 2, 7, 7).exterior]), 1)
    inner = Shape("A", box(0, 0, 2, 2), 1)
    made = Nest(F(10), F(10), (Spot("R", 0, 0, 0), Spot("A", 0, 3, 3)))
    assert any("overlaps" in fault for fault in faults([ring, inner], made))


SIDES = st.integers(4, 60).map(lambda n: n / 4)


@settings(max_examples=40, deadline=None)
@given(st.lists(st.tuples(SIDES, SIDES, st.integers(1, 5)), min_size=1, max_size=4))
def test_rows_hold_every_box(sizes):
    shapes = [Shape(str(i), box(0, 0, w, h), n, (0, 90)) for i, (w, h, n) in enumerate(sizes)]
    made = in_rows(shapes, F(16))
    assert faults(shapes, made) == []
    assert made.length >= sum(w * h * n for w, h, n in sizes) / 16


def test_a_coarser_outline_holds_the_fine_one():
    round_ = Polygon([(0, 0), (9, 1), (10, 8), (3, 9)]).buffer(1, quad_segs=60)
    simple = nesting._simple(round_)
    assert len(simple.exterior.coords) < len(round_.exterior.coords) / 2
    assert simple.contains(round_)
    assert simple.hausdorff_distance(round_) < 3 * nesting.TOLERANCE


def test_what_is_bought_decides():
    """Shapes are nested only as far as less is bought for it."""
    shapes, width = [Shape("A", L, 2, (0, 90, 180, 270))], F("6.01")
    by_the_yard = nest(shapes, width, lambda length: round_up(length, F(36)))
    by_the_eighth = nest(shapes, width, lambda length: round_up(length, F(9, 2)))
    assert by_the_yard == in_rows(shapes, width)
    assert by_the_eighth.length <= 9 < by_the_yard.length


@pytest.mark.parametrize(
    ("step", "told"),
    [(F(1, 8), F(81, 8)), (F(5, 127), F(255 * 5, 127))],
)
def test_what_nested_shapes_take_is_told_on_the_grid_of_the_pattern(step, told):
    """10.03 in is 254.762 mm: 10 1/8 in on a ruler in eighths, 255 mm on one in millimetres."""
    laid = Placed("A", MultiPolygon([box(0, 0, 10.03, 4)]), 0)
    assert Strip(F(4), (), placements=(laid,), step=step).used == told
