"""Ornaments that were drawn for no folds, laid into the wedge.

What is expected follows from the circle and the triangle that are laid, by elementary
geometry. How firmly an ornament is held at its folds is common practice, no source.
"""

import math
from fractions import Fraction

import numpy as np
import pytest
import shapely
from draft_builders import codes, drafted, motif, pattern, svg

from publish import contact
from publish.draft.motif import draft_motif
from publish.draft.unfold import ray
from publish.model.pattern import Lay

F = Fraction
ROUND = '<circle cx="50" cy="50" r="30"/>'
ARROW = '<path d="M50 10L70 90L30 90Z"/>'
"""Its point is its top; its middle lies two thirds of the way from there."""

LEAF = (
    '<path d="M30 2C52 22 60 50 50 74C45 86 36 90 33 90L33 99L27 99L27 90C24 90 15 86 10 74'
    'C0 50 8 22 30 2Z"/>'
)


def along(shape, share):
    """Return where the cloth begins and ends on a line of the wedge, in half spans."""
    way = 100 * ray(share * shape.wedge_angle)
    line = shapely.LineString([(0, 0), way]).intersection(shape.whole)
    reach = np.hypot(*shapely.get_coordinates(line).T)
    return float(reach.min()) / 7, float(reach.max()) / 7


@pytest.mark.parametrize(
    ("line", "share"), [("halving line", 0.5), ("first fold", 0.0), ("second fold", 1.0)]
)
def test_an_ornament_lies_as_far_from_the_centre_as_is_said(tmp_path, line, share):
    lay = Lay(line, F(40), F(60))
    near, far = along(drafted(tmp_path, svg(ROUND), lay=lay).shape, share)
    assert near / far == pytest.approx(0.4, abs=1e-3)


@pytest.mark.parametrize(
    "lay", [Lay(distance=F(40)), Lay(size=F(60)), Lay("halving line", F(20), F(30))]
)
def test_what_is_not_said_is_what_the_other_leaves(tmp_path, lay):
    one = drafted(tmp_path, svg(ROUND), lay=lay).shape
    two = drafted(tmp_path, svg(ROUND), lay=Lay(distance=F(40), size=F(60))).shape
    assert one.whole.symmetric_difference(two.whole).area < 1e-6


def test_an_ornament_on_a_fold_opens_into_half_as_many(tmp_path):
    """Four discs whose middles are 0.7 of their far ends from the centre and whose radius
    is 0.3 of it: they lie on the axes and do not meet."""
    shape = drafted(tmp_path, svg(ROUND), lay=Lay("first fold", F(40), F(60)), pieces=4).shape
    assert shape.pieces == 4
    assert shape.area == pytest.approx(4 * math.pi * (0.3 * 7) ** 2, rel=2e-3)
    middles = sorted((round(p.centroid.x, 2), round(p.centroid.y, 2)) for p in shape.whole.geoms)
    assert middles == [(-4.9, 0.0), (0.0, -4.9), (0.0, 4.9), (4.9, 0.0)]


@pytest.mark.parametrize("line", ["halving line", "first fold", "second fold"])
@pytest.mark.parametrize("turn", [0, 180])
def test_the_top_points_away_from_the_centre(tmp_path, line, turn):
    shape = drafted(
        tmp_path, svg(ARROW), lay=Lay(line, F(90), F(10), turn), folds=4, pieces=9
    ).shape
    share = {"halving line": 0.5, "first fold": 0.0, "second fold": 1.0}[line]
    way = ray(share * 90)
    part = max(shape.whole.geoms, key=lambda p: p.centroid.x * way[0] + p.centroid.y * way[1])
    points = shapely.get_coordinates(part) @ way
    middle = (points.min() + points.max()) / 2
    assert (part.centroid.x * way[0] + part.centroid.y * way[1] < middle) == (turn == 0)


@pytest.mark.parametrize("folds", [4, 6, 8, 12, 16])
@pytest.mark.parametrize("inside", [ROUND, LEAF])
def test_where_nothing_is_said_both_folds_cut_and_hold_it(tmp_path, folds, inside):
    (tmp_path / "wedge.svg").write_text(svg(inside))
    kind = motif(folds=folds)
    made, notes = draft_motif(pattern(tmp_path, [kind]), kind, 14, "mini")
    assert made is not None and codes(notes) == ["D324"] and "lay:" in notes[0].help
    assert made.shape.pieces == 1
    near, far = along(made.shape, 0.5)
    for edge in made.shape.edges:
        longest = max(b - a for a, b in edge.contact) / 7
        assert 0.1 * (far - near) < longest < 0.7 * (far - near)


def test_what_is_written_is_not_said_again(tmp_path):
    assert drafted(tmp_path, svg(LEAF), lay=Lay()).shape.pieces == 1


def test_a_turning_motif_is_laid_until_its_copies_meet(tmp_path):
    shape = drafted(tmp_path, svg(LEAF), lay=Lay(), symmetry="turning", folds=6).shape
    assert shape.pieces == 1 and shape.edges is None


def test_a_wedge_is_still_a_wedge(tmp_path):
    """Straight sides that meet at the wedge's angle are folds, wherever they lie."""
    wedge = '<path transform="rotate(20 50 50)" d="M10 10L90 10L60 30L66.57 66.57Z"/>'
    (tmp_path / "wedge.svg").write_text(svg(wedge))
    made, notes = draft_motif(pattern(tmp_path, [motif()]), motif(), 14, "mini")
    assert made is not None and notes == ()


def test_the_sheet_shows_an_ornament_laid_in_several_ways(tmp_path):
    (tmp_path / "leaf.svg").write_text(svg(LEAF))
    shown = contact.designs([tmp_path / "leaf.svg"], 8, "#4f6b4a", "#f4efe6")
    assert [design.name for design in shown] == [
        f"leaf.svg, along the {line}{turned}"
        for line in ("halving line", "first fold", "second fold")
        for turned in ("", ", turned 180")
    ]
    assert len({design.picture for design in shown}) == 6
    assert dict(shown[3].facts)["write"] == "lay: {along: first fold, turn: 180}"
    assert all(dict(design.facts)["pieces"] == "1" for design in shown)


def test_what_the_sheet_says_to_write_is_a_pattern(tmp_path):
    (tmp_path / "leaf.svg").write_text(svg(LEAF))
    shown = contact.designs([tmp_path / "leaf.svg"], 8, "#4f6b4a", "#f4efe6")[0]
    facts = dict(shown.facts)
    text = contact.PATTERN.format(
        drawing="leaf.svg",
        folds=8,
        pieces=1,
        cloth="#4f6b4a",
        ground="#f4efe6",
        more=f", {facts['write']}",
    )
    (tmp_path / "pattern.yaml").write_text(text)
    found, notes, _ = contact.read.load(tmp_path)
    assert found is not None and found.motifs["design"].lay == Lay()
    assert not [n for n in notes if n.code.startswith("R1") and "lay" in n.place.path]
