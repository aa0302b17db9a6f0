"""What a booklet says of quilting when the pattern says nothing, or has no room for lines.

How far apart usual lines lie is common practice, no source.
"""

import pytest
from small_books import LEAF, NINE, PLAIN, booklet, motif, plain

SIZES = {
    "patchwork": "a: {block: nine, columns: 4, rows: 4, block_size: 9 in}",
    "whole cloth": "a: {block: plain, block_size: 6 in}",
    "on point": "a: {block: nine, block_size: 6 in, columns: 2, rows: 2, setting: on point, "
    "setting_fabric: oat}",
    "sashed": "a: {block: nine, columns: 2, rows: 2, block_size: 6 in, "
    "sashing: {width: 1 in, fabric: mist}}",
    "narrow border": "a: {block: nine, columns: 2, rows: 2, block_size: 6 in, "
    "borders: [{width: 1 in, fabric: mist}]}",
    "wide border": "a: {block: nine, columns: 2, rows: 2, block_size: 6 in, "
    "borders: [{width: 3 in, fabric: mist}]}",
    "two narrow borders": "a: {block: nine, columns: 2, rows: 2, block_size: 6 in, "
    "borders: [{width: 3/4 in, fabric: mist}, {width: 1 in, fabric: fern}]}",
    "close batting": "a: {block: nine, block_size: 6 in, batting: {name: Wool, "
    "largest_gap: 1/2 in}, borders: [{width: 1 in, fabric: mist}]}",
    "motif": "a: {block: leaf, block_size: 12 in, motif_size: 10 in}",
    "pillow": "a: {block: nine, finish: pillow, block_size: 6 in, columns: 2, rows: 2, "
    "pillow: {form: 13 in}}",
}


@pytest.mark.parametrize("name", SIZES)
def test_what_is_quilted_has_lines_thread_and_bobbins(name):
    found = booklet(SIZES[name], blocks="\n".join([NINE, PLAIN, LEAF]), motifs=motif())
    drafted = found.drafts["a"].quilting
    assert {q.area for q in drafted} >= {"ground"}
    assert len(drafted) == len(found.sizes["a"].quilting) and all(q.length > 0 for q in drafted)
    gap = found.sizes["a"].batting.largest_gap
    assert gap is None or all(q.spacing is None or q.spacing <= gap for q in drafted)
    assert found.plans["a"].thread.quilting > 0
    text = plain(found.text())
    assert "Full bobbins for quilting" in text
    for line in drafted:
        where = {"motif": "the motif", "border": "the borders"}.get(line.area, "")
        assert f"Quilt {where}" in text or "Quilt echo lines" in text


def test_echo_lines_are_for_a_motif():
    found = booklet(SIZES["patchwork"], blocks=NINE)
    assert "echo" not in found.text("quilting")


def test_asked_for_and_without_a_line_there_is_no_step():
    """A border 1 in wide has no line 1 in from its seam inside it."""
    found = booklet(
        SIZES["narrow border"],
        more="quilting: [{area: ground, style: ditch}, {area: border, style: parallel, "
        "spacing: 1 in}]\n",
    )
    said = found.text("quilting")
    assert "the borders" not in said and "Quilt the patchwork" in said
