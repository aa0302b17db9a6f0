"""A size's dimensions, arrangement and finish.

Published sources: worked examples of edge-to-edge blocks (12 in blocks, 7 x 7 and
5 x 6), and of a border (70 x 86 in with a border cut 6 1/2 in wide), from trade pages; a
bed quilt's size from mattress and drop, Quilting Daily, Standard quilt sizes for
mattresses, 2022; a pillow cover 1 in smaller than its form, everythingsewing blog,
Cushion cover tutorial part 1, 2016.
"""

from fractions import Fraction

import pytest
from helpers import assert_no_notes, changed, graded, loaded, with_size
from hypothesis import given, settings
from hypothesis import strategies as st

from publish import grade
from publish.units import parse_length

F = Fraction

PLAIN = changed(
    "  bulrush: {ground: linen, motif: bulrush}",
    "  bulrush: {ground: linen, motif: bulrush}\n  plain: {ground: linen}\n  dark: {ground: moss}",
)


def sized(folder, keys, more=""):
    """Return a size of the plain block with the given keys."""
    every = "block: [bulrush, plain, dark], columns: 3, block_size: 16 in, motif_size: 14 in"
    sizes = f"  mini: {{block: [plain], {keys}}}\n  all: {{{every}}}\n{more}"
    text = with_size(sizes, PLAIN)
    return graded(folder, text)


@pytest.mark.parametrize(
    ("columns", "rows", "width", "height"),
    [(7, 7, 84, 84), (5, 6, 60, 72)],
    ids=["published 7 x 7", "published 5 x 6"],
)
def test_blocks_edge_to_edge(tmp_path, columns, rows, width, height):
    size, notes = sized(tmp_path, f"block_size: 12 in, columns: {columns}, rows: {rows}")
    assert_no_notes(notes)
    assert (size.width, size.height) == (size.inner_width, size.inner_height) == (width, height)
    assert size.block_count == columns * rows
    assert size.perimeter == 2 * (width + height)


def test_a_border_adds_its_finished_width_on_each_side(tmp_path):
    # Published: 70 x 86 in with a border cut 6 1/2 in wide (1/4 in seams) is 82 x 98 in.
    finished = parse_length("6 1/2 in") - 2 * parse_length("1/4 in")
    size, notes = sized(
        tmp_path,
        "block_size: 2 in, columns: 35, rows: 43, "
        f"borders: [{{width: {finished / 2} in, fabric: moss}}, {{width: {finished / 2} in, "
        "fabric: linen}]",
    )
    assert (size.inner_width, size.inner_height) == (70, 86)
    assert (size.width, size.height) == (82, 98)
    assert {note.code for note in notes} == {"G204"}, "3 in borders round 2 in blocks"


def test_a_bed_quilt_of_a_published_size(tmp_path):
    # Published: mattress 60 x 80 in, drop 12 in on three sides: 84 x 92 in.
    size, notes = sized(tmp_path, "block_size: 4 in, columns: 21, rows: 23")
    assert_no_notes(notes)
    assert (size.width, size.height) == (60 + 2 * 12, 80 + 12)


def test_blocks_are_used_in_turn_along_the_rows(tmp_path):
    text = with_size(
        "  mini: {block: [bulrush, plain, dark], columns: 2, rows: 3, "
        "block_size: 16 in, motif_size: 14 in}\n",
        PLAIN,
    )
    size, notes = graded(tmp_path, text)
    assert_no_notes(notes)
    assert size.arrangement == (("bulrush", "plain"), ("dark", "bulrush"), ("plain", "dark"))


def test_fabrics_left_out_follow_the_first_block_and_motif(tmp_path):
    size, notes = graded(tmp_path, changed("title: Bulrush", "title: Bulrush"))
    assert_no_notes(notes)
    assert (size.backing.fabric, size.binding.fabric) == ("linen", "moss")
    plain, _ = sized(tmp_path, "block_size: 16 in")
    assert (plain.backing.fabric, plain.binding.fabric) == ("linen", "linen")
    backed, _ = sized(tmp_path, "block_size: 16 in", "backing: {fabric: moss}\n")
    assert (backed.backing.fabric, backed.binding.fabric) == ("moss", "moss")


def test_a_pieced_ground_gives_its_first_patch_to_the_backing(tmp_path):
    size, _ = graded(tmp_path, changed("ground: linen", "ground: {rows: [[moss, linen]]}"))
    assert size.backing.fabric == "moss"


def test_a_pillow_has_no_binding_and_its_back_follows_the_backing(tmp_path):
    size, notes = sized(
        tmp_path,
        "block_size: 17 in, finish: pillow, pillow: {form: 18 in}",
        "binding: {width: 2 in}\nbacking: {fabric: moss}\n",
    )
    assert_no_notes(notes)
    assert (size.binding, size.sleeve, size.pillow.fabric) == (None, None, "moss")
    assert (size.backing.fabric, size.batting.name) == ("moss", "Cotton")


@pytest.mark.parametrize(
    ("cover", "fits"),
    [("18 in", True), ("18 1/8 in", False), ("17 in", True), ("16 in", True), ("15 7/8 in", False)],
)
def test_a_cover_is_at_most_two_inches_smaller_than_its_form(tmp_path, cover, fits):
    # Published: a cover 1 in smaller than the form is snug. Two: common practice, no source.
    _, notes = sized(tmp_path, f"block_size: {cover}, finish: pillow, pillow: {{form: 18 in}}")
    assert [n.code for n in notes] == ([] if fits else ["G205"])


def test_a_pillow_may_have_several_blocks_and_a_border(tmp_path):
    size, notes = sized(
        tmp_path,
        "block_size: 7 1/2 in, columns: 2, rows: 2, borders: [{width: 1 in, fabric: moss}], "
        "finish: pillow, pillow: {form: 18 in}",
    )
    assert_no_notes(notes)
    assert (size.width, size.height) == (17, 17)


def test_a_cover_that_is_not_square_is_told_side_by_side(tmp_path):
    _, notes = sized(
        tmp_path, "block_size: 9 in, columns: 2, finish: pillow, pillow: {form: 18 in}"
    )
    assert [(n.code, n.received) for n in notes] == [("G205", "9 in")]
    assert "height" in notes[0].what


def test_quilting_that_a_size_has_no_area_for_goes_quietly(tmp_path):
    size, notes = sized(tmp_path, "block_size: 16 in")
    assert_no_notes(notes)
    assert [q.area for q in size.quilting] == ["ground"]


def test_a_size_left_without_quilting_is_told(tmp_path):
    size, notes = sized(tmp_path, "block_size: 16 in", "quilting: [{area: motif, style: ditch}]\n")
    assert (size.quilting, [n.code for n in notes]) == ((), ["G208"])


@pytest.mark.parametrize(("spacing", "codes"), [("4 in", []), ("4 1/8 in", ["G207"])])
def test_quilting_keeps_within_the_label(tmp_path, spacing, codes):
    # Published, product text: cotton-wool 80/20, quilt at most 4 in apart.
    _, notes = sized(
        tmp_path,
        f"block_size: 16 in, batting: {{largest_gap: 4 in}}, "
        f"quilting: [{{area: ground, style: grid, spacing: {spacing}}}]",
    )
    assert [n.code for n in notes] == codes


@pytest.mark.parametrize(("motif", "codes"), [("15 in", []), ("15 1/8 in", ["G202"])])
def test_a_motif_stays_half_an_inch_clear(tmp_path, motif, codes):
    # Common practice, no source.
    size, notes = graded(tmp_path, changed("motif_size: 14 in", f"motif_size: {motif}"))
    assert size.motif_span == parse_length(motif)
    assert [n.code for n in notes] == codes


def test_a_note_about_a_shared_value_points_at_the_shared_value(tmp_path):
    text = changed("title: Bulrush", "title: Bulrush\nbatting: {overhang: 5 in}")
    _, notes = graded(tmp_path, text)
    assert [(n.code, n.place.line, n.place.path) for n in notes] == [
        ("G209", 2, "batting.overhang")
    ]


def test_a_size_that_is_not_there_names_the_nearest(tmp_path):
    size, notes = grade.grade(loaded(tmp_path), "mni")
    assert size is None
    assert [(n.code, n.help) for n in notes] == [("G201", "write `mini`")]


@settings(max_examples=60)
@given(st.integers(1, 8), st.integers(1, 8), st.integers(8, 200), st.integers(1, 40))
def test_a_top_is_the_sum_of_its_parts(tmp_path_factory, columns, rows, eighths, border):
    side, width = F(eighths, 8), F(border, 8)
    size, _ = sized(
        tmp_path_factory.getbasetemp(),
        f"block_size: {side} in, columns: {columns}, rows: {rows}, "
        f"borders: [{{width: {width} in, fabric: moss}}]",
    )
    area = (
        columns * rows * side**2 + 2 * width * (size.inner_width + size.inner_height) + 4 * width**2
    )
    assert size.width * size.height == area
    assert len(size.arrangement) == rows
    assert all(len(row) == columns for row in size.arrangement)
