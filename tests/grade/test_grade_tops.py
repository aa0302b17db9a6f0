"""How tops are set: turns, sashing, on point, medallions; exact sizes and counts.

Published sources: on point, 4 x 4 blocks have 9 between them, 12 side triangles and 4
corners, Krista Moser, Quilt math made easy; the diagonal of a 6 in block is called 8 1/2
in, Moonlight Quilters (guild), Tip: on-point settings. Areas are geometry.
"""

from fractions import Fraction

import pytest
from helpers import assert_no_notes, changed, graded, with_size
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.surd import ROOT_2, Surd
from publish.units import inches_text

F = Fraction

PLAIN = "  bulrush: {ground: linen, motif: bulrush}"
BLOCKS = changed(
    PLAIN,
    PLAIN
    + """
  half: {traditional: half-square triangle, fabrics: {light: linen, dark: moss}}
  plain: {ground: linen}
  dark: {ground: moss}""",
)
EVERY = "[bulrush, half, plain, dark]"
ALL = f"  all: {{block: {EVERY}, columns: 4, block_size: 16 in, motif_size: 8 in}}\n"


def sized(folder, keys):
    """Return a size of the block `half` with the given keys, and grading's notes."""
    return graded(folder, with_size(f"  mini: {{block: half, {keys}}}\n{ALL}", BLOCKS))


ON_POINT = "setting: on point, setting_fabric: moss"


def test_published_counts_on_point(tmp_path):
    size, notes = sized(
        tmp_path, f"block_size: 6 in, columns: 4, rows: 4, alternate: plain, {ON_POINT}"
    )
    assert_no_notes(notes)
    main = [key for row in size.arrangement for key in row]
    between = [key for row in size.alternates for key in row]
    assert (main.count("half"), between.count("plain")) == (16, 9)
    assert (len(main), len(between), size.block_count) == (16, 9, 25)
    assert (size.side_triangles, size.corner_triangles) == (12, 4)
    assert size.setting_fabric == "moss"


def test_a_published_diagonal(tmp_path):
    size, notes = sized(tmp_path, f"block_size: 6 in, {ON_POINT}")
    assert_no_notes(notes)
    assert size.inner_width == size.width == 6 * ROOT_2
    assert inches_text(size.width) == "8 1/2 in"
    assert (size.block_count, size.side_triangles, size.corner_triangles) == (1, 0, 4)


@given(st.integers(1, 9), st.integers(1, 9), st.integers(8, 160), st.integers(1, 24), st.booleans())
@settings(max_examples=40)
def test_an_on_point_top_is_the_sum_of_its_pieces(
    tmp_path_factory, columns, rows, eighths, width, lattice
):
    side, strip = F(eighths, 8), F(width, 8) if lattice else F(0)
    more = f", sashing: {{width: {strip} in, fabric: moss, cornerstones: linen}}" if lattice else ""
    size, _ = sized(
        tmp_path_factory.getbasetemp(),
        f"block_size: {side} in, columns: {columns}, rows: {rows}, {ON_POINT}{more}",
    )
    # A side triangle is half a block, a corner a quarter. Strips lie along the sides of every
    # block; half a crossing lies on the edge for each block along it, the others inside.
    blocks = size.block_count * side**2
    triangles = size.side_triangles * side**2 / 2 + size.corner_triangles * side**2 / 4
    strips = 4 * columns * rows * side * strip
    crossings = ((columns - 1) * rows + columns * (rows - 1)) + F(2 * columns + 2 * rows, 2)
    total = blocks + triangles + strips + crossings * strip**2
    assert size.inner_width * size.inner_height == total
    assert size.inner_width == columns * size.pitch * ROOT_2
    assert size.sashing is None or size.sashing.outer


def test_alternates_go_on_in_turn_and_default_to_the_blocks(tmp_path):
    text = with_size(
        "  mini: {block: [half, plain], columns: 3, rows: 3, turns: [0, 90, 180], "
        f"alternate_turns: [270], block_size: 6 in, {ON_POINT}}}\n{ALL}",
        BLOCKS,
    )
    size, notes = graded(tmp_path, text)
    assert_no_notes(notes)
    assert size.arrangement == (
        ("half", "plain", "half"),
        ("plain", "half", "plain"),
        ("half", "plain", "half"),
    )
    assert size.alternates == (("half", "plain"), ("half", "plain"))
    assert size.turns == ((0, 90, 180),) * 3
    assert size.alternate_turns == ((270, 270), (270, 270))
    assert (size.turn(1, 1), size.alternate_turn(0, 1)) == (90, 270)


def test_turns_are_used_along_the_rows_and_on_through_them(tmp_path):
    size, notes = sized(tmp_path, "block_size: 6 in, columns: 2, rows: 2, turns: [0, 90, 180]")
    assert_no_notes(notes)
    assert size.turns == ((0, 90), (180, 0))
    still, _ = sized(tmp_path, "block_size: 6 in, columns: 2, rows: 2, turns: [0]")
    assert (still.turns, still.turn(1, 1), still.alternate_turn(0, 0)) == ((), 0, 0)


@pytest.mark.parametrize(("outer", "width", "height"), [("no", 40, 26), ("yes", 44, 30)])
def test_sashing_between_blocks_and_round_them(tmp_path, outer, width, height):
    size, notes = sized(
        tmp_path,
        "block_size: 12 in, columns: 3, rows: 2, "
        f"sashing: {{width: 2 in, fabric: moss, outer: {outer}}}",
    )
    assert_no_notes(notes)
    assert (size.inner_width, size.inner_height) == (width, height)
    assert (size.pitch, size.sashing.cornerstones) == (14, None)
    assert isinstance(size.width, Fraction)


def test_borders_go_round_an_on_point_top(tmp_path):
    size, notes = sized(
        tmp_path,
        f"block_size: 6 in, columns: 2, rows: 3, {ON_POINT}, "
        "borders: [{width: 2 in, fabric: moss}, {width: 1 in, fabric: linen}]",
    )
    assert_no_notes(notes)
    assert (size.width, size.height) == (Surd(F(6), F(12)), Surd(F(6), F(18)))
    assert size.perimeter == 24 + 60 * ROOT_2
    first, second = size.layers
    assert (first.inner_width, first.width) == (12 * ROOT_2, 4 + 12 * ROOT_2)
    assert (second.inner_width, second.height) == (4 + 12 * ROOT_2, 6 + 18 * ROOT_2)
    assert (first.border, second.border) == size.borders


MEDAL = """  mini:
    block: plain
    block_size: 10 in
    rounds:
      - {border: {width: 1 in, fabric: moss}}
      - {blocks: [dark, half], block_size: 4 in, turns: [0, 90]}
      - {border: {width: 2 in, fabric: linen, corners: mitred}}
"""


def test_a_medallion_grows_round_by_round(tmp_path):
    size, notes = graded(tmp_path, with_size(MEDAL + ALL, BLOCKS))
    assert_no_notes(notes)
    assert [(r.inner_width, r.width) for r in size.rounds] == [(10, 12), (12, 20), (20, 24)]
    assert (size.inner_width, size.width, size.height) == (10, 24, 24)
    assert [b.width for b in size.borders] == [1, 2]
    assert size.layers == size.rounds
    ring = size.rounds[1]
    assert (ring.block_side, ring.columns, ring.rows, len(ring.blocks)) == (4, 5, 5, 16)
    top = [(b.block, b.turn, b.column) for b in ring.blocks if b.row == 0][:5]
    assert top == [
        ("dark", 0, 0),
        ("half", 90, 1),
        ("dark", 0, 2),
        ("half", 90, 3),
        ("dark", 90, 4),
    ]
    below = [(b.block, b.turn, b.column) for b in ring.blocks if b.row == 4]
    assert below == [
        ("dark", 180, 4),
        ("half", 270, 3),
        ("dark", 180, 2),
        ("half", 270, 1),
        ("dark", 270, 0),
    ]


@given(st.integers(1, 5), st.integers(1, 5), st.integers(1, 12), st.integers(1, 3))
@settings(max_examples=25)
def test_a_round_of_blocks_covers_its_ring(tmp_path_factory, columns, rows, side, parts):
    size, _ = sized(
        tmp_path_factory.getbasetemp(),
        f"block_size: {side * parts} in, columns: {columns}, rows: {rows}, "
        f"rounds: [{{blocks: plain, block_size: {side} in}}]",
    )
    (ring,) = size.rounds
    places = {(b.row, b.column) for b in ring.blocks}
    assert len(places) == len(ring.blocks) == 2 * (ring.columns + ring.rows) - 4
    assert all(r in (0, ring.rows - 1) or c in (0, ring.columns - 1) for r, c in places)
    inside = size.inner_width * size.inner_height
    assert inside + len(places) * side**2 == size.width * size.height


@pytest.mark.parametrize(
    ("inside", "side", "border", "widths"),
    [
        ("10 in", "4 in", "", ["1 in"]),
        ("10 in", "4 in", "3/2", ["1 in", "3 in"]),
        ("10 in", "3 in", "2", ["1 in", "2 1/2 in"]),
        ("9 1/2 in", "4 in", "", ["1 1/4 in"]),
        ("7 in", "4 in", "1", ["1/2 in", "2 1/2 in"]),
    ],
)
def test_a_round_that_does_not_fit_names_the_borders_that_would(
    tmp_path, inside, side, border, widths
):
    before = f"{{border: {{width: {border} in, fabric: moss}}}}, " if border else ""
    size, notes = sized(
        tmp_path, f"block_size: {inside}, rounds: [{before}{{blocks: plain, block_size: {side}}}]"
    )
    assert size is None
    (note,) = notes
    assert note.code == "G214"
    assert " or ".join(f"`{w}`" for w in widths) in note.help
    for width in widths:
        right, notes = sized(
            tmp_path,
            f"block_size: {inside}, rounds: [{{border: {{width: {width}, fabric: moss}}}}"
            f", {{blocks: plain, block_size: {side}}}]",
        )
        assert right is not None
        assert not [n for n in notes if n.code == "G214"]


def test_a_round_never_goes_round_an_on_point_centre(tmp_path):
    size, notes = sized(
        tmp_path, f"block_size: 6 in, {ON_POINT}, rounds: [{{blocks: plain, block_size: 3 in}}]"
    )
    assert (size, [n.code for n in notes]) == (None, ["G214"])
    assert "straight" in notes[0].help
