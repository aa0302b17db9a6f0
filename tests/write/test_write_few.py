"""Tops with one of something, and tops that mix what others keep apart.

A step asks only for what is on the table. That corners of patches on both sides of a seam
must meet for there to be a crossing is geometry; the rest needs no source.
"""

import re

import pytest
from small_books import LEAF, NINE, PLAIN, SOLID, STAR, WEDGE, booklet, motif, plain

ALL = "\n".join([NINE, STAR, PLAIN, LEAF])
GRIDS = [(1, 1), (1, 3), (3, 1), (2, 3)]
SETTINGS = {
    "edge to edge": "",
    "sashed": ", sashing: {width: 1 in, fabric: mist}",
    "cornerstones": ", sashing: {width: 1 in, fabric: mist, cornerstones: amber}",
    "outer": ", sashing: {width: 1 in, fabric: mist, cornerstones: amber, outer: yes}",
    "outer strips": ", sashing: {width: 1 in, fabric: mist, outer: yes}",
    "on point": ", setting: on point, setting_fabric: oat",
}
_NONE = re.compile(r"\b(?:no|0) (?:side|corner)? ?(?:triangles?|blocks?|strips?|rows?)\b")


def said(columns, rows, setting, block="nine", more="", section="assembling"):
    size = (
        f"a: {{block: {block}, block_size: 6 in, columns: {columns}, rows: {rows}"
        f"{SETTINGS[setting]}{more}}}"
    )
    found = booklet(size, blocks=ALL, motifs=motif())
    return plain(found.text(section)), found


@pytest.mark.parametrize("setting", SETTINGS)
@pytest.mark.parametrize(("columns", "rows"), GRIDS)
def test_nothing_is_asked_for_that_is_not_there(columns, rows, setting):
    text, found = said(columns, rows, setting)
    whole = plain(found.text())
    assert not _NONE.search(whole), _NONE.search(whole)
    assert "row 1 to row 1" not in text and "one row of one" not in text
    plan = found.plans["a"]
    has = {p.purpose for p in plan.pieces}
    assert ("cornerstone" in text) == ("cornerstone" in has)
    assert ("side triangle" in text) == ("side triangle" in has)
    if columns == rows == 1:
        assert "between them" not in text and "each block" not in text.lower()
        assert "crossing" not in text or "cornerstone" in has
    for piece in plan.pieces:
        if piece.purpose in ("sashing", "cornerstone"):
            assert re.search(rf"\b{piece.letter}\b", text), f"{piece.letter} is sewn in no step"
    for row in re.findall(r"\bsashing rows?\b", text):
        assert "For sashing row" in text or row == "", "a sashing row is sewn from parts"


@pytest.mark.parametrize(
    ("block", "columns", "rows", "pins"),
    [("nine", 1, 3, True), ("plain", 1, 3, False), ("plain", 3, 1, False), ("plain", 2, 2, True)],
)
def test_pins_are_asked_for_where_seams_meet(block, columns, rows, pins):
    """Nine patches one below the other meet at their thirds, plain squares at nothing; plain
    squares two by two meet in the middle."""
    text, _ = said(columns, rows, "edge to edge", block)
    assert bool(re.search(r"\bPin (?:at every crossing|wherever seams meet)", text)) == pins
    assert ("The seams match" in text) == pins


def test_pins_come_before_the_seam():
    text, _ = said(2, 2, "edge to edge")
    assert text.index("Pin at every crossing") < text.index("For the top, sew")


def test_pieced_blocks_beside_motifs_are_no_grounds():
    found = booklet(
        "a: {block: [leaf, nine], block_size: 12 in, motif_size: 10 in, columns: 2, rows: 2}",
        blocks=ALL.replace("ground: oat, motif: leaf", "ground: mist, motif: leaf"),
        motifs=motif(),
    )
    text = plain(found.text())
    assert "Mist: ground" in text and "Fern: blocks" in text and "Oat: blocks" in text
    assert "Piecing the blocks" in text and "Piecing the ground" not in text
    assert "grounds are pieced" not in text and "The other blocks are pieced" in text


@pytest.mark.parametrize("method", ["needle-turn", "prepared edge", "fusible"])
@pytest.mark.parametrize("wedge", [SOLID, WEDGE], ids=["solid", "open"])
def test_openings_are_told_of_motifs_that_have_them(method, wedge):
    found = booklet(
        "a: {block: leaf, block_size: 12 in, motif_size: 10 in}",
        blocks=LEAF,
        motifs=motif(method, wedge),
    )
    holes = found.drafts["a"].motifs["leaf"].holes > 0
    sewn = "\n".join(found.text(s) for s in ("applique", "fusing", "preparing", "marking"))
    assert bool(re.search(r"\bopenings?\b(?! it)", sewn)) == holes
    assert "inner edge" not in sewn


def test_threads_are_counted_by_colour():
    two = motif() + "\n" + motif(fabric="madder").replace("leaf:", "reed:")
    found = booklet(
        "a: {block: [leaf, reed], block_size: 12 in, motif_size: 10 in, columns: 2}",
        "b: {block: leaf, block_size: 12 in, motif_size: 10 in, binding: {fabric: mist}}",
        blocks=LEAF + "\nreed: {ground: oat, motif: reed}",
        motifs=two,
    )
    text = found.text("materials")
    for name in ("Fern", "Madder"):
        assert f"Appliqué, to match {name}" in text.split("\n")
    assert "Binding, to match Amber" in text and "Binding, to match Mist" in text
    assert "Fern and Madder" not in plain(found.text("applique"))
    thread = found.plans["a"].thread
    assert sum(thread.motifs.values()) == thread.applique and len(thread.motifs) == 2


def test_one_fused_motif_is_not_side_by_side():
    found = booklet(
        "a: {block: leaf, block_size: 12 in, motif_size: 10 in}",
        blocks=LEAF,
        motifs=motif("fusible"),
    )
    text = plain(found.text())
    assert "motif side by side" not in text and "the one motif" not in text
    assert not re.search(r"holds one \w+, each", text)


def test_forms_and_hems_are_said_once_and_only_where_there_are_any():
    found = booklet(
        "a: {title: Floor, finish: pillow, block: nine, block_size: 35 in, pillow: {form: 36 in}}",
        "b: {title: Tiny, finish: pillow, block: nine, block_size: 5 in, "
        "pillow: {form: 6 in, hem: 0 in, overlap: 1 in}}",
    )
    text = plain(found.text("pillow"))
    assert "36 in square for the Floor and 6 in square for the Tiny" in text
    assert "fold 0 in" not in text and "6 in for the Tiny square" not in text


def test_what_lines_are_marked_with_is_in_the_tools():
    found = booklet("a: {block: nine, block_size: 6 in, columns: 2, rows: 2}")
    assert "guide bar" in found.text("tools") and "marker" in found.text("tools")


def test_squares_used_whole_are_not_cut_into_strips():
    found = booklet(
        "a: {block: plain, block_size: 4 1/2 in, columns: 6, rows: 7}",
        blocks="plain: {ground: oat}",
        more="",
        fabrics={"oat": "sold_as: {squares: 5 in}"},
    )
    text = plain(found.text("cutting"))
    assert "Use each of 42 squares whole, as one A" in text
    assert "strip 5 in" not in text
