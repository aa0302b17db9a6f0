"""The wedge is found wherever it is drawn, and the same motif comes of it."""

import math

import numpy as np
import pytest
from draft_builders import codes, drafted, motif, outline, pattern, polygon_svg, svg
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.draft.motif import draft_motif
from publish.notes import Severity

LEAF = [(20, 0), (90, 0), (80, 12), (60, 12), (52, 20), (62, 34), (82, 52), (100, 100), (18, 18)]
"""An eighth of a motif with an open centre: the tip on the diagonal reaches farther."""


def moved(points, turn=0.0, flip=False, scale=1.0, shift=(0.0, 0.0)):
    c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    points = np.array(points, dtype=float) * [1, -1 if flip else 1]
    return (points @ np.array([[c, s], [-s, c]])) * scale + np.array(shift)


def measures(found):
    shape = found.shape
    return (
        shape.area,
        shape.perimeter,
        shape.narrowest_neck,
        shape.narrowest_slit,
        shape.sharpest_tip,
    )


def counts(found):
    shape = found.shape
    return shape.pieces, shape.holes, shape.tips, shape.inside_corners


@pytest.fixture(scope="module")
def plain(tmp_path_factory):
    return drafted(tmp_path_factory.mktemp("plain"), polygon_svg(LEAF))


def test_in_place_at_the_origin(plain):
    shape = plain.shape
    assert shape.whole.bounds == pytest.approx((-7, -7, 7, 7))
    assert (shape.pieces, shape.holes) == (1, 1)
    assert shape.edges[0].contact[0] == pytest.approx((1.4, 6.3))
    assert shape.edges[1].contact[0] == pytest.approx((1.26 * 2**0.5, 7 * 2**0.5))
    area = sum(x * v - u * y for (x, y), (u, v) in zip(LEAF, [*LEAF[1:], LEAF[0]], strict=True)) / 2
    assert shape.area == pytest.approx(8 * area * 0.07**2, rel=1e-6)


@settings(max_examples=25)
@given(
    st.floats(-180, 180),
    st.booleans(),
    st.floats(0.2, 5),
    st.tuples(st.floats(-300, 300), st.floats(-300, 300)),
)
def test_turned_mirrored_scaled_shifted(tmp_path_factory, plain, turn, flip, scale, shift):
    """Without marks. A wedge turned by an odd number of its own angles is meant to lie so:
    the motif is turned, and is not tried here."""
    if round(turn / 45) % 2 and abs(turn - 45 * round(turn / 45)) < 0.6:
        turn += 1.3
    text = polygon_svg(moved(LEAF, turn, flip, scale, shift))
    found = drafted(tmp_path_factory.mktemp("turned"), text)
    assert counts(found) == counts(plain)
    assert measures(found) == pytest.approx(measures(plain), rel=1e-6)


@settings(max_examples=15)
@given(st.floats(-180, 180), st.tuples(st.floats(-300, 300), st.floats(-300, 300)), st.booleans())
def test_marks_win(tmp_path_factory, plain, turn, shift, by_element):
    x, y = shift
    start = f'data-start="{turn!r}"'
    text = polygon_svg(
        moved(LEAF, turn, shift=shift),
        start if by_element else f'{start} data-centre="{x!r} {y!r}"',
        f'<circle id="centre" cx="{x!r}" cy="{y!r}" r="2"/>' if by_element else "",
    )
    found = drafted(tmp_path_factory.mktemp("marked"), text)
    assert counts(found) == counts(plain)
    assert measures(found) == pytest.approx(measures(plain), rel=1e-6)


def test_marks_are_in_the_elements_own_coordinates(tmp_path, plain):
    text = polygon_svg(
        LEAF, 'transform="translate(40 9) rotate(77) scale(1 -1)" data-centre="0 0" data-start="0"'
    )
    assert measures(drafted(tmp_path, text)) == pytest.approx(measures(plain), rel=1e-6)


def test_centre_alone_is_enough(tmp_path, plain):
    text = polygon_svg(moved(LEAF, 33, shift=(50, 60)), 'data-centre="50 60"')
    assert measures(drafted(tmp_path, text)) == pytest.approx(measures(plain), rel=1e-6)


def test_folds_drawn_slightly_off_are_straightened(tmp_path, plain):
    off = [(x + y * 0.004, y) for x, y in LEAF]
    found = drafted(tmp_path, polygon_svg(moved(off, 20, shift=(9, 9))))
    assert counts(found) == counts(plain)
    assert measures(found) == pytest.approx(measures(plain), rel=0.02)


@pytest.mark.parametrize("folds", [4, 6, 8, 12, 16])
def test_every_number_of_folds_is_found(tmp_path, folds):
    """A sector of a ring opens to the ring: radii 30 and 100, so 2.1 in and 7 in."""
    turn = math.radians(360 / folds)
    a, b = math.cos(turn), math.sin(turn)
    ring = (
        f'<path transform="translate(70 -20) rotate(13)" d="M30 0L100 0A100 100 0 0 1 '
        f'{100 * a!r} {100 * b!r}L{30 * a!r} {30 * b!r}A30 30 0 0 0 30 0Z"/>'
    )
    shape = drafted(tmp_path, svg(ring), folds=folds).shape
    assert (shape.pieces, shape.holes, shape.tips) == (1, 1, 0)
    assert shape.area == pytest.approx(math.pi * (7**2 - 2.1**2), rel=1e-3)
    assert shape.perimeter == pytest.approx(math.tau * (7 + 2.1), rel=1e-3)
    assert shape.narrowest_neck == pytest.approx(4.9, abs=0.005)
    assert shape.narrowest_slit is None


def test_what_crosses_a_fold_is_cut_off_and_said(tmp_path):
    past = [(20, -5), *LEAF[1:-1], (18, 18)]
    (tmp_path / "wedge.svg").write_text(polygon_svg(past, 'data-centre="0 0" data-start="0"'))
    found, notes = draft_motif(pattern(tmp_path, [motif()]), motif(), 14, "mini")
    assert found is not None and codes(notes) == ["D321"]
    assert notes[0].severity is Severity.WARNING
    assert f"{70 * 5 / 2 * 0.07**2:.2f} square inches" in notes[0].received


def test_a_drawing_that_is_no_wedge_is_said(tmp_path):
    """Two dots far apart: no folds hold both, however they are laid."""
    dots = '<circle cx="150" cy="50" r="3"/><circle cx="50" cy="150" r="3"/>'
    (tmp_path / "wedge.svg").write_text(svg(dots))
    found, notes = draft_motif(pattern(tmp_path, [motif()]), motif(), 14, "mini")
    assert found is None and codes(notes) == ["D320"] and "data-start" in notes[0].help


@pytest.mark.parametrize("mark", ['data-centre="4"', 'data-centre="a b"', 'data-start="1 2"'])
def test_marks_that_cannot_be_read(tmp_path, mark):
    (tmp_path / "wedge.svg").write_text(polygon_svg(LEAF, mark))
    found, notes = draft_motif(pattern(tmp_path, [motif()]), motif(), 14, "mini")
    assert found is None and codes(notes) == ["D323"]
    assert notes[0].place.line == 2


def test_turning_without_mirror(tmp_path):
    """Four blades, each a 60 x 20 rectangle beside the axis that it points along."""
    blade = [(10, 0), (70, 0), (70, 20), (10, 20)]
    middle = [(-10, -10), (10, -10), (10, 10), (-10, 10)]
    text = svg(
        "".join(
            f'<polygon points="{" ".join(f"{x},{y}" for x, y in ring)}"/>'
            for ring in (blade, middle)
        )
    )
    shape = drafted(tmp_path, text, folds=4, symmetry="turning").shape
    assert shape.edges is None and shape.pieces == 1
    assert shape.area == pytest.approx((4 * 1200 + 400) * 0.01, rel=1e-6)
    assert shape.wedge.area == pytest.approx(shape.area / 4, rel=1e-6)


def whole(points, folds=8):
    """Return the corners of a star with a mirror line along x."""
    return [
        (
            50 + r * math.cos(math.radians(k * 360 / folds)),
            50 + r * math.sin(math.radians(k * 360 / folds)),
        )
        for k, r in enumerate(points * (folds // len(points)))
    ]


def test_a_whole_drawing_is_cut_into_wedges(tmp_path):
    text = polygon_svg(whole([45, 20]))
    shape = drafted(tmp_path, text, covers="whole").shape
    assert shape.whole.bounds == pytest.approx((-7, -7, 7, 7))
    assert shape.area == pytest.approx(8 * 45 * 20 * math.sin(math.pi / 4) / 2 * (7 / 45) ** 2)


@pytest.mark.parametrize(("shift", "severity"), [(0.3, Severity.WARNING), (3, Severity.ERROR)])
def test_a_whole_drawing_without_the_symmetry(tmp_path, shift, severity):
    points = whole([45, 20])
    points[1] = (points[1][0] + shift, points[1][1])
    (tmp_path / "wedge.svg").write_text(polygon_svg(points))
    kind = motif(covers="whole")
    found, notes = draft_motif(pattern(tmp_path, [kind]), kind, 14, "mini")
    assert found is not None and codes(notes) == ["D322"]
    assert notes[0].severity is severity
    assert notes[0].spot.measure == pytest.approx(shift * 7 / 45, rel=0.45)


def test_an_outline_with_corners_only_is_a_polygon(tmp_path, plain):
    points = [(x, y, 1) for x, y in [*LEAF, LEAF[0]]]
    kind = motif(drawing=None, outline=outline(points))
    found, notes = draft_motif(pattern(tmp_path, [kind]), kind, 14, "mini")
    assert not notes
    assert measures(found) == pytest.approx(measures(plain), rel=1e-6)


@pytest.mark.parametrize("side", [1, -1])
def test_a_smooth_outline_near_a_circle(tmp_path, side):
    """Points on a circle from fold to fold, closed through the centre: a disc."""
    turns = [math.radians(a) for a in (0, 15, 30, 45)]
    points = [(100 * math.cos(t), side * 100 * math.sin(t)) for t in turns]
    kind = motif(drawing=None, outline=outline(points))
    found, notes = draft_motif(pattern(tmp_path, [kind]), kind, 14, "mini")
    assert not notes and found.shape.tips == 0 and found.shape.inside_corners == 0
    assert found.shape.area == pytest.approx(math.pi * 49, rel=2e-3)


@pytest.mark.parametrize(
    "points", [[], [(0, 0)], [(0, 0), (100, 0)], [(0, 0, 1), (50, 0, 1), (100, 0, 1)]]
)
def test_an_outline_without_cloth_is_said(tmp_path, points):
    kind = motif(drawing=None, outline=outline(points))
    found, notes = draft_motif(pattern(tmp_path, [kind]), kind, 14, "mini")
    assert found is None and codes(notes) == ["D314"]
