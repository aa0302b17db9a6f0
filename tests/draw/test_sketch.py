"""A gap and an overlap in a block are drawn where they are: by geometry, no source."""

from helpers import SMALLEST, notes_of
from top_figures import elements, rings

from publish.draw import sketches
from publish.draw.canvas.style import RED_BROWN
from publish.draw.sketch import EDGE, SIDE
from publish.units import POINTS_PER_INCH

BLOCK = """
  torn:
    grid: [4, 4]
    patches:
      - {fabric: linen, rectangle: [0, 0, 2, 4]}
      - {fabric: moss, rectangle: [2, 0, 2, 3]}
      - {fabric: moss, rectangle: [1, 1, 1, 1]}
"""


def test_the_gap_and_the_overlap_are_marked_where_they_are(tmp_path):
    notes = notes_of(tmp_path, SMALLEST.replace("\nsizes:", f"{BLOCK}sizes:", 1))
    drawn = sketches(notes)
    assert list(drawn) == ["torn-R154-1", "torn-R155-1"]
    step = SIDE / 4 * POINTS_PER_INCH
    for svg, (left, top, right, bottom) in zip(
        drawn.values(), [(2, 3, 4, 4), (1, 1, 2, 2)], strict=True
    ):
        (marked,) = [e for e in elements(svg) if e.values.get("fill") == RED_BROWN]
        (ring,) = rings(marked)
        xs, ys = zip(*ring, strict=True)
        box = [min(xs), min(ys), max(xs), max(ys)]
        found = [round((v - EDGE * POINTS_PER_INCH) / step, 2) for v in box]
        assert found[0] == left and found[2] == right
        assert found[3] - found[1] == bottom - top


def test_a_note_without_a_sketch_has_no_figure(tmp_path):
    assert sketches(notes_of(tmp_path, SMALLEST)) == {}
