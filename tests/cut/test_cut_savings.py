"""What a little less would save, offered where it saves a quarter yard.

13 1/2 in lies two across 40 in, and 13 1/4 in three, since 40 / 3 = 13 1/3: nine squares are
five strips of 13 1/2 in or three of 13 1/4 in, 67 1/2 in or 39 3/4 in of cloth. Six strips of
binding, 2 1/4 in wide, take 13 1/2 in more.
"""

from __future__ import annotations

from fractions import Fraction

from helpers import changed, pattern

from publish import pipeline
from publish.units import YARD

NINE = changed(
    "mini: {block_size: 16 in, motif_size: 14 in}",
    "mini: {block_size: 16 in, motif_size: 12 in, columns: 3, rows: 3}",
)


def offers(folder, text):
    work = pipeline.examine(pattern(folder, text)).work
    return [n for n in work.report if n.code == "C408"], work.plans["mini"].fabrics["moss"]


def test_a_square_that_lets_one_more_lie_across_is_offered(tmp_path):
    (note,), plan = offers(tmp_path, NINE)
    assert plan.length == 67.5 + 13.5
    assert "13 1/4 in instead of 13 1/2 in" in note.what
    # 81 + 11/8 + 1 in are 2 3/8 yd; 53 1/4 + 9/8 + 1 in are 1 5/8 yd
    assert "save 3/4 yd of Deep moss" in note.what
    assert "motif_margin: 1 1/4 in" in note.help


def test_what_is_offered_comes_true_and_is_offered_no_more(tmp_path):
    found, plan = offers(tmp_path, NINE + "sewing: {motif_margin: 1 1/4 in}\n")
    assert not found
    assert plan.buy == YARD * 13 / 8


def test_what_saves_less_than_a_quarter_yard_is_not_offered(tmp_path):
    found, _ = offers(tmp_path, NINE.replace(", columns: 3, rows: 3", ""))
    assert not found


def test_a_backing_that_takes_a_panel_fewer_is_offered(tmp_path):
    """34 in and twice 4 in take two panels of 40 in; with twice 3 in one is enough."""
    plain = "mini: {block_size: 34 in, motif_size: 12 in, backing: {fabric: linen}}"
    text = NINE.replace("mini: {block_size: 16 in, motif_size: 12 in, columns: 3, rows: 3}", plain)
    work = pipeline.examine(pattern(tmp_path, text)).work
    (note,) = [n for n in work.report if n.code == "C408"]
    assert "reaches 3 in past each edge" in note.what
    less = text.replace("backing: {fabric: linen}", "backing: {fabric: linen, overhang: 3 in}")
    work = pipeline.examine(pattern(tmp_path, less)).work
    assert not [n for n in work.report if n.code == "C408"]


def test_a_border_narrower_by_an_eighth_is_offered(tmp_path):
    """Round 31 1/2 in, strips 4 1/8 in wide end at 39 3/4 in, cut 40 1/4: two lengths each from
    40 in. With 4 in they end at 39 1/2, cut 40: a strip each. Four strips of 4 5/8 in take
    the place of two, beside two for the sides: 6 x 4 5/8 or 4 x 4 1/2 in."""
    whole = "mini: {block_size: 16 in, motif_size: 12 in, columns: 3, rows: 3}"
    edged = (
        "mini: {block_size: 31 1/2 in, motif_size: 12 in, "
        "borders: [{width: 4 1/8 in, fabric: reed}]}"
    )
    cloth = 'fabrics:\n  reed: {name: Reed, colour: "#8a7b52"}\n'
    text = NINE.replace(whole, edged).replace("fabrics:\n", cloth)
    assert edged in text and cloth in text
    work = pipeline.examine(pattern(tmp_path, text)).work
    notes = [n for n in work.report if n.code == "C408" and "Reed" in n.what]
    assert work.plans["mini"].fabrics["reed"].length == 6 * 4.625
    (note,) = notes
    assert "a border 4 in wide instead of 4 1/8 in would save 1/4 yd of Reed" in note.what
    less = text.replace("width: 4 1/8 in", "width: 4 in")
    after = pipeline.examine(pattern(tmp_path, less)).work
    assert after.plans["mini"].fabrics["reed"].length == 18


EVEN = (
    "mini: {block_size: 12 1/2 in, motif_size: 10 in, columns: 3, rows: 3, backing: {fabric: reed}}"
)
REED = 'fabrics:\n  reed: {name: Reed, colour: "#8a7b52"}\n'


def even(block):
    """Nine grounds of a block, cut 1 1/2 in larger, and the backing from another cloth."""
    whole = "mini: {block_size: 16 in, motif_size: 12 in, columns: 3, rows: 3}"
    text = NINE.replace(whole, EVEN.replace("12 1/2 in", block)).replace("fabrics:\n", REED)
    assert "reed" in text and block in text
    return text


def test_a_block_whose_strips_come_out_even_is_offered(tmp_path):
    """Cut 14 in, grounds lie two across 40 in: five strips, 70 in. Cut 13 1/4 in for a block
    of 11 3/4 in, three lie across: 39 3/4 in; 13 3/8 in for 11 7/8 in would be too much."""
    work = pipeline.examine(pattern(tmp_path, even("12 1/2 in"))).work
    plan = work.plans["mini"].fabrics["linen"]
    assert plan.length == 70
    (note,) = [n for n in work.report if n.code == "C408" and "a block" in n.what]
    assert "a block of 11 3/4 in instead of 12 1/2 in" in note.what
    # 70 + 5/8 + 1 in are 2 yd; 39 3/4 + 3/8 + 1 in are 1 1/4 yd
    assert "would save 3/4 yd of Pale linen" in note.what
    assert "block_size: 11 3/4 in" in note.help
    after = pipeline.examine(pattern(tmp_path, even("11 3/4 in"))).work
    assert after.plans["mini"].fabrics["linen"].buy == plan.buy - YARD * 3 / 4
    assert not [n for n in after.report if n.code == "C408" and "a block" in n.what]


def test_what_saves_most_is_number_one(tmp_path):
    """Squares of 13 1/2 in for a motif of 12 in and grounds of 14 in: one more of each."""
    text = even("12 1/2 in").replace("motif_size: 10 in", "motif_size: 12 in")
    notes = [n for n in pipeline.examine(pattern(tmp_path, text)).work.report if n.code == "C408"]
    assert len(notes) >= 2
    places = {}
    for note in notes:
        saved = note.what.split("would save ")[1].split(" yd")[0]
        at = note.help.split("(number ")[1].split(" of ")
        assert int(at[1].split()[0]) == len(notes)
        places[int(at[0])] = sum(map(Fraction, saved.split()))
    assert [places[n] for n in sorted(places)] == sorted(places.values(), reverse=True)
    assert sorted(places) == list(range(1, len(notes) + 1))
