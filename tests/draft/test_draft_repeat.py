"""Work on one repeat of a motif against the same work on the whole motif."""

import math
from functools import cache

import numpy as np
import pytest
import shapely
from shapely.affinity import translate
from shapely.geometry import MultiPolygon, Point, Polygon

from publish.draft.fill import polygons
from publish.draft.motif import draft_motif
from publish.draft.narrow import Search, narrow_places, narrowest
from publish.draft.narrowpart import Part
from publish.draft.offset import DENSE
from publish.draft.repeat import Repeat
from publish.draft.unfold import half_span, unfold
from publish.grade import grade
from publish.read import SMALLEST, load

SPAN = 12.0


@cache
def torn(folds, symmetry, kind, points=300):
    """Return a motif of many points: a leaf to each fold, its edge torn or toothed like a
    comb, and with holes."""
    step, turn = math.tau / folds, np.random.default_rng(folds)
    angles = np.linspace(0, step, max(points, 6 * DENSE // (5 * folds)))
    reach = 60 + 20 * np.cos(3 * math.pi * angles / step)
    if kind == "torn":
        reach += turn.uniform(-0.3, 0.3, len(angles))
    else:
        reach += 9.0 * (np.arange(len(angles)) // 40 % 2)
    rim = np.stack([reach * np.cos(angles), reach * np.sin(angles)], axis=1)
    wedge = Polygon([(0, 0), *rim])
    for share, radius in ((0.3, 3.0), (0.5, 2.0), (0.62, 2.0)):
        middle = step * share
        wedge -= Point(30 * math.cos(middle), 30 * math.sin(middle)).buffer(radius)
    scale = SPAN / 2 / half_span(wedge, folds, symmetry)
    wedge = shapely.transform(wedge, lambda p: p * scale)
    return unfold(polygons(wedge), folds, symmetry)


CASES = [
    (folds, symmetry, kind)
    for folds, symmetry in ((8, "mirror"), (6, "mirror"), (8, "turning"))
    for kind in ("torn", "comb")
]


@pytest.mark.parametrize(("folds", "symmetry", "kind"), CASES)
def test_one_repeat_tells_what_the_whole_does(folds, symmetry, kind):
    cloth = torn(folds, symmetry, kind)
    assert shapely.count_coordinates(cloth) > DENSE
    repeat = Repeat(folds, symmetry, SPAN)
    whole = Search(tuple(Part.of(p) for p in cloth.geoms), repeat)  # looked at whole, told once
    one = Search.of(cloth, repeat)
    assert narrowest(one, SPAN).width == pytest.approx(narrowest(whole, SPAN).width, abs=1e-3)
    every = [n.width for n in narrow_places(whole, 0.3)]
    here = [n.width for n in narrow_places(one, 0.3)]
    assert bool(here) == bool(every)
    for width in here:
        assert min(abs(width - other) for other in every) < 2e-3


@pytest.mark.parametrize("distance", [0.25, 0.05, -0.05])
@pytest.mark.parametrize(("folds", "symmetry", "kind"), CASES)
def test_grown_and_shrunk(folds, symmetry, kind, distance):
    """Against one buffer of the whole by the geometry library."""
    cloth = torn(folds, symmetry, kind)
    found = Repeat(folds, symmetry, SPAN).offset(cloth, distance, 0.0005)
    true = cloth.buffer(distance, quad_segs=64)
    assert found.symmetric_difference(true).area < 0.002 * true.length
    assert len(polygons(found).geoms) == len(polygons(true).geoms)
    rings = [sum(len(p.interiors) for p in polygons(g).geoms) for g in (found, true)]
    assert rings[0] == rings[1]


def test_what_is_apart_is_no_repeat_of_itself():
    leaves = unfold(
        MultiPolygon([Point(3, 1).buffer(0.5), Point(0.2, 0.1).buffer(0.5)]),
        8,
        "mirror",
    )
    repeat = Repeat(8, "mirror", 4.0)
    middle = max(leaves.geoms, key=lambda p: p.contains(Point(0, 0)))
    assert repeat.repeats(middle)
    assert [repeat.repeats(p) for p in leaves.geoms].count(True) == 1
    assert len(Search.of(leaves, repeat).parts) < len(leaves.geoms)


def test_a_place_on_a_fold_is_found_whichever_side_rounding_puts_it():
    """Two holes that pass each other at a fold, each the other's image."""
    holes = [Point(3, y).buffer(0.3) for y in (-0.35, 0.35)]
    cloth = polygons(Point(0, 0).buffer(6, 64).difference(shapely.union_all(holes)))
    repeat = Repeat(4, "mirror", SPAN)
    for lift in (-1e-9, 1e-9):
        moved = translate(cloth, 0, lift)
        places = narrow_places(Search.of(moved, repeat), 0.2)
        assert [round(n.width, 6) for n in places] == [0.1]


@pytest.mark.parametrize(("count", "codes"), [(12, []), (3000, ["D302"])])
def test_a_motif_of_too_many_points_is_refused(tmp_path, count, codes):
    turns = [math.pi / 8 * i / count for i in range(count + 1)]
    rough = [50 + 0.4 * (i % 2) for i in range(count + 1)]
    points = " ".join(
        f"{r * math.cos(t):.4f},{r * math.sin(t):.4f}" for r, t in zip(rough, turns, strict=True)
    )
    (tmp_path / "bulrush.svg").write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" data-centre="0 0" data-start="0">'
        f'<polygon points="0,0 {points}"/></svg>'
    )
    (tmp_path / "pattern.yaml").write_text(SMALLEST.replace("folds: 8", "folds: 16"))
    made, _, _ = load(tmp_path / "pattern.yaml")
    size, _ = grade(made, "mini")
    drafted, notes = draft_motif(made, made.motifs["bulrush"], size.motif_span, "mini")
    assert [n.code for n in notes] == codes
    assert (drafted is None) == bool(codes)
    assert all(n.place.file.endswith("bulrush.svg") and n.place.line == 1 for n in notes)
