"""Sheets joined reproduce the template; no sheet is wasted; neighbours share their marks."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import translate
from shapely.geometry import LineString, Point, Polygon, box
from shapely.ops import unary_union

from publish.draw.sheets.tiling import MARK, OVERLAP, joined, tile

LETTER_WINDOW = (7.5, 8.75)


@st.composite
def stars(draw):
    """A simple polygon around the origin: a radius for each of its directions."""
    count = draw(st.integers(5, 14))
    radii = draw(st.lists(st.floats(0.5, 17), min_size=count, max_size=count))
    turns = [2 * math.pi * i / count for i in range(count)]
    return Polygon([(r * math.cos(a), r * math.sin(a)) for r, a in zip(radii, turns, strict=True)])


windows = st.tuples(st.floats(5, 11), st.floats(5, 16))


@settings(max_examples=30)
@given(stars(), windows, st.sampled_from([(0.0,), (0.0, 90.0), (0.0, 15.0, -30.0)]))
def test_the_sheets_joined_are_the_template(shape, window, turns):
    tiling = tile(shape, window, turns)
    pieces = []
    for sheet in tiling.windows:
        left, top = sheet.box[:2]
        own = translate(tiling.shape.intersection(sheet.area), -left, -top)
        pieces.append((own, (left, top)))
    assert joined(pieces).symmetric_difference(tiling.shape).area < 1e-6
    assert tiling.shape.area == pytest.approx(shape.area)


@settings(max_examples=30)
@given(stars(), windows)
def test_every_sheet_is_needed_and_neighbours_overlap(shape, window):
    tiling = tile(shape, window)
    for sheet in tiling.windows:
        left, top, right, bottom = sheet.box
        assert (right - left, bottom - top) == pytest.approx(window)
        assert tiling.shape.intersects(sheet.area)
        beside, below = tiling.neighbour(sheet, "right"), tiling.neighbour(sheet, "below")
        assert beside is None or right - beside.box[0] == pytest.approx(OVERLAP)
        assert below is None or bottom - below.box[1] == pytest.approx(OVERLAP)


@settings(max_examples=30)
@given(stars(), windows)
def test_a_mark_is_whole_on_both_of_its_sheets(shape, window):
    tiling = tile(shape, window)
    by_label = {sheet.label: sheet for sheet in tiling.windows}
    numbers = [mark.number for mark in tiling.marks]
    assert numbers == list(range(1, len(numbers) + 1))
    for mark in tiling.marks:
        whole = Point(mark.x, mark.y).buffer(MARK)
        assert all(by_label[label].area.covers(whole) for label in mark.sheets)
    for sheet in tiling.windows:
        joins = sum(
            tiling.neighbour(sheet, side) is not None
            for side in ("left", "right", "above", "below")
        )
        assert len(tiling.marks_on(sheet)) == 2 * joins


@settings(max_examples=30)
@given(stars(), windows)
def test_sheets_cut_on_their_join_lines_leave_no_gap(shape, window):
    """The maker cuts through the middle of every overlap: what is left must still cover."""
    tiling = tile(shape, window)
    left = unary_union([box(*tiling.inner(sheet)) for sheet in tiling.windows])
    assert tiling.shape.difference(left).area < 1e-6
    for sheet in tiling.windows:
        beside = tiling.neighbour(sheet, "right")
        if beside is not None:
            assert tiling.inner(sheet)[2] == pytest.approx(tiling.inner(beside)[0])


# Worked by hand: columns (w - 1/2) / (W - 1/2) rounded up, rows likewise.
@pytest.mark.parametrize(
    ("width", "height", "sheets"),
    [(7.5, 8.75, 1), (7.6, 8.0, 2), (14.5, 8.75, 2), (14.6, 8.75, 3), (20, 20, 9), (14.5, 17, 4)],
)
def test_a_rectangle_takes_the_sheets_worked_by_hand(width, height, sheets):
    assert len(tile(box(0, 0, width, height), LETTER_WINDOW).windows) == sheets


def test_turning_is_tried_and_only_used_when_it_saves_a_sheet():
    wide = box(0, 0, 8.5, 7)
    assert len(tile(wide, LETTER_WINDOW).windows) == 2
    turned = tile(wide, LETTER_WINDOW, (0.0, 90.0))
    assert (len(turned.windows), turned.turn) == (1, 90.0)
    assert tile(box(0, 0, 7, 7), LETTER_WINDOW, (0.0, 90.0)).turn == 0.0


def test_sheets_that_would_be_empty_are_left_out():
    corner = box(0, 0, 20, 2).union(box(0, 0, 2, 20))
    tiling = tile(corner, LETTER_WINDOW)
    assert (tiling.rows, tiling.columns, len(tiling.windows)) == (3, 3, 5)
    assert [sheet.label for sheet in tiling.windows] == ["1", "2", "3", "4", "5"]


def test_a_line_alone_is_covered_too():
    tiling = tile(LineString([(0, 0), (16, 16)]), LETTER_WINDOW)
    covered = tiling.shape
    for sheet in tiling.windows:
        covered = covered.difference(sheet.area)
    assert covered.length < 1e-9


def test_the_same_shape_gives_the_same_tiling():
    shape = Polygon([(0, 0), (17, 3), (12, 15), (1, 9)])
    assert tile(shape, LETTER_WINDOW, (0.0, 30.0)) == tile(shape, LETTER_WINDOW, (0.0, 30.0))


def test_mistakes_of_the_caller_are_refused():
    with pytest.raises(ValueError, match="empty"):
        tile(Polygon(), LETTER_WINDOW)
    with pytest.raises(ValueError, match="too small"):
        tile(box(0, 0, 1, 1), (0.9, 8.0))
